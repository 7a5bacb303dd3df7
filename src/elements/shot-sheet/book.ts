import {WordBook} from '../shared/languages.js';
import {alongBook} from './along/book.js';
import type {SheetElementWords} from './words/en.js';

/** Sentences of the shot sheet. */
export const sheetBook = new WordBook<SheetElementWords>({
  en: () => import('./words/en.js'), de: () => import('./words/de.js'), es: () => import('./words/es.js'),
  fr: () => import('./words/fr.js'), pl: () => import('./words/pl.js'),
}, {along: alongBook});
