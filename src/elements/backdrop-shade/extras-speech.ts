import type {Exposure} from '../../core/exposure/stops.js';
import type {Unexplained} from '../../core/light/backdrop.js';
import type {FlickerCheck} from '../../core/light/flicker.js';
import type {NamedLamp} from '../../core/light/set-text.js';
import {lampName, stopsOf} from './speech.js';
import type {ShadeWords} from './words/en.js';

/** Plan and photo agree within this, stops: what direct light from geometry alone was found to be off by. */
const AGREES = 0.2;

/** A lamp would have to give so many stops more than planned before another is likelier. Our choice. */
const MUCH = 1;

export function photoWords(words: ShadeWords, {stops: more, byLamp}: Unexplained, lamps: readonly NamedLamp[]): string {
  const {say} = words;
  if (!Number.isFinite(more)) return words.photoUnlit;
  if (Math.abs(more) <= AGREES) return words.photoAgrees(stopsOf(say, AGREES));
  const ranked = byLamp.flatMap((needed, lamp) => (needed === null ? [] : [{needed, lamp}])).sort((a, b) => Math.abs(a.needed) - Math.abs(b.needed));
  const [first] = ranked;
  return [
    words.photoOff(stopsOf(say, more), more > 0),
    ...(first ? [words.likeliest(lampName(words, lamps[first.lamp]), stopsOf(say, first.needed), first.needed > 0)] : []),
    ...(first && more > 0 && first.needed > MUCH ? [words.stranger] : []),
  ].join(' ');
}

/** Swings beyond this have no number worth naming, stops. */
const SEVERAL = 4;

export function flickerWords(words: ShadeWords, {mains, even, swing}: FlickerCheck, shutter: number): string {
  const time = words.say.shutter(shutter);
  if (even) return words.even(time, mains);
  return swing > SEVERAL ? words.unevenMuch(time, mains) : words.uneven(time, mains, stopsOf(words.say, swing));
}

export function evenWords(words: ShadeWords, next: Exposure): readonly [what: string, cost: string] {
  return [words.set(words.say.shutter(next.shutter)), words.sameLight(words.say.aperture(next.aperture))];
}
