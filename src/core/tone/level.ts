import {Problem, requirePositive} from '../problem.js';
import {codeFromLinear, linearFromCode, linearTable, LUMINANCE_WEIGHTS, TOP_CODE} from './light.js';
import {cropOnto} from './pixels.js';
import type {Crop, Pixels} from './pixels.js';

/**
 * Share of the light that a gray card gives back; as linear light in a picture it is sRGB code 118.
 * The trade's long-standing figure; meters are calibrated to something between 0.13 and 0.18.
 */
export const GRAY_LIGHT = 0.18;

/** Alpha from which a pixel counts: at least half opaque, as in the tally. */
const OPAQUE_FROM = 128;

/** One channel of a region, in linear light. */
export interface ChannelLevel {
  /** Mean, 0 to 1. */
  readonly mean: number;
  /** Standard deviation, in the same unit. */
  readonly spread: number;
  /** sRGB code that shows the mean, 0 to 255, not rounded. */
  readonly code: number;
}

/**
 * Codes by which a region of the picture really is brighter than its pixels say, red, green, blue; negative = darker.
 * Decoders round, and in a plain area all pixels alike: whoever has the file may know by how much.
 */
export type CodeShift = readonly [red: number, green: number, blue: number];

/** Pixels are what they say. */
export const NO_SHIFT: CodeShift = [0, 0, 0];

/** What a region of a picture measures. */
export interface Level {
  readonly red: ChannelLevel;
  readonly green: ChannelLevel;
  readonly blue: ChannelLevel;
  readonly luminance: ChannelLevel;
  /** Stops of the luminance above the gray card; negative = darker, `-Infinity` for black. */
  readonly stopsFromGray: number;
  /** Share of the pixels with at least one channel at 255: there the mean is only a lower bound. */
  readonly atWhite: number;
  /** Share of the pixels with at least one channel at 0. */
  readonly atBlack: number;
  /** Pixels measured. */
  readonly pixels: number;
}

/**
 * Mean and spread of a region in linear light: the backdrop, a patch of the gray card, the shadow under a cloak.
 * Averaging codes instead would come out too dark wherever the region is uneven.
 * @param pixels - the picture; pixels less than half opaque are left out
 * @param region - rectangle, cut to the picture
 * @param gray - linear light of the gray card in the same picture, above 0, where it was measured
 * @param shift - codes to be added to each pixel; those at 0 and 255 stay there
 * @throws {Problem} `crop` when nothing of the region is on the picture; `region` when all of it is transparent;
 *   `gray` when it is not above 0
 */
export function readLevel(pixels: Pixels, region: Crop, gray: number = GRAY_LIGHT, shift: CodeShift = NO_SHIFT): Level {
  requirePositive('gray', gray);
  const {x, y, width, height} = cropOnto(region, pixels.width, pixels.height);
  const [ofRed, ofGreen, ofBlue] = shift.map(shiftedTable) as [Float64Array, Float64Array, Float64Array];
  const sums: Sums = [0, 0, 0, 0, 0, 0, 0, 0];
  let count = 0;
  let atWhite = 0;
  let atBlack = 0;
  for (let row = y; row < y + height; row++) {
    for (let at = (row * pixels.width + x) * 4, end = at + width * 4; at < end; at += 4) {
      if ((pixels.data[at + 3] as number) < OPAQUE_FROM) continue;
      const red = pixels.data[at] as number;
      const green = pixels.data[at + 1] as number;
      const blue = pixels.data[at + 2] as number;
      count++;
      if (red === TOP_CODE || green === TOP_CODE || blue === TOP_CODE) atWhite++;
      if (red === 0 || green === 0 || blue === 0) atBlack++;
      add(sums, ofRed[red] as number, ofGreen[green] as number, ofBlue[blue] as number);
    }
  }
  if (count === 0) throw new Problem('region', 'transparent', 'a region with at least one pixel that is not transparent');
  const [red, green, blue, luminance] = [0, 1, 2, 3].map((channel) => channelLevel(sums, channel, count)) as
    [ChannelLevel, ChannelLevel, ChannelLevel, ChannelLevel];
  return {
    red, green, blue, luminance, stopsFromGray: Math.log2(luminance.mean / gray),
    atWhite: atWhite / count, atBlack: atBlack / count, pixels: count,
  };
}

/** Linear light of the codes once shifted; 0 and 255 are edges and not values, so they stay. */
function shiftedTable(codes: number): Float64Array {
  const table = linearTable();
  if (codes === 0) return table;
  return table.map((light, code) =>
    (code === 0 || code === TOP_CODE ? light : linearFromCode(Math.min(TOP_CODE, Math.max(0, code + codes)))));
}

/** Red, green, blue, luminance, then their squares. */
type Sums = [number, number, number, number, number, number, number, number];

function add(sums: Sums, red: number, green: number, blue: number): void {
  const all = LUMINANCE_WEIGHTS[0] * red + LUMINANCE_WEIGHTS[1] * green + LUMINANCE_WEIGHTS[2] * blue;
  sums[0] += red; sums[1] += green; sums[2] += blue; sums[3] += all;
  sums[4] += red * red; sums[5] += green * green; sums[6] += blue * blue; sums[7] += all * all;
}

function channelLevel(sums: Sums, channel: number, count: number): ChannelLevel {
  const mean = (sums[channel] as number) / count;
  const variance = (sums[channel + 4] as number) / count - mean * mean;
  return {mean, spread: Math.sqrt(Math.max(0, variance)), code: codeFromLinear(mean)};
}
