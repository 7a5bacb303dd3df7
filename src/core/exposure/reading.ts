import {Problem} from '../problem.js';
import {clicksPrinted, exactFromNominal} from './clicks.js';
import type {ClicksPerStop} from './clicks.js';
import {lightStops} from './stops.js';
import type {Setting} from './stops.js';

/**
 * How the digits were taken:
 * - `f-number`, `iso`: the number itself
 * - `fraction`: of a second, `1/25`, `3/10`, `½`
 * - `seconds`: `0"6`, `0.6`, `25s`
 * - `bare`: a whole number alone, as bodies shorten a fraction: `25` is 1/25 s
 * - `minutes`: `2m`, `1 min 4 s`
 * - `point-lost`: a decimal point left out, `f/56` for f/5.6
 * - `other-click`: the half-stop click where a third and a half share the print, the third on a half-stop dial
 */
export type ReadAs =
  'f-number' | 'iso' | 'fraction' | 'seconds' | 'bare' | 'minutes' | 'point-lost' | 'other-click';

/** Something else the same digits may have meant. */
export interface OtherReading {
  /** f-number, seconds or ISO speed, exact. */
  readonly value: number;
  readonly how: ReadAs;
  /** Light of this reading against the one taken; positive = brighter. */
  readonly stops: number;
}

/** A setting read from text. */
export interface Reading {
  /** f-number, seconds or ISO speed; the exact click when the number is a printed one: 1/64 for `1/60`. */
  readonly value: number;
  /** The number as written: 1/60 for `1/60`. */
  readonly nominal: number;
  /** As typed, without the blanks around it. */
  readonly text: string;
  readonly how: ReadAs;
  /** Other readings of the same digits, the nearest in light first. */
  readonly others: readonly OtherReading[];
}

/** A number and how the digits had to be taken to give it. */
export type Candidate = readonly [nominal: number, how: ReadAs];

/** What no lens, body or evening reaches, and what would do instead. */
const BELIEVABLE: Readonly<Record<Setting, readonly [least: number, greatest: number, wanted: string]>> = {
  aperture: [0.3, 1024, 'an f-number such as f/8 or 5.6'],
  shutter: [1e-6, 86400, 'a time such as 1/60, 0.6 s or 30"'],
  iso: [1, 1e7, 'an ISO speed such as 100'],
};

/** Two values nearer than this, in stops, are one reading. A thirtieth of the finest click. */
const ONE_READING = 0.01;

function believable(setting: Setting, value: number): boolean {
  return value >= BELIEVABLE[setting][0] && value <= BELIEVABLE[setting][1];
}

/** No setting takes more characters. Longer text is not searched, so that a pasted page cannot stall the reader. */
const LONGEST = 60;

/** Text without the blanks around it; empty when it is too long to be one setting. */
export function settingText(text: string): string {
  const trimmed = text.trim();
  return trimmed.length > LONGEST ? '' : trimmed;
}

/** Marks of one meaning made one, a character for a character so that every place stays where it is. */
export function plainMarks(text: string): string {
  return text.replace(/[″“”„]/g, '"').replace(/[’′]/g, "'").replace(/⁄/g, '/').replace(/[−–]/g, '-')
    .replace(/ƒ/g, 'f');
}

/**
 * A reading out of the ways to take some digits.
 * @param text - as typed
 * @param taken - the reading to take; `undefined` when there is none
 * @param clicksPerStop - of the dial in use, for numbers that a third and a half share
 * @param rest - the other ways; what nobody would set, and what comes to the same, is left out
 * @returns the reading, or a {@link Problem} named for the setting
 */
export function readingOf(
  setting: Setting, text: string, taken: Candidate | undefined, clicksPerStop: ClicksPerStop = 3,
  rest: readonly Candidate[] = [],
): Reading | Problem {
  if (!taken || !believable(setting, taken[0])) return new Problem(setting, text, BELIEVABLE[setting][2]);
  const [nominal, how] = taken;
  const value = exactFromNominal(setting, nominal, clicksPerStop);
  const others: OtherReading[] = [];
  const add = (other: number, as: ReadAs): void => {
    const stops = lightStops(setting, value, other);
    if ([0, ...others.map((known) => known.stops)].some((known) => Math.abs(known - stops) < ONE_READING)) return;
    others.push({value: other, how: as, stops});
  };
  for (const other of clicksPrinted(setting, nominal, clicksPerStop).slice(1)) add(other, 'other-click');
  for (const [other, as] of rest) {
    if (believable(setting, other)) add(exactFromNominal(setting, other, clicksPerStop), as);
  }
  others.sort((one, two) => Math.abs(one.stops) - Math.abs(two.stops));
  return {value, nominal, text: text.trim(), how, others};
}
