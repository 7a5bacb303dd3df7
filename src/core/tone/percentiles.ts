import {Problem, requireWithin} from '../problem.js';
import {TOP_CODE} from './light.js';
import type {Channel, Tally} from './tally.js';

/**
 * The code below or at which a share of the pixels lies (nearest rank: always a code that some pixel has).
 * @param tally - of at least one pixel
 * @param channel - which chart
 * @param share - 0 to 1; 0.5 is the median, 0 the darkest pixel, 1 the brightest
 * @returns code, whole, 0 to 255
 * @throws {Problem} `share` outside 0 to 1; `pixels` when nothing was counted
 * Source: nearest-rank percentile, common practice.
 */
export function percentileCode(tally: Tally, channel: Channel, share: number): number {
  requireWithin('share', share, 0, 1);
  requirePixels(tally);
  const rank = Math.max(1, Math.ceil(share * tally.pixels));
  return codeOfRank(tally[channel], rank);
}

/**
 * The brightest code that at least `share` of the pixels reach. The counterpart from above of
 * {@link percentileCode}, without the rounding of 1 − share.
 * @param share - 0 to 1; 0.001 leaves the brightest thousandth of the pixels out of account
 * @throws {Problem} `share` outside 0 to 1; `pixels` when nothing was counted
 */
export function codeReached(tally: Tally, channel: Channel, share: number): number {
  requireWithin('share', share, 0, 1);
  requirePixels(tally);
  const rank = Math.max(1, Math.ceil(share * tally.pixels));
  const counts = tally[channel];
  let above = 0;
  for (let code = TOP_CODE; code > 0; code--) {
    above += counts[code] as number;
    if (above >= rank) return code;
  }
  return 0;
}

function codeOfRank(counts: Uint32Array, rank: number): number {
  let below = 0;
  for (let code = 0; code < TOP_CODE; code++) {
    below += counts[code] as number;
    if (below >= rank) return code;
  }
  return TOP_CODE;
}

/** @throws {Problem} unless the tally has counted something. */
export function requirePixels(tally: Tally): void {
  if (!(tally.pixels > 0)) throw new Problem('pixels', tally.pixels, 'a crop with at least one pixel that is not transparent');
}
