import {clicks, nearestClick} from '../exposure/clicks.js';
import {afterStops, exposureStops, lightStops, type Exposure} from '../exposure/stops.js';
import type {StepBack} from '../optics/distance.js';
import {backAndDown, openUp} from '../optics/ways-combined.js';
import {waysOut, type Means, type MoveBack} from '../optics/ways-out.js';
import type {ShotFraming} from './framing.js';
import type {Shot} from './shot.js';

/** Something to change in a shot, what it is changed to, and all it costs. Setting `changes` does it, and nothing else. */
export interface Way {
  readonly kind: 'refocus' | 'stop-down' | 'move-back' | 'both' | 'open-up';
  readonly changes: Partial<Shot>;
  /** mm by which the sensor mark is further from the focus plane then; 0 when the camera stays */
  readonly back: number;
  /** Sensor pixels left across the picture */
  readonly pixelsLeft: number;
  /** What the exposure gains (+) or loses (−) by clicks and limits, stops */
  readonly rounding: number;
  /** Light won by standing further off, stops; the shutter takes it back */
  readonly light: number;
  /** mm on the ruler that stay outside in front and behind; 0 when everything is sharp */
  readonly outside: number;
}

/** The ways out of a shot, and why there are no more. */
export interface Ways {
  /** What does it, to be chosen from */
  readonly ways: readonly Way[];
  /** Further back than the pixels or the room allow: by how much, and what would be left */
  readonly tooFar: MoveBack | undefined;
  /** The f-number that would do it and that the lens does not have */
  readonly tooSmall: number | undefined;
  /** When nothing does it: what comes nearest */
  readonly nearest: Way | undefined;
}

/**
 * What would bring all of the figure into the sharp zone, from the shot as it is; when it is there already, what could be
 * opened up. The picture and its brightness stay; shutter and then ISO pay for an aperture.
 * @param framed - the shot's own, from `framingOf`
 * @throws {Problem} as `waysOut`; `aperture`, `shutter` or `iso` when its limits have no click between them
 * Source: `waysOut`, `backAndDown` and `openUp` in terms of the shot.
 */
export function waysOfShot(shot: Shot, {framing, pixelsAcross}: ShotFraming): Ways {
  const apertures = clicks('aperture', shot.clicksPerStop, [shot.apertureWidest, shot.apertureSmallest]).map(({value}) => value);
  const means: Means = {apertures, pixelsAcross, pictureWidth: shot.pictureWidth, room: shot.room};
  const {fit, refocus, stopDown, moveBack} = waysOut(framing, means);
  const stay = {back: 0, pixelsLeft: pixelsAcross, rounding: 0, light: 0, outside: 0};
  const only = (way: Way | undefined): Ways => ({ways: way ? [way] : [], tooFar: undefined, tooSmall: undefined, nearest: undefined});

  if (fit.end === null) {
    const open = openUp(framing, apertures);
    return only(open && {...stay, kind: 'open-up', ...paidByShutter(shot, open.aperture, open.focus)});
  }
  if (refocus.way) return only({...stay, kind: 'refocus', changes: {focus: refocus.focus}});

  const ways: Way[] = [];
  if (stopDown.way) {
    ways.push({...stay, kind: 'stop-down', ...paidByShutter(shot, stopDown.aperture, stopDown.focus)});
  }
  const enough = moveBack.way && moveBack.pixelsEnough && moveBack.roomEnough;
  if (enough) {
    ways.push({
      ...stay, kind: 'move-back', ...movedBack(shot, moveBack.step, moveBack.focus), back: moveBack.step.by,
      pixelsLeft: moveBack.pixelsLeft, light: moveBack.step.light,
    });
  }
  const together = ways.length ? undefined : bothOfShot(shot, framing, means);
  return {
    ways: together?.outside === 0 ? [together] : ways,
    nearest: together?.outside === 0 ? undefined : together,
    tooFar: moveBack.way && !enough ? moveBack : undefined,
    tooSmall: stopDown.way ? undefined : stopDown.aperture,
  };
}

function bothOfShot(shot: Shot, framing: ShotFraming['framing'], means: Means): Way {
  const {step, aperture, focus, pixelsLeft, outside} = backAndDown(framing, means);
  return {
    kind: step ? 'both' : 'stop-down',
    ...step ? movedBack(shot, step, focus, aperture) : paidByShutter(shot, aperture, focus),
    pixelsLeft, outside,
    back: step?.by ?? 0,
    light: step?.light ?? 0,
  };
}

/**
 * Another f-number at the same exposure: paid by the shutter, and past the shutter's limit by the ISO.
 * @param aperture - f-number, > 0
 * @param focus - mm behind the base's front edge
 * @param light - stops that are won elsewhere and taken back by the shutter too
 * @returns what to set, and what the exposure gains (+) or loses (−) by clicks and limits, stops
 * @throws {Problem} `aperture`, `shutter` or `iso` when its limits have no click between them
 * Source: reciprocity of aperture, time and ISO.
 */
export function paidByShutter(shot: Shot, aperture: number, focus: number, light = 0): Pick<Way, 'changes' | 'rounding'> {
  const wanted = afterStops('shutter', shot.shutter, -lightStops('aperture', shot.aperture, aperture) - light);
  const shutter = nearestClick('shutter', wanted, shot.clicksPerStop, [shot.shutterFastest, shot.shutterSlowest]);
  // Half a click is rounding; more is the end of the dial.
  const past = Math.abs(shutter.rounding) > 0.51 / shot.clicksPerStop;
  const iso = past
    ? nearestClick('iso', afterStops('iso', shot.iso, -shutter.rounding), shot.clicksPerStop,
      [Math.min(shot.iso, shot.isoLowest), Math.max(shot.iso, shot.isoHighest)]).value
    : shot.iso;
  const setting: Exposure = {aperture, shutter: shutter.value, iso};
  return {
    changes: {aperture, shutter: shutter.value, ...(past && {iso}), focus},
    rounding: exposureStops(shot, setting) + light,
  };
}

/**
 * The camera further off at the same exposure, the crop drawn in about the frame's centre so that the picture stays. What the
 * light was metered at is stated along: it was metered from where the camera stood.
 * @param focus - mm behind the base's front edge
 * @param aperture - f-number from there
 * @returns what to set, and what the exposure gains (+) or loses (−) by clicks and limits, stops
 * @throws {Problem} as `paidByShutter`
 * Source: definitions; the kept width on the sensor goes with the magnification.
 */
export function movedBack(shot: Shot, {pixelShare, lens, light}: StepBack, focus: number, aperture = shot.aperture): Pick<Way, 'changes' | 'rounding'> {
  const {crop, sensorWidth, meteredAperture, meteredShutter, meteredIso, meteredMagnification} = shot;
  const {changes, rounding} = paidByShutter(shot, aperture, focus, light);
  return {
    changes: {
      ...changes,
      meteredAperture, meteredShutter, meteredIso, meteredMagnification,
      fieldWidth: sensorWidth / lens.magnification,
      crop: {
        left: 0.5 + (crop.left - 0.5) * pixelShare, top: 0.5 + (crop.top - 0.5) * pixelShare,
        width: crop.width * pixelShare, height: crop.height * pixelShare,
      },
    },
    rounding,
  };
}
