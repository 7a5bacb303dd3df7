import {Problem} from '../problem.js';

/**
 * A place, or a direction, in the one frame of the set: x to the right, y away from the camera, z up, mm; the origin
 * is the middle of the figure's base on the table top.
 */
export type Point = readonly [x: number, y: number, z: number];

/** From `b` to `a`. */
export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

/** `a`, moved by `times` lengths of `b`. */
export const along = (a: Point, b: Point, times: number): Point =>
  [a[0] + times * b[0], a[1] + times * b[1], a[2] + times * b[2]];

/** `a`, so many times as long; backwards when negative. */
export const scaled = (a: Point, times: number): Point => [a[0] * times, a[1] * times, a[2] * times];

/** Scalar product. */
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Vector product, right-handed. */
export const cross = (a: Point, b: Point): Point =>
  [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

/** Length of a vector. */
export const norm = (a: Point): number => Math.hypot(a[0], a[1], a[2]);

/**
 * Direction of a vector, one unit long.
 * @param parameter - what to name when it has no direction: `lamp-aim`, `flag-facing`
 * @throws {Problem} when a part is not a finite number or all are 0
 */
export function direction(parameter: string, vector: Point): Point {
  const length = norm(vector);
  // 1 / length of a vector that is next to nothing is beyond every number.
  if (!(length > 0 && length < Infinity && 1 / length < Infinity)) throw new Problem(parameter, vector, 'a direction');
  return scaled(vector, 1 / length);
}

/**
 * The two edge directions of an upright card: its width is level with the table, its height goes up as far as
 * its facing lets it. A card facing straight up or down (to within 0.000 000 1°) has its width along x.
 * @param facing - one unit long
 */
export function cardAxes(facing: Point): readonly [width: Point, height: Point] {
  const level = Math.hypot(facing[0], facing[1]);
  const width: Point = level < 1e-9 ? [1, 0, 0] : [-facing[1] / level, facing[0] / level, 0];
  return [width, cross(facing, width)];
}

/**
 * Corners of a rectangle, in order round it.
 * @param middle - of the rectangle, mm
 * @param facing - one unit long; the rectangle's width is level, as {@link cardAxes} says
 */
export function cardCorners(middle: Point, facing: Point, width: number, height: number): readonly Point[] {
  const [right, up] = cardAxes(facing);
  const across = scaled(right, width / 2);
  const rise = scaled(up, height / 2);
  const [left, end] = [along(middle, across, -1), along(middle, across, 1)];
  return [along(left, rise, -1), along(end, rise, -1), along(end, rise, 1), along(left, rise, 1)];
}
