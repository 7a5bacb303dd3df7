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

/** Opens or closes the fold that has the focus, which stays on it. */
async function press(el: LitElement, key: string, open: boolean): Promise<void> {
  const summary = focused();
  const fold = summary.parentElement as HTMLDetailsElement;
  await sendKeys({press: key});
  expect(fold.open, `${text(summary)} after ${key}`).to.equal(open);
  if (open) await waitUntil(() => fold.childElementCount > 1, `what ${text(summary)} folds away`, {timeout: 5000, interval: 10});
  await el.updateComplete;
  expect(text(focused()), `the focus after ${key}`).to.equal(text(summary));
}

async function between(known: Case): Promise<readonly [el: LitElement, before: HTMLElement, after: HTMLElement]> {
  const el = await stand({...known, unfolded: false});
  const [before, after] = [document.createElement('button'), document.createElement('button')];
  el.before(before);
  el.after(after);
  before.focus();
  return [el, before, after];
}

describe('walked through by the tab key, folds opened on the way', () => {
  for (const tag of TAGS) {
    it(`${tag}: every stop is what it should be, can be seen, and is met again on the way back`, async () => {
      const [el, before, after] = await between(CASES.find((one) => one.tag === tag && one.state === 'at work') as Case);
      const expected = (STOPS[tag] ?? '').trim().split(/\s*[\n|]\s*/);
      const come: HTMLElement[] = [];
      const unseen: string[] = [];
      let ring: (() => void) | undefined;
      for (let step = 0; step < expected.length + 9; step++) {
        await sendKeys({press: 'Tab'});
        ring?.();
        const at = focused();
        if (at === after) break;
        come.push(at);
        const look = drawn(at);
        ring = isOutlined(at) ? undefined : () => { if (drawn(at) === look) unseen.push(at.outerHTML.slice(0, 150)); };
        if (at.localName === 'summary') await press(el, come.length % 2 ? 'Enter' : 'Space', true);
      }
      expect(focused(), 'the focus leaves at the end').to.equal(after);
      axe.setup(document.body);
      const stops = come.map(met);
      axe.teardown();
      expect(stops.map((stop, at) => (matches(stop, expected[at] ?? '') ? expected[at] : stop)).join('\n')).to.equal(expected.join('\n'));
      expect(unseen, 'no line round what has the focus').to.deep.equal([]);

      const back: HTMLElement[] = [];
      for (let step = 0; step < come.length + 9; step++) {
        await chord('Shift', 'Tab');
        const at = focused();
        if (at === before) break;
        back.unshift(at);
        if (at.localName === 'summary') await press(el, back.length % 2 ? 'Enter' : 'Space', false);
      }
      expect(focused(), 'the focus leaves at the beginning').to.equal(before);
      expect(back.map((node) => come.indexOf(node)), 'the same stops on the way back').to.deep.equal([...come.keys()]);
    });
  }
});
