import type {Place} from './read-exposure.js';
import {readCorrection} from './read.js';

/**
 * What a change of light was meant to be: stops brighter (+) or darker (−), only the direction, or `other`: the light
 * itself was changed, so that nothing can be asked of the settings.
 */
export type Wish = number | 'brighter' | 'darker' | 'other';

/** Words about the light, and what they ask for. Some can be meant either way; the settings then tell which it is. */
export interface Said extends Place {
  readonly text: string;
  /** How this step was meant to stand to the one before; `null` when the words speak of the next. */
  readonly change: Wish | null;
  /** What the next step was meant to bring: a meter two stops over asks for −2; `null` when they speak of this one. */
  readonly next: Wish | null;
  /** Which is more likely where both are possible. */
  readonly rather: 'change' | 'next';
}

const COUNT: Readonly<Record<string, number>> = {a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, half: 0.5};

const SIGN = String.raw`[½⅓⅔¼¾]`;
const WORD = String.raw`(?:an?|one|two|three|four|five|six|half)`;
const PART = String.raw`(?:\s+and\s+(?:an?|one|two)\s+(?:half|thirds?))?`;
const AMOUNT = String.raw`(?:(?:\d+\s+)?\d\s*[/⁄]\s*\d|(?:\d+\s?)?${SIGN}|\d+(?:[.,]\d+)?|\b${WORD}(?:[\s-]thirds?)?${PART})`;
const STOP = String.raw`(?:\s+(?:of\s+)?an?)?\s*(?:stops?|ev)\b(?:\s+and\s+an?\s+(?:half|third))?`;
const BRIGHTER = 'brighter|lighter|more\\s+(?:light|exposure)';
const DARKER = 'darker|dimmer|less\\s+(?:light|exposure)';
const OVER = '(?:too\\s+)?(?:over(?:-?exposed)?|bright)';
const UNDER = '(?:too\\s+)?(?:under(?:-?exposed)?|dark)';
const TOWARDS = `${BRIGHTER}|${DARKER}|${OVER}|${UNDER}`;

/** Ways to speak of light, one group each; the first in the text counts. */
const PATTERNS: readonly string[] = [
  String.raw`\bnot\s+(?:quite\s+)?the\s+same|\b(?:moved?|changed?|dimmed?)\s+the\s+(?:lamps?|lights?)\b|\b(?:lamps?|lights?)\s+(?:moved|changed|dimmed)\b`,
  String.raw`\bsame\s+(?:amount\s+of\s+)?(?:light|exposures?|brightness)\b|\bequal(?:ly)?\s+(?:light|exposures?|bright)|\bequivalent\b|\bas\s+bright\s+as\b`,
  String.raw`[+-]?${AMOUNT}(?:${STOP}\s*,?\s*(?:${TOWARDS})|\s*(?:${OVER}|${UNDER}))(?![\w-])`,
  String.raw`\b(?:${TOWARDS})\s+by\s+(?:about\s+)?${AMOUNT}(?:${STOP})?`,
  String.raw`(?<![\w.,/])[+-]\s?${AMOUNT}(?:${STOP})?(?![\w/"])`,
  String.raw`\btoo\s+(?:dark|bright)\b|\b(?:under|over)-?exposed\b`,
  String.raw`\b(?:a\s+(?:bit|touch|little)|slightly|much)\s+(?:${BRIGHTER}|${DARKER})\b`,
];

/** A meter speaks of the picture at this setting, a correction of the next one. */
const METER = /\b(?:light\s?)?meter(?:ed|ing|s)?\b|\bneedle\b/i;
const CORRECT = /\b(?:correct|correction|needs?|wants?)\b/i;

/** Number of stops written in figures or in words, without its sign. */
function amountOf(words: string): number | undefined {
  const [figures] = new RegExp(String.raw`(?:\d+\s+)?\d+\s*[/⁄]\s*\d+|\d*\s?${SIGN}|\d+(?:[.,]\d+)?`).exec(words) ?? [];
  if (figures) {
    const stops = readCorrection(figures.trim());
    return typeof stops === 'number' ? stops : undefined;
  }
  const plain = words.toLowerCase();
  const [, count = '', thirds] = new RegExp(`\\b(${WORD})\\b([\\s-]thirds?)?`).exec(plain) ?? [];
  const base = (COUNT[count] ?? NaN) / (thirds ? 3 : 1);
  const [, more = '', part] = /\band\s+(an?|one|two)\s+(half|third)/.exec(plain) ?? [];
  const stops = base + (part ? (COUNT[more] ?? 0) / (part === 'half' ? 2 : 3) : 0);
  return Number.isFinite(stops) ? stops : undefined;
}

const opposite = (wish: number | 'brighter' | 'darker'): Wish => (
  typeof wish === 'number' ? -wish + 0 : wish === 'brighter' ? 'darker' : 'brighter');

/** What one way of speaking asks for. */
function wishOf(kind: number, words: string, around: string): Pick<Said, 'change' | 'next' | 'rather'> | null {
  if (kind === 0) return {change: 'other', next: null, rather: 'change'};
  if (kind === 1) return {change: 0, next: null, rather: 'change'};
  const darker = new RegExp(`${DARKER}|under|dark`, 'i').test(words) || /^\s*-/.test(words);
  const amount = kind > 4 ? undefined : amountOf(words);
  if (kind <= 4 && amount === undefined) return null;
  const change = amount === undefined ? darker ? 'darker' : 'brighter' : darker ? -amount + 0 : amount;
  if (METER.test(around)) return {change: null, next: opposite(change), rather: 'next'};
  if (CORRECT.test(around)) return {change: null, next: change, rather: 'next'};
  if (/too|exposed/i.test(words)) return {change: null, next: opposite(change), rather: 'next'};
  if (kind === 4) return {change, next: change, rather: 'next'};
  if (/over|under/i.test(words)) return {change, next: opposite(change), rather: 'change'};
  return {change, next: null, rather: 'change'};
}

/**
 * What the words of a step ask of the light: “same light”, “one stop darker”, “2/3 stop over”, “meter says +2”, “under
 * by two”, “correct by +1”, “too dark”.
 *
 * A number alone (`1/25 f/8 +2`) is taken as a correction that the next step pays, or as the change from the step
 * before; “over” and “under” as the change, or as what a meter shows here.
 * @param text - words of one step, its settings blanked out so that no time is taken for stops
 * @returns the first that is said, with its place; `null` when nothing is. Never throws.
 */
export function readMeant(text: string): Said | null {
  const plain = text.replace(/[−–]/g, '-').replace(/±/g, '+').replace(/\d{5,}/g, (number) => '|'.repeat(number.length));
  for (const match of plain.matchAll(new RegExp(PATTERNS.map((pattern) => `(${pattern})`).join('|'), 'gi'))) {
    const kind = match.slice(1).findIndex((group) => group !== undefined);
    const around = plain.slice(Math.max(0, match.index - 30), match.index + match[0].length + 20);
    const wish = wishOf(kind, match[0], around);
    const end = match.index + match[0].length;
    if (wish) return {...wish, text: text.slice(match.index, end), start: match.index, end};
  }
  return null;
}
