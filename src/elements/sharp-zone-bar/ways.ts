import {clicks, nearestClick} from '../../core/exposure/clicks.js';
import {afterStops, exposureStops, lightStops, type Exposure} from '../../core/exposure/stops.js';
import {stepBackForPixels, type StepBack} from '../../core/optics/distance.js';
import {zoneFit, type Framing} from '../../core/optics/fit.js';
import {bestFocus} from '../../core/optics/focus.js';
import {axialToRuler} from '../../core/optics/outline.js';
import {waysOut, type MoveBack} from '../../core/optics/ways-out.js';
import type {Shot} from '../../core/shot/shot.js';
import type {ShotFraming} from '../../core/shot/framing.js';

/** Something to change, what it is changed to, and all it costs. A button applies `changes` and nothing else. */
export interface Way {
  readonly kind: 'refocus' | 'stop-down' | 'move-back' | 'both' | 'open-up';
  readonly changes: Partial<Shot>;
  /** mm the camera moves back; 0 when it stays. */
  readonly back: number;
  /** Sensor pixels left across the picture. */
  readonly pixelsLeft: number;
  /** What the exposure gains (+) or loses (−) by clicks and limits, stops. */
  readonly rounding: number;
  /** Light won by standing further off, stops; a meter behind the lens sees it. */
  readonly light: number;
  /** mm on the ruler that stay outside in front and behind; 0 when everything is sharp. */
  readonly outside: number;
  /** Diffraction then outweighs the blur limit. */
  readonly diffracted: boolean;
}

/** The ways out, and why there are no more. */
export interface Ways {
  /** What does it, to be chosen from. */
  readonly ways: readonly Way[];
  /** Further back than the pixels allow: by how much, and what would be left. */
  readonly tooFar: MoveBack | undefined;
  /** The f-number that would do it and that the lens does not have. */
  readonly tooSmall: number | undefined;
  /** When nothing does it: what comes nearest. */
  readonly nearest: Way | undefined;
}

/** @throws {Problem} as waysOut; `aperture`, `shutter` or `iso` when its limits have no click between them */
export function findWays(shot: Shot, {framing, pixelsAcross}: ShotFraming): Ways {
  const apertures = clicks('aperture', shot.clicksPerStop, [shot.apertureWidest, shot.apertureSmallest])
    .map(({value}) => value);
  const means = {apertures, pixelsAcross, pictureWidth: shot.pictureWidth};
  const {fit, refocus, stopDown, moveBack} = waysOut(framing, means);
  const stay = {back: 0, pixelsLeft: pixelsAcross, rounding: 0, light: 0, outside: 0, diffracted: false};
  const focusBest = bestFocus(framing.outline, framing.tilt, framing.lens);
  const ways: Way[] = [];

  if (fit.end === null) {
    const wider = apertures.find((aperture) => aperture < framing.lens.aperture * (1 - 1e-9)
      && zoneFit({...framing, focus: focusBest, lens: {...framing.lens, aperture}}).end === null);
    if (wider !== undefined) ways.push({...stay, kind: 'open-up', ...paid(shot, wider, focusBest)});
    return {ways, tooFar: undefined, tooSmall: undefined, nearest: undefined};
  }
  if (refocus.way) {
    ways.push({...stay, kind: 'refocus', changes: {focus: refocus.focus}});
    return {ways, tooFar: undefined, tooSmall: undefined, nearest: undefined};
  }
  if (stopDown.way) {
    ways.push({...stay, kind: 'stop-down', ...paid(shot, stopDown.aperture, stopDown.focus),
      diffracted: stopDown.diffraction.overLimit});
  }
  const enough = moveBack.way && moveBack.pixelsEnough;
  if (enough) {
    ways.push({...stay, kind: 'move-back', changes: moved(shot, moveBack.step, moveBack.focus),
      back: moveBack.by, pixelsLeft: moveBack.pixelsLeft, light: moveBack.step.light,
      diffracted: moveBack.diffraction.overLimit});
  }
  let nearest: Way | undefined;
  if (!ways.length) {
    const together = bothTogether(shot, framing, means);
    if (together.outside === 0) ways.push(together); else nearest = together;
  }
  return {
    ways, nearest,
    tooFar: moveBack.way && !enough ? moveBack : undefined,
    tooSmall: stopDown.way ? undefined : stopDown.aperture,
  };
}

/** As far back as the pixels allow, and stopped down as little as does it from there, or as far as it goes. */
function bothTogether(
  shot: Shot, framing: Framing,
  means: {readonly apertures: readonly number[]; readonly pixelsAcross: number; readonly pictureWidth: number},
): Way {
  const {outline, tilt, lens, limit, focus} = framing;
  const spare = means.pixelsAcross > means.pictureWidth;
  const step = spare ? stepBackForPixels(lens, means.pixelsAcross, means.pictureWidth) : undefined;
  const there: Framing = {
    ...framing, lens: step?.lens ?? lens, limit: limit * (step?.pixelShare ?? 1),
    focus: bestFocus(outline, tilt, step?.lens ?? lens),
  };
  const out = waysOut(there, {...means, pixelsAcross: means.pixelsAcross * (step?.pixelShare ?? 1)});
  const smallest = Math.max(lens.aperture, ...means.apertures);
  const aperture = out.stopDown.way ? out.stopDown.aperture : out.fit.end === null ? lens.aperture : smallest;
  const fit = zoneFit({...there, lens: {...there.lens, aperture}});
  const outside = axialToRuler(Math.max(0, fit.outsideFront) + Math.max(0, fit.outsideBack), tilt);
  const payment = paid(shot, aperture, there.focus);
  return {
    kind: step ? 'both' : 'stop-down',
    changes: step ? {...payment.changes, ...moved(shot, step, there.focus)} : payment.changes,
    rounding: payment.rounding,
    back: step ? step.by - (there.focus - focus) * Math.cos(tilt * Math.PI / 180) : 0,
    pixelsLeft: means.pixelsAcross * (step?.pixelShare ?? 1),
    light: step?.light ?? 0,
    outside: fit.end === null ? 0 : outside,
    diffracted: out.stopDown.way ? out.stopDown.diffraction.overLimit : false,
  };
}

/** Another f-number at the same exposure: paid by the shutter, and past the shutter's limit by the ISO. */
export function paid(shot: Shot, aperture: number, focus: number): Pick<Way, 'changes' | 'rounding'> {
  const wanted = afterStops('shutter', shot.shutter, -lightStops('aperture', shot.aperture, aperture));
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
    rounding: exposureStops(shot, setting),
  };
}

/** The camera further off, the crop drawn in about the frame's centre so that the picture stays. */
export function moved({crop, sensorWidth}: Shot, {pixelShare, lens}: StepBack, focus: number): Partial<Shot> {
  return {
    fieldWidth: sensorWidth / lens.magnification,
    crop: {
      left: 0.5 + (crop.left - 0.5) * pixelShare, top: 0.5 + (crop.top - 0.5) * pixelShare,
      width: crop.width * pixelShare, height: crop.height * pixelShare,
    },
    focus,
  };
}
