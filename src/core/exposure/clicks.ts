import {Problem, requirePositive} from '../problem.js';
import {PRINTED_OTHERWISE, printedLabel} from './printed.js';
import {lightStops, STOPS_PER_DOUBLING} from './stops.js';
import type {Setting} from './stops.js';

/** How finely a dial turns: whole, half or third stops. */
export type ClicksPerStop = 1 | 2 | 3;

/** Least and greatest value, both included. A printed number stands for its click: 22 lets f/22.6 through. */
export type Range = readonly [least: number, greatest: number];

/** What a body and a lens can be set to; where nothing is said, {@link WIDEST} holds. */
export interface Limits {
  readonly aperture?: Range;
  readonly shutter?: Range;
  readonly iso?: Range;
}

/** One place where a dial comes to rest. */
export interface Click {
  /** Clicks from f/1, 1 s or ISO 100; grows with the number set. */
  readonly index: number;
  /** Exact: f-number, seconds or ISO speed. */
  readonly value: number;
  /** As the trade prints it: `11`, `1/60`, `0.6`, `30`, `100`. */
  readonly label: string;
}

/** As far as any dial here goes. Times past 30 s are held by hand: a little over an hour. */
export const WIDEST: Readonly<Record<Setting, Range>> = {
  aperture: [2 ** -0.5, 128], shutter: [2 ** -15, 4096], iso: [25, 409600],
};

/** f-number, seconds or ISO speed at index 0. */
const BASE: Readonly<Record<Setting, number>> = {aperture: 1, shutter: 1, iso: 100};

/**
 * Two numbers this near each other are the same, written by hand or as a file's fraction. Share of the value;
 * less than a ten-thousandth of a stop, and far less than any two printed numbers differ by.
 */
const SAME = 5e-5;

/** Further than any dial goes, and near enough for its value to be a number. */
const FARTHEST_CLICK = 1000;

function valueAt(setting: Setting, index: number, clicksPerStop: number): number {
  return BASE[setting] * 2 ** (index / (clicksPerStop * Math.abs(STOPS_PER_DOUBLING[setting])));
}

/** Clicks from index 0, not whole. */
function placeOf(setting: Setting, value: number, clicksPerStop: number): number {
  return clicksPerStop * Math.abs(STOPS_PER_DOUBLING[setting]) * Math.log2(value / BASE[setting]);
}

/**
 * Click number `index` of a dial: the exact value of the series 2^(k/2c) for f-numbers, 2^(k/c) for times and
 * ISO speeds, with what is printed on it. Past 30 s, where nothing is printed, the label is in whole seconds.
 * @param index - whole number, within 1000 of 0; 0 is f/1, 1 s, ISO 100
 * @throws {Problem} `click`, when the index is not such a whole number
 */
export function clickAt(setting: Setting, index: number, clicksPerStop: ClicksPerStop): Click {
  if (!(Number.isInteger(index) && Math.abs(index) <= FARTHEST_CLICK)) throw new Problem('click', index, 'a whole number');
  return {index, value: valueAt(setting, index, clicksPerStop), label: labelAt(setting, index, clicksPerStop)};
}

function labelAt(setting: Setting, index: number, clicksPerStop: ClicksPerStop): string {
  const printed = printedLabel(setting, index, clicksPerStop);
  if (printed !== undefined) return printed;
  const value = valueAt(setting, index, clicksPerStop);
  return String(value > 30 ? Math.round(value) : Number(value.toPrecision(2)));
}

/**
 * Index of the first and the last click within a range, a printed number taken as its click. The last lies before the
 * first when there is none.
 */
function ends(setting: Setting, clicksPerStop: ClicksPerStop, range: Range): readonly [number, number] {
  // The widest are exact as they stand, and asked for most.
  const exact = range === WIDEST[setting] ? range : range.map((end) => exactFromNominal(setting, end, clicksPerStop));
  const [least, greatest] = exact.map((end) => placeOf(setting, end, clicksPerStop));
  // An end that is a click counts, whatever the last binary digit says.
  return [Math.ceil(least as number - 1e-9) + 0, Math.floor(greatest as number + 1e-9) + 0];
}

/**
 * All clicks of a dial within a range, from the smallest number up.
 * @returns empty when no click lies within
 * @throws {Problem} named for the setting, when an end is not a finite number above 0
 */
export function clicks(
  setting: Setting, clicksPerStop: ClicksPerStop, range: Range = WIDEST[setting],
): readonly Click[] {
  const [first, last] = ends(setting, clicksPerStop, range);
  return Array.from({length: Math.max(0, last - first + 1)}, (_, at) => clickAt(setting, first + at, clicksPerStop));
}

/**
 * The click to set for a value, as near as the dial and the range allow.
 * @param value - f-number, seconds or ISO speed, above 0; taken as it is, see {@link exactFromNominal}
 * @returns the click, with `rounding`: stops of light gained (+) or lost (−) by setting it instead of the value
 * @throws {Problem} named for the setting, when the value or an end is not a finite number above 0, or no click lies
 *   within the range
 */
export function nearestClick(
  setting: Setting, value: number, clicksPerStop: ClicksPerStop, range: Range = WIDEST[setting],
): Click & {readonly rounding: number} {
  requirePositive(setting, value);
  const [first, last] = ends(setting, clicksPerStop, range);
  if (last < first) throw new Problem(setting, range.join(' to '), 'limits with a click between them');
  const nearest = Math.round(placeOf(setting, value, clicksPerStop)) + 0;
  const click = clickAt(setting, Math.min(last, Math.max(first, nearest)), clicksPerStop);
  return {...click, rounding: lightStops(setting, value, click.value)};
}

/** The number a label stands for: `1/60` is 0.01667, not its click. */
function numberOn(label: string): number {
  return label.startsWith('1/') ? 1 / Number(label.slice(2)) : Number(label);
}

/**
 * The exact clicks for which a number is printed. f/0.8, f/1.2, f/13, 1/6, 1/10, 1/20, 0.3 s, 6 s, 10 s and 20 s are
 * printed for two different clicks: the third stop comes first and the half stop second, or the other way round on a
 * half-stop dial. All others have one, or none.
 * @param nominal - f-number, seconds (1/60 as 0.016667) or ISO speed, above 0
 * @param clicksPerStop - of the dial it was read from, if known; 2 puts half stops first
 * @returns exact values; empty when the number is on no dial
 * @throws {Problem} named for the setting, when not a finite number above 0
 */
export function clicksPrinted(
  setting: Setting, nominal: number, clicksPerStop: ClicksPerStop = 3,
): readonly number[] {
  requirePositive(setting, nominal);
  const same = (number: number): boolean => Math.abs(number / nominal - 1) < SAME;
  const series = clicksPerStop === 2 ? [2, 3] as const : [3, 2] as const;
  const found = series.flatMap((per) => {
    const near = Math.round(placeOf(setting, nominal, per));
    const at = [near - 1, near, near + 1].find((index) => same(numberOn(labelAt(setting, index, per))));
    return at === undefined ? [] : [valueAt(setting, at, per)];
  });
  const otherwise = setting === 'shutter' ? PRINTED_OTHERWISE.find(([seconds]) => same(seconds)) : undefined;
  if (otherwise) found.push(valueAt('shutter', otherwise[1], 3));
  return [...new Set(found)];
}

/**
 * The exact value behind a number as it is printed or spoken: f/11 is 11.31, 1/60 s is 1/64 s, 30 s is 32 s. When a
 * third and a half stop share the print, the third stop, or the half stop on a half-stop dial. A number that is on no
 * dial stays as it is.
 *
 * The readers of text do this; whoever takes numbers from elsewhere (a picture file) does it once, on entry. Exact
 * values pass unchanged, so doing it twice is harmless.
 * @param nominal - f-number, seconds or ISO speed, above 0
 * @throws {Problem} named for the setting, when not a finite number above 0
 */
export function exactFromNominal(setting: Setting, nominal: number, clicksPerStop: ClicksPerStop = 3): number {
  return clicksPrinted(setting, nominal, clicksPerStop)[0] ?? nominal;
}
