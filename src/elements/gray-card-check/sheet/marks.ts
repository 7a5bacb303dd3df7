import {Problem} from '../../../core/problem.js';
import type {Crop} from '../../../core/tone/pixels.js';
import {readNumber} from '../../../core/units.js';
import type {CardPatches} from '../../../core/white/patches.js';
import {PATCHES} from './judge.js';

/** Size of something in px. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Smallest side of a frame, px: enough for its nine parts. */
const LEAST_SIDE = 6;
/** Side of a frame that nobody has placed, share of the picture's shorter side. */
const FIRST_SIDE = 0.07;
/** Room around the three frames in the close-up, times their side. */
const AROUND = 1.1;
/** Width of the close-up for its height. */
const CLOSE_RATIO = 1.8;

/** Frames in a row along the lower edge, where they hide little, to be taken from there. */
export function firstMarks({width, height}: Size): CardPatches {
  const side = Math.max(1, Math.round(Math.min(width, height) * FIRST_SIDE));
  const at = (place: number): Crop => onPicture(
    {x: width / 2 + (place * 3.2 - 0.5) * side, y: height * 0.9 - side / 2, width: side, height: side}, {width, height});
  return {white: at(-1), gray: at(0), black: at(1)};
}

/** A frame in whole pixels, pushed and shrunk until it lies on the picture. */
export function onPicture({x, y, width, height}: Crop, picture: Size): Crop {
  const wide = clamp(Math.round(width), Math.min(LEAST_SIDE, picture.width), picture.width);
  const tall = clamp(Math.round(height), Math.min(LEAST_SIDE, picture.height), picture.height);
  return {x: clamp(Math.round(x), 0, picture.width - wide), y: clamp(Math.round(y), 0, picture.height - tall), width: wide, height: tall};
}

/** A frame moved by px. */
export function movedBy(frame: Crop, x: number, y: number, picture: Size): Crop {
  return onPicture({...frame, x: frame.x + x, y: frame.y + y}, picture);
}

/** A frame whose lower right corner is moved by px; the other corner stays. */
export function sizedBy({x, y, width, height}: Crop, right: number, down: number, picture: Size): Crop {
  return onPicture({
    x, y, width: clamp(width + right, LEAST_SIDE, picture.width - x), height: clamp(height + down, LEAST_SIDE, picture.height - y),
  }, picture);
}

/** A frame of the same size around a point, px. */
export function centredOn(frame: Crop, x: number, y: number, picture: Size): Crop {
  return onPicture({...frame, x: x - frame.width / 2, y: y - frame.height / 2}, picture);
}

/** The part of the picture that shows the three frames from close by. */
export function closeUp(patches: CardPatches, picture: Size): Crop {
  const frames = PATCHES.map((patch) => patches[patch]);
  const side = Math.max(...frames.map(({width, height}) => Math.max(width, height)));
  const left = Math.min(...frames.map(({x}) => x)) - side * AROUND;
  const top = Math.min(...frames.map(({y}) => y)) - side * AROUND;
  const right = Math.max(...frames.map(({x, width}) => x + width)) + side * AROUND;
  const bottom = Math.max(...frames.map(({y, height}) => y + height)) + side * AROUND;
  const width = Math.min(picture.width, Math.max(right - left, (bottom - top) * CLOSE_RATIO));
  const height = Math.min(picture.height, Math.max(bottom - top, width / CLOSE_RATIO));
  return {
    x: Math.round(clamp((left + right - width) / 2, 0, picture.width - width)),
    y: Math.round(clamp((top + bottom - height) / 2, 0, picture.height - height)),
    width: Math.round(width), height: Math.round(height),
  };
}

/** Whether a frame lies inside an area altogether. */
export function isInside(frame: Crop, area: Crop): boolean {
  return frame.x >= area.x && frame.y >= area.y
    && frame.x + frame.width <= area.x + area.width && frame.y + frame.height <= area.y + area.height;
}

/** A frame as it is typed: `184, 823, 54 × 54`. */
export function writeMark({x, y, width, height}: Crop): string {
  return `${x}, ${y}, ${width} × ${height}`;
}

/**
 * Reads left, top, width and height in px, with anything between them. Never throws.
 * @param wanted - what would do instead, to follow "wanted"
 */
export function readMark(name: string, text: string, picture: Size, wanted: string): Crop | Problem {
  const [x, y, width, height, more] = text.split(/[^\d.\-−]+/).filter(Boolean).map((part) => readNumber(part) ?? NaN);
  const frame = {x, y, width, height} as Crop;
  const fits = more === undefined && frame.width >= 1 && frame.height >= 1
    && isInside(frame, {x: 0, y: 0, width: picture.width, height: picture.height});
  return fits ? onPicture(frame, picture) : new Problem(name, text, wanted);
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), Math.max(least, most));
}
