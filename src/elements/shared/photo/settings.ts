import {exactFromNominal} from '../../../core/exposure/clicks.js';
import {SETTINGS, exposureStops, type Exposure} from '../../../core/exposure/stops.js';
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
 * What a photo tells of the shot: its exposure as the one to start from, and the camera as far as the file knows it. A file
 * with fewer pixels than the camera is stated to have is a copy made smaller, and says nothing of the frame.
 * @param shot - what holds where the file is silent
 * @param framePixels - across the frame, as far as somebody has stated them
 */
export function shotFrom(photo: TakenPhoto, shot: Shot, framePixels: number | undefined): Partial<Shot> {
  const {width, height, settings: {focalLength, sensorWidth, orientation = 1}} = photo;
  const {aperture, shutter, iso} = saysExposure(photo) ? exposureOf(photo, shot) : shot;
  // The file measures the sensor as it recorded; the frame is as wide as the picture stands.
  const across = sensorWidth && sensorWidth.mm * (orientation < FIRST_TURNED ? 1 : width / height);
  return {
    aperture, shutter, iso, meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso, correction: 0,
    // Held upright a camera has no fewer pixels.
    ...(Math.max(width, height) >= (framePixels ?? 0) && {frameWidth: width}),
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
