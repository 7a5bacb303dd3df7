import {html, nothing, type TemplateResult} from 'lit';
import type {SheetGroup} from '../../core/shot/sheet-lines.js';

/** Values longer than this take a line of their own. */
const LONG = 26;

/** The record as a ruled form. Its parts are groups: what level a heading would have is the page's to say. */
export function sheetGroups(groups: readonly SheetGroup[]): TemplateResult {
  return html`<div class="groups">${groups.map(({heading, lines}, at) => html`<div role="group" aria-labelledby="group-${at}">
    <p class="head" id="group-${at}">${heading}</p>
    <dl>${lines.map(([label, text]) => html`<div class=${text.length > LONG ? 'long' : ''}><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
  </div>`)}</div>`;
}

/** What is not on the sheet, and where it is added. */
export function missingView(heading: string, lines: readonly string[]): TemplateResult | typeof nothing {
  return lines.length ? html`<div class="missing note screen-only"><p>${heading}</p><ul>${lines.map((line) => html`<li>${line}</li>`)}</ul></div>` : nothing;
}
