import {html, nothing, type TemplateResult} from 'lit';
import type {Stack} from '../../core/optics/stack.js';
import type {Shot} from '../../core/shot/shot.js';
import {distanceGroup} from './distance-price.js';
import {ownLimitGroup, type Graduations} from './own-limit.js';
import type {Reading} from './reading.js';
import {EXTRAS, stackTitle, stackWords} from './words.js';

/** What has been asked so far of what is asked less often. */
export interface ExtrasState {
  /** mm back that are priced. */
  readonly back: number;
  readonly graduations: Graduations;
  readonly stackOpen: boolean;
}

/** Frames of a stack, price of distance, the reader's own limit: a group each, closed until it is asked for. */
export function extras(
  reading: Reading, frames: Stack['frames'], state: ExtrasState,
  onChange: (state: ExtrasState) => void, onApply: (changes: Partial<Shot>) => void,
): TemplateResult {
  const toggled = (event: Event): void => {
    onChange({...state, stackOpen: (event.target as HTMLDetailsElement).open});
  };
  return html`
    ${frames.length ? html`<details ?open=${state.stackOpen} @toggle=${toggled}>
      <summary>${stackTitle(frames, reading)}</summary><p class="note">${stackWords(frames, reading)}</p>
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
