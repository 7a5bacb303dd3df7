import {exposureStops} from '../exposure/stops.js';
import {lightLoss} from '../optics/lens.js';
import type {Shot} from './shot.js';

/** Magnification from where the camera stands now. */
export const magnificationNow = ({sensorWidth, fieldWidth}: Shot): number => sensorWidth / fieldWidth;

/**
 * Light lost to close-up where the camera stands now, beyond what was lost where the start was metered.
 * @returns stops; negative where less is lost; 0 while the camera stands where it was metered
 * @throws {Problem} naming `magnification` or `pupil-ratio`
 * Source: the light loss of close-up, see {@link lightLoss}.
 */
export function closeUpOf(shot: Shot): number {
  const {meteredMagnification, pupilRatio} = shot;
  return lightLoss(magnificationNow(shot), pupilRatio) - lightLoss(meteredMagnification, pupilRatio);
}

/**
 * How much brighter the picture comes out than was asked for: what the settings give more than the start and its correction,
 * less what close-up loses more.
 * @returns stops; positive = brighter than asked for
 * @throws {Problem} naming a setting, `magnification` or `pupil-ratio`
 * Source: reciprocity of aperture, time and ISO, and {@link lightLoss}.
 */
export function exposureOff(shot: Shot): number {
  const {aperture, shutter, iso, meteredAperture, meteredShutter, meteredIso, correction} = shot;
  const start = {aperture: meteredAperture, shutter: meteredShutter, iso: meteredIso};
  return exposureStops(start, {aperture, shutter, iso}) - correction - closeUpOf(shot) + 0;
}
