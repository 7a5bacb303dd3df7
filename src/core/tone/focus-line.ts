import {Problem, requirePositive} from '../problem.js';
import type {SharpnessPoint} from './sharpness.js';

/** Where along a line the focus lies. */
export interface FocusOnLine {
  /** Way along the line, 0 to 1. */
  readonly along: number;
  /** How far to either side the readings leave it open, in the same unit. Counts scatter, not a drift of the detail. */
  readonly within: number;
  readonly x: number;
  readonly y: number;
  /** Readings that were used. */
  readonly readings: number;
}

/** A squared blur, or a difference of two, at a place, with the size an error there would have. */
interface Reading {
  readonly along: number;
  readonly squared: number;
  readonly scale: number;
}

/** Blur up to this many times the sharpest decides: further out the window holds other things. */
const WIDEST_USED = 5;
/** Share of the readings taken as the sharpest, so that a single stray one does not decide. */
const SHARPEST = 0.05;
/** Fewer readings than this say nothing. */
const LEAST_READINGS = 8;
/** Places tried along the line. */
const PLACES = 400;

/**
 * Focus from one picture: squared blur rises as a parabola to both sides of it, on top of the detail's own width. (Along a
 * straight ruler the blur disc grows evenly with the distance **in the picture**, perspective included.)
 *
 * Detail that gets finer along the line pulls the answer that way, the more the smaller the aperture; two
 * pictures with different apertures do not suffer from it, see {@link focusBetween}.
 * @param points - readings along the line
 * @param scaleAtEnd - how large things look at the end of the line against its start, above 0: 0.5 when the
 *   millimetres there are half as many pixels wide; 1 when unknown
 * @returns `undefined` when there are too few readings, or none to one side of the sharpest place
 * @throws {Problem} `scaleAtEnd` not above 0
 */
export function focusAlong(points: readonly SharpnessPoint[], scaleAtEnd: number = 1): FocusOnLine | undefined {
  requirePositive('scaleAtEnd', scaleAtEnd);
  const readings = points.flatMap(({along, blur}) =>
    (blur ? [{along, squared: blur ** 2, scale: blur ** 2}] : []));
  return place(points, readings, (along) => (1 + (scaleAtEnd - 1) * along) ** 2);
}

/**
 * Focus from two pictures of the same set and focus with different apertures. The detail's own width is in both and drops
 * out of the difference of the squares, so this holds where one picture alone would mislead.
 * @param wide - readings at the wider aperture
 * @param narrow - readings at the same places at the smaller one
 * @returns `undefined` when there are too few places known in both, or none to one side of the focus
 * @throws {Problem} `points` when the two do not have the same number of readings
 */
export function focusBetween(wide: readonly SharpnessPoint[], narrow: readonly SharpnessPoint[]): FocusOnLine | undefined {
  if (wide.length !== narrow.length) {
    throw new Problem('points', narrow.length, `as many readings as the first line: ${wide.length}`);
  }
  const readings = wide.flatMap(({along, blur}, at) => {
    const other = narrow[at]?.blur;
    return blur && other ? [{along, squared: blur ** 2 - other ** 2, scale: blur ** 2 + other ** 2}] : [];
  });
  return place(wide, readings, () => 0);
}

function place(
  points: readonly SharpnessPoint[], readings: readonly Reading[], floor: (along: number) => number,
): FocusOnLine | undefined {
  const scales = readings.map(({scale}) => scale).sort((a, b) => a - b);
  const sharpest = scales[Math.floor(scales.length * SHARPEST)];
  if (sharpest === undefined) return undefined;
  const used = readings.filter(({scale}) => scale < sharpest * WIDEST_USED ** 2);
  if (used.length < LEAST_READINGS) return undefined;
  const misses = Array.from({length: PLACES + 1}, (_, at) => miss(used, at / PLACES, floor));
  const least = Math.min(...misses);
  const best = misses.indexOf(least);
  if (!risesOnBothSides(used, best / PLACES)) return undefined;
  // Neighbouring windows overlap: about one reading in six is new. Twice the standard error of a Laplace likelihood.
  const open = least * Math.exp(2 / (used.length / 6));
  const first = misses.findIndex((value) => value <= open);
  const last = misses.findLastIndex((value) => value <= open);
  const along = best / PLACES;
  const [start, end] = [points[0], points.at(-1)] as [SharpnessPoint, SharpnessPoint];
  return {
    along, within: Math.max(best - first, last - best) / PLACES,
    x: start.x + along * (end.x - start.x), y: start.y + along * (end.y - start.y), readings: used.length,
  };
}

/** Blur has to grow by this factor towards the far readings of a side before that side counts as seen. */
const RISES = 1.1;

/** Whether blur grows to both sides: the outer half of the readings of a side against the quarter nearest to the foot. */
function risesOnBothSides(readings: readonly Reading[], foot: number): boolean {
  const median = (of: readonly Reading[]): number =>
    of.map(({scale}) => scale).sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? 0;
  const byDistance = [...readings].sort((a, b) => Math.abs(a.along - foot) - Math.abs(b.along - foot));
  const middle = median(byDistance.slice(0, Math.ceil(readings.length / 4)));
  return [-1, 1].every((side) => {
    const there = byDistance.filter(({along}) => Math.sign(along - foot) === side);
    return median(there.slice(Math.floor(there.length / 2))) > middle * RISES ** 2;
  });
}

/** Rounds of reweighting; the answer settles after three or four. */
const ROUNDS = 6;
/** Relative miss below which a reading counts no more for being better still. */
const GOOD_ENOUGH = 0.05;

/** Sum of the relative misses of the best parabola with its foot at `foot`; absolute, so that strays do not decide. */
function miss(readings: readonly Reading[], foot: number, floor: (along: number) => number): number {
  const terms = readings.map(({along, squared, scale}) =>
    [floor(along) / scale, (along - foot) ** 2 / scale, squared / scale] as const);
  let weights = terms.map(() => 1);
  let missed = 0;
  for (let round = 0; round < ROUNDS; round++) {
    let [aa, ab, bb, ay, by] = [0, 0, 0, 0, 0];
    terms.forEach(([a, b, y], at) => {
      const weight = weights[at] as number;
      aa += weight * a * a; ab += weight * a * b; bb += weight * b * b; ay += weight * a * y; by += weight * b * y;
    });
    const both = aa * bb - ab * ab;
    let [base, rise] = both > 0 ? [(ay * bb - by * ab) / both, (by * aa - ay * ab) / both] : [0, by / bb];
    if (rise < 0) [base, rise] = [aa > 0 ? ay / aa : 0, 0];
    if (base < 0) [base, rise] = [0, Math.max(0, by / bb)];
    const off = terms.map(([a, b, y]) => Math.abs(base * a + rise * b - y));
    missed = off.reduce((sum, value) => sum + value, 0);
    weights = off.map((value) => 1 / Math.max(GOOD_ENOUGH, value));
  }
  return missed;
}
