import {html, nothing, type TemplateResult} from 'lit';
import type {IntentExposure} from '../../core/tone/card-exposure.js';
import {textField} from '../shared/fields.js';
import type {AimField, Aims} from './aims.js';
import {sideText} from './words.js';
import {SPOT, aimsSentence, shadowsNote} from './words-spot.js';

/** Where the figure's lights and darks should sit, and what that asks for. */
export function aimsResult(
  aims: Aims, exposure: IntentExposure | undefined, byCard: boolean, type: (field: AimField, text: string) => void,
): TemplateResult {
  const field = (name: AimField, written: string) => textField({
    id: `aim-${name}`, label: SPOT[name], text: aims.texts[name] ?? written, problem: aims.problems[name],
    hint: name === 'backdrop' ? SPOT.ofCrop : SPOT.code,
    onType: (text) => { type(name, text); },
  });
  const note = exposure && shadowsNote(exposure, aims);
  return html`<div class="fields">${field('highlights', String(aims.highlights))}${field('shadows', String(aims.shadows))}
      ${byCard ? nothing : field('backdrop', sideText(aims.backdrop))}</div>
    ${exposure ? html`<p class="finding">${aimsSentence(exposure, aims)}</p>` : nothing}
    ${note ? html`<p class="note">${note}</p>` : nothing}
    <p class="note">${byCard ? SPOT.fromCard : SPOT.fromCrop}</p>`;
}
