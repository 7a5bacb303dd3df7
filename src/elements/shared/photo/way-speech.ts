import {SETTINGS, exposureStops, type Exposure, type Setting} from '../../../core/exposure/stops.js';
import type {Trade} from '../../../core/exposure/trade.js';
import type {Shot} from '../../../core/shot/shot.js';
import type {Say} from '../say.js';
import {isAsBright} from './trade-for.js';
import type {PhotoWords} from './words/en.js';

type Words = PhotoWords & {readonly say: Say};

/** Stops of rounding that nobody would see. */
const UNSEEN = 0.05;

/** An exposure in the order people say it: `f/11, 0.6 s, ISO 100`. */
export function exposureText({say}: {readonly say: Say}, exposure: Exposure): string {
  return SETTINGS.map((name) => say.setting(name, exposure[name])).join(', ');
}

/** What an advice comes to, from the photo and from what is set now. */
export interface WayFacts {
  readonly way: Trade;
  readonly shot: Shot;
  /** Thirds of a stop against the photo. */
  readonly thirds: number;
  /** Stops of light lost to close-up now, beyond what was lost in the photo. */
  readonly closeUp: number;
}

/** The setting that pays on its way to where an advice leads, while what is set now comes out like the photo: `1/4 s → 0.4 s at f/11`. */
export function wayText(words: Words, {way, shot, closeUp}: WayFacts): string {
  return settingText(words, isElsewhere(way, shot, closeUp) ? way.to : shot, way.to, shot.pay);
}

/** `0.4 s at f/11`; with an arrow from another value of the setting that pays. */
export function settingText(words: Words, from: Exposure, to: Exposure, pay: Setting): string {
  const {say} = words;
  const held = SETTINGS.filter((name) => name !== pay && (name !== 'iso' || pay === 'aperture')).map((name) => say.setting(name, to[name])).join(', ');
  const [first, last] = [say.setting(pay, from[pay]), say.setting(pay, to[pay])];
  return first === last ? words.wayStands(last, held) : words.wayOut(first, last, held);
}

/** Whether what is set now would come out brighter or darker than the photo. */
const isElsewhere = ({from}: Trade, shot: Shot, closeUp: number): boolean => !isAsBright(exposureStops(from, shot) - closeUp);

/** What the way out brings, against the photo and against what is set now. */
export function wayCost(words: Words, {way, shot, thirds, closeUp}: WayFacts): string {
  const {say} = words;
  const {from, to, limit, rounding} = way;
  const bothMoved = from.aperture !== to.aperture && from.shutter !== to.shutter;
  const change = exposureStops(shot, to);
  const than = [say.stops(thirds / 3), thirds > 0] as const;
  return [
    `${isElsewhere(way, shot, closeUp) ? words.wayCostNow(...than, say.stops(change), change > 0) : words.wayCost(...than)}.`,
    bothMoved ? words.takenAt(exposureText(words, from)) : '',
    Math.abs(closeUp) > UNSEEN ? words.wayCloseUp(say.measuredStops(closeUp), closeUp < 0) : '',
    limit ? words.wayEnds(say.settingName(limit.setting), say.stops(limit.short), limit.short > 0)
      : Math.abs(rounding) > UNSEEN ? words.wayRounds(say.stops(rounding), rounding > 0) : '',
  ].filter(Boolean).join(' ');
}
