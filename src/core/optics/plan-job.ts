import {clicks} from '../exposure/clicks.js';
import type {ClicksPerStop, Range} from '../exposure/clicks.js';
import type {Exposure} from '../exposure/stops.js';
import {Problem, requireNotNegative, requirePositive, requireWithin} from '../problem.js';
import type {FigureInPicture} from './figure-field.js';
import {SETTLE_SECONDS} from './stack.js';

/** A lens at hand. */
export interface PlanLens {
  /** mm, > 0 */
  readonly focalLength: number;
  /** Exit pupil / entrance pupil, > 0; 1 when it is not known */
  readonly pupilRatio?: number | undefined;
  /** Nearest focus, mm from the sensor mark, at least four focal lengths; as near as wanted when left out */
  readonly closest?: number | undefined;
}

/** What is wished for and what there is to do it with. */
export interface PlanJob extends FigureInPicture {
  /** At hand, the one that is mounted first */
  readonly lenses: readonly PlanLens[];
  /** Sensor as it is held: width along the picture's width. mm, > 0 */
  readonly sensorWidth: number;
  readonly sensorHeight: number;
  /** Sensor pixels along its width as it is held, > 0 */
  readonly pixelsAcross: number;
  /** f-numbers that can be set, in any order, exact clicks rather than their labels */
  readonly apertures: readonly number[];
  readonly clicksPerStop: ClicksPerStop;
  /** Shortest and longest shutter time wanted, s */
  readonly shutterRange: Range;
  /** As far back as the tripod can go, mm from the sensor mark to the focus plane, > 0; as near is life size */
  readonly room: number;
  /** A setting that exposes the figure right; its ISO speed is held */
  readonly metered: Exposure;
  /** Magnification at which that was metered behind the lens; when left out, light lost in close-up stays as metered */
  readonly meteredMagnification?: number | undefined;
  /** Blur accepted in the finished picture, pixels, > 0 */
  readonly blurPixels: number;
  /** Width of the finest line to be seen, pixels of the finished picture; as wide as the blur limit when left out */
  readonly detailPixels?: number | undefined;
  /** Contrast that line has to keep everywhere, above 0 up to 1; 0.3 when left out (our judgement, no source) */
  readonly leastContrast?: number | undefined;
  /** Most frames to take and blend, a whole number; 1 = no stack */
  readonly mostFrames: number;
  /** Share of a sharp zone that the next frame covers again; a quarter when left out */
  readonly overlap?: number | undefined;
  /** Seconds between two frames; 3 when left out */
  readonly settle?: number | undefined;
  readonly rates?: Partial<PlanRates> | undefined;
}

/** What a way costs, seen from the metered setting and the nearest place from which the lens frames the picture. */
export interface PlanPrice {
  /** Clicks of the aperture, either way; not whole when the metered aperture is off the clicks */
  readonly clicks: number;
  /** Seconds until the last frame is taken: exposures and the pauses between */
  readonly seconds: number;
  /** mm the camera stands further back from the figure */
  readonly back: number;
  /** Sensor pixels across the picture given up by that */
  readonly pixels: number;
  /** Frames beyond the first */
  readonly frames: number;
  /** 1 when it is not the lens that is mounted, else 0 */
  readonly otherLens: number;
}

/** What each part of a {@link PlanPrice} weighs when ways are ranked, in seconds of patience. */
export type PlanRates = PlanPrice;

/**
 * A second is a second; a click a turn of the dial; 100 mm, or 1000 pixels that were not needed, as good as five
 * seconds; a frame to take and blend half a minute; changing the lens most of one. Our judgement, no source.
 */
export const PLAN_RATES: PlanRates = {clicks: 1, seconds: 1, back: 0.05, pixels: 0.005, frames: 30, otherLens: 40};

/** A job with nothing left out. */
export type FullJob = PlanJob & {
  readonly detailPixels: number; readonly leastContrast: number; readonly overlap: number; readonly settle: number;
  readonly rates: PlanRates;
};

/** More frames than a plan goes through. */
export const MOST_FRAMES = 60;

/**
 * The job with what was left out filled in.
 * @throws {Problem} naming the first part that cannot be used: `focal-length`, `pupil-ratio`, `closest-focus`,
 * `sensor-width`, `sensor-height`, `pixels-across`, `aperture`, `room`, `shutter`, `iso`, `magnification`,
 * `blur-limit`, `detail`, `contrast`, `frames`, `overlap`, `settle`
 */
export function fillJob(job: PlanJob): FullJob {
  if (!job.lenses.length) throw new Problem('focal-length', job.lenses, 'at least one lens');
  for (const {focalLength, pupilRatio = 1, closest} of job.lenses) {
    requirePositive('focal-length', focalLength);
    requirePositive('pupil-ratio', pupilRatio);
    if (closest !== undefined) requireWithin('closest-focus', closest, 4 * focalLength, Infinity);
  }
  requirePositive('sensor-width', job.sensorWidth);
  requirePositive('sensor-height', job.sensorHeight);
  requirePositive('pixels-across', job.pixelsAcross);
  if (!job.apertures.length) throw new Problem('aperture', job.apertures, 'at least one f-number that can be set');
  for (const aperture of job.apertures) requirePositive('aperture', aperture);
  requirePositive('room', job.room);
  requirePositive('aperture', job.metered.aperture);
  requirePositive('shutter', job.metered.shutter);
  requirePositive('iso', job.metered.iso);
  requireNotNegative('magnification', job.meteredMagnification ?? 0);
  if (!clicks('shutter', job.clicksPerStop, job.shutterRange).length) {
    throw new Problem('shutter', job.shutterRange.join(' to '), 'limits with a click between them');
  }
  const {
    detailPixels = job.blurPixels, leastContrast = 0.3, overlap = 0.25, settle = SETTLE_SECONDS, rates, mostFrames,
  } = job;
  requirePositive('blur-limit', job.blurPixels);
  requirePositive('detail', detailPixels);
  if (!(leastContrast > 0 && leastContrast <= 1)) {
    throw new Problem('contrast', leastContrast, 'a number above 0, up to 1');
  }
  if (!Number.isInteger(mostFrames)) throw new Problem('frames', mostFrames, 'a whole number');
  requireWithin('frames', mostFrames, 1, MOST_FRAMES);
  requireWithin('overlap', overlap, 0, 0.9);
  requireNotNegative('settle', settle);
  return {...job, detailPixels, leastContrast, overlap, settle, rates: {...PLAN_RATES, ...rates}};
}
