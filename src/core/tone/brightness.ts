import {codeFromLinear, linearTable, LUMINANCE_WEIGHTS, NEAR_WHITE_CODE, TOP_CODE} from './light.js';

/**
 * Luminance is added up in whole parts of this, so that counting millions of pixels needs no floating point and gives
 * the same answer everywhere. Even in the shadows, where codes lie closest, a part is 1/20 of a code.
 */
const PARTS_OF_WHITE = 2 ** 16;

/** Bits from which a part table counts channels at 255, those near it, and those at 0; two bits each. */
export const AT_WHITE_BIT = 20;
export const NEAR_WHITE_BIT = 22;
export const AT_BLACK_BIT = 24;
/** The bits of a sum that are luminance. */
export const PARTS_MASK = 2 ** AT_WHITE_BIT - 1;

/** Tables that turn three codes into a brightness code with two additions and no multiplication. */
export interface BrightnessTables {
  /** Luminance of a red code in parts, plus one at each of the bits above that applies. */
  readonly red: Int32Array;
  readonly green: Int32Array;
  readonly blue: Int32Array;
  /** Brightness code of a luminance in parts. */
  readonly code: Uint8Array;
}

let tables: BrightnessTables | undefined;

/** The tables behind {@link brightnessCode}, for loops over pixels. Made on first use and shared: not to be changed. */
export function brightnessTables(): BrightnessTables {
  return tables ??= {
    red: partsOf(LUMINANCE_WEIGHTS[0]),
    green: partsOf(LUMINANCE_WEIGHTS[1]),
    blue: partsOf(LUMINANCE_WEIGHTS[2]),
    // Rounding three parts can reach one past white.
    code: Uint8Array.from({length: PARTS_OF_WHITE + 2}, (_, parts) => Math.round(codeFromLinear(parts / PARTS_OF_WHITE))),
  };
}

function partsOf(weight: number): Int32Array {
  return Int32Array.from(linearTable(), (light, code) =>
    Math.round(light * weight * PARTS_OF_WHITE)
      + (code === TOP_CODE ? 2 ** AT_WHITE_BIT : 0) + (code >= NEAR_WHITE_CODE ? 2 ** NEAR_WHITE_BIT : 0)
      + (code === 0 ? 2 ** AT_BLACK_BIT : 0));
}

/**
 * Brightness of a colour as the chart counts it: its luminance in **linear light**, shown as the sRGB code of a gray
 * of equal luminance. A gray keeps its own code.
 *
 * Programs differ here. Weighting the codes themselves (as "luma" does) is quicker and calls pure red 54 where this
 * says 127: it puts saturated colours up to a stop and more too dark. Weights of 0.299, 0.587, 0.114 belong to
 * another set of primaries.
 * @param red - sRGB code, whole, 0 to 255; not checked
 * @param green - sRGB code, whole, 0 to 255; not checked
 * @param blue - sRGB code, whole, 0 to 255; not checked
 * @returns code, whole, 0 to 255; within 0.6 of the code before rounding
 * Source: weights ITU-R BT.709, curve IEC 61966-2-1; that brightness is counted in linear light is our decision.
 */
export function brightnessCode(red: number, green: number, blue: number): number {
  const table = brightnessTables();
  const parts = (table.red[red] as number) + (table.green[green] as number) + (table.blue[blue] as number);
  return table.code[parts & PARTS_MASK] as number;
}
