import {WordBook} from '../shared/languages.js';
import type {AlongWords} from './along-words/en.js';

/** Sentences of what takes shots along, fetched with it. */
export const alongBook = new WordBook<AlongWords>({
  en: () => import('./along-words/en.js'), de: () => import('./along-words/de.js'), es: () => import('./along-words/es.js'),
  fr: () => import('./along-words/fr.js'), pl: () => import('./along-words/pl.js'),
});
