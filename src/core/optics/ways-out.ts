import {requirePositive} from '../problem.js';
import {stepBackTo} from './distance.js';
import type {StepBack} from './distance.js';
import {zoneFit} from './fit.js';
import type {Framing, ZoneFit} from './fit.js';
import {bestFocus} from './focus.js';
import {airyDiameter, pupilToSubject, workingAperture} from './lens.js';
import type {LensSetup} from './lens.js';
import {rulerToAxial} from './outline.js';
import {limitShare} from './zone.js';

/** What there is to change with. */
export interface Means {
  /** f-numbers that can be set, in any order, the exact clicks rather than their labels */
  readonly apertures: readonly number[];
  /** Sensor pixels across the kept picture as it is framed now, > 0 */
  readonly pixelsAcross: number;
  /** Width of the finished picture, pixels, > 0 */
  readonly pictureWidth: number;
  /** As far back as the camera can stand, mm from the sensor mark to the focus plane, > 0; anywhere when left out */
  readonly room?: number;
}

/** Sharp from front to back by moving the focus alone, the camera following so that the field stays; costs nothing. */
export interface Refocus {
  readonly way: 'refocus';
  /** mm behind the base's front edge, on a flat ruler on the table */
  readonly focus: number;
  /** mm on that ruler from the focus as it is; positive = further from the camera */
  readonly by: number;
}

/** Sharp from front to back at a smaller aperture; costs time. */
export interface StopDown {
  readonly way: 'stop-down';
  /** f-number, the first click that does it */
  readonly aperture: number;
  /** Stops the shutter has to be longer for it, > 0 */
  readonly shutterStops: number;
  /** mm behind the base's front edge, on a flat ruler on the table */
  readonly focus: number;
  readonly diffraction: Diffraction;
}

/** Sharp from front to back from further away, cropped to the same picture; costs pixels. */
export interface MoveBack {
  readonly way: 'move-back';
  /** mm the camera itself moves back along its axis: the step, less what the focus plane moves the same way */
  readonly by: number;
  /** From the focus plane */
  readonly step: StepBack;
  /** mm behind the base's front edge, on a flat ruler on the table */
  readonly focus: number;
  /** The blur limit on the sensor from there, mm: the same in finished pixels */
  readonly limit: number;
  /** Sensor pixels left across the picture */
  readonly pixelsLeft: number;
  /** Whether they are as many as the finished picture has */
  readonly pixelsEnough: boolean;
  /** Whether the camera then stands within the room there is */
  readonly roomEnough: boolean;
  readonly diffraction: Diffraction;
}

/** Diffraction beside the blur limit, both on the sensor. */
export interface Diffraction {
  /** mm */
  readonly airy: number;
  /** True when the Airy disc is wider than the blur limit: in focus, too, a detail of that size is soft. */
  readonly overLimit: boolean;
}

/** A way that is none, and why. */
export interface NoWay {
  readonly way: null;
  /**
   * `already-sharp`: nothing to cure. `refocus-is-enough`: moving the focus does it at no cost. `zone-too-short`: no
   * focus point does it. `no-such-click`: no f-number in the list is large enough.
   */
  readonly reason: 'already-sharp' | 'refocus-is-enough' | 'zone-too-short' | 'no-such-click';
  /** f-number that would do, exact, whether it can be set or not; Infinity when the front reaches behind the lens */
  readonly aperture: number;
}

/** Every way out, with the focus placed best and, where it says so, with the focus left where it is. */
export interface WaysOut {
  readonly fit: ZoneFit;
  readonly refocus: Refocus | NoWay;
  readonly stopDown: StopDown | NoWay;
  readonly stopDownFocusKept: StopDown | NoWay;
  readonly moveBack: MoveBack | NoWay;
  readonly moveBackFocusKept: MoveBack | NoWay;
}

/** Rounding allowed when a click is just the f-number wanted. */
const SAME = 1 + 1e-9;

/**
 * What would make the whole figure sharp, one change at a time, and what each costs. The field framed at the focus
 * plane is the same in all of them.
 * @throws {Problem} as {@link zoneFit}; `aperture` when one in the list is not above 0, `pixels-across`, `picture-width`, `room`
 * Source: the sharp zone's closed form solved for the aperture and for the distance.
 */
export function waysOut(framing: Framing, means: Means): WaysOut {
  requirePositive('pixels-across', means.pixelsAcross);
  requirePositive('picture-width', means.pictureWidth);
  if (means.room !== undefined) requirePositive('room', means.room);
  const {outline, tilt, lens, focus, limit} = framing;
  const fit = zoneFit(framing);
  const {front, back, spread} = fit.depth;
  const share = limitShare(lens, limit);
  const away = pupilToSubject(lens);
  const [before, behind] = [fit.focusDepth - front, back - fit.focusDepth];
  // Shares of the horizon's blur, and pupil distances, that bring the zone's edges just to the figure's ends.
  const placed = spread / (away + Math.hypot(away, spread));
  const kept = Math.max(before < away ? before / (away - before) : Infinity, behind / (away + behind));
  const placedAway = spread * (1 - share * share) / (2 * share);
  const keptAway = Math.max(before * (1 + share), behind * (1 - share)) / share;
  const none = (reason: NoWay['reason'], needed: number): NoWay =>
    ({way: null, reason, aperture: lens.aperture * needed / share});
  const sharp = fit.end === null && none('already-sharp', kept);
  const cured = sharp || (placed <= share * SAME && none('refocus-is-enough', placed));
  const best = bestFocus(outline, tilt, lens);

  const down = (needed: number, at: number): StopDown | NoWay =>
    stopDown(framing, means.apertures, lens.aperture * needed / share, at) ?? none('no-such-click', needed);
  const further = (distance: number, focusKept: boolean): MoveBack => moveBack(framing, means, distance, focusKept);
  return {
    fit,
    refocus: sharp || (cured ? {way: 'refocus', focus: best, by: best - focus} : none('zone-too-short', placed)),
    stopDown: cured || down(placed, best),
    stopDownFocusKept: sharp || down(kept, focus),
    moveBack: cured || further(placedAway, false),
    moveBackFocusKept: sharp || further(keptAway, true),
  };
}

function stopDown(
  {lens, limit}: Framing, apertures: readonly number[], needed: number, focus: number,
): StopDown | undefined {
  for (const click of apertures) requirePositive('aperture', click);
  const aperture = Math.min(...apertures.filter((click) => click * SAME >= needed));
  if (aperture === Infinity) return undefined;
  return {
    way: 'stop-down', aperture, focus,
    shutterStops: 2 * Math.log2(aperture / lens.aperture),
    diffraction: diffractionOf({...lens, aperture}, limit),
  };
}

function moveBack(
  {outline, tilt, lens, focus, limit}: Framing, means: Means, distance: number, kept: boolean,
): MoveBack {
  const step = stepBackTo(lens, distance);
  const focusThere = kept ? focus : bestFocus(outline, tilt, step.lens);
  const pixelsLeft = means.pixelsAcross * step.pixelShare;
  const limitThere = limit * step.pixelShare;
  return {
    way: 'move-back', step, pixelsLeft, limit: limitThere, focus: focusThere,
    by: step.by - rulerToAxial(focusThere - focus, tilt),
    pixelsEnough: pixelsLeft * SAME >= means.pictureWidth,
    roomEnough: step.sensorToSubject <= (means.room ?? Infinity) * SAME,
    diffraction: diffractionOf(step.lens, limitThere),
  };
}

/**
 * What diffraction makes of a point.
 * @param limit - blur accepted on the sensor, mm
 * @throws {Problem} as {@link workingAperture}
 * Source: Airy disc of a round opening at the working f-number.
 */
export function diffractionOf({aperture, magnification, pupilRatio}: LensSetup, limit: number): Diffraction {
  const airy = airyDiameter(workingAperture(aperture, magnification, pupilRatio));
  return {airy, overLimit: airy > limit};
}
