import {compareShots} from '../core/tone/compare.js';
import type {Comparison} from '../core/tone/compare.js';
import {focusAlong, focusBetween} from '../core/tone/focus-line.js';
import type {FocusOnLine} from '../core/tone/focus-line.js';
import {readLevel} from '../core/tone/level.js';
import type {CodeShift, Level} from '../core/tone/level.js';
import type {Crop, Pixels} from '../core/tone/pixels.js';
import {cutOut} from '../core/tone/pixels.js';
import {sharpnessAlong, sharpnessGrid} from '../core/tone/sharpness.js';
import type {Line, SharpnessGrid, SharpnessPoint} from '../core/tone/sharpness.js';
import type {Tally} from '../core/tone/tally.js';
import {tallyFromTiles} from '../core/tone/tiles.js';
import type {TileTallies} from '../core/tone/tiles.js';
import {readCard} from '../core/white/card.js';
import type {CardReading} from '../core/white/card.js';
import {findCard} from '../core/white/patches.js';
import type {CardPatches} from '../core/white/patches.js';

/** A decoded picture where its pixels are kept. */
export interface Picture {
  readonly pixels: Pixels;
  readonly tiles: TileTallies;
  /** What the decoder's rounding took off regions. Reads the file when it is first wanted. */
  readonly shifts: () => Promise<(region: Crop) => CodeShift>;
}

/**
 * Everything that can be asked of an open photo. The answers are computed where the pixels are, in the worker, so
 * a question is a pure function of the core wrapped in one line here, and nothing else has to know of it. What a JPEG
 * file knows better than its decoded pixels goes into the questions about mean colours.
 *
 * The first parameter is the picture, the second what is asked, which must be plain data; the third is the other
 * picture, for questions about two.
 */
export const QUESTIONS = {
  tally: ({tiles}: Picture, crop: Crop): Tally => tallyFromTiles(tiles, crop),
  pixels: ({pixels}: Picture, crop: Crop): Pixels => cutOut(pixels, crop),
  level: async ({pixels, shifts}: Picture, {region, gray}: {readonly region: Crop; readonly gray?: number}): Promise<Level> =>
    readLevel(pixels, region, gray, (await shifts())(region)),
  /** How the picture differs from the other one, which was taken before it; the crop is the other one's. */
  compare: ({pixels}: Picture, crop: Crop, before?: Picture): Comparison => compareShots(before?.pixels ?? pixels, pixels, crop),
  /** Where a gray card lies inside the crop, if one does. */
  findCard: ({pixels}: Picture, crop: Crop): CardPatches | undefined => findCard(pixels, crop),
  readCard: async ({pixels, shifts}: Picture, patches: CardPatches): Promise<CardReading> =>
    readCard(pixels, patches, undefined, await shifts()),
  sharpnessAlong: ({pixels}: Picture, {line, step}: {readonly line: Line; readonly step?: number}): SharpnessPoint[] =>
    sharpnessAlong(pixels, line, step),
  sharpnessGrid: ({pixels}: Picture, {crop, cell}: {readonly crop: Crop; readonly cell?: number}): SharpnessGrid =>
    sharpnessGrid(pixels, crop, cell),
  /** Where along readings the focus lies. Asks nothing of the picture, but takes longer than a page should be held. */
  focusAlong: (_: Picture, {points, scaleAtEnd}: {readonly points: readonly SharpnessPoint[]; readonly scaleAtEnd: number}):
    FocusOnLine | undefined => focusAlong(points, scaleAtEnd),
  /** The same from readings of two pictures at different apertures. */
  focusBetween: (_: Picture, {wide, narrow}: {readonly wide: readonly SharpnessPoint[]; readonly narrow: readonly SharpnessPoint[]}):
    FocusOnLine | undefined => focusBetween(wide, narrow),
};

export type Questions = typeof QUESTIONS;
/** Name of a question. */
export type Question = keyof Questions;
/** What has to be said with a question. */
export type Asked<Q extends Question> = Parameters<Questions[Q]>[1];
/** What comes back. */
export type Answer<Q extends Question> = Awaited<ReturnType<Questions[Q]>>;
