import type {Polygon} from './polygon.js';
import type {Point} from './space.js';
import {requireNotNegative, requirePositive} from '../problem.js';
import {clip} from './polygon.js';
import {cardCorners, cross, direction, dot, minus, scaled} from './space.js';

/** A flat card that keeps light away: opaque, and black on both sides. Its width is level with the table. */
export interface Flag {
  /** Middle of the card, mm. */
  readonly position: Point;
  /** Direction at right angles to the card, either way, any length above 0. */
  readonly facing: Point;
  /** mm, > 0 */
  readonly width: number;
  /** mm, > 0 */
  readonly height: number;
}

/** One side of a shadow: it lies where `normal`·p ≥ `offset`, seen from the point in question. */
interface Side {
  readonly normal: Point;
  readonly offset: number;
}

/**
 * Corners of a card, in order round it.
 * @throws {Problem} naming `flag-width`, `flag-height` or `flag-facing`
 */
export function flagCorners(flag: Flag): readonly Point[] {
  requirePositive('flag-width', flag.width);
  requirePositive('flag-height', flag.height);
  return cardCorners(flag.position, direction('flag-facing', flag.facing), flag.width, flag.height);
}

/** Everything a card hides from `at`: four planes through its edges and its own plane. None when seen edge-on. */
function shadowSides(flag: Flag, at: Point): readonly Side[] {
  const corners = flagCorners(flag).map((corner) => minus(corner, at));
  const a = corners[0] as Point;
  const facing = cross(minus(corners[1] as Point, a), minus(corners[2] as Point, a));
  const offset = dot(facing, a);
  if (Math.abs(offset) < 1e-9 * flag.width * flag.height) return [];
  const away = Math.sign(offset);
  const sides = corners.map((corner, index) =>
    ({normal: scaled(cross(corner, corners[(index + 1) % 4] as Point), away), offset: 0}));
  return [...sides, {normal: scaled(facing, away), offset: away * offset}];
}

/**
 * What is left of a face, seen past some cards. Exact: every card's shadow is cut out along its own edges. A card seen
 * edge-on, or that the point lies in, hides nothing.
 * @param face - convex, seen from `at`
 * @param flags - any number; shadows that overlap count once
 * @param at - the point that looks, in the set's frame
 * @returns convex pieces that do not overlap; the one face itself when no card hides any of it
 */
export function seenPast(face: Polygon, flags: readonly Flag[], at: Point): readonly Polygon[] {
  let pieces: readonly Polygon[] = [face];
  for (const flag of flags) {
    const sides = shadowSides(flag, at);
    if (sides.length > 0) pieces = pieces.flatMap((piece) => cutOut(piece, sides));
  }
  return pieces;
}

function cutOut(piece: Polygon, sides: readonly Side[]): readonly Polygon[] {
  const left: Polygon[] = [];
  let rest = piece;
  for (const {normal, offset} of sides) {
    const outside = clip(rest, scaled(normal, -1), -offset);
    if (outside.length > 0) left.push(outside);
    rest = clip(rest, normal, offset);
    if (rest.length === 0) return [piece];
  }
  return left;
}

/**
 * Whether any card stands between two points.
 * @param from - mm, in the set's frame
 * @param to - mm, in the set's frame
 */
export function isHidden(to: Point, flags: readonly Flag[], from: Point): boolean {
  const target = minus(to, from);
  return flags.some((flag) => {
    const sides = shadowSides(flag, from);
    return sides.length > 0 && sides.every(({normal, offset}) => dot(normal, target) >= offset);
  });
}

/**
 * Width of the soft edge of a flag's shadow, all square to the light.
 * @param lampSize - of the lamp across the flag's edge, mm, 0 or above
 * @param toFlag - lamp to flag, mm, > 0
 * @param beyond - flag to backdrop, mm, 0 or above
 * @returns mm
 * @throws {Problem} naming `lamp-width`, `flag-distance` or `backdrop-distance`
 * Source: geometric unsharpness, NDE-Ed.org (Iowa State University), example calculation.
 */
export function penumbraWidth(lampSize: number, toFlag: number, beyond: number): number {
  requireNotNegative('lamp-width', lampSize);
  requirePositive('flag-distance', toFlag);
  requireNotNegative('backdrop-distance', beyond);
  return lampSize * beyond / toFlag;
}

/**
 * Width of the full shadow behind a flag, all square to the light.
 * @param flagSize - across the same direction as `lampSize`, mm, > 0
 * @returns mm; negative = no point is in full shadow, and by how much the flag is too small there
 * @throws {Problem} naming `flag-width`, or as {@link penumbraWidth}
 * Source: similar triangles, as geometric unsharpness.
 */
export function umbraWidth(flagSize: number, lampSize: number, toFlag: number, beyond: number): number {
  requirePositive('flag-width', flagSize);
  return flagSize * (toFlag + beyond) / toFlag - penumbraWidth(lampSize, toFlag, beyond);
}
