import type {FocusOnLine} from '../../../core/tone/focus-line.js';
import type {SharpnessPoint} from '../../../core/tone/sharpness.js';
import {compareSharpness, type SharpnessComparison} from '../../../core/tone/sharpness-change.js';
import type {Photo} from '../../../photo/open.js';
import type {LineShare} from '../places.js';
import {linePixels} from './line.js';

/** What is read along a line. */
export interface LineQuestion {
  readonly photo: Photo;
  readonly aperture: number;
  /** An earlier shot of the same set and as many pixels. */
  readonly earlier: Photo | undefined;
  readonly apertureEarlier: number;
  readonly line: LineShare;
  /** How large things look at B against A. */
  readonly scaleAtB: number;
}

export interface LineReading extends LineQuestion {
  readonly points: readonly SharpnessPoint[];
  /** Readings of the earlier shot, and how they differ. */
  readonly before: readonly SharpnessPoint[] | undefined;
  readonly comparison: SharpnessComparison | undefined;
  readonly focus: FocusOnLine | undefined;
  /** Whether the focus comes from both shots, so that the detail's own width is out of it. */
  readonly fromBoth: boolean;
}

/** Readings on a line are no closer than this, px, and no more than so many. */
const STEP = 4;
const MOST_READINGS = 240;
/** Two apertures that differ by less, as a ratio, tell nothing of the focus: a third-stop click. */
const LEAST_RATIO = 1.1;

/** Reads a line where the pixels are, and finds the focus on it. */
export async function readAlong(question: LineQuestion): Promise<LineReading> {
  const {photo, earlier, line, aperture, apertureEarlier, scaleAtB} = question;
  const pixels = linePixels(line, photo);
  const [[fromX, fromY], [toX, toY]] = [pixels.from, pixels.to];
  const asked = {line: pixels, step: Math.max(STEP, Math.hypot(toX - fromX, toY - fromY) / MOST_READINGS)};
  const points = await photo.ask('sharpnessAlong', asked);
  const before = await earlier?.ask('sharpnessAlong', asked);
  const fromBoth = before !== undefined && Math.max(aperture, apertureEarlier) / Math.min(aperture, apertureEarlier) > LEAST_RATIO;
  const [wide, narrow] = aperture < apertureEarlier ? [points, before] : [before, points];
  const focus = fromBoth && wide && narrow ? await photo.ask('focusBetween', {wide, narrow})
    : await photo.ask('focusAlong', {points, scaleAtEnd: scaleAtB});
  return {...question, points, before, comparison: before && compareSharpness(before, points), focus, fromBoth};
}
