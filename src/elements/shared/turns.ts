/** How long those who wait are let in one after another before a page has its turn, ms: half of a frame. */
const TOGETHER_MS = 8;
/** A page that nobody sees is not painted: then nobody waits for it longer, ms. */
const UNSEEN_MS = 200;

/** Who waits, in the order in which they came. */
const waiting: (() => void)[] = [];

/** When the last were let in, ms. */
let left = 0;

/**
 * Work for after what was drawn at once has been painted: elements that follow another draw a few at a time, so that the
 * one in the hand never waits for all of them.
 * @returns what comes of it
 */
export function inTurn<T>(work: () => T | Promise<T>): Promise<T> {
  return new Promise((done) => {
    waiting.push(() => { done(new Promise((outcome) => { outcome(work()); })); });
    if (waiting.length === 1) afterPainting();
  });
}

function afterPainting(): void {
  left = performance.now();
  let over = false;
  const once = (): void => {
    if (!over) letIn();
    over = true;
  };
  setTimeout(once, UNSEEN_MS);
  requestAnimationFrame(() => { setTimeout(once); });
}

/** On a page that takes longer than a frame for itself they have half as long as it took. */
function letIn(): void {
  const now = performance.now();
  const until = now + Math.max(TOGETHER_MS, (now - left) / 2);
  do waiting[0]?.(); while (waiting.shift() && waiting.length && performance.now() < until);
  if (waiting.length) afterPainting();
}
