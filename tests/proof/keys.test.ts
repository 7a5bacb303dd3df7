import {expect, waitUntil} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import 'axe-core';
import type {LitElement} from 'lit';
import {chord} from '../hands.js';
import {CASES, TAGS, stand, text, type Case} from './cases.js';
import {STOPS} from './stops.js';

/** axe-core reckons roles and names as the accessible-name standard has it, alike in every engine. */
interface Reckoner {
  readonly setup: (node: Element) => void;
  readonly teardown: () => void;
  readonly utils: {readonly getNodeFromTree: (node: Element) => object};
  readonly commons: {
    readonly aria: {readonly getRole: (node: object) => string | null};
    readonly text: {readonly accessibleTextVirtual: (node: object) => string};
  };
}
const {axe} = globalThis as unknown as {axe: Reckoner};

/** What has the focus, through shadow roots. */
function focused(): HTMLElement {
  let at = document.activeElement as HTMLElement;
  while (at.shadowRoot?.activeElement) at = at.shadowRoot.activeElement as HTMLElement;
  return at;
}

const plain = (words: string): string => words.replace(/\s+/g, ' ').trim();

/** A stop as it is met: its role, its name, its state, and where it stands. */
function met(node: HTMLElement): string {
  const known = axe.utils.getNodeFromTree(node);
  const {value, type} = node as HTMLInputElement;
  const isFile = type === 'file';
  const role = node.localName === 'summary' ? 'fold' : isFile ? 'file' : axe.commons.aria.getRole(known) ?? 'nothing';
  const [pressed, expanded] = [node.getAttribute('aria-pressed'), node.getAttribute('aria-expanded')];
  const state = pressed ? `, ${pressed === 'true' ? '' : 'not '}pressed` : expanded ? `, ${expanded === 'true' ? 'unfolded' : 'folded'}` : '';
  const stands = node.getAttribute('aria-valuetext') ?? (isFile || node.localName === 'button' ? '' : value ?? '');
  return plain(`${role} ${axe.commons.text.accessibleTextVirtual(known)}${state}${stands && ` = ${stands}`}`);
}

/** Whether what was met is what was expected; `…` stands for the rest of a long name or text. */
function matches(stop: string, expected: string): boolean {
  const [head = '', ...rest] = expected.split('…');
  if (!rest.length || expected.startsWith('textbox … ')) return stop === expected;
  return stop.startsWith(head) && stop.endsWith(rest.join('…'));
}

/** What is drawn of a stop in a drawing: an outline cannot be seen there in every engine, a ring can. */
const drawn = (node: Element): string => [...node.querySelectorAll('*')]
  .map((part) => { const {stroke, strokeWidth} = getComputedStyle(part); return `${stroke} ${strokeWidth}`; }).join();

/** Whether a line runs round it, or round the label it is hidden in. */
function isOutlined(node: Element): boolean {
  return [node, node.closest('label')].some((part) => {
    if (!part) return false;
    const {outlineStyle, outlineWidth, opacity} = getComputedStyle(part);
    const {width, height} = part.getBoundingClientRect();
    return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2 && opacity !== '0' && Math.min(width, height) >= 8;
  });
}

/** Opens the fold that has the focus by one key, after the other has opened and closed it. The focus stays on it. */
async function unfold(el: LitElement, key: string, other: string): Promise<void> {
  const summary = focused();
  const fold = summary.parentElement as HTMLDetailsElement;
  for (const [pressed, open] of [[other, true], [other, false], [key, true]] as const) {
    await sendKeys({press: pressed});
    await waitUntil(() => fold.open === open, `${text(summary)} after '${pressed}' is ${open ? 'open' : 'closed'}`, {timeout: 3000, interval: 10});
  }
  await waitUntil(() => fold.childElementCount > 1, `what ${text(summary)} folds away`, {timeout: 5000, interval: 10});
  await el.updateComplete;
  expect(focused(), `the focus after ${key} on ${text(summary)}`).to.equal(summary);
}

async function between(known: Case): Promise<readonly [el: LitElement, before: HTMLElement, after: HTMLElement]> {
  const el = await stand({...known, unfolded: false});
  const [before, after] = [document.createElement('button'), document.createElement('button')];
  el.before(before);
  el.after(after);
  before.focus();
  return [el, before, after];
}

/** Goes from stop to stop until the last is reached. @returns what was met, and of that what no line showed to have the focus */
async function walk(step: () => Promise<void>, last: Element, most: number, at: (stop: HTMLElement) => Promise<void>): Promise<{
  readonly met: readonly HTMLElement[]; readonly unseen: readonly string[];
}> {
  const come: HTMLElement[] = [];
  const unseen: string[] = [];
  let blurred: (() => void) | undefined;
  for (let count = 0; count < most; count++) {
    await step();
    blurred?.();
    const stop = focused();
    if (stop === last) break;
    come.push(stop);
    const look = drawn(stop);
    blurred = isOutlined(stop) ? undefined : () => { if (drawn(stop) === look) unseen.push(stop.outerHTML.slice(0, 150)); };
    await at(stop);
  }
  return {met: come, unseen};
}

afterEach(() => { axe.teardown(); });

describe('walked through by the tab key, folds opened on the way', () => {
  for (const tag of TAGS) {
    it(`${tag}: every stop is what it should be, can be seen, and is met again on the way back`, async () => {
      const [el, before, after] = await between(CASES.find((one) => one.tag === tag && one.state === 'at work') as Case);
      const all = (STOPS[tag] ?? '').trim().split(/\s*[\n|]\s*/);
      const [there, back] = [all.filter((stop) => !stop.startsWith('back ')), all.map((stop) => stop.replace(/^back /, ''))];
      let folds = 0;
      const forth = await walk(() => sendKeys({press: 'Tab'}), after, all.length + 9, async (stop) => {
        if (stop.localName === 'summary') await (folds++ % 2 ? unfold(el, 'Enter', ' ') : unfold(el, ' ', 'Enter'));
      });
      expect(focused(), 'the focus leaves at the end').to.equal(after);
      const again = await walk(() => chord('Shift', 'Tab'), before, all.length + 9, () => Promise.resolve());
      expect(focused(), 'the focus leaves at the beginning').to.equal(before);
      axe.setup(document.body);
      for (const [expected, stops] of [[there, forth.met], [back, again.met.toReversed()]] as const) {
        const said = stops.map(met);
        expect(said.map((stop, at) => (matches(stop, expected[at] ?? '') ? expected[at] : stop)).join('\n')).to.equal(expected.join('\n'));
      }
      expect([...forth.unseen, ...again.unseen], 'no line round what has the focus').to.deep.equal([]);
    });
  }
});
