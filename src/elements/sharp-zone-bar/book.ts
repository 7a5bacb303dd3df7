import {WordBook} from '../shared/languages.js';
import {foldBook} from './folds/book.js';
import type {ZoneWords} from './words/en.js';

/** What the bar says at first sight, by language. */
export const zoneBook = new WordBook<ZoneWords>({
  en: () => import('./words/en.js'),
  de: () => import('./words/de.js'),
  fr: () => import('./words/fr.js'),
  es: () => import('./words/es.js'),
  pl: () => import('./words/pl.js'),
}, {folds: foldBook});
