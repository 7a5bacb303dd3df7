import {Problem} from '../problem.js';
import {codeFromLinear, linearTable, TOP_CODE} from '../tone/light.js';
import type {Level} from '../tone/level.js';
import type {Pixels} from '../tone/pixels.js';

/** Factors on linear light that make a gray card neutral. Green is left as it is. */
export interface Gains {
  readonly red: number;
  readonly green: 1;
  readonly blue: number;
}

/**
 * White-balance gains from the gray patch, green over red and green over blue in linear light. (Dividing codes instead
 * gives the wrong answer: half the correction and less.)
 * @param gray - reading of the gray patch
 * @throws {Problem} `gray` when a channel is black: nothing multiplies it up to gray
 */
export function gainsFromGray({red, green, blue}: Pick<Level, 'red' | 'green' | 'blue'>): Gains {
  if (!(red.mean > 0 && green.mean > 0 && blue.mean > 0)) {
    throw new Problem('gray', Math.min(red.mean, green.mean, blue.mean), 'a gray patch with light in every channel');
  }
  return {red: green.mean / red.mean, green: 1, blue: green.mean / blue.mean};
}

/** Tables from code to code, one a channel: what {@link gainTables} makes and {@link applyTables} uses. */
export type GainTables = readonly [red: Uint8Array, green: Uint8Array, blue: Uint8Array];

/**
 * Code-to-code tables that multiply linear light.
 * @param gains - factors above 0
 * @param stops - exposure to add at the same time, positive = brighter
 * @throws {Problem} `gains` when one is not a finite number above 0
 */
export function gainTables(gains: Gains, stops: number = 0): GainTables {
  const light = linearTable();
  const [red, green, blue] = [gains.red, gains.green, gains.blue].map((gain) => {
    const factor = gain * 2 ** stops;
    if (!(Number.isFinite(factor) && factor > 0)) throw new Problem('gains', gain, 'a number above 0');
    return Uint8Array.from({length: TOP_CODE + 1}, (_, code) => Math.round(codeFromLinear((light[code] as number) * factor)));
  }) as [Uint8Array, Uint8Array, Uint8Array];
  return [red, green, blue];
}

/**
 * A preview of the picture with the tables applied. What was clipped stays lost: no gain brings it back.
 * @returns a new picture; alpha is kept
 */
export function applyTables({data, width, height}: Pixels, tables: GainTables): Pixels & {readonly data: Uint8ClampedArray} {
  const [red, green, blue] = tables;
  const out = new Uint8ClampedArray(width * height * 4);
  for (let at = 0; at < out.length; at += 4) {
    out[at] = red[data[at] as number] as number;
    out[at + 1] = green[data[at + 1] as number] as number;
    out[at + 2] = blue[data[at + 2] as number] as number;
    out[at + 3] = data[at + 3] as number;
  }
  return {data: out, width, height};
}
