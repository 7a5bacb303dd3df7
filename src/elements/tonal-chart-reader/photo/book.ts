import {WordBook} from '../../shared/languages.js';
import type {SheetWords} from './words/en.js';

/** What is said of an open photo, by language. */
export const sheetBook = new WordBook<SheetWords>({
  en: () => import('./words/en.js'), de: () => import('./words/de.js'), es: () => import('./words/es.js'),
  fr: () => import('./words/fr.js'), pl: () => import('./words/pl.js'),
});
