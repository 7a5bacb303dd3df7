import {expect, waitUntil} from '@open-wc/testing';
import {executeServerCommand, sendKeys, sendMouse} from '@web/test-runner-commands';
import 'axe-core';
import type {AxeResults, RunOptions} from 'axe-core';
import {CASES, TAGS, isChromium, stand, text, type Case} from './cases.js';

/** axe-core puts itself on the global object, also where it is imported as a module. */
const {axe} = globalThis as unknown as {axe: {run: (context: Element | Document, options: RunOptions) => Promise<AxeResults>}};

/** The page around an element under test is bare on purpose: what asks for landmarks and headings of a page is not asked. */
const OF_ELEMENT: RunOptions = {resultTypes: ['violations'], rules: {region: {enabled: false}}};
const ONLY_CONTRAST: RunOptions = {resultTypes: ['violations'], runOnly: ['color-contrast']};

const complaints = ({violations}: AxeResults) => violations.flatMap(({id, nodes}) =>
  nodes.map(({target, failureSummary}) => `${id}: ${JSON.stringify(target)} ${failureSummary?.split('\n').slice(1, 3).join(' ')}`));

const name = ({tag, state}: Case) => `${tag}, ${state}`;

async function forced(active: boolean): Promise<boolean> {
  return await executeServerCommand('media', active ? {'forced-colors': 'active'} : {}) as boolean;
}

describe('axe-core has nothing to say of', () => {
  // Once is enough for roles, names and ratios.
  if (!isChromium) it('anything: asked in Chromium, where forced colours can be had');
  else for (const known of CASES) {
    it(`${name(known)}: light, dark, forced colours`, async () => {
      const light = await stand(known);
      expect(complaints(await axe.run(light, OF_ELEMENT)), 'light').to.deep.equal([]);
      const page = light.parentElement as HTMLElement;
      Object.assign(page.style, {colorScheme: 'dark', background: '#14130f', color: '#eee'});
      expect(complaints(await axe.run(light, ONLY_CONTRAST)), 'dark').to.deep.equal([]);
      page.removeAttribute('style');
      try {
        expect(await forced(true), 'forced colours are asked for').to.equal(true);
        expect(complaints(await axe.run(light, ONLY_CONTRAST)).join('\n').slice(0, 900), 'forced colours').to.equal('');
      } finally {
        await forced(false);
      }
    });
  }
});

/** Frames and points on a photo, things on a table, tips of a figure: sliders by their role, with two ways to go. */
const TWO_WAYS = ['[data-thing]', '[data-grip^=overhang]', '[data-frame]', '[data-patch]', '[data-end]', '[data-point]']
  .map((held) => `[role=slider]${held}`).join(', ');

describe('by keyboard alone', () => {
  for (const tag of TAGS) {
    const known = CASES.find((one) => one.tag === tag && one.state === 'at work') as Case;

    it(`${tag}: what goes two ways goes by arrows there and back, and says where it stands`, async () => {
      const el = await stand(known);
      const places = el.shadowRoot?.querySelectorAll(TWO_WAYS).length ?? 0;
      for (let place = 0; place < places; place++) {
        const frame = () => el.shadowRoot?.querySelectorAll<SVGGElement>(TWO_WAYS)[place] as SVGGElement;
        const said = () => frame().getAttribute('aria-valuetext') ?? '';
        expect(frame().getAttribute('aria-label')).to.match(/\w/);
        for (const [there, back] of [['ArrowRight', 'ArrowLeft'], ['ArrowDown', 'ArrowUp']] as const) {
          const before = said();
          frame().focus();
          await sendKeys({press: there});
          await el.updateComplete;
          expect(said(), `${frame().getAttribute('aria-label')} after ${there}`).not.to.equal(before);
          await sendKeys({press: back});
          await el.updateComplete;
          expect(said(), `${frame().getAttribute('aria-label')} after ${back}`).to.equal(before);
        }
      }
    });

    it(`${tag}: every slider goes by arrows, pages, Home and End, and says in words where it stands`, async () => {
      const el = await stand(known);
      const places = el.shadowRoot?.querySelectorAll('[role=slider]').length ?? 0;
      for (let place = 0; place < places; place++) {
        if (el.shadowRoot?.querySelectorAll('[role=slider]')[place]?.matches(TWO_WAYS)) continue;
        const slider = () => el.shadowRoot?.querySelectorAll<SVGGElement>('[role=slider]')[place] as SVGGElement;
        const said = (what: string) => Number(slider().getAttribute(`aria-value${what}`));
        const press = async (key: string) => {
          slider().focus();
          await sendKeys({press: key});
          await el.updateComplete;
        };
        const label = `${slider().getAttribute('aria-label')} (${place})`;
        expect(slider().getAttribute('aria-label'), 'a name').not.to.equal(null);
        const check = (after: string) => {
          expect(said('now'), `${label} after ${after}`).to.be.within(said('min') - 1e-9, said('max') + 1e-9);
          expect(slider().getAttribute('aria-valuetext'), `${label} after ${after}`).to.match(/\w/).and.not.match(/NaN|Infinity|undefined|-0\b/);
        };
        check('nothing');
        await press('Home');
        const least = said('now');
        check('Home');
        await press('ArrowRight');
        const step = said('now') - least;
        check('ArrowRight');
        await press('End');
        const most = said('now');
        check('End');
        await press('ArrowLeft');
        const back = most - said('now');
        check('ArrowLeft');
        await press('Home');
        await press('PageUp');
        const page = said('now') - least;
        check('PageUp');
        expect([step > 0 || most === least, back > 0 || most === least, page > step || page === most - least, most >= least],
          `${label}: from ${least}, a step ${step}, a page ${page}, to ${most}, back ${back}`).to.deep.equal([true, true, true, true]);
      }
    });
  }
});

/** What is dragged in each element, and changes its verdict. */
const HANDLES = {
  'stop-trade-dial': '[role=slider]', 'sharp-zone-bar': '[role=slider]', 'shot-plan': '[data-grip=base-back]',
  'backdrop-shade': '[data-thing=lamp0]', 'tonal-chart-reader': '[role=slider][data-frame=crop]',
} as const;

describe('the verdict', () => {
  it('is read out once after a drag and not on its way', async () => {
    const standing: {readonly tag: string; readonly handle: SVGGElement; readonly spoken: string[]}[] = [];
    for (const [tag, held] of Object.entries(HANDLES)) {
      const known = CASES.find((one) => one.tag === tag && one.state === 'at work') as Case;
      const {shadowRoot} = await stand({...known, unfolded: false}, {width: 700});
      const region = shadowRoot?.querySelector('.spoken[role=status]') as HTMLElement;
      // A photo that was opened is judged aloud first.
      if (known.photo) await waitUntil(() => text(region), 'the photo is judged', {timeout: 12_000});
      const spoken: string[] = [];
      new MutationObserver(() => { spoken.push(text(region)); }).observe(region, {childList: true, characterData: true, subtree: true});
      standing.push({tag, handle: shadowRoot?.querySelector<SVGGElement>(held) as SVGGElement, spoken});
    }
    for (const {tag, handle, spoken} of standing) {
      // A drag of eight moves.
      (handle.querySelector('.grip, .knob, .hit') ?? handle).scrollIntoView({block: 'center'});
      const grip = (handle.querySelector('.grip, .knob, .hit') ?? handle).getBoundingClientRect();
      const [x, y] = [Math.round(grip.x + grip.width / 2), Math.round(grip.y + grip.height / 2)];
      await sendMouse({type: 'move', position: [x, y]});
      await sendMouse({type: 'down'});
      for (let move = 1; move <= 8; move++) await sendMouse({type: 'move', position: [x - move * 4, y + move * 3]});
      expect(spoken, `${tag}: nothing on the way`).to.deep.equal([]);
      await sendMouse({type: 'up'});
      handle.focus();
      for (const key of ['ArrowRight', 'ArrowRight', 'ArrowRight']) await sendKeys({press: key});
    }
    await waitUntil(() => standing.every(({spoken}) => spoken.length > 0), 'all have spoken', {timeout: 12_000});
    // One more answer takes as long as a second answer of the others would have taken.
    const [first] = standing;
    first?.handle.focus();
    await sendKeys({press: 'ArrowRight'});
    await waitUntil(() => (first?.spoken.length ?? 0) > 1, 'one speaks again', {timeout: 12_000});
    expect(standing.map(({spoken}) => spoken.length)).to.deep.equal(standing.map((one) => (one === first ? 2 : 1)));
  });
});
