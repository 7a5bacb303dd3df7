import {NO_SHIFT} from '../core/tone/level.js';
import type {CodeShift} from '../core/tone/level.js';
import {TOP_CODE} from '../core/tone/light.js';
import {cropOnto, wholeOf} from '../core/tone/pixels.js';
import type {Crop, Pixels} from '../core/tone/pixels.js';
import type {CellMeans} from './jpeg-cells.js';

/**
 * Most that rounding can take off a mean, codes: half a step of brightness, of red or blue against it (1.8 codes a step
 * at most), and of the code itself. What differs by more was not rounded but is another colour.
 */
const MOST = 0.5 + 1.772 / 2 + 0.5;

/** Orientations that are undone by another one. */
const BACK: Readonly<Record<number, number>> = {6: 8, 8: 6};

/**
 * What the decoder's rounding took off a region, codes to be added to each channel's mean. Taken from the cells that lie
 * in the region as a whole; a channel's cells that hold a 0 or 255 are left out, since there it is cut off as well.
 * @param cells - means in the file
 * @param pixels - the decoded picture, the right way up
 * @param region - cut to the picture
 * @param orientation - how the decoder turned it, Exif orientation 1 to 8
 * @returns no shift where there is no whole cell, or where the picture is not what the file holds
 * @throws {Problem} `crop` when nothing of the region is on the picture
 */
export function roundedOff(cells: CellMeans, pixels: Pixels, region: Crop, orientation: number): CodeShift {
  const {cellWidth, cellHeight, columns, codes} = cells;
  const shown = turned(wholeOf(cells), cells, orientation);
  if (shown.width !== pixels.width || shown.height !== pixels.height) return NO_SHIFT;
  const {x, y, width, height} = turned(cropOnto(region, pixels.width, pixels.height), pixels, BACK[orientation] ?? orientation);
  const shift = [0, 0, 0];
  const counts = [0, 0, 0];
  for (let row = Math.ceil(y / cellHeight); (row + 1) * cellHeight <= y + height; row++) {
    for (let column = Math.ceil(x / cellWidth); (column + 1) * cellWidth <= x + width; column++) {
      const place = turned({x: column * cellWidth, y: row * cellHeight, width: cellWidth, height: cellHeight}, cells, orientation);
      for (let channel = 0; channel < 3; channel++) {
        const mean = meanCode(pixels, place, channel);
        if (mean === undefined) continue;
        shift[channel] = (shift[channel] as number) + (codes[(row * columns + column) * 3 + channel] as number) - mean;
        counts[channel] = (counts[channel] as number) + 1;
      }
    }
  }
  const means = shift.map((sum, channel) => sum / Math.max(1, counts[channel] as number)) as [number, number, number];
  return means.every((mean) => Math.abs(mean) <= MOST) ? means : NO_SHIFT;
}

/** Mean code of a channel, `undefined` when it reaches 0 or 255. */
function meanCode({data, width}: Pixels, place: Crop, channel: number): number | undefined {
  let sum = 0;
  for (let y = place.y; y < place.y + place.height; y++) {
    for (let x = place.x; x < place.x + place.width; x++) {
      const code = data[(y * width + x) * 4 + channel] as number;
      if (code === 0 || code === TOP_CODE) return undefined;
      sum += code;
    }
  }
  return sum / (place.width * place.height);
}

/** Where a rectangle of the stored picture is once it is turned. Source: Exif 2.32 (CIPA DC-008), tag 274. */
function turned({x, y, width, height}: Crop, size: {readonly width: number; readonly height: number}, orientation: number): Crop {
  const right = size.width - x - width;
  const bottom = size.height - y - height;
  const flat = {width, height};
  const upright = {width: height, height: width};
  switch (orientation) {
    case 2: return {x: right, y, ...flat};
    case 3: return {x: right, y: bottom, ...flat};
    case 4: return {x, y: bottom, ...flat};
    case 5: return {x: y, y: x, ...upright};
    case 6: return {x: bottom, y: x, ...upright};
    case 7: return {x: bottom, y: right, ...upright};
    case 8: return {x: y, y: right, ...upright};
    default: return {x, y, ...flat};
  }
}
