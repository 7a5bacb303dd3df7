import {html, nothing, type TemplateResult} from 'lit';
import {unexplainedLight} from '../../core/light/backdrop.js';
import type {Mains} from '../../core/light/flicker.js';
import type {Problem} from '../../core/problem.js';
import {linearFromCode} from '../../core/tone/light.js';
import {choiceField, textField} from '../shared/fields.js';
import type {EntryHost} from './entries.js';
import type {Reading} from './reading.js';
import {flickerOf, withTime} from './restore.js';
import {WORDS, evenWords, flickerWords, photoWords} from './words.js';

/** The backdrop's code in a photo, as typed. */
export interface PhotoCode {
  readonly text: string;
  readonly problem?: Problem;
  /** The last one that could be used. */
  readonly code?: number;
}

/**
 * A photo's backdrop beside the prediction.
 * @param measured - code measured on the bench's photo, where there is one
 */
export function photoView(
  reading: Reading, {text, problem, code}: PhotoCode, measured: number | undefined, compare: (text: string) => void,
): TemplateResult {
  const beside = code === undefined ? undefined : unexplainedLight(reading.brightest, linearFromCode(code));
  return html`<details>
    <summary>${WORDS.photo}</summary>
    <div class="fields">
      ${textField({id: 'photo-code', label: WORDS.photoCode, hint: WORDS.photoHint, inputmode: 'decimal', text, problem, onType: compare})}
      ${measured ? html`<button type="button" @click=${() => { compare(String(+measured.toFixed(1))); }}>${WORDS.photoTake(measured)}</button>` : nothing}
    </div>
    ${beside ? html`<p class="note" role="status" id="beside">${photoWords(beside, reading.lamps)}</p>` : nothing}
  </details>`;
}

/** Whether mains lamps come out even, and the times next to the shutter's that do. */
export function mainsView({shot, act, field}: EntryHost, said: string, choose: (mains: string) => void): TemplateResult {
  const mains: Mains = /^\s*60/.test(said) ? 60 : 50;
  const check = flickerOf(mains, shot);
  const even = check.even ? [] : [check.shorter, check.longer].filter((time) => time !== null)
    .map((time) => withTime(time, shot)).filter((exposure) => exposure !== null);
  return html`<details>
    <summary>${WORDS.mains}: ${flickerWords(check, shot.shutter)}</summary>
    <div class="fields">
      ${choiceField({id: 'mains', label: WORDS.mainsField, value: String(mains), options: Object.entries(WORDS.mainsNames), onChoose: choose})}
      ${field('shutter', WORDS.shutter)}
    </div>
    <ul class="ways">${even.map((next) => {
      const [what, cost] = evenWords(next);
      return html`<li><button type="button" @click=${() => { act({aperture: next.aperture, shutter: next.shutter}); }}>
        <strong>${what}</strong> <span>${cost}</span></button></li>`;
    })}</ul>
  </details>`;
}
