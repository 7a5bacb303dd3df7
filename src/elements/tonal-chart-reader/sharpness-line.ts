import {Problem} from '../../core/problem.js';
import type {CropShare} from '../../core/shot/shot.js';
import type {Line} from '../../core/tone/sharpness.js';
import {readNumber} from '../../core/units.js';

/** A place on the photo, shares of its width and height. */
export type Place = readonly [x: number, y: number];

/** A line across the photo: A is its start, B its end. */
export interface LineShare {
  readonly a: Place;
  readonly b: Place;
}

/** Which end of the line is held. */
export type LineEnd = keyof LineShare;

/** Way from the crop's border to where a line begins of itself, share of the crop. */
const INSET = 0.06;

/** Up the crop's middle: on a table seen from the front, from the nearest things to the farthest. */
export function frontToBack({left, top, width, height}: CropShare): LineShare {
  const x = left + width / 2;
  return {a: [x, top + height * (1 - INSET)], b: [x, top + height * INSET]};
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

/** Whether it is a line at all. */
export function hasLength({a, b}: LineShare): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) > 0.01;
}

/**
 * A line as a page writes it: A from the left, A from the top, B from the left, B from the top, `76% 96% 68% 68%`.
 * @returns `undefined` when nothing is given
 */
export function readLineShare(text: string | null): LineShare | undefined | Problem {
  if (!text?.trim()) return undefined;
  const shares = text.trim().split(/\s+/).map((part) => (part.endsWith('%') ? (readNumber(part.slice(0, -1)) ?? NaN) / 100 : NaN));
  const [ax = NaN, ay = NaN, bx = NaN, by = NaN] = shares;
  const line: LineShare = {a: [ax, ay], b: [bx, by]};
  if (shares.length === 4 && shares.every((share) => share >= 0 && share <= 1) && hasLength(line)) return line;
  return new Problem('line', text, 'two places in shares of the picture: 76% 96% 68% 68%');
}
