import {WordBook} from '../shared/languages.js';
import type {ShadeWords} from './words/en.js';

/** Sentences of the backdrop's check. */
export const shadeBook = new WordBook<ShadeWords>({
  en: () => import('./words/en.js'),
});
