import type {Trail} from '../../core/exposure/trail.js';

/** After a reader mended a step, pasted a lesson or chose what is meant. */
export class TrailChangeEvent extends Event {
  constructor(
    /** The list as it stands now. */
    readonly trail: Trail,
  ) {
    super('trail-change', {bubbles: true, composed: true});
  }
}

declare global {
  interface HTMLElementEventMap { 'trail-change': TrailChangeEvent }
}
