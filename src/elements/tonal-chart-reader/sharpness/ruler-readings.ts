import {Problem} from '../../../core/problem.js';
import {pupilToSubject} from '../../../core/optics/lens.js';
import type {Shot} from '../../../core/shot/shot.js';
import type {FocusOnLine} from '../../../core/tone/focus-line.js';
import {readLength} from '../../../core/units.js';

/** Places at which a ruler along the line can be read, and the base's front edge on it. */
export type RulerField = 'atA' | 'atMiddle' | 'atB' | 'atFront';

/** What was read off the ruler, mm, with the text as typed and what was wrong with it. */
export interface RulerReadings {
  readonly values: Readonly<Partial<Record<RulerField, number>>>;
  readonly texts: Readonly<Partial<Record<RulerField, string>>>;
  readonly problems: Readonly<Partial<Record<RulerField, Problem>>>;
}

export const NO_READINGS: RulerReadings = {values: {}, texts: {}, problems: {}};

/** The readings after one was typed. What does not read leaves the last good one; an empty field takes it away. */
export function withReading(readings: RulerReadings, field: RulerField, text: string, unit: Shot['unit']): RulerReadings {
  const {[field]: was, ...values} = readings.values;
  const {[field]: _, ...problems} = readings.problems;
  const texts = {...readings.texts, [field]: text};
  if (!text.trim()) return {values, texts, problems};
  const read = readLength(field, text, unit);
  if (!(read instanceof Problem)) return {values: {...values, [field]: read}, texts, problems};
  return {values: {...values, ...(was !== undefined && {[field]: was})}, texts, problems: {...problems, [field]: read}};
}

/** A ruler along the line as the picture shows it. */
export interface RulerOnLine {
  readonly atA: number;
  readonly atB: number;
  /** How large things look at B against A: the perspective. */
  readonly scaleAtB: number;
  /** Whether the perspective was read off the ruler or reckoned from the lens. */
  readonly measured: boolean;
}

/**
 * The ruler, once both ends are read. A third reading in the middle of the line gives the perspective exactly: a straight
 * ruler is seen in cross ratio. Without it the lens and the field width have to do.
 * @returns `undefined` while an end is not read, or the readings do not rise or fall from end to end
 */
export function rulerOnLine({values: {atA, atB, atMiddle}}: RulerReadings, shot: Shot): RulerOnLine | undefined {
  if (atA === undefined || atB === undefined || atA === atB) return undefined;
  if (atMiddle === undefined) return {atA, atB, scaleAtB: scaleFromLens(atB - atA, shot), measured: false};
  const share = (atMiddle - atA) / (atB - atA);
  return share > 0.02 && share < 0.98 ? {atA, atB, scaleAtB: share / (1 - share), measured: true} : undefined;
}

/** The line's middle taken to be in the focus plane. */
function scaleFromLens(length: number, {focalLength, aperture, sensorWidth, fieldWidth, pupilRatio, tilt}: Shot): number {
  const distance = pupilToSubject({focalLength, aperture, magnification: sensorWidth / fieldWidth, pupilRatio});
  const half = Math.min(0.8 * distance, Math.abs(length) / 2 * Math.cos(tilt * Math.PI / 180)) * Math.sign(length);
  return (distance - half) / (distance + half);
}

/** Reading of the ruler so far along the line, mm. */
export function rulerAt({atA, atB, scaleAtB}: RulerOnLine, along: number): number {
  return atA + (atB - atA) * along / (along + (1 - along) / scaleAtB);
}

/** Where the focus lies in millimetres. */
export interface FocusReading {
  readonly onRuler: number;
  /** mm to either side that the readings leave open. */
  readonly within: number;
  /** mm behind the base's front edge, when that was read. */
  readonly behindFront: number | undefined;
}

/** @param ruler - read at both ends */
export function focusReading(focus: FocusOnLine, ruler: RulerOnLine, front: number | undefined): FocusReading {
  const onRuler = rulerAt(ruler, focus.along);
  const ends = [focus.along - focus.within, focus.along + focus.within].map((along) =>
    Math.abs(rulerAt(ruler, Math.min(1, Math.max(0, along))) - onRuler));
  return {onRuler, within: Math.max(...ends), behindFront: front === undefined ? undefined : onRuler - front};
}
