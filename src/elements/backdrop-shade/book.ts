import {WordBook} from '../shared/languages.js';
import type {ShadeWords} from './words/en.js';

/** What the check says, by language. */
export const shadeBook = new WordBook<ShadeWords>({
  en: () => import('./words/en.js'), de: () => import('./words/de.js'), es: () => import('./words/es.js'), fr: () => import('./words/fr.js'),
  pl: () => import('./words/pl.js'),
});
