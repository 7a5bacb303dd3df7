/* eslint-disable @typescript-eslint/no-non-null-assertion -- every index is a code, a pair of codes or a place inside the runs */
import {brightnessTables, PARTS_MASK} from './brightness.js';
import {ANY_BLACK_AT, ANY_NEAR_WHITE_AT, ANY_WHITE_AT, BLUE_AT, BRIGHTNESS_AT, GREEN_AT, PIXELS_AT} from './layout.js';
import {NEAR_WHITE_CODE, TOP_CODE} from './light.js';
import {countTranslucent, eachStretch} from './runs.js';
import type {Runs} from './runs.js';

/** From so many pixels on the two large tables pay: reading them out takes as long as counting a tenth of this. */
export const WIDE_PIXELS = 2 ** 20;

const PAIRS = 2 ** 16;
/** Codes near white: with these added, a byte near white runs over and ends, like 0, at no more than these. */
const EDGE_CODES = 256 - NEAR_WHITE_CODE;

interface WideCounter {
  /** Counts pixels given as halves of words; false when some were not opaque: then {@link WideCounter.uncount} it. */
  readonly count: (halves: Uint16Array, from: number, to: number) => boolean;
  readonly uncount: (halves: Uint16Array, from: number, to: number) => void;
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
  const {count, uncount, moveTo} = counter ??= makeCounter();
  const halves = new Uint16Array(words.buffer, words.byteOffset, words.length * 2);
  eachStretch(runs, (from, to) => {
    if (count(halves, from, to)) return;
    uncount(halves, from, to);
    countTranslucent(counts, words, from, to);
  });
  moveTo(counts);
}

function makeCounter(): WideCounter {
  const {redGreen, blueBright, partsRedGreen, partsBlue, code} = makeTables();
  let [blackByBlue, whiteByBlue, nearWhiteByBlue, pixels] = [0, 0, 0, 0];

  /** Pixels at an edge in blue alone: those in red or green are found in the table. */
  function noteBlue(pair: number, b: number, times: number): void {
    const [r, g] = [pair & 255, pair >>> 8];
    if (b === 0) {
      if (r > 0 && g > 0) blackByBlue += times;
    } else {
      if (r < NEAR_WHITE_CODE && g < NEAR_WHITE_CODE) nearWhiteByBlue += times;
      if (b === TOP_CODE && r < TOP_CODE && g < TOP_CODE) whiteByBlue += times;
    }
  }

  function count(halves: Uint16Array, from: number, to: number): boolean {
    let all = -1;
    for (let at = from * 2; at < to * 2; at += 2) {
      const pair = halves[at]!;
      const upper = halves[at + 1]!;
      all &= upper;
      const b = upper & 255;
      if (((b + EDGE_CODES) & 255) <= EDGE_CODES) noteBlue(pair, b, 1);
      redGreen[pair]!++;
      blueBright[code[partsRedGreen[pair]! + partsBlue[b]!]! << 8 | b]!++;
    }
    pixels += to - from;
    return all >>> 8 === 255;
  }

  function uncount(halves: Uint16Array, from: number, to: number): void {
    for (let at = from * 2; at < to * 2; at += 2) {
      const pair = halves[at]!;
      const b = halves[at + 1]! & 255;
      if (((b + EDGE_CODES) & 255) <= EDGE_CODES) noteBlue(pair, b, -1);
      redGreen[pair]!--;
      blueBright[code[partsRedGreen[pair]! + partsBlue[b]!]! << 8 | b]!--;
    }
    pixels -= to - from;
  }

  function moveTo(counts: Uint32Array): void {
    for (let pair = 0; pair < PAIRS; pair++) {
      const [low, high] = [pair & 255, pair >>> 8];
      const times = redGreen[pair]!;
      counts[low]! += times;
      counts[GREEN_AT + high]! += times;
      if (low === 0 || high === 0) counts[ANY_BLACK_AT]! += times;
      if (low === TOP_CODE || high === TOP_CODE) counts[ANY_WHITE_AT]! += times;
      if (low >= NEAR_WHITE_CODE || high >= NEAR_WHITE_CODE) counts[ANY_NEAR_WHITE_AT]! += times;
      counts[BLUE_AT + low]! += blueBright[pair]!;
      counts[BRIGHTNESS_AT + high]! += blueBright[pair]!;
    }
    counts[ANY_BLACK_AT]! += blackByBlue;
    counts[ANY_WHITE_AT]! += whiteByBlue;
    counts[ANY_NEAR_WHITE_AT]! += nearWhiteByBlue;
    counts[PIXELS_AT]! += pixels;
    redGreen.fill(0);
    blueBright.fill(0);
    blackByBlue = whiteByBlue = nearWhiteByBlue = pixels = 0;
  }

  return {count, uncount, moveTo};
}

/**
 * The tables in one piece of memory, so that the distance between them is ours to choose: were it a multiple of 4096
 * bytes, a gray picture would hit the same place of both at once, and processors take that for one place.
 */
function makeTables() {
  const {red, green, blue, code} = brightnessTables();
  const gap = 2560;
  const memory = new ArrayBuffer(PAIRS * 10 + 2 * gap + 512 + code.length);
  const redGreen = new Int32Array(memory, 0, PAIRS);
  const blueBright = new Int32Array(memory, PAIRS * 4 + gap, PAIRS);
  const partsRedGreen = new Uint16Array(memory, PAIRS * 8 + 2 * gap, PAIRS);
  const partsBlue = new Uint16Array(memory, PAIRS * 10 + 2 * gap, 256);
  const codes = new Uint8Array(memory, PAIRS * 10 + 2 * gap + 512, code.length);
  for (let pair = 0; pair < PAIRS; pair++) {
    partsRedGreen[pair] = (red[pair & 255]! & PARTS_MASK) + (green[pair >>> 8]! & PARTS_MASK);
  }
  for (let b = 0; b < 256; b++) partsBlue[b] = blue[b]! & PARTS_MASK;
  codes.set(code);
  return {redGreen, blueBright, partsRedGreen, partsBlue, code: codes};
}
