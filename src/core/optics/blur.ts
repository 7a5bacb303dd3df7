import {Problem, requireFinite, requirePositive} from '../problem.js';
import {entrancePupil, pupilToSubject} from './lens.js';
import type {LensSetup} from './lens.js';

/** What becomes of the frame: the part that is kept, and how large it will be shown. */
export interface FinishedPicture {
  /** Width of the kept crop on the sensor, mm, > 0 */
  readonly keptWidth: number;
  /** Width of the finished picture, pixels, > 0 */
  readonly pictureWidth: number;
}

/**
 * Diameter of the disc a point out of focus becomes, diffraction left out.
 * @param depth - mm behind (+) or before (−) the focus plane along the optical axis
 * @returns mm on the sensor, 0 or above
 * @throws {Problem} as for a lens; `depth` when it is not finite or the point lies at or behind the entrance pupil
 * Source: thin lens with its stop at the pupil, b = m·A·|x| / (u_e + x). Larger before the focus plane than behind.
 */
export function blurDisc(lens: LensSetup, depth: number): number {
  requireFinite('depth', depth);
  const away = pupilToSubject(lens);
  if (!(away + depth > 0)) throw new Problem('depth', depth, `a point in front of the lens, above ${-away} mm`);
  return lens.magnification * entrancePupil(lens.focalLength, lens.aperture) * Math.abs(depth) / (away + depth);
}

/**
 * @returns mm on the sensor that one pixel of the finished picture covers
 * @throws {Problem} `kept-width` or `picture-width`
 * Source: definition.
 */
export function onePixel(picture: FinishedPicture): number {
  requirePositive('kept-width', picture.keptWidth);
  requirePositive('picture-width', picture.pictureWidth);
  return picture.keptWidth / picture.pictureWidth;
}

/**
 * {@link blurDisc} as the finished picture shows it.
 * @param depth - mm behind (+) or before (−) the focus plane along the optical axis
 * @returns finished pixels, 0 or above
 * @throws {Problem} as {@link blurDisc} and {@link onePixel}
 * Source: as {@link blurDisc}.
 */
export function blurInPixels(lens: LensSetup, depth: number, picture: FinishedPicture): number {
  return blurDisc(lens, depth) / onePixel(picture);
}

/**
 * What still counts as sharp, on the sensor.
 * @param pixels - blur accepted in the finished picture, pixels, > 0; about 1.5 looks crisp (common practice,
 *   no source)
 * @returns mm on the sensor
 * @throws {Problem} `blur-limit`, or as {@link onePixel}
 * Source: definition.
 */
export function blurLimit(pixels: number, picture: FinishedPicture): number {
  requirePositive('blur-limit', pixels);
  return pixels * onePixel(picture);
}

/** What a point of a width comes to beside the blur limit. */
export type Softness = 'sharp' | 'a-little' | 'soft';

/**
 * Whether a point still looks sharp, and if not, by how much it is past that.
 * @param width - of the point, mm or pixels, 0 or above
 * @param limit - blur accepted, in the same unit, > 0
 * @returns `a-little` up to one and a half times the limit
 * Source: where a little ends is our judgement, no source.
 */
export function softnessOf(width: number, limit: number): Softness {
  return width <= limit ? 'sharp' : width <= 1.5 * limit ? 'a-little' : 'soft';
}

/** Blur at one depth of a {@link blurProfile}. */
export interface BlurAtDepth {
  /** mm behind (+) or before (−) the focus plane along the optical axis */
  readonly depth: number;
  /** mm on the sensor */
  readonly blur: number;
}

/**
 * The blur along a stretch of depth, at evenly spaced depths with both ends among them.
 * @param from - mm behind (+) or before (−) the focus plane
 * @param to - as `from`
 * @param count - how many depths, a whole number, 2 or more
 * @throws {Problem} `count`, or as {@link blurDisc}
 * Source: as {@link blurDisc}.
 */
export function blurProfile(lens: LensSetup, from: number, to: number, count: number): BlurAtDepth[] {
  if (!(Number.isInteger(count) && count >= 2)) throw new Problem('count', count, 'a whole number, 2 or more');
  return Array.from({length: count}, (_, at) => {
    const depth = at === count - 1 ? to : from + (to - from) * at / (count - 1);
    return {depth, blur: blurDisc(lens, depth)};
  });
}
