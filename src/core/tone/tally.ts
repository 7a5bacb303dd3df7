import {Problem} from '../problem.js';
import {countInto} from './count.js';
import {
  ANY_BLACK_AT, ANY_NEAR_WHITE_AT, ANY_WHITE_AT, BLUE_AT, BRIGHTNESS_AT, COUNTS, GREEN_AT, PIXELS_AT,
} from './layout.js';
import {cropOnto, wholeOf} from './pixels.js';
import type {Crop, Pixels} from './pixels.js';

/** How many pixels have each code value, by channel. The index of a chart is the code, 0 to 255. */
export interface Tally {
  readonly red: Uint32Array;
  readonly green: Uint32Array;
  readonly blue: Uint32Array;
  /** Luminance in linear light as the code of a gray just as bright: see {@link brightnessCode}. */
  readonly brightness: Uint32Array;
  /** Pixels with at least one of red, green, blue at 0. */
  readonly anyBlack: number;
  /** Pixels with at least one of red, green, blue at 255. */
  readonly anyWhite: number;
  /** Pixels with at least one of red, green, blue at 252 or above: see {@link NEAR_WHITE_CODE}. */
  readonly anyNearWhite: number;
  /** Pixels counted. Fewer than the crop holds when the picture is transparent in places. */
  readonly pixels: number;
}

/** A chart of a tally. */
export type Channel = 'red' | 'green' | 'blue' | 'brightness';

/** The charts in the order they are shown. */
export const CHANNELS: readonly Channel[] = ['red', 'green', 'blue', 'brightness'];

/** The channels a sensor has and a file stores; brightness is computed from them. */
export const COLOUR_CHANNELS: readonly Channel[] = ['red', 'green', 'blue'];

/**
 * Counts every pixel inside `crop`. What lies outside has no say.
 * @param pixels - the picture; not changed. A pixel that is less than half opaque is left out
 * @param crop - rectangle to count, cut to the picture; the whole picture when left out
 * @returns exact counts
 * @throws {Problem} `pixels` when the data is shorter than width × height, `crop` when nothing of it is on the picture
 */
export function tallyPixels(pixels: Pixels, crop: Crop = wholeOf(pixels)): Tally {
  const counts = new Uint32Array(COUNTS);
  countInto(counts, wordsOf(pixels), pixels.width, cropOnto(crop, pixels.width, pixels.height));
  return tallyFrom(counts);
}

/** The tally laid out in an array of counts; shares its memory. */
export function tallyFrom(counts: Uint32Array): Tally {
  return {
    red: counts.subarray(0, GREEN_AT),
    green: counts.subarray(GREEN_AT, BLUE_AT),
    blue: counts.subarray(BLUE_AT, BRIGHTNESS_AT),
    brightness: counts.subarray(BRIGHTNESS_AT, ANY_BLACK_AT),
    anyBlack: counts[ANY_BLACK_AT] as number,
    anyWhite: counts[ANY_WHITE_AT] as number,
    anyNearWhite: counts[ANY_NEAR_WHITE_AT] as number,
    pixels: counts[PIXELS_AT] as number,
  };
}

/**
 * The picture as one number a pixel, alpha in the highest byte; the same memory where it is aligned.
 * (Every machine that runs a browser keeps the lowest byte first.)
 * @throws {Problem} `pixels` when the data is shorter than width × height
 */
export function wordsOf({data, width, height}: Pixels): Uint32Array {
  const size = width * height;
  if (!(Number.isInteger(width) && Number.isInteger(height) && width > 0 && height > 0 && data.length >= size * 4)) {
    throw new Problem('pixels', `${width} × ${height} in ${data.length} bytes`, 'four bytes for each pixel');
  }
  const aligned = data.byteOffset % 4 === 0 ? data : data.slice();
  return new Uint32Array(aligned.buffer, aligned.byteOffset, size);
}
