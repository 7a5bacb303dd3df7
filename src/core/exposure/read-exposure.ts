import {Problem} from '../problem.js';
import {clicksPrinted} from './clicks.js';
import type {ClicksPerStop} from './clicks.js';
import {readShutter} from './read-shutter.js';
import {readAperture, readCorrection, readIso} from './read.js';
import {plainMarks} from './reading.js';
import type {Reading} from './reading.js';
import {SETTINGS} from './stops.js';
import type {Setting} from './stops.js';

/** A piece of the text: `text.slice(start, end)`. */
export interface Place {
  readonly start: number;
  readonly end: number;
}

/** What a line of settings says. */
export interface ExposureReading {
  readonly aperture?: Reading & Place;
  readonly shutter?: Reading & Place;
  readonly iso?: Reading & Place;
  /** Stops, signed as written. */
  readonly correction?: Place & {readonly text: string; readonly value: number};
  /** Words and numbers that could not be used, in order. */
  readonly unused: readonly (Place & {readonly text: string})[];
}

const NUMBER = String.raw`(?:\d+(?:[.,]\d+)?|\.\d+)`;
// The comma of `f/5,6` is a decimal comma, the one of `f/8,1/60`, `f/8,6s` or `f/8,0.3s` is not.
const F_NUMBER = String.raw`(?:\d+(?:\.\d+|,\d+(?!\d*(?:\.\d|\s*["/s])))?|\.\d+)`;
const SIGN_FRACTION = String.raw`(?:\d\s?)?[½⅓⅔¼¾⅛⅜⅝⅞]`;
const SECONDS = String.raw`(?:ms|s(?:ec(?:ond)?s?)?\b|"|'')`;
const MINUTES = String.raw`(?:min(?:ute)?s?|m|'(?!'))(?![a-z])`;
// Only a small whole number before a small denominator is one mixed number; in `8 1/60` the 8 is something else.
const FRACTION = String.raw`(?:(?:\b[1-3]\s+(?=\d\s*/\s*[23]\b))?\d+\s*/\s*\d+(?:\.\d+)?|${SIGN_FRACTION})`;
const STOPS = String.raw`(?:(?:\d+\s+)?\d\s*/\s*[23](?![\d.])|${SIGN_FRACTION}|${NUMBER}(?![\d./"]))`;
const TOWARDS = String.raw`(?:over|under|brighter|darker|up|down)\b`;
const STOPS_UNIT = String.raw`(?:stops?|ev)\b(?:\s+${TOWARDS})?`;

/** What a piece looks like. `other`: a number with a unit that is no setting; `bare`: a number without any mark. */
export type PieceKind = Setting | 'correction' | 'other' | 'bare';

/** Kinds of piece, the surest first. */
const PIECES: readonly (readonly [kind: PieceKind, pattern: string])[] = [
  ['iso', String.raw`\b(?:iso|asa)\s*[:=]?\s*\d+(?:[., ]\d{3}\b)*(?:\.\d+(?=k))?k?(?:/\d+\s*°)?|\b\d+\s*iso\b`],
  ['aperture', String.raw`(?<![a-z])(?:(?:aperture\s*[:=]?\s*)?f\s*[/:=]?\s*(?:1:)?|aperture\s*[:=]?\s*)${F_NUMBER}`],
  ['other', String.raw`${NUMBER}\s*(?:(?:mm|cm|px|mp|k|w|kg)\b|[%°])`],
  ['correction', String.raw`(?<![\w.,])(?:[+±]\s*|-)${STOPS}(?:\s*${STOPS_UNIT}|\s+${TOWARDS})?`
    + String.raw`|(?<![\w.,/])${STOPS}\s*(?:${STOPS_UNIT}|${TOWARDS})`],
  ['shutter', String.raw`${NUMBER}\s*${MINUTES}(?:\s*${NUMBER}\s*${SECONDS})?|\d+"\d{1,2}(?:\s*s\b)?`
    + String.raw`|${FRACTION}(?:\s*${SECONDS})?|${NUMBER}\s*${SECONDS}`],
  ['bare', String.raw`(?<![\w.,])${NUMBER}(?![\w/])`],
];

/** Words that only hold a line together. */
const FILLING = /^(?:at|and|with|then|shutter|speed|exposure|time|for|to|a|an|of|the)$/i;

const READERS = {aperture: readAperture, shutter: readShutter, iso: readIso} as const;

type Found = {-readonly [Key in Setting]?: Reading & Place} & {correction?: Place & {text: string; value: number}};

/** Which setting a number without any mark may still be, given what else was found. */
function settingOfBare(text: string, found: Found): Setting | undefined {
  const number = Number(text.replace(',', '.'));
  // No dial goes to 1e7, and digits enough make an infinity.
  if (!(number > 1e-7 && number < 1e7)) return undefined;
  if (found.aperture && !found.shutter) return 'shutter';
  if (found.shutter && !found.aperture && clicksPrinted('aperture', number).length) return 'aperture';
  return found.shutter && found.aperture && !found.iso && number >= 25 && clicksPrinted('iso', number).length
    ? 'iso' : undefined;
}

/** Words and numbers between the pieces in use. */
function leftOver(text: string, used: readonly Place[]): (Place & {text: string})[] {
  const places = [...used].sort((one, two) => one.start - two.start);
  const left: (Place & {text: string})[] = [];
  let start = 0;
  for (const {start: until, end} of [...places, {start: text.length, end: text.length}]) {
    for (const word of text.slice(start, until).matchAll(/[^\s,;|@()→>]+/g)) {
      if (!/[\p{L}\p{N}]/u.test(word[0]) || FILLING.test(word[0])) continue;
      const at = start + word.index;
      left.push({text: word[0], start: at, end: at + word[0].length});
    }
    start = end;
  }
  return left;
}

/**
 * Everything in a text that looks like a setting, a number of stops or a number, in order. What it comes to is for
 * the readers to say.
 * @param text - any length; places are places in it. Never throws.
 */
export function piecesIn(text: string): readonly (Place & {readonly kind: PieceKind; readonly text: string})[] {
  const pieces = new RegExp(PIECES.map(([, pattern]) => `(${pattern})`).join('|'), 'gi');
  return [...plainMarks(text).matchAll(pieces)].map((match) => {
    const [start, end] = [match.index, match.index + match[0].length];
    const kind = PIECES[match.slice(1).findIndex((piece) => piece !== undefined)]?.[0] ?? 'other';
    return {kind, text: text.slice(start, end), start, end};
  });
}

/**
 * The settings in one line as people note them: `f/2.8 1/6`, `f8, 0.3s, ISO 100`, `1/25 f/8 +2`, `8 1/60 100`. Order
 * and commas do not matter; the first of a kind is used. A number without a mark is the shutter beside an f-number, the
 * f-number beside a time, the ISO speed beside both.
 * @param text - one line; of a longer text the first thousand characters count
 * @param clicksPerStop - of the dial in use; only numbers that a third and a half share depend on it
 * @returns what was found, each with its place in the text, and the words and numbers that were not used. Never throws.
 */
export function readExposure(text: string, clicksPerStop: ClicksPerStop = 3): ExposureReading {
  const line = text.slice(0, 1000);
  const found: Found = {};
  const bare: (Place & {text: string})[] = [];
  const used: Place[] = [];
  const take = (setting: Setting, place: Place & {text: string}): void => {
    const reading = found[setting] ? undefined : READERS[setting](place.text, clicksPerStop);
    if (!reading || reading instanceof Problem) return;
    found[setting] = {...reading, start: place.start, end: place.end};
    used.push(place);
  };
  for (const {kind, ...place} of piecesIn(line)) {
    if (kind === 'bare') bare.push(place);
    else if (kind === 'correction') {
      const value = found.correction ? undefined : readCorrection(place.text);
      if (typeof value !== 'number') continue;
      found.correction = {...place, value};
      used.push(place);
    } else if (SETTINGS.includes(kind as Setting)) take(kind as Setting, place);
  }
  for (const place of bare) {
    const setting = settingOfBare(place.text, found);
    if (setting) take(setting, place);
  }
  return {...found, unused: leftOver(line, used)};
}
