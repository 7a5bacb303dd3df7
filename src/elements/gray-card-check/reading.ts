import type {Exposure} from '../../core/exposure/stops.js';
import type {Lights} from '../../core/light/set-text.js';
import {castOf, colourTemperature, PICTURE_WHITE, type Cast} from '../../core/white/cast.js';
import type {CardReading, Patch} from '../../core/white/card.js';
import type {Gains} from '../../core/white/gains.js';
import {CARD_REFLECTANCES, type CardPatches} from '../../core/white/patches.js';
import type {Photo} from '../../photo/open.js';

/** Name under which the open card shot lies on a bench. */
export const CARD_SHOT = 'cardShot';

/** Name under which the result lies on a bench, for whoever can use it. */
export const GRAY_CARD = 'grayCard';

/**
 * What a gray card said, as it lies on the bench under {@link GRAY_CARD}. Plain data; replaced as a
 * whole, never changed.
 */
export interface GrayCard {
  /** Whether gains and levels can be used. Look here first: the rest is there even when it is not to be believed. */
  readonly trusted: boolean;
  /** Factors on linear light; `undefined` when the gray patch has a channel at black or at white. */
  readonly gains: Gains | undefined;
  /** Luminance of the gray patch, linear light, 0 to 1, at {@link exposure}. 0.18 where everything is right. */
  readonly grayLinear: number;
  /** Stops by which the shot is too bright for gray to be where it belongs; negative = too dark. */
  readonly exposureError: number;
  /** The exposure the card was shot at, so that its level can be carried over to another. */
  readonly exposure: Exposure;
  /** Lamps and flags as they stood when the card shot was opened. Gains belong to them. */
  readonly lights: Lights;
  /** How the light departs from neutral; `undefined` when a channel of the gray patch is black. */
  readonly cast: Cast | undefined;
  /** Everything measured on the three patches, and what speaks against it. */
  readonly reading: CardReading;
  /** Where the patches lie, px of the card shot. */
  readonly patches: CardPatches;
  /** Name of the card shot's file, '' when it has none. */
  readonly name: string;
}

/** The card shot on the bench, and what is known of where the card lies in it. Closed by whoever replaces it. */
export interface CardShot {
  readonly photo: Photo;
  readonly lights: Lights;
  readonly patches: CardPatches;
  /** `looking` until the search ended; `found`, or `none` when it saw no card; `marked` once somebody moved a frame. */
  readonly how: 'looking' | 'found' | 'none' | 'marked';
  /** Patches that have a place of their own; the others only wait beside the card. */
  readonly placed: readonly Patch[];
  close(): void;
}

/** The patches in the order of the card. */
export const PATCHES = ['white', 'gray', 'black'] as const satisfies readonly Patch[];

/** What the card reading comes to. */
export function grayCardOf(reading: CardReading, {photo, lights, patches}: CardShot, exposure: Exposure): GrayCard {
  const [red, green, blue] = [reading.gray.red.mean, reading.gray.green.mean, reading.gray.blue.mean];
  return {
    trusted: reading.trusted && !isMisplaced(reading), gains: reading.gains, exposureError: reading.exposureError, reading, patches, lights, exposure,
    grayLinear: reading.gray.luminance.mean,
    cast: reading.gains ? castOf(red, green, blue) : undefined,
    name: photo.name,
  };
}

/**
 * Stops by which a patch is off from where it belongs: gray against 18 % of white, the others against the gray patch.
 * @returns positive = too bright; not finite when there is no light in one of them
 */
export function offBy({white, gray, black, exposureError}: CardReading, patch: Patch): number {
  const [ofWhite, ofGray, ofBlack] = CARD_REFLECTANCES;
  switch (patch) {
    case 'white': return Math.log2(white.luminance.mean / gray.luminance.mean / (ofWhite / ofGray));
    case 'gray': return exposureError;
    case 'black': return Math.log2(black.luminance.mean / gray.luminance.mean / (ofBlack / ofGray));
  }
}

/** White is five times as bright as gray on a card, and under heavy stray light still more than twice. Our decision. */
const LEAST_WHITE = 2;

/** Whether the frames cannot lie on the three patches: they do not fall from white through gray to black. */
export function isMisplaced({white, gray, black, faults}: CardReading): boolean {
  if (faults.some(({fault}) => fault === 'white-clipped' || fault === 'gray-clipped')) return false;
  return white.luminance.mean < gray.luminance.mean * LEAST_WHITE || black.luminance.mean >= gray.luminance.mean;
}

/** Distance from the lamps' own colours, CIE 1960 uv, that can be seen beside one of them. Our decision. */
const SEEN_DUV = 0.005;

/**
 * Whether a light is greener or pinker than it should be. Near daylight and lamps it is told against a lamp of the same
 * temperature, since every warm lamp has more green than the mean of its red and blue.
 */
export function tintOf({temperature, greener}: Cast): 'greener' | 'pinker' | undefined {
  if (!temperature) return greener;
  const off = temperature.duv - (colourTemperature(PICTURE_WHITE)?.duv ?? 0);
  return Math.abs(off) < SEEN_DUV ? undefined : off > 0 ? 'greener' : 'pinker';
}

/** Gains as factors of which the least is 1, so that none of them darkens a channel. */
export function gainsFromOne({red, green, blue}: Gains): {readonly red: number; readonly green: number; readonly blue: number} {
  const least = Math.min(red, green, blue);
  return {red: red / least, green: green / least, blue: blue / least};
}

/** Whole thirds of a stop by which the exposure should change, positive = more. */
export function thirdsToRight(exposureError: number): number {
  return Math.round(-3 * exposureError) + 0;
}
