import {Problem} from '../problem.js';
import type {SharpnessPoint} from './sharpness.js';

/** Which of two pictures is the sharper at a place; `null` where one of them has no detail to judge by. */
export type Sharper = 'first' | 'second' | 'neither' | null;

/** Two readings at one place. */
export interface SharpnessChange {
  readonly along: number;
  readonly first: number | null;
  readonly second: number | null;
  /**
   * Blur that the softer picture has more, px, positive when the second is softer: root of the difference of the squares,
   * so that the width of the detail itself, which is in both readings, drops out.
   */
  readonly added: number | null;
  readonly sharper: Sharper;
}

/** A piece of the line over which the answer stays the same. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly sharper: Sharper;
}

/** Whether the second picture was worth it, and where. */
export interface SharpnessComparison {
  readonly points: readonly SharpnessChange[];
  /** Pieces from start to end of the line, in the same unit as `along`. */
  readonly stretches: readonly Stretch[];
}

/** Two readings nearer than this share are alike: a little more than the step in which blur is tried. */
const ALIKE_SHARE = 0.08;
/** Added blur, px, that nobody sees: less than a pixel. Found on the rendered pictures. */
const ALIKE_BLUR = 0.7;

/**
 * Difference in sharpness of two pictures along the same line.
 * @param first - readings of one picture
 * @param second - readings of the other at the same places
 * @throws {Problem} `points` when the two do not have the same number of readings
 */
export function compareSharpness(first: readonly SharpnessPoint[], second: readonly SharpnessPoint[]): SharpnessComparison {
  if (first.length !== second.length) {
    throw new Problem('points', second.length, `as many readings as the first line: ${first.length}`);
  }
  const points = first.map(({along, blur}, at) => changeAt(along, blur, second[at]?.blur ?? null));
  return {points, stretches: stretchesOf(points)};
}

function changeAt(along: number, first: number | null, second: number | null): SharpnessChange {
  if (first === null || second === null) return {along, first, second, added: null, sharper: null};
  const added = Math.sign(second - first) * Math.sqrt(Math.abs(second ** 2 - first ** 2));
  const alike = Math.abs(added) < ALIKE_BLUR || Math.abs(second - first) < ALIKE_SHARE * Math.max(first, second);
  return {along, first, second, added, sharper: alike ? 'neither' : added > 0 ? 'first' : 'second'};
}

function stretchesOf(points: readonly SharpnessChange[]): Stretch[] {
  const stretches: {from: number; to: number; sharper: Sharper}[] = [];
  for (const {along, sharper} of points) {
    const last = stretches.at(-1);
    if (last?.sharper === sharper) last.to = along;
    else stretches.push({from: along, to: along, sharper});
  }
  return stretches;
}
