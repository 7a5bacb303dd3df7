import {figureField} from './figure-field.js';
import type {FigureField} from './figure-field.js';
import {focusForBothEnds} from './focus.js';
import {
  magnificationFromDistance, magnificationFromPupil, pupilToSubject, sensorToSubject,
} from './lens.js';
import {depthToCover} from './outline.js';
import type {PlanJob, PlanLens} from './plan-job.js';

/** What a lens makes of the figure from one place, whatever its aperture. */
export interface Place extends FigureField {
  /** mm from the entrance pupil to the focus plane */
  readonly distance: number;
  readonly magnification: number;
  /** Axial depth of the focus plane, 0 at the base's front edge on the table: both ends are equally blurred */
  readonly focusDepth: number;
  /** Width of the finished picture on the sensor, mm */
  readonly keptWidth: number;
  /** Sensor pixels across it */
  readonly pixelsAcross: number;
  /** mm from the sensor mark to the focus plane */
  readonly cameraDistance: number;
}

/**
 * @returns the place at a distance, mm from the entrance pupil to the focus plane, for any of the job's lenses
 * @throws {Problem} as figureField and for a lens
 */
export function placer(job: PlanJob): (lens: PlanLens, distance: number) => Place {
  const field = figureField(job);
  const ends = depthToCover(job.outline, job.tilt);
  return ({focalLength, pupilRatio}, distance) => {
    const magnification = magnificationFromPupil(distance, focalLength, pupilRatio);
    const focusDepth = focusForBothEnds({focalLength, aperture: 1, magnification, pupilRatio}, ends);
    const {fieldWidth, aim} = field(distance, focusDepth);
    const keptWidth = fieldWidth * magnification;
    return {
      distance, magnification, focusDepth, fieldWidth, aim, keptWidth,
      pixelsAcross: job.pixelsAcross * keptWidth / job.sensorWidth,
      cameraDistance: sensorToSubject(magnification, focalLength),
    };
  };
}

/** Steps that halve an interval down to the last digits. */
const HALVINGS = 50;

/**
 * First point of `from` … `to` from which on `test` holds, found by halving on a logarithmic scale.
 * @param test - false up to some point and true from there on
 * @returns a point at which it holds; `undefined` when it does not even hold at `to`
 */
export function firstWhere(from: number, to: number, test: (at: number) => boolean): number | undefined {
  if (!(from <= to && test(to))) return undefined;
  if (test(from)) return from;
  for (let round = 0; round < HALVINGS; round++) {
    const middle = Math.sqrt(from * to);
    if (test(middle)) to = middle; else from = middle;
  }
  return to;
}

/** Further than any lens is used here, mm. */
const FARTHEST_MM = 1e7;

/**
 * Where a lens can stand: no nearer than the figure fits the frame, the lens focuses and life size allows, no further
 * than the room and the pixels wanted allow.
 * @returns `near` and `far`, and `closest`, nearer than which nothing can be focused; mm from the entrance pupil to the
 * focus plane; `undefined` when there is no such place
 * @throws {Problem} as {@link placer}
 */
export function standingRoom(
  job: PlanJob, lens: PlanLens, place: (lens: PlanLens, distance: number) => Place,
): {readonly near: number; readonly far: number; readonly closest: number} | undefined {
  const {focalLength, pupilRatio = 1} = lens;
  if (job.room < 4 * focalLength) return undefined;
  const away = (sensorDistance: number): number => {
    const magnification = magnificationFromDistance(Math.max(sensorDistance, 4 * focalLength), focalLength);
    return pupilToSubject({...lens, aperture: 1, magnification});
  };
  const widest = Math.min(job.sensorWidth, job.sensorHeight * job.pictureWidth / job.pictureHeight);
  const fits = firstWhere(focalLength * (1 + 1 / pupilRatio), FARTHEST_MM, (at) => place(lens, at).keptWidth <= widest);
  if (fits === undefined) return undefined;
  const closest = away(lens.closest ?? 0);
  const near = Math.max(fits, closest);
  const enough = job.pictureWidth * (1 - 1e-9);
  const short = firstWhere(near, away(job.room), (at) => place(lens, at).pixelsAcross < enough);
  // Halving ends on the far side of the limit, by less than the last digits matter.
  const far = short === undefined ? away(job.room) : short * (1 - 1e-12);
  return far >= near && place(lens, near).pixelsAcross >= enough ? {near, far, closest} : undefined;
}
