import {linearTable} from '../tone/light.js';
import {cropOnto, wholeOf} from '../tone/pixels.js';
import type {Crop, Pixels} from '../tone/pixels.js';

/** Where the three patches of a gray card lie in a picture, px. */
export interface CardPatches {
  readonly white: Crop;
  readonly gray: Crop;
  readonly black: Crop;
}

/** Cells across the wider side of the searched area. A patch has to be at least three cells wide to be seen. */
const CELLS = 160;
/** Largest spread inside a cell of a plain patch, share of its mean: sensor grain passes, a border does not. */
const PLAIN = 0.12;
/** Stops by which a cell may differ from its neighbour and still belong to the same patch. */
const SAME_PATCH = 0.12;
/** Light added before cells are compared, so that grain in near-black does not tear a patch apart. */
const DARK = 0.004;
/** Share of its enclosing rectangle that a patch fills, tilted a little. */
const LEAST_FILLED = 0.72;
/** Sides of a patch differ by no more than this factor. */
const MOST_OBLONG = 2.5;
/** Sides of two patches of one card, and the gaps between them, differ by no more than this factor. */
const ALIKE = 1.35;
/** A card patch is looked at in its middle this far to either side, share of its size. */
const MIDDLE = 0.55;

/** Mean linear light in red, green and blue. */
type Light = readonly [red: number, green: number, blue: number];

/** A plain region: its cells' extent and mean light. */
interface Region {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly light: Light;
}

/**
 * Finds the white, gray and black patch of a card: three plain rectangles of like size and colour in a row, evenly
 * spaced, falling in brightness. A card that mirrors a lamp is found as well, so that it can be judged.
 * @param crop - where to look, cut to the picture
 * @param reflectances - of white, gray and black, 0 to 1; among several candidates the nearest ratios win
 * @returns the middle of each patch, or `undefined` when no three regions fit
 * @throws {Problem} `crop` when nothing of it is on the picture
 */
export function findCard(
  pixels: Pixels, crop: Crop = wholeOf(pixels), reflectances: readonly [number, number, number] = CARD_REFLECTANCES,
): CardPatches | undefined {
  const area = cropOnto(crop, pixels.width, pixels.height);
  const cell = Math.max(2, Math.round(Math.max(area.width, area.height) / CELLS));
  const regions = plainRegions(pixels, area, cell);
  let best: {score: number; card: readonly [Region, Region, Region]} | undefined;
  for (const gray of regions) {
    for (const white of regions) {
      if (white === gray || !alike(white, gray)) continue;
      for (const black of regions) {
        if (black === gray || black === white || !alike(gray, black) || !inRow(white, gray, black)) continue;
        const score = cardScore([white, gray, black], reflectances);
        if (score !== undefined && (!best || score < best.score)) best = {score, card: [white, gray, black]};
      }
    }
  }
  if (!best) return undefined;
  const [white, gray, black] = best.card.map((region) => middleOf(region, area, cell)) as [Crop, Crop, Crop];
  return {white, gray, black};
}

/** Reflectances of the three patches of an ordinary card: white 90 %, gray 18 %, black 3.5 %. Common practice. */
export const CARD_REFLECTANCES = [0.9, 0.18, 0.035] as const;

function middleOf({x, y, width, height}: Region, area: Crop, cell: number): Crop {
  const inset = (1 - MIDDLE) / 2;
  return {
    x: Math.round(area.x + (x + width * inset) * cell), y: Math.round(area.y + (y + height * inset) * cell),
    width: Math.max(1, Math.round(width * MIDDLE * cell)), height: Math.max(1, Math.round(height * MIDDLE * cell)),
  };
}

function alike(a: Region, b: Region): boolean {
  return Math.max(a.width / b.width, b.width / a.width, a.height / b.height, b.height / a.height) <= ALIKE;
}

/** Whether `gray` stands half-way between the other two, about one patch away from each. */
function inRow(white: Region, gray: Region, black: Region): boolean {
  const [dx1, dy1] = [centreX(gray) - centreX(white), centreY(gray) - centreY(white)];
  const [dx2, dy2] = [centreX(black) - centreX(gray), centreY(black) - centreY(gray)];
  const gap = Math.hypot(dx1, dy1);
  const size = Math.abs(dx1) > Math.abs(dy1) ? gray.width : gray.height;
  return Math.hypot(dx1 - dx2, dy1 - dy2) < 0.2 * gap && gap < size * 2 && gap >= size;
}

function centreX({x, width}: Region): number {
  return x + width / 2;
}

function centreY({y, height}: Region): number {
  return y + height / 2;
}

/** Stops by which ratios and colours miss those of a card; `undefined` when they cannot be one. */
function cardScore(card: readonly [Region, Region, Region], reflectances: readonly number[]): number | undefined {
  const [white, gray, black] = card.map(({light}) => light) as [Light, Light, Light];
  if (!(white[1] >= gray[1] && gray[1] > black[1] * 1.1)) return undefined;
  const tint = ([red, green, blue]: Light): readonly [number, number] =>
    [Math.log2((red + DARK) / (green + DARK)), Math.log2((blue + DARK) / (green + DARK))];
  const [ofGray, ofBlack] = [tint(gray), tint(black)];
  // A clipped patch has lost its colour, so only gray and black have to agree.
  const colour = Math.max(...gray) >= 0.99 ? 0 : Math.hypot(ofGray[0] - ofBlack[0], ofGray[1] - ofBlack[1]);
  if (colour > 0.8) return undefined;
  const step = (from: Light, to: Light, given: number): number => Math.abs(Math.log2(from[1] / to[1]) - Math.log2(given));
  const [ofWhite, ofMiddle, ofDark] = reflectances as [number, number, number];
  return step(white, gray, ofWhite / ofMiddle) + step(gray, black, ofMiddle / ofDark) + colour;
}

/** Plain regions of about rectangular shape, in cells. */
function plainRegions(pixels: Pixels, area: Crop, cell: number): Region[] {
  const columns = Math.floor(area.width / cell);
  const rows = Math.floor(area.height / cell);
  const cells = Array.from({length: columns * rows}, (_, at) =>
    plainCell(pixels, area.x + (at % columns) * cell, area.y + Math.floor(at / columns) * cell, cell));
  const seen = new Uint8Array(cells.length);
  return cells.flatMap((light, at) => {
    if (!light || seen[at]) return [];
    const members = flood(cells, seen, at, columns);
    const region = regionOf(members, cells, columns);
    const shape = Math.max(region.width / region.height, region.height / region.width);
    const filled = members.length / (region.width * region.height);
    const small = Math.min(region.width, region.height) < 3;
    return small || shape > MOST_OBLONG || filled < LEAST_FILLED ? [] : [region];
  });
}

/** Mean light of a cell, `undefined` when it is not plain. */
function plainCell(pixels: Pixels, left: number, top: number, cell: number): Light | undefined {
  const table = linearTable();
  let [red, green, blue, square] = [0, 0, 0, 0];
  for (let y = top; y < top + cell; y++) {
    for (let x = left; x < left + cell; x++) {
      const at = (y * pixels.width + x) * 4;
      const ofGreen = table[pixels.data[at + 1] as number] as number;
      red += table[pixels.data[at] as number] as number;
      green += ofGreen;
      blue += table[pixels.data[at + 2] as number] as number;
      square += ofGreen ** 2;
    }
  }
  const light = [red / cell ** 2, green / cell ** 2, blue / cell ** 2] as const;
  const spread = Math.sqrt(Math.max(0, square / cell ** 2 - light[1] ** 2));
  return spread <= PLAIN * (light[1] + DARK) ? light : undefined;
}

/** Cells that hang together with the one at `start`; marks them as seen. */
function flood(cells: readonly (Light | undefined)[], seen: Uint8Array, start: number, columns: number): number[] {
  const members = [start];
  seen[start] = 1;
  for (const at of members) {
    const green = (cells[at] as Light)[1] + DARK;
    const across = at % columns;
    for (const next of [across > 0 ? at - 1 : -1, across < columns - 1 ? at + 1 : -1, at - columns, at + columns]) {
      const light = cells[next];
      if (!light || seen[next] || Math.abs(Math.log2((light[1] + DARK) / green)) > SAME_PATCH) continue;
      seen[next] = 1;
      members.push(next);
    }
  }
  return members;
}

function regionOf(members: readonly number[], cells: readonly (Light | undefined)[], columns: number): Region {
  let [left, top, right, bottom] = [Infinity, Infinity, -1, -1];
  for (const at of members) {
    const [x, y] = [at % columns, Math.floor(at / columns)];
    left = Math.min(left, x); right = Math.max(right, x);
    top = Math.min(top, y); bottom = Math.max(bottom, y);
  }
  const mean = (channel: 0 | 1 | 2): number =>
    members.reduce((sum, at) => sum + (cells[at] as Light)[channel], 0) / members.length;
  return {x: left, y: top, width: right - left + 1, height: bottom - top + 1, light: [mean(0), mean(1), mean(2)]};
}
