import type {Steps} from '../../core/optics/plan.js';

/** Longest the page is held at a time, ms: half a picture at 60 a second. */
const SLICE_MS = 8;

/**
 * Runs steps in slices with room for the page in between.
 * @param done - given the result
 * @param failed - given whatever was thrown
 * @returns a function that gives the rest up
 */
export function runInSlices<T>(steps: Steps<T>, done: (result: T) => void, failed: (error: unknown) => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const slice = (): void => {
    const end = performance.now() + SLICE_MS;
    try {
      do {
        const step = steps.next();
        if (step.done) { done(step.value); return; }
      } while (performance.now() < end);
      timer = setTimeout(slice);
    } catch (error) { failed(error); }
  };
  slice();
  return () => { clearTimeout(timer); };
}
