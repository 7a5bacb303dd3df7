import {exposureAdvice} from './advice.js';
import type {Advice, Intent} from './advice.js';
import {edgesOf} from './clipping.js';
import type {Edges} from './clipping.js';
import {percentileCode} from './percentiles.js';
import {codeStops} from './light.js';
import {CHANNELS} from './tally.js';
import type {Channel, Tally} from './tally.js';

/** What one channel reads inside the crop, less what the whole picture would have said. */
export interface ChannelChange {
  readonly channel: Channel;
  /** Change of the share at code 0; negative when the crop left the black outside. */
  readonly atBlack: number;
  /** Change of the share at code 255; negative when the crop left the white outside. */
  readonly atWhite: number;
  /** Change of the median, stops; positive = what is kept is brighter; infinite when just one of them is black. */
  readonly median: number;
}

/** How much the crop changed the reading. */
export interface CropChange {
  /** Share of the picture's pixels that are kept, 0 to 1. */
  readonly kept: number;
  readonly channels: readonly ChannelChange[];
  readonly inside: Edges;
  readonly whole: Edges;
  /** The channel whose reading at an edge changed most. */
  readonly most: ChannelChange;
  /** What the advice would have been without the crop. */
  readonly adviceWithout: Advice;
  readonly adviceInside: Advice;
  /** Whether the crop changes what to do. */
  readonly matters: boolean;
}

/**
 * Compares the reading inside a crop with that of the whole picture.
 * @param inside - tally of the crop
 * @param whole - tally of the whole picture
 * @throws {Problem} `pixels` when either counted nothing
 */
export function cropChange(inside: Tally, whole: Tally, intent: Intent): CropChange {
  const edgesInside = edgesOf(inside);
  const edgesWhole = edgesOf(whole);
  const channels = CHANNELS.map((channel): ChannelChange => ({
    channel,
    atBlack: edgesInside[channel].atBlack - edgesWhole[channel].atBlack,
    atWhite: edgesInside[channel].atWhite - edgesWhole[channel].atWhite,
    median: codeStops(percentileCode(whole, channel, 0.5), percentileCode(inside, channel, 0.5)),
  }));
  const adviceInside = exposureAdvice(inside, intent);
  const adviceWithout = exposureAdvice(whole, intent);
  return {
    kept: inside.pixels / whole.pixels,
    channels,
    inside: edgesInside,
    whole: edgesWhole,
    most: channels.reduce((most, one) => (edgeChange(one) > edgeChange(most) ? one : most)),
    adviceInside,
    adviceWithout,
    matters: adviceInside.thirds !== adviceWithout.thirds || adviceInside.reason !== adviceWithout.reason,
  };
}

function edgeChange({atBlack, atWhite}: ChannelChange): number {
  return Math.max(Math.abs(atBlack), Math.abs(atWhite));
}
