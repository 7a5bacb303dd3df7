import {requirePositive} from '../problem.js';
import {stepBackForPixels, stepBackTo} from './distance.js';
import type {StepBack} from './distance.js';
import {zoneFit} from './fit.js';
import type {Framing} from './fit.js';
import {bestFocus} from './focus.js';
import {magnificationFromDistance, pupilToSubject} from './lens.js';
import type {LensSetup} from './lens.js';
import {axialToRuler, rulerToAxial} from './outline.js';
import {diffractionOf, waysOut} from './ways-out.js';
import type {Diffraction, Means} from './ways-out.js';

/** Distance and aperture together: what is left when neither does it alone. */
export interface BackAndDown {
  /** From the focus plane; `null` where there are no pixels or no room to spare, and the camera stays */
  readonly step: StepBack | null;
  /** mm the camera itself moves back along its axis; 0 when it stays */
  readonly by: number;
  /** f-number, the first click that does it from there, or the smallest opening */
  readonly aperture: number;
  /** mm behind the base's front edge, on a flat ruler on the table */
  readonly focus: number;
  /** Sensor pixels left across the picture */
  readonly pixelsLeft: number;
  /** mm on that ruler that stay outside in front and behind together; 0 when everything is sharp */
  readonly outside: number;
  readonly diffraction: Diffraction;
}

/**
 * As far back as pixels and room allow, and from there stopped down as little as does it, or as far as the clicks go.
 * The field framed at the focus plane stays.
 * @throws {Problem} as {@link waysOut}
 * Source: {@link waysOut}, asked again from the furthest place.
 */
export function backAndDown(framing: Framing, means: Means): BackAndDown {
  const {outline, tilt, lens, limit, focus} = framing;
  const step = furthestStep(lens, means);
  const share = step?.pixelShare ?? 1;
  const stands = step?.lens ?? lens;
  const there: Framing = {...framing, lens: stands, limit: limit * share, focus: bestFocus(outline, tilt, stands)};
  const {fit: wideOpen, stopDown} = waysOut(there, {...means, pixelsAcross: means.pixelsAcross * share});
  const aperture = stopDown.way ? stopDown.aperture
    : wideOpen.end === null ? lens.aperture : Math.max(lens.aperture, ...means.apertures);
  const set: LensSetup = {...stands, aperture};
  const fit = zoneFit({...there, lens: set});
  return {
    step, aperture, focus: there.focus,
    by: step ? step.by - rulerToAxial(there.focus - focus, tilt) : 0,
    pixelsLeft: means.pixelsAcross * share,
    outside: fit.end === null ? 0 : axialToRuler(Math.max(0, fit.outsideFront) + Math.max(0, fit.outsideBack), tilt),
    diffraction: diffractionOf(set, there.limit),
  };
}

/** As far back as leaves pixels enough and stays within the room. */
function furthestStep(lens: LensSetup, {pixelsAcross, pictureWidth, room = Infinity}: Means): StepBack | null {
  if (!(pixelsAcross > pictureWidth)) return null;
  const step = stepBackForPixels(lens, pixelsAcross, pictureWidth);
  if (step.sensorToSubject <= room) return step;
  // Nearer than four focal lengths nothing can be focused: no room at all.
  if (room < 4 * lens.focalLength) return null;
  const magnification = magnificationFromDistance(room, lens.focalLength);
  return magnification < lens.magnification ? stepBackTo(lens, pupilToSubject({...lens, magnification})) : null;
}

/** A wider aperture at which everything is still sharp; wins time. */
export interface OpenUp {
  /** f-number, the widest click that does */
  readonly aperture: number;
  /** mm behind the base's front edge, on a flat ruler on the table */
  readonly focus: number;
}

/**
 * The widest aperture that still holds the whole outline, the focus placed best.
 * @param apertures - f-numbers that can be set, in any order
 * @returns `undefined` when none is wider than the one that is set and still does it
 * @throws {Problem} as {@link zoneFit}; `aperture` when one in the list is not above 0
 * Source: {@link zoneFit} from the widest click on.
 */
export function openUp(framing: Framing, apertures: readonly number[]): OpenUp | undefined {
  for (const click of apertures) requirePositive('aperture', click);
  const {outline, tilt, lens} = framing;
  const focus = bestFocus(outline, tilt, lens);
  const aperture = [...apertures].sort((one, other) => one - other).find((click) => click < lens.aperture * (1 - 1e-9)
    && zoneFit({...framing, focus, lens: {...lens, aperture: click}}).end === null);
  return aperture === undefined ? undefined : {aperture, focus};
}
