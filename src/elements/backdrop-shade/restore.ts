import {nearestClick, clicks, type Range} from '../../core/exposure/clicks.js';
import {trade} from '../../core/exposure/trade.js';
import type {Exposure} from '../../core/exposure/stops.js';
import {checkFlicker, type FlickerCheck, type Mains} from '../../core/light/flicker.js';
import type {Shot} from '../../core/shot/shot.js';
import {Problem} from '../../core/problem.js';
import {UNSEEN} from './reading.js';

const times = ({shutterFastest, shutterSlowest}: Shot): Range => [shutterFastest, shutterSlowest];

/**
 * What restores the figure's exposure after its light changed: another shutter time on its clicks, and the meter's reading
 * in the new light.
 * @param stops - more light on the figure than when it was metered
 * @returns nothing to change when nobody would see it, or no click is nearer
 */
export function restored(stops: number, shot: Shot): Partial<Shot> & {readonly shutter?: number} {
  if (Math.abs(stops) < UNSEEN) return {};
  const {shutter, meteredAperture, meteredShutter, meteredIso, clicksPerStop} = shot;
  const factor = 2 ** -stops;
  const {value} = nearestClick('shutter', shutter * factor, clicksPerStop, times(shot));
  return Math.abs(Math.log2(value / shutter)) < UNSEEN ? {} : {
    shutter: value, meteredAperture, meteredIso, meteredShutter: meteredShutter * factor,
  };
}

/** Mains flicker at the shot's shutter, with even times among the body's clicks. */
export function flickerOf(mains: Mains, shot: Shot): FlickerCheck {
  return checkFlicker(mains, shot.shutter, clicks('shutter', shot.clicksPerStop, times(shot)).map(({value}) => value));
}

/** The same light with another time, paid by the aperture; `null` where the lens cannot pay. */
export function withTime(shutter: number, shot: Shot): Exposure | null {
  const {aperture, iso, clicksPerStop, apertureWidest, apertureSmallest} = shot;
  try {
    const paid = trade({
      from: {aperture, shutter: shot.shutter, iso}, change: {shutter}, pay: 'aperture', clicksPerStop,
      limits: {aperture: [apertureWidest, apertureSmallest], shutter: times(shot)},
    });
    return paid.limit ? null : paid.to;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return null;
  }
}
