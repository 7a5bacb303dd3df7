import {expect, fixture, html, waitUntil} from '@open-wc/testing';
import {sendKeys, sendMouse} from '@web/test-runner-commands';
import {rgb} from 'culori';
import {expectAccessible} from '../audit.js';
import {chord} from '../hands.js';
import '../../src/elements/backdrop-shade/define.js';
import '../../src/elements/stop-trade-dial/define.js';
import type {StopTradeDial} from '../../src/elements/stop-trade-dial/class.js';
import type {BackdropShade} from '../../src/elements/backdrop-shade/class.js';
import {brightestBelowGray} from '../../src/core/light/reach.js';
import {penumbraWidth, umbraWidth} from '../../src/core/light/flag.js';
import {completeShot} from '../../src/core/shot/shot.js';
import {visibleShare} from '../../src/core/light/lamp.js';
import {boxOf, edgesOf, placeLabels} from '../../src/elements/backdrop-shade/labels.js';
import {moveFor, shadowOf, sheetFor, spotOf} from '../../src/elements/backdrop-shade/draw.js';
import {readSet, setOf} from '../../src/elements/backdrop-shade/reading.js';
import {words as english} from '../../src/elements/backdrop-shade/words/en.js';
import {benchNamed} from '../../src/elements/shared/bench.js';
import type {ShotChangeEvent, ShotProblemEvent} from '../../src/elements/shared/events.js';

const KEY_FILL = 'key 180x180 at -230,-200,300 aim 0,0,45 power 0; fill 420x420 at 360,-330,180 aim 0,0,45 power -1.492';
/** 52 W beside the key's 9 W: log2(52 / 9). */
const SPILL = `${KEY_FILL}; ceiling lamp 130x130 at 70,170,620 aim 40,230,0 power 2.531`;

/** Once it is drawn for the width it has. */
async function drawn(el: BackdropShade): Promise<BackdropShade> {
  for (let frame = 0; frame < 3; frame++) await new Promise((done) => { requestAnimationFrame(done); });
  await el.updateComplete;
  return el;
}

/** The set of the rendered series, drawn for the width it has. */
async function spoiled(lights = SPILL): Promise<BackdropShade> {
  const el = await fixture<BackdropShade>(html`
  <backdrop-shade lights=${lights} backdrop-distance="300 mm" backdrop-reflectance="5%" figure-width="80 mm" base-depth="90 mm"
    figure-height="94.6 mm" field-width="171.55 mm" focal-length="50 mm" sensor-width="23.5 mm" sensor-height="15.6 mm" tilt="6">
    Code 80: the ceiling lamp lights the backdrop.
  </backdrop-shade>`);
  return drawn(el);
}

const tidy = (text: string | null | undefined) => text?.replace(/[\s\u202f]+/g, ' ').trim() ?? '';
const words = (el: Element) => tidy(el.shadowRoot?.textContent);
const verdict = (el: Element) => tidy(el.shadowRoot?.querySelector('.verdict')?.textContent);
const all = <T extends Element>(el: Element, selector: string) => [...el.shadowRoot?.querySelectorAll<T & HTMLElement>(selector) ?? []];
const one = <T extends Element>(el: Element, selector: string) => all<T>(el, selector)[0] as T & HTMLElement;
const handle = (el: Element, thing: string, view: string) => one<SVGGElement>(el, `[data-thing=${thing}][data-view=${view}]`);
const button = (el: Element, text: string) => all<HTMLButtonElement>(el, 'button').find((candidate) => tidy(candidate.textContent).includes(text)) as HTMLButtonElement;

/** Opens a fold, whose inside is fetched then. */
async function unfold(el: BackdropShade, name: 'photo' | 'mains' | 'things' | 'set-up'): Promise<void> {
  one<HTMLDetailsElement>(el, `#fold-${name}`).open = true;
  await new Promise((done) => { setTimeout(done); }); // the toggle event comes in a task of its own
  await el.updateComplete;
}

async function typeInto(el: BackdropShade, id: string, text: string): Promise<void> {
  const input = el.shadowRoot?.getElementById(id) as HTMLInputElement;
  for (let around: Element | null = input; around; around = around.parentElement) if (around instanceof HTMLDetailsElement) around.open = true;
  input.focus();
  input.select();
  await sendKeys({type: text});
  await sendKeys({press: 'Tab'});
  await el.updateComplete;
}

/** Until a search has answered. */
async function found(el: BackdropShade): Promise<HTMLButtonElement[]> {
  for (let wait = 0; wait < 200 && (wait === 0 || words(el).includes('Looking…')); wait++) await new Promise((done) => { setTimeout(done, 25); });
  await el.updateComplete;
  return all<HTMLButtonElement>(el, '.ways button');
}

interface Truth {
  readonly shots: readonly {
    readonly file: string;
    readonly scene: {readonly backdrop: {readonly upright_face_y: number; readonly probe_centre_mm: readonly [number, number, number]}};
    readonly flag_box_mm?: {readonly lo: readonly number[]; readonly hi: readonly number[]};
    readonly measured: {readonly backdrop_probe: {readonly mean_linear: readonly [number, number, number]}};
  }[];
}

describe('backdrop-shade, drawing', () => {
  const lamp = {kind: 'rectangle', width: 100, height: 100, position: [0, -300, 600], aim: [0, 0, 600], power: 0} as const;
  const flag = {position: [0, -100, 600], facing: [0, 1, 0], width: 200, height: 200} as const;
  const shot = completeShot({lights: {lamps: [{...lamp, name: 'lamp'}], flags: [flag], table: 0}, backdropDistance: 100});
  for (const width of [280, 600, 1000]) {
    it(`draws full shadow and soft edge as wide as they are, on a sheet ${width} px wide`, () => {
      const sheet = sheetFor(width, readSet(shot));
      for (const view of ['plan', 'side'] as const) {
        const {soft, full} = shadowOf(sheet, view, flag, lamp, 100);
        const wall = spotOf(sheet, view, [0, 100, 0])[0];
        const span = (spots: readonly (readonly [number, number])[]) => {
          const downs = spots.filter(([x]) => Math.abs(x - wall) < 0.01).map(([, y]) => y);
          return (Math.max(...downs) - Math.min(...downs)) / sheet.scale;
        };
        // umbra and penumbra as published for geometric unsharpness (tests/core/light/flag.test.ts)
        expect(span(full)).to.be.closeTo(umbraWidth(200, 100, 200, 200), 0.01);
        expect(span(soft)).to.be.closeTo(umbraWidth(200, 100, 200, 200) + 2 * penumbraWidth(100, 200, 200), 0.01);
      }
    });
    it(`keeps everything on a sheet ${width} px wide, both views to one scale`, () => {
      const sheet = sheetFor(width, readSet(completeShot({})));
      for (const [x, y] of [[-230, -200], [360, -330], [0, 500]] as const) {
        const [along, down] = spotOf(sheet, 'plan', [x, y, 0]);
        expect(along).to.be.within(0, width);
        expect(down).to.be.within(0, sheet.divide);
      }
      expect(spotOf(sheet, 'side', [0, 0, 300])[1]).to.be.within(sheet.divide, sheet.floor);
      expect(moveFor(sheet, 'plan', 10, 0)[1]).to.be.closeTo(moveFor(sheet, 'side', 10, 0)[1], 1e-9);
    });
  }
});

describe('backdrop-shade, names in the drawing', () => {
  const field = {left: 0, right: 280, top: 0, bottom: 300};
  const apart = (a: ReturnType<typeof boxOf>, b: ReturnType<typeof boxOf>) =>
    a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;

  it('stand apart from each other and inside, however near the dots', () => {
    const dots = [{x: 140, y: 100, text: 'key'}, {x: 150, y: 104, text: 'fill'}, {x: 275, y: 150, text: 'backdrop'}, {x: 4, y: 8, text: 'camera'}];
    const boxes = placeLabels(dots, field, [], []).map((label, at) => boxOf(label, dots[at]?.text ?? ''));
    boxes.forEach((box, at) => {
      expect(box.left).to.be.at.least(0);
      expect(box.right).to.be.at.most(280);
      expect(box.top).to.be.at.least(0);
      for (const other of boxes.slice(at + 1)) expect(apart(box, other)).to.equal(true);
    });
  });

  it('keep off lines where there is room', () => {
    const wall = {left: 137, right: 143, top: 0, bottom: 300};
    const [label] = placeLabels([{x: 140, y: 100, text: 'backdrop'}], field, [], [wall]);
    expect(label && apart(boxOf(label, 'backdrop'), wall)).to.equal(true);
  });

  it('keep off the slanting outline of a lamp', () => {
    // Over its dot the name would lie on the upper edge.
    const edge = edgesOf([[100, 80], [180, 96]]);
    const [label] = placeLabels([{x: 140, y: 100, text: 'camera'}], field, [], edge);
    expect(label && edge.every((box) => apart(boxOf(label, 'camera'), box))).to.equal(true);
    // The row of boxes has no gap that a letter would fit into, and goes round.
    expect(edge.length).to.be.above(2 * 80 / 7);
  });
});

describe('backdrop-shade', () => {
  for (const width of [280, 390, 600, 1200]) {
    it(`draws no letter under 12 px and none over another, ${width} px wide`, async () => {
      const page = await fixture<HTMLDivElement>(html`<div><backdrop-shade lights=${SPILL} backdrop-distance="300 mm"></backdrop-shade></div>`);
      page.style.width = `${width}px`;
      const el = await drawn(page.querySelector('backdrop-shade') as BackdropShade);
      for (const drawing of all<SVGElement>(el, 'svg')) {
        const texts = [...drawing.querySelectorAll('text')].map((text) => ({text, box: text.getBoundingClientRect()}));
        for (const [at, {text, box}] of texts.entries()) {
          expect(parseFloat(getComputedStyle(text).fontSize), text.textContent ?? '').to.be.at.least(12);
          for (const {text: other, box: its} of texts.slice(at + 1)) {
            // 3 px of a letter's box are the room about its line
            const over = box.left < its.right - 1 && its.left < box.right - 1 && box.top < its.bottom - 3 && its.top < box.bottom - 3;
            expect(over, `${text.textContent} over ${other.textContent}`).to.equal(false);
          }
        }
      }
      expect(el.scrollWidth).to.be.at.most(width);
    });
  }

  it('asks how dark the backdrop should be, with the reason, before it shows what it is held to', async () => {
    const el = await spoiled();
    const field = one<HTMLInputElement>(el, '#backdrop-wish');
    expect(field.labels?.[0]?.textContent).to.equal('How dark should the backdrop be?');
    expect(tidy(one(el, '#backdrop-wish-hint').textContent)).to.contain('the less its creases and stray light show');
    expect(field.compareDocumentPosition(one(el, '.strip')) & Node.DOCUMENT_POSITION_FOLLOWING).to.be.above(0);
    await typeInto(el, 'backdrop-wish', '2');
    expect(el.backdropWish).to.equal(2);
  });

  it('passes the accessibility audit, at rest, with a flag chosen and with a problem', async () => {
    const el = await spoiled(`${SPILL}; flag 200x200 at 70,260,300 facing up`);
    await expectAccessible(el);
    await unfold(el, 'things');
    button(el, 'flag').click();
    el.setAttribute('lights', 'key at dawn');
    el.setAttribute('backdrop-wish', 'very dark');
    await el.updateComplete;
    await expectAccessible(el);
  });

  it('works with nothing stated: key and fill before a black card', async () => {
    const el = await fixture<BackdropShade>(html`<backdrop-shade></backdrop-shade>`);
    const {brightest} = readSet(el.shot);
    expect(verdict(el)).to.equal(`At its brightest the backdrop will be dark gray: ${brightest.belowGray.toFixed(1)} stops under the gray card, value ${Math.round(brightest.code)} of 255.`);
    expect(el.lights.lamps.map(({name}) => name)).to.deep.equal(['key', 'fill']);
  });

  describe('against the rendered backdrop series', () => {
    // Direct light from geometry alone, within 0.2 stop: notes of the shots, tests/reference/README.md
    for (const [file, lights] of [['key', KEY_FILL], ['twice-as-far', KEY_FILL], ['spill', SPILL], ['spill-flag', SPILL]] as const) {
      it(`backdrop-${file}.jpg shows on the strip as the picture shows it`, async () => {
        const truth = await (await fetch(new URL('../reference/shots/shots.json', import.meta.url))).json() as Truth;
        const shot = truth.shots.find((candidate) => candidate.file === `backdrop-${file}.jpg`);
        if (!shot) throw new Error('no such shot');
        const el = await spoiled(lights);
        const {upright_face_y: distance, probe_centre_mm: [x]} = shot.scene.backdrop;
        el.setAttribute('backdrop-distance', `${distance} mm`);
        if (shot.flag_box_mm) {
          const {lo, hi} = shot.flag_box_mm as {lo: number[]; hi: number[]};
          const [wide, , high] = hi.map((end, axis) => end - (lo[axis] ?? 0));
          el.setAttribute('lights', `${lights}; flag ${wide}x${high} at ${hi.map((end, axis) => (end + (lo[axis] ?? 0)) / 2).join(',')} facing camera`);
        }
        await el.updateComplete;
        const [, green] = shot.measured.backdrop_probe.mean_linear;
        const {rows: [, middle = []], seen, brightest} = readSet(el.shot);
        expect(seen.left).to.be.below(x);
        const near = middle.reduce((best, level) => (Math.abs(level.at[0] - x) < Math.abs(best.at[0] - x) ? level : best));
        expect(Math.abs(Math.log2(near.linear / green)), 'stops off on the strip').to.be.at.most(0.2);
        const [, said] = /value (\d+) of 255/.exec(verdict(el)) ?? [];
        expect(Number(said)).to.equal(Math.round(brightest.code));
        expect(brightest.linear).to.be.at.least(near.linear);
      });
    }

    it('finds a card’s place that darkens the spoiled set, in one search, and one click stands it there', async () => {
      const el = await spoiled();
      const before = readSet(el.shot);
      button(el, 'Find a place').click();
      await el.updateComplete;
      expect(words(el)).to.contain('Looking…');
      const [first] = await found(el);
      expect(tidy(first?.textContent)).to.match(/^Stand a card .* in the way of the ceiling lamp .* above the table; from the middle of the base .* the figure keeps all of its light/);
      let changes: ShotChangeEvent | undefined;
      el.addEventListener('shot-change', (event) => { changes = event; });
      first?.focus();
      first?.click();
      await el.updateComplete;
      const after = readSet(el.shot);
      expect(el.lights.flags).to.have.length(1);
      expect(changes?.changes.lights?.flags).to.have.length(1);
      expect(after.brightest.belowGray).to.be.above(before.brightest.belowGray + 1);
      // The card hides the lamp: what remains is as dark as the set without it.
      const set = setOf(el.shot);
      const without = {...set, lamps: set.lamps.slice(0, 2), flags: []};
      expect(brightestBelowGray(set, after.places)).to.be.closeTo(brightestBelowGray(without, after.places), 1e-6);
      expect(words(el)).to.contain('The figure keeps all of its light.');
      await unfold(el, 'things');
      expect(all(el, '#thing input')).to.have.length(7); // the new flag is chosen, to be adjusted
      expect(words(el)).to.contain('Done: Stand a card');
      button(el, 'Undo').click();
      await el.updateComplete;
      expect(el.shadowRoot?.activeElement?.textContent, 'the way that was taken back').to.equal(first?.textContent);
      expect(el.lights.flags).to.have.length(0);
      expect(readSet(el.shot).brightest.belowGray).to.equal(before.brightest.belowGray);
    });

    it('finds a card for the set it comes with, dark enough, though none could hide all of the key', async () => {
      const el = await fixture<BackdropShade>(html`<backdrop-shade backdrop-distance="300 mm" backdrop-reflectance="black card" base-depth="90 mm"
        figure-height="95 mm" field-width="187 mm" focal-length="60 mm"></backdrop-shade>`);
      expect(readSet(el.shot).short).to.be.above(1.5);
      button(el, 'Find a place').click();
      const [first] = await found(el);
      expect(tidy(first?.textContent)).to.match(/^Stand a card .* in the way of the key .* the figure keeps all of its light/);
      first?.click();
      await el.updateComplete;
      expect(readSet(el.shot).short).to.be.at.most(0);
      button(el, 'Undo').click();
      await el.updateComplete;
      // The ways are there again; the second, too, has the focus when it was taken and taken back.
      const [, second] = all<HTMLButtonElement>(el, '.ways button');
      const text = second?.textContent;
      second?.focus();
      second?.click();
      await el.updateComplete;
      button(el, 'Undo').click();
      await el.updateComplete;
      expect(el.shadowRoot?.activeElement?.textContent).to.equal(text);
    });

    it('finds the smallest move that does it and sets the shutter that pays for it', async () => {
      const el = await spoiled(`${KEY_FILL}`);
      el.setAttribute('backdrop-wish', '3');
      el.setAttribute('shutter', '1/4');
      await el.updateComplete;
      button(el, 'Smallest move').click();
      const ways = (await found(el)).filter((way) => tidy(way.textContent).startsWith('Move'));
      expect(ways.length).to.be.above(0);
      const lamp = ways.find((way) => tidy(way.textContent).includes('restores it'));
      const time = el.shutter;
      const {onCard} = readSet(el.shot);
      (lamp ?? ways[0])?.click();
      await el.updateComplete;
      const after = readSet(el.shot);
      expect(after.brightest.belowGray).to.be.at.least(2.95);
      expect(Math.abs(Math.log2(el.shutter * after.onCard / (time * onCard)))).to.be.at.most(1 / 6 + 1e-9); // half a third-stop click
      expect(words(el)).to.contain('As dark as you want it');
    });
  });

  it('counts light lost to close-up as the dial does: one exposure, whoever speaks of it', async () => {
    // Metered at life size, where two stops are lost (textbooks, from memory), and shot from so far away that none is.
    const page = await fixture<HTMLElement>(html`<div>
      <stop-trade-dial bench="shade-close-up" metered-aperture="f/8" metered-shutter="1/4" aperture="f/8" shutter="1/4"></stop-trade-dial>
      <backdrop-shade bench="shade-close-up" sensor-width="36 mm" field-width="36 mm"></backdrop-shade>
    </div>`);
    const [dial, el] = [page.children[0] as StopTradeDial, page.children[1] as BackdropShade];
    const bench = benchNamed('shade-close-up');
    expect(words(el)).to.contain('Exposed so that a gray card beside the figure shows as 118');
    bench.change({...bench.state, values: {...bench.state.values, meteredMagnification: 1, fieldWidth: 1e6, shutter: 1 / 16}});
    await Promise.all([dial.updateComplete, el.updateComplete]);
    expect(verdict(dial)).to.match(/gives the same light/);
    expect(words(el)).to.contain('Exposed so that a gray card beside the figure shows as 118');
    bench.change({...bench.state, values: {...bench.state.values, shutter: 1 / 4}});
    await Promise.all([dial.updateComplete, el.updateComplete]);
    expect(verdict(dial)).to.contain('is 2 stops brighter');
    expect(words(el)).to.contain('Exposed 2 stops brighter than asked for');
  });

  it('calls key and fill what the language calls them, also in their field, and the shot keeps key and fill', async () => {
    const page = await fixture<HTMLElement>(html`<div lang="de"><backdrop-shade></backdrop-shade></div>`);
    const el = page.firstElementChild as BackdropShade;
    await waitUntil(() => verdict(el), 'the words arrive');
    await unfold(el, 'things');
    const name = () => (el.shadowRoot?.getElementById('lamp-name') as HTMLInputElement).value;
    expect(name()).to.equal('Hauptlicht');
    await typeInto(el, 'lamp-name', 'Fenster links');
    expect(el.lights.lamps[0]?.name).to.equal('Fenster links');
    await typeInto(el, 'lamp-name', 'Hauptlicht');
    expect(el.lights.lamps[0]?.name).to.equal('key');
    expect(name()).to.equal('Hauptlicht');
  });

  it('moves by keys in both views: 10 mm, 50 with Shift, never below the table', async () => {
    const el = await spoiled();
    handle(el, 'lamp0', 'plan').focus();
    await sendKeys({press: 'ArrowRight'});
    await sendKeys({press: 'ArrowUp'});
    expect(el.lights.lamps[0]?.position).to.deep.equal([-240, -190, 300]);
    handle(el, 'lamp0', 'side').focus();
    await chord('Shift', 'ArrowUp');
    expect(el.lights.lamps[0]?.position).to.deep.equal([-240, -190, 350]);
    for (let press = 0; press < 9; press++) await chord('Shift', 'ArrowDown');
    expect(el.lights.lamps[0]?.position[2]).to.equal(0);
    handle(el, 'backdrop', 'plan').focus();
    await chord('Shift', 'ArrowRight');
    expect(el.backdropDistance).to.equal(350);
    const {camera} = setOf(el.shot);
    handle(el, 'camera', 'side').focus();
    await chord('Shift', 'ArrowLeft');
    expect((camera?.[1] ?? 0) - (setOf(el.shot).camera?.[1] ?? 0)).to.be.closeTo(50, 1e-6);
  });

  it('drags a lamp in the plan by as much as the pointer goes, to scale', async () => {
    const el = await spoiled();
    one(el, '.drawing').scrollIntoView();
    const middle = (thing: string) => {
      const box = (handle(el, thing, 'plan').querySelector('.grip') as SVGElement).getBoundingClientRect();
      return [box.x + box.width / 2, box.y + box.height / 2] as const;
    };
    const [lamp, fill] = [middle('lamp0'), middle('lamp1')];
    // 130 mm lie between the two along the table: -200 and -330
    const scale = (lamp[0] - fill[0]) / 130;
    await sendMouse({type: 'move', position: [Math.round(lamp[0]), Math.round(lamp[1])]});
    await sendMouse({type: 'down'});
    await sendMouse({type: 'move', position: [Math.round(lamp[0]) - Math.round(50 * scale), Math.round(lamp[1]) - Math.round(100 * scale)]});
    await sendMouse({type: 'up'});
    await el.updateComplete;
    const [x, y, z] = el.lights.lamps[0]?.position ?? [];
    expect(x).to.be.closeTo(-330, 6);
    expect(y).to.be.closeTo(-250, 6);
    expect(z).to.equal(300);
    expect([...handle(el, 'lamp0', 'plan').classList]).to.include('chosen');
    expect(tidy(one(el, '.ways')?.textContent)).to.match(/Set 0?[\d./]+ s the figure now gets [\d.]+ stops? less light/);
  });

  it('holds the figure’s light against its meter after a reader’s move, not after a script’s', async () => {
    const el = await spoiled();
    el.setAttribute('lights', 'key 180x180 at -330,-250,300');
    await el.updateComplete;
    expect(words(el)).not.to.contain('than when it was metered');
    handle(el, 'lamp0', 'plan').focus();
    for (let press = 0; press < 12; press++) await sendKeys({press: 'ArrowUp'});
    const before = readSet(el.shot).onCard;
    const way = button(el, 'than when it was metered');
    way.click();
    await el.updateComplete;
    expect(readSet(el.shot).onCard).to.equal(before);
    expect(el.shutter).to.be.above(0.25);
    expect(words(el)).not.to.contain('than when it was metered');
  });

  it('takes typed sizes and places of what is chosen, and keeps text that cannot be used', async () => {
    const el = await spoiled();
    await unfold(el, 'things');
    await typeInto(el, 'at-2', '35 cm');
    expect(el.lights.lamps[0]?.position).to.deep.equal([-230, -200, 350]);
    let problem: ShotProblemEvent | undefined;
    el.addEventListener('shot-problem', (event) => { problem = event; });
    await typeInto(el, 'width', 'wide');
    expect(words(el)).to.contain('“wide” does not read as a length');
    expect((el.shadowRoot?.getElementById('width') as HTMLInputElement).value).to.equal('wide');
    expect(el.lights.lamps[0]?.width).to.equal(180);
    expect(problem?.problem.value).to.equal('wide');
    await typeInto(el, 'power', '-1 1/2');
    expect(el.lights.lamps[0]?.power).to.equal(-1.5);
  });

  it('adds a window that spoils it, and takes it away again', async () => {
    const el = await fixture<BackdropShade>(html`<backdrop-shade></backdrop-shade>`);
    const before = readSet(el.shot).brightest.belowGray;
    await unfold(el, 'things');
    button(el, 'A window').click();
    await el.updateComplete;
    expect(el.lights.lamps.at(-1)?.name).to.equal('window');
    expect(readSet(el.shot).brightest.belowGray).to.be.below(before - 0.5);
    button(el, 'Take the window away').click();
    await el.updateComplete;
    expect(readSet(el.shot).brightest.belowGray).to.be.closeTo(before, 1e-9);
  });

  it('never loses the last lamp', async () => {
    const el = await fixture<BackdropShade>(html`<backdrop-shade lights="bulb at 0,-400,400"></backdrop-shade>`);
    await unfold(el, 'things');
    expect(button(el, 'away')).to.equal(undefined);
  });

  it('keeps the last good set and says what is wrong with text that cannot be read', async () => {
    const el = await spoiled();
    const before = verdict(el);
    let problem: ShotProblemEvent | undefined;
    el.addEventListener('shot-problem', (event) => { problem = event; });
    el.setAttribute('lights', 'key 180x180 at <b>noon</b>');
    await el.updateComplete;
    expect(verdict(el)).to.equal(before);
    expect(el.lights.lamps).to.have.length(3);
    expect(problem?.problem.parameter).to.equal('lights');
    expect(one<HTMLInputElement>(el, '#lights').value).to.equal('key 180x180 at <b>noon</b>');
    expect(words(el)).to.contain('“key 180x180 at <b>noon</b>” does not read as a lamp or flag');
    expect(el.shadowRoot?.querySelector('b')).to.equal(null);
    el.setAttribute('lights', KEY_FILL);
    await el.updateComplete;
    expect(el.lights.lamps).to.have.length(2);
  });

  it('keeps the picture when no lamp lights the figure', async () => {
    const el = await spoiled();
    const before = verdict(el);
    el.setAttribute('lights', 'torch small at 0,100,100 aim 0,300,100');
    await el.updateComplete;
    expect(verdict(el)).to.equal(before);
    expect(words(el)).to.contain('at least one lamp that lights the figure');
  });

  it('names a card that stands near a lamp, and never leaves out the cautions', async () => {
    const el = await spoiled(`${SPILL}; flag 150x150 at 70,170,560 facing up`);
    expect(words(el)).to.match(/The flag stands (only \d+ mm from|at the face of) the ceiling lamp/);
    for (const name of ['no-cautions', 'hidden-cautions', 'cautions']) el.setAttribute(name, 'false');
    await el.updateComplete;
    for (const caution of english({} as never).cautions) expect(words(el)).to.contain(caution);
    expect(one(el, '.cautions').closest('.screen-only, details')).to.equal(null);
  });

  it('says when a flag takes light from the figure', async () => {
    const el = await spoiled(`${KEY_FILL}; flag 120x120 at -115,-100,172 facing camera`);
    const {shares, set} = readSet(el.shot);
    expect(words(el)).to.match(/A flag takes up to \d+% of the key from part of the figure/);
    expect(Math.min(...shares)).to.be.below(0.5);
    expect(visibleShare(set.lamps[0] as never, set.figure.card, set.flags)).to.be.below(1);
  });

  it('lays a photo’s level beside the prediction and names the likeliest lamp', async () => {
    const el = await spoiled(KEY_FILL);
    await unfold(el, 'photo');
    await typeInto(el, 'photo-code', '81'); // the rendered picture with the ceiling lamp
    expect(words(el)).to.contain('rather a window or a lamp that is not in the plan');
    await typeInto(el, 'photo-code', '300');
    expect(words(el)).to.contain('“300” does not read as a value from 0 to 255');
    await typeInto(el, 'photo-code', String(Math.round(readSet(el.shot).brightest.code)));
    expect(words(el)).to.contain('The photo agrees with the plan');
  });

  it('takes the level that was measured on the bench’s photo', async () => {
    const el = await fixture<BackdropShade>(html`<backdrop-shade bench="shade-level" lights=${KEY_FILL}></backdrop-shade>`);
    const channel = {mean: 0.0824, spread: 0, code: 80.6}; // the rendered spill picture, green mean of its probe
    benchNamed('shade-level').put({level: {red: channel, green: channel, blue: channel, luminance: channel, stopsFromGray: -1.1, atWhite: 0, atBlack: 0, pixels: 9}});
    await el.updateComplete;
    await unfold(el, 'photo');
    button(el, 'Take 81 from the photo').click();
    await el.updateComplete;
    expect(tidy(one(el, '#beside').textContent)).to.match(/^The photo’s backdrop is [\d.]+ stops? brighter than the plan says\. Likeliest of the plan: the (key|fill)/);
  });

  it('shows codes at the exposure that is set: a gray card metered and given a stop more is twice as bright', async () => {
    // code of twice 0.18 in linear light, by an independent colour library (culori)
    const twice = rgb({mode: 'lrgb', r: 0.36, g: 0.36, b: 0.36});
    const el = await fixture<BackdropShade>(html`<backdrop-shade metered-shutter="1/4" shutter="1/2"></backdrop-shade>`);
    expect(tidy(one(el, '.strip text').textContent)).to.equal(String(Math.round(255 * twice.r)));
    expect(words(el)).to.contain('Exposed 1 stop brighter than asked for');
  });

  it('says so when no light reaches the backdrop', async () => {
    const el = await fixture<BackdropShade>(html`<backdrop-shade lights="key 180x180 at -230,-200,300; flag 4000x4000 at 0,300,500"></backdrop-shade>`);
    await drawn(el);
    expect(verdict(el)).to.equal('No light reaches the backdrop: black, value 0 of 255.');
    await unfold(el, 'photo');
    await typeInto(el, 'photo-code', '40');
    expect(words(el)).to.contain('comes from a lamp that is not in it');
    expect(el.shadowRoot?.innerHTML).not.to.match(/NaN|Infinity/);
  });

  it('speaks inches to those who think in them', async () => {
    const el = await drawn(await fixture<BackdropShade>(html`<backdrop-shade unit="in" backdrop-distance="20 in"></backdrop-shade>`));
    expect(one<HTMLInputElement>(el, '#backdrop-distance').value).to.equal('20 in');
    await unfold(el, 'things');
    await typeInto(el, 'at-2', '10');
    expect(el.lights.lamps[0]?.position[2]).to.be.closeTo(254, 1e-9);
  });

  it('says whether mains lamps come out even, and sets the nearest even time with the aperture that pays', async () => {
    const el = await fixture<BackdropShade>(html`<backdrop-shade shutter="1/60" aperture="f/8" mains="50"></backdrop-shade>`);
    await unfold(el, 'mains');
    expect(words(el)).to.contain('At 1/60 s LED and tube lamps on 50 Hz mains can come out uneven');
    const way = all<HTMLButtonElement>(el, 'details:has(#mains) .ways button').find((candidate) => tidy(candidate.textContent).includes('1/50'));
    way?.click();
    await el.updateComplete;
    // 1/50 s takes in two pulses of 1/100 s: whole pulses come out even (photo-spectrum.info, 2017)
    expect(el.shutter).to.be.closeTo(1 / 50.8, 1e-4);
    expect(words(el)).to.contain('come out even');
    el.setAttribute('mains', '60');
    await el.updateComplete;
    expect(words(el)).to.contain('60 Hz');
  });

  it('shares its set by bench, both ways', async () => {
    const page = await fixture<HTMLDivElement>(html`<div>
      <backdrop-shade bench="shade-test" lights="key 180x180 at -230,-200,300"></backdrop-shade><backdrop-shade bench="shade-test"></backdrop-shade><p></p>
    </div>`);
    const [a, b] = page.querySelectorAll('backdrop-shade');
    if (!a || !b) throw new Error('two expected');
    expect(b.lights.lamps).to.have.length(1);
    await b.updateComplete;
    await unfold(b, 'things');
    button(b, 'A flag').click();
    expect(a.lights.flags).to.have.length(1);
    page.querySelector('p')?.append(a);
    await a.updateComplete;
    expect(a.lights.flags).to.have.length(1);
    a.setAttribute('backdrop-distance', '2 ft');
    expect(b.backdropDistance).to.be.closeTo(609.6, 1e-9);
  });

  it('takes over properties set before it was defined', async () => {
    const late = document.createElement('backdrop-shade-late') as BackdropShade;
    late.backdropDistance = 800;
    document.body.append(late);
    customElements.define('backdrop-shade-late', class extends (customElements.get('backdrop-shade') as typeof BackdropShade) {});
    await late.updateComplete;
    expect(late.backdropDistance).to.equal(800);
    expect(one<HTMLInputElement>(late, '#backdrop-distance').value).to.equal('800 mm');
    late.remove();
  });

  it('offers a press of 40 px on every handle, also 288 px wide, and prints no number that is none', async () => {
    const page = await fixture<HTMLDivElement>(html`<div><backdrop-shade></backdrop-shade></div>`);
    page.style.width = '288px';
    const el = page.querySelector('backdrop-shade') as BackdropShade;
    await new Promise((done) => { setTimeout(done, 120); });
    await el.updateComplete;
    for (const hit of all<SVGElement>(el, '.hit')) expect(hit.getBoundingClientRect().width).to.be.at.least(39.5);
    expect(el.shadowRoot?.innerHTML).not.to.match(/NaN|Infinity|undefined/);
    expect(words(el)).not.to.match(/[-−]0(?![\d.,/])/);
    expect(one(el, '.drawing').scrollWidth).to.be.at.most(288);
  });
});
