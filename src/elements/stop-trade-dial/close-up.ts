import {lightLoss} from '../../core/optics/lens.js';
import type {Shot} from '../../core/shot/shot.js';

/** Magnification from where the camera stands now. */
export const magnificationNow = ({sensorWidth, fieldWidth}: Shot): number => sensorWidth / fieldWidth;

/**
 * Stops of light that close-up takes where the camera stands now, beyond what it took where the start was metered;
 * negative where it takes less. 0 while the camera stands where it was metered.
 */
export function closeUpOf(shot: Shot): number {
  const {meteredMagnification, pupilRatio} = shot;
  return lightLoss(magnificationNow(shot), pupilRatio) - lightLoss(meteredMagnification, pupilRatio);
}
