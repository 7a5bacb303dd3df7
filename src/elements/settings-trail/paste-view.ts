import {html, nothing, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {TrailOptions} from '../../core/exposure/trail.js';
import {choiceField} from '../shared/fields.js';
import {refusedWords} from './speech.js';
import type {TrailWords} from './words/en.js';

/** What is meant where nothing is said of the light. */
export type Expect = NonNullable<TrailOptions['expect']>;

/** What could not be used, as it was given. */
export interface Refused { readonly name: 'steps' | 'expect'; readonly text: string }

/** The field for a list of one's own, and what is meant where it says nothing of the light. */
export function pasteView(words: TrailWords, {text, refused, kept, expect, onInput, onRead, onExpect}: {
  readonly text: string;
  readonly refused: Refused | null;
  /** Whether another list stays in use. */
  readonly kept: boolean;
  readonly expect: Expect;
  readonly onInput: (text: string) => void;
  readonly onRead: () => void;
  readonly onExpect: (expect: Expect) => void;
}): TemplateResult {
  const wrong = refused?.name === 'steps';
  const problem = refused && refusedWords(words, refused.text, wrong ? words.wanted : words.expectWanted, kept);
  return html`<div class="paste">
    <div class="field" part="field">
      <label for="lesson">${words.pasteLabel}</label>
      <textarea id="lesson" spellcheck="false" .value=${live(text)}
        aria-invalid=${wrong ? 'true' : nothing} aria-describedby=${wrong ? 'lesson-problem' : 'lesson-hint'}
        @input=${(event: Event) => { onInput((event.target as HTMLTextAreaElement).value); }}></textarea>
      ${wrong ? html`<p class="problem" id="lesson-problem">${problem}</p>` : html`<p class="note" id="lesson-hint">${words.pasteHint}</p>`}
    </div>
    <button type="button" @click=${onRead}>${words.read}</button>
    ${choiceField<Expect>({
      id: 'expect', label: words.expect, value: expect,
      options: [['same-light', words.expects['same-light']], ['nothing', words.expects.nothing]],
      onChoose: onExpect,
    })}
    ${problem && !wrong ? html`<p class="problem">${problem}</p>` : nothing}
  </div>`;
}
