import {html, nothing, type TemplateResult} from 'lit';
import {onePixel} from '../../core/optics/blur.js';
import {readSharpRuler} from '../../core/optics/ruler.js';
import {Problem} from '../../core/problem.js';
import type {Shot} from '../../core/shot/shot.js';
import {readLength} from '../../core/units.js';
import {textField} from '../shared/fields.js';
import type {Reading} from './reading.js';
import type {RulerNotes} from './ruler-scale.js';
import {EXTRAS, ownLimit} from './words.js';

/** Graduations as typed: the ruler's at the base's front edge, the nearest and the farthest that still look sharp. */
export type Graduations = Pick<RulerNotes, 'zero' | 'nearest' | 'farthest'>;

/** A person's own limit, and where the focus was. */
export interface OwnLimit {
  /** Finished pixels. */
  readonly blurLimit: number;
  /** Mark, mm behind the base's front edge. */
  readonly focus: number;
}

/**
 * What the typed graduations say; `undefined` until there are two, a problem that names its field when they cannot be.
 */
export function readOwnLimit(reading: Reading, typed: Graduations): OwnLimit | Problem | undefined {
  const {framing: {lens, tilt}, picture, shot: {unit}} = reading;
  if (!typed.nearest.trim() || !typed.farthest.trim()) return undefined;
  const zero = readLength('zero', typed.zero.trim() || '0', unit);
  const nearest = readLength('nearest-sharp', typed.nearest, unit);
  const farthest = readLength('farthest-sharp', typed.farthest, unit);
  for (const each of [zero, nearest, farthest]) if (each instanceof Problem) return each;
  try {
    const {limit, focus} = readSharpRuler(lens, (nearest as number) - (zero as number), (farthest as number) - (zero as number), tilt);
    return {blurLimit: limit / onePixel(picture), focus};
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return new Problem(error.parameter, typed.farthest, EXTRAS.farthestWanted);
  }
}

/** Three graduations to type, what they say, and a button that uses it from then on. */
export function ownLimitGroup(
  reading: Reading, typed: Graduations, onType: (typed: Partial<Graduations>) => void, onApply: (changes: Partial<Shot>) => void,
): TemplateResult {
  const found = readOwnLimit(reading, typed);
  const problem = (name: string): Problem | undefined =>
    (found instanceof Problem && found.parameter === name ? found : undefined);
  const field = (key: keyof Graduations, id: string, label: string): TemplateResult => textField({
    id, label, text: typed[key], problem: problem(id), onType: (text) => { onType({[key]: text}); },
  });
  return html`<div class="group">
    <p class="note">${EXTRAS.ownLimitHow}</p>
    <div class="fields">
      ${field('zero', 'zero', EXTRAS.zero)}${field('nearest', 'nearest-sharp', EXTRAS.nearest)}
      ${field('farthest', 'farthest-sharp', EXTRAS.farthest)}
    </div>
    ${found && !(found instanceof Problem) ? html`<p class="note">${ownLimit(found, reading)}</p>
      <div><button type="button" @click=${() => { onApply({...found}); }}>${EXTRAS.useOwnLimit}</button></div>` : nothing}
  </div>`;
}
