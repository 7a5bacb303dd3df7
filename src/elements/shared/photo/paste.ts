/** An element that takes pasted photos. */
export interface PasteTaker extends Element {
  open(file: Blob): Promise<boolean>;
}

/** Those in a page, and whether they step back behind those that do not. */
const takers = new Map<PasteTaker, boolean>();

/**
 * A pasted photo is for the element that the pointer or the focus is on, or else for the only one of the page; one that
 * steps back counts only where no other is.
 * @returns a function that ends it
 */
export function takePastes(taker: PasteTaker, stepsBack: boolean): () => void {
  takers.set(taker, stepsBack);
  const {ownerDocument} = taker;
  const pasted = (event: ClipboardEvent) => {
    const file = event.clipboardData?.files[0];
    if (!file || event.defaultPrevented || takerIn(ownerDocument) !== taker) return;
    event.preventDefault();
    void taker.open(file);
  };
  ownerDocument.addEventListener('paste', pasted);
  return () => {
    takers.delete(taker);
    ownerDocument.removeEventListener('paste', pasted);
  };
}

function takerIn(page: Document): PasteTaker | undefined {
  const here = [...takers].filter(([{ownerDocument}]) => ownerDocument === page);
  const pointed = here.find(([taker]) => taker.matches(':hover, :focus-within'));
  const first = here.filter(([, stepsBack]) => !stepsBack);
  const [only, ...more] = first.length > 0 ? first : here;
  return pointed?.[0] ?? (more.length === 0 ? only?.[0] : undefined);
}
