import {html, nothing, type TemplateResult} from 'lit';
import {textField} from '../../shared/fields.js';
import type {Problem} from '../../../core/problem.js';
import type {SaidDetail} from '../detail.js';
import type {Panel, PanelEnd} from '../panel.js';
import type {Reading} from '../reading.js';
import {doneView} from '../ways-view.js';
import type {DetailContrast} from './detail-contrast.js';
import type {BothWords, FoldHost} from './host.js';
import {SAME_APERTURE, type StackOffer} from './stack.js';
import {contrastText, setStackText, stackText} from './finest-speech.js';
import type {FoldWords} from './words/en.js';

export {detailContrast} from './detail-contrast.js';
export {stackOffer} from './stack.js';

/** Room below zero, where light and dark change places. */
const BELOW = 0.16;

/** Contrast of a detail, from a little below nothing to all of it. */
export function contrastPanel(fold: FoldWords, {at, front, back}: DetailContrast, reading: Reading): Panel {
  const end = (kept: number | null, mark: number): PanelEnd => ({
    value: at(mark) + BELOW, label: kept === null ? fold.lostAt : fold.say.percent(kept), good: kept !== null,
  });
  return {
    most: 1 + BELOW, value: (mark) => at(mark) + BELOW, line: BELOW, lineLabel: fold.lost, caption: fold.contrastCaption,
    ends: [end(front, reading.front), end(back, reading.back)], falls: false, topLabel: fold.say.percent(1),
  };
}

/** The finest line to be typed. */
export function detailField({say, detail, detailHint}: FoldWords, text: string, problem: Problem | undefined, onType: (text: string) => void): TemplateResult {
  return textField({id: 'detail', say, label: detail, hint: detailHint, text, problem, onType});
}

/** What becomes of the finest line, in a sentence. */
export const contrastNote = (both: BothWords, contrast: DetailContrast, detail: SaidDetail, reading: Reading): TemplateResult =>
  html`<p class="note">${contrastText(both, contrast, detail, reading)}</p>`;

/** The frames that would hold the figure, and the aperture at which they are best. */
export function stackView(host: FoldHost, offer: StackOffer | undefined): TemplateResult {
  const {fold, shot} = host;
  if (!offer) return html`<p class="note">${fold.tooMany}</p>`;
  const {best, changes} = offer;
  return html`<p class="note">${stackText(host, offer, shot)}</p>
    ${doneView(host.words, host.done('stack'))}
    ${Math.abs(best.aperture / shot.aperture - 1) < SAME_APERTURE ? nothing : html`<div><button type="button"
      @click=${() => { host.press('stack', () => setStackText(host, offer, shot), changes); }}>${setStackText(host, offer, shot)}</button></div>`}`;
}
