import {countNarrow} from './count-narrow.js';
import {countWide, WIDE_PIXELS} from './count-wide.js';
import type {Crop} from './pixels.js';

/**
 * Counts the pixels of a rectangle into `counts`.
 *
 * A pixel that is less than half opaque is not part of the picture and is not counted.
 * @param counts - counts as laid out in layout.ts, added to
 * @param words - pixels, alpha in the highest byte
 * @param rowWidth - pixels in a row of the whole picture
 * @param crop - whole pixels, inside the picture; not checked
 */
export function countInto(counts: Uint32Array, words: Uint32Array, rowWidth: number, crop: Crop): void {
  const start = crop.y * rowWidth + crop.x;
  // Rows from edge to edge follow each other without a gap.
  const [length, rows] = crop.width === rowWidth ? [crop.width * crop.height, 1] : [crop.width, crop.height];
  const count = crop.width * crop.height >= WIDE_PIXELS ? countWide : countNarrow;
  count(counts, words, {start, length, rows, rowWidth});
}
