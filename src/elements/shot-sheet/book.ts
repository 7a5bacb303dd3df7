import {WordBook} from '../shared/languages.js';
import type {SheetElementWords} from './words/en.js';

/** Sentences of the shot sheet. */
export const sheetBook = new WordBook<SheetElementWords>({
  en: () => import('./words/en.js'),
});
