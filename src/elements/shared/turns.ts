/** How long those who wait are let in one after another before a page has its turn, ms: half of a frame. */
const TOGETHER_MS = 8;

/** Who waits, in the order in which they came. */
const waiting: (() => void)[] = [];

/**
 * Work for after what was drawn at once has been painted: elements that follow another draw a few at a time, so that the
 * one in the hand never waits for all of them.
 * @returns what comes of it
 */
export function inTurn<T>(work: () => T | Promise<T>): Promise<T> {
  return new Promise((done) => {
    waiting.push(() => { done(new Promise((outcome) => { outcome(work()); })); });
    if (waiting.length === 1) setTimeout(letIn);
  });
}

function letIn(): void {
  const until = performance.now() + TOGETHER_MS;
  do waiting[0]?.(); while (waiting.shift() && waiting.length && performance.now() < until);
  if (waiting.length) setTimeout(letIn);
}
