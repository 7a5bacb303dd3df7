import {html, nothing, type TemplateResult} from 'lit';
import type {Gains} from '../../../core/white/gains.js';
import {gainTexts} from './card-speech.js';
import type {SheetWords} from './words/en.js';

/** Text that was copied, or could not be. */
export interface Copied {
  readonly text: string;
  readonly ok: boolean;
}

/** The gains as text, each form with its button. */
export function gainsView(words: SheetWords, gains: Gains, copied: Copied | undefined, onCopied: (copied: Copied) => void): TemplateResult {
  return html`<ul class="gains">${gainTexts(words, gains).map(({label, text}, at) => html`<li>
      <span id="gain-${at}">${label}</span><code dir="ltr">${text}</code>
      <button type="button" aria-describedby="gain-${at}" @click=${async (event: Event) => {
        const code = (event.currentTarget as HTMLElement).parentElement?.querySelector('code');
        onCopied({text, ok: await copy(text, code)});
      }}>${words.copy}</button></li>`)}</ul>
    <p class="note" role="status">${copied ? copied.ok ? words.copied(copied.text) : words.notCopied : nothing}</p>`;
}

/** Copies, or where the page may not, selects what would have been copied. */
async function copy(text: string, code: Element | null | undefined): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    // No clipboard at all (TypeError), or not allowed (DOMException).
    if (code) getSelection()?.selectAllChildren(code);
    return false;
  }
}
