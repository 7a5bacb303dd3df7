import {WordBook} from '../../shared/languages.js';
import type {FoldWords} from './words/en.js';

/** What stands behind the folds, by language. */
export const foldBook = new WordBook<FoldWords>({
  en: () => import('./words/en.js'),
  de: () => import('./words/de.js'),
  fr: () => import('./words/fr.js'),
  es: () => import('./words/es.js'),
  pl: () => import('./words/pl.js'),
});

const loaders = /* @__PURE__ */ new Map<string, () => Promise<void>>();

/** What fetches them in a language: the same function each time, as `later` wants it. */
export function foldWordLoader(language: string): () => Promise<void> {
  let load = loaders.get(language);
  if (!load) loaders.set(language, load = () => foldBook.load(language));
  return load;
}
