import {WordBook} from '../shared/languages.js';
import type {TrailWords} from './words/en.js';

/** What the trail says, by language. */
export const trailBook = new WordBook<TrailWords>({
  en: () => import('./words/en.js'),
  de: () => import('./words/de.js'),
  fr: () => import('./words/fr.js'),
  es: () => import('./words/es.js'),
  pl: () => import('./words/pl.js'),
});
