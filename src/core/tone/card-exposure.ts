import {Problem, requirePositive, requireWithin} from '../problem.js';
import {GRAY_LIGHT} from './level.js';
import {codeFromLinear, linearFromCode, TOP_CODE} from './light.js';
import {codeReached, percentileCode} from './percentiles.js';
import {COLOUR_CHANNELS} from './tally.js';
import type {Tally} from './tally.js';

/** Where the figure's lights and darks should sit in the finished picture, sRGB codes. */
export interface ToneAims {
  /** Code for the highlights, above {@link shadows}, below 255. */
  readonly highlights: number;
  /** Code the shadows should at least reach, above 0. */
  readonly shadows: number;
}

/**
 * Aims before a dark backdrop: the lightest paint just short of white, and dark folds that still show something.
 * Common practice, no source.
 */
export const DARK_BACKDROP_AIMS: ToneAims = {highlights: 240, shadows: 12};

/** Lights and darks of the figure as they are now, linear light. */
export interface ToneEnds {
  readonly highlights: number;
  readonly shadows: number;
  /** Whether the highlights are cut off, so that they are brighter than the file can say. */
  readonly clipped: boolean;
}

/** Reflectance of the lightest and the darkest paint, as on the card's white and black. Common practice, no source. */
const [LIGHTEST_PAINT, DARKEST_PAINT] = [0.9, 0.035];

/**
 * Lights and darks from the gray card: the lightest and the darkest paint in the light that falls on it.
 * Holds before the figure is on the table, and whatever colours it has.
 * @param gray - linear light of the gray patch, above 0
 * @throws {Problem} `gray` when not above 0
 */
export function endsFromCard(gray: number): ToneEnds {
  requirePositive('gray', gray);
  return {highlights: gray * LIGHTEST_PAINT / GRAY_LIGHT, shadows: gray * DARKEST_PAINT / GRAY_LIGHT, clipped: gray >= 1};
}

/** Shares of the crop that may lie above the highlights (glints) and, backdrop apart, below the shadows. */
const GLINTS = 0.005;
const DEEPEST = 0.02;

/**
 * Lights and darks from the crop of a trial shot. The brightest of the three colours counts as highlight; darks are read
 * from brightness.
 * @param tally - of the crop, at least one pixel
 * @param backdrop - share of the crop that the dark backdrop fills, 0 up to 1; not counted as shadow
 * @throws {Problem} `pixels` when nothing was counted; `backdrop` when outside 0 to 1
 */
export function endsFromCrop(tally: Tally, backdrop: number = 0): ToneEnds {
  requireWithin('backdrop', backdrop, 0, 1);
  const highlights = Math.max(...COLOUR_CHANNELS.map((channel) => codeReached(tally, channel, GLINTS)));
  const shadows = percentileCode(tally, 'brightness', backdrop + (1 - backdrop) * DEEPEST);
  return {
    highlights: linearFromCode(highlights), shadows: linearFromCode(Math.min(shadows, highlights)),
    clipped: highlights === TOP_CODE,
  };
}

/** Exposure that puts the figure where it should sit. */
export interface IntentExposure {
  /** Stops to the aim for the highlights, before rounding to clicks; positive = brighter. */
  readonly wanted: number;
  /** Whole thirds of a stop, rounded down, so that the highlights do not pass their aim. */
  readonly thirds: number;
  /** Codes the highlights and shadows will show once `thirds` are dialled in, not rounded. */
  readonly highlightsAt: number;
  readonly shadowsAt: number;
  /**
   * Stops by which the shadows then stay below their aim; 0 when they reach it. More exposure would cost the highlights: it
   * takes a fill, a reflector or a softer lamp.
   */
  readonly shadowsShort: number;
  /** Whether the highlights are cut off in this shot, so that `wanted` asks for too little. Shoot again and look. */
  readonly estimated: boolean;
}

/**
 * Exposure that brings the highlights to their aim, and what that leaves of the shadows. Lights decide: what is lost
 * above is lost, while darks can be lifted with a fill.
 * @param ends - from {@link endsFromCard} or {@link endsFromCrop}
 * @param aims - codes, 0 < shadows < highlights < 255
 * @throws {Problem} `shadows-aim` or `highlights-aim` out of range; `highlights` when there is no light at all
 */
export function exposureForAims(ends: ToneEnds, aims: ToneAims = DARK_BACKDROP_AIMS): IntentExposure {
  const {highlights, shadows} = aims;
  if (!(highlights > 0 && highlights < TOP_CODE)) throw new Problem('highlights-aim', highlights, 'a code above 0 and below 255');
  if (!(shadows > 0 && shadows < highlights)) throw new Problem('shadows-aim', shadows, `a code above 0 and below ${highlights}`);
  requirePositive('highlights', ends.highlights);
  const wanted = Math.log2(linearFromCode(highlights) / ends.highlights);
  // A hair of floating point must not cost a click.
  const thirds = Math.floor(3 * wanted + 1e-9) + 0;
  const factor = 2 ** (thirds / 3);
  return {
    wanted, thirds,
    highlightsAt: codeFromLinear(ends.highlights * factor), shadowsAt: codeFromLinear(ends.shadows * factor),
    shadowsShort: Math.max(0, Math.log2(linearFromCode(shadows) / (ends.shadows * factor))),
    estimated: ends.clipped,
  };
}
