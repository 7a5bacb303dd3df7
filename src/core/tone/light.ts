import {requireNotNegative, requireWithin} from '../problem.js';

/** Highest code value of an 8-bit picture; 0 and this one are the outer edges of every chart. */
export const TOP_CODE = 255;

/**
 * Codes from here to 255 may have been 255 before the picture was saved: a JPEG of good quality moves codes by a few, and
 * in an area that was cut off at white, half of them downwards. Found on rendered pictures whose clipping is known.
 */
export const NEAR_WHITE_CODE = 252;

/** Share of each channel in luminance, red, green, blue. Source: ITU-R BT.709, also IEC 61966-2-1. */
export const LUMINANCE_WEIGHTS = [0.2126, 0.7152, 0.0722] as const;

/**
 * Linear light of an sRGB code value.
 * @param code - 0 to 255; need not be whole
 * @returns light, 0 (black) to 1 (white); code 188 is half of 255
 * @throws {Problem} outside 0 to 255
 * Source: IEC 61966-2-1 (sRGB).
 */
export function linearFromCode(code: number): number {
  requireWithin('code', code, 0, TOP_CODE);
  const encoded = code / TOP_CODE + 0; // no light has no sign
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
}

/**
 * The sRGB code value that shows an amount of linear light, not rounded.
 * @param light - 0 or above; 1 is white, and more than white is cut off at 255 as in any picture file
 * @returns 0 to 255
 * @throws {Problem} below 0, or not a finite number
 * Source: IEC 61966-2-1 (sRGB).
 */
export function codeFromLinear(light: number): number {
  requireNotNegative('light', light);
  if (light >= 1) return TOP_CODE;
  return TOP_CODE * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
}

let lightOfCode: Float64Array | undefined;

/**
 * Linear light of all 256 code values, for loops over pixels. Made on first use and shared: not to be changed.
 * @returns 256 values from 0 to 1; index = code
 */
export function linearTable(): Float64Array {
  return lightOfCode ??= Float64Array.from({length: TOP_CODE + 1}, (_, code) => linearFromCode(code));
}

/**
 * Difference of light between two code values.
 * @param from - 0 to 255
 * @param to - 0 to 255
 * @returns stops, positive when `to` is brighter; infinite when just one of them is 0; 0 between equals
 * @throws {Problem} outside 0 to 255
 */
export function codeStops(from: number, to: number): number {
  const before = linearFromCode(from);
  const after = linearFromCode(to);
  return before === after ? 0 : Math.log2(after / before);
}

/**
 * Luminance of a colour given in linear light.
 * @param red - linear light, 0 to 1
 * @param green - linear light, 0 to 1
 * @param blue - linear light, 0 to 1
 * @returns 0 to 1 in the same unit
 * Source: ITU-R BT.709 weights, see {@link LUMINANCE_WEIGHTS}.
 */
export function luminance(red: number, green: number, blue: number): number {
  const [ofRed, ofGreen, ofBlue] = LUMINANCE_WEIGHTS;
  return ofRed * red + ofGreen * green + ofBlue * blue;
}
