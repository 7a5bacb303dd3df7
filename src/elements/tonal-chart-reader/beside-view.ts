import {html, nothing, type TemplateResult} from 'lit';
import {judgeShift, type Comparison} from '../../core/tone/compare.js';
import {CHANNEL_NAMES} from './words.js';
import {BESIDE, edgeText, shiftNote, shiftSentence} from './words-beside.js';

/** The shift in words, as it is shown and read out. */
export function shiftText(comparison: Comparison, meant: number | undefined): string {
  const {shift} = comparison;
  return shiftSentence(comparison, shift === undefined ? undefined : judgeShift(shift, meant), meant);
}

/** How the shot differs from the earlier one, and what that did to the edges. */
export function besideResult(comparison: Comparison, meant: number | undefined): TemplateResult {
  const known = comparison.shift !== undefined;
  return html`<div class="side"><p class="finding">${shiftText(comparison, meant)}</p>
    ${known ? html`<p class="note">${shiftNote(comparison)}</p>` : nothing}</div>
    ${known ? html`<table><caption>${BESIDE.table}</caption>
      <thead><tr><th scope="col">${BESIDE.channel}</th><th scope="col">${BESIDE.black}</th><th scope="col">${BESIDE.white}</th></tr></thead>
      <tbody>${(['red', 'green', 'blue'] as const).map((channel) => html`<tr><th scope="row">${CHANNEL_NAMES[channel]}</th>
        <td>${edgeText(comparison.atBlack, channel)}</td><td>${edgeText(comparison.atWhite, channel)}</td></tr>`)}</tbody></table>` : nothing}`;
}
