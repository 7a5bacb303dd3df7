/** Who waits, in the order in which they came. */
const waiting: (() => void)[] = [];

/**
 * A task of one's own, after whatever was drawn at once has been painted: elements that follow another draw one by one, so
 * that the one in the hand never waits for all of them.
 */
export function turn(): Promise<void> {
  return new Promise((begin) => {
    waiting.push(begin);
    if (waiting.length === 1) setTimeout(next);
  });
}

function next(): void {
  waiting.shift()?.();
  if (waiting.length) setTimeout(next);
}
