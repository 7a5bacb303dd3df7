import {withBenches} from './shared/bench.js';
import {speaking} from './shared/languages.js';

/** What a server needs to know of an element's class. */
interface Speaker {
  readonly book: {readonly load: (language: string) => Promise<void>};
}

/**
 * Fetches the words that elements need before a server can render them.
 * @param language - BCP 47 tag of the page: `de`, `en-GB`
 * @param classes - as exported by `lampblack/elements/<tag>/class`
 */
export async function loadWords(language: string, classes: readonly Speaker[]): Promise<void> {
  await Promise.all(classes.map(({book}) => book.load(language)));
}

/**
 * Renders the elements of one page: those of one `bench` share their shot, and all speak the language of the page. The
 * first of two passes hears what every element states, so that the second shows what they make of it together.
 * @param language - BCP 47 tag of the page
 * @param render - renders the whole page, at once (`collectResultSync(render(page))` of `@lit-labs/ssr`); called twice
 * @returns what it rendered the second time
 */
export function renderTogether<T>(language: string, render: () => T): T {
  return speaking(language, () => withBenches(() => {
    render();
    return render();
  }));
}
