import {Problem} from '../../core/problem.js';
import {PICTURE_FIELDS} from '../../core/shot/picture-fields.js';
import type {CropShare} from '../../core/shot/shot.js';
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

/** Whether it is a line at all. */
export function hasLength({a, b}: LineShare): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) > 0.01;
}

/**
 * A line as a page writes it: A from the left, A from the top, B from the left, B from the top, `76% 96% 68% 68%`.
 * @returns `undefined` when nothing is given
 */
export function lineFrom(text: string | null): LineShare | undefined | Problem {
  if (!text?.trim()) return undefined;
  const shares = text.trim().split(/\s+/).map((part) => (part.endsWith('%') ? (readNumber(part.slice(0, -1)) ?? NaN) / 100 : NaN));
  const [ax = NaN, ay = NaN, bx = NaN, by = NaN] = shares;
  const line: LineShare = {a: [ax, ay], b: [bx, by]};
  if (shares.length === 4 && shares.every((share) => share >= 0 && share <= 1) && hasLength(line)) return line;
  return new Problem('line', text, 'two places in shares of the picture: 76% 96% 68% 68%');
}

/** A spot as a page writes it, like a crop: `6% 8% 10% 10%`. */
export function spotFrom(text: string | null): CropShare | Problem | null {
  return text === null ? null : PICTURE_FIELDS.crop.read(text);
}

/** Why a spot is none. */
export function spotProblem(spot: CropShare | Problem | null): Problem | undefined {
  const problem = spot instanceof Problem ? spot : spot ? PICTURE_FIELDS.crop.refuse(spot) : undefined;
  return problem && new Problem('spot', problem.value, problem.wanted);
}
