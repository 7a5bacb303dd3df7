import {expect, waitUntil} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {LitElement} from 'lit';
import {CASES, TAGS, settled, stand, text, type Case} from './cases.js';

/** What has the focus in an element; `null` where it was lost. */
const held = (el: LitElement): HTMLElement | null => el.shadowRoot?.activeElement as HTMLElement | null;

/** What a button is called. */
const called = (button: Element | null): string => (button?.getAttribute('aria-label') ?? text(button)).replace(/\s+/g, ' ');

const atWork = (tag: string): Case => CASES.find((one) => one.tag === tag && one.state === 'at work') as Case;

/** These leave the page: to the printer, to a folder. */
const LEAVES = /^(Save|Print)/;

/** Buttons that can be pressed now. */
const buttons = (el: LitElement): HTMLButtonElement[] => [...el.shadowRoot?.querySelectorAll<HTMLButtonElement>('button:not(:disabled)') ?? []]
  .filter((button) => button.checkVisibility() && !LEAVES.test(called(button)));

/** Presses what has the focus, and waits until that was answered. */
async function press(el: LitElement, key: string): Promise<void> {
  await sendKeys({press: key});
  await new Promise(requestAnimationFrame);
  await el.updateComplete;
  if (el.shadowRoot?.querySelector('[aria-busy=true]')) await settled(el);
}

describe('a button that is pressed', () => {
  for (const tag of TAGS) {
    it(`${tag}: leaves the focus in the element, whatever goes with it`, async () => {
      const el = await stand({...atWork(tag), unfolded: true});
      const lost: string[] = [];
      const done = new Set<string>();
      const next = () => buttons(el).find((button) => !done.has(called(button)));
      for (let button = next(); button && done.size < 60; button = next()) {
        const name = called(button);
        done.add(name);
        button.focus();
        await press(el, done.size % 2 ? 'Enter' : ' ');
        if (!held(el)) lost.push(name);
      }
      expect(lost, `of ${[...done].join(', ')}`).to.deep.equal([]);
      expect(done.size).to.be.at.least(3);
      localStorage.clear();
    });
  }
});

/** A way out in each element that has any, by what its button begins with. */
const WAYS: readonly (readonly [Case, way: RegExp])[] = [
  [CASES.find(({state}) => state === 'with ways out') as Case, /^Set 0\.6 s/],
  [atWork('sharp-zone-bar'), /^Move the camera/],
  [atWork('tonal-chart-reader'), /^0\.3 s → 1\/4 s/],
  [atWork('backdrop-shade'), /^Stand a card/],
  [atWork('settings-trail'), /^Step 3/],
  [{tag: 'shot-plan', state: 'in too small a room', attributes: {'base-depth': '60', 'room': '200', 'focal-lengths': '60'}}, /^Make room for/],
];

describe('a way out', () => {
  for (const [known, way] of WAYS) {
    it(`of ${known.tag}, ${known.state}, taken, leaves the focus on what takes it back; that, on the way again`, async () => {
      const el = await stand({...known, unfolded: false});
      if (known.tag === 'backdrop-shade') {
        el.shadowRoot?.querySelector<HTMLElement>('#find')?.focus();
        await press(el, 'Enter');
        await waitUntil(() => el.shadowRoot?.querySelector('.ways button'), 'a place is found', {timeout: 5000});
        expect(called(held(el)), 'the focus waits where it was asked').to.equal('Find a place for a card');
      }
      const first = el.shadowRoot?.querySelector<HTMLElement>('.ways button') as HTMLElement;
      const name = called(first);
      expect(name).to.match(way);
      first.focus();
      await press(el, 'Enter');
      expect(called(held(el))).to.equal('Undo');
      await press(el, ' ');
      expect(called(held(el))).to.equal(name);
    });
  }
});

/** What arrows move, and which of them does not run into an end within twenty presses. */
const RUNS: readonly (readonly [tag: string, at: string, key: string])[] = [
  ['tonal-chart-reader', '[data-frame=crop]', 'ArrowLeft'], ['gray-card-check', '[data-patch=white]', 'ArrowRight'], ['shot-plan', '[data-grip=top]', 'ArrowUp'],
  ['backdrop-shade', '[data-thing=backdrop]', 'ArrowRight'], ['stop-trade-dial', '[role=slider]', 'ArrowLeft'], ['sharp-zone-bar', '[role=slider]', 'ArrowRight'],
];

const regionOf = (el: LitElement) => el.shadowRoot?.querySelector('.spoken[role=status]') as HTMLElement;

/** Counts what is read out from now on. */
function listen(el: LitElement): string[] {
  const region = regionOf(el);
  const heard: string[] = [];
  new MutationObserver(() => { heard.push(text(region)); }).observe(region, {childList: true, characterData: true, subtree: true});
  return heard;
}

describe('twenty arrows in a row', () => {
  it('are silent while they last and answered by one sentence, in every element that is moved by them', async () => {
    const elements: LitElement[] = [];
    for (const [tag] of RUNS) elements.push(await stand({...atWork(tag), unfolded: false}, {width: 700}));
    // A photo that was opened is judged aloud first.
    await waitUntil(() => elements.every((el, at) => !atWork(RUNS[at]?.[0] ?? '').photo || text(regionOf(el))), 'photos are judged', {timeout: 10_000});
    const heard = elements.map(listen);
    const run = async (at: number, presses: number) => {
      const [, selector, key] = RUNS[at] as (typeof RUNS)[number];
      elements[at]?.shadowRoot?.querySelector<SVGGElement>(selector)?.focus();
      for (let press = 0; press < presses; press++) await sendKeys({press: key});
    };
    for (const at of RUNS.keys()) {
      await run(at, 20);
      expect(heard[at], `${RUNS[at]?.[0] ?? ''} meanwhile`).to.deep.equal([]);
    }
    await waitUntil(() => heard.every(({length}) => length > 0), 'all have spoken', {timeout: 10_000});
    // One more answer takes as long as a second answer of the others would have taken.
    const last = RUNS.length - 1;
    await run(last, 1);
    await waitUntil(() => (heard[last]?.length ?? 0) > 1, 'one speaks again', {timeout: 10_000});
    expect(heard.map(({length}) => length)).to.deep.equal(RUNS.map((_, at) => (at === last ? 2 : 1)));
    for (const [at, [sentence]] of heard.entries()) expect(sentence, RUNS[at]?.[0]).to.match(/\w+ \w+.*[.!]$/);
  });
});
