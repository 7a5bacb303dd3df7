import {Problem, requireFinite} from '../problem.js';
import {readShutter} from './read-shutter.js';
import type {OtherReading, Reading} from './reading.js';
import {writeShutter} from './write.js';

/**
 * The other reading of the same digits that would make an exposure balance.
 * @param reading - a setting as it was read
 * @param missing - stops by which the exposure falls short with that reading; positive = it should be brighter
 * @param tolerance - stops that may be left over, above 0; a quarter is less than one click and more than half of one
 * @returns the reading that leaves least, with `left`: stops still missing; `null` when the reading taken balances
 *   as it is, or no other does
 * @throws {Problem} `missing`, when not a finite number
 */
export function misreading(
  reading: Reading, missing: number, tolerance = 0.25,
): (OtherReading & {readonly left: number}) | null {
  requireFinite('missing', missing);
  if (Math.abs(missing) <= tolerance) return null;
  const [best] = reading.others
    .map((other) => ({...other, left: missing - other.stops + 0}))
    .filter(({left}) => Math.abs(left) <= tolerance)
    .sort((one, two) => Math.abs(one.left) - Math.abs(two.left));
  return best ?? null;
}

/** Stops. Less is lost in the rounding of the dial; more, and nobody believes the reading for long. */
const WORTH_A_WARNING = [0.5, 4] as const;

/**
 * Times a person may read off a body that shows this time: 1/6 s where it shows `0"6`, and the other way round.
 * @param seconds - s, above 0; exact
 * @returns the nearest in light first; empty when the digits are clear, or no slip is worth a warning (half a stop to
 *   four stops)
 * @throws {Problem} `shutter`, when not a finite number above 0
 */
export function likelyMisreadings(seconds: number): readonly OtherReading[] {
  const reading = readShutter(writeShutter(seconds, 'body'));
  if (reading instanceof Problem) return [];
  const [least, most] = WORTH_A_WARNING;
  return reading.others.filter(({stops}) => Math.abs(stops) >= least && Math.abs(stops) <= most);
}
