import {Problem, requireFinite, requirePositive} from '../problem.js';
import {
  lightLoss, magnificationFromDistance, magnificationFromPupil, pupilToSubject, requireLens, sensorToSubject,
} from './lens.js';
import type {LensSetup} from './lens.js';

/**
 * The same lens and aperture further away, the picture cropped to what it showed before: the crop keeps the field width
 * at the focus plane. Depth grows because the figure sees the lens under a smaller angle; pixels pay for it.
 */
export interface StepBack {
  /** mm the sensor mark moves away from the focus plane; negative = nearer */
  readonly by: number;
  /** mm from the sensor mark to the focus plane afterwards, principal-plane gap left out */
  readonly sensorToSubject: number;
  /** Depth won, as the stops of aperture that would win it; diffraction grows by the same stops */
  readonly stops: number;
  /** Light won at the sensor, stops, positive = brighter: less of it is lost to close-up */
  readonly light: number;
  /** Share of the sensor pixels across the picture that is left; also kept width on the sensor after / before */
  readonly pixelShare: number;
  /** The lens as it stands there: its magnification says how the uncropped view widens */
  readonly lens: LensSetup;
}

/**
 * What standing with the entrance pupil `distance` from the focus plane changes.
 * @param lens - as it stands now
 * @param distance - mm from the entrance pupil to the focus plane
 * @throws {Problem} as for a lens; `camera-distance` when too near for any focus
 * Source: in pixels of the finished picture blur is A·|x|·W / (F·(u_e + x)) and the Airy disc goes with u_e / A, so
 * twice the distance is two stops.
 */
export function stepBackTo(lens: LensSetup, distance: number): StepBack {
  const {focalLength, magnification, pupilRatio} = lens;
  const before = pupilToSubject(lens);
  const after = magnificationFromPupil(distance, focalLength, pupilRatio);
  const away = sensorToSubject(after, focalLength);
  return {
    by: away - sensorToSubject(magnification, focalLength),
    sensorToSubject: away,
    stops: 2 * Math.log2(distance / before),
    light: lightLoss(magnification, pupilRatio) - lightLoss(after, pupilRatio),
    pixelShare: after / magnification,
    lens: {...lens, magnification: after},
  };
}

/**
 * How far back so many stops of depth are.
 * @param stops - depth wanted, as stops of aperture; negative = give some up and come nearer
 * @throws {Problem} as for a lens; `stops`; `camera-distance` when that is too near for any focus
 * Source: as {@link stepBackTo}.
 */
export function stepBackForStops(lens: LensSetup, stops: number): StepBack {
  requireFinite('stops', stops);
  return stepBackTo(lens, pupilToSubject(lens) * 2 ** (stops / 2));
}

/**
 * What so many millimetres back are worth.
 * @param lens - up to life size
 * @param by - mm the sensor mark moves away from the focus plane; negative = nearer
 * @throws {Problem} as for a lens; `magnification` above 1; `camera-distance` nearer than four focal lengths
 * Source: as {@link stepBackTo}, the magnification there from the distance.
 */
export function stepBackBy(lens: LensSetup, by: number): StepBack {
  requireLens(lens);
  const {focalLength, magnification} = lens;
  if (magnification > 1) throw new Problem('magnification', magnification, 'life size or smaller, up to 1');
  const after = magnificationFromDistance(sensorToSubject(magnification, focalLength) + by, focalLength);
  return stepBackTo(lens, pupilToSubject({...lens, magnification: after}));
}

/**
 * What pixels to spare buy: as far back as leaves just enough of them.
 * @param pixelsAcross - sensor pixels across the kept picture now, > 0
 * @param pixelsNeeded - pixels across it that are enough, > 0; more than there are now means coming nearer
 * @throws {Problem} as for a lens; `pixels-across` or `picture-width`
 * Source: as {@link stepBackTo}; the kept width on the sensor goes with the magnification.
 */
export function stepBackForPixels(lens: LensSetup, pixelsAcross: number, pixelsNeeded: number): StepBack {
  requirePositive('pixels-across', pixelsAcross);
  requirePositive('picture-width', pixelsNeeded);
  return stepBackTo(lens, pupilToSubject({...lens, magnification: lens.magnification * pixelsNeeded / pixelsAcross}));
}
