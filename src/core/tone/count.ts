import {AT_BLACK_BIT, AT_WHITE_BIT, brightnessTables, PARTS_MASK} from './brightness.js';
import type {Crop} from './pixels.js';

/**
 * Where things stand in an array of counts: four charts of 256 one after the other, then three single numbers.
 * One flat array can be added, subtracted and summed up over tiles without knowing what is in it.
 */
export const GREEN_AT = 256;
export const BLUE_AT = 512;
export const BRIGHTNESS_AT = 768;
export const ANY_BLACK_AT = 1024;
export const ANY_WHITE_AT = 1025;
export const PIXELS_AT = 1026;
export const COUNTS = 1027;

/** Opaque alpha, as the signed word that `&` leaves of opaque pixels only. */
const OPAQUE = 0xff;
/** Least alpha with which a pixel is part of the picture: half. */
const HALF_OPAQUE = 128;

/** A second set of charts for every other pixel: neighbours are alike, and a count just written is slow to read again. */
const spare = /* @__PURE__ */ new Uint32Array(BRIGHTNESS_AT + 256);

/**
 * Counts the pixels of a rectangle into `counts`.
 *
 * A pixel that is less than half opaque is not part of the picture and is not counted.
 * @param words - pixels, alpha in the highest byte
 * @param rowWidth - pixels in a row of the whole picture
 * @param crop - whole pixels, inside the picture; not checked
 * @param counts - {@link COUNTS} numbers, added to
 */
export function countInto(counts: Uint32Array, words: Uint32Array, rowWidth: number, crop: Crop): void {
  if (crop.width === rowWidth) {
    countRows(counts, words, crop.y * rowWidth, crop.width * crop.height, rowWidth, 1);
  } else {
    countRows(counts, words, crop.y * rowWidth + crop.x, crop.width, rowWidth, crop.height);
  }
}

function countRows(
  counts: Uint32Array, words: Uint32Array, start: number, length: number, rowWidth: number, rows: number,
): void {
  for (let row = 0; row < rows; row++) {
    const from = start + row * rowWidth;
    if (isOpaque(words, from, from + length)) countOpaque(counts, words, from, from + length);
    else countTranslucent(counts, words, from, from + length);
  }
  for (let bin = 0; bin < spare.length; bin++) counts[bin] = (counts[bin] as number) + (spare[bin] as number);
  spare.fill(0);
}

function isOpaque(words: Uint32Array, from: number, to: number): boolean {
  let all = -1;
  for (let at = from; at < to; at++) all &= words[at] as number;
  return all >>> 24 === OPAQUE;
}

function countOpaque(counts: Uint32Array, words: Uint32Array, from: number, to: number): void {
  const {red, green, blue, code} = brightnessTables();
  const even = to - ((to - from) & 1);
  for (let at = from; at < even; at += 2) {
    const word = words[at] as number;
    const r = word & 255;
    const g = (word >>> 8) & 255;
    const b = (word >>> 16) & 255;
    let parts = (red[r] as number) + (green[g] as number) + (blue[b] as number);
    if (parts > PARTS_MASK) {
      noteEdges(counts, parts);
      parts &= PARTS_MASK;
    }
    counts[r]!++;
    counts[GREEN_AT + g]!++;
    counts[BLUE_AT + b]!++;
    counts[BRIGHTNESS_AT + (code[parts] as number)]!++;

    const other = words[at + 1] as number;
    const r2 = other & 255;
    const g2 = (other >>> 8) & 255;
    const b2 = (other >>> 16) & 255;
    let parts2 = (red[r2] as number) + (green[g2] as number) + (blue[b2] as number);
    if (parts2 > PARTS_MASK) {
      noteEdges(counts, parts2);
      parts2 &= PARTS_MASK;
    }
    spare[r2]!++;
    spare[GREEN_AT + g2]!++;
    spare[BLUE_AT + b2]!++;
    spare[BRIGHTNESS_AT + (code[parts2] as number)]!++;
  }
  counts[PIXELS_AT]! += even - from;
  if (even < to) countOne(counts, words[even] as number);
}

function countTranslucent(counts: Uint32Array, words: Uint32Array, from: number, to: number): void {
  for (let at = from; at < to; at++) {
    const word = words[at] as number;
    if (word >>> 24 >= HALF_OPAQUE) countOne(counts, word);
  }
}

function countOne(counts: Uint32Array, word: number): void {
  const {red, green, blue, code} = brightnessTables();
  const r = word & 255;
  const g = (word >>> 8) & 255;
  const b = (word >>> 16) & 255;
  const parts = (red[r] as number) + (green[g] as number) + (blue[b] as number);
  if (parts > PARTS_MASK) noteEdges(counts, parts);
  counts[r]!++;
  counts[GREEN_AT + g]!++;
  counts[BLUE_AT + b]!++;
  counts[BRIGHTNESS_AT + (code[parts & PARTS_MASK] as number)]!++;
  counts[PIXELS_AT]!++;
}

function noteEdges(counts: Uint32Array, parts: number): void {
  if (parts >>> AT_BLACK_BIT) counts[ANY_BLACK_AT]!++;
  if ((parts >>> AT_WHITE_BIT) & 3) counts[ANY_WHITE_AT]!++;
}
