/* eslint-disable @typescript-eslint/no-non-null-assertion -- every index is a code, a pair of codes or a place inside the runs */
import {AT_BLACK_BIT, AT_WHITE_BIT, brightnessTables, NEAR_WHITE_BIT, PARTS_MASK} from './brightness.js';
import {ANY_BLACK_AT, ANY_NEAR_WHITE_AT, ANY_WHITE_AT, BLUE_AT, BRIGHTNESS_AT, GREEN_AT, PIXELS_AT} from './layout.js';

/** Pixels to count: `rows` runs of `length` pixels, the first at `start` and each `rowWidth` after the one before. */
export interface Runs {
  readonly start: number;
  readonly length: number;
  readonly rows: number;
  readonly rowWidth: number;
}

/**
 * Pixels counted at a stretch. Short enough that a compiler sees the counting loop called often and gives it its
 * best, rather than patching a loop that is running, and that the pixels stay at hand; long enough that the calls cost nothing.
 */
export const STRETCH = 2 ** 12;

/** Calls `count` for stretches that together make up the runs. */
export function eachStretch({start, length, rows, rowWidth}: Runs, count: (from: number, to: number) => void): void {
  for (let row = 0; row < rows; row++) {
    const end = start + row * rowWidth + length;
    for (let from = end - length; from < end; from += STRETCH) count(from, Math.min(end, from + STRETCH));
  }
}

/** Least alpha with which a pixel is part of the picture: half. */
const HALF_OPAQUE = 128;

/** Whether all of the pixels are opaque. */
export function isOpaque(words: Uint32Array, from: number, to: number): boolean {
  let all = -1;
  let at = from;
  for (; at + 8 <= to; at += 8) {
    all &= words[at]! & words[at + 1]! & words[at + 2]! & words[at + 3]!
      & words[at + 4]! & words[at + 5]! & words[at + 6]! & words[at + 7]!;
  }
  for (; at < to; at++) all &= words[at]!;
  return all >>> 24 === 255;
}

/** Counts pixels one by one, leaving out what is less than half opaque. */
export function countOneByOne(counts: Uint32Array, words: Uint32Array, from: number, to: number): void {
  const {red, green, blue, code} = brightnessTables();
  for (let at = from; at < to; at++) {
    const word = words[at]!;
    if (word >>> 24 < HALF_OPAQUE) continue;
    const r = word & 255;
    const g = (word >>> 8) & 255;
    const b = (word >>> 16) & 255;
    const parts = red[r]! + green[g]! + blue[b]!;
    counts[r]!++;
    counts[GREEN_AT + g]!++;
    counts[BLUE_AT + b]!++;
    counts[BRIGHTNESS_AT + code[parts & PARTS_MASK]!]!++;
    if (parts >>> AT_BLACK_BIT) counts[ANY_BLACK_AT]!++;
    if ((parts >>> AT_WHITE_BIT) & 3) counts[ANY_WHITE_AT]!++;
    if ((parts >>> NEAR_WHITE_BIT) & 3) counts[ANY_NEAR_WHITE_AT]!++;
    counts[PIXELS_AT]!++;
  }
}
