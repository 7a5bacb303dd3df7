import type {Exposure} from '../../core/exposure/stops.js';
import type {Unexplained} from '../../core/light/backdrop.js';
import type {FlickerCheck} from '../../core/light/flicker.js';
import type {Shot} from '../../core/shot/shot.js';
import {nameOf, stopsOf} from './speech.js';
import type {Way} from './ways-speech.js';
import type {ShadeWords} from './words/en.js';

/** A photo and a plan that differ by less agree, stops; a lamp that would have to give more than this extra is likely not the one. */
const [AGREES, A_LOT] = [0.2, 1];

export function photoWords(words: ShadeWords, {stops: more, byLamp}: Unexplained, shot: Shot): string {
  if (!Number.isFinite(more)) return words.photoUnplanned;
  if (Math.abs(more) <= AGREES) return words.photoAgrees(words.say.stops(AGREES));
  const beside = words.photoDiffers(stopsOf(words, more), more > 0);
  const ranked = byLamp.map((needed, lamp) => ({needed, lamp})).filter((each): each is {needed: number; lamp: number} => each.needed !== null)
    .sort((a, b) => Math.abs(a.needed) - Math.abs(b.needed));
  const [first] = ranked;
  if (!first) return beside;
  const likeliest = words.photoLikeliest(nameOf(words, `lamp${first.lamp}`, shot), stopsOf(words, first.needed), first.needed > 0);
  return [beside, likeliest, more > 0 && first.needed > A_LOT ? words.photoStranger : ''].filter(Boolean).join(' ');
}

/** Swings that are said as they are, stops; beyond, nobody would believe the number. */
const MOST_SAID = 4;

export function flickerWords(words: ShadeWords, {mains, even, swing}: FlickerCheck, shutter: number): string {
  const [time, hertz] = [words.say.shutter(shutter), `${mains}\u00a0Hz`];
  if (even) return words.even(time, hertz);
  return swing > MOST_SAID ? words.veryUneven(time, hertz) : words.uneven(time, hertz, stopsOf(words, swing));
}

export function evenWords(words: ShadeWords, next: Exposure): Way {
  return [words.set(words.say.shutter(next.shutter)), words.sameLight(words.say.aperture(next.aperture))];
}
