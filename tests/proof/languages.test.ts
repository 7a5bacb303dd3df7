import {expect} from '@open-wc/testing';
import type {WordBook} from '../../src/elements/shared/languages.js';
import {Say, type Family} from '../../src/elements/shared/say.js';
import type {ShotElement} from '../../src/elements/shared/shot-element.js';
import {family as english} from '../../src/elements/shared/words/en.js';
import {CASES, stand, type Case} from './cases.js';

/** A language nobody speaks, written from right to left: English between brackets, so that text from elsewhere stands out. Invented. */
const TEST_LANGUAGE = 'he-x-test';
const marked = (text: string): string => (text ? `\u200f⟦${text}⟧` : text); // the mark makes it a text from right to left

/** Words in which every string says that it came from a list of words. */
function markedWords(value: unknown): unknown {
  if (typeof value === 'string') return marked(value);
  if (typeof value === 'function') return (...args: unknown[]) => markedWords((value as (...args: unknown[]) => unknown)(...args));
  if (Array.isArray(value)) return value.map(markedWords);
  if (value && typeof value === 'object' && !(value instanceof Say)) {
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, inner instanceof Say ? inner : markedWords(inner)]));
  }
  return value;
}

const testFamily: Family = {
  ...english, problem: (text, wanted) => marked(english.problem(text, wanted)), unreachable: marked(english.unreachable),
  settings: {aperture: marked('Aperture'), shutter: marked('Shutter'), iso: marked('ISO')}, stops: (amount, size) => marked(english.stops(amount, size)),
};

const bookOf = (tag: string): WordBook<{say: Say}> => (customElements.get(tag) as unknown as typeof ShotElement).book as WordBook<{say: Say}>;

function teachTestLanguage(book: WordBook<{say: Say}>): void {
  for (const part of Object.values(book.parts)) teachTestLanguage(part as WordBook<{say: Say}>);
  book.offer(TEST_LANGUAGE, async () => {
    await book.load('en');
    return {
      family: testFamily,
      words: (say) => {
        const words = book.inLanguage('en') as {say: Say};
        return {...markedWords(words) as object, say};
      },
    };
  });
}

/** Everything a reader sees or hears of an element. */
function texts(el: Element): string[] {
  const found: string[] = [];
  const walk = (node: Node): void => {
    if (node.nodeType === Node.TEXT_NODE) found.push(node.textContent ?? '');
    if (node instanceof Element) {
      if (node.localName === 'style') return;
      for (const name of ['aria-label', 'aria-valuetext', 'title', 'alt', 'placeholder']) found.push(node.getAttribute(name) ?? '');
    }
    for (const child of node.childNodes) walk(child);
  };
  walk(el.shadowRoot as ShadowRoot);
  return found.map((text) => text.replace(/\s+/g, ' ').trim()).filter(Boolean);
}

/** What is said alike in every language: settings, units, markup to paste, and names of files. */
const ALIKE = /\bf\/[\d.,]+|\bISO\b|\b(?:mm|cm|in|px|min|Hz|APS-[CH]|Four Thirds|sRGB|EV|LED|RGB|Exif|HTML|Markdown|BBCode|JSON|CSS|PNG|JPEG)\b|<[^>]*>|\[\/?\w+[^\]]*\]|https?:\S+|[\w-]+\.(?:jpe?g|png|json|js|html)\b|\b[a-z]+(?:-[a-z]+)+=?/g;

/** Whether a text is what the page itself wrote into an attribute, or begins with it. */
const isGiven = (text: string, {attributes}: Case): boolean =>
  Object.values(attributes).flatMap((value) => [value, ...value.split('\n')])
    .some((value) => value === text || value.length > 20 && text.includes(value.slice(0, 20)))
  // A set as text is one language of its own, to be typed back.
  || / at -?\d+,-?\d+,-?\d+ aim /.test(text);

const atWork = CASES.filter(({state}) => state === 'at work' || state === 'with problems');

describe('every language', () => {
  afterEach(() => { document.documentElement.lang = 'en'; document.documentElement.dir = ''; });

  for (const known of atWork) {
    it(`has all that ${known.tag} says, ${known.state}: no text comes from elsewhere`, async () => {
      teachTestLanguage(bookOf(known.tag));
      document.documentElement.lang = TEST_LANGUAGE;
      document.documentElement.dir = 'rtl';
      const el = await stand(known, {width: 360});
      // What a reader or a page wrote stays as it is; so does what is copied for machines.
      const elsewhere = texts(el).filter((text) => !isGiven(text, known))
        .map((text) => text.replace(/⟦.*⟧/gs, '').replace(ALIKE, '').trim()).filter((text) => /\p{L}{2}/u.test(text));
      expect(elsewhere).to.deep.equal([]);
      expect(texts(el).join(' ')).to.contain('⟦');
    });
  }

  for (const known of CASES.filter(({state}) => state === 'at work')) {
    it(`mirrors ${known.tag} from right to left`, async () => {
      teachTestLanguage(bookOf(known.tag));
      document.documentElement.lang = TEST_LANGUAGE;
      document.documentElement.dir = 'rtl';
      const el = await stand(known, {width: 360});
      const box = el.getBoundingClientRect();
      const verdict = el.shadowRoot?.querySelector('.verdict') as HTMLElement;
      const probe = document.createElement('span');
      probe.style.cssText = 'display: inline-block; inline-size: 1px';
      verdict.prepend(probe);
      const start = probe.getBoundingClientRect().right;
      probe.remove();
      expect(getComputedStyle(verdict).direction).to.equal('rtl');
      expect(box.right - start, 'the verdict begins at the right').to.be.below(3);
      for (const label of el.shadowRoot?.querySelectorAll<HTMLElement>('.field > label') ?? []) {
        const field = label.parentElement as HTMLElement;
        if (!label.checkVisibility()) continue;
        expect(getComputedStyle(label).direction, label.textContent ?? '').to.equal('rtl');
        expect(getComputedStyle(field).textAlign).to.be.oneOf(['start', 'right']);
      }
      for (const node of el.shadowRoot?.querySelectorAll<HTMLElement>('p, ul, table, button, .field') ?? []) {
        if (!node.checkVisibility() || node.classList.contains('spoken')) continue;
        const {left, right} = node.getBoundingClientRect();
        expect(left, `${node.localName}.${node.className} to the left`).to.be.at.least(box.left - 1);
        expect(right, `${node.localName}.${node.className} to the right`).to.be.at.most(box.right + 1);
      }
    });
  }

  for (const tag of new Set(CASES.map((known) => known.tag))) {
    it(`${tag} speaks five, keeps the decimal comma where it is one, and follows the page when it changes`, async () => {
      expect(bookOf(tag).languages.filter((language) => !language.startsWith('he'))).to.deep.equal(['de', 'en', 'es', 'fr', 'pl']);
      const known = CASES.find((each) => each.tag === tag && each.state === 'at work') as (typeof CASES)[number];
      const el = await stand({...known, unfolded: false});
      const saidInEnglish = new Set(texts(el).filter((text) => !isGiven(text, known) && text.replace(ALIKE, '').split(/[^\p{L}]+/u).filter((word) => word.length > 2).length > 2));
      expect(saidInEnglish.size, 'sentences').to.be.above(1);
      for (const language of ['de', 'es', 'fr', 'pl']) {
        document.documentElement.lang = language;
        await new Promise((resolve) => { setTimeout(resolve); });
        for (let tries = 0; tries < 40 && texts(el).some((text) => saidInEnglish.has(text)); tries++) {
          await el.updateComplete;
          await new Promise((resolve) => { setTimeout(resolve, 25); });
        }
        expect(texts(el).filter((text) => saidInEnglish.has(text)), language).to.deep.equal([]);
        const points = texts(el).filter((text) => /(?:^|[^\w.])\d+\.\d+ ?(?:mm|cm|s|EV|IL|pasos?|Blendenstufen?|%)/.test(text));
        expect(points, `${language}: decimal points`).to.deep.equal([]);
      }
    });
  }
});
