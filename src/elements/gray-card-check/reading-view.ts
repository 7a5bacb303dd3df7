import {html, nothing, type TemplateResult} from 'lit';
import type {CardFault, CardReading, Patch} from '../../core/white/card.js';
import {PATCHES, type GrayCard} from './reading.js';
import {lineSample} from './stage-view.js';
import {PATCH_LETTERS, PATCH_NAMES, WORDS, codesText, evenText, findings, offText} from './words.js';

/** The patch that a fault speaks of. */
function patchOf(fault: CardFault): Patch {
  switch (fault.fault) {
    case 'white-clipped': return 'white';
    case 'gray-clipped':
    case 'gray-black': return 'gray';
    case 'black-lifted': return 'black';
    case 'uneven': return fault.patch;
  }
}

/** What was measured on each patch, a row each. */
export function patchesTable(reading: CardReading): TemplateResult {
  const {patch: name, codes, off, even} = WORDS.columns;
  const mark = (patch: Patch, uneven: boolean) =>
    (reading.faults.some((fault) => patchOf(fault) === patch && (fault.fault === 'uneven') === uneven) ? 'bad' : nothing);
  return html`<table part="patches"><caption>${WORDS.table}</caption>
    <thead><tr>${[name, codes, off, even].map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>${PATCHES.map((patch) => html`<tr>
      <th scope="row"><b>${PATCH_LETTERS[patch]}</b>${lineSample(patch)}<span class="word">${PATCH_NAMES[patch]}</span></th>
      <td dir="ltr">${codesText(reading, patch)}</td>
      <td dir="auto" class=${mark(patch, false)}>${offText(reading, patch)}</td>
      <td dir="auto" class=${mark(patch, true)}>${evenText(reading, patch)}</td></tr>`)}</tbody></table>`;
}

/** What was found, and what to do about it. What speaks against the card has a double rule. */
export function findingsList(card: GrayCard): TemplateResult {
  return html`<ul class="findings">${findings(card).map(({seen, then, against}) => html`<li class=${against ? 'against' : nothing}>
    <strong>${seen}</strong><span>${then}</span></li>`)}</ul>`;
}
