import {WordBook} from '../../shared/languages.js';
import type {AlongWords} from './words/en.js';

/** Sentences of what takes shots along, fetched with it. */
export const alongBook = new WordBook<AlongWords>({
  en: () => import('./words/en.js'), de: () => import('./words/de.js'), es: () => import('./words/es.js'),
  fr: () => import('./words/fr.js'), pl: () => import('./words/pl.js'),
});
