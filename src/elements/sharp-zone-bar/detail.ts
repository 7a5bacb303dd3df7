import {worstContrast} from '../../core/optics/best-aperture.js';
import {contrastAlong, type Detail} from '../../core/optics/contrast.js';
import {onePixel} from '../../core/optics/blur.js';
import {Problem} from '../../core/problem.js';
import {readLength, readNumber, type LengthUnit} from '../../core/units.js';
import type {Reading} from './reading.js';

/** The finest thing that is to be seen, as it was said: finished pixels, or mm on the figure (a brush line). */
export type SaidDetail = {readonly pixels: number} | {readonly onFigure: number};

/** `1 px`, `0.2 mm`, `1/64 in`; a bare number is finished pixels. Never throws. */
export function readDetail(text: string, unit: LengthUnit): SaidDetail | Problem {
  const bare = readNumber(text.replace(/\s*(px|pixels?)\s*$/i, ''));
  const mm = bare === undefined ? readLength('detail', text, unit) : bare;
  return typeof mm === 'number' && mm > 0 && mm < 1000 ? (bare === undefined ? {onFigure: mm} : {pixels: mm})
    : new Problem('detail', text, 'the width of a line, such as 1 px or 0.2 mm');
}

/** What becomes of a detail along the ruler: 1 = all of its contrast; past its first loss it is lost for good. */
export interface DetailContrast {
  readonly at: (mark: number) => number;
  /** `null` where the detail is lost, even when a false echo of it comes back. */
  readonly inFocus: number | null;
  readonly front: number | null;
  readonly back: number | null;
}

/** Contrast that rounds to nothing. */
const NOTHING = 0.005;

/** The detail as the optics take it. */
export const sensorDetail = (said: SaidDetail, {picture}: Reading): Detail =>
  ('pixels' in said ? {onSensor: said.pixels * onePixel(picture)} : said);

/** @throws {Problem} as contrastAlong */
export function detailContrast(reading: Reading, said: SaidDetail): DetailContrast {
  const {framing: {lens}, fit, along} = reading;
  const detail = sensorDetail(said, reading);
  const contrast = contrastAlong(lens, detail);
  const kept = (depth: number): number | null => {
    const here = contrast(depth);
    const {worst} = worstContrast(lens, {front: Math.min(0, depth), back: Math.max(0, depth)}, detail);
    return worst < 0 || here < NOTHING ? null : here;
  };
  return {
    at: (mark) => contrast(mark / along - fit.focusDepth),
    inFocus: kept(0), front: kept(fit.depth.front - fit.focusDepth), back: kept(fit.depth.back - fit.focusDepth),
  };
}
