import {html, nothing, type TemplateResult} from 'lit';
import type {Gains} from '../../core/white/gains.js';
import {WORDS, gainTexts} from './words.js';

/** Text that was copied, or could not be. */
export interface Copied {
  readonly text: string;
  readonly ok: boolean;
}

/** The gains as text, each form with its button. */
export function gainsView(gains: Gains, copied: Copied | undefined, onCopied: (copied: Copied) => void): TemplateResult {
  return html`<ul class="gains">${gainTexts(gains).map(({label, text}, at) => html`<li>
      <span id="gain-${at}">${label}</span><code dir="ltr">${text}</code>
      <button type="button" aria-describedby="gain-${at}" @click=${async (event: Event) => {
        const code = (event.currentTarget as HTMLElement).parentElement?.querySelector('code');
        onCopied({text, ok: await copy(text, code)});
      }}>${WORDS.copy}</button></li>`)}</ul>
    <p class="note" role="status">${copied ? copied.ok ? `${WORDS.copied} ${copied.text}` : WORDS.notCopied : nothing}</p>`;
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
