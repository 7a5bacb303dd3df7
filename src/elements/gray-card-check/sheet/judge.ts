import type {Exposure} from '../../../core/exposure/stops.js';
import {castOf, colourTemperature, PICTURE_WHITE, type Cast} from '../../../core/white/cast.js';
import type {CardReading, Patch} from '../../../core/white/card.js';
import type {Gains} from '../../../core/white/gains.js';
import {CARD_REFLECTANCES} from '../../../core/white/patches.js';
import type {CardShot, GrayCard} from '../reading.js';

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
