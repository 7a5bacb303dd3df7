import type {Resolution} from './settings.js';

/** Width of the part of the sensor that made the picture, and how much to trust it. */
export interface SensorWidth {
  /** mm, along the picture's long or short side as recorded (before rotation). */
  readonly mm: number;
  /**
   * `focal-plane`: pixels divided by pixels per mm. `equivalent`: from the 35 mm equivalent and the real focal length,
   * by the diagonal.
   */
  readonly from: 'focal-plane' | 'equivalent';
  /** Largest relative error that the rounding of what it was derived from allows, 0 to 1. */
  readonly within: number;
  /**
   * `agreed`: both routes were there and agree. `alone`: one route, nothing to check it by. `disputed`: both were
   * there and disagree, as after scaling the picture down.
   */
  readonly standing: 'agreed' | 'alone' | 'disputed';
}

/** What a sensor's width can be derived from. */
export interface SensorEvidence {
  readonly size: {readonly width: number; readonly height: number} | undefined;
  readonly recordedSize: {readonly width: number; readonly height: number} | undefined;
  readonly resolution: Resolution | undefined;
  readonly focalLength: number | undefined;
  readonly equivalentFocalLength: number | undefined;
}

/** Diagonal of the 36 × 24 mm frame, mm. */
const FILM_DIAGONAL_MM = Math.hypot(36, 24);

/** Sensors from a phone's to a large-format back, mm wide. Anything else is nonsense. */
const LEAST_MM = 2;
const MOST_MM = 260;

/** Two routes agree when they differ by no more than this beside their rounding: the masked border of a sensor. */
const BORDER_SHARE = 0.03;

/**
 * Sensor width from a picture's metadata.
 *
 * The focal-plane resolution comes first, being a measure; but it is wrong by the scale when somebody made the picture
 * smaller and left the tag alone, so where the 35 mm equivalent contradicts it, the equivalent is taken. The equivalent
 * is a whole number of millimetres and compares **diagonals**, so the width depends on the picture's proportions.
 * @returns `undefined` when neither route gives a sensor that could exist
 * Source: Exif 2.32 for the resolution; CIPA DCG-001 for the equivalent by the diagonal (from memory).
 */
export function sensorWidth(evidence: SensorEvidence): SensorWidth | undefined {
  const measured = fromFocalPlane(evidence);
  const derived = fromEquivalent(evidence);
  if (!measured || !derived) {
    const one = measured ?? derived;
    return one && {...one, standing: 'alone'};
  }
  const difference = Math.abs(measured.mm / derived.mm - 1);
  return difference <= measured.within + derived.within + BORDER_SHARE
    ? {...measured, standing: 'agreed'} : {...derived, standing: 'disputed'};
}

type Route = Omit<SensorWidth, 'standing'>;

function fromFocalPlane({size, recordedSize, resolution}: SensorEvidence): Route | undefined {
  const width = recordedSize?.width ?? size?.width;
  if (!resolution || width === undefined) return undefined;
  const mm = width / resolution.perMm.x;
  return isSensor(mm) ? {mm, from: 'focal-plane', within: resolution.unitStated ? 0.005 : 0.02} : undefined;
}

function fromEquivalent({size, focalLength, equivalentFocalLength}: SensorEvidence): Route | undefined {
  if (!size || focalLength === undefined || equivalentFocalLength === undefined) return undefined;
  const diagonal = FILM_DIAGONAL_MM * focalLength / equivalentFocalLength;
  const mm = diagonal * size.width / Math.hypot(size.width, size.height);
  // The equivalent is rounded to a whole mm, the focal length at least to a tenth.
  const within = 0.5 / equivalentFocalLength + 0.05 / focalLength;
  return isSensor(mm) ? {mm, from: 'equivalent', within} : undefined;
}

function isSensor(mm: number): boolean {
  return mm >= LEAST_MM && mm <= MOST_MM;
}
