import {brightnessCode} from '../../../src/core/tone/brightness.js';
import type {Crop, Pixels} from '../../../src/core/tone/pixels.js';
import type {Tally} from '../../../src/core/tone/tally.js';

/** The tally as its definition reads, one pixel after the other: slow, and hard to get wrong. */
export function plainTally({data, width}: Pixels, crop: Crop): Tally {
  const [red, green, blue, brightness] = [0, 1, 2, 3].map(() => new Uint32Array(256)) as
    [Uint32Array, Uint32Array, Uint32Array, Uint32Array];
  let [anyBlack, anyWhite, anyNearWhite, pixels] = [0, 0, 0, 0];
  for (let y = crop.y; y < crop.y + crop.height; y++) {
    for (let x = crop.x; x < crop.x + crop.width; x++) {
      const [r, g, b, alpha] = data.subarray((y * width + x) * 4, (y * width + x) * 4 + 4) as unknown as number[];
      if (alpha! < 128) continue;
      red[r!]!++;
      green[g!]!++;
      blue[b!]!++;
      brightness[brightnessCode(r!, g!, b!)]!++;
      if (Math.min(r!, g!, b!) === 0) anyBlack++;
      if (Math.max(r!, g!, b!) === 255) anyWhite++;
      if (Math.max(r!, g!, b!) >= 252) anyNearWhite++;
      pixels++;
    }
  }
  return {red, green, blue, brightness, anyBlack, anyWhite, anyNearWhite, pixels};
}

/** A picture of random colours, every fourth value at an edge; the same for the same seed. */
export function noise(width: number, height: number, seed: number, translucent = false): Pixels {
  const data = new Uint8ClampedArray(width * height * 4);
  let state = seed >>> 0;
  for (let at = 0; at < data.length; at++) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const value = state >>> 24;
    const edge = (state >>> 20) & 15;
    data[at] = at % 4 === 3 && !translucent ? 255 : edge < 2 ? 0 : edge < 4 ? 255 : value;
  }
  return {data, width, height};
}

/** A picture of the given colours, `times` pixels each, in one row. */
export function strip(...runs: readonly (readonly [red: number, green: number, blue: number, times: number])[]): Pixels {
  const data = runs.flatMap(([r, g, b, times]) => Array.from({length: times}, () => [r, g, b, 255]).flat());
  return {data: Uint8ClampedArray.from(data), width: data.length / 4, height: 1};
}
