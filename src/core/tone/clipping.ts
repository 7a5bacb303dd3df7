import {codeStops, TOP_CODE} from './light.js';
import {codeReached, percentileCode, requirePixels} from './percentiles.js';
import {CHANNELS, COLOUR_CHANNELS} from './tally.js';
import type {Channel, Tally} from './tally.js';

/**
 * Share of the pixels that may lie at an edge before it counts: one in a thousand. A hot pixel or the glint on a
 * wet eye is no reason to change an exposure. Common practice is between a hundredth and a tenth of a per cent, no source.
 */
export const STRAY_SHARE = 0.001;

/** Darkest code that still holds something: what is darker is 0. */
const FIRST_CODE = 1;

/** What one channel does at the two edges of its chart. */
export interface ChannelEdges {
  readonly channel: Channel;
  /** Share of the pixels at code 0, 0 to 1. */
  readonly atBlack: number;
  /** Share of the pixels at code 255, 0 to 1. */
  readonly atWhite: number;
  /** Whether {@link atBlack} is more than strays. */
  readonly blackLost: boolean;
  /** Whether {@link atWhite} is more than strays. */
  readonly whiteLost: boolean;
  /** Darkest code, strays left out. */
  readonly darkest: number;
  /** Brightest code, strays left out. */
  readonly brightest: number;
  /** Stops of linear light the picture could be darkened before the darkest code falls below 1. 0 when it is 0 already. */
  readonly roomBelow: number;
  /** Stops of linear light the picture could be brightened before the brightest code is 255. 0 when it is. */
  readonly roomAbove: number;
}

/**
 * Both edges of one channel.
 * @param tally - of at least one pixel
 * @param channel - which chart
 * @param stray - share of the pixels that does not count, 0 to 1, just below which an edge is still called clean
 * @throws {Problem} `pixels` when nothing was counted, `share` when `stray` is outside 0 to 1
 */
export function channelEdges(tally: Tally, channel: Channel, stray: number = STRAY_SHARE): ChannelEdges {
  requirePixels(tally);
  const counts = tally[channel];
  const darkest = percentileCode(tally, channel, stray);
  const brightest = codeReached(tally, channel, stray);
  return {
    channel,
    atBlack: (counts[0] as number) / tally.pixels,
    atWhite: (counts[TOP_CODE] as number) / tally.pixels,
    blackLost: darkest === 0,
    whiteLost: brightest === TOP_CODE,
    darkest,
    brightest,
    roomBelow: Math.max(0, codeStops(FIRST_CODE, Math.max(FIRST_CODE, darkest))),
    // A picture that is black all over has no light to multiply: no exposure would fill it.
    roomAbove: codeStops(brightest, TOP_CODE),
  };
}

/** Both edges of every channel, and what no single channel can say. */
export interface Edges {
  readonly red: ChannelEdges;
  readonly green: ChannelEdges;
  readonly blue: ChannelEdges;
  readonly brightness: ChannelEdges;
  /** Share of the pixels with at least one of red, green, blue at 0. */
  readonly anyAtBlack: number;
  /** Share of the pixels with at least one of red, green, blue at 255. */
  readonly anyAtWhite: number;
  /**
   * Share of the pixels with at least one of red, green, blue at 252 or above. In a JPEG this is nearer than
   * {@link Edges.anyAtWhite} to what was cut off before it was saved; in a PNG it is an upper bound. The share itself is not
   * in a JPEG: pictures that differ by a third of it are written into one and the same file.
   */
  readonly anyNearWhite: number;
  /** Colours that are lost at white while brightness is not: a chart of brightness alone would hide them. */
  readonly hiddenAtWhite: readonly Channel[];
  /** Colours that are lost at black while brightness is not. */
  readonly hiddenAtBlack: readonly Channel[];
}

/**
 * Both edges of all channels.
 * @param tally - of at least one pixel
 * @param stray - share of the pixels that does not count, 0 to 1
 * @throws {Problem} `pixels` when nothing was counted, `share` when `stray` is outside 0 to 1
 */
export function edgesOf(tally: Tally, stray: number = STRAY_SHARE): Edges {
  const [red, green, blue, brightness] = CHANNELS.map((channel) => channelEdges(tally, channel, stray)) as
    [ChannelEdges, ChannelEdges, ChannelEdges, ChannelEdges];
  const of = {red, green, blue, brightness};
  return {
    ...of,
    anyAtBlack: tally.anyBlack / tally.pixels,
    anyAtWhite: tally.anyWhite / tally.pixels,
    anyNearWhite: tally.anyNearWhite / tally.pixels,
    hiddenAtWhite: brightness.whiteLost ? [] : COLOUR_CHANNELS.filter((channel) => of[channel].whiteLost),
    hiddenAtBlack: brightness.blackLost ? [] : COLOUR_CHANNELS.filter((channel) => of[channel].blackLost),
  };
}
