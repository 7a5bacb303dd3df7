import type {TrailLink} from '../../core/exposure/judge-trail.js';

/** Width and height of one ruled line, in its own units; the width is stretched to fit. */
export const RULE = {width: 100, height: 14} as const;

/** Reach of the lines, whole stops: all of a trail share it, so that they can be compared down the page. */
const REACH = [2, 6] as const;

/** One ruled line of stops. */
export interface Rule {
  /** Places of the whole stops. */
  readonly ticks: readonly number[];
  readonly zero: number;
  /** From zero to the value. */
  readonly bar: {readonly x: number; readonly width: number};
  /** Where the value should have been; `null` when nothing was meant, or no number. */
  readonly meant: number | null;
  /** Whether the value lies beyond the end of the line. */
  readonly beyond: boolean;
}

/** How many stops each side the lines of a trail reach. */
export function reachOf(links: readonly TrailLink[]): number {
  const most = Math.max(0, ...links.flatMap(({light, depth, meant}) => [light, depth, typeof meant?.wish === 'number' ? meant.wish : 0].map(Math.abs)));
  return Math.min(REACH[1], Math.max(REACH[0], Math.ceil(most - 1e-9)));
}

/**
 * A ruled line for so many stops.
 * @param stops - any finite number; beyond the reach the bar ends at the end
 * @param meant - stops that were meant
 */
export function ruleFor(stops: number, meant: number | null, reach: number): Rule {
  const place = (value: number): number => (
    Math.round((RULE.width / 2) * (1 + Math.max(-reach, Math.min(reach, value)) / reach) * 100) / 100);
  const [zero, at] = [place(0), place(stops)];
  return {
    ticks: Array.from({length: 2 * reach + 1}, (_, index) => place(index - reach)), zero,
    bar: {x: Math.min(zero, at), width: Math.abs(at - zero)},
    meant: meant === null ? null : place(meant), beyond: Math.abs(stops) > reach + 1e-9,
  };
}
