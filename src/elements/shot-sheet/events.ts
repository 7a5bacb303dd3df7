import type {ShotRecord} from '../../core/shot/record.js';

/** After a reader kept, moved, removed or imported shots. */
export class ShotsChangeEvent extends Event {
  constructor(readonly shots: readonly ShotRecord[]) {
    super('shots-change', {bubbles: true, composed: true});
  }
}

declare global {
  interface HTMLElementEventMap { 'shots-change': ShotsChangeEvent }
}
