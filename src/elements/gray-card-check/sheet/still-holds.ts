import type {Comparison} from '../../../core/tone/compare.js';
import {wholeOf} from '../../../core/tone/pixels.js';
import {colourChange, setupChanges, type SetupChange} from '../../../core/white/holds.js';
import type {Photo} from '../../../photo/open.js';
import {Latest} from '../../shared/photo/latest.js';
import {isClosed} from '../../shared/photo/opener.js';
import type {SheetHost} from './host.js';

/**
 * Whether the gains hold for the linked photo, or for the next one: `changed` when something speaks against it,
 * `same` when the pictures agree, `unknown` when they show too different things.
 */
export type Holds = 'changed' | 'same' | 'unknown';

/** Keeps an eye on the light since the card shot: lamps and flags as they stand, and the two pictures. */
export class StillHolds {
  #comparison: Comparison | undefined;
  #compared: readonly unknown[] = [];
  readonly #comparing: Latest<Comparison>;

  /** What changed since the card shot. */
  changes: readonly SetupChange[] = [];

  constructor(private readonly host: SheetHost) {
    this.#comparing = new Latest((comparison) => {
      this.#comparison = comparison;
      host.changed();
    });
  }

  /** `undefined` while there is nothing to say of it. */
  get holds(): Holds | undefined {
    if (this.changes.length > 0) return 'changed';
    if (!this.host.linked() || !this.#comparison) return undefined;
    return this.#comparison.colour ? 'same' : 'unknown';
  }

  follow(): void {
    const [shot, linked] = [this.host.cardShot(), this.host.linked()];
    this.#compare(shot?.photo, linked);
    const colours = linked && this.#comparison ? colourChange(this.#comparison) : undefined;
    this.changes = shot ? [...setupChanges(shot.lights, this.host.shot().lights), ...(colours ?? [])] : [];
  }

  #compare(card: Photo | undefined, linked: Photo | undefined): void {
    if (card === this.#compared[0] && linked === this.#compared[1]) return;
    this.#compared = [card, linked];
    this.#comparison = undefined;
    this.#comparing.stop();
    if (card && linked && !isClosed(card)) this.#comparing.want(() => linked.ask('compare', wholeOf(card), card));
  }
}
