import {html, nothing, type TemplateResult} from 'lit';
import {onePixel} from '../../../core/optics/blur.js';
import {readSharpRuler} from '../../../core/optics/ruler.js';
import {Problem} from '../../../core/problem.js';
import {readLength} from '../../../core/units.js';
import {textField} from '../../shared/fields.js';
import {withUnit} from '../entries.js';
import type {Reading} from '../reading.js';
import type {RulerNotes} from '../ruler-notes.js';
import {doneView} from '../ways-view.js';
import type {FoldHost} from './host.js';
import {ownLimitText} from './measuring-speech.js';

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
export function readOwnLimit(reading: Reading, typed: Graduations, wanted: string): OwnLimit | Problem | undefined {
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
    return new Problem(error.parameter, typed.farthest, wanted);
  }
}

/** Three graduations to type, what they say, and a button that uses it from then on. */
export function ownLimitView(
  host: FoldHost, reading: Reading, typed: Graduations, onType: (typed: Partial<Graduations>) => void,
): TemplateResult {
  const {fold, words} = host;
  const found = readOwnLimit(reading, typed, fold.farthestWanted);
  const problem = (name: string): Problem | undefined =>
    (found instanceof Problem && found.parameter === name ? found : undefined);
  const field = (key: keyof Graduations, id: string, label: string): TemplateResult => textField({
    id, say: fold.say, label, text: typed[key], problem: problem(id),
    onType: (text) => { onType({[key]: withUnit(text, reading.shot.unit)}); },
  });
  return html`<p class="note">${fold.ownHow}</p>
    <div class="fields">
      ${field('zero', 'zero', fold.zero)}${field('nearest', 'nearest-sharp', fold.nearest)}
      ${field('farthest', 'farthest-sharp', fold.farthest)}
    </div>
    ${doneView(words, host.done('ownLimit'))}
    ${found && !(found instanceof Problem) ? html`<p class="note">${ownLimitText(host, found, reading.shot)}</p>
      <div><button type="button" @click=${() => { host.press('ownLimit', () => fold.useOwn, {...found}); }}>${fold.useOwn}</button></div>` : nothing}`;
}
