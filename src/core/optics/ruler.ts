import {Problem, requireFinite, requirePositive, requireWithin} from '../problem.js';
import {entrancePupil, magnificationFromField, pupilToSubject} from './lens.js';
import type {LensSetup} from './lens.js';

/** A place in a photo, pixels from its top left corner. */
export interface PhotoPoint {
  readonly x: number;
  readonly y: number;
}

/** What two marks a known distance apart say of a photo. */
export interface RulerScale {
  readonly pixelsPerMm: number;
  /** mm the whole width of the photo takes in at the depth of the marks */
  readonly fieldWidth: number;
  readonly magnification: number;
}

/**
 * Scale of a photo from two marked points. Both have to lie at the same depth, on a ruler held across the view in the
 * focus plane (level, upright or slanting): along a ruler that runs away from the camera the scale changes, and two
 * points cannot say how.
 * @param apart - mm between the points on the ruler, > 0
 * @param photoWidth - pixels across the whole photo as it left the camera, > 0
 * @param sensorWidth - mm of sensor along that side, > 0
 * @throws {Problem} `ruler-points` when they are not finite or fall together, `ruler-length`, `photo-width`,
 * `sensor-width`
 * Source: Pythagoras and the definition of magnification; pixels are taken as square.
 */
export function rulerScale(
  one: PhotoPoint, other: PhotoPoint, apart: number, photoWidth: number, sensorWidth: number,
): RulerScale {
  const pixels = Math.hypot(other.x - one.x, other.y - one.y);
  if (!(pixels > 0 && Number.isFinite(pixels))) throw new Problem('ruler-points', pixels, 'two points that lie apart');
  requirePositive('ruler-length', apart);
  requirePositive('photo-width', photoWidth);
  const pixelsPerMm = pixels / apart;
  const fieldWidth = photoWidth / pixelsPerMm;
  return {pixelsPerMm, fieldWidth, magnification: magnificationFromField(sensorWidth, fieldWidth)};
}

/** What somebody calls sharp, and where the focus was while they did. */
export interface RulerReading {
  /** Blur on the sensor at both ends of what looked sharp, mm: the person's own limit in this photo */
  readonly limit: number;
  /** Where the focus was: the mark on the ruler that is sharpest */
  readonly focus: number;
  /** mm along the optical axis that looked sharp before and behind the focus plane */
  readonly near: number;
  readonly far: number;
}

/**
 * A person's own blur limit, from a flat ruler on the table that runs away from the camera: the nearest and the farthest
 * graduation that still look sharp. Both ends together give the limit and the true focus, wherever the focus was
 * meant to be; how far it was off is the difference to what was meant.
 * @param lens - as it stood; the magnification is the one in the focus plane
 * @param nearest - mm on the ruler, from any zero, growing away from the camera
 * @param farthest - mm on the ruler, beyond `nearest`
 * @param tilt - degrees the camera looks down, −85 to 85
 * @throws {Problem} as for a lens; `nearest-sharp`, `farthest-sharp`, `tilt`
 * Source: c = m·A·near/(u_e − near) = m·A·far/(u_e + far) and near + far = D solved together: with e = c/(m·A),
 * D·e² + 2·u_e·e − D = 0.
 */
export function readSharpRuler(lens: LensSetup, nearest: number, farthest: number, tilt = 0): RulerReading {
  requireFinite('nearest-sharp', nearest);
  requireFinite('farthest-sharp', farthest);
  if (!(farthest > nearest)) throw new Problem('farthest-sharp', farthest, `a graduation beyond ${nearest} mm`);
  requireWithin('tilt', tilt, -85, 85);
  const distance = pupilToSubject(lens);
  const along = Math.cos(tilt * Math.PI / 180);
  const depth = (farthest - nearest) * along;
  const share = depth / (distance + Math.hypot(distance, depth));
  const near = distance * share / (1 + share);
  return {
    limit: share * lens.magnification * entrancePupil(lens.focalLength, lens.aperture),
    focus: nearest + near / along, near, far: depth - near,
  };
}
