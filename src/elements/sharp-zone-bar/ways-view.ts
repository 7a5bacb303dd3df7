import {html, nothing, type TemplateResult} from 'lit';
import type {Way} from '../../core/shot/ways-out.js';
import type {Reading} from './reading.js';
import {deadEnds, wayLines, wayTitle} from './ways-speech.js';
import type {ZoneWords} from './words/en.js';

/** What was pressed last, in words, and how to take it back. */
export interface Done {
  readonly text: string;
  readonly undo: () => void;
}

/** A line that says what was done, where it was pressed. */
export function doneView(words: ZoneWords, done: Done | undefined): TemplateResult | typeof nothing {
  return done ? html`<p class="done"><span>${done.text}</span><button type="button" class="undo" @click=${done.undo}>${words.undo}</button></p>` : nothing;
}

/** The ways out, why there are no more, and what was done last. */
export function waysView(words: ZoneWords, reading: Reading, press: (way: Way) => void, done: Done | undefined): TemplateResult | typeof nothing {
  const {ways: {ways, nearest}, shot} = reading;
  const all = nearest ? [nearest] : ways;
  const why = deadEnds(words, reading);
  if (!all.length && !why.length && !done) return nothing;
  return html`<div class="out">
    ${doneView(words, done)}
    ${why.map((sentence) => html`<p class="note">${sentence}</p>`)}
    ${all.length ? html`<ul class="ways">${all.map((way) => html`<li><button type="button" @click=${() => { press(way); }}>
      <strong>${wayTitle(words, way, shot)}</strong>
      ${wayLines(words, way, shot).map(({label, text}) => html`<span class="line-of-way"><i>${label}</i> <span>${text}</span></span> `)}
    </button></li>`)}</ul>` : nothing}
    ${all.some(({back}) => back > 0) ? html`<p class="note">${words.planWeighs}</p>` : nothing}
  </div>`;
}
