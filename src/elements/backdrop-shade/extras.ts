import {html, nothing, type TemplateResult} from 'lit';
import {unexplainedLight} from '../../core/light/backdrop.js';
import type {Mains} from '../../core/light/flicker.js';
import type {Problem} from '../../core/problem.js';
import {linearFromCode} from '../../core/tone/light.js';
import {choiceField, textField} from '../shared/fields.js';
import type {EntryHost} from './wish-view.js';
import type {Reading} from './reading.js';
import {flickerOf, withTime} from './restore.js';
import {evenWords, flickerWords, photoWords} from './extras-speech.js';
import type {ShadeWords} from './words/en.js';

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
  words: ShadeWords, reading: Reading, {text, problem, code}: PhotoCode, measured: number | undefined, compare: (text: string) => void,
): TemplateResult {
  const beside = code === undefined ? undefined : unexplainedLight(reading.brightest, linearFromCode(code));
  return html`
    <div class="fields">
      ${textField({id: 'photo-code', say: words.say, label: words.photoCode, hint: words.photoHint, inputmode: 'decimal', text, problem, onType: compare})}
      ${measured ? html`<button type="button" @click=${() => { compare(String(+measured.toFixed(1))); }}>${words.photoTake(words.say.number(measured))}</button>` : nothing}
    </div>
    ${beside ? html`<p class="note" role="status" id="beside">${photoWords(words, beside, reading.shot)}</p>` : nothing}`;
}

/** Whether mains lamps come out even, and the times next to the shutter's that do. */
export function mainsView(words: ShadeWords, {shot, act, field}: EntryHost, said: string, choose: (mains: string) => void): TemplateResult {
  const mains: Mains = /^\s*60/.test(said) ? 60 : 50;
  const check = flickerOf(mains, shot);
  const even = check.even ? [] : [check.shorter, check.longer].filter((time) => time !== null)
    .map((time) => withTime(time, shot)).filter((exposure) => exposure !== null);
  return html`<p class="note">${flickerWords(words, check, shot.shutter)}</p>
    <div class="fields">
      ${choiceField({id: 'mains', label: words.mainsField, value: String(mains), options: [['50', '50\u00a0Hz'], ['60', '60\u00a0Hz']], onChoose: choose})}
      ${field('shutter', words.shutter)}
    </div>
    <ul class="ways">${even.map((next) => {
      const [what, cost] = evenWords(words, next);
      return html`<li><button type="button" @click=${() => { act({aperture: next.aperture, shutter: next.shutter}); }}>
        <strong>${what}</strong> <span>${cost}</span></button></li>`;
    })}</ul>`;
}
