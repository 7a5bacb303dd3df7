import {html, nothing, type TemplateResult} from 'lit';
import type {Comparison} from '../../../core/tone/compare.js';
import {edgeText, shiftNote, shiftText} from './beside-speech.js';
import type {SheetWords} from './words/en.js';

/** How the shot differs from the earlier one, and what that did to the edges. */
export function besideView(words: SheetWords, comparison: Comparison, meant: number | undefined): TemplateResult {
  const known = comparison.shift !== undefined;
  const {columns} = words;
  return html`<div class="side"><p class="finding">${shiftText(words, comparison, meant)}</p>
    ${known ? html`<p class="note">${shiftNote(words, comparison)}</p>` : nothing}</div>
    ${known ? html`<table><caption>${words.edgesTable}</caption>
      <thead><tr><th scope="col">${columns.channel}</th><th scope="col">${columns.black}</th><th scope="col">${columns.white}</th></tr></thead>
      <tbody>${(['red', 'green', 'blue'] as const).map((channel) => html`<tr><th scope="row">${words.channels[channel]}</th>
        <td data-of=${columns.black}>${edgeText(words, comparison.atBlack, channel)}</td>
        <td data-of=${columns.white}>${edgeText(words, comparison.atWhite, channel)}</td></tr>`)}</tbody></table>` : nothing}`;
}
