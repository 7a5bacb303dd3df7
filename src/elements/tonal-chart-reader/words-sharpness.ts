import type {Problem} from '../../core/problem.js';

/** What is said of sharpness before the section itself is loaded. */
export const SHARPNESS = {
  title: 'Where is it sharp?',
  looking: 'Looking…',
  notLoaded: 'This part did not load. Close it, and open it again to try once more.',
} as const;

/** A line of the page that is none. */
export function lineRefused({value, wanted}: Problem): string {
  return `line: “${String(value)}” does not read as ${wanted}. The last good line stays.`;
}
