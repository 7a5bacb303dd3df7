import {Problem} from '../../core/problem.js';
import type {Crop} from '../../core/tone/pixels.js';
import type {Tally} from '../../core/tone/tally.js';

/** What can be counted. */
export interface Countable {
  tally(crop?: Crop): Promise<Tally>;
}

/**
 * Keeps the count of a crop up to date while the crop is dragged: one question at a time, and when it is answered the
 * latest crop is asked for, whatever was wanted in between.
 */
export class Counter {
  #wanted: readonly [photo: Countable, crop: Crop] | undefined;
  #busy = false;

  /**
   * @param counted - called with each tally that came
   */
  constructor(private readonly counted: (photo: Countable, tally: Tally) => void) {}

  /** Wants the tally of a crop. */
  want(photo: Countable, crop: Crop): void {
    this.#wanted = [photo, crop];
    if (!this.#busy) void this.#work();
  }

  /** Wants nothing any more. */
  stop(): void { this.#wanted = undefined; }

  async #work(): Promise<void> {
    this.#busy = true;
    try {
      for (let next = this.#wanted; next; next = this.#wanted) {
        const [photo, crop] = next;
        this.#wanted = undefined;
        try {
          this.counted(photo, await photo.tally(crop));
        } catch (error) {
          // A photo that was closed meanwhile has nothing left to count.
          if (!(error instanceof Problem)) throw error;
        }
      }
    } finally {
      this.#busy = false;
    }
  }
}
