import type {CropShare} from '../../../core/shot/shot.js';
import type {Line} from '../../../core/tone/sharpness.js';
import type {LineEnd, LineShare, Place} from '../places.js';

/** Way from the crop's border to where a line begins of itself, share of the crop. */
const INSET = 0.06;

/** Where the base of what stands in a crop begins to be covered by what stands on it, share of the crop. */
const BASE_UP_TO = 2 / 3;

/** To the right of what stands in the middle, at the line's start and, nearer to the middle, at its end; shares of the crop. */
const BESIDE = [0.78, 0.7] as const;

/**
 * Up the lower third of the crop, beside what stands in it: on a table seen from the front, where a ruler would lie. Above
 * that the picture is upright and no longer goes back.
 */
export function frontToBack({left, top, width, height}: CropShare): LineShare {
  return {
    a: [left + width * BESIDE[0], top + height * (1 - INSET / 2)], b: [left + width * BESIDE[1], top + height * BASE_UP_TO],
  };
}

/** Across the crop's middle. */
export function acrossCrop({left, top, width, height}: CropShare): LineShare {
  const y = top + height / 2;
  return {a: [left + width * INSET, y], b: [left + width * (1 - INSET), y]};
}

/** The line in pixels of a picture. */
export function linePixels({a, b}: LineShare, {width, height}: {readonly width: number; readonly height: number}): Line {
  const at = ([x, y]: Place): Place => [x * (width - 1), y * (height - 1)];
  return {from: at(a), to: at(b)};
}

/** The line with one end somewhere else, inside the picture. */
export function withEnd(line: LineShare, end: LineEnd, [x, y]: Place): LineShare {
  const inside = (share: number) => Math.min(1, Math.max(0, share));
  return {...line, [end]: [inside(x), inside(y)]};
}
