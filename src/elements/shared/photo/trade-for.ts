import {SETTINGS, exposureStops} from '../../../core/exposure/stops.js';
import {trade, type Trade} from '../../../core/exposure/trade.js';
import {Problem} from '../../../core/problem.js';
import {closeUpOf} from '../../../core/shot/close-up.js';
import type {Shot} from '../../../core/shot/shot.js';
import type {PhotoPlace} from './place.js';
import {exposureOf, type TakenPhoto} from './settings.js';

/** Stops of light lost to close-up where the camera stands now, beyond what was lost in the photo; negative where less is lost. */
export function closeUpSince(place: PhotoPlace | undefined, shot: Shot): number {
  return place?.magnification ? closeUpOf({...shot, meteredMagnification: place.magnification}) : 0;
}

/**
 * From a photo's exposure to one so many thirds brighter, with the other settings as the bench has them.
 * @param closeUp - stops of light lost to close-up now, beyond what was lost in the photo
 * @returns `undefined` when the limits leave the paying setting no click at all
 */
export function tradeFor(photo: TakenPhoto, shot: Shot, thirds: number, closeUp: number): Trade | undefined {
  const {pay, clicksPerStop, aperture, iso} = shot;
  const change = Object.fromEntries(SETTINGS.filter((name) => name !== pay).map((name) => [name, shot[name]]));
  try {
    return trade({
      from: exposureOf(photo, shot), correction: thirds / 3 + closeUp, change, pay, clicksPerStop,
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
  return isAsBright(exposureStops(shot, to));
}

/** Whether two exposures so many stops apart are taken for one. */
export const isAsBright = (stops: number): boolean => Math.abs(stops) < FOLLOWED;
