import {STRAY_SHARE} from './clipping.js';
import {codeStops, TOP_CODE} from './light.js';
import type {Channel, Tally} from './tally.js';

/** An estimate is no better than this many stops. */
const MOST_STOPS = 3;

/**
 * Estimates how far the highlights of a channel reach past white. What was cut off is not in the file, so it is read off
 * the slope of what is left: where the share of brighter pixels falls by half in so many stops just below white, it
 * is taken to go on falling by half for each as many more, until only strays are left.
 * @param tally - of at least one pixel
 * @returns stops, 0 when no more than strays are lost, 3 at most
 */
export function lostAbove(tally: Tally, channel: Channel): number {
  const counts = tally[channel];
  return lostStops(tally.pixels, (steps) => counts[TOP_CODE - steps] as number, (steps) => codeStops(TOP_CODE - steps, TOP_CODE));
}

/**
 * Estimates how far the shadows of a channel reach past black, as {@link lostAbove} does for white.
 * @returns stops, 0 when no more than strays are lost, 3 at most
 */
export function lostBelow(tally: Tally, channel: Channel): number {
  const counts = tally[channel];
  return lostStops(tally.pixels, (steps) => counts[steps] as number, (steps) => codeStops(1, Math.max(1, steps)));
}

/**
 * @param countAt - pixels so many codes away from the edge
 * @param stopsAt - light between the edge and that code
 */
function lostStops(pixels: number, countAt: (steps: number) => number, stopsAt: (steps: number) => number): number {
  const lost = countAt(0) / pixels;
  if (lost < STRAY_SHARE) return 0;
  let within = lost;
  let steps = 0;
  while (within < Math.min(2 * lost, 1) && steps < TOP_CODE) within += countAt(++steps) / pixels;
  const perHalving = within > lost ? stopsAt(steps) / Math.log2(within / lost) : MOST_STOPS;
  return Math.min(MOST_STOPS, Math.max(1 / 3, perHalving * Math.log2(lost / STRAY_SHARE)));
}
