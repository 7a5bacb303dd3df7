import {Problem, requirePositive} from '../problem.js';
import {magnificationFromPupil, pupilToSubject} from './lens.js';
import type {LensSetup} from './lens.js';
import {axialToRuler, depthToCover} from './outline.js';
import type {DepthToCover, Outline} from './outline.js';

/**
 * Focus distance that blurs a near and a far point alike: in front of their middle.
 * @param near - mm from the entrance pupil, > 0
 * @param far - mm from the entrance pupil, > 0; Infinity is allowed
 * @returns mm from the entrance pupil
 * @throws {Problem} `near` or `far`
 * Source: harmonic mean 2·d1·d2 / (d1 + d2), textbook depth of field.
 */
export function equalBlurDistance(near: number, far: number): number {
  requirePositive('near', near);
  if (!(far > 0)) throw new Problem('far', far, 'a number above 0');
  return 2 / (1 / near + 1 / far);
}

/**
 * Where the focus plane goes so that both ends are equally blurred, the field being framed at the focus plane: its
 * width there, and with it the magnification and the pupil's distance, stays what `lens` says, and the camera follows.
 * @param ends - axial depths of the two ends, mm, front not behind back
 * @returns axial depth of the focus plane, mm, on the scale of `ends`
 * @throws {Problem} as for a lens; `depth` when the front is behind the back
 * Source: a / (u − a) = (s − a) / (u + s − a) solved for the distance a behind the front; its distances from the pupil
 * have the harmonic mean u.
 */
export function focusForBothEnds(lens: LensSetup, ends: Pick<DepthToCover, 'front' | 'back'>): number {
  const distance = pupilToSubject(lens);
  const spread = ends.back - ends.front;
  if (!(spread >= 0)) throw new Problem('depth', spread, 'a front end before the back end');
  return ends.front + distance * spread / (distance + spread + Math.sqrt(distance * distance + spread * spread));
}

/**
 * {@link focusForBothEnds} as a point a person can point at.
 * @param tilt - degrees the camera looks down
 * @returns mm behind the base's front edge on a flat ruler on the table; may lie outside the base
 * @throws {Problem} as for a lens and an outline
 * Source: as {@link focusForBothEnds}.
 */
export function bestFocus(outline: Outline, tilt: number, lens: LensSetup): number {
  return axialToRuler(focusForBothEnds(lens, depthToCover(outline, tilt)), tilt);
}

/**
 * The same with the camera left where it stands: only the focus ring turns. The pupil keeps its place, the field at
 * the focus plane gets a little wider or narrower.
 * @param focusDepth - axial depth of the focus plane now, mm, on the scale of `ends`
 * @param ends - axial depths of the two ends, mm
 * @returns the new focus plane's axial depth, and the lens with the magnification it has there
 * @throws {Problem} as for a lens; `near` or `far` when an end lies behind the pupil
 * Source: {@link equalBlurDistance}.
 */
export function refocusInPlace(
  lens: LensSetup, focusDepth: number, ends: Pick<DepthToCover, 'front' | 'back'>,
): {readonly depth: number; readonly lens: LensSetup} {
  const pupil = focusDepth - pupilToSubject(lens);
  const distance = equalBlurDistance(ends.front - pupil, ends.back - pupil);
  const magnification = magnificationFromPupil(distance, lens.focalLength, lens.pupilRatio);
  return {depth: pupil + distance, lens: {...lens, magnification}};
}
