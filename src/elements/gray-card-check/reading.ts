import type {Exposure} from '../../core/exposure/stops.js';
import type {Lights} from '../../core/light/set-text.js';
import type {Cast} from '../../core/white/cast.js';
import type {CardReading, Patch} from '../../core/white/card.js';
import type {Gains} from '../../core/white/gains.js';
import type {CardPatches} from '../../core/white/patches.js';
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
