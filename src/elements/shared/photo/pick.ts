import {html, type TemplateResult} from 'lit';

/** A button that asks for a picture's file; on a phone also for one to be taken. */
export function pick(label: string, picked: (file: File) => void): TemplateResult {
  return html`<label class="pick">${label}<input type="file" accept="image/*" @change=${(event: Event) => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    // Emptied, so that the same file can be chosen again after it was changed.
    input.value = '';
    if (file) picked(file);
  }}></label>`;
}
