import {html, nothing, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {Problem} from '../../core/problem.js';
import type {Say} from './say.js';
import {typedText} from './typed-text.js';

/** What a typed field needs to know. */
export interface TextField {
  /** Unique inside the element; ties label, input and problem together. */
  readonly id: string;
  readonly label: string;
  /** Puts a problem into words. */
  readonly say: Say;
  /** Text to show: as typed, or the value written out. */
  readonly text: string;
  /** Why the text as typed could not be used. */
  readonly problem?: Problem | undefined;
  /** Shown under the field while nothing is wrong. */
  readonly hint?: string | undefined;
  readonly inputmode?: 'text' | 'decimal' | 'numeric';
  /** Called with the text once the reader is done with it. */
  readonly onType: (text: string) => void;
}

/** A label, a native input and, beside it, what is wrong with what was typed. The text itself is never touched. */
export function textField({id, label, say, text, problem, hint, inputmode = 'text', onType}: TextField): TemplateResult {
  const described = problem ? `${id}-problem` : hint ? `${id}-hint` : nothing;
  return html`<div class="field" part="field">
    <label for=${id}>${label}</label>
    <input id=${id} dir="auto" autocomplete="off" spellcheck="false" inputmode=${inputmode} value=${text} ${typedText(text)}
      aria-invalid=${problem ? 'true' : nothing} aria-describedby=${described}
      @change=${(event: Event) => { onType((event.target as HTMLInputElement).value); }}>
    ${problem
      ? html`<p class="problem" id="${id}-problem">${say.problem(problem)}</p>`
      : hint ? html`<p class="note" id="${id}-hint">${hint}</p>` : nothing}
  </div>`;
}

/** A label and a native choice of a few. */
export function choiceField<T extends string>(field: {
  readonly id: string;
  readonly label: string;
  readonly value: T;
  readonly options: readonly (readonly [value: T, label: string])[];
  /** Shown under the field. */
  readonly hint?: string | undefined;
  readonly onChoose: (value: T) => void;
}): TemplateResult {
  return html`<div class="field" part="field">
    <label for=${field.id}>${field.label}</label>
    <select id=${field.id} .value=${live(field.value)} aria-describedby=${field.hint ? `${field.id}-hint` : nothing}
      @change=${(event: Event) => { field.onChoose((event.target as HTMLSelectElement).value as T); }}>
      ${field.options.map(([value, label]) => html`<option value=${value} ?selected=${value === field.value}>${label}</option>`)}
    </select>
    ${field.hint ? html`<p class="note" id="${field.id}-hint">${field.hint}</p>` : nothing}
  </div>`;
}
