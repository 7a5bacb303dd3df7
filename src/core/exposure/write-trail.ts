import type {TrailStep} from './judge-trail.js';
import type {Wish} from './meant.js';
import {SETTINGS} from './stops.js';
import type {Trail} from './trail.js';
import {writeAperture, writeIso, writeShutter, writeStops} from './write.js';

/** `1 1/3 stops`, `0.37 stops`. */
function amount(stops: number): string {
  const size = Math.abs(stops);
  const per = [2, 3].find((parts) => Math.abs(size * parts - Math.round(size * parts)) < 0.01);
  return `${(per ? writeStops(Math.round(size * per) / per) : writeStops(size, 2)).slice(1)} ${size > 1.001 ? 'stops' : 'stop'}`;
}

/** What was meant, in words that read back as the same. */
function wishText(wish: Wish | null, taken: 'change' | 'next'): string {
  if (wish === null) return '';
  if (wish === 'other') return 'light changed';
  if (wish === 0) return taken === 'change' ? 'same light' : '';
  if (typeof wish !== 'number') return taken === 'change' ? `a little ${wish}` : `too ${wish === 'brighter' ? 'dark' : 'bright'}`;
  if (taken === 'next') return `correct by ${wish > 0 ? '+' : '−'}${amount(wish)}`;
  return `${amount(wish)} ${wish > 0 ? 'brighter' : 'darker'}`;
}

function line({exposure, text, said, ...step}: TrailStep, isoSaid: boolean): string {
  if (!exposure || !SETTINGS.some((setting) => step[setting])) return text.replace(/\s+/g, ' ');
  const {aperture, shutter, iso} = exposure;
  const words = said ? wishText(said[said.taken], said.taken) : '';
  return `${writeAperture(aperture)}, ${writeShutter(shutter)}${isoSaid ? `, ${writeIso(iso)}` : ''}${words ? ` (${words})` : ''}`;
}

/**
 * A trail as plain text, one step a line: `f/5.6, 1/6 s, ISO 100 (same light)`. What was carried over is written out;
 * what was said of the light follows in brackets. Reading it gives the same settings and the same wishes back.
 */
export function writeTrail({steps, isoSaid}: Trail): string {
  return steps.map((step) => line(step, isoSaid)).join('\n');
}
