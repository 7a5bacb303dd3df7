import {clicks} from '../exposure/clicks.js';
import {afterStops} from '../exposure/stops.js';
import type {GiveUp} from '../optics/give-up.js';
import type {PlanJob, PlanLens} from '../optics/plan-job.js';
import type {PlanWay} from '../optics/plan-way.js';
import {outlineOf} from './framing.js';
import type {Shot} from './shot.js';

/** What a shot wishes for, as the plan takes it. @throws {Problem} `aperture` when its limits are no f-numbers */
export function planJobOf(shot: Shot): PlanJob {
  return {
    outline: outlineOf(shot), tilt: shot.tilt, figureWidth: shot.figureWidth,
    pictureWidth: shot.pictureWidth, pictureHeight: shot.pictureHeight, margin: shot.margin,
    lenses: shot.focalLengths.map((focalLength, index): PlanLens => {
      const closest = shot.closestFocus[index];
      // Nearer than four focal lengths is larger than life, where a plan does not go.
      return {focalLength, pupilRatio: shot.pupilRatio, ...(closest && {closest: Math.max(closest, 4 * focalLength)})};
    }),
    sensorWidth: shot.sensorWidth, sensorHeight: shot.sensorHeight, pixelsAcross: shot.frameWidth,
    apertures: clicks('aperture', shot.clicksPerStop, [shot.apertureWidest, shot.apertureSmallest]).map(({value}) => value),
    clicksPerStop: shot.clicksPerStop, shutterRange: [shot.shutterFastest, shot.shutterSlowest], room: shot.room,
    metered: {
      aperture: shot.meteredAperture, iso: shot.meteredIso,
      shutter: afterStops('shutter', shot.meteredShutter, shot.correction),
    },
    meteredMagnification: shot.meteredMagnification, blurPixels: shot.blurLimit, leastContrast: shot.leastContrast,
    mostFrames: shot.mostFrames,
  };
}

/** What a way sets on the bench. What it was planned from is stated along with it, so that setting it changes no plan. */
export function wayChanges(way: PlanWay, shot: Shot): Partial<Shot> {
  const {pictureWidth, pictureHeight, sensorWidth, sensorHeight} = shot;
  const width = Math.min(1, way.keptShare);
  const height = Math.min(1, way.keptShare * sensorWidth * pictureHeight / (pictureWidth * sensorHeight));
  return {
    aperture: way.lens.aperture, shutter: way.shutter.value, iso: way.iso, focalLength: way.lens.focalLength,
    fieldWidth: way.fieldWidth, focus: way.focus,
    crop: {left: (1 - width) / 2, top: (1 - height) / 2, width, height},
    meteredAperture: shot.meteredAperture, meteredShutter: shot.meteredShutter, meteredIso: shot.meteredIso,
    meteredMagnification: shot.meteredMagnification, focalLengths: shot.focalLengths, pictureHeight,
  };
}

/** The frames that a way blends, laid beside the shot that it set. */
export interface PlannedFrames {
  /** mm behind the base's front edge, front to back; two or more */
  readonly marks: readonly number[];
  /** As it stood then: frames of another shot are none of its own */
  readonly shot: Shot;
}

/** Whether the bench stands as a way says. */
export function wayIsSet(way: PlanWay, shot: Shot): boolean {
  const near = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-6 * Math.abs(other) + 1e-9;
  return near(shot.aperture, way.lens.aperture) && near(shot.shutter, way.shutter.value) && near(shot.focus, way.focus)
    && near(shot.focalLength, way.lens.focalLength) && near(shot.fieldWidth, way.fieldWidth);
}

/** The wish given up as far as it has to be, rounded to what a person would write, on the easy side. */
export function wishChanges({wish, to}: GiveUp, shot: Shot): Partial<Shot> {
  switch (wish) {
    case 'frames': return {mostFrames: Math.ceil(to)};
    case 'picture-width': {
      const pictureWidth = Math.max(1, Math.floor(to));
      return {pictureWidth, pictureHeight: Math.max(1, Math.round(shot.pictureHeight * pictureWidth / shot.pictureWidth))};
    }
    case 'blur-limit': return {blurLimit: Math.ceil(to * 20) / 20};
    case 'contrast': return {leastContrast: Math.max(0.01, Math.floor(to * 100) / 100)};
    case 'shutter': return {shutterSlowest: clicks('shutter', shot.clicksPerStop, [to, 2 * to])[0]?.value ?? to};
    case 'room': return {room: Math.ceil(to / 5) * 5};
    case 'margin': return {margin: Math.floor(to * 200) / 200};
  }
}
