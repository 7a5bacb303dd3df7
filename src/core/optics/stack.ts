import {Problem, requireNotNegative, requirePositive, requireWithin} from '../problem.js';
import {worstContrast} from './best-aperture.js';
import type {Ends} from './best-aperture.js';
import type {Detail} from './contrast.js';
import {focusForBothEnds} from './focus.js';
import {entrancePupil, magnificationFromPupil, pupilToSubject} from './lens.js';
import type {LensSetup} from './lens.js';
import {axialToRuler} from './outline.js';

/** What a stack has to hold. */
export interface StackJob {
  /**
   * As framed with the focus where both ends are equally blurred. The camera stays there; for each frame the focus ring
   * turns, the entrance pupil keeps its place, and the frames are scaled to one another afterwards.
   */
  readonly lens: LensSetup;
  /** Axial depths of the foremost and the rearmost point, mm, 0 at the base's front edge on the table */
  readonly ends: Ends;
  /** Degrees the camera looks down */
  readonly tilt: number;
  /** Blur accepted on the sensor in that framing, mm, > 0 */
  readonly limit: number;
  /** Share of a sharp zone that the next one covers again, 0 up to 0.9; a quarter when left out */
  readonly overlap?: number | undefined;
}

/** One frame of a stack. Depths are axial, mm, 0 at the base's front edge on the table. */
export interface StackFrame {
  /** mm behind the base's front edge where a flat ruler on the table is sharpest */
  readonly focus: number;
  readonly focusDepth: number;
  /** Where its sharp zone begins and ends; `to` is Infinity when it never does */
  readonly from: number;
  readonly to: number;
  /** The lens as it stands for this frame: turning the ring changes the magnification a little */
  readonly lens: LensSetup;
  /** Blur limit in this frame, mm on the sensor: the same size in the finished picture */
  readonly limit: number;
}

/** Frames from front to back. */
export interface Stack {
  readonly frames: readonly StackFrame[];
  /** Share of a zone that the next one covers again, at least what was asked for; 0 for a single frame */
  readonly overlap: number;
}

/** More frames than anybody takes: a mistyped limit, or an aperture that has no place in a stack. */
const MOST_FRAMES = 500;

/**
 * The fewest frames whose sharp zones take in the whole depth, each overlapping the next by the share asked for.
 *
 * All zones of a stack are equally long on the scale of 1/distance, so shares of overlap are counted on it. What is left
 * over once the number of frames is rounded up goes to overlap first, evenly, then past the ends.
 * @throws {Problem} as for a lens; `depth`, `tilt`, `blur-limit`, `overlap`; `frames` when it would take more than 500;
 * `camera-distance` when the lens, as near as it is to the foremost part, could not be focused there at all
 * Source: b = m·u_e·A·|1/u_e − 1/d| for a point at d from the pupil, with m·u_e·(size in the finished picture) alike
 * for all frames; the thin-lens blur of blurDisc written in 1/distance.
 */
export function stackFrames({lens, ends, tilt, limit, overlap = 0.25}: StackJob): Stack {
  requirePositive('blur-limit', limit);
  requireWithin('overlap', overlap, 0, 0.9);
  const distance = pupilToSubject(lens);
  const pupil = focusForBothEnds(lens, ends) - distance;
  const nearest = 1 / (ends.front - pupil);
  const furthest = 1 / (ends.back - pupil);
  const zone = 2 * limit / (lens.magnification * distance * entrancePupil(lens.focalLength, lens.aperture));
  const whole = nearest - furthest;
  // A depth that is just a zone long is one frame, whatever the last digit says.
  const count = Math.max(1, 1 + Math.ceil((whole / zone - 1) / (1 - overlap) - 1e-9));
  if (!(count <= MOST_FRAMES)) {
    throw new Problem('frames', count, `at most ${MOST_FRAMES}: a smaller opening or more blur`);
  }
  const step = Math.min(whole / count, zone * (1 - overlap));
  const middle = (nearest + furthest) / 2;
  return {
    overlap: count > 1 ? 1 - step / zone : 0,
    frames: Array.from({length: count}, (_, at) => {
      const centre = middle + step * ((count - 1) / 2 - at);
      const {focalLength, pupilRatio} = lens;
      const there = {...lens, magnification: magnificationFromPupil(1 / centre, focalLength, pupilRatio)};
      const end = centre - zone / 2;
      return {
        focus: axialToRuler(pupil + 1 / centre, tilt), focusDepth: pupil + 1 / centre,
        from: pupil + 1 / (centre + zone / 2), to: end > 0 ? pupil + 1 / end : Infinity,
        lens: there, limit: limit * scaleOf(there) / scaleOf(lens),
      };
    }),
  };
}

/** Size of the whole scene on the sensor, as an image distance, mm: what frames differ in before they are aligned. */
function scaleOf(lens: LensSetup): number {
  return lens.magnification * pupilToSubject(lens);
}

/**
 * Worst contrast in the finished stack, every depth taken from the frame that shows it best.
 * @param detail - on the sensor it is meant in the framing of the job
 * @param pixel - width in mm over which a pixel of the sensor gathers light; 0 (when left out) = optics alone
 * @throws {Problem} as {@link stackFrames} and worstContrast
 * Source: worstContrast of each frame over its own part, which ends where the blur of two neighbours is equal: at the
 * harmonic mean of their distances from the pupil.
 */
export function stackContrast(job: StackJob, detail: Detail, pixel = 0): number {
  const {frames} = stackFrames(job);
  const pupil = focusForBothEnds(job.lens, job.ends) - pupilToSubject(job.lens);
  const border = (at: number): number => {
    const [one, other] = [frames[at], frames[at + 1]];
    if (!other) return job.ends.back;
    return one ? pupil + 2 / (1 / (one.focusDepth - pupil) + 1 / (other.focusDepth - pupil)) : job.ends.front;
  };
  return Math.min(...frames.map(({lens, focusDepth}, at) => {
    const own = {front: border(at - 1) - focusDepth, back: border(at) - focusDepth};
    const larger = scaleOf(lens) / scaleOf(job.lens);
    return worstContrast(
      lens, own, 'onSensor' in detail ? {onSensor: detail.onSensor * larger} : detail, pixel).worst;
  }));
}

/** A stack at one f-number, and what it takes. */
export interface StackChoice {
  readonly aperture: number;
  readonly frames: number;
  /** Worst contrast in the finished stack, see {@link stackContrast} */
  readonly worst: number;
  /** For all frames, exposures and settling */
  readonly seconds: number;
}

/** Time to turn the ring and wait until nothing sways, s, where nobody says otherwise. Common practice, no source. */
export const SETTLE_SECONDS = 3;

/** What stacks are weighed by. */
export interface StackTrade {
  readonly detail: Detail;
  /** f-numbers that can be set, in any order, exact clicks rather than their labels */
  readonly apertures: readonly number[];
  /** Shutter time in seconds that goes with an f-number */
  readonly shutterFor: (aperture: number) => number;
  /** Seconds between two frames: turning the ring and waiting until nothing sways any more */
  readonly settle: number;
  /** Contrast one more frame has to bring to be worth taking; 0.01 when left out */
  readonly worth?: number | undefined;
  readonly pixel?: number | undefined;
}

/**
 * The f-number at which a stack is best: a wider one has less diffraction in every frame and needs more frames.
 * @param job - its lens's own f-number does not count
 * @returns the choice with the highest worst contrast after `worth` is taken off for every frame (of equals the
 * fewer frames, then the smaller opening), and all in the order given, without those that would take too many frames
 * @throws {Problem} as {@link stackContrast}; `aperture` when the list is empty, `settle`, `shutter`, `worth`;
 * `frames` when every f-number would take too many
 * Source: {@link stackFrames} and {@link stackContrast} for each; the rate of exchange is the person's.
 */
export function bestStack(
  job: StackJob, {detail, apertures, shutterFor, settle, worth = 0.01, pixel = 0}: StackTrade,
): {readonly best: StackChoice; readonly choices: readonly StackChoice[]} {
  requireNotNegative('settle', settle);
  requireNotNegative('worth', worth);
  if (!apertures.length) throw new Problem('aperture', apertures, 'at least one f-number that can be set');
  let tooMany: Problem | undefined;
  const choices = apertures.flatMap((aperture) => {
    const set = {...job, lens: {...job.lens, aperture}};
    const shutter = shutterFor(aperture);
    requirePositive('shutter', shutter);
    try {
      const frames = stackFrames(set).frames.length;
      const worst = stackContrast(set, detail, pixel);
      return [{aperture, frames, worst, seconds: frames * shutter + (frames - 1) * settle}];
    } catch (error) {
      if (!(error instanceof Problem && error.parameter === 'frames')) throw error;
      tooMany = error;
      return [];
    }
  });
  const [first, ...others] = choices;
  if (!first) throw tooMany as Problem;
  const merit = ({worst, frames}: StackChoice): number => worst - worth * frames;
  const best = others.reduce((so, next) => {
    const gain = merit(next) - merit(so) || so.frames - next.frames || next.aperture - so.aperture;
    return gain > 0 ? next : so;
  }, first);
  return {best, choices};
}
