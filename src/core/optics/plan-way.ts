import {nearestClick} from '../exposure/clicks.js';
import type {Click} from '../exposure/clicks.js';
import {apertureStops} from '../exposure/stops.js';
import {worstContrast} from './best-aperture.js';
import {blurLimit, onePixel} from './blur.js';
import {fieldWidth, lightLoss} from './lens.js';
import type {LensSetup} from './lens.js';
import {axialToRuler, depthToCover} from './outline.js';
import type {FullJob, PlanPrice, PlanRates} from './plan-job.js';
import type {Place} from './plan-place.js';
import {stackContrast, stackFrames} from './stack.js';

/** One way to get the figure sharp, everything needed to set it up. */
export interface PlanWay {
  /** In one frame from the nearest place, in one frame from further back, or in several frames */
  readonly kind: 'stay' | 'move-back' | 'stack';
  /** Which of the job's lenses */
  readonly lensIndex: number;
  /** As it stands with the focus plane at `focus` */
  readonly lens: LensSetup;
  /** The click to set, with the stops of light its rounding gains or loses */
  readonly shutter: Click & {readonly rounding: number};
  readonly iso: number;
  /** mm from the sensor mark to the focus plane */
  readonly cameraDistance: number;
  /** mm behind the base's front edge where both ends are equally blurred; frame by the ruler here */
  readonly focus: number;
  /** The same for every frame, front to back; a single frame's is `focus` */
  readonly frames: readonly number[];
  /** mm of ruler in the focus plane that the whole frame takes in across */
  readonly fieldWidth: number;
  /** mm of it that are kept, and the share of the frame's width they are */
  readonly keptField: number;
  readonly keptShare: number;
  /** Sensor pixels across the kept picture */
  readonly pixelsAcross: number;
  /** Blur limit on the sensor, mm */
  readonly limit: number;
  /** What is sharp, mm behind the base's front edge on a ruler on the table; `to` may be Infinity */
  readonly zone: {readonly from: number; readonly to: number};
  /** Worst contrast of the detail over the whole depth */
  readonly worst: number;
  /** Where the optical axis meets the focus plane, as in an outline */
  readonly aim: {readonly y: number; readonly z: number};
  readonly price: PlanPrice;
  /** The price weighed, in seconds of patience */
  readonly cost: number;
}

/**
 * Stops the shutter is longer than metered.
 * Source: light goes with 1/N_w².
 */
export function longerBy(job: FullJob, aperture: number, magnification: number, pupilRatio = 1): number {
  const metered = job.meteredMagnification;
  return apertureStops(aperture, job.metered.aperture)
    + (metered === undefined ? 0 : lightLoss(magnification, pupilRatio) - lightLoss(metered, pupilRatio));
}

/** @returns the parts of the price times their rates, added up */
export function weigh(price: PlanPrice, rates: PlanRates): number {
  return price.clicks * rates.clicks + price.seconds * rates.seconds + price.back * rates.back
    + price.pixels * rates.pixels + price.frames * rates.frames + price.otherLens * rates.otherLens;
}

/** What one setting costs, with the time as given. */
export function priceOf(
  job: FullJob, lensIndex: number, aperture: number, place: Place, nearest: Place, frames: number, shutter: number,
): PlanPrice {
  return {
    clicks: Math.abs(apertureStops(aperture, job.metered.aperture)) * job.clicksPerStop,
    seconds: frames * shutter + (frames - 1) * job.settle,
    back: place.cameraDistance - place.focusDepth - (nearest.cameraDistance - nearest.focusDepth),
    pixels: nearest.pixelsAcross - place.pixelsAcross,
    frames: frames - 1, otherLens: lensIndex ? 1 : 0,
  };
}

/**
 * One lens, f-number and place worked out in full.
 * @param nearest - the nearest place from which this lens frames the figure
 * @throws {Problem} as the functions that it is put together from
 * Source: stackFrames, stackContrast, worstContrast, blurLimit, nearestClick, each for its part.
 */
export function planWay(job: FullJob, lensIndex: number, aperture: number, place: Place, nearest: Place): PlanWay {
  const {focalLength, pupilRatio} = job.lenses[lensIndex] as FullJob['lenses'][number];
  const lens: LensSetup = {focalLength, aperture, magnification: place.magnification, pupilRatio};
  const picture = {keptWidth: place.keptWidth, pictureWidth: job.pictureWidth};
  const limit = blurLimit(job.blurPixels, picture);
  const ends = depthToCover(job.outline, job.tilt);
  const stack = {lens, ends, tilt: job.tilt, limit, overlap: job.overlap};
  const {frames} = stackFrames(stack);
  const detail = {onSensor: job.detailPixels * onePixel(picture)};
  const pixel = job.sensorWidth / job.pixelsAcross;
  const away = {front: ends.front - place.focusDepth, back: ends.back - place.focusDepth};
  const exact = job.metered.shutter * 2 ** longerBy(job, aperture, place.magnification, pupilRatio);
  const shutter = nearestClick('shutter', exact, job.clicksPerStop, job.shutterRange);
  const price = priceOf(job, lensIndex, aperture, place, nearest, frames.length, shutter.value);
  return {
    kind: frames.length > 1 ? 'stack' : place.distance > nearest.distance * (1 + 1e-9) ? 'move-back' : 'stay',
    lensIndex, lens, shutter, iso: job.metered.iso, cameraDistance: place.cameraDistance,
    focus: axialToRuler(place.focusDepth, job.tilt), frames: frames.map(({focus}) => focus),
    fieldWidth: fieldWidth(job.sensorWidth, place.magnification), keptField: place.fieldWidth,
    keptShare: place.keptWidth / job.sensorWidth, pixelsAcross: place.pixelsAcross, limit,
    zone: {
      from: axialToRuler(frames[0]?.from ?? NaN, job.tilt), to: axialToRuler(frames.at(-1)?.to ?? NaN, job.tilt),
    },
    worst: frames.length > 1 ? stackContrast(stack, detail, pixel) : worstContrast(lens, away, detail, pixel).worst,
    aim: place.aim, price, cost: weigh(price, job.rates),
  };
}
