/** A trail as somebody wrote it: items of a list, or a text. */
export type WrittenTrail = string | readonly string[];

/**
 * What a page wrote between the tags: the items of its lists, or all its text where it has none.
 * @returns an empty text when nothing is there
 */
export function writtenIn(host: Element): WrittenTrail {
  const items = [...host.querySelectorAll('li:not(:has(li))')].map((item) => item.textContent ?? '');
  return items.length ? items : (host.textContent ?? '').trim();
}

/** The same kind of trail with other words: a list stays a list. */
export function rewritten(old: WrittenTrail, text: string): WrittenTrail {
  return typeof old === 'string' ? text : text.split('\n');
}
