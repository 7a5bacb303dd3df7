import {WordBook} from '../shared/languages.js';
import type {PlanWords} from './words/en.js';

/** What the plan says, by language. */
export const planBook = new WordBook<PlanWords>({
  en: () => import('./words/en.js'),
  de: () => import('./words/de.js'),
  fr: () => import('./words/fr.js'),
  es: () => import('./words/es.js'),
  pl: () => import('./words/pl.js'),
});
