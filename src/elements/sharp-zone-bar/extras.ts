import {html, nothing, type TemplateResult} from 'lit';
import type {Shot} from '../../core/shot/shot.js';
import {distanceGroup} from './distance-price.js';
import {ownLimitGroup} from './own-limit.js';
import type {Reading} from './reading.js';
import type {RulerPhoto, ShownPhoto} from './ruler-photo.js';
import type {RulerNotes} from './ruler-scale.js';
import {needsStack, type StackOffer} from './stack.js';
import {EXTRAS, RULER, stackBest, stackWords} from './words.js';

/** What has been asked so far of what is asked less often. */
export interface ExtrasState {
  /** mm back that are priced. */
  readonly back: number;
  readonly stackOpen: boolean;
  readonly photoOpen: boolean;
}

/** What the groups need of their element. */
export interface ExtrasHost {
  readonly state: ExtrasState;
  readonly onChange: (state: Partial<ExtrasState>) => void;
  readonly onApply: (changes: Partial<Shot>) => void;
  readonly notes: RulerNotes;
  readonly onNote: (notes: Partial<RulerNotes>) => void;
  readonly photo: ShownPhoto | undefined;
  readonly rulerPhoto: RulerPhoto;
}

const isOpen = (event: Event): boolean => (event.target as HTMLDetailsElement).open;

/** Frames of a stack, price of distance, what rulers say: a group each, closed until it is asked for. */
export function extras(reading: Reading, offer: StackOffer | undefined, host: ExtrasHost): TemplateResult {
  const {state, onChange, onApply, photo} = host;
  return html`
    ${needsStack(reading) ? html`<details ?open=${state.stackOpen} @toggle=${(event: Event) => { onChange({stackOpen: isOpen(event)}); }}>
      <summary>${EXTRAS.stack}</summary>
      ${state.stackOpen ? html`<div class="group">${offer ? stackGroup(reading, offer, onApply) : html`<p class="note">${EXTRAS.noStack}</p>`}</div>` : nothing}
    </details>` : nothing}
    ${reading.framing.lens.magnification <= 1 ? html`<details>
      <summary>${EXTRAS.distance}</summary>
      ${distanceGroup(reading, state.back, (back) => { onChange({back}); }, (changes) => { onChange({back: 0}); onApply(changes); })}
    </details>` : nothing}
    <details ?open=${state.photoOpen} @toggle=${(event: Event) => { onChange({photoOpen: isOpen(event)}); }}>
      <summary>${RULER.title}</summary>
      ${state.photoOpen ? html`<div class="group">${photo ? host.rulerPhoto.view(photo, reading.shot, onApply) : html`<p class="note">${RULER.none}</p>`}</div>` : nothing}
    </details>
    <details>
      <summary>${EXTRAS.own}</summary>
      ${ownLimitGroup(reading, host.notes, host.onNote, onApply)}
    </details>`;
}

function stackGroup(reading: Reading, offer: StackOffer, onApply: (changes: Partial<Shot>) => void): TemplateResult {
  const {best, changes} = offer;
  const set = Math.abs(best.aperture / reading.shot.aperture - 1) < 1e-6;
  return html`<p class="note">${stackWords(offer, reading)} ${stackBest(offer, reading)}</p>
    ${set ? nothing : html`<div><button type="button" @click=${() => { onApply(changes); }}>
      ${EXTRAS.setStack(best.aperture, changes.shutter ?? reading.shot.shutter, reading.shot)}
    </button></div>`}`;
}
