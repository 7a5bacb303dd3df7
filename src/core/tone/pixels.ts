import {Problem} from '../problem.js';

/** A picture in memory: four bytes a pixel (red, green, blue, alpha as sRGB codes), row by row from the top left. */
export interface Pixels {
  readonly data: Uint8ClampedArray | Uint8Array;
  /** Pixels in a row. */
  readonly width: number;
  readonly height: number;
}

/** A rectangle of whole pixels, the origin at the top left. */
export interface Crop {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The crop that keeps everything. */
export function wholeOf(pixels: {readonly width: number; readonly height: number}): Crop {
  return {x: 0, y: 0, width: pixels.width, height: pixels.height};
}

/**
 * The part of `crop` that lies on the picture, in whole pixels: edges go to the nearest pixel border, and what
 * sticks out is cut off.
 * @param crop - any finite rectangle; need not be whole
 * @param width - pixels in a row of the picture
 * @param height - rows of the picture
 * @returns a crop with at least one pixel
 * @throws {Problem} `crop` when it is not finite, or no pixel of the picture is inside
 */
export function cropOnto(crop: Crop, width: number, height: number): Crop {
  const left = Math.max(0, Math.round(crop.x));
  const top = Math.max(0, Math.round(crop.y));
  const right = Math.min(width, Math.round(crop.x + crop.width));
  const bottom = Math.min(height, Math.round(crop.y + crop.height));
  if (!(right > left && bottom > top)) {
    const given = `${crop.x}, ${crop.y}, ${crop.width} × ${crop.height}`;
    throw new Problem('crop', given, `a rectangle with at least one pixel inside ${width} × ${height}`);
  }
  return {x: left, y: top, width: right - left, height: bottom - top};
}

/**
 * A copy of the part of the picture inside `crop`.
 * @param crop - cut to the picture
 * @throws {Problem} `crop` when nothing of it is on the picture
 */
export function cutOut({data, width, height}: Pixels, crop: Crop): Pixels {
  const inside = cropOnto(crop, width, height);
  const copy = new Uint8ClampedArray(inside.width * inside.height * 4);
  for (let row = 0; row < inside.height; row++) {
    const start = ((inside.y + row) * width + inside.x) * 4;
    copy.set(data.subarray(start, start + inside.width * 4), row * inside.width * 4);
  }
  return {data: copy, width: inside.width, height: inside.height};
}
