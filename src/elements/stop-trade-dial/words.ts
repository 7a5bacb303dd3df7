import type {OtherReading, Reading} from '../../core/exposure/reading.js';
import type {Exposure, Setting} from '../../core/exposure/stops.js';
import {lightStops} from '../../core/exposure/stops.js';
import type {TradeWayOut} from '../../core/exposure/trade.js';
import {writeAperture, writeIso, writeShutter, writeStops} from '../../core/exposure/write.js';
import type {Balance} from './balance.js';

/** Stops that nobody would see in a picture and no dial can show. */
const UNSEEN = 0.015;

/** Numbers and their units stay on one line. */
const together = (text: string): string => text.replaceAll(' ', '\u00a0');

export const SETTING_NAMES: Readonly<Record<Setting, string>> = {aperture: 'Aperture', shutter: 'Shutter', iso: 'ISO'};

/** One value as prose writes it. */
export function written(setting: Setting, value: number): string {
  const write = {aperture: writeAperture, shutter: (time: number) => writeShutter(time, 'prose'), iso: writeIso}[setting];
  return together(write(value));
}

export function exposureWords({aperture, shutter, iso}: Exposure, withIso = true): string {
  const pair = `${written('aperture', aperture)} at ${written('shutter', shutter)}`;
  return withIso ? `${pair}, ${written('iso', iso)}` : pair;
}

/** The start as it can be typed back: `f/2.8, 1/25 s, ISO 100`. */
export function exposureText({aperture, shutter, iso}: Exposure): string {
  return `${writeAperture(aperture)}, ${writeShutter(shutter, 'prose')}, ${writeIso(iso)}`;
}

/** A number of stops without a sign: `1 1/3 stops`, `0.04 stop`. */
export function stopsWords(stops: number): string {
  const size = Math.abs(stops);
  const thirds = Math.abs(size * 3 - Math.round(size * 3)) < 0.02 && size > 0.3;
  const halves = Math.abs(size * 2 - Math.round(size * 2)) < 0.02 && size > 0.3;
  const text = (thirds || halves ? writeStops(Math.round(size * 6) / 6) : writeStops(size, 2)).replace(/^\+/, '');
  return together(`${text} ${size > 1.001 ? 'stops' : 'stop'}`);
}

const more = (stops: number): string => (stops > 0 ? 'more' : 'less');
const brighter = (stops: number): string => (stops > 0 ? 'brighter' : 'darker');

export function verdictWords({start, setting, correction, off, even, trade}: Balance): string {
  const iso = setting.iso !== start.iso;
  const [now, then] = [exposureWords(setting, iso), exposureWords(start, iso)];
  if (!even && trade.limit && trade.to[trade.limit.setting] === setting[trade.limit.setting]) {
    return `${limitWords(trade.limit.setting, trade.limit.at)}: ${now} comes out ${stopsWords(off)} too ${off > 0 ? 'bright' : 'dark'}.`;
  }
  if (!even) {
    const asked = correction ? `${stopsWords(off)} ${brighter(off)} than asked` : `${stopsWords(off)} ${brighter(off)} than ${then}`;
    return `${now} is ${asked}.`;
  }
  if (correction) return `${now} gives ${stopsWords(correction)} ${more(correction)} light than ${then}, as asked.`;
  if (lightStops('aperture', start.aperture, setting.aperture) === 0 && start.shutter === setting.shutter && !iso) {
    return `${exposureWords(setting)}. Every pair that faces on the dial gives this light.`;
  }
  return `${now} gives the same light as ${then}.`;
}

function limitWords(setting: Setting, at: number): string {
  return `The ${setting === 'iso' ? 'ISO' : setting} ends at ${written(setting, at)}`;
}

/** What the nearest click leaves over; empty when it cannot be seen. */
export function roundingWords({off, even, pay}: Balance): string {
  if (!even || Math.abs(off) < UNSEEN) return '';
  return `${stopsWords(off)} ${brighter(off)} than asked: ${SETTING_NAMES[pay] === 'ISO' ? 'ISO' : `the ${pay}`} stands on its nearest click.`;
}

/** What the trade buys and what it takes, besides light. */
export function priceWords({start, setting}: Balance): string {
  const depth = -lightStops('aperture', start.aperture, setting.aperture);
  const time = lightStops('shutter', start.shutter, setting.shutter);
  const grain = lightStops('iso', start.iso, setting.iso);
  const parts = [
    Math.abs(depth) < UNSEEN ? '' : `Blur discs ${depth > 0 ? 'shrink' : 'grow'} to ${share(2 ** (-depth / 2))} of their width.`,
    Math.abs(time) < UNSEEN ? '' : `The shutter stays open ${times(2 ** time)}.`,
    Math.abs(grain) < UNSEEN ? '' : `${grain > 0 ? 'More' : 'Less'} noise: ${stopsWords(grain)} of ISO.`,
  ];
  return parts.filter(Boolean).join(' ');
}

function share(ratio: number): string {
  return ratio < 1 ? `${Math.round(ratio * 100)}\u00a0%` : `${+ratio.toPrecision(2)}\u00a0times`;
}

function times(ratio: number): string {
  return ratio >= 1 ? `${+ratio.toPrecision(2)} times as long` : `for ${+(ratio * 100).toPrecision(2)}\u00a0% of the time`;
}

/** Common practice, no source: said as advice, nothing is computed. */
export function steadyWords(shutter: number): string {
  if (shutter <= 1 / 64) return '';
  const shock = shutter <= 1 ? ' Around these times the shutter’s own shock shows most.' : '';
  return `At ${written('shutter', shutter)} keep your hands off: timer or remote.${shock}`;
}

/** A time whose digits are easily taken for another's. */
export function misreadWords(shutter: number, other: OtherReading): string {
  return `${written('shutter', shutter)} shows as ${writeShutter(shutter, 'body')} on a camera body. Read as ${written('shutter', other.value)} `
    + `it would be ${stopsWords(other.stops)} ${brighter(other.stops)}.`;
}

/** Which way the typed digits were taken, when there is another. */
export function takenWords(setting: Setting, reading: Reading): string {
  return `“${reading.text}” was taken as ${written(setting, reading.value)}.`;
}

export function takeOtherWords(setting: Setting, other: OtherReading): readonly [what: string, cost: string] {
  return [`Take ${written(setting, other.value)} instead`, `${stopsWords(other.stops)} ${brighter(other.stops)}`];
}

export function balanceWords(setting: Setting, value: number): readonly [what: string, cost: string] {
  return [`Set ${written(setting, value)}`, 'brings back the light that was asked for'];
}

export function wayOutWords({setting, value, left, stops}: TradeWayOut): readonly [what: string, cost: string] {
  const rest = Math.abs(left) < 0.05 ? 'makes up all of it' : `${stopsWords(left)} still ${left > 0 ? 'missing' : 'too much'}`;
  if (setting !== 'light') return [written(setting, value), rest];
  const ratio = +value.toPrecision(2);
  return [
    stops > 0 ? `${ratio} times the light on the figure` : `${Math.round(value * 100)}\u00a0% of the light on the figure`,
    stops > 0 ? `lamps at ${Math.round(100 / Math.sqrt(value))}\u00a0% of their distance, as a first guess` : 'lamps further off or dimmed',
  ];
}

export function handWords(setting: Exposure): string {
  return `${written('aperture', setting.aperture)} at ${written('shutter', setting.shutter)}`;
}

export const WORDS = {
  dial: 'Stop-trade dial',
  hand: 'Aperture and shutter, same light',
  correction: 'Brighter (+), darker (−)',
  correctionHint: 'stops; a meter showing 2 under asks for +2',
  darker: 'One click darker',
  brighter: 'One click brighter',
  now: 'Set now',
  pay: 'What pays',
  step: 'Clicks of the dials',
  steps: {1: 'whole stops', 2: 'half stops', 3: 'third stops'},
  start: 'Start: metered or tried',
  startHint: 'as written anywhere: f/2.8 1/25, f8 0"3 ISO 100, 1/25 f/8 +2',
  startWanted: 'a setting such as f/2.8 1/25',
  startHere: 'Start from here',
  back: 'Back to the start',
  path: 'The way there, stop by stop',
  table: 'What changed',
  from: 'from',
  to: 'to',
  light: 'light',
  limits: 'Limits of lens and body',
  widest: 'Lens fully open',
  smallest: 'Lens fully closed',
  fastest: 'Shortest time',
  slowest: 'Longest time',
  lowest: 'Base ISO',
  highest: 'Highest ISO you use',
  held: 'held',
  same: '0',
} as const;
