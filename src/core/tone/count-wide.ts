/* eslint-disable @typescript-eslint/no-non-null-assertion -- every index is a code, a pair of codes or a place inside the runs */
import {brightnessTables, PARTS_MASK} from './brightness.js';
import {ANY_BLACK_AT, ANY_NEAR_WHITE_AT, ANY_WHITE_AT, BLUE_AT, BRIGHTNESS_AT, GREEN_AT, PIXELS_AT} from './layout.js';
import {NEAR_WHITE_CODE, TOP_CODE} from './light.js';
import {countOneByOne, eachStretch, STRETCH} from './runs.js';
import type {Runs} from './runs.js';

/** From so many pixels on the two large tables pay: reading them out takes as long as counting a tenth of this. */
export const WIDE_PIXELS = 2 ** 20;

const PAIRS = 2 ** 16;
/** Any bit from here up in a sum of parts says that blue is at an edge. */
const RARE = PARTS_MASK + 1;

/** Opaque black. */
const BLANK = 0xff000000;

interface WideCounter {
  /** Counts up to {@link STRETCH} pixels; false, and nothing counted, when some are not opaque. */
  readonly count: (words: Uint32Array, from: number, to: number) => boolean;
  /** Moves what was counted to `counts`. */
  readonly moveTo: (counts: Uint32Array) => void;
}

let counter: WideCounter | undefined;

/**
 * Counts many pixels. Two increments do for four channels: one in a table of pairs of red and green, one in a table of
 * pairs of blue and brightness; the charts are the sums of their rows and columns. As a picture's colours keep together,
 * little of the tables is in use at a time.
 */
export function countWide(counts: Uint32Array, words: Uint32Array, runs: Runs): void {
  const {count, moveTo} = counter ??= makeCounter();
  eachStretch(runs, (from, to) => {
    if (!count(words, from, to)) countOneByOne(counts, words, from, to);
  });
  moveTo(counts);
}

function makeCounter(): WideCounter {
  const {redGreen, blueBright, partsRedGreen, partsBlue, code} = makeTables();
  // Pixels are copied here first: on memory that is always the same, the compiler leaves every check of a place out.
  const desk = new Uint32Array(STRETCH);
  const halves = new Uint16Array(desk.buffer);
  let [blackByBlue, whiteByBlue, nearWhiteByBlue, pixels] = [0, 0, 0, 0];

  function count(words: Uint32Array, from: number, to: number): boolean {
    const size = to - from;
    desk.set(words.subarray(from, to));
    // Pixels are counted in twos: an odd one out is joined by a blank that is taken away again.
    if (size & 1) desk[size] = BLANK;
    const opaque = countDesk(size + (size & 1)) >>> 8 === 255;
    if (size & 1) takeAway(size, size + 1);
    if (!opaque) takeAway(0, size);
    else pixels += size;
    return opaque;
  }

  /** Counts `size` pixels, red and green in the first half of each, blue and alpha in the second; returns all alphas, and-ed. */
  function countDesk(size: number): number {
    let all = -1;
    for (let at = 0; at < size * 2; at += 4) {
      const pair = halves[at]!;
      const upper = halves[at + 1]!;
      const pair2 = halves[at + 2]!;
      const upper2 = halves[at + 3]!;
      all &= upper & upper2;
      const b = upper & 255;
      const b2 = upper2 & 255;
      let sum = partsRedGreen[pair]! + partsBlue[b]!;
      let sum2 = partsRedGreen[pair2]! + partsBlue[b2]!;
      if ((sum | sum2) >= RARE) {
        if (sum >= RARE) noteBlue(pair, b, 1);
        if (sum2 >= RARE) noteBlue(pair2, b2, 1);
        sum &= PARTS_MASK;
        sum2 &= PARTS_MASK;
      }
      redGreen[pair]!++;
      blueBright[code[sum]! << 8 | b]!++;
      redGreen[pair2]!++;
      blueBright[code[sum2]! << 8 | b2]!++;
    }
    return all;
  }

  function takeAway(from: number, to: number): void {
    for (let at = from * 2; at < to * 2; at += 2) {
      const pair = halves[at]!;
      const b = halves[at + 1]! & 255;
      const sum = partsRedGreen[pair]! + partsBlue[b]!;
      if (sum >= RARE) noteBlue(pair, b, -1);
      redGreen[pair]!--;
      blueBright[code[sum & PARTS_MASK]! << 8 | b]!--;
    }
  }

  /** Pixels at an edge in blue alone: those in red or green are found in the table. */
  function noteBlue(pair: number, b: number, times: number): void {
    const r = pair & 255;
    const g = pair >>> 8;
    if (b === 0) {
      if (r > 0 && g > 0) blackByBlue += times;
    } else {
      if (r < NEAR_WHITE_CODE && g < NEAR_WHITE_CODE) nearWhiteByBlue += times;
      if (b === TOP_CODE && r < TOP_CODE && g < TOP_CODE) whiteByBlue += times;
    }
  }

  /** Adds up one row of both tables; called often enough to be compiled well while the first picture is read out. */
  function sumRow(counts: Uint32Array, high: number): void {
    const row = high << 8;
    let green = 0;
    let brightness = 0;
    let nearWhite = 0;
    for (let low = 0; low < 256; low++) {
      const times = redGreen[row + low]!;
      counts[low]! += times;
      green += times;
      if (low >= NEAR_WHITE_CODE) nearWhite += times;
      counts[BLUE_AT + low]! += blueBright[row + low]!;
      brightness += blueBright[row + low]!;
    }
    counts[GREEN_AT + high]! += green;
    counts[BRIGHTNESS_AT + high]! += brightness;
    counts[ANY_BLACK_AT]! += high === 0 ? green : redGreen[row]!;
    counts[ANY_WHITE_AT]! += high === TOP_CODE ? green : redGreen[row + TOP_CODE]!;
    counts[ANY_NEAR_WHITE_AT]! += high >= NEAR_WHITE_CODE ? green : nearWhite;
  }

  function moveTo(counts: Uint32Array): void {
    for (let high = 0; high < 256; high++) sumRow(counts, high);
    counts[ANY_BLACK_AT]! += blackByBlue;
    counts[ANY_WHITE_AT]! += whiteByBlue;
    counts[ANY_NEAR_WHITE_AT]! += nearWhiteByBlue;
    counts[PIXELS_AT]! += pixels;
    redGreen.fill(0);
    blueBright.fill(0);
    blackByBlue = whiteByBlue = nearWhiteByBlue = pixels = 0;
  }

  return {count, moveTo};
}

/**
 * The tables in one piece of memory, so that the distance between them is ours to choose: were it a multiple of 4096
 * bytes, a gray picture would hit the same place of both at once, and processors take that for one place.
 */
function makeTables() {
  const {red, green, blue, code} = brightnessTables();
  const gap = 2560;
  const memory = new ArrayBuffer(PAIRS * 10 + 2 * gap + 1024 + code.length);
  const redGreen = new Int32Array(memory, 0, PAIRS);
  const blueBright = new Int32Array(memory, PAIRS * 4 + gap, PAIRS);
  const partsRedGreen = new Uint16Array(memory, PAIRS * 8 + 2 * gap, PAIRS);
  const partsBlue = new Int32Array(memory, PAIRS * 10 + 2 * gap, 256);
  const codes = new Uint8Array(memory, PAIRS * 10 + 2 * gap + 1024, code.length);
  for (let pair = 0; pair < PAIRS; pair++) {
    partsRedGreen[pair] = (red[pair & 255]! & PARTS_MASK) + (green[pair >>> 8]! & PARTS_MASK);
  }
  partsBlue.set(blue);
  codes.set(code);
  return {redGreen, blueBright, partsRedGreen, partsBlue, code: codes};
}
