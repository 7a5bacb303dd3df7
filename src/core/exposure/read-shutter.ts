import type {Problem} from '../problem.js';
import {readNumber} from '../units.js';
import type {ClicksPerStop} from './clicks.js';
import {plainMarks, readingOf, settingText} from './reading.js';
import type {Candidate, Reading} from './reading.js';

/** What is left once the words around a time are gone. */
function timeAlone(text: string): string {
  return plainMarks(settingText(text)).toLowerCase().replace(/''/g, '"')
    .replace(/^(?:shutter(?:\s*(?:speed|time))?|exposure(?:\s*time)?|time|speed|tv)?\s*[:=]?\s*/, '')
    .replace(/\s*(?:th|of a)(?=[\s"]|$)/, '');
}

/** A number or a fraction with a decimal denominator, `1/2.5`. */
function readAmount(text: string): number | undefined {
  const parts = /^(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+(?:[.,]\d+)?)$/.exec(text);
  if (!parts) return readNumber(text);
  return Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3]?.replace(',', '.'));
}

/** Digits behind the point taken as a denominator and the other way round, and marks that were overlooked. */
function slips(amount: string): readonly Candidate[] {
  const fraction = /^(\d+)\s*\/\s*(\d+(?:[.,]\d+)?)$/.exec(amount);
  if (fraction) {
    const [, above = '', below = ''] = fraction;
    const rest: Candidate[] = /^\d$/.test(below) ? [[Number(`${above}.${below}`), 'seconds']] : [];
    if (above !== '1') return rest;
    if (/^\d$/.test(below)) rest.push([Number(`0.${below}`), 'seconds']);
    return [...rest, [Number(below.replace(',', '.')), 'seconds']];
  }
  const decimal = /^(\d+)[.,](\d+)$/.exec(amount);
  if (decimal) {
    const [, whole, part = ''] = decimal;
    const denominator = Number(part);
    if (!(denominator > 0)) return [];
    return Number(whole) > 0 ? [[Number(whole) / denominator, 'fraction'], [1 / Number(`${whole}.${part}`), 'fraction']]
      : [[1 / denominator, 'fraction']];
  }
  return /^\d+$/.test(amount) ? [[1 / Number(amount), 'fraction']] : [];
}

/**
 * A shutter time as people and bodies write it: `1/25`, `1/25s`, `25` (bare: 1/25 s), `25s`, `30"`, `0"6`, `0,6`,
 * `1"3`, `1 1/3`, `3/10`, `1/2.5`, `½`, `2m`, `1 min 4 s`, `500 ms`; a word such as `shutter` before it does no harm.
 *
 * A printed time is taken for its click: `1/60` is 1/64 s, `30"` is 32 s. Others stay as they are.
 * @param text - as typed, any length
 * @param clicksPerStop - of the dial in use; only times that a third and a half share (1/6) depend on it
 * @returns seconds, how they were read, and what else the same digits may mean: `0"6` for `1/6`, 25 s for `25`. A
 *   {@link Problem} named `shutter` for anything else, and for times under a microsecond or over a day. Never throws.
 */
export function readShutter(text: string, clicksPerStop: ClicksPerStop = 3): Reading | Problem {
  const plain = timeAlone(text);
  const take = (taken?: Candidate, rest?: readonly Candidate[]): Reading | Problem => (
    readingOf('shutter', text, taken, clicksPerStop, rest));
  const marked = /^(\d+)"(\d{1,2})(?:\s*s)?$/.exec(plain);
  if (marked) {
    const amount = `${marked[1]}.${marked[2]}`;
    return take([Number(amount), 'seconds'], slips(amount));
  }
  const long = /^(\d+(?:[.,]\d+)?)\s*(?:m|min|mins|minutes?|')\.?(?:\s*(\d+(?:[.,]\d+)?)\s*(?:s|secs?|seconds?|")?)?$/
    .exec(plain);
  if (long) {
    const seconds = 60 * (readNumber(long[1] ?? '') ?? NaN) + (readNumber(long[2] ?? '0') ?? NaN);
    return take([seconds, 'minutes']);
  }
  const [, amount = '', unit] = /^(.*?)\s*(ms|s|secs?\.?|seconds?|")?$/.exec(plain) ?? [];
  const number = readAmount(amount);
  if (number === undefined) return take();
  if (unit === 'ms') return take([number / 1000, 'seconds']);
  if (/[/½⅓⅔¼¾⅛⅜⅝⅞]/.test(amount)) return take([number, 'fraction'], slips(amount));
  if (unit || !/^\d+$/.test(amount)) return take([number, 'seconds'], slips(amount));
  return take([1 / number, 'bare'], [[number, 'seconds'], ...slips(`1/${amount}`)]);
}
