import type {OtherReading, Reading} from '../../core/exposure/reading.js';
import {SETTINGS, lightStops, type Exposure, type Setting} from '../../core/exposure/stops.js';
import type {TradeWayOut} from '../../core/exposure/trade.js';
import {writeShutter} from '../../core/exposure/write.js';
import type {Balance} from './balance.js';
import type {DialWords} from './words/en.js';

/** What a button does, and what that costs. */
export type Way = readonly [what: string, cost: string];

/** Stops that nobody would see in a picture and no dial can show. */
const UNSEEN = 0.015;

/** `f/11 at 0.6 s`, with the ISO where it is no longer what it was. */
export function exposureWords(words: DialWords, {aperture, shutter, iso}: Exposure, withIso = true): string {
  const pair = words.pair(words.say.aperture(aperture), words.say.shutter(shutter));
  return withIso ? words.triple(pair, words.say.iso(iso)) : pair;
}

/** The start as it can be typed back: `f/2.8, 1/25 s, ISO 100`. A decimal comma stands within digits, one that parts them has a blank. */
export function exposureText({say}: DialWords, {aperture, shutter, iso}: Exposure): string {
  return [say.aperture(aperture), say.shutter(shutter), say.iso(iso)].join(', ').replaceAll('\u00a0', ' ');
}

/** What of a start was not typed and stays as it was; empty when nothing. */
export function keptWords(words: DialWords, start: Exposure, kept: readonly Setting[]): string {
  return kept.length ? words.startKept(words.say.list(kept.map((name) => words.say.setting(name, start[name])))) : '';
}

export function verdictWords(words: DialWords, {start, setting, correction, closeUp, off, even, trade}: Balance): string {
  const {say} = words;
  const iso = setting.iso !== start.iso;
  const [now, then] = [exposureWords(words, setting, iso), exposureWords(words, start, iso)];
  if (!even && trade.limit && trade.to[trade.limit.setting] === setting[trade.limit.setting]) {
    const {setting: ended, at} = trade.limit;
    return words.ends(ended, say.setting(ended, at), now, say.stops(off), off > 0);
  }
  if (!even) {
    return correction || closeUp ? words.offFromAsked(now, say.stops(off), off > 0) : words.offFrom(now, say.stops(off), off > 0, then);
  }
  if (correction) return words.asAsked(now, say.stops(correction), correction > 0, then);
  const unmoved = lightStops('aperture', start.aperture, setting.aperture) === 0 && start.shutter === setting.shutter && !iso;
  return unmoved ? words.facing(exposureWords(words, setting)) : words.sameLight(now, then);
}

/** What the nearest click leaves over; empty when it cannot be seen. */
export function roundingWords(words: DialWords, {off, even, pay}: Balance): string {
  return even && Math.abs(off) >= UNSEEN ? words.rounded(words.say.stops(off), off > 0, pay) : '';
}

/** What close-up loses beyond what was metered; empty when it cannot be seen. */
export function closeUpWords(words: DialWords, {closeUp, handHeld}: Balance): string {
  if (Math.abs(closeUp) < UNSEEN) return '';
  const stops = words.say.stops(closeUp);
  return handHeld ? words.closeUpByHand(stops) : words.closeUp(stops, closeUp > 0);
}

/** What the trade buys and what it takes, besides light. */
export function priceWords(words: DialWords, {start, setting}: Balance): string {
  const {say} = words;
  const depth = -lightStops('aperture', start.aperture, setting.aperture);
  const time = lightStops('shutter', start.shutter, setting.shutter);
  const grain = lightStops('iso', start.iso, setting.iso);
  const [blur, open] = [2 ** (-depth / 2), 2 ** time];
  const parts = [
    Math.abs(depth) < UNSEEN ? '' : depth > 0 ? words.blurShrinks(say.percent(blur)) : words.blurGrows(say.digits(blur, 2)),
    Math.abs(time) < UNSEEN ? '' : open >= 1 ? words.openLonger(say.digits(open, 2)) : words.openShorter(say.percent(+open.toPrecision(2), 2)),
    Math.abs(grain) < UNSEEN ? '' : words.noise(grain > 0, say.stops(grain)),
  ];
  return parts.filter(Boolean).join(' ');
}

/** Longest time that hands hold still for, and the times around which a shutter's own shock shows, s. */
const STEADY_BEYOND = 1 / 64;
const SHOCK_UNTIL = 1;

/** Common practice, no source: said as advice, nothing is computed. */
export function steadyWords(words: DialWords, shutter: number): string {
  if (shutter <= STEADY_BEYOND) return '';
  return [words.handsOff(words.say.shutter(shutter)), shutter <= SHOCK_UNTIL ? words.shock : ''].filter(Boolean).join(' ');
}

/** One line of what changed: the name, from where to where, and what that does to the light. */
export interface ChangeLine {
  readonly name: string;
  readonly what: string;
  readonly light: string;
}

/** The three settings, and what close-up loses where that changed. */
export function changeLines(words: DialWords, {start, setting, closeUp}: Balance): readonly ChangeLine[] {
  const {say} = words;
  const light = (stops: number) => (Math.abs(stops) < UNSEEN ? words.noLight : words.byLight(say.stops(stops), stops > 0));
  const lines = SETTINGS.map((name) => {
    const [from, to] = [say.setting(name, start[name]), say.setting(name, setting[name])];
    return {name: say.settingName(name), what: from === to ? words.held(to) : words.moved(from, to), light: light(lightStops(name, start[name], setting[name]))};
  });
  return Math.abs(closeUp) < UNSEEN ? lines : [...lines, {name: words.closeUpName, what: '', light: light(-closeUp)}];
}

/** A time whose digits are easily taken for another's. */
export function misreadWords(words: DialWords, shutter: number, other: OtherReading): string {
  const {say} = words;
  return words.misread(say.shutter(shutter), writeShutter(shutter, 'body'), say.shutter(other.value), say.stops(other.stops), other.stops > 0);
}

/** Which way the typed digits were taken, when there is another. */
export function takenWords(words: DialWords, setting: Setting, reading: Reading): string {
  return words.taken(reading.text, words.say.setting(setting, reading.value));
}

export function takeOtherWords(words: DialWords, setting: Setting, other: OtherReading): Way {
  return [words.takeInstead(words.say.setting(setting, other.value)), words.byLight(words.say.stops(other.stops), other.stops > 0)];
}

export function balanceWords(words: DialWords, setting: Setting, value: number): Way {
  return [words.set(words.say.setting(setting, value)), words.bringsBack];
}

export function wayOutWords(words: DialWords, {setting, value, left, stops}: TradeWayOut): Way {
  const {say} = words;
  if (setting !== 'light') {
    return [say.setting(setting, value), Math.abs(left) < 0.05 ? words.makesUpAll : words.stillMissing(say.stops(left), left > 0)];
  }
  return stops > 0
    ? [words.moreLight(say.digits(value, 2)), words.lampsNearer(say.percent(1 / Math.sqrt(value)))]
    : [words.lessLight(say.percent(value)), words.lampsAway];
}
