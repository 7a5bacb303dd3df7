/* eslint-disable @typescript-eslint/no-non-null-assertion -- every index is a code, a pair of codes or a place inside the runs */
import {AT_BLACK_BIT, AT_WHITE_BIT, brightnessTables, NEAR_WHITE_BIT, PARTS_MASK} from './brightness.js';
import {ANY_BLACK_AT, ANY_NEAR_WHITE_AT, ANY_WHITE_AT, BLUE_AT, BRIGHTNESS_AT, GREEN_AT, PIXELS_AT} from './layout.js';
import {countOneByOne, eachStretch, isOpaque} from './runs.js';
import type {Runs} from './runs.js';

/** Charts of a set, in numbers. */
const CHARTS = 1024;
/**
 * Start of the second set, which counts every other pixel: neighbours are alike, and a count just written is slow to
 * read again. Not a multiple of 1024, or the two sets would get in each other's way in the processor just the same.
 */
const SPARE_AT = CHARTS + 128;

type Counter = (words: Uint32Array, from: number, to: number) => boolean;
interface NarrowCounter {
  /** Counts opaque pixels; false, and nothing counted, when some are not opaque. */
  readonly count: Counter;
  /** Moves what was counted to `counts`. */
  readonly moveTo: (counts: Uint32Array) => void;
}

let counter: NarrowCounter | undefined;

/** Counts a smaller number of pixels: one increment a channel, little to tidy up afterwards. */
export function countNarrow(counts: Uint32Array, words: Uint32Array, runs: Runs): void {
  const {count, moveTo} = counter ??= makeCounter();
  eachStretch(runs, (from, to) => {
    if (!count(words, from, to)) countOneByOne(counts, words, from, to);
  });
  moveTo(counts);
}

function makeCounter(): NarrowCounter {
  const {charts, red, green, blue, code} = makeTables();
  let [anyBlack, anyWhite, anyNearWhite, pixels] = [0, 0, 0, 0];

  function noteEdges(parts: number): void {
    if (parts >>> AT_BLACK_BIT) anyBlack++;
    if ((parts >>> AT_WHITE_BIT) & 3) anyWhite++;
    if ((parts >>> NEAR_WHITE_BIT) & 3) anyNearWhite++;
  }

  function count(words: Uint32Array, from: number, to: number): boolean {
    if (!isOpaque(words, from, to)) return false;
    pixels += to - from;
    let at = from;
    if ((to - from) & 1) one(words[at++]!);
    for (; at < to; at += 2) {
      const word = words[at]!;
      const r = word & 255;
      const g = (word >>> 8) & 255;
      const b = (word >>> 16) & 255;
      const parts = red[r]! + green[g]! + blue[b]!;
      if (parts > PARTS_MASK) noteEdges(parts);
      charts[r]!++;
      charts[g + GREEN_AT]!++;
      charts[b + BLUE_AT]!++;
      charts[code[parts & PARTS_MASK]! + BRIGHTNESS_AT]!++;
      const next = words[at + 1]!;
      const r2 = next & 255;
      const g2 = (next >>> 8) & 255;
      const b2 = (next >>> 16) & 255;
      const parts2 = red[r2]! + green[g2]! + blue[b2]!;
      if (parts2 > PARTS_MASK) noteEdges(parts2);
      charts[r2 + SPARE_AT]!++;
      charts[g2 + SPARE_AT + GREEN_AT]!++;
      charts[b2 + SPARE_AT + BLUE_AT]!++;
      charts[code[parts2 & PARTS_MASK]! + SPARE_AT + BRIGHTNESS_AT]!++;
    }
    return true;
  }

  function one(word: number): void {
    const parts = red[word & 255]! + green[(word >>> 8) & 255]! + blue[(word >>> 16) & 255]!;
    if (parts > PARTS_MASK) noteEdges(parts);
    charts[word & 255]!++;
    charts[((word >>> 8) & 255) + GREEN_AT]!++;
    charts[((word >>> 16) & 255) + BLUE_AT]!++;
    charts[code[parts & PARTS_MASK]! + BRIGHTNESS_AT]!++;
  }

  function moveTo(counts: Uint32Array): void {
    for (let bin = 0; bin < CHARTS; bin++) counts[bin]! += charts[bin]! + charts[bin + SPARE_AT]!;
    counts[ANY_BLACK_AT]! += anyBlack;
    counts[ANY_WHITE_AT]! += anyWhite;
    counts[ANY_NEAR_WHITE_AT]! += anyNearWhite;
    counts[PIXELS_AT]! += pixels;
    charts.fill(0);
    anyBlack = anyWhite = anyNearWhite = pixels = 0;
  }

  return {count, moveTo};
}

/**
 * Charts and tables in one piece of memory, the tables off the charts' steps of 1024 bytes by a quarter: the same code
 * is looked up in one and counted in the other, and processors take places 4096 bytes apart for one place.
 */
function makeTables() {
  const {red, green, blue, code} = brightnessTables();
  const bytes = 4 * CHARTS;
  const tablesAt = 3 * bytes + 256;
  const memory = new ArrayBuffer(tablesAt + bytes + code.length);
  const table = (index: number, values: Int32Array) => {
    const copy = new Int32Array(memory, tablesAt + index * 1024, 256);
    copy.set(values);
    return copy;
  };
  const codes = new Uint8Array(memory, tablesAt + bytes, code.length);
  codes.set(code);
  return {
    charts: new Int32Array(memory, 0, SPARE_AT + CHARTS),
    red: table(0, red), green: table(1, green), blue: table(2, blue), code: codes,
  };
}
