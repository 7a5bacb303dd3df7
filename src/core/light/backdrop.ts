import type {Point} from './space.js';
import type {GlowPatch, TableSet} from './set.js';
import {Problem, requireFinite, requirePositive, requireWithin} from '../problem.js';
import {codeFromLinear} from '../tone/light.js';
import {GRAY_CARD, REFLECTANCES} from './reflectances.js';
import {lightAt, tableGlow} from './set.js';

export {GRAY_CARD, REFLECTANCES};

/** How bright one place on the backdrop is. Linear values are the picture's: 1 is white. */
export interface BackdropLevel {
  readonly at: Point;
  /** Light that falls on it against the gray card at the figure, stops; positive = more. */
  readonly light: number;
  /** Its reflectance against the gray card's, stops; positive = lighter. */
  readonly reflectance: number;
  /** Stops below the gray card in the picture; positive = darker; `Infinity` when no light reaches it. */
  readonly belowGray: number;
  readonly linear: number;
  /** sRGB code value it shows as, 0 to 255, not rounded. */
  readonly code: number;
  /** Part of `linear` straight from each lamp, in the order of the set: the largest is the one to flag. */
  readonly direct: readonly number[];
  /** Part of `linear` from each lamp by way of the table top. */
  readonly bounced: readonly number[];
}

/**
 * Light on the gray card that stands for the figure; unit as `illuminance`.
 * @throws {Problem} naming `lamps` when none lights it; others as {@link lightAt}
 */
export function figureLight(set: TableSet, glow: readonly GlowPatch[] = tableGlow(set)): number {
  const {total} = lightAt(set, set.figure.card, set.figure.facing, glow);
  if (!(total > 0)) throw new Problem('lamps', set.lamps.length, 'at least one lamp that lights the figure');
  return total;
}

/**
 * Levels of several places on the backdrop in a picture of the set.
 * @param places - x and z of each, mm; the backdrop gives y
 * @param offset - exposure, stops: the gray card at the figure shows as 0.18·2^offset; 0 = exposed for the card
 * @returns one level a place, in the same order
 * @throws {Problem} naming `backdrop-distance`, `reflectance`, `exposure-offset`, or as {@link figureLight}
 * Source: illuminance times reflectance (Lambert), added in linear light, then the sRGB curve (IEC 61966-2-1).
 */
export function backdropLevels(
  set: TableSet, places: readonly (readonly [x: number, z: number])[], offset = 0,
): readonly BackdropLevel[] {
  const {distance, reflectance} = set.backdrop;
  requireFinite('backdrop-distance', distance);
  requirePositive('reflectance', reflectance);
  requireWithin('reflectance', reflectance, 0, 1);
  requireFinite('exposure-offset', offset);
  const glow = tableGlow(set);
  const onCard = figureLight(set, glow);
  const scale = reflectance * 2 ** offset / onCard;
  return places.map(([x, z]) => {
    const at: Point = [x, distance, z];
    const {direct, bounced, total} = lightAt(set, at, [0, -1, 0], glow);
    const light = Math.log2(total / onCard);
    const paler = Math.log2(reflectance / GRAY_CARD);
    return {
      at, light, reflectance: paler, belowGray: -light - paler,
      linear: scale * total, code: codeFromLinear(scale * total),
      direct: direct.map((part) => scale * part), bounced: bounced.map((part) => scale * part),
    };
  });
}

/**
 * Levels along a level strip of the backdrop, from left to right.
 * @param left - x of the first place, mm
 * @param right - x of the last, mm
 * @param height - above the table, mm
 * @param count - of places, 2 or more
 * @throws {Problem} naming `count`, or as {@link backdropLevels}
 */
export function backdropStrip(
  set: TableSet, left: number, right: number, height: number, count: number, offset = 0,
): readonly BackdropLevel[] {
  requireWithin('count', count, 2, 10_000);
  const step = (right - left) / (count - 1);
  return backdropLevels(set, Array.from({length: Math.floor(count)}, (_, at) => [left + at * step, height]), offset);
}

/** A photo's backdrop laid beside the prediction. */
export interface Unexplained {
  /** Measured against predicted, stops; positive = the photo is brighter. */
  readonly stops: number;
  /** Linear light in the photo that no lamp of the set accounts for; negative = less than predicted. */
  readonly linear: number;
  /** For each lamp: stops it would have to be brighter on the backdrop to account for it; `null` = it cannot. */
  readonly byLamp: readonly (number | null)[];
}

/**
 * How far a photo's backdrop is from the prediction, and what each lamp would have to give to account for it. When no
 * lamp does with a believable figure, there is light that is not in the plan: a window, the room's own lamp.
 * @param predicted - from {@link backdropLevels}, at the photo's exposure
 * @param measured - the photo's backdrop in linear light, over 0, to 1
 * @throws {Problem} naming `backdrop-level`
 */
export function unexplainedLight(predicted: BackdropLevel, measured: number): Unexplained {
  requirePositive('backdrop-level', measured);
  const more = measured - predicted.linear;
  return {
    stops: Math.log2(measured / predicted.linear),
    linear: more,
    byLamp: predicted.direct.map((direct, lamp) => {
      const part = direct + (predicted.bounced[lamp] as number);
      return part > 0 && part + more > 0 ? Math.log2((part + more) / part) : null;
    }),
  };
}
