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
