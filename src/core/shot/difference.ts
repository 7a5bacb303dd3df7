import {lightStops, type Setting} from '../exposure/stops.js';
import {sameValue, shotKeys} from './given.js';
import {completeShot, type Shot, type ShotKey} from './shot.js';

/** One value that is not the same in two shots. */
export interface Difference {
  readonly key: ShotKey;
  readonly from: Shot[ShotKey];
  readonly to: Shot[ShotKey];
  /** For settings of the exposure: light gained, stops; positive = brighter. */
  readonly stops?: number;
}

/** The setting each key of the exposure is a value of. */
const SETTING_OF: Readonly<Partial<Record<ShotKey, Setting>>> = {
  aperture: 'aperture', shutter: 'shutter', iso: 'iso', meteredAperture: 'aperture', meteredShutter: 'shutter', meteredIso: 'iso',
};

/**
 * What changed from one shot to another, in the order of the record. Values that neither states are not compared: one
 * that only follows another is no change of its own. One that is stated in a single shot is held against what the other
 * takes in its place.
 */
export function shotDifference(from: Partial<Shot>, to: Partial<Shot>): readonly Difference[] {
  const [before, after] = [completeShot(from), completeShot(to)];
  return shotKeys().filter((key) => (from[key] !== undefined || to[key] !== undefined) && !sameValue(before[key], after[key]))
    .map((key) => {
      const setting = SETTING_OF[key];
      const change = {key, from: before[key], to: after[key]};
      return setting ? {...change, stops: lightStops(setting, change.from as number, change.to as number)} : change;
    });
}
