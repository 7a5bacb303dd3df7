import {WordBook} from '../shared/languages.js';
import {sheetBook} from './sheet/book.js';
import type {CardWords} from './words/en.js';

/** What is said before a card shot is open, by language. */
export const cardBook = new WordBook<CardWords>({
  en: () => import('./words/en.js'),
  de: () => import('./words/de.js'),
  fr: () => import('./words/fr.js'),
  es: () => import('./words/es.js'),
  pl: () => import('./words/pl.js'),
}, {sheet: sheetBook});
