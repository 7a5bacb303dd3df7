import {requireFinite, requirePositive} from '../problem.js';
import {clicksPrinted, exactFromNominal, nearestClick} from './clicks.js';
import type {Setting} from './stops.js';

/** How a time is written: `prose` 0.6 s, 1/60 s, 1 min 4 s; `body` 0"6, 1/60, 64"; `dial` 0"6, 60, 64". */
export type ShutterStyle = 'prose' | 'body' | 'dial';

/** Share of the value within which it is its click; binary rounding, no more. */
const EXACT = 1e-9;

/** What is printed on a value's click, thirds first; `undefined` off the clicks. */
function labelOf(setting: Setting, value: number): string | undefined {
  for (const clicksPerStop of [3, 2] as const) {
    const click = nearestClick(setting, value, clicksPerStop);
    if (Math.abs(click.value / value - 1) < EXACT) return click.label;
  }
  return undefined;
}

/**
 * A number off the clicks in three digits, more when it is whole, and more when the short form would be read as a
 * click that it is not: 0.3001 is not the 0.3 of the dial.
 * @param nominal - turns the written number into f-number, seconds or ISO speed
 */
function digitsOf(setting: Setting, value: number, nominal = (number: number): number => number): string {
  const whole = Math.max(3, Math.floor(Math.log10(value)) + 1);
  // Three decimals of an ISO speed would be read as thousands: 25.002 as 25 002.
  const tries = [whole, whole + 1, whole + 2, whole + 3].map((digits) => Number(value.toPrecision(digits)))
    .filter((number) => setting !== 'iso' || Number(number.toFixed(2)) === number);
  const faithful = tries.find((number) => clicksPrinted(setting, nominal(number)).length === 0
    || Math.abs(exactFromNominal(setting, nominal(number)) / nominal(value) - 1) < EXACT);
  return String(faithful ?? tries[0] ?? Math.round(value));
}

/**
 * `f/11`: the printed number on a click, three digits off the clicks (`f/1.78`). Reading it gives the value back.
 * @param value - f-number, above 0; exact, so 11.3137 is f/11
 * @throws {Problem} `aperture`, when not a finite number above 0
 */
export function writeAperture(value: number): string {
  requirePositive('aperture', value);
  return `f/${labelOf('aperture', value) ?? digitsOf('aperture', value)}`;
}

/**
 * `ISO 100`: the printed number on a click, the number itself off the clicks. Reading it gives the value back.
 * @param value - ISO speed, above 0; exact
 * @throws {Problem} `iso`, when not a finite number above 0
 */
export function writeIso(value: number): string {
  requirePositive('iso', value);
  return `ISO ${labelOf('iso', value) ?? digitsOf('iso', value)}`;
}

/**
 * A shutter time: what is printed on its click, or three digits off the clicks: `0.37 s`, `1/60.3 s`. From a minute
 * on prose counts minutes and whole seconds. Reading it gives the value back.
 * @param value - s, above 0; exact, so 1/64 is `1/60`
 * @throws {Problem} `shutter`, when not a finite number above 0
 */
export function writeShutter(value: number, style: ShutterStyle = 'prose'): string {
  requirePositive('shutter', value);
  const label = labelOf('shutter', value)
    ?? (value < 0.1 ? `1/${digitsOf('shutter', 1 / value, (below) => 1 / below)}` : digitsOf('shutter', value));
  if (style === 'prose') {
    const seconds = Math.round(value);
    if (seconds < 60) return `${label} s`;
    return `${Math.floor(seconds / 60)} min${seconds % 60 ? ` ${seconds % 60} s` : ''}`;
  }
  // A denominator with a point in it keeps its 1/: alone it would be taken for seconds.
  if (label.startsWith('1/')) return style === 'dial' && !label.includes('.') ? label.slice(2) : label;
  if (!label.includes('.')) return `${label}"`;
  const [whole, part = ''] = label.split('.');
  return part.length > 2 ? `${label}"` : `${whole}"${part}`;
}

/**
 * A setting as prose has it: `f/11`, `0.6 s`, `ISO 100`.
 * @param value - f-number, seconds or ISO speed, above 0; exact
 * @throws {Problem} named for the setting, when not a finite number above 0
 */
export function writeSetting(setting: Setting, value: number): string {
  return setting === 'aperture' ? writeAperture(value) : setting === 'iso' ? writeIso(value) : writeShutter(value);
}

/**
 * Stops as people say them, with a true minus: `+1 1/3`, `−2/3`, `0`. Halves are written as halves, everything else to
 * the nearest third, or in decimals when asked.
 * @param stops - any finite number; positive = brighter
 * @param decimals - `undefined` for thirds; 1 writes `+0.3`, 2 writes `+0.34`
 * @throws {Problem} `stops`, when not a finite number
 */
export function writeStops(stops: number, decimals?: number): string {
  requireFinite('stops', stops);
  const size = Math.abs(stops);
  const per = Number.isInteger(size * 2) ? 2 : 3;
  const parts = Math.round(size * per);
  const whole = Math.floor(parts / per);
  const text = decimals === undefined
    ? [whole || '', parts % per ? `${parts % per}/${per}` : ''].filter(Boolean).join(' ')
    : String(Number(size.toFixed(decimals)));
  if (text === '' || text === '0') return '0';
  return (stops < 0 ? '−' : '+') + text;
}
