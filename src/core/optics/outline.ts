import {requireFinite, requireNotNegative, requirePositive, requireWithin} from '../problem.js';

/**
 * A figure on its base seen from the side. Lengths in mm: y runs along the table away from the camera from the base's
 * front edge, z up from the table. What is left out is 0; an outline of only a base is flat.
 */
export interface Outline {
  /** Front edge to back edge, > 0 */
  readonly baseDepth: number;
  /** How far the foremost part reaches past the front edge, 0 or above, and how high above the table it is */
  readonly overhangFront?: number | undefined;
  readonly overhangFrontHeight?: number | undefined;
  /** How far the rearmost part reaches past the back edge, 0 or above, and how high above the table it is */
  readonly overhangBack?: number | undefined;
  readonly overhangBackHeight?: number | undefined;
  /** The top above the table, 0 or above */
  readonly height?: number | undefined;
  /** Where the top stands behind the base's front edge; the middle of the base when left out */
  readonly topBehind?: number | undefined;
  /** Any further points that matter */
  readonly points?: readonly {readonly y: number; readonly z: number}[] | undefined;
}

/** Which part of an {@link Outline} a point is. */
export type OutlinePart = 'base-front' | 'base-back' | 'overhang-front' | 'overhang-back' | 'top' | 'point';

/** One point of the outline, mm. */
export interface OutlinePoint {
  readonly part: OutlinePart;
  /** Behind the base's front edge along the table */
  readonly y: number;
  /** Above the table */
  readonly z: number;
}

/** The depth a picture has to hold. Depths are mm along the optical axis, 0 at the base's front edge on the table. */
export interface DepthToCover {
  readonly front: number;
  readonly back: number;
  /** back − front */
  readonly spread: number;
  readonly foremost: OutlinePoint;
  readonly rearmost: OutlinePoint;
}

/**
 * Every point that can be foremost or rearmost. The base's edges come first, so they win a tie.
 * @throws {Problem} `base-depth`, `overhang-front`, `overhang-front-height`, `overhang-back`, `overhang-back-height`,
 * `height`, `top-behind` or `points`
 */
export function outlinePoints(outline: Outline): OutlinePoint[] {
  const {
    baseDepth, overhangFront = 0, overhangFrontHeight = 0, overhangBack = 0, overhangBackHeight = 0, height = 0,
    topBehind = baseDepth / 2, points = [],
  } = outline;
  requirePositive('base-depth', baseDepth);
  requireNotNegative('overhang-front', overhangFront);
  requireNotNegative('overhang-front-height', overhangFrontHeight);
  requireNotNegative('overhang-back', overhangBack);
  requireNotNegative('overhang-back-height', overhangBackHeight);
  requireNotNegative('height', height);
  requireFinite('top-behind', topBehind);
  for (const {y, z} of points) {
    requireFinite('points', y);
    requireFinite('points', z);
  }
  return [
    {part: 'base-front', y: 0, z: 0},
    {part: 'base-back', y: baseDepth, z: 0},
    {part: 'overhang-front', y: 0 - overhangFront, z: overhangFrontHeight},
    {part: 'overhang-back', y: baseDepth + overhangBack, z: overhangBackHeight},
    {part: 'top', y: topBehind, z: height},
    ...points.map(({y, z}): OutlinePoint => ({part: 'point', y, z})),
  ];
}

/**
 * Spread of the outline along the optical axis.
 * @param tilt - degrees the camera looks down, −85 to 85; 0 = level
 * @throws {Problem} `tilt`, or as {@link outlinePoints}
 * Source: plane geometry, see {@link axialDepth}.
 */
export function depthToCover(outline: Outline, tilt: number): DepthToCover {
  const points = outlinePoints(outline).map((point) => ({point, depth: axialDepth(point.y, point.z, tilt)}));
  const first = points.reduce((best, next) => (next.depth < best.depth ? next : best));
  const last = points.reduce((best, next) => (next.depth > best.depth ? next : best));
  return {
    front: first.depth, back: last.depth, spread: last.depth - first.depth,
    foremost: first.point, rearmost: last.point,
  };
}

/**
 * Depth of a point along the optical axis: seen from above, what stands higher is nearer.
 * @param y - mm behind the base's front edge along the table
 * @param z - mm above the table
 * @param tilt - degrees the camera looks down, −85 to 85
 * @returns mm, 0 for the base's front edge on the table, positive further away
 * @throws {Problem} `tilt`
 * Source: rotation by the tilt, y·cosθ − z·sinθ.
 */
export function axialDepth(y: number, z: number, tilt: number): number {
  requireWithin('tilt', tilt, -85, 85);
  const angle = tilt * Math.PI / 180;
  return y * Math.cos(angle) - z * Math.sin(angle);
}

/**
 * The mark on a flat ruler on the table, zero at the base's front edge, that lies at an axial depth. Lengths convert
 * the same way: a zone of 10 mm on the axis is longer on the ruler.
 * @param depth - mm along the optical axis
 * @param tilt - degrees the camera looks down, −85 to 85
 * @returns mm behind the base's front edge along the table
 * @throws {Problem} `tilt`
 * Source: {@link axialDepth} at table height turned round, x / cosθ.
 */
export function axialToRuler(depth: number, tilt: number): number {
  return depth / axialDepth(1, 0, tilt);
}

/**
 * {@link axialToRuler} turned round.
 * @param mark - mm behind the base's front edge along the table
 * @param tilt - degrees the camera looks down, −85 to 85
 * @returns mm along the optical axis
 * @throws {Problem} `tilt`
 */
export function rulerToAxial(mark: number, tilt: number): number {
  return axialDepth(mark, 0, tilt);
}
