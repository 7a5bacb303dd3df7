import {WordBook} from '../../shared/languages.js';
import type {SharpnessWords} from './words/en.js';

/** What is said of where a photo is sharp, by language. */
export const sharpnessBook = new WordBook<SharpnessWords>({
  en: () => import('./words/en.js'), de: () => import('./words/de.js'), es: () => import('./words/es.js'),
  fr: () => import('./words/fr.js'), pl: () => import('./words/pl.js'),
});
