/** Work in pieces: each `next()` does a little of it, the last one has the result. */
export type Steps<T> = Generator<undefined, T>;

/** Does all of the work in one go. */
export function toEnd<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
