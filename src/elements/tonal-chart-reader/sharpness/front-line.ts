import type {Photo} from '../../../photo/open.js';
import type {LineShare} from '../places.js';
import {linePixels} from './line.js';

/** Where the lines that are tried begin and end, from the top, share of the photo: the table up to the figure's feet. */
const [FRONT, BACK] = [0.97, 2 / 3];
/** How far up there they have come towards the middle: lines from front to back on a table meet a little under the top of the photo. */
const NEARER_MIDDLE = 0.36;
/** Lines side by side across the photo, and readings on each. */
const LINES = 24;
const READINGS = 60;
/** The figure stands so far to either side of the middle, share of the photo: it is upright and does not go back. */
const FIGURE = 1 / 6;
/** Share of a line on which the focus may be left open, to either side. Found on the rendered pictures. */
const MOST_OPEN = 0.05;

/**
 * The line from front to back on which the focus shows most clearly. Where a ruler lies beside the base it is
 * that: nothing else there has fine detail all the way.
 * @returns `undefined` when none shows a focus
 */
export async function clearestLine(photo: Photo): Promise<LineShare | undefined> {
  let clearest: LineShare | undefined;
  let open = MOST_OPEN;
  for (let at = 0; at < LINES; at++) {
    const x = (at + 0.5) / LINES;
    if (Math.abs(x - 0.5) < FIGURE) continue;
    const line: LineShare = {a: [x, FRONT], b: [x + (0.5 - x) * NEARER_MIDDLE, BACK]};
    const asked = linePixels(line, photo);
    const step = Math.max(4, (asked.from[1] - asked.to[1]) / READINGS);
    const points = await photo.ask('sharpnessAlong', {line: asked, step});
    const isKnown = points.filter(({blur}) => blur !== null).length > points.length / 2;
    const focus = isKnown ? await photo.ask('focusAlong', {points, scaleAtEnd: 1 - NEARER_MIDDLE}) : undefined;
    if (focus && focus.readings > points.length / 2 && focus.within < open) [clearest, open] = [line, focus.within];
  }
  return clearest;
}
