import {Problem, requireFinite, requireNotNegative, requirePositive} from '../problem.js';
import {entrancePupil, pupilToSubject, workingAperture} from './lens.js';
import type {LensSetup} from './lens.js';
import {transfer} from './transfer.js';

/**
 * White light of equal energy as the eye weighs it: wavelength in mm, weight, …; weights add up to 1.
 * Source: CIE 1924 photopic luminous efficiency V(λ) at 480, 520, 560, 600 and 640 nm (0.139, 0.710, 0.995, 0.631,
 * 0.175; from memory), divided by their sum.
 */
const WHITE = [
  0.00048, 0.139 / 2.65, 0.00052, 0.71 / 2.65, 0.00056, 0.995 / 2.65, 0.0006, 0.631 / 2.65, 0.00064, 0.175 / 2.65,
] as const;

/**
 * Contrast that white light keeps in a fine pattern of light and dark lines on the sensor.
 * @param workingAperture - f-number at this magnification, above 0
 * @param blur - diameter of the defocus disc on the sensor, mm, 0 and above
 * @param cycles - line pairs per mm on the sensor, 0 and above
 * @param pixel - width in mm over which a pixel gathers light; 0 (when left out) = optics alone
 * @returns 1 to about −0.13; 0 and below = not resolved
 * @throws {Problem} `aperture`, `blur`, `detail`, `pixel`
 * Source: {@link defocusTransfer} for each of five wavelengths with the eye's weights; a square pixel's response is
 * sin(πξp)/(πξp), common textbook knowledge.
 */
export function whiteContrast(workingAperture: number, blur: number, cycles: number, pixel = 0): number {
  requirePositive('aperture', workingAperture);
  requireNotNegative('blur', blur);
  requireNotNegative('detail', cycles);
  requireNotNegative('pixel', pixel);
  const swing = Math.PI * blur * cycles;
  let sum = 0;
  for (let at = 0; at < WHITE.length; at += 2) {
    sum += (WHITE[at + 1] as number) * transfer((WHITE[at] as number) * workingAperture * cycles, swing);
  }
  const box = Math.PI * cycles * pixel;
  return box === 0 ? sum : sum * Math.sin(box) / box;
}

/** A line with a gap as wide as itself beside it: the finest thing that is to be seen. Width in mm, above 0. */
export type Detail =
  /** On the figure, a brush line: further back it comes out smaller */
  | {readonly onFigure: number}
  /** On the sensor, wherever it is: finished pixels times the size of one */
  | {readonly onSensor: number};

/**
 * How fine a detail is on the sensor.
 * @param depth - mm behind (+) or before (−) the focus plane along the optical axis
 * @returns line pairs per mm
 * @throws {Problem} `detail`, or as for a lens and a depth
 * Source: one line and one gap make a pair; seen from the entrance pupil the picture shrinks by u_e / (u_e + x).
 */
export function detailCycles(lens: LensSetup, detail: Detail, depth = 0): number {
  const width = lineWidth(detail);
  if ('onSensor' in detail) return 1 / (2 * width);
  const distance = pupilToSubject(lens);
  requireInFront(depth, distance);
  return (distance + depth) / (2 * width * lens.magnification * distance);
}

/**
 * Contrast a detail keeps at one depth: blur and diffraction together, in white light.
 * @param depth - mm behind (+) or before (−) the focus plane along the optical axis
 * @param pixel - width in mm over which a pixel of the sensor gathers light; 0 (when left out) = optics alone
 * @returns 1 to about −0.13; 0 and below = not resolved
 * @throws {Problem} as for a lens; `detail`, `pixel`, or `depth` at or behind the entrance pupil
 * Source: {@link whiteContrast} of the disc b = m·A·|x| / (u_e + x) at the working f-number.
 */
export function contrastAt(lens: LensSetup, depth: number, detail: Detail, pixel = 0): number {
  return contrastAlong(lens, detail, pixel)(depth);
}

/**
 * {@link contrastAt} for many depths at once.
 * @param depths - mm behind (+) or before (−) the focus plane; not changed
 * @returns one contrast for each depth
 * @throws {Problem} as {@link contrastAt}
 */
export function contrastProfile(lens: LensSetup, depths: ArrayLike<number>, detail: Detail, pixel = 0): Float64Array {
  const along = contrastAlong(lens, detail, pixel);
  const profile = new Float64Array(depths.length);
  for (let at = 0; at < profile.length; at++) profile[at] = along(depths[at] as number);
  return profile;
}

/** {@link contrastAt} with everything that does not depend on the depth worked out beforehand. */
export function contrastAlong(lens: LensSetup, detail: Detail, pixel = 0): (depth: number) => number {
  const distance = pupilToSubject(lens);
  const working = workingAperture(lens.aperture, lens.magnification, lens.pupilRatio);
  const farBlur = lens.magnification * entrancePupil(lens.focalLength, lens.aperture);
  const cycles = detailCycles(lens, detail);
  const shrinks = 'onFigure' in detail;
  requireNotNegative('pixel', pixel);
  return (depth) => {
    requireInFront(depth, distance);
    const away = distance + depth;
    return whiteContrast(working, farBlur * Math.abs(depth) / away, shrinks ? cycles * away / distance : cycles, pixel);
  };
}

function lineWidth(detail: Detail): number {
  const width = 'onSensor' in detail ? detail.onSensor : detail.onFigure;
  requirePositive('detail', width);
  return width;
}

function requireInFront(depth: number, distance: number): void {
  requireFinite('depth', depth);
  if (!(distance + depth > 0)) throw new Problem('depth', depth, `a point in front of the lens, above ${-distance} mm`);
}
