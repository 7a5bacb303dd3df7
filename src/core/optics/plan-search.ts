import {clicks} from '../exposure/clicks.js';
import {whiteContrast} from './contrast.js';
import {workingAperture} from './lens.js';
import {depthToCover} from './outline.js';
import type {FullJob, PlanLens} from './plan-job.js';
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

/** One lens with what all its settings share. */
interface Stand {
  readonly lensIndex: number;
  readonly lens: PlanLens;
  readonly near: number;
  readonly far: number;
  /** Nearest that it focuses, mm from the entrance pupil */
  readonly closest: number;
  readonly nearest: Place;
  readonly at: (distance: number) => Place;
  /** Front to back along the axis, mm */
  readonly spread: number;
  /** Exact times, s, that still round to a click within the limits */
  readonly shortest: number;
  readonly longest: number;
}

/** Half a click, a hair more: a time that far out of the limits still rounds into them. */
const HALF_A_CLICK = 0.5 + 1e-9;

/**
 * All settings worth comparing: for each lens, f-number and number of frames the nearest place that will do, and a
 * cheaper one further back if time is dear enough. In between, after a few ms of work at most, `undefined`: whoever asks
 * can turn to something else there.
 * @throws {Problem} as for the parts of the job
 */
export function* candidates(job: FullJob): Generator<Candidate | undefined> {
  const place = placer(job);
  const {spread} = depthToCover(job.outline, job.tilt);
  const times = clicks('shutter', job.clicksPerStop, job.shutterRange);
  const slack = 2 ** (HALF_A_CLICK / job.clicksPerStop);
  const [shortest, longest] = [(times[0]?.value ?? NaN) / slack, (times.at(-1)?.value ?? NaN) * slack];
  for (const [lensIndex, lens] of job.lenses.entries()) {
    const room = standingRoom(job, lens, place);
    yield;
    if (!room) continue;
    const at = (distance: number): Place => place(lens, distance);
    const stand = {lensIndex, lens, ...room, nearest: at(room.near), at, spread, shortest, longest};
    for (const aperture of job.apertures) {
      yield* atAperture(job, stand, aperture);
      yield;
    }
  }
}

/**
 * Source: with n frames that overlap by o the depth D is held when A·e/F ≤ blur·(1 + (n − 1)(1 − o)) / picture
 * width, e = D/(u + √(u² + D²)): the blur at both ends in the finished picture, see focusForBothEnds and stackFrames.
 */
function* atAperture(job: FullJob, stand: Stand, aperture: number): Generator<Candidate | undefined> {
  const {lensIndex, lens, near, nearest, at, spread} = stand;
  const time = (distance: number): number =>
    job.metered.shutter * 2 ** longerBy(job, aperture, at(distance).magnification, lens.pupilRatio);
  // Going back, the time only gets shorter and diffraction only grows.
  const lit = firstWhere(near, stand.far, (distance) => time(distance) <= stand.longest);
  if (lit === undefined || contrast(job, lens, aperture, nearest, 0) < job.leastContrast) return;
  const blurShare = ({distance, fieldWidth}: Place): number =>
    lens.focalLength / aperture * spread / (distance + Math.sqrt(distance * distance + spread * spread)) / fieldWidth;
  let far = stand.far;
  for (let frames = 1; frames <= job.mostFrames; frames++) {
    if (frames > 1) yield;
    const reach = job.blurPixels * (1 + (frames - 1) * (1 - job.overlap)) / job.pictureWidth;
    const holds = firstWhere(near, far, (distance) => blurShare(at(distance)) <= reach * (1 + 1e-12));
    if (holds === undefined) continue;
    const clear = (distance: number): number => {
      const place = at(distance);
      return contrast(job, lens, aperture, place, worstBlur(job, blurShare(place), frames) * place.keptWidth);
    };
    const cost = (distance: number): number =>
      weigh(priceOf(job, lensIndex, aperture, at(distance), nearest, frames, time(distance)), job.rates);
    // The frontmost frame is focused nearer than the framing.
    const focused = firstWhere(Math.max(holds, lit), far, (distance) => {
      const step = spreadStep(job, blurShare(at(distance)), frames) / blurShare(at(distance));
      const nearer = spread / (distance + Math.sqrt(distance * distance + spread * spread));
      return distance * (1 + 1e-12) >= stand.closest * (1 + (frames - 1) * step * nearer);
    });
    for (const distance of focused === undefined ? [] : worthwhile(focused, far, clear, job.leastContrast, cost)) {
      if (time(distance) < stand.shortest) continue;
      yield {lensIndex, aperture, frames, place: at(distance), nearest, cost: cost(distance)};
    }
    // Nearer there is nothing, and further back fewer frames do.
    if (holds === near) return;
    far = holds * (1 - 1e-12);
  }
}

/** Contrast of the job's detail with a disc of `blur` mm on the sensor. */
function contrast(job: FullJob, lens: PlanLens, aperture: number, place: Place, blur: number): number {
  return whiteContrast(
    workingAperture(aperture, place.magnification, lens.pupilRatio), blur,
    job.pictureWidth / (2 * job.detailPixels * place.keptWidth), job.sensorWidth / job.pixelsAcross);
}

/** Largest blur in a stack, as a share of the kept width: half of what the spread frames leave of the depth. */
function worstBlur(job: FullJob, blurShare: number, frames: number): number {
  return blurShare - (frames - 1) * spreadStep(job, blurShare, frames);
}

/** From one frame of a stack to the next, where the whole depth is twice `blurShare`: half of what stackFrames takes. */
function spreadStep(job: FullJob, blurShare: number, frames: number): number {
  return Math.min(blurShare / frames, job.blurPixels / job.pictureWidth * (1 - job.overlap));
}

/**
 * The first distance at which the contrast is enough (it rises while defocus shrinks, then diffraction takes it down),
 * and one further back that costs less, if light gained there saves more time than the distance costs.
 */
function worthwhile(
  from: number, to: number, clear: (distance: number) => number, least: number, cost: (distance: number) => number,
): number[] {
  if (!(from <= to)) return [];
  const first = clear(from) >= least ? from
    : firstWhere(from, lowest(from, to, (distance) => -clear(distance)), (distance) => clear(distance) >= least);
  if (first === undefined) return [];
  const next = Math.min(to, first * 1.0005);
  if (!(cost(next) < cost(first) && clear(next) >= least)) return [first];
  return [first, lowest(first, to, (distance) => (clear(distance) < least ? Infinity : cost(distance)))];
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
