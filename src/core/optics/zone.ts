import {requirePositive} from '../problem.js';
import {entrancePupil, pupilToSubject} from './lens.js';
import type {LensSetup} from './lens.js';

/** The stretch of depth within the blur limit, along the optical axis. */
export interface SharpZone {
  /** mm it reaches before the focus plane, > 0 */
  readonly near: number;
  /** mm it reaches behind the focus plane; Infinity when the blur never grows to the limit */
  readonly far: number;
}

/**
 * Where the blur disc stays within the limit.
 * @param limit - blur accepted on the sensor, mm, > 0
 * @throws {Problem} as for a lens, or `blur-limit`
 * Source: b = m·A·|x| / (u_e + x) solved for x on either side; textbook depth of field without its approximations.
 */
export function sharpZone(lens: LensSetup, limit: number): SharpZone {
  const distance = pupilToSubject(lens);
  const share = limitShare(lens, limit);
  return {
    near: distance * share / (1 + share),
    far: share < 1 ? distance * share / (1 - share) : Infinity,
  };
}

/**
 * The limit as a share of the blur of the far horizon: below it the zone ends somewhere, from 1 on it never does.
 * @param limit - blur accepted on the sensor, mm, > 0
 * @throws {Problem} as for a lens, or `blur-limit`
 * Source: b → m·A as x → ∞.
 */
export function limitShare(lens: LensSetup, limit: number): number {
  requirePositive('blur-limit', limit);
  return limit / (lens.magnification * entrancePupil(lens.focalLength, lens.aperture));
}
