import type {TrailStep} from '../../core/exposure/judge-trail.js';
import type {Exposure} from '../../core/exposure/stops.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';

/** What a step writes into the shot that is linked: where the trade starts, what is set, and what is asked for. */
export function dialChanges({aperture, shutter, iso}: Exposure, said: TrailStep['said']) {
  const correction = said?.taken === 'next' && typeof said.next === 'number' ? said.next : 0;
  return {aperture, shutter, iso, meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso, correction} satisfies Partial<Shot>;
}

/** Whether everything still stands as it was written. */
export function stands(state: ShotState, changes: Partial<Shot>): boolean {
  return (Object.keys(changes) as ShotKey[]).every((key) => state.values[key] === changes[key]);
}
