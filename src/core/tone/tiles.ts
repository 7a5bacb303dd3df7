import {countInto} from './count.js';
import {COUNTS} from './layout.js';
import {cropOnto} from './pixels.js';
import type {Crop, Pixels} from './pixels.js';
import {tallyFrom, wordsOf} from './tally.js';
import type {Tally} from './tally.js';

/** Pixels along a tile. At 24 megapixels the sums take 6 MB, and no crop needs more than about a million pixels counted. */
const TILE = 128;

/** A picture counted in tiles, so that the tally of any crop takes a millisecond or two and is still exact. */
export interface TileTallies {
  readonly words: Uint32Array;
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
  /** Rows of tiles counted so far: {@link countTileRow} adds one. */
  counted: number;
  /**
   * Counts of everything above and to the left of each tile corner, corner by corner, row by row: four of them
   * give any rectangle of tiles.
   */
  readonly sums: Uint32Array;
}

/**
 * Makes ready to count `pixels` in tiles; nothing is counted yet.
 * @param pixels - the picture, which is read again at every tally and must not change
 * @throws {Problem} `pixels` when the data is shorter than width × height
 */
export function startTiles(pixels: Pixels): TileTallies {
  const columns = Math.ceil(pixels.width / TILE);
  const rows = Math.ceil(pixels.height / TILE);
  return {
    words: wordsOf(pixels), width: pixels.width, height: pixels.height, columns, rows, counted: 0,
    sums: new Uint32Array((columns + 1) * (rows + 1) * COUNTS),
  };
}

/**
 * Counts the next row of tiles, a few milliseconds' work on a large picture, so that a page can do it in slices.
 * @returns whether there are rows left
 */
export function countTileRow(tiles: TileTallies): boolean {
  const row = tiles.counted;
  if (row >= tiles.rows) return false;
  const rowSoFar = new Uint32Array(COUNTS);
  for (let column = 0; column < tiles.columns; column++) {
    const x = column * TILE;
    const y = row * TILE;
    const crop = {x, y, width: Math.min(TILE, tiles.width - x), height: Math.min(TILE, tiles.height - y)};
    countInto(rowSoFar, tiles.words, tiles.width, crop);
    const above = corner(tiles, column + 1, row);
    const here = corner(tiles, column + 1, row + 1);
    for (let bin = 0; bin < COUNTS; bin++) here[bin] = (above[bin] as number) + (rowSoFar[bin] as number);
  }
  tiles.counted = row + 1;
  return tiles.counted < tiles.rows;
}

function corner({sums, columns}: TileTallies, column: number, row: number): Uint32Array {
  const start = (row * (columns + 1) + column) * COUNTS;
  return sums.subarray(start, start + COUNTS);
}

/**
 * Tally of a crop: whole tiles from the sums, and the strips between their edges and the crop's counted pixel by pixel.
 * @param tiles - a picture all of whose rows are counted
 * @param crop - cut to the picture
 * @returns the same counts as {@link tallyPixels}
 * @throws {Problem} `crop` when nothing of it is on the picture
 */
export function tallyFromTiles(tiles: TileTallies, crop: Crop): Tally {
  const {width, height} = tiles;
  const {x, y, width: cropWidth, height: cropHeight} = cropOnto(crop, width, height);
  const right = x + cropWidth;
  const bottom = y + cropHeight;
  // The nearest tile borders, inside or outside the crop: what sticks out is counted too, and taken away.
  const tileX = nearestBorder(x, width);
  const tileRight = nearestBorder(right, width);
  const tileY = nearestBorder(y, height);
  const tileBottom = nearestBorder(bottom, height);
  const counts = tileBlock(tiles, tileX, tileY, tileRight, tileBottom);
  // Upright strips as tall as the crop, then level ones as wide as the tiles.
  addStrip(tiles, counts, x, tileX, tileY, tileBottom);
  addStrip(tiles, counts, tileRight, right, tileY, tileBottom);
  addBand(tiles, counts, y, tileY, x, right);
  addBand(tiles, counts, tileBottom, bottom, x, right);
  return tallyFrom(counts);
}

function nearestBorder(at: number, end: number): number {
  const border = Math.round(at / TILE) * TILE;
  return end - at < Math.abs(border - at) ? end : Math.min(border, end);
}

/** Counts of the tiles between four borders. */
function tileBlock(tiles: TileTallies, x: number, y: number, right: number, bottom: number): Uint32Array {
  const [first, last] = [Math.ceil(x / TILE), Math.ceil(right / TILE)];
  const [top, end] = [Math.ceil(y / TILE), Math.ceil(bottom / TILE)];
  const counts = corner(tiles, last, end).slice();
  const without = [corner(tiles, first, end), corner(tiles, last, top)] as const;
  const twice = corner(tiles, first, top);
  for (let bin = 0; bin < COUNTS; bin++) {
    // Unsigned words wrap round, so the order of taking away and adding does not matter.
    counts[bin] = (counts[bin] as number) - (without[0][bin] as number) - (without[1][bin] as number)
      + (twice[bin] as number);
  }
  return counts;
}

/** Adds the columns from `from` to `to`, or takes those from `to` to `from` away when it is the larger. */
function addStrip(tiles: TileTallies, counts: Uint32Array, from: number, to: number, top: number, bottom: number): void {
  addSigned(tiles, counts, {x: Math.min(from, to), y: top, width: Math.abs(to - from), height: bottom - top}, to > from);
}

/** Adds the rows from `from` to `to`, or takes those from `to` to `from` away when it is the larger. */
function addBand(tiles: TileTallies, counts: Uint32Array, from: number, to: number, left: number, right: number): void {
  addSigned(tiles, counts, {x: left, y: Math.min(from, to), width: right - left, height: Math.abs(to - from)}, to > from);
}

function addSigned(tiles: TileTallies, counts: Uint32Array, crop: Crop, add: boolean): void {
  if (crop.width === 0 || crop.height === 0) return;
  const strip = new Uint32Array(COUNTS);
  countInto(strip, tiles.words, tiles.width, crop);
  const sign = add ? 1 : -1;
  for (let bin = 0; bin < COUNTS; bin++) counts[bin] = (counts[bin] as number) + sign * (strip[bin] as number);
}
