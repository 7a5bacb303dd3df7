import {expect, fixture, html, waitUntil} from '@open-wc/testing';
import {sendKeys, sendMouse} from '@web/test-runner-commands';
import {expectAccessible} from '../audit.js';
import {chord} from '../hands.js';
import '../../src/elements/gray-card-check/define.js';
import '../../src/elements/tonal-chart-reader/define.js';
import type {GrayCardCheck} from '../../src/elements/gray-card-check/class.js';
import type {CardShot, GrayCard} from '../../src/elements/gray-card-check/reading.js';
import {completeShot} from '../../src/core/shot/shot.js';
import {benchNamed} from '../../src/elements/shared/bench.js';
import type {ShotChangeEvent, ShotProblemEvent} from '../../src/elements/shared/events.js';
import type {TonalChartReader} from '../../src/elements/tonal-chart-reader/class.js';
import {drawn, fill} from '../photo/pictures.js';

type Rgb = readonly [red: number, green: number, blue: number];
type Patch = 'white' | 'gray' | 'black';

/** Ground truth of the rendered shots: scene-linear means of each patch, before clipping and compression. */
interface Truth {
  readonly file: string;
  readonly card?: {readonly patches_px: Readonly<Record<Patch, {
    readonly rect: readonly [number, number, number, number]; readonly mean_linear: Rgb;
  }>>};
}

const PATCHES: readonly Patch[] = ['white', 'gray', 'black'];
const truths = (await (await fetch(new URL('../reference/shots/shots.json', import.meta.url))).json() as {shots: Truth[]}).shots;

function truthOf(name: string) {
  const card = truths.find(({file}) => file === `${name}.jpg`)?.card;
  if (!card) throw new Error(`no card in ${name}`);
  return card.patches_px;
}

const address = (name: string) => new URL(
  name === 'card-mixed' ? `../reference/shots/${name}.jpg` : `../../demo/shots/${name}.jpg`, import.meta.url).href;

async function shot(name: string): Promise<File> {
  const response = await fetch(address(name));
  if (!response.ok) throw new Error(`no shot ${name}`);
  return new File([await response.blob()], `${name}.jpg`, {type: 'image/jpeg'});
}

/** sRGB code of linear light, IEC 61966-2-1, written out here so that the drawing does not lean on what it checks. */
function codeOf(light: number): number {
  return 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.min(1, light) ** (1 / 2.4) - 0.055);
}

/**
 * Colour temperature by another way than the element's: McCamy, Correlated color temperature as an explicit function of
 * chromaticity coordinates, 1992, from memory; primaries of IEC 61966-2-1.
 */
function mcCamy([red, green, blue]: Rgb): number {
  const X = 0.4124 * red + 0.3576 * green + 0.1805 * blue;
  const Y = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  const Z = 0.0193 * red + 0.1192 * green + 0.9505 * blue;
  const [x, y] = [X / (X + Y + Z), Y / (X + Y + Z)];
  const n = (x - 0.332) / (0.1858 - y);
  return 449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33;
}

/** A card on a dark ground, saved without loss, with grain over which rounding to whole codes averages out. */
async function cardPicture(lights: readonly Rgb[], name = 'card.png'): Promise<File> {
  const [width, height, side] = [400, 260, 80];
  const data = new ImageData(width, height);
  let state = 1;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      const grain = 1 + 0.05 * (state / 2 ** 32 - 0.5);
      const [column, row] = [(x - 50) / (side + 20), (y - 90) / side];
      const isCard = column >= 0 && column < 3 && column % 1 < side / (side + 20) && row >= 0 && row < 1;
      const light = (isCard ? lights[Math.floor(column)] : [0.006, 0.009, 0.004]) as Rgb;
      data.data.set([...light.map((value) => codeOf(value * grain)), 255], (y * width + x) * 4);
    }
  }
  return drawn(width, height, (pen) => { pen.putImageData(data, 0, 0); }, {name});
}

const lightsOf = (name: string) => PATCHES.map((patch) => truthOf(name)[patch].mean_linear);
/** Invented: reflectances of an ordinary card, times `factor`, with `veil` of stray light over all of it. */
const ordinary = (factor = 1, veil = 0): Rgb[] => [0.9, 0.18, 0.035].map((light) => {
  const value = light * factor + veil;
  return [value, value, value];
});

const words = (el: Element) => el.shadowRoot?.textContent?.replace(/\s+/g, ' ') ?? '';
const verdict = (el: Element) => el.shadowRoot?.querySelector('.verdict')?.textContent?.replace(/\s+/g, ' ') ?? '';
const mark = (el: Element, patch: Patch) => el.shadowRoot?.querySelector<SVGGElement>(`.mark[data-patch=${patch}]`) as SVGGElement;
const stage = (el: Element) => el.shadowRoot?.querySelector('.stage') as HTMLElement;
const button = (el: Element, text: string) => [...el.shadowRoot?.querySelectorAll('button') ?? []].find((one) => one.textContent?.includes(text));
const isRead = (el: Element) => /trust/.test(verdict(el));

async function settled(el: GrayCardCheck | TonalChartReader, what: () => boolean): Promise<void> {
  await waitUntil(what, 'the reading', {timeout: 8000, interval: 20});
  await el.updateComplete;
}

async function withFile(file: File, more = html`<gray-card-check></gray-card-check>`): Promise<GrayCardCheck> {
  const el = await fixture<GrayCardCheck>(more);
  expect(await el.open(file)).to.equal(true);
  await settled(el, () => isRead(el) || verdict(el).includes('No gray card'));
  return el;
}

/** Gains as they can be copied: green held. */
function gains(el: Element): {red: number; blue: number} {
  const text = el.shadowRoot?.querySelector('.gains code')?.textContent ?? '';
  const [, red, blue] = /^R ([\d.]+) G 1\.000 B ([\d.]+)$/.exec(text) ?? [];
  return {red: Number(red), blue: Number(blue)};
}

let benches = 0;
/** A bench of its own for a test, and what lies on it. */
function ownBench() {
  const name = `card-${++benches}`;
  return {
    name, card: () => benchNamed(name).things['grayCard'] as GrayCard | undefined,
    lying: () => benchNamed(name).things['cardShot'] as CardShot,
  };
}

async function dragTo(from: readonly [number, number], to: readonly [number, number]): Promise<void> {
  const whole = ([x, y]: readonly [number, number]): [number, number] => [Math.round(x), Math.round(y)];
  await sendMouse({type: 'move', position: whole(from)});
  await sendMouse({type: 'down'});
  await sendMouse({type: 'move', position: whole([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2])});
  await sendMouse({type: 'move', position: whole(to)});
  await sendMouse({type: 'up'});
}

describe('gray-card-check', () => {
  it('passes the accessibility audit: empty, with a card, with none found, with a problem', async () => {
    const empty = await fixture<GrayCardCheck>(html`<gray-card-check></gray-card-check>`);
    await expectAccessible(empty);
    const el = await withFile(await cardPicture(ordinary(2)));
    await expectAccessible(el);
    el.setAttribute('aperture', 'eleven');
    await el.updateComplete;
    await expectAccessible(el);
    await expectAccessible(await withFile(await shot('nocard-warm')));
  });

  it('invites a card shot and says that it stays on the device', async () => {
    const el = await fixture<GrayCardCheck>(html`<gray-card-check></gray-card-check>`);
    expect(words(el)).to.contain('Drop a shot of your gray card here').and.contain('goes nowhere');
  });

  describe('the rendered card shots', () => {
    for (const name of ['card-neutral', 'card-warm', 'card-mixed']) {
      it(`${name}: trusted, with gains as near to the render as JPEG keeps colour`, async () => {
        const el = await withFile(await shot(name));
        expect(verdict(el)).to.match(name === 'card-neutral'
          ? /^The card can be trusted: gray sits where it belongs; it is neutral, so its colour needs no correcting: red × 0\.98 and blue × 1\.02 would not be seen\.$/
          : /^The card can be trusted: gray sits .*; multiply red by [\d.]+ and blue by [\d.]+\.$/);
        const [red, green, blue] = truthOf(name).gray.mean_linear;
        const read = gains(el);
        // tests/reference/README.md: patch means in linear light after JPEG hold to 3 %.
        expect(read.red * red / green).to.be.closeTo(1, 0.03);
        expect(read.blue * blue / green).to.be.closeTo(1, 0.03);
      });

      it(`${name}, the render’s own light saved without loss: gains within 1 %`, async () => {
        const el = await withFile(await cardPicture(lightsOf(name)));
        const [red, green, blue] = truthOf(name).gray.mean_linear;
        const read = gains(el);
        expect(read.red * red / green).to.be.closeTo(1, 0.01);
        expect(read.blue * blue / green).to.be.closeTo(1, 0.01);
      });
    }

    it('card-glare: not to be trusted, and told what to do about it', async () => {
      const el = await withFile(await shot('card-glare'));
      expect(verdict(el)).to.match(/^Do not trust this card: black is lifted about [\d.]+ stops against gray: glare\. Turn the card/);
      expect(words(el)).to.contain('Gray is cut off at white in').and.contain('Black is uneven');
      expect(button(el, 'Copy')).to.equal(undefined);
    });

    it('card-mixed: off by what the render has, white cut off, and told so', async () => {
      const el = await withFile(await shot('card-mixed'));
      const [red, green, blue] = truthOf('card-mixed').gray.mean_linear;
      // Luminance by ITU-R BT.709; gray belongs at 0.18.
      const off = Math.log2((0.2126 * red + 0.7152 * green + 0.0722 * blue) / 0.18);
      const said = Number(/The exposure is ([\d.]+) stop over/.exec(words(el))?.[1]);
      expect(said).to.be.closeTo(off, 0.03);
      expect(words(el)).to.contain('White is cut off in');
    });

    it('card-warm: warmer, at the colour temperature of the rendered light', async () => {
      const el = await withFile(await shot('card-warm'));
      expect(words(el)).to.contain('Gray comes out warmer than neutral');
      // Red light takes white past 255 in the render; gray lies at 18 % in it.
      expect(words(el)).to.match(/White is cut off in \d+% of the patch/).and.contain('Gray is exposed right, white is not: gray comes out at');
      expect(words(el)).not.to.contain('The exposure is right');
      const kelvin = Number(/about ([\d ]+) K/.exec(words(el))?.[1]?.replace(' ', ''));
      expect(kelvin / mcCamy(truthOf('card-warm').gray.mean_linear)).to.be.closeTo(1, 0.02);
      expect(words(el)).not.to.contain('pinker').and.not.to.contain('greener');
    });

    it('nocard-warm: no card found, and the frames are placed by hand, by three presses', async () => {
      const el = await withFile(await shot('nocard-warm'));
      expect(verdict(el)).to.match(/^No gray card was found.*mark it by hand/);
      expect(words(el)).to.contain('Press on the white patch');
      expect(words(el)).not.to.contain('can be trusted');
      stage(el).scrollIntoView({block: 'center'});
      const {left, top, width, height} = stage(el).getBoundingClientRect();
      const press = async (x: number, y: number) => {
        await sendMouse({type: 'click', position: [Math.round(left + x * width), Math.round(top + y * height)]});
        await el.updateComplete;
      };
      await press(0.2, 0.2);
      expect(words(el)).to.contain('Press on the gray patch');
      await press(0.3, 0.2);
      await press(0.32, 0.2); // on the frame that was just placed, as on a card far away
      await settled(el, () => isRead(el));
      // The backdrop is one tone: nothing falls from white through gray to black there.
      expect(verdict(el)).to.contain('do not fall from white through gray to black');
    });
  });

  it('says how far the exposure is off, and applies the setting that puts it right, once', async () => {
    // Invented: a card one stop under, so that gray lies at 0.09.
    const el = await withFile(await cardPicture(ordinary(0.5)), html`<gray-card-check aperture="f/8" shutter="1/4" iso="100"></gray-card-check>`);
    expect(words(el)).to.contain('The exposure is 1.0 stop under');
    const changes: ShotChangeEvent[] = [];
    el.addEventListener('shot-change', (event) => { changes.push(event); });
    el.shadowRoot?.querySelector<HTMLButtonElement>('.ways button')?.focus();
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    expect(el.shutter).to.be.closeTo(0.5, 1e-9);
    expect([el.aperture, el.iso, el.correction, changes.length]).to.deep.equal([8, 100, 1, 1]);
    expect(el.shadowRoot?.querySelector('.ways')).to.equal(null);
    expect(words(el)).to.contain('Done: the next shot is set to');
    expect(el.shadowRoot?.activeElement?.textContent).to.equal('Undo');
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    expect([el.shutter, el.correction]).to.deep.equal([0.25, 0]);
    expect(el.shadowRoot?.activeElement, 'the way that was pressed').to.equal(el.shadowRoot?.querySelector('.ways button'));
  });

  it('tells a veil over everything from a mirrored lamp', async () => {
    // Invented: three tenths of the gray patch's own light over all three patches, nothing clipped, nothing uneven.
    const el = await withFile(await cardPicture(ordinary(0.7, 0.054)));
    expect(verdict(el)).to.match(/^Do not trust this card: black is lifted .* a veil of stray light\. Shade the lens/);
  });

  it('takes the exposure of the card’s file where nobody has stated one', async () => {
    const el = await withFile(await shot('card-neutral'));
    // shots.json: f/8, 1/3 s, ISO 100
    expect([el.aperture, el.iso]).to.deep.equal([8, 100]);
    expect(el.shutter).to.be.closeTo(1 / 3, 0.02);
    const stated = await withFile(await shot('card-neutral'), html`<gray-card-check shutter="2 s"></gray-card-check>`);
    expect(stated.shutter).to.equal(2);
  });

  describe('the frames', () => {
    it('move by arrow keys, size with Shift, and the reading follows', async () => {
      const bench = ownBench();
      const el = await withFile(await cardPicture(ordinary()), html`<gray-card-check bench=${bench.name}></gray-card-check>`);
      const before = bench.lying().patches.gray;
      mark(el, 'gray').focus();
      await sendKeys({press: 'ArrowRight'});
      expect(bench.lying().patches.gray.x).to.be.above(before.x);
      expect(bench.lying().patches.gray.width).to.equal(before.width);
      await chord('Shift', 'ArrowDown');
      expect(bench.lying().patches.gray.height).to.be.above(before.height);
      await sendKeys({press: 'PageDown'});
      expect(bench.lying().patches.gray.width).to.be.below(before.width);
      await settled(el, () => bench.card()?.patches === bench.lying().patches);
      expect(mark(el, 'gray').getAttribute('aria-valuetext')).to.contain('from the left');
      expect(verdict(el)).to.contain('can be trusted');
    });

    it('are dragged off the card by pointer, which is noticed, and found again', async () => {
      const bench = ownBench();
      const el = await withFile(await cardPicture(ordinary()), html`<gray-card-check bench=${bench.name}></gray-card-check>`);
      stage(el).scrollIntoView({block: 'center'});
      const middle = (patch: Patch): [number, number] => {
        const {left, top, width, height} = (mark(el, patch).querySelector('.line') as Element).getBoundingClientRect();
        return [left + width * 0.4, top + height * 0.4];
      };
      await dragTo(middle('black'), middle('gray'));
      await settled(el, () => verdict(el).includes('do not fall from white'));
      expect(bench.lying().how).to.equal('marked');
      button(el, 'Look for the card again')?.click();
      await settled(el, () => verdict(el).includes('can be trusted'));
      expect(bench.lying().how).to.equal('found');
    });

    it('are sized by their corner', async () => {
      const bench = ownBench();
      const el = await withFile(await cardPicture(ordinary()), html`<gray-card-check bench=${bench.name}></gray-card-check>`);
      stage(el).scrollIntoView({block: 'center'});
      const before = bench.lying().patches.white;
      const {right, bottom} = (mark(el, 'white').querySelector('.line') as Element).getBoundingClientRect();
      await dragTo([right + 2, bottom + 2], [right - 10, bottom - 8]);
      expect(bench.lying().patches.white.width).to.be.below(before.width);
      expect(bench.lying().patches.white.x).to.equal(before.x);
    });

    it('have names in words that keep apart and inside, from close by and on the whole shot, at 280 px', async () => {
      const box = await fixture<HTMLElement>(html`<div><gray-card-check></gray-card-check></div>`);
      box.style.width = '280px';
      const el = box.querySelector('gray-card-check') as GrayCardCheck;
      const check = () => {
        const area = stage(el).getBoundingClientRect();
        const names = PATCHES.map((patch) => mark(el, patch).querySelector('.name') as SVGTextElement);
        expect(names.map((name) => name.textContent)).to.deep.equal(['White', 'Gray', 'Black']);
        const rects = names.map((name) => name.getBoundingClientRect());
        rects.forEach(({left, right, top, bottom}, at) => {
          expect(left >= area.left && right <= area.right && top >= area.top && bottom <= area.bottom, `${names[at]?.textContent} inside`).to.equal(true);
          for (const other of rects.slice(at + 1)) {
            const [across, down] = [Math.max(left, other.left) - Math.min(right, other.right), Math.max(top, other.top) - Math.min(bottom, other.bottom)];
            // Firefox counts the ink round the letters in, 2 px on each side.
            expect(Math.max(across, down), 'px between two names').to.be.at.least(-4);
          }
        });
      };
      // card-neutral's card is small, low and far to the left
      await el.open(await shot('card-neutral'));
      await settled(el, () => isRead(el));
      check();
      button(el, 'Show the whole shot')?.click();
      await el.updateComplete;
      check();
      await el.open(await shot('nocard-warm'));
      await settled(el, () => verdict(el).includes('No gray card'));
      check();
    });

    it('are typed, and text that does not read stays with its reason', async () => {
      const bench = ownBench();
      const el = await withFile(await cardPicture(ordinary()), html`<gray-card-check bench=${bench.name}></gray-card-check>`);
      const input = el.shadowRoot?.getElementById('gray-frame') as HTMLInputElement;
      (input.closest('details') as HTMLDetailsElement).open = true;
      const type = async (text: string) => {
        input.focus();
        input.select();
        await sendKeys({type: text});
        await sendKeys({press: 'Tab'});
        await el.updateComplete;
      };
      await type('160 100 40x50');
      expect(bench.lying().patches.gray).to.deep.equal({x: 160, y: 100, width: 40, height: 50});
      let problem: ShotProblemEvent | undefined;
      el.addEventListener('shot-problem', (event) => { problem = event; });
      await type('in the middle');
      expect(input.value).to.equal('in the middle');
      expect(words(el)).to.contain('“in the middle” does not read as');
      expect(problem?.problem.parameter).to.equal('gray-frame');
      expect(bench.lying().patches.gray.width).to.equal(40);
    });
  });

  describe('the preview', () => {
    it('shows gray as gray on the after side and as it was shot on the before side', async () => {
      const el = await withFile(await cardPicture(lightsOf('card-warm')));
      const slider = el.shadowRoot?.querySelector('input[type=range]') as HTMLInputElement;
      const canvas = el.shadowRoot?.querySelector('canvas.wipe') as HTMLCanvasElement;
      // The middle of the gray patch, 190 px of 400 from the left and 130 of 260 from the top.
      const seen = (): number[] => Array.from(canvas.getContext('2d')?.getImageData(canvas.width * 190 / 400, canvas.height / 2, 1, 1).data ?? []);
      slider.focus();
      await sendKeys({press: 'Home'});
      await el.updateComplete;
      const [red, green, blue] = seen() as [number, number, number];
      expect(Math.max(red, green, blue) - Math.min(red, green, blue)).to.be.below(5);
      await sendKeys({press: 'End'});
      await el.updateComplete;
      const before = seen() as [number, number, number];
      lightsOf('card-warm')[1]?.forEach((light, channel) => { expect(before[channel]).to.be.closeTo(codeOf(light), 4); });
    });

    it('is wiped by pointer', async () => {
      const el = await withFile(await cardPicture(ordinary()));
      const wiped = el.shadowRoot?.querySelector('.wiped') as HTMLElement;
      wiped.scrollIntoView({block: 'center'});
      const {left, top, width, height} = wiped.getBoundingClientRect();
      await dragTo([left + width * 0.5, top + height / 2], [left + width * 0.2, top + height / 2]);
      await el.updateComplete;
      expect(Number((el.shadowRoot?.querySelector('input[type=range]') as HTMLInputElement).value)).to.be.closeTo(20, 2);
    });
  });

  describe('copying', () => {
    let clipboard: PropertyDescriptor | undefined;
    const lend = (writeText: (text: string) => Promise<void>) => {
      clipboard ??= Object.getOwnPropertyDescriptor(Navigator.prototype, 'clipboard');
      Object.defineProperty(navigator, 'clipboard', {configurable: true, value: {writeText}});
    };
    afterEach(() => { delete (navigator as {clipboard?: unknown}).clipboard; });

    it('gives the gains with three decimals, in the form that was asked for', async () => {
      const taken: string[] = [];
      lend((text) => { taken.push(text); return Promise.resolve(); });
      const el = await withFile(await cardPicture(lightsOf('card-warm')));
      for (const one of el.shadowRoot?.querySelectorAll<HTMLButtonElement>('.gains button') ?? []) one.click();
      await settled(el, () => words(el).includes('Copied:'));
      expect(taken[0]).to.match(/^R 0\.\d{3} G 1\.000 B 3\.\d{3}$/);
      expect(taken[1]).to.match(/^R 1\.000 G \d\.\d{3} B \d\.\d{3}$/);
      expect(taken[2]).to.match(/^G\/R 0\.\d{3} G\/B 3\.\d{3}$/);
    });

    it('keeps the point in what goes into other programs, whatever the page writes', async () => {
      const page = await fixture<HTMLElement>(html`<div lang="de"><gray-card-check></gray-card-check></div>`);
      const el = page.querySelector('gray-card-check') as GrayCardCheck;
      await el.open(await cardPicture(lightsOf('card-warm')));
      await settled(el, () => verdict(el).includes('zu trauen'));
      expect(verdict(el)).to.match(/Rot mit 0,4\d und Blau mit 3,\d\d multiplizieren/);
      expect(gains(el).red).to.be.closeTo(0.47, 0.02);
    });

    it('says so softly where the clipboard is out of reach', async () => {
      lend(() => Promise.reject(new DOMException('no', 'NotAllowedError')));
      const el = await withFile(await cardPicture(ordinary()));
      button(el, 'Copy')?.click();
      await settled(el, () => words(el).includes('The clipboard is out of reach here'));
    });
  });

  describe('on a bench', () => {
    it('lays down what others can use, and takes it away with the card shot', async () => {
      const bench = ownBench();
      const el = await withFile(await cardPicture(lightsOf('card-mixed'), 'mine.png'), html`<gray-card-check bench=${bench.name}></gray-card-check>`);
      const card = bench.card();
      const [red, green, blue] = truthOf('card-mixed').gray.mean_linear;
      expect(card?.trusted).to.equal(true);
      expect(card?.gains?.red).to.be.closeTo(green / red, 0.01);
      expect(card?.grayLinear).to.be.closeTo(0.2126 * red + 0.7152 * green + 0.0722 * blue, 0.002);
      expect(card?.name).to.equal('mine.png');
      el.file = null;
      await el.updateComplete;
      expect(bench.card()).to.equal(undefined);
      expect(words(el)).to.contain('Drop a shot of your gray card here');
    });

    it('shows one card shot in two elements; a frame moved in one moves in the other', async () => {
      const bench = ownBench();
      const pair = await fixture(html`<div><gray-card-check bench=${bench.name}></gray-card-check><gray-card-check bench=${bench.name}></gray-card-check></div>`);
      const [one, other] = pair.querySelectorAll('gray-card-check') as unknown as [GrayCardCheck, GrayCardCheck];
      await one.open(await cardPicture(ordinary()));
      await settled(other, () => isRead(other));
      mark(other, 'white').focus();
      const before = mark(one, 'white').getAttribute('aria-valuetext');
      await sendKeys({press: 'ArrowLeft'});
      await one.updateComplete;
      expect(mark(one, 'white').getAttribute('aria-valuetext')).not.to.equal(before);
    });

    it('uses the photo on the bench, and survives that photo’s replacement', async () => {
      const bench = ownBench();
      const pair = await fixture(html`<div><tonal-chart-reader bench=${bench.name}></tonal-chart-reader><gray-card-check bench=${bench.name}></gray-card-check></div>`);
      const [reader, el] = pair.children as unknown as [TonalChartReader, GrayCardCheck];
      await reader.open(await shot('card-warm'));
      await el.updateComplete;
      button(el, 'Use the photo in the tonal chart')?.click();
      await settled(el, () => isRead(el));
      expect(button(el, 'Use the photo in the tonal chart')).to.equal(undefined);
      await reader.open(await shot('nocard-warm'));
      await settled(el, () => words(el).includes('The gains hold for the photo in the tonal chart'));
      expect(verdict(el)).to.contain('can be trusted');
    });

    it('warns when the photo on the bench was lit differently', async () => {
      const bench = ownBench();
      const pair = await fixture(html`<div><tonal-chart-reader bench=${bench.name}></tonal-chart-reader><gray-card-check bench=${bench.name}></gray-card-check></div>`);
      const [reader, el] = pair.children as unknown as [TonalChartReader, GrayCardCheck];
      await el.open(await shot('card-neutral'));
      await reader.open(await shot('nocard-warm'));
      await settled(el, () => words(el).includes('These gains may not hold'));
      expect(words(el)).to.contain('its gains may not hold for the photo in the tonal chart');
      // Why stands right above the picture that shows it.
      const holds = el.shadowRoot?.querySelector('.holds');
      expect(holds?.textContent).to.contain('These gains may not hold').and.contain('lit differently');
      await settled(el, () => el.shadowRoot?.querySelector('.wiped') !== null);
      expect(holds?.nextElementSibling?.className).to.equal('wiped');
      await expectAccessible(el);
      expect(words(el)).to.match(/lit differently from the card: red [\d.]+ stops? stronger and blue [\d.]+ stops? weaker against green/);
    });

    it('warns when a lamp was moved on the bench after the card shot', async () => {
      const bench = ownBench();
      const el = await withFile(await cardPicture(ordinary()), html`<gray-card-check bench=${bench.name}></gray-card-check>`);
      expect(words(el)).not.to.contain('has moved');
      const lying = benchNamed(bench.name);
      const {lamps, ...rest} = completeShot(lying.state.values).lights;
      const lights = {...rest, lamps: lamps.map((lamp, at) => (at === 0
        ? {...lamp, position: [lamp.position[0] + 40, lamp.position[1], lamp.position[2]] as const} : lamp))};
      lying.change({...lying.state, values: {...lying.state.values, lights}});
      await el.updateComplete;
      expect(words(el)).to.contain('The key has moved 40 mm since the card shot');
      expect(words(el)).to.contain('shoot the card again');
    });
  });

  it('keeps the last good value and says what is wrong with another', async () => {
    const el = await fixture<GrayCardCheck>(html`<gray-card-check aperture="f/11"></gray-card-check>`);
    const before = el.aperture;
    let problem: ShotProblemEvent | undefined;
    el.addEventListener('shot-problem', (event) => { problem = event; });
    el.setAttribute('aperture', 'eleven');
    await el.updateComplete;
    expect(el.aperture).to.equal(before);
    expect(words(el)).to.contain('aperture: “eleven” does not read as');
    expect(problem?.problem.parameter).to.equal('aperture');
  });

  it('says what is wrong with a file, and what was on screen stays', async () => {
    const el = await withFile(await cardPicture(ordinary()));
    const before = verdict(el);
    expect(await el.open(new File([], 'nothing.jpg'))).to.equal(false);
    await el.updateComplete;
    expect(words(el)).to.contain('“nothing.jpg” is empty');
    expect(verdict(el)).to.equal(before);
  });

  it('shows its fallback while the page’s own card shot is not there', async () => {
    const el = await fixture<GrayCardCheck>(html`<gray-card-check src="no-such.jpg">Multiply red by 0.48.</gray-card-check>`);
    await settled(el, () => words(el).includes('did not load'));
    expect(el.shadowRoot?.querySelector('slot')?.assignedNodes().map((node) => node.textContent).join('')).to.contain('Multiply red');
  });

  it('opens the page’s own card shot without an event', async () => {
    let events = 0;
    const count = () => { events++; };
    document.addEventListener('shot-change', count);
    const el = await fixture<GrayCardCheck>(html`<gray-card-check src=${address('card-neutral')}></gray-card-check>`);
    await settled(el, () => isRead(el));
    document.removeEventListener('shot-change', count);
    expect(events).to.equal(0);
  });

  it('takes a card shot that is dropped, and one that is pasted', async () => {
    const el = await fixture<GrayCardCheck>(html`<gray-card-check></gray-card-check>`);
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(await cardPicture(ordinary(), 'dropped.png'));
    el.dispatchEvent(new DragEvent('dragover', {dataTransfer, bubbles: true, cancelable: true}));
    el.dispatchEvent(new DragEvent('drop', {dataTransfer, bubbles: true, cancelable: true}));
    await settled(el, () => isRead(el) && words(el).includes('dropped.png'));
    const clipboardData = new DataTransfer();
    clipboardData.items.add(await cardPicture(ordinary(0.5), 'pasted.png'));
    // Firefox lets no script put files on a clipboard, so they are handed to the event itself.
    const paste = new ClipboardEvent('paste', {cancelable: true});
    Object.defineProperty(paste, 'clipboardData', {value: clipboardData});
    document.dispatchEvent(paste);
    await settled(el, () => words(el).includes('pasted.png') && words(el).includes('1.0 stop under'));
  });

  it('takes a file by property, even one set before it was defined', async () => {
    const holder = await fixture<HTMLElement>(html`<div></div>`);
    const tag = 'gray-card-check-late';
    const el = document.createElement(tag) as GrayCardCheck;
    holder.append(el);
    el.file = await cardPicture(ordinary());
    const {GrayCardCheck: Check} = await import('../../src/elements/gray-card-check/class.js');
    customElements.define(tag, class extends Check {});
    await settled(el, () => isRead(el));
    el.remove();
  });

  it('keeps its card shot when it is moved, and has it again with its marks when put back after a while', async () => {
    const el = await withFile(await cardPicture(ordinary()));
    mark(el, 'gray').focus();
    await sendKeys({press: 'ArrowDown'});
    const at = mark(el, 'gray').getAttribute('aria-valuetext');
    const place = await fixture<HTMLElement>(html`<div></div>`);
    place.append(el);
    await el.updateComplete;
    expect(mark(el, 'gray').getAttribute('aria-valuetext')).to.equal(at);
    el.remove();
    await new Promise((resolve) => { setTimeout(resolve, 20); });
    place.append(el);
    await el.updateComplete; // what was drawn before is gone
    await settled(el, () => isRead(el) && mark(el, 'gray')?.getAttribute('aria-valuetext') === at);
    expect(verdict(el)).to.contain('can be trusted');
  });

  it('never prints what is no number, on pictures of one tone', async () => {
    for (const code of [0, 1, 128, 254, 255]) {
      const el = await withFile(await drawn(90, 60, (pen) => { fill(pen, [code, code, code], 0, 0, 90, 60); }));
      for (const [patch, text] of [['white', '5 5 20x20'], ['gray', '30 5 20x20'], ['black', '60 5 20x20']] as const) {
        const input = el.shadowRoot?.getElementById(`${patch}-frame`) as HTMLInputElement;
        input.value = text;
        input.dispatchEvent(new Event('change'));
        await el.updateComplete;
      }
      await settled(el, () => isRead(el));
      expect(verdict(el), `code ${code}`).to.match(/Do not trust this card|no card to trust/);
      expect(words(el), `code ${code}`).not.to.match(/NaN|Infinity|undefined|[^\d]-0[^.\d]/);
    }
  });
});
