import {SETTINGS, type Exposure, type Setting} from '../../../core/exposure/stops.js';
import type {Trade} from '../../../core/exposure/trade.js';
import type {Say} from '../say.js';
import type {PhotoWords} from './words/en.js';

type Words = PhotoWords & {readonly say: Say};

/** Stops of rounding that nobody would see. */
const UNSEEN = 0.05;

/** An exposure in the order people say it: `f/11, 0.6 s, ISO 100`. */
export function exposureText({say}: {readonly say: Say}, exposure: Exposure): string {
  return SETTINGS.map((name) => say.setting(name, exposure[name])).join(', ');
}

/** The setting an advice leads to: `1/4 s → 0.4 s at f/11`. */
export function wayText(words: Words, from: Exposure, to: Exposure, pay: Setting): string {
  const {say} = words;
  const held = SETTINGS.filter((name) => name !== pay && (name !== 'iso' || pay === 'aperture')).map((name) => say.setting(name, to[name])).join(', ');
  const [first, last] = [say.setting(pay, from[pay]), say.setting(pay, to[pay])];
  return first === last ? words.wayStands(last, held) : words.wayOut(first, last, held);
}

/** What the way out brings, against the photo. */
export function wayCost(words: Words, thirds: number, {from, to, limit, rounding}: Trade): string {
  const {say} = words;
  const bothMoved = from.aperture !== to.aperture && from.shutter !== to.shutter;
  return [
    `${words.wayCost(say.stops(thirds / 3), thirds > 0)}.`,
    bothMoved ? words.takenAt(exposureText(words, from)) : '',
    limit ? words.wayEnds(say.settingName(limit.setting), say.stops(limit.short), limit.short > 0)
      : Math.abs(rounding) > UNSEEN ? words.wayRounds(say.stops(rounding), rounding > 0) : '',
  ].filter(Boolean).join(' ');
}
