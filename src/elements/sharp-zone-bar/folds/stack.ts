import {clicks} from '../../../core/exposure/clicks.js';
import {afterStops, lightStops} from '../../../core/exposure/stops.js';
import {SETTLE_SECONDS, bestStack, stackFrames, type Stack, type StackChoice, type StackJob} from '../../../core/optics/stack.js';
import {Problem} from '../../../core/problem.js';
import type {Shot} from '../../../core/shot/shot.js';
import {paidByShutter} from '../../../core/shot/ways-out.js';
import type {SaidDetail} from '../detail.js';
import type {Reading} from '../reading.js';
import {sensorDetail} from './detail-contrast.js';

/** Several frames in place of one. */
export interface StackOffer {
  /** From the front on, at the aperture that is set; empty when it would take more than anybody takes. */
  readonly frames: Stack['frames'];
  /** The aperture at which the frames are best for the finest line, and what sets it. */
  readonly best: StackChoice;
  readonly changes: Partial<Shot>;
}

/** Apertures that differ by less, as a share, are the same click. */
export const SAME_APERTURE = 1e-6;

/** The frames that would hold the figure; `undefined` when nobody would take so many at any aperture. */
export function stackOffer(reading: Reading, detail: SaidDetail): StackOffer | undefined {
  const {fit, framing: {lens, tilt, limit}, shot} = reading;
  const job: StackJob = {lens, ends: fit.depth, tilt, limit};
  const apertures = clicks('aperture', shot.clicksPerStop, [shot.apertureWidest, shot.apertureSmallest]).map(({value}) => value);
  return unlessTooMany(() => {
    const {best} = bestStack(job, {
      detail: sensorDetail(detail, reading), apertures, settle: SETTLE_SECONDS,
      shutterFor: (aperture) => afterStops('shutter', shot.shutter, -lightStops('aperture', shot.aperture, aperture)),
    });
    const frames = unlessTooMany(() => stackFrames(job).frames) ?? [];
    return {frames, best, changes: paidByShutter(shot, best.aperture, shot.focus).changes};
  });
}

function unlessTooMany<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof Problem && error.parameter === 'frames')) throw error;
    return undefined;
  }
}
