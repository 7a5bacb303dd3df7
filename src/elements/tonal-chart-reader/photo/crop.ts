import {Problem} from '../../../core/problem.js';
import type {CropShare} from '../../../core/shot/shot.js';
import type {Crop} from '../../../core/tone/pixels.js';
import {readNumber} from '../../../core/units.js';

/** Which part of the frame is held: −1 the left or top edge, 1 the right or bottom one, 0 neither. Both 0 is the frame. */
export interface Hold {
  readonly x: -1 | 0 | 1;
  readonly y: -1 | 0 | 1;
}

/** The four corners, then the four edges. */
export const HOLDS: readonly Hold[] = [
  {x: -1, y: -1}, {x: 1, y: -1}, {x: 1, y: 1}, {x: -1, y: 1}, {x: 0, y: -1}, {x: 1, y: 0}, {x: 0, y: 1}, {x: -1, y: 0},
];

export const WHOLE: CropShare = {left: 0, top: 0, width: 1, height: 1};

/** Smallest side a drag or key leaves, share of the picture: a frame that can still be taken hold of. */
export const LEAST = 0.02;

export function keepsAll({width, height}: CropShare): boolean {
  return width > 1 - 1e-6 && height > 1 - 1e-6;
}

export type CropSide = keyof CropShare;

/** Whether a side is a size; the others are places. */
export const isSize = (side: CropSide): boolean => side === 'width' || side === 'height';

/**
 * The crop after its held part was moved.
 * @param across - share of the picture's width, positive = to the right
 * @param down - share of the picture's height, positive = down
 * @returns a crop inside the picture; a moved frame keeps its size, an edge stops before it meets the other
 */
export function dragged(crop: CropShare, {x, y}: Hold, across: number, down: number): CropShare {
  const whole = x === 0 && y === 0;
  const [left, width] = draggedSide(crop.left, crop.width, x, across, whole);
  const [top, height] = draggedSide(crop.top, crop.height, y, down, whole);
  return {left, top, width, height};
}

function draggedSide(start: number, size: number, end: -1 | 0 | 1, by: number, whole: boolean): [number, number] {
  if (whole) return [within(start + by, 0, 1 - size), size];
  const stop = start + size;
  if (end < 0) {
    const moved = within(start + by, 0, Math.max(0, stop - LEAST));
    return [moved, stop - moved];
  }
  return end > 0 ? [start, within(stop + by, Math.min(1, start + LEAST), 1) - start] : [start, size];
}

/** The crop grown (above 1) or shrunk about its middle, as far as the picture reaches. */
export function scaled(crop: CropShare, by: number): CropShare {
  const width = within(crop.width * by, LEAST, 1);
  const height = within(crop.height * by, LEAST, 1);
  return {
    left: within(crop.left + (crop.width - width) / 2, 0, 1 - width),
    top: within(crop.top + (crop.height - height) / 2, 0, 1 - height),
    width, height,
  };
}

/**
 * A side of the crop as typed: `20 %`, `0,5 %`, `300 px`; a bare number is per cent.
 * @param pixels - of the picture along that side
 * @param wanted - what would do, in the reader's language
 * @returns share of the picture, 0 to 1, sizes above 0
 */
export function readSide(side: CropSide, text: string, pixels: number, wanted: string): number | Problem {
  const [, digits = '', unit] = /^(.*?)\s*(%|px|pixels?)?$/i.exec(text.trim()) ?? [];
  const number = readNumber(digits);
  const share = number === undefined ? NaN : number / (unit && unit !== '%' ? pixels : 100);
  const fits = isSize(side) ? share > 0 : share < 1;
  return share >= 0 && share <= 1 && fits ? share : new Problem(`crop-${side}`, text, wanted);
}

/** The crop with one side as typed. What was typed holds; the other number of that side gives way. */
export function withSide(crop: CropShare, side: CropSide, share: number): CropShare {
  switch (side) {
    case 'left': return {...crop, left: share, width: Math.min(crop.width, 1 - share)};
    case 'top': return {...crop, top: share, height: Math.min(crop.height, 1 - share)};
    case 'width': return {...crop, width: share, left: Math.min(crop.left, 1 - share)};
    case 'height': return {...crop, height: share, top: Math.min(crop.top, 1 - share)};
  }
}

/** The crop in pixels of a picture, at least one. */
export function cropPixels({left, top, width, height}: CropShare, picture: {readonly width: number; readonly height: number}): Crop {
  const x = Math.min(picture.width - 1, Math.round(left * picture.width));
  const y = Math.min(picture.height - 1, Math.round(top * picture.height));
  return {
    x, y,
    width: within(Math.round((left + width) * picture.width) - x, 1, picture.width - x),
    height: within(Math.round((top + height) * picture.height) - y, 1, picture.height - y),
  };
}

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
