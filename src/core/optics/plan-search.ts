import {clicks} from '../exposure/clicks.js';
import {whiteContrast} from './contrast.js';
import {workingAperture} from './lens.js';
import {depthToCover} from './outline.js';
import type {FullJob} from './plan-job.js';
import {firstWhere, placer, standingRoom} from './plan-place.js';
import type {Place} from './plan-place.js';
import {longerBy, priceOf, weigh} from './plan-way.js';

/** A setting that does what the job asks, found but not worked out. */
export interface Candidate {
  readonly lensIndex: number;
  readonly aperture: number;
  readonly frames: number;
  readonly place: Place;
  readonly nearest: Place;
  /** As weighed with the exact shutter time, before it is rounded to a click */
  readonly cost: number;
}

/** Half a click, a hair more: a time that far out of the limits still rounds into them. */
const HALF_A_CLICK = 0.5 + 1e-9;

/**
 * All settings worth comparing: for each lens, f-number and number of frames the nearest place that will do, and a
 * cheaper one further back if time is dear enough.
 * @throws {Problem} as for the parts of the job
 * Source: with n frames that overlap by o the depth D is held when A·e/F ≤ blur·(1 + (n − 1)(1 − o)) / picture width,
 * e = D/(u + √(u² + D²)): the blur at the ends in the finished picture, see focusForBothEnds and stackFrames.
 */
export function* candidates(job: FullJob): Generator<Candidate> {
  const place = placer(job);
  const {spread} = depthToCover(job.outline, job.tilt);
  const times = clicks('shutter', job.clicksPerStop, job.shutterRange);
  const [shortest, longest] = [times[0]?.value ?? NaN, times.at(-1)?.value ?? NaN];
  const slack = 2 ** (HALF_A_CLICK / job.clicksPerStop);
  for (const [lensIndex, lens] of job.lenses.entries()) {
    const at = (distance: number): Place => place(lens, distance);
    const standing = standingRoom(job, lens, place);
    if (!standing) continue;
    const nearest = at(standing.near);
    for (const aperture of job.apertures) {
      const blurShare = (one: Place): number =>
        lens.focalLength / aperture * spread / (one.distance + Math.hypot(one.distance, spread)) / one.fieldWidth;
      const time = (one: Place): number =>
        job.metered.shutter * 2 ** longerBy(job, aperture, one.magnification, lens.pupilRatio);
      // Light in close-up only grows with the distance, diffraction too.
      const lit = firstWhere(standing.near, standing.far, (d) => time(at(d)) <= longest * slack);
      if (lit === undefined || contrast(job, aperture, nearest, lens.pupilRatio, 0) < job.leastContrast) continue;
      let far = standing.far;
      for (let frames = 1; frames <= job.mostFrames; frames++) {
        const reach = job.blurPixels * (1 + (frames - 1) * (1 - job.overlap)) / job.pictureWidth;
        const holds = firstWhere(standing.near, far, (d) => blurShare(at(d)) <= reach * (1 + 1e-12));
        if (holds === undefined) continue;
        const clear = (d: number): number => {
          const one = at(d);
          return contrast(job, aperture, one, lens.pupilRatio, worstBlur(job, blurShare(one), frames) * one.keptWidth);
        };
        const cost = (d: number): number => weigh(
          priceOf(job, lensIndex, aperture, at(d), nearest, frames, time(at(d))), job.rates);
        const first = firstClear(Math.max(holds, lit), far, clear, job.leastContrast);
        for (const d of first === undefined ? [] : [first, ...cheaper(first, far, cost, (to) => clear(to) >= job.leastContrast)]) {
          if (time(at(d)) * slack >= shortest) yield {lensIndex, aperture, frames, place: at(d), nearest, cost: cost(d)};
        }
        if (holds === standing.near) break;
        far = holds * (1 - 1e-12);
      }
    }
  }
}

/** Contrast of the job's detail with a disc of `blur` mm on the sensor. */
function contrast(job: FullJob, aperture: number, place: Place, pupilRatio: number | undefined, blur: number): number {
  return whiteContrast(
    workingAperture(aperture, place.magnification, pupilRatio), blur,
    job.pictureWidth / (2 * job.detailPixels * place.keptWidth), job.sensorWidth / job.pixelsAcross);
}

/** Largest blur in a stack, as a share of the kept width: half of what the spread frames leave of the depth. */
function worstBlur(job: FullJob, blurShare: number, frames: number): number {
  const zone = job.blurPixels / job.pictureWidth;
  return blurShare - (frames - 1) * Math.min(blurShare / frames, zone * (1 - job.overlap));
}

/** First distance at which the contrast is enough: it rises while defocus shrinks, then diffraction takes it down. */
function firstClear(from: number, to: number, clear: (d: number) => number, least: number): number | undefined {
  if (!(from <= to)) return undefined;
  if (clear(from) >= least) return from;
  const best = lowest(from, to, (d) => -clear(d));
  return firstWhere(from, best, (d) => clear(d) >= least);
}

/** A place further back that costs less, if there is one: when light gained there saves more than the distance costs. */
function cheaper(from: number, to: number, cost: (d: number) => number, allowed: (d: number) => boolean): number[] {
  const next = Math.min(to, from * 1.0005);
  if (!(cost(next) < cost(from) && allowed(next))) return [];
  return [lowest(from, to, (d) => (allowed(d) ? cost(d) : Infinity))];
}

/** Where `value` is lowest between `from` and `to`, if it falls and then rises. Golden section, logarithmic. */
function lowest(from: number, to: number, value: (at: number) => number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  const start = from;
  for (let round = 0; round < 40; round++) {
    const step = (to / from) ** golden;
    if (value(to / step) <= value(from * step)) to = from * step; else from = to / step;
  }
  const found = Math.sqrt(from * to);
  return value(start) <= value(found) ? start : found;
}
