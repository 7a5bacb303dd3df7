import {html, nothing, type TemplateResult} from 'lit';
import type {Shot} from '../../core/shot/shot.js';
import {distanceGroup} from './distance-price.js';
import {ownLimitGroup, type Graduations} from './own-limit.js';
import type {Reading} from './reading.js';
import {needsStack, type StackOffer} from './stack.js';
import {EXTRAS, stackBest, stackWords} from './words.js';

/** What has been asked so far of what is asked less often. */
export interface ExtrasState {
  /** mm back that are priced. */
  readonly back: number;
  readonly graduations: Graduations;
  readonly stackOpen: boolean;
}

/** Frames of a stack, price of distance, the reader's own limit: a group each, closed until it is asked for. */
export function extras(
  reading: Reading, offer: StackOffer | undefined, state: ExtrasState,
  onChange: (state: ExtrasState) => void, onApply: (changes: Partial<Shot>) => void,
): TemplateResult {
  const toggled = (event: Event): void => {
    onChange({...state, stackOpen: (event.target as HTMLDetailsElement).open});
  };
  return html`
    ${needsStack(reading) ? html`<details ?open=${state.stackOpen} @toggle=${toggled}>
      <summary>${EXTRAS.stack}</summary>
      ${state.stackOpen ? html`<div class="group">${offer ? stackGroup(reading, offer, onApply) : html`<p class="note">${EXTRAS.noStack}</p>`}</div>` : nothing}
    </details>` : nothing}
    ${reading.framing.lens.magnification <= 1 ? html`<details>
      <summary>${EXTRAS.distance}</summary>
      ${distanceGroup(reading, state.back, (back) => { onChange({...state, back}); },
        (changes) => { onChange({...state, back: 0}); onApply(changes); })}
    </details>` : nothing}
    <details>
      <summary>${EXTRAS.own}</summary>
      ${ownLimitGroup(reading, state.graduations, (graduations) => { onChange({...state, graduations}); }, onApply)}
    </details>`;
}

function stackGroup(reading: Reading, offer: StackOffer, onApply: (changes: Partial<Shot>) => void): TemplateResult {
  const {best, changes} = offer;
  const set = Math.abs(best.aperture / reading.shot.aperture - 1) < 1e-6;
  return html`<p class="note">${stackWords(offer, reading)} ${stackBest(offer, reading)}</p>
    ${set ? nothing : html`<div><button type="button" @click=${() => { onApply(changes); }}>
      ${EXTRAS.setStack(best.aperture, changes.shutter ?? reading.shot.shutter)}
    </button></div>`}`;
}
