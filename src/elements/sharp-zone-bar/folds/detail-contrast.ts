import {worstContrast} from '../../../core/optics/best-aperture.js';
import {contrastAlong, type Detail} from '../../../core/optics/contrast.js';
import {onePixel} from '../../../core/optics/blur.js';
import type {SaidDetail} from '../detail.js';
import type {Reading} from '../reading.js';

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
