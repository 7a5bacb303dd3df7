import {html, nothing, type TemplateResult} from 'lit';
import type {IntentExposure} from '../../../core/tone/card-exposure.js';
import {textField} from '../../shared/fields.js';
import type {AimField, Aims} from './aims.js';
import {aimsText, shadowsText} from './spot-speech.js';
import type {SheetWords} from './words/en.js';

/**
 * Where the figure's lights and darks should sit, and what that asks for.
 * @param differs - why that is not what the answer says, where it is not
 */
export function aimsView(
  words: SheetWords, aims: Aims, exposure: IntentExposure | undefined, differs: string, byCard: boolean,
  type: (field: AimField, text: string) => void,
): TemplateResult {
  const {say} = words;
  const field = (name: AimField, written: string) => textField({
    id: `aim-${name}`, say, label: words.aimNames[name], text: aims.texts[name] ?? written, problem: aims.problems[name], hint: words.aimHints[name],
    onType: (text) => { type(name, text); },
  });
  const note = exposure && shadowsText(words, exposure, aims);
  return html`<div class="fields">${field('highlights', say.number(aims.highlights))}${field('shadows', say.number(aims.shadows))}
      ${byCard ? nothing : field('backdrop', say.percent(aims.backdrop))}</div>
    ${exposure ? html`<p class="finding">${aimsText(words, exposure, aims)}</p>` : nothing}
    ${differs ? html`<p class="note">${differs}</p>` : nothing}
    ${note ? html`<p class="note">${note}</p>` : nothing}
    <p class="note">${byCard ? words.fromCard : words.fromCrop}</p>`;
}
