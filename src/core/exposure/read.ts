import {Problem} from '../problem.js';
import {readNumber} from '../units.js';
import {clicksPrinted} from './clicks.js';
import type {ClicksPerStop} from './clicks.js';
import {plainMarks, readingOf, settingText} from './reading.js';
import type {Candidate, Reading} from './reading.js';

/**
 * An f-number as people and lenses write it: `f/8`, `F8`, `f 8`, `ƒ/8`, `f:8`, `1:2.8`, `8`, `5,6`; the word
 * `aperture` before it does no harm. A printed number is taken for its click (f/11 is 11.31), others stay (f/1.78).
 * @param text - as typed, any length
 * @param clicksPerStop - of the dial in use; only numbers that a third and a half share (f/13) depend on it
 * @returns the f-number, and what else the same digits may mean: f/5.6 for `f/56`. A {@link Problem} named `aperture`
 *   for anything else, a T-number too, and for numbers no lens has (under 0.3, over 1024). Never throws.
 */
export function readAperture(text: string, clicksPerStop: ClicksPerStop = 3): Reading | Problem {
  const [, digits] = /^(?:aperture|f-?(?:number|stop))?\s*[:=]?\s*(?:f\s*[/:=]?)?\s*(?:1\s*:)?\s*(\d*[.,]?\d+)$/i
    .exec(plainMarks(settingText(text))) ?? [];
  const number = digits === undefined ? undefined : readNumber(digits);
  if (number === undefined) return readingOf('aperture', text, undefined);
  const rest: Candidate[] = /^[1-9]\d$/.test(digits ?? '') && clicksPrinted('aperture', number / 10).length > 0
    ? [[number / 10, 'point-lost']] : [];
  return readingOf('aperture', text, [number, 'f-number'], clicksPerStop, rest);
}

/**
 * An ISO speed: `100`, `ISO 100`, `ISO100/21°`, `1 600`, `1,600`, `12.8k`. A printed number is taken for its click
 * (125 is 100·2^(1/3)), others stay.
 * @param text - as typed, any length
 * @param clicksPerStop - of the dial in use, as for the other readers; no ISO speed in print depends on it
 * @returns the speed; a {@link Problem} named `iso` for anything else, `auto` too, and outside 1 to 10 000 000. Never
 *   throws.
 */
export function readIso(text: string, clicksPerStop: ClicksPerStop = 3): Reading | Problem {
  const [, digits = '', thousand] = /^(?:iso|asa)?\s*[:=]?\s*(\d[\d., ]*?)\s*(k)?(?:\s*\/\s*\d+\s*°?)?(?:\s*iso)?$/i
    .exec(settingText(text)) ?? [];
  const joined = thousand ? digits : digits.replace(/(\d)[., ](?=\d{3}(?!\d))/g, '$1');
  const number = readNumber(joined);
  return readingOf(
    'iso', text, number === undefined ? undefined : [number * (thousand ? 1000 : 1), 'iso'], clicksPerStop,
  );
}

/**
 * A number of stops: `+2`, `-1 1/3`, `−2/3`, `+0,7`, `1.3`, `1 stop`, `2 EV`, `2/3 under`, `1 1/3 IL`, `2/3 de paso`,
 * `1/3 d’IL`. Decimals ending as bodies
 * print thirds (.3, .6, .7, .33, .66, .67) are taken as thirds.
 * @param text - as typed, any length
 * @returns stops; `under` and `darker` turn a number without a sign negative. Whether it is what a meter shows or what
 *   is wanted, the caller knows. A {@link Problem} named `correction` for anything else, or beyond 30 stops. Never
 *   throws.
 */
export function readCorrection(text: string): number | Problem {
  const wanted = 'a number of stops such as +1 1/3';
  const parts = /^([+±-]?)\s*([^a-z]*?)\s*(?:(?:de\s+|d\s?')?(?:stops?|ev|il|blenden?|blendenstufen?|pasos?|diaphs?))?\s*(?:(under|darker|down)|over|brighter|up)?$/i;
  const [, sign = '', amount = '', down] = parts.exec(plainMarks(settingText(text))) ?? [];
  const number = /[+±-]/.test(amount) ? undefined : readNumber(amount);
  if (number === undefined || number > 30) return new Problem('correction', text, wanted);
  const stops = /[.,](?:3+|6+7?|7)$/.test(amount) ? Math.round(number * 3) / 3 : number;
  return (sign === '-' || (down !== undefined && sign === '') ? -stops : stops) + 0;
}
