import {GRAY_LIGHT, NO_SHIFT, readLevel} from '../tone/level.js';
import type {CodeShift, Level} from '../tone/level.js';
import type {Crop, Pixels} from '../tone/pixels.js';
import {gainsFromGray} from './gains.js';
import type {Gains} from './gains.js';
import {CARD_REFLECTANCES} from './patches.js';
import type {CardPatches} from './patches.js';

/** A patch of the card. */
export type Patch = 'white' | 'gray' | 'black';

/** Share of a patch at 255 from which it counts as clipped: grain on a bright patch pushes some pixels over. Our decision. */
const CLIPPED_SHARE = 0.05;
/**
 * Stray light, as a share of the gray patch's own, from which the card is no longer to be trusted: one part in ten
 * moves gains and exposure by about as much as a third-stop click does. Our decision.
 */
const MOST_VEIL = 0.1;
/** Difference between the brightest and darkest ninth of a patch, share of its mean, that a lamp to one side may cause. */
const MOST_UNEVEN = 0.12;

/** Something that speaks against the card shot. */
export type CardFault =
  /** White is at 255: exposure is judged from gray alone, and light that catches the card may hide in it. */
  | {readonly fault: 'white-clipped'; readonly share: number}
  /** Gray is at 255 in a channel: its gains and exposure error mean nothing. */
  | {readonly fault: 'gray-clipped'; readonly share: number}
  /** Gray is at 0 in a channel: there are no gains. */
  | {readonly fault: 'gray-black'; readonly share: number}
  /** Black is brighter against gray than the card makes it: `veil` is stray light as a share of the gray patch's own. */
  | {readonly fault: 'black-lifted'; readonly veil: number}
  /** A patch is not even: a reflection, or a shadow. `brighter` is the side where the light sits. */
  | {readonly fault: 'uneven'; readonly patch: Patch; readonly unevenness: number; readonly brighter: Side};

/** A side or corner of a patch in the picture. */
export type Side = 'left' | 'right' | 'top' | 'bottom' | 'middle';

/** What a shot of the gray card says. */
export interface CardReading {
  readonly white: Level;
  readonly gray: Level;
  readonly black: Level;
  /** `undefined` when a channel of the gray patch is black or at 255. */
  readonly gains: Gains | undefined;
  /** Stops by which the picture is too bright for gray to be {@link GRAY_LIGHT}; negative = too dark. */
  readonly exposureError: number;
  /** Stray light over the card, as a share of the gray patch's own light; about 0 on a clean shot. */
  readonly veil: number;
  /** Difference between brightest and darkest ninth of each patch, share of its mean. */
  readonly unevenness: Readonly<Record<Patch, number>>;
  readonly faults: readonly CardFault[];
  /** Whether gains and exposure error can be used. A clipped white alone does not spoil them. */
  readonly trusted: boolean;
}

/**
 * Judges a shot of the gray card.
 * @param patches - where the patches lie, found or marked
 * @param reflectances - of white, gray and black, over 0 to 1
 * @param shiftIn - what a patch really is brighter by than its pixels say, where that is known
 * @throws {Problem} `crop` when a patch lies off the picture
 */
export function readCard(
  pixels: Pixels, patches: CardPatches, reflectances: readonly [number, number, number] = CARD_REFLECTANCES,
  shiftIn: (patch: Crop) => CodeShift = () => NO_SHIFT,
): CardReading {
  const [white, gray, black] = [patches.white, patches.gray, patches.black].map((patch) =>
    readLevel(pixels, patch, GRAY_LIGHT, shiftIn(patch))) as [Level, Level, Level];
  const [ofWhite, ofGray, ofBlack] = (['white', 'gray', 'black'] as const).map((patch) => unevenness(pixels, patches[patch])) as
    [Unevenness, Unevenness, Unevenness];
  const veil = strayLight(gray, black, reflectances[2] / reflectances[1]);
  const grayClipped = gray.atWhite > CLIPPED_SHARE;
  const grayBlack = Math.min(gray.red.mean, gray.green.mean, gray.blue.mean) <= 0;
  const faults: CardFault[] = [];
  if (grayClipped) faults.push({fault: 'gray-clipped', share: gray.atWhite});
  if (grayBlack) faults.push({fault: 'gray-black', share: gray.atBlack});
  if (veil > MOST_VEIL) faults.push({fault: 'black-lifted', veil});
  for (const [patch, uneven] of [['gray', ofGray], ['black', ofBlack], ['white', ofWhite]] as const) {
    if (uneven.share > MOST_UNEVEN) faults.push({fault: 'uneven', patch, unevenness: uneven.share, brighter: uneven.brighter});
  }
  if (white.atWhite > CLIPPED_SHARE) faults.push({fault: 'white-clipped', share: white.atWhite});
  return {
    white, gray, black, veil, faults,
    gains: grayClipped || grayBlack ? undefined : gainsFromGray(gray),
    exposureError: Math.log2(gray.luminance.mean / GRAY_LIGHT),
    unevenness: {white: ofWhite.share, gray: ofGray.share, black: ofBlack.share},
    trusted: faults.every(({fault}) => fault === 'white-clipped'),
  };
}

/**
 * Light that lies over both patches alike, as a share of what the gray patch itself gives back.
 * With v added to both, (black + v) / (gray + v) is what is measured; solved for v / gray.
 */
function strayLight(gray: Level, black: Level, nominal: number): number {
  const measured = black.luminance.mean / gray.luminance.mean;
  return measured >= 1 ? Infinity : (measured - nominal) / (1 - measured);
}

interface Unevenness {
  readonly share: number;
  readonly brighter: Side;
}


/** Brightest against darkest of nine parts; averaging them first keeps grain out of it. */
function unevenness(pixels: Pixels, {x, y, width, height}: Crop): Unevenness {
  const parts = Array.from({length: 9}, (_, part) => readLevel(pixels, {
    x: x + (part % 3) * width / 3, y: y + Math.floor(part / 3) * height / 3,
    width: Math.max(1, width / 3), height: Math.max(1, height / 3),
  }).luminance.mean);
  const mean = parts.reduce((sum, part) => sum + part, 0) / parts.length;
  if (!(mean > 0)) return {share: 0, brighter: 'middle'};
  const line = (numbers: readonly number[]): number => numbers.reduce((sum, part) => sum + (parts[part] as number), 0);
  const across = line([2, 5, 8]) - line([0, 3, 6]);
  const down = line([6, 7, 8]) - line([0, 1, 2]);
  const tilt = Math.max(Math.abs(across), Math.abs(down)) / 3;
  const range = Math.max(...parts) - Math.min(...parts);
  return {
    share: range / mean,
    // A spot in the middle lifts no side above its opposite.
    brighter: tilt < range / 3 ? 'middle'
      : Math.abs(across) > Math.abs(down) ? (across > 0 ? 'right' : 'left')
        : (down > 0 ? 'bottom' : 'top'),
  };
}
