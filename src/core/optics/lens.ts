import {Problem, requireNotNegative, requirePositive} from '../problem.js';

/**
 * A lens as it stands for one frame. The magnification belongs to the focus plane: that is where the field is
 * framed and measured, so it stays the same when the focus point is named at another depth of the figure.
 */
export interface LensSetup {
  /** mm, > 0 */
  readonly focalLength: number;
  /** f-number as marked for infinity, > 0 */
  readonly aperture: number;
  /** Size on the sensor / size of the subject, at the focus plane, > 0 */
  readonly magnification: number;
  /** Exit pupil / entrance pupil, > 0; 1 when it is not known */
  readonly pupilRatio?: number | undefined;
}

/** Wavelength that stands for white light, mm. Green, where the eye is keenest; common practice, no source. */
export const GREEN_MM = 0.00055;

/** @throws {Problem} naming the first of `focal-length`, `aperture`, `magnification`, `pupil-ratio` not above 0. */
export function requireLens(lens: LensSetup): void {
  requirePositive('focal-length', lens.focalLength);
  requirePositive('aperture', lens.aperture);
  requirePositive('magnification', lens.magnification);
  requirePositive('pupil-ratio', lens.pupilRatio ?? 1);
}

/**
 * Measured the sure way: a ruler in the focus plane, read across the frame. Focus breathing is in it.
 * @param sensorWidth - mm, > 0, along the same side of the frame as the ruler
 * @param fieldWidth - mm of ruler the frame takes in, > 0
 * @throws {Problem} `sensor-width` or `field-width`
 * Source: definition of magnification.
 */
export function magnificationFromField(sensorWidth: number, fieldWidth: number): number {
  requirePositive('sensor-width', sensorWidth);
  requirePositive('field-width', fieldWidth);
  return sensorWidth / fieldWidth;
}

/**
 * What to frame by ruler to reach a magnification.
 * @param sensorWidth - mm, > 0
 * @param magnification - > 0
 * @returns mm of the focus plane that the sensor's width takes in
 * @throws {Problem} `sensor-width` or `magnification`
 * Source: definition of magnification.
 */
export function fieldWidth(sensorWidth: number, magnification: number): number {
  requirePositive('sensor-width', sensorWidth);
  requirePositive('magnification', magnification);
  return sensorWidth / magnification;
}

/**
 * From a tape measure. Of the two positions that give this distance it takes the usual one, up to life size.
 * @param distance - sensor mark to focus plane, mm
 * @param focalLength - mm, > 0, as it is when focused there
 * @param principalGap - mm between the lens's principal planes, positive when they do not cross; 0 when not known
 * @returns magnification, above 0 up to 1
 * @throws {Problem} `focal-length`, or `camera-distance` nearer than four focal lengths, with the nearest that can be
 * Source: thin-lens conjugates, D = f·(2 + m + 1/m) solved for m.
 */
export function magnificationFromDistance(distance: number, focalLength: number, principalGap = 0): number {
  requirePositive('focal-length', focalLength);
  const sum = (distance - principalGap) / focalLength - 2;
  if (!(sum >= 2 - 1e-12 && Number.isFinite(sum))) {
    throw new Problem('camera-distance', distance,
      `at least ${4 * focalLength + principalGap} mm from the sensor mark, four focal lengths`);
  }
  // The small root written so that nothing cancels far away.
  return 2 / (sum + Math.sqrt(Math.max(0, sum * sum - 4)));
}

/**
 * Where the tape measure should stand.
 * @param magnification - > 0
 * @param focalLength - mm, > 0
 * @param principalGap - mm between the principal planes; 0 when not known
 * @returns mm from the sensor mark to the focus plane
 * @throws {Problem} `magnification` or `focal-length`
 * Source: thin-lens conjugates, u + v = f·(2 + m + 1/m).
 */
export function sensorToSubject(magnification: number, focalLength: number, principalGap = 0): number {
  return principalToSubject(magnification, focalLength) + focalLength * (1 + magnification) + principalGap;
}

/**
 * @param magnification - > 0
 * @param focalLength - mm, > 0
 * @returns mm from the front principal plane to the focus plane
 * @throws {Problem} `magnification` or `focal-length`
 * Source: thin-lens conjugates, u = f·(1 + 1/m).
 */
export function principalToSubject(magnification: number, focalLength: number): number {
  requirePositive('magnification', magnification);
  requirePositive('focal-length', focalLength);
  return focalLength * (1 + 1 / magnification);
}

/**
 * The distance that decides blur and perspective.
 * @returns mm from the entrance pupil to the focus plane
 * @throws {Problem} as {@link requireLens}
 * Source: paraxial pupil imaging, u_e = f·(1/m + 1/P).
 */
export function pupilToSubject(lens: LensSetup): number {
  requireLens(lens);
  return lens.focalLength * (1 / lens.magnification + 1 / (lens.pupilRatio ?? 1));
}

/**
 * {@link pupilToSubject} turned round: the magnification with the entrance pupil `distance` from the focus plane.
 * @param distance - mm, more than focalLength / pupilRatio
 * @param focalLength - mm, > 0
 * @param pupilRatio - > 0
 * @throws {Problem} `focal-length`, `pupil-ratio`, or `camera-distance` too near for any focus
 * Source: as {@link pupilToSubject}.
 */
export function magnificationFromPupil(distance: number, focalLength: number, pupilRatio = 1): number {
  requirePositive('focal-length', focalLength);
  requirePositive('pupil-ratio', pupilRatio);
  const inverse = distance / focalLength - 1 / pupilRatio;
  if (!(inverse > 0 && Number.isFinite(inverse))) {
    throw new Problem('camera-distance', distance, `more than ${focalLength / pupilRatio} mm from the entrance pupil`);
  }
  return 1 / inverse;
}

/**
 * The f-number light and diffraction go by in close-up.
 * @param aperture - f-number as marked for infinity, > 0
 * @param magnification - 0 (infinity) or above
 * @param pupilRatio - exit pupil / entrance pupil, > 0
 * @throws {Problem} `aperture`, `magnification` or `pupil-ratio`
 * Source: N_w = N·(1 + m/P), textbook close-up optics.
 */
export function workingAperture(aperture: number, magnification: number, pupilRatio = 1): number {
  requirePositive('aperture', aperture);
  return aperture * extensionFactor(magnification, pupilRatio);
}

/**
 * For bodies that show the working f-number: the marked one behind it.
 * @param working - f-number as such a body shows it, > 0
 * @param magnification - 0 (infinity) or above
 * @param pupilRatio - exit pupil / entrance pupil, > 0
 * @throws {Problem} `aperture`, `magnification` or `pupil-ratio`
 * Source: as {@link workingAperture}.
 */
export function markedFromWorking(working: number, magnification: number, pupilRatio = 1): number {
  requirePositive('aperture', working);
  return working / extensionFactor(magnification, pupilRatio);
}

/**
 * Light the sensor loses in close-up against the marked f-number. A meter behind the lens already contains it, a
 * hand-held one does not.
 * @param magnification - 0 (infinity) or above
 * @param pupilRatio - exit pupil / entrance pupil, > 0
 * @returns stops lost, 0 or above
 * @throws {Problem} `magnification` or `pupil-ratio`
 * Source: light is proportional to 1/N_w², see {@link workingAperture}.
 */
export function lightLoss(magnification: number, pupilRatio = 1): number {
  return 2 * Math.log2(extensionFactor(magnification, pupilRatio));
}

function extensionFactor(magnification: number, pupilRatio: number): number {
  requireNotNegative('magnification', magnification);
  requirePositive('pupil-ratio', pupilRatio);
  return 1 + magnification / pupilRatio;
}

/**
 * @param focalLength - mm, > 0
 * @param aperture - f-number as marked, > 0
 * @returns diameter of the entrance pupil, mm
 * @throws {Problem} `focal-length` or `aperture`
 * Source: definition of the f-number.
 */
export function entrancePupil(focalLength: number, aperture: number): number {
  requirePositive('focal-length', focalLength);
  requirePositive('aperture', aperture);
  return focalLength / aperture;
}

/**
 * Width of the smallest spot diffraction allows, dark ring to dark ring.
 * @param working - working f-number, > 0
 * @param wavelength - mm, > 0
 * @returns mm on the sensor
 * @throws {Problem} `aperture` or `wavelength`
 * Source: Airy 1835; 2.44 is twice 1.2197, the first zero of the pattern of a round stop.
 */
export function airyDiameter(working: number, wavelength = GREEN_MM): number {
  requirePositive('aperture', working);
  requirePositive('wavelength', wavelength);
  return 2.44 * wavelength * working;
}

/**
 * Angle the frame takes in, seen from the entrance pupil.
 * @param sensorWidth - mm, > 0; the side the angle is wanted for
 * @returns degrees
 * @throws {Problem} as {@link requireLens}, or `sensor-width`
 * Source: 2·atan(field / 2·u_e); with P = 1 the textbook 2·atan(X / 2f(1 + m)).
 */
export function viewAngle(lens: LensSetup, sensorWidth: number): number {
  return 2 * Math.atan(fieldWidth(sensorWidth, lens.magnification) / 2 / pupilToSubject(lens)) * 180 / Math.PI;
}
