import {nearestClick} from '../../core/exposure/clicks.js';
import {softnessOf} from '../../core/optics/blur.js';
import {workingAperture} from '../../core/optics/lens.js';
import type {Problem} from '../../core/problem.js';
import type {Shot} from '../../core/shot/shot.js';
import type {LengthUnit} from '../../core/units.js';
import type {Reading} from './reading.js';
import type {Whole, ZoneWords} from './words/en.js';

/** Lengths that read as nothing, mm. */
const NOTHING_MM = 0.05;

/** A mark on the ruler as a place to point at. */
export function placeText(words: ZoneWords, mark: number, unit: LengthUnit): string {
  if (Math.abs(mark) < NOTHING_MM) return words.atEdge;
  return mark < 0 ? words.beforeBase(words.say.length(mark, unit)) : words.behindEdge(words.say.length(mark, unit));
}

/** A mark on the ruler with its sign. */
export const markText = ({say}: ZoneWords, mark: number, unit: LengthUnit): string =>
  `${mark <= -NOTHING_MM ? '−' : ''}${say.length(mark, unit)}`;

/** An f-number as the body shows it from where the camera stands, or will stand. */
export function apertureText({say}: ZoneWords, marked: number, shot: Shot, fieldWidth = shot.fieldWidth): string {
  if (shot.apertureShown === 'marked') return say.aperture(marked);
  const working = workingAperture(marked, shot.sensorWidth / fieldWidth, shot.pupilRatio);
  return say.aperture(nearestClick('aperture', working, shot.clicksPerStop).value);
}

/** Pixels across. */
export const acrossText = ({say}: Pick<ZoneWords, 'say'>, pixels: number): string => `${say.whole(pixels)}\u00a0px`;

/** The verdict: whether all of it is sharp, and if not which end is outside by how much. */
export function verdictText(words: ZoneWords, {fit, from, to, front, back, airy, shot: {unit, blurLimit}}: Reading): string {
  const length = (mm: number): string => words.say.length(mm, unit);
  const {foremost, rearmost} = fit.depth;
  const [before, behind] = [from - front, back - to];
  if (fit.end === 'both') {
    const of: Whole = foremost.part === 'base-front' && rearmost.part === 'base-back' ? 'base' : 'figure';
    return words.bothOutside(length(before), length(behind), of);
  }
  if (fit.end === 'front') {
    return back < from ? words.missed(length(from - back), true) : words.frontOutside(length(before), foremost.part === 'base-front' ? 'base' : 'figure');
  }
  if (fit.end === 'back') {
    return front > to ? words.missed(length(front - to), false) : words.backOutside(length(behind), rearmost.part === 'base-back' ? 'base' : 'figure');
  }
  // Past its limit diffraction leaves nothing quite sharp, however well it lies in focus.
  const softness = softnessOf(airy, blurLimit);
  if (softness !== 'sharp') return words.softThroughout(softness === 'a-little');
  return to === Infinity ? words.sharpWithoutEnd(length(before)) : words.sharp(length(before), length(behind));
}

/** What several frames do that were planned, before what a single one does. */
export const plannedText = (words: ZoneWords, reading: Reading, frames: number): string =>
  `${words.planned(frames, words.say.whole(frames))} ${verdictText(words, reading)}`;

/** Where the sharp zone lies. */
export function zoneText(words: ZoneWords, {from, to, shot: {unit}}: Reading): string {
  const {say} = words;
  if (to === Infinity) return words.zoneWithoutEnd(placeText(words, from, unit));
  const fine = say.length(from, unit) === say.length(to, unit) && from * to > 0;
  const [one, other] = [say.length(from, unit, fine), say.length(to, unit, fine)];
  return to < 0 ? words.zoneBefore(one, other) : from < 0 ? words.zoneAcross(one, other) : words.zoneBehind(one, other);
}

/** What the verdict rests on. */
export function reasonText(words: ZoneWords, reading: Reading): string {
  const {shot, front, back, blurFront, blurBack, fit: {depth}} = reading;
  const {say} = words;
  return [
    zoneText(words, reading),
    words.rests(apertureText(words, shot.aperture, shot), say.length(back - front, shot.unit), say.pixels(shot.blurLimit), acrossText(words, shot.pictureWidth)),
    words.ends(words.parts[depth.foremost.part], say.pixels(blurFront), words.parts[depth.rearmost.part], say.pixels(blurBack)),
  ].join(' ');
}

/** Why even what is in focus is soft, when it is. */
export function diffractionText({say, diffraction}: ZoneWords, {airy, shot: {blurLimit}}: Reading): string | undefined {
  return airy <= blurLimit ? undefined : diffraction(say.pixels(airy), say.pixels(blurLimit));
}

/** Said in place of numbers that cannot be. */
export function troubleText(words: ZoneWords, {parameter, value, wanted}: Problem): string {
  return parameter === 'depth' ? words.behindLens : words.cannotBe(parameter, String(value), words.say.wanted(wanted));
}
