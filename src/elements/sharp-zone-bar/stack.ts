import {stackFrames, type Stack} from '../../core/optics/stack.js';
import {Problem} from '../../core/problem.js';
import type {Reading} from './reading.js';

/**
 * The frames that would hold the figure at the aperture that is set, from the front on; none when a single frame does,
 * or when nobody would take so many.
 */
export function stackOf({fit, framing: {lens, tilt, limit}, ways}: Reading): Stack['frames'] {
  if (fit.end === null || ways.ways.some(({kind}) => kind === 'refocus')) return [];
  try {
    return stackFrames({lens, ends: fit.depth, tilt, limit}).frames;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return [];
  }
}
