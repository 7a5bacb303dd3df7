import {html, nothing, type TemplateResult} from 'lit';
import type {CardFault, CardReading, Patch} from '../../../core/white/card.js';
import type {GrayCard} from '../reading.js';
import {codesText, evenText, findings, offText} from './card-speech.js';
import {lineSample} from './frames-view.js';
import {PATCHES} from './judge.js';
import type {SheetWords} from './words/en.js';

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
export function patchesTable(words: SheetWords, reading: CardReading): TemplateResult {
  const {patch: name, codes, off, even} = words.columns;
  const mark = (patch: Patch, uneven: boolean) =>
    (reading.faults.some((fault) => patchOf(fault) === patch && (fault.fault === 'uneven') === uneven) ? 'bad' : nothing);
  return html`<table part="patches"><caption>${words.table}</caption>
    <thead><tr>${[name, codes, off, even].map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>${PATCHES.map((patch) => html`<tr>
      <th scope="row">${words.patches[patch]}${lineSample(patch)}</th>
      <td class="codes" dir="ltr">${codesText(reading, patch)}</td>
      <td dir="auto" class=${mark(patch, false)}>${offText(words, reading, patch)}</td>
      <td dir="auto" class=${mark(patch, true)}>${evenText(words, reading, patch)}</td></tr>`)}</tbody></table>`;
}

/** What was found, and what to do about it. What speaks against the card has a double rule. */
export function findingsList(words: SheetWords, card: GrayCard): TemplateResult {
  return html`<ul class="findings">${findings(words, card).map(({seen, then, against}) => html`<li class=${against ? 'against' : nothing}>
    <strong>${seen}</strong> <span>${then}</span></li>`)}</ul>`;
}
