import {Problem} from '../../../core/problem.js';

/**
 * Keeps an answer up to date while what is asked changes faster than it can be answered: one question at a time, and
 * when it is answered the latest is put, whatever was wanted in between.
 */
export class Latest<T> {
  #wanted: (() => Promise<T>) | undefined;
  #busy = false;
  #rest: ReturnType<typeof setTimeout> | undefined;

  /**
   * @param taken - called with each answer that came
   */
  constructor(private readonly taken: (answer: T) => void) {}

  /**
   * Wants an answer; earlier wants that were not put yet are dropped.
   * @param quiet - ms without a newer want to wait first, for questions that would hold up others
   */
  want(ask: () => Promise<T>, quiet = 0): void {
    this.#wanted = ask;
    clearTimeout(this.#rest);
    if (quiet > 0) this.#rest = setTimeout(() => { void this.#work(); }, quiet);
    else void this.#work();
  }

  /** Wants nothing any more. */
  stop(): void {
    clearTimeout(this.#rest);
    this.#wanted = undefined;
  }

  async #work(): Promise<void> {
    if (this.#busy) return;
    this.#busy = true;
    try {
      for (let ask = this.#wanted; ask; ask = this.#wanted) {
        this.#wanted = undefined;
        try {
          this.taken(await ask());
        } catch (error) {
          // A photo that was closed meanwhile has nothing left to say.
          if (!(error instanceof Problem)) throw error;
        }
      }
    } finally {
      this.#busy = false;
    }
  }
}
