import {WordBook} from '../shared/languages.js';
import type {ZoneWords} from './words/en.js';

/** What the bar says at first sight, by language. */
export const zoneBook = new WordBook<ZoneWords>({
  en: () => import('./words/en.js'),
});
