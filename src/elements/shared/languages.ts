import {Say, type Family} from './say.js';

/** What the file of one language gives for one element. */
export interface WordFile<W> {
  readonly family: Family;
  /** Sentences of the element, with numbers written by `say`. */
  readonly words: (say: Say) => W;
}

/** How the file of a language is fetched. */
export type WordLoader<W> = () => Promise<WordFile<W>>;

/** Spoken where the language of the page is not at hand. */
const FALLBACK = 'en';

/** The words of one element in the languages it has. A page fetches those of its own language and no others. */
export class WordBook<W> {
  readonly #loaders: Map<string, WordLoader<W>>;
  readonly #files = new Map<string, WordFile<W>>();
  readonly #words = new Map<string, W>();
  readonly #pending = new Map<string, Promise<void>>();
  readonly #askers = new Map<string, () => Promise<void>>();

  /**
   * @param loaders - by language: `de`, or `pt-BR` where a region has words of its own
   * @param parts - books of what the element fetches later, by what it is
   */
  constructor(loaders: Readonly<Record<string, WordLoader<W>>>, readonly parts: Readonly<Record<string, WordBook<unknown>>> = {}) {
    this.#loaders = new Map(Object.entries(loaders));
  }

  /** Languages it has, in order. */
  get languages(): readonly string[] { return [...this.#loaders.keys()].sort(); }

  /** Adds a language, or replaces one: for languages that the library does not have. */
  offer(language: string, loader: WordLoader<W>): void {
    this.#loaders.set(language, loader);
    this.#files.delete(language);
    this.#pending.delete(language);
    this.#words.clear();
  }

  /**
   * The language spoken where `wanted` is asked for: itself when it or its main language is there (`de-AT` speaks `de`
   * with Austrian numbers), English otherwise.
   */
  spoken(wanted: string): string {
    return this.#fileName(wanted) ? wanted : FALLBACK;
  }

  #fileName(tag: string): string | undefined {
    let name = tag;
    while (name && !this.#loaders.has(name)) name = name.slice(0, Math.max(0, name.lastIndexOf('-')));
    return name || undefined;
  }

  /** Words in the language spoken for `wanted`, if they have arrived. */
  inLanguage(wanted: string): W | undefined {
    const tag = this.spoken(wanted);
    const file = this.#files.get(this.#fileName(tag) ?? FALLBACK);
    if (!file) return undefined;
    let words = this.#words.get(tag);
    if (!words) this.#words.set(tag, words = file.words(new Say(tag, file.family)));
    return words;
  }

  /** Fetches the words for `wanted`; English when they cannot be had. Rejects when that cannot be had either. */
  load(wanted: string): Promise<void> {
    const name = this.#fileName(this.spoken(wanted)) ?? FALLBACK;
    let pending = this.#pending.get(name);
    if (!pending) {
      pending = this.#fetch(name).catch(async (error: unknown) => {
        this.#pending.delete(name); // asked for again, it is tried again
        if (name === FALLBACK) throw error;
        await this.load(FALLBACK);
        const english = this.#files.get(FALLBACK);
        if (english) this.#files.set(name, english);
      });
      this.#pending.set(name, pending);
    }
    return pending;
  }

  /** What fetches the words for `wanted`: the same function each time it is asked for the same language. */
  asker(wanted: string): () => Promise<void> {
    let asker = this.#askers.get(wanted);
    if (!asker) this.#askers.set(wanted, asker = () => this.load(wanted));
    return asker;
  }

  async #fetch(name: string): Promise<void> {
    const file = await this.#loaders.get(name)?.();
    if (file) this.#files.set(name, file);
  }
}

/** Language of the page that a server renders just now: it has no tree to look it up in. */
let pageLanguage = FALLBACK;

/** Elements that `work` renders speak `language` where they have no `lang` of their own. For servers. */
export function speaking<T>(language: string, work: () => T): T {
  const before = pageLanguage;
  pageLanguage = canonical(language);
  try {
    return work();
  } finally {
    pageLanguage = before;
  }
}

/** Language of the nearest `lang` around a node, shadow roots left on the way up; English where none is said. */
export function languageOf(node: Element): string {
  // On a server there is no tree to go up.
  for (let at: Element | undefined = node; at;) {
    const lang: string | null | undefined = at.closest ? at.closest('[lang]')?.getAttribute('lang') : at.getAttribute('lang');
    if (lang) return canonical(lang);
    const root: unknown = at.getRootNode?.();
    at = typeof ShadowRoot !== 'undefined' && root instanceof ShadowRoot ? root.host : undefined;
  }
  return pageLanguage;
}

/** A tag that Intl takes: what a page has written may be none. */
function canonical(lang: string): string {
  try {
    return Intl.getCanonicalLocales(lang.replaceAll('_', '-'))[0] ?? FALLBACK;
  } catch { return FALLBACK; }
}

/** Who wants to hear that some `lang` of the page changed. One observer serves them all, while there are any. */
const listeners = new Set<() => void>();
let observer: MutationObserver | undefined;

/** @returns a function that ends it */
export function onLanguageChange(listener: () => void): () => void {
  listeners.add(listener);
  if (!observer && typeof MutationObserver !== 'undefined') {
    observer = new MutationObserver(() => { for (const each of [...listeners]) each(); });
    observer.observe(document, {subtree: true, attributeFilter: ['lang']});
  }
  return () => {
    listeners.delete(listener);
    if (listeners.size) return;
    observer?.disconnect();
    observer = undefined;
  };
}
