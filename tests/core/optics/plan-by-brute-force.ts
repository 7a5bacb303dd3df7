import {clicks} from '../../../src/core/exposure/clicks.js';
import {whiteContrast} from '../../../src/core/optics/contrast.js';
import {PLAN_RATES} from '../../../src/core/optics/plan-job.js';
import type {PlanJob, PlanLens} from '../../../src/core/optics/plan-job.js';

/*
 * A second road to a plan: a thin lens with its stop in it, the picture found by following rays to the sensor, and every
 * setting simply tried. Shares no formula with the plan; contrast alone comes from the core, checked on its own.
 */

/** A camera on its tripod: where the focus plane is, how far the sensor is from it, and at which aperture. */
export interface Trial {
  readonly lensIndex: number;
  readonly aperture: number;
  /** mm from the sensor mark to the focus plane */
  readonly cameraDistance: number;
  /** Axial depth of the focus plane behind the base's front edge, mm */
  readonly focusDepth: number;
}

/** Every corner of the outline drawn out to the figure's width: depth along the axis, and up across it, mm. */
export function corners(job: PlanJob): {depth: number; up: number}[] {
  const {baseDepth, overhangFront = 0, overhangFrontHeight = 0, overhangBack = 0, overhangBackHeight = 0, height = 0}
    = job.outline;
  const slope = job.tilt * Math.PI / 180;
  return [
    [0, 0], [baseDepth, 0], [-overhangFront, overhangFrontHeight], [baseDepth + overhangBack, overhangBackHeight],
    [baseDepth / 2, height],
  ].map(([y = 0, z = 0]) => ({
    depth: y * Math.cos(slope) - z * Math.sin(slope), up: y * Math.sin(slope) + z * Math.cos(slope),
  }));
}

/** Distances lens to focus plane and lens to sensor that add up to the camera's distance, the lens nearer to the sensor. */
export function conjugates(focalLength: number, distance: number): {subject: number; image: number} {
  const subject = (distance + Math.sqrt(distance * distance - 4 * distance * focalLength)) / 2;
  return {subject, image: distance - subject};
}

/** Picture on the sensor that just holds the figure and its margin, mm across; NaN when a corner is behind the lens. */
export function pictureOnSensor(job: PlanJob, lens: PlanLens, cameraDistance: number, focusDepth: number): number {
  const {subject, image} = conjugates(lens.focalLength, cameraDistance);
  const points = corners(job).map(({depth, up}) => ({away: subject + depth - focusDepth, up}));
  const nearest = Math.min(...points.map(({away}) => away));
  if (!(nearest > 0)) return NaN;
  const across = job.figureWidth * image / nearest;
  // Aim the camera up and down until the figure needs least height, by closing in from both sides.
  const height = (aim: number): number => 2 * Math.max(...points.map(({away, up}) => Math.abs(up - aim) * image / away));
  let [low, high] = [Math.min(...points.map(({up}) => up)), Math.max(...points.map(({up}) => up))];
  for (let round = 0; round < 50; round++) {
    const third = (high - low) / 3;
    if (height(low + third) < height(high - third)) high -= third; else low += third;
  }
  const ratio = job.pictureHeight / job.pictureWidth;
  return Math.max(across / (1 - 2 * job.margin), height(low) / (ratio - 2 * job.margin));
}

/** Disc on the sensor of a point `away` mm from the lens: cone of light from the stop, cut by the sensor. */
function disc(focalLength: number, aperture: number, image: number, away: number): number {
  const focused = 1 / (1 / focalLength - 1 / away);
  return (focalLength / aperture) * Math.abs(focused - image) / focused;
}

/** Exact shutter time, s: the light that reaches the sensor goes with the square of stop / image distance. */
export function exposureTime(job: PlanJob, {lensIndex, aperture, cameraDistance}: Trial): number {
  const {focalLength} = job.lenses[lensIndex] as PlanLens;
  const {image} = conjugates(focalLength, cameraDistance);
  const now = (image * aperture / focalLength) ** 2;
  const {meteredMagnification: metered, metered: {shutter}} = job;
  const before = job.metered.aperture ** 2 * (metered === undefined ? (image / focalLength) ** 2 : (1 + metered) ** 2);
  return shutter * now / before;
}

/** Nearest a lens may stand with the focus for both ends, by halving; the room does not count. */
export function nearestPlace(job: PlanJob, lensIndex: number): TriedPlace {
  const lens = job.lenses[lensIndex] as PlanLens;
  const widest = Math.min(job.sensorWidth, job.sensorHeight * job.pictureWidth / job.pictureHeight);
  let [low, high] = [Math.max(lens.closest ?? 0, 4 * lens.focalLength), 1e5];
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (pictureOnSensor(job, lens, middle, evenFocus(job, lens, middle)) <= widest) high = middle; else low = middle;
  }
  const anyPixels = {...job, room: Infinity, pixelsAcross: Infinity};
  return tryPlace(anyPixels, lensIndex, high, evenFocus(job, lens, high), 1e-9) as TriedPlace;
}

/** Focus depth at which both ends are equally blurred, by halving. */
export function evenFocus(job: PlanJob, {focalLength}: PlanLens, cameraDistance: number): number {
  const depths = corners(job).map(({depth}) => depth);
  const [front, back] = [Math.min(...depths), Math.max(...depths)];
  const {subject, image} = conjugates(focalLength, cameraDistance);
  let [low, high] = [front, back];
  for (let round = 0; round < 60; round++) {
    const focus = (low + high) / 2;
    const ahead = subject + front - focus;
    const behind = disc(focalLength, 8, image, subject + back - focus);
    if (ahead <= focalLength || disc(focalLength, 8, image, ahead) > behind) high = focus; else low = focus;
  }
  return low;
}

/** A place to try from: all of a trial but its aperture, and what is on the sensor there. */
export interface TriedPlace extends Omit<Trial, 'aperture'> {
  readonly subject: number;
  readonly image: number;
  /** Width of the finished picture on the sensor, mm */
  readonly kept: number;
}

/** A place worked out, or why nothing can be taken from it. `slack` is a share by which limits may be passed. */
export function tryPlace(
  job: PlanJob, lensIndex: number, cameraDistance: number, focusDepth: number, slack = 0,
): TriedPlace | string {
  const lens = job.lenses[lensIndex] as PlanLens;
  const more = 1 + slack;
  if (cameraDistance > job.room * more) return 'room';
  if (cameraDistance * more < Math.max(lens.closest ?? 0, 4 * lens.focalLength)) return 'too near';
  const from = Math.max(cameraDistance, 4 * lens.focalLength);
  const kept = pictureOnSensor(job, lens, from, focusDepth);
  const widest = Math.min(job.sensorWidth, job.sensorHeight * job.pictureWidth / job.pictureHeight);
  if (!(kept <= widest * more)) return 'does not fit the frame';
  if (kept / job.sensorWidth * job.pixelsAcross * more < job.pictureWidth) return 'pixels';
  return {lensIndex, cameraDistance: from, focusDepth, kept, ...conjugates(lens.focalLength, from)};
}

const known = new WeakMap<PlanJob, number[]>();

function timesOf(job: PlanJob): number[] {
  const times = known.get(job) ?? clicks('shutter', job.clicksPerStop, job.shutterRange).map(({value}) => value);
  known.set(job, times);
  return times;
}

/** Why an aperture does not do from a place in one frame, `null` when it does. */
export function fault(job: PlanJob, place: TriedPlace, aperture: number, slack = 0): string | null {
  const {focalLength} = job.lenses[place.lensIndex] as PlanLens;
  const more = 1 + slack;
  const times = timesOf(job);
  const time = exposureTime(job, {...place, aperture});
  const half = 2 ** (0.5 / job.clicksPerStop) * more;
  if (time > (times.at(-1) ?? 0) * half || time * half < (times[0] ?? Infinity)) return 'shutter';
  const blur = Math.max(...corners(job).map(({depth}) =>
    disc(focalLength, aperture, place.image, place.subject + depth - place.focusDepth)));
  const pixel = place.kept / job.pictureWidth;
  if (blur > job.blurPixels * pixel * more) return 'blur';
  const contrast = whiteContrast(
    aperture * place.image / focalLength, blur, 1 / (2 * (job.detailPixels ?? job.blurPixels) * pixel),
    job.sensorWidth / job.pixelsAcross);
  return contrast * more < (job.leastContrast ?? 0.3) ? 'contrast' : null;
}

/**
 * Frames it takes from where the trial stands, laid one after the other from the front: each is focused so that its
 * zone begins where the overlap wants it, and the zone's end is searched for.
 */
export function framesNeeded(
  job: PlanJob, {lensIndex, focusDepth, subject, image, kept}: TriedPlace, aperture: number,
): number {
  const {focalLength} = job.lenses[lensIndex] as PlanLens;
  const limit = job.blurPixels * kept / job.pictureWidth;
  // Frames are aligned by what they show, and everything is drawn in proportion to the image distance.
  const sharp = (focus: number, away: number): boolean => {
    const there = 1 / (1 / focalLength - 1 / focus);
    return disc(focalLength, aperture, there, away) / there <= limit / image;
  };
  const last = (inside: number, outside: number, test: (at: number) => boolean): number => {
    if (test(outside)) return outside;
    for (let round = 0; round < 60; round++) {
      const middle = (inside + outside) / 2;
      if (test(middle)) inside = middle; else outside = middle;
    }
    return inside;
  };
  const depths = corners(job).map(({depth}) => subject + depth - focusDepth);
  const back = Math.max(...depths) * (1 - 1e-9);
  let start = Math.min(...depths);
  for (let frames = 1; frames <= 60; frames++) {
    const from = start;
    const focus = last(from, 20 * back, (at) => sharp(at, from));
    const end = last(focus, 1e6, (at) => sharp(focus, at));
    if (end >= back) return frames;
    start = 1 / (1 / end + (job.overlap ?? 0.25) * (1 / from - 1 / end));
  }
  return Infinity;
}

/** What a setting costs, by the rates everybody gets who sets none; `near` is the nearest place for that lens. */
export function costOf(job: PlanJob, place: TriedPlace, near: TriedPlace, aperture: number, frames = 1): number {
  const moved = place.cameraDistance - place.focusDepth - (near.cameraDistance - near.focusDepth);
  return PLAN_RATES.clicks * job.clicksPerStop * Math.abs(2 * Math.log2(aperture / job.metered.aperture))
    + PLAN_RATES.seconds * (frames * exposureTime(job, {...place, aperture}) + (frames - 1) * (job.settle ?? 3))
    + PLAN_RATES.back * moved + PLAN_RATES.pixels * (near.kept - place.kept) / job.sensorWidth * job.pixelsAcross
    + PLAN_RATES.frames * (frames - 1) + (place.lensIndex ? PLAN_RATES.otherLens : 0);
}
