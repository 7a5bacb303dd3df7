import {WordBook} from '../shared/languages.js';
import type {TrailWords} from './words/en.js';

/** What the trail says, by language. */
export const trailBook = new WordBook<TrailWords>({
  en: () => import('./words/en.js'),
});
