import {bestAperture} from '../../core/optics/best-aperture.js';
import {onePixel} from '../../core/optics/blur.js';
import {focusForBothEnds} from '../../core/optics/focus.js';
import {depthToCover} from '../../core/optics/outline.js';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import {bestStack} from '../../core/optics/stack.js';

/** Worst contrast at one f-number of a way's place; `inFocus` is what diffraction leaves, for a single frame. */
export interface CurvePoint {
  readonly aperture: number;
  readonly worst: number;
  readonly inFocus?: number;
  readonly frames: number;
}

/** From the widest to the smallest opening, and the best of them. */
export interface Curve {
  readonly points: readonly CurvePoint[];
  readonly best: CurvePoint;
}

/**
 * What every f-number would make of the figure from where a way has the camera: in one frame, or in as many as it takes
 * when the way is a stack.
 * @throws {Problem} as bestAperture and bestStack
 */
export function curveOf(way: PlanWay, job: PlanJob): Curve {
  const {lens, keptShare, limit} = way;
  const ends = depthToCover(job.outline, job.tilt);
  const {pictureWidth, blurPixels, detailPixels = blurPixels, overlap} = job;
  const detail = {onSensor: detailPixels * onePixel({keptWidth: keptShare * job.sensorWidth, pictureWidth})};
  const pixel = job.sensorWidth / job.pixelsAcross;
  if (way.kind === 'stack') {
    const {best, choices} = bestStack({lens, ends, tilt: job.tilt, limit, overlap}, {
      detail, pixel, apertures: job.apertures, shutterFor: () => way.shutter.value, settle: 0,
    });
    return {points: choices, best};
  }
  const focus = focusForBothEnds(lens, ends);
  const {best, curve} = bestAperture(lens, {front: ends.front - focus, back: ends.back - focus}, detail, job.apertures, pixel);
  const points = curve.map(({aperture, worst, inFocus}) => ({aperture, worst, inFocus, frames: 1}));
  return {points, best: points.find(({aperture}) => aperture === best.aperture) ?? {...best, frames: 1}};
}
