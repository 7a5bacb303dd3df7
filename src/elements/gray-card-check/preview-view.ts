import {html, nothing, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {choiceField} from '../shared/fields.js';
import {WORDS, previewText, wipeText} from './words.js';

/** Whose picture is wiped. */
export type Wiped = 'card' | 'photo';

/** What the preview needs to know. */
export interface Preview {
  /** Name of the picture's file. */
  readonly name: string;
  readonly of: Wiped;
  /** Whether there is another photo to show it on. */
  readonly choice: boolean;
  /** Where the line stands, whole per cent from the left. */
  readonly share: number;
  readonly withExposure: boolean;
  /** Whether the exposure is off far enough for the eye. */
  readonly exposureOff: boolean;
  readonly onWipe: (share: number) => void;
  readonly onChoose: (of: Wiped) => void;
  readonly onExposure: (on: boolean) => void;
}

/** The picture before and after, with the line between that can be dragged in the picture or by the slider under it. */
export function previewView(preview: Preview): TemplateResult {
  const {name, of, choice, share, withExposure, exposureOff, onWipe, onChoose, onExposure} = preview;
  const drag = (event: PointerEvent): void => {
    const {left, width} = (event.currentTarget as HTMLElement).getBoundingClientRect();
    onWipe(Math.round(Math.min(1, Math.max(0, (event.clientX - left) / width)) * 100));
  };
  return html`<div class="wiped"
      @pointerdown=${(event: PointerEvent) => {
        if (event.button !== 0) return;
        (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
        drag(event);
      }}
      @pointermove=${(event: PointerEvent) => { if ((event.currentTarget as HTMLElement).hasPointerCapture(event.pointerId)) drag(event); }}>
    <canvas class="wipe" part="preview" role="img" aria-label=${previewText(name, share)}></canvas>
    <svg aria-hidden="true">
      <line class="edge" x1="${share}%" x2="${share}%" y1="0" y2="100%"></line><line class="cut" x1="${share}%" x2="${share}%" y1="0" y2="100%"></line>
      <svg class="at" x="${share}%" y="100%"><rect class="knob" x="-5" y="-24" width="10" height="10"></rect></svg></svg>
    </div>
    <div class="ends"><span>${WORDS.before}</span>
      <input type="range" min="0" max="100" aria-label=${WORDS.wipe} aria-valuetext=${wipeText(share)} .value=${live(String(share))}
        @input=${(event: Event) => { onWipe((event.target as HTMLInputElement).valueAsNumber); }}>
      <span>${WORDS.after}</span></div>
    ${choice || exposureOff ? html`<div class="choices">${choice ? choiceField({
      id: 'shown', label: WORDS.shown, value: of, onChoose, options: [['photo', WORDS.ofPhoto], ['card', WORDS.ofCard]],
    }) : nothing}
    ${exposureOff ? html`<label class="check"><input type="checkbox" .checked=${live(withExposure)}
      @change=${(event: Event) => { onExposure((event.target as HTMLInputElement).checked); }}>${WORDS.withExposure}</label>` : nothing}</div>` : nothing}`;
}
