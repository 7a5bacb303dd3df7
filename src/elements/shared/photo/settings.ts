import {exactFromNominal} from '../../../core/exposure/clicks.js';
import {SETTINGS, exposureStops, type Exposure} from '../../../core/exposure/stops.js';
import {trade, type Trade} from '../../../core/exposure/trade.js';
import {Problem} from '../../../core/problem.js';
import type {Shot} from '../../../core/shot/shot.js';
import type {PhotoSettings} from '../../../photo/settings.js';

/** What is needed of a photo to describe the shot it came from. */
export interface TakenPhoto {
  readonly width: number;
  readonly height: number;
  readonly settings: PhotoSettings;
}

/** From this Exif orientation on the picture stands on its side in the file. */
const FIRST_TURNED = 5;

/**
 * How the photo was exposed: what the file says, printed numbers taken for their clicks, and what the shot says where
 * the file is silent.
 */
export function exposureOf({settings}: TakenPhoto, shot: Shot): Exposure {
  const said = (name: keyof Exposure, otherwise: number): number => {
    const value = settings[name];
    return value === undefined ? otherwise : exactFromNominal(name, value);
  };
  return {
    aperture: said('aperture', shot.meteredAperture),
    shutter: said('shutter', shot.meteredShutter),
    iso: said('iso', shot.meteredIso),
  };
}

/** Whether the file says anything of the exposure. */
export function saysExposure({settings}: TakenPhoto): boolean {
  return SETTINGS.some((name) => settings[name] !== undefined);
}

/**
 * What a photo tells of the shot: its exposure as the one to start from, and the camera as far as the file knows it.
 * @param shot - what holds where the file is silent
 */
export function shotFrom(photo: TakenPhoto, shot: Shot): Partial<Shot> {
  const {width, height, settings: {focalLength, sensorWidth, orientation = 1}} = photo;
  const {aperture, shutter, iso} = saysExposure(photo) ? exposureOf(photo, shot) : shot;
  // The file measures the sensor as it recorded; the frame is as wide as the picture stands.
  const across = sensorWidth && sensorWidth.mm * (orientation < FIRST_TURNED ? 1 : width / height);
  return {
    aperture, shutter, iso, meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso, correction: 0,
    frameWidth: width,
    ...(focalLength && {focalLength}),
    ...(across && {sensorWidth: toMicrometre(across), sensorHeight: toMicrometre(across * height / width)}),
  };
}

/** No file knows a sensor better than this, and a link should not carry the digits of a division. */
const toMicrometre = (mm: number): number => Math.round(mm * 1000) / 1000;

/** Whether the file says all of the exposure. */
function saysAll({settings}: TakenPhoto): boolean {
  return SETTINGS.every((name) => settings[name] !== undefined);
}

/** Stops by which the settings of a shot were meant to make it brighter than an earlier one, where both files say them. */
export function meantShift(before: TakenPhoto, photo: TakenPhoto, shot: Shot): number | undefined {
  return saysAll(before) && saysAll(photo) ? exposureStops(exposureOf(before, shot), exposureOf(photo, shot)) : undefined;
}

/**
 * From a photo's exposure to one so many thirds brighter, with the other settings as the bench has them.
 * @returns `undefined` when the limits leave the paying setting no click at all
 */
export function tradeFor(photo: TakenPhoto, shot: Shot, thirds: number): Trade | undefined {
  const {pay, clicksPerStop, aperture, iso} = shot;
  const change = Object.fromEntries(SETTINGS.filter((name) => name !== pay).map((name) => [name, shot[name]]));
  try {
    return trade({
      from: exposureOf(photo, shot), correction: thirds / 3, change, pay, clicksPerStop,
      limits: {
        // What is set on the bench can be set, whatever its limits say.
        aperture: [Math.min(shot.apertureWidest, aperture), Math.max(shot.apertureSmallest, aperture)],
        shutter: pay === 'shutter' ? [shot.shutterFastest, shot.shutterSlowest]
          : [Math.min(shot.shutterFastest, shot.shutter), Math.max(shot.shutterSlowest, shot.shutter)],
        iso: [Math.min(shot.isoLowest, iso), Math.max(shot.isoHighest, iso)],
      },
    });
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return undefined;
  }
}

/** Stops by which the bench may miss a trade and still be taken to follow it: half a third-stop click. */
const FOLLOWED = 1 / 6;

/** Whether the bench is set to where a trade leads. */
export function isSet(shot: Shot, {to}: Trade): boolean {
  return Math.abs(exposureStops(shot, to)) < FOLLOWED;
}
