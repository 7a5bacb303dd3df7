import {Problem} from '../../core/problem.js';
import {readLength, readNumber, type LengthUnit} from '../../core/units.js';

/** The finest thing that is to be seen, as it was said: finished pixels, or mm on the figure (a brush line). */
export type SaidDetail = {readonly pixels: number} | {readonly onFigure: number};

/**
 * `1 px`, `0.2 mm`, `1/64 in`; a bare number is finished pixels. Never throws.
 * @param wanted - what to say would do
 */
export function readDetail(text: string, unit: LengthUnit, wanted: string): SaidDetail | Problem {
  const bare = readNumber(text.replace(/\s*(px|pixels?)\s*$/i, ''));
  const mm = bare === undefined ? readLength('detail', text, unit) : bare;
  return typeof mm === 'number' && mm > 0 && mm < 1000 ? (bare === undefined ? {onFigure: mm} : {pixels: mm})
    : new Problem('detail', text, wanted);
}
