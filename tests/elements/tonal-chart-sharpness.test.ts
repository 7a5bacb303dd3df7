import {expect, fixture, html, waitUntil} from '@open-wc/testing';
import {sendKeys, sendMouse} from '@web/test-runner-commands';
import {expectAccessible} from '../audit.js';
import '../../src/elements/tonal-chart-reader/define.js';
import type {TonalChartReader} from '../../src/elements/tonal-chart-reader/class.js';
import {placeOnWay, sharpText} from '../../src/elements/tonal-chart-reader/sharpness/speech.js';
import {family, words as englishWords} from '../../src/elements/tonal-chart-reader/sharpness/words/en.js';
import {Say} from '../../src/elements/shared/say.js';
import type {ShotChangeEvent, ShotProblemEvent} from '../../src/elements/shared/events.js';
import {chord} from '../hands.js';
import {drawn, fill, shot} from '../photo/pictures.js';

interface Mark {readonly mark_mm: number; readonly edge_px: readonly [number, number]; readonly tick_inner_px: readonly [number, number]}
interface Truth {
  readonly file: string;
  readonly ruler_marks_px: readonly Mark[];
  readonly scene: {readonly ruler: {readonly mark_mm_of: {readonly base_front: number; readonly focus_plane: number}}};
}

/** Where the rendered ruler is read and where the focus is; tolerance of its notes, tests/reference/shots/README.md. */
const FOCUS_TOLERANCE_MM = 5;
let marks: readonly Mark[];
let truth: {readonly base_front: number; readonly focus_plane: number};

before(async () => {
  const {shots} = await (await fetch(new URL('../reference/shots/shots.json', import.meta.url))).json() as {shots: readonly Truth[]};
  const known = shots.find(({file}) => file === 'aperture-f8.jpg');
  if (!known) throw new Error('no aperture-f8.jpg');
  marks = known.ruler_marks_px;
  truth = known.scene.ruler.mark_mm_of;
});

const markAt = (mm: number) => marks.find(({mark_mm: mark}) => mark === mm) as Mark;

/** A place in shares of the 1500 × 1000 px, on the printed figures: half as far again as the long marks reach. */
function figuresAt(mm: number): readonly [x: number, y: number] {
  const {edge_px: [x, y], tick_inner_px: [inner]} = markAt(mm);
  return [(x + 1.5 * (inner - x)) / 1499, y / 999];
}

/** What a person reads off the ruler at a height of the picture: between two marks. */
function readOff(y: number): number {
  const next = marks.findIndex(({edge_px: edge}) => edge[1] <= y * 999);
  const [below, above] = [marks[next - 1], marks[next]] as [Mark, Mark];
  return below.mark_mm + (above.mark_mm - below.mark_mm) * (below.edge_px[1] - y * 999) / (below.edge_px[1] - above.edge_px[1]);
}

/** Where an end of the line is drawn, shares of the picture. */
function placeOf(el: Element, name: 'a' | 'b'): readonly [x: number, y: number] {
  const holder = end(el, name).parentElement;
  const [x = NaN, y = NaN] = ['x', 'y'].map((side) => Number.parseFloat(holder?.getAttribute(side) ?? '') / 100);
  return [x, y];
}

/** The line lies on the rendered ruler, which is some two and a half times as wide as its long marks. */
function onRuler(el: Element): void {
  const [a, b] = [placeOf(el, 'a'), placeOf(el, 'b')];
  for (const {edge_px: [left, y], tick_inner_px: [inner]} of marks) {
    const along = (y / 999 - a[1]) / (b[1] - a[1]);
    if (along < 0 || along > 1) continue;
    expect((a[0] + (b[0] - a[0]) * along) * 1499, `at ${y} px`).to.be.within(left - 5, left + 2.5 * (inner - left));
  }
}

const english = englishWords(new Say('en', family));
const words = (el: Element) => el.shadowRoot?.textContent?.replace(/\s+/g, ' ') ?? '';
const section = (el: Element) => [...el.shadowRoot?.querySelectorAll('details') ?? []].find(({textContent}) =>
  textContent?.includes('Where is it sharp?')) as HTMLDetailsElement;
const finding = (el: Element) => section(el).querySelector('.finding')?.textContent?.replace(/\s+/g, ' ') ?? '';
const end = (el: Element, name: 'a' | 'b') => el.shadowRoot?.querySelector<SVGGElement>(`[data-end=${name}]`) as SVGGElement;
const pressed = (el: Element, label: string) => {
  const button = [...section(el).querySelectorAll('button')].find(({textContent}) => textContent?.includes(label));
  button?.focus();
  return sendKeys({press: 'Enter'});
};

async function settled(el: TonalChartReader, what: () => boolean): Promise<void> {
  await waitUntil(what, finding(el) || 'the reading', {timeout: 15_000, interval: 20});
  await el.updateComplete;
}

/** A shot with the line along the ruler's figures from 40 to 200 mm, and an earlier one. */
async function alongRuler(now: string, earlier?: string): Promise<TonalChartReader> {
  const line = [...figuresAt(40), ...figuresAt(200)].map((share) => `${share * 100}%`).join(' ');
  const el = await fixture<TonalChartReader>(html`<tonal-chart-reader line=${line}></tonal-chart-reader>`);
  expect(await el.open(await shot(now))).to.equal(true);
  if (earlier) el.earlierFile = await shot(earlier);
  await settled(el, () => /focus|unknown/.test(finding(el)) && (!earlier || /orth it|No gain|no detail/.test(finding(el))));
  return el;
}

async function typeInto(el: TonalChartReader, id: string, text: string): Promise<void> {
  const input = el.shadowRoot?.getElementById(id) as HTMLInputElement;
  input.focus();
  input.select();
  await sendKeys({type: text});
  await sendKeys({press: 'Tab'});
  await el.updateComplete;
}

/** Types what the ruler says at both ends, at the cross in the middle, and at the base's front edge. */
async function readRuler(el: TonalChartReader): Promise<void> {
  await typeInto(el, 'ruler-atA', '40');
  await typeInto(el, 'ruler-atMiddle', readOff((figuresAt(40)[1] + figuresAt(200)[1]) / 2).toFixed(1));
  await typeInto(el, 'ruler-atB', '200 mm');
  await typeInto(el, 'ruler-atFront', String(truth.base_front));
  await settled(el, () => finding(el).includes('on the ruler'));
  // Each reading asks anew: the last answer is the one that stands still, however busy the machine.
  for (let before = ''; before !== finding(el);) {
    before = finding(el);
    await new Promise((resolve) => { setTimeout(resolve, 500); });
  }
}

describe('tonal-chart-reader: where is it sharp?', () => {
  it('is loaded only when it is opened, and passes the accessibility audit', async () => {
    const el = await fixture<TonalChartReader>(html`<tonal-chart-reader></tonal-chart-reader>`);
    await el.open(await shot('aperture-f8.jpg'));
    await settled(el, () => words(el).includes('px'));
    expect(end(el, 'a')).to.equal(null);
    section(el).querySelector('summary')?.focus();
    await sendKeys({press: 'Enter'});
    await settled(el, () => finding(el).includes('harp'));
    expect(section(el).querySelector('.profile')).not.to.equal(null);
    await expectAccessible(el);
    section(el).querySelector('summary')?.focus();
    await sendKeys({press: 'Enter'});
    await settled(el, () => end(el, 'a') === null);
  });

  describe('along the rendered ruler', () => {
    for (const [now, earlier] of [['aperture-f2.8', 'aperture-f8'], ['aperture-f16', 'aperture-f8']] as const) {
      it(`finds the focus from ${now} beside ${earlier}`, async () => {
        const el = await alongRuler(`${now}.jpg`, `${earlier}.jpg`);
        await readRuler(el);
        const mm = Number(/focus lies at (\d+) mm on the ruler/.exec(finding(el))?.[1]);
        expect(Math.abs(mm - truth.focus_plane)).to.be.below(FOCUS_TOLERANCE_MM);
        expect(words(el)).to.contain('Worked out from both shots');
      });
    }

    it('finds it in one shot, and the bench takes it when told to', async () => {
      const el = await alongRuler('aperture-f8.jpg');
      await readRuler(el);
      const [, onRuler, behind] = /at (\d+) mm on the ruler, (\d+) mm behind the base’s front edge/.exec(finding(el)) ?? [];
      expect(Math.abs(Number(onRuler) - truth.focus_plane)).to.be.below(FOCUS_TOLERANCE_MM);
      expect(Math.abs(Number(behind) - (truth.focus_plane - truth.base_front))).to.be.below(FOCUS_TOLERANCE_MM);
      const before = el.shot.focus;
      let change: ShotChangeEvent | undefined;
      el.addEventListener('shot-change', (event) => { change = event; });
      await pressed(el, 'behind the front edge');
      await el.updateComplete;
      expect(Math.round(el.shot.focus)).to.equal(Number(behind));
      expect(change?.changes.focus).to.equal(el.shot.focus);
      expect(words(el)).not.to.contain('Use what this photo shows');
      await pressed(el, 'Undo');
      await el.updateComplete;
      expect(el.shot.focus).to.equal(before);
    });

    it('reckons the perspective from the lens while the middle is not read', async () => {
      const el = await alongRuler('aperture-f11.jpg', 'aperture-f2.8.jpg');
      await typeInto(el, 'ruler-atA', '40');
      await typeInto(el, 'ruler-atB', '200');
      expect(words(el)).to.contain('worked out from the lens');
      const mm = Number(/focus lies at (\d+) mm/.exec(finding(el))?.[1]);
      expect(Math.abs(mm - truth.focus_plane)).to.be.below(2 * FOCUS_TOLERANCE_MM);
    });

    it('ranks the series: the smaller aperture was worth it away from the focus, and never the other way round', async () => {
      // Blur of the render falls with every aperture at every depth but the focus (diffraction is not in it).
      for (const [wide, narrow] of [['2.8', '8'], ['8', '16']] as const) {
        const el = await alongRuler(`aperture-f${narrow}.jpg`, `aperture-f${wide}.jpg`);
        expect(finding(el)).to.match(new RegExp(`^Worth it: f/${narrow} is sharper than f/${wide} on \\d+% of the line, most .* less blur`));
        expect(finding(el)).not.to.contain('softer');
        el.remove();
      }
      const el = await alongRuler('aperture-f8.jpg', 'aperture-f16.jpg');
      expect(finding(el)).to.match(/^Not worth it: f\/8 is nowhere sharper than f\/16, and softer on \d+% of the line/);
    });

    it('says when an aperture is past what diffraction lets look sharp', async () => {
      const el = await alongRuler('aperture-f16.jpg', 'aperture-f8.jpg');
      el.pictureWidth = 4000;
      await el.updateComplete;
      // Airy disc at f/16 and 0.2 times life size: 2.44 · 0.55 µm · 19.2 = 26 µm, on 36 mm shown as 4000 px 2.9 px
      expect(words(el)).to.match(/At f\/16 the small opening alone spreads every point to 2\.9 px/);
      el.pictureWidth = 1000;
      await el.updateComplete;
      expect(words(el)).to.contain('within the 1.5 px that look sharp');
    });

    it('says what does not read, and that a reading in the middle lies between the ends', async () => {
      const el = await alongRuler('aperture-f8.jpg');
      await typeInto(el, 'ruler-atA', 'forty');
      expect(words(el)).to.contain('“forty” does not read as');
      await typeInto(el, 'ruler-atA', '40');
      await typeInto(el, 'ruler-atB', '200');
      await typeInto(el, 'ruler-atMiddle', '300');
      expect(words(el)).to.contain('has to lie between the two');
      await expectAccessible(el);
    });
  });

  it('calls a plain backdrop unknown, not soft', async () => {
    const el = await fixture<TonalChartReader>(html`<tonal-chart-reader line="4% 4% 18% 20%"></tonal-chart-reader>`);
    await el.open(await shot('aperture-f8.jpg'));
    await settled(el, () => finding(el).includes('unknown, not soft'));
    expect(section(el).querySelectorAll('.profile .kept').length).to.equal(0);
    expect(section(el).querySelectorAll('.profile .not-known').length).to.equal(1);
    expect(words(el) + section(el).innerHTML).not.to.match(/NaN|Infinity|undefined/);
  });

  it('reads a line once, and again only when something it depends on has changed', async () => {
    const el = await fixture<TonalChartReader>(html`<tonal-chart-reader line="50% 90% 50% 70%"></tonal-chart-reader>`);
    await el.open(await shot('aperture-f8.jpg'));
    await settled(el, () => /focus|unknown/.test(finding(el)));
    let asked = 0;
    const photo = (el as unknown as {photo: {ask: (...args: unknown[]) => Promise<unknown>}}).photo;
    const {ask} = photo;
    photo.ask = (...args) => { asked++; return ask(...args); };
    for (let update = 0; update < 5; update++) {
      el.requestUpdate();
      await el.updateComplete;
      await new Promise((resolve) => { setTimeout(resolve, 20); });
    }
    expect(asked).to.equal(0);
    el.line = {a: [0.5, 0.9], b: [0.5, 0.6]};
    await settled(el, () => asked > 0);
  });

  it('moves an end by keys and by pointer, and lays the line through the crop', async () => {
    const el = await fixture<TonalChartReader>(html`<tonal-chart-reader line="50% 50% 60% 60%"></tonal-chart-reader>`);
    await el.open(await shot('aperture-f8.jpg'));
    await settled(el, () => finding(el) !== '' && end(el, 'a') !== null);
    end(el, 'a').focus();
    await sendKeys({press: 'ArrowLeft'});
    await chord('Shift', 'ArrowUp');
    await el.updateComplete;
    expect(el.line?.a[0]).to.be.closeTo(0.49, 1e-9);
    expect(el.line?.a[1]).to.be.closeTo(0.499, 1e-9);
    expect(end(el, 'a').getAttribute('aria-valuetext')?.replace(/\s/g, ' ')).to.equal('49% from the left, 50% from the top');
    expect(el.crop.width, 'the crop is left alone').to.equal(1);
    end(el, 'b').scrollIntoView({block: 'center'});
    const stage = (el.shadowRoot?.querySelector('.stage') as Element).getBoundingClientRect();
    const hit = end(el, 'b').querySelector('.hit')?.getBoundingClientRect() as DOMRect;
    expect(Math.min(hit.width, hit.height)).to.be.at.least(40);
    await sendMouse({type: 'move', position: [Math.round(hit.x + 20), Math.round(hit.y + 20)]});
    await sendMouse({type: 'down'});
    await sendMouse({type: 'move', position: [Math.round(hit.x + 20 + 0.2 * stage.width), Math.round(hit.y + 20)]});
    await sendMouse({type: 'up'});
    await el.updateComplete;
    expect(el.line?.b[0]).to.be.closeTo(0.8, 0.01);
    expect(el.line?.b[1]).to.be.closeTo(0.6, 0.01);
    expect(el.crop.width).to.equal(1);
    el.crop = {left: 0.2, top: 0.2, width: 0.4, height: 0.5};
    await pressed(el, 'Side to side');
    expect(el.line?.a[1]).to.be.closeTo(0.45, 1e-9);
    expect(el.line?.b[1]).to.be.closeTo(0.45, 1e-9);
    await pressed(el, 'Front to back');
    await el.updateComplete;
    await settled(el, () => /sharp/.test(finding(el)));
    onRuler(el);
  });

  it('lays the line along the ruler of itself, and says other parts are sharp at other apertures', async () => {
    const sharp: number[] = [];
    for (const name of ['aperture-f2.8.jpg', 'aperture-f8.jpg', 'aperture-f16.jpg']) {
      const el = await fixture<TonalChartReader>(html`<tonal-chart-reader></tonal-chart-reader>`);
      await el.open(await shot(name));
      section(el).querySelector('summary')?.focus();
      await sendKeys({press: 'Enter'});
      await settled(el, () => /sharp/.test(finding(el)));
      onRuler(el);
      const [, from, to] = /from (\d+)% to (\d+)%\./.exec(finding(el)) ?? [];
      // The rendered focus plane is in the piece that is sharp
      const [a, b] = [placeOf(el, 'a'), placeOf(el, 'b')];
      const [near, far] = [from, to].map((percent) => readOff(a[1] + (b[1] - a[1]) * Number(percent) / 100));
      expect(near).to.be.below(truth.focus_plane + FOCUS_TOLERANCE_MM);
      expect(far).to.be.above(truth.focus_plane - FOCUS_TOLERANCE_MM);
      sharp.push((far as number) - (near as number));
      expect(words(el)).to.contain('belongs on a ruler');
      el.remove();
    }
    expect(sharp, sharp.join()).to.deep.equal([...sharp].sort((one, other) => one - other));
    expect(new Set(sharp).size).to.equal(3);
  });

  it('lays the line low in the crop, beside what stands there, where no line shows a focus', async () => {
    const el = await fixture<TonalChartReader>(html`<tonal-chart-reader></tonal-chart-reader>`);
    await el.open(await drawn(300, 200, (pen) => { fill(pen, [80, 80, 80], 0, 0, 300, 200); }));
    el.crop = {left: 0.2, top: 0.2, width: 0.4, height: 0.5};
    section(el).querySelector('summary')?.focus();
    await sendKeys({press: 'Enter'});
    await settled(el, () => finding(el).includes('unknown, not soft'));
    const [a, b] = [placeOf(el, 'a'), placeOf(el, 'b')];
    expect(a[0]).to.be.within(0.5, 0.6);
    expect(b[0]).to.be.within(0.45, a[0]);
    expect(a[1]).to.be.within(0.65, 0.7);
    expect(b[1]).to.be.closeTo(0.2 + 0.5 * 2 / 3, 1e-3);
  });

  it('joins pieces that a stray reading parts, and drops stray pieces beside longer ones', () => {
    const {say} = english;
    const places = {write: (along: number) => placeOnWay(english, along), onRuler: false};
    const said = (...pieces: readonly (readonly [number, number])[]) =>
      sharpText(english, pieces.map(([from, to]) => ({from, to})), true, places);
    expect(say.percent(0.5)).to.equal('50%');
    expect(said([0.5, 0.62], [0.63, 0.66])).to.equal('On the way from A to B it is sharp from 50% to 66%.');
    expect(said([0.1, 0.11], [0.5, 0.6])).to.equal('On the way from A to B it is sharp from 50% to 60%.');
    expect(said([0, 0.2], [0.5, 0.6])).to.equal('On the way from A to B it is sharp from A to 20% and from 50% to 60%.');
    expect(said([0.5, 0.51])).to.equal('On the way from A to B it is sharp from 50% to 51%.');
    expect(said([0, 1])).to.equal('As sharp from A to B as at its sharpest.');
  });

  it('keeps the last good line and says what is wrong with another', async () => {
    const el = await fixture<TonalChartReader>(html`<tonal-chart-reader line="50% 50% 60% 60%"></tonal-chart-reader>`);
    await el.open(await drawn(64, 64, (pen) => { fill(pen, [80, 80, 80], 0, 0, 64, 64); }));
    let problem: ShotProblemEvent | undefined;
    el.addEventListener('shot-problem', (event) => { problem = event; });
    el.setAttribute('line', 'along the ruler');
    await settled(el, () => words(el).includes('“along the ruler” does not read as'));
    expect(problem?.problem.parameter).to.equal('line');
    expect(el.line?.b).to.deep.equal([0.6, 0.6]);
  });

  it('lays squares over the photo: sharp, soft and unknown, and against an earlier shot what changed', async () => {
    const el = await alongRuler('aperture-f8.jpg');
    const cells = (name: string) => el.shadowRoot?.querySelector(`.heat .${name}`)?.getAttribute('d')?.match(/M/g)?.length ?? 0;
    await pressed(el, 'Show it over the photo');
    await settled(el, () => el.shadowRoot?.querySelector('.heat') !== null && !section(el).textContent?.includes('Looking…'));
    expect(cells('sharp')).to.be.above(20);
    expect(cells('soft')).to.be.above(20);
    expect(cells('unknown'), 'the backdrop').to.be.above(200);
    await expectAccessible(el);
    el.earlierFile = await shot('aperture-f2.8.jpg');
    await settled(el, () => cells('sharper') > 0 && !section(el).textContent?.includes('Looking…'));
    expect(cells('sharper')).to.be.above(3 * cells('softer'));
    await pressed(el, 'Show it over the photo');
    await settled(el, () => el.shadowRoot?.querySelector('.heat') === null);
  });
});
