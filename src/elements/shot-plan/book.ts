import {WordBook} from '../shared/languages.js';
import type {PlanWords} from './words/en.js';
import type {FoldWords} from './words/folds-en.js';

/** What stands behind the folds, by language. */
export const foldsBook = new WordBook<FoldWords>({
  en: () => import('./words/folds-en.js'),
  de: () => import('./words/folds-de.js'),
  fr: () => import('./words/folds-fr.js'),
  es: () => import('./words/folds-es.js'),
  pl: () => import('./words/folds-pl.js'),
});

/** What the plan says, by language. */
export const planBook = new WordBook<PlanWords>({
  en: () => import('./words/en.js'),
  de: () => import('./words/de.js'),
  fr: () => import('./words/fr.js'),
  es: () => import('./words/es.js'),
  pl: () => import('./words/pl.js'),
}, {folds: foldsBook});

/** What is said once a fold is open. */
export type UnfoldedWords = PlanWords & FoldWords;
