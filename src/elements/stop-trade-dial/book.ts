import {WordBook} from '../shared/languages.js';
import type {DialWords} from './words/en.js';

/** What the dial says, by language. */
export const dialBook = new WordBook<DialWords>({
  en: () => import('./words/en.js'),
  de: () => import('./words/de.js'),
  fr: () => import('./words/fr.js'),
  es: () => import('./words/es.js'),
  pl: () => import('./words/pl.js'),
});
