import {WordBook} from '../shared/languages.js';
import {sheetBook} from './photo/book.js';
import {sharpnessBook} from './sharpness/book.js';
import type {ChartWords} from './words/en.js';

/** What is said before a photo is open, by language. */
export const chartBook = new WordBook<ChartWords>({
  en: () => import('./words/en.js'), de: () => import('./words/de.js'), es: () => import('./words/es.js'),
  fr: () => import('./words/fr.js'), pl: () => import('./words/pl.js'),
}, {photo: sheetBook, sharpness: sharpnessBook});
