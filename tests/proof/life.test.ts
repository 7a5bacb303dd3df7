import {expect, waitUntil} from '@open-wc/testing';
import {executeServerCommand} from '@web/test-runner-commands';
import type {LitElement} from 'lit';
import {shot} from '../photo/pictures.js';
import {Bench} from '../../src/elements/shared/bench.js';
import {CASES, TAGS, isChromium, stand, text, type Case} from './cases.js';

/** Benches of the page, as two copies of the library would find them. */
const benches = () => (globalThis as unknown as Record<symbol, Map<string, Bench> | undefined>)[Symbol.for('lampblack.benches.1')];
const task = () => new Promise((resolve) => { setTimeout(resolve); });

/** Counts listeners that are there, on the window, the document and media queries: those an element could leave behind. */
async function listenersLeft(job: () => Promise<void>): Promise<number> {
  const {addEventListener: add, removeEventListener: remove} = EventTarget.prototype;
  const there = new Map<string, Set<unknown>>();
  const outside = (target: EventTarget) => target === window || target === document || target === document.body || target === undefined;
  EventTarget.prototype.addEventListener = function (this: EventTarget, type: string, ...rest: unknown[]) {
    if (outside(this)) there.set(type, (there.get(type) ?? new Set()).add(rest[0]));
    return (add as (...given: unknown[]) => void).call(this, type, ...rest);
  } as typeof add;
  EventTarget.prototype.removeEventListener = function (this: EventTarget, type: string, ...rest: unknown[]) {
    if (outside(this)) there.get(type)?.delete(rest[0]);
    return (remove as (...given: unknown[]) => void).call(this, type, ...rest);
  } as typeof remove;
  try {
    await job();
  } finally {
    EventTarget.prototype.addEventListener = add;
    EventTarget.prototype.removeEventListener = remove;
  }
  return [...there.values()].reduce((sum, listeners) => sum + listeners.size, 0);
}

/** What Chromium keeps once everything that can be thrown away is. */
const kept = () => executeServerCommand('heap') as Promise<{readonly bytes: number; readonly nodes: number; readonly listeners: number; readonly workers: number} | false>;

/** Times an element comes and goes. The heap is asked in Chromium, after a thousand; elsewhere a quarter shows what stays behind. */
const TURNS = isChromium ? 1000 : 250;

/** The tag of one in a crowd: all kinds, those that draw most less often. */
const crowdOf = (at: number): string => {
  const tag = TAGS[at % TAGS.length] as string;
  return ['shot-plan', 'sharp-zone-bar', 'backdrop-shade'].includes(tag) && at % 5 ? 'stop-trade-dial' : tag;
};

/** Elements of every kind come, stand, and go for good. */
async function crowds(count: number): Promise<void> {
  const page = document.body.appendChild(document.createElement('div'));
  for (let at = 0; at < count; at += TAGS.length) {
    const all = TAGS.map((tag) => document.createElement(tag) as LitElement);
    page.append(...all);
    await Promise.all(all.map(({updateComplete}) => updateComplete));
    page.replaceChildren();
    if (at % 80 === 0) await task();
  }
  page.remove();
  await new Promise(requestAnimationFrame);
  await task();
}

describe('a long life on one page', () => {
  if (isChromium) it('a thousand elements that came and went leave no bytes, nodes, listeners or workers behind', async function () {
    this.timeout(90_000);
    await crowds(160);
    const before = await kept();
    await crowds(1000);
    const after = await kept();
    if (!before || !after) throw new Error('Chromium is asked for its heap');
    // One that is held weighs tens of thousands; what the engine learns about code grows by some hundreds.
    expect((after.bytes - before.bytes) / 1000, 'bytes an element').to.be.below(2500);
    expect(after.nodes - before.nodes, 'nodes').to.be.below(100);
    expect(after.listeners - before.listeners, 'listeners').to.be.below(20);
    expect(after.workers, 'workers').to.equal(before.workers);
  });

  for (const tag of TAGS) {
    it(`${tag} comes and goes ${TURNS / 5} times and leaves no listener, bench or worker behind`, async function () {
      this.timeout(60_000);
      const el = await stand({...CASES.find((one) => one.tag === tag && one.state === 'as it comes') as Case, attributes: {bench: `life-${tag}`}});
      const page = el.parentElement as HTMLElement;
      const said = text(el.shadowRoot);
      let workers = 0;
      const RealWorker = globalThis.Worker;
      globalThis.Worker = class extends RealWorker {
        constructor(...given: ConstructorParameters<typeof Worker>) {
          super(...given);
          workers++;
        }
      };
      const inside = el.renderRoot.querySelectorAll('*').length;
      try {
        el.remove();
        const left = await listenersLeft(async () => {
          for (let turn = 0; turn < TURNS / 5; turn++) {
            page.append(el);
            if (turn % 100 === 0) await el.updateComplete;
            el.remove();
          }
          await task();
        });
        expect(left, 'listeners on the page').to.equal(0);
      } finally {
        globalThis.Worker = RealWorker;
      }
      expect(workers, 'workers').to.equal(0);
      expect(benches()?.has(`life-${tag}`) ?? false, 'its bench').to.equal(false);
      page.append(el);
      await el.updateComplete;
      expect(el.renderRoot.querySelectorAll('*').length).to.be.closeTo(inside, 3);
      expect(text(el.shadowRoot)).to.equal(said);
    });
  }

  it('a photo has one worker while it is open, however often another takes its place, and none once its element is gone', async function () {
    this.timeout(60_000);
    const running = new Set<Worker>();
    const {Worker: RealWorker} = globalThis;
    globalThis.Worker = class extends RealWorker {
      constructor(...given: ConstructorParameters<typeof Worker>) {
        super(...given);
        running.add(this);
      }
      override terminate() {
        running.delete(this);
        super.terminate();
      }
    };
    try {
      const el = await stand({tag: 'tonal-chart-reader', state: '', attributes: {bench: 'life-photo'}, photo: 'exposure-minus2.jpg'});
      expect(running.size, 'open').to.equal(1);
      for (let turn = 0; turn < 4; turn++) await el.open?.(await shot(turn % 2 ? 'exposure-minus2.jpg' : 'white-edge.jpg'));
      await waitUntil(() => running.size === 1, 'those of before have ended', {timeout: 8000});
      const asked = isChromium && await kept();
      if (asked) expect(asked.workers, 'as the browser counts').to.equal(1);
      el.remove();
      await waitUntil(() => running.size === 0, 'it ends with its element', {timeout: 8000});
      const left = isChromium && await kept();
      if (left) expect(left.workers, 'as the browser counts').to.equal(0);
    } finally {
      globalThis.Worker = RealWorker;
    }
  });

  it('benches listen to those who sit there and to nobody else, however often they come and go', async () => {
    const one = await stand({tag: 'stop-trade-dial', state: '', attributes: {bench: 'life-count'}});
    const bench = benches()?.get('life-count') as Bench;
    const page = one.parentElement as HTMLElement;
    let told = 0;
    one.addEventListener('shot-change', () => { told++; });
    for (let turn = 0; turn < TURNS / 4; turn++) page.append(one);
    let updates = 0;
    const {requestUpdate} = one;
    one.requestUpdate = (...given) => {
      updates++;
      requestUpdate.apply(one, given);
    };
    bench.change({...bench.state});
    expect(updates).to.equal(1);
    expect(told).to.equal(0);
    one.remove();
    await task();
    expect(bench.deserted).to.equal(true);
  });

  it(`${TURNS} elements of one bench stand and follow`, async function () {
    this.timeout(60_000);
    const first = await stand({tag: 'stop-trade-dial', state: '', attributes: {bench: 'life-thousand', aperture: 'f/8'}});
    const page = first.parentElement as HTMLElement;
    const all = [first];
    const crowd = document.createDocumentFragment();
    for (let at = 1; at < TURNS; at++) {
      const el = document.createElement(crowdOf(at)) as typeof first;
      el.setAttribute('bench', 'life-thousand');
      all.push(el);
      crowd.append(el);
    }
    page.append(crowd);
    await Promise.all(all.map(({updateComplete}) => updateComplete));
    first.setAttribute('aperture', 'f/16');
    await Promise.all(all.map(({updateComplete}) => updateComplete));
    const dials = all.filter(({localName}) => localName === 'stop-trade-dial');
    expect(dials.length).to.be.greaterThan(TURNS / 10);
    for (const dial of dials) expect((dial as unknown as {aperture: number}).aperture).to.be.closeTo(16, 1e-9);
    for (const el of all) expect(el.shadowRoot?.querySelector('.plate'), el.localName).not.to.equal(null);
    for (const el of all) el.remove();
    await task();
    expect(benches()?.has('life-thousand')).to.equal(false);
  });

  it('the one in the hand is drawn before those that follow, and they are drawn in the end', async () => {
    const held = await stand({tag: 'stop-trade-dial', state: '', attributes: {bench: 'life-turns', aperture: 'f/8', shutter: '1/4'}});
    const others = ['sharp-zone-bar', 'shot-sheet', 'stop-trade-dial'].map((tag) => document.createElement(tag) as typeof held);
    for (const el of others) el.setAttribute('bench', 'life-turns');
    held.parentElement?.append(...others);
    await Promise.all([held, ...others].map(({updateComplete}) => updateComplete));
    const said = (el: Element) => text(el.shadowRoot?.querySelector('.verdict'));
    const [heldBefore, before] = [said(held), others.map(said)];
    held.shadowRoot?.querySelector('[role=slider]')?.dispatchEvent(new KeyboardEvent('keydown', {key: 'ArrowRight', bubbles: true, composed: true}));
    await held.updateComplete;
    expect(said(held)).not.to.equal(heldBefore);
    expect(others.map(said), 'before their turn').to.deep.equal(before);
    await Promise.all(others.map(({updateComplete}) => updateComplete));
    for (const [at, now] of others.map(said).entries()) expect(now, others[at]?.localName).not.to.equal(before[at]);
  });

  it('nothing of the library keeps a page out of the back-forward cache, and coming back changes nothing', async () => {
    const heard: string[] = [];
    const {addEventListener: add} = EventTarget.prototype;
    EventTarget.prototype.addEventListener = function (this: EventTarget, type: string, ...rest: unknown[]) {
      heard.push(type);
      return (add as (...given: unknown[]) => void).call(this, type, ...rest);
    } as typeof add;
    try {
      for (const tag of TAGS) {
        const el = await stand({...CASES.find((one) => one.tag === tag && one.state === 'at work') as Case, unfolded: false});
        const said = text(el.shadowRoot);
        dispatchEvent(new PageTransitionEvent('pagehide', {persisted: true}));
        dispatchEvent(new PageTransitionEvent('pageshow', {persisted: true}));
        await el.updateComplete;
        expect(text(el.shadowRoot), tag).to.equal(said);
      }
    } finally {
      EventTarget.prototype.addEventListener = add;
    }
    expect(heard).to.include('pointerdown');
    expect(heard.filter((type) => /unload/.test(type))).to.deep.equal([]);
  });
});
