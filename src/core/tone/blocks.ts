import {linearTable, TOP_CODE} from './light.js';
import type {Crop, Pixels} from './pixels.js';

/**
 * Codes from here up may be blown out and smoothed over by the file's compression, so a block that holds one is not
 * compared. A margin of five codes: JPEG at ordinary quality rings by about that much.
 */
const NEAR_WHITE = TOP_CODE - 5;

/** A picture as a grid of averaged blocks. */
export interface Blocks {
  readonly columns: number;
  readonly rows: number;
  /** Mean linear light of each block, red, green, blue one after the other; `NaN` where a channel comes near white. */
  readonly light: Float64Array;
  /** Counts over the whole crop: red, green, blue at 0, then red, green, blue at 255. */
  readonly edges: Float64Array;
  readonly pixels: number;
}

/**
 * Averages a crop of a picture over a grid, in linear light. Block borders lie at the same share of the crop in any
 * picture, so that two files of different size can be compared.
 * @param crop - whole pixels, inside the picture
 * @param columns - blocks across, 1 to the crop's width
 * @param rows - blocks down, 1 to the crop's height
 */
export function averageBlocks(pixels: Pixels, crop: Crop, columns: number, rows: number): Blocks {
  const table = linearTable();
  const light = new Float64Array(columns * rows * 3);
  const counts = new Float64Array(columns * rows);
  const edges = new Float64Array(6);
  const add = (to: Float64Array, at: number, amount: number): void => { to[at] = (to[at] as number) + amount; };
  for (let line = 0; line < crop.height; line++) {
    const row = Math.floor(line * rows / crop.height);
    let at = ((crop.y + line) * pixels.width + crop.x) * 4;
    for (let across = 0; across < crop.width; across++, at += 4) {
      const block = row * columns + Math.floor(across * columns / crop.width);
      add(counts, block, 1);
      for (let channel = 0; channel < 3; channel++) {
        const code = pixels.data[at + channel] as number;
        if (code === 0) add(edges, channel, 1);
        else if (code === TOP_CODE) add(edges, channel + 3, 1);
        add(light, block * 3 + channel, code > NEAR_WHITE ? NaN : table[code] as number);
      }
    }
  }
  const means = light.map((sum, at) => sum / (counts[Math.floor(at / 3)] as number));
  return {columns, rows, light: means, edges, pixels: crop.width * crop.height};
}
