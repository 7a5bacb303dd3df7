import {html, type TemplateResult} from 'lit';
import type {SheetGroup} from '../../core/shot/sheet.js';

/** Values longer than this take a line of their own. */
const LONG = 26;

/** The record as a ruled form. */
export function sheetGroups(groups: readonly SheetGroup[]): TemplateResult {
  return html`<div class="groups">${groups.map(({heading, lines}) => html`<div>
    <h3>${heading}</h3>
    <dl>${lines.map(([label, text]) => html`<div class=${text.length > LONG ? 'long' : ''}><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
  </div>`)}</div>`;
}
