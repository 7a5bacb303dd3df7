import {placeOf, type DocumentFault} from '../../core/shot/document.js';
import type {AlongWords} from './along/words/en.js';
import {cut} from './speech.js';

/** A file by its name, or what was pasted. */
export const fileWords = (words: AlongWords, name: string): string => (name ? words.quoted(name) : words.thisText);

/** A value as its file has it; one that is nested beyond what an engine can write as its outermost brackets. */
function asJson(value: unknown): string {
  try {
    return JSON.stringify(value);
  } catch {
    return Array.isArray(value) ? '[…]' : '{…}';
  }
}

/** @param file - as the sentence begins */
export function faultWords(words: AlongWords, {fault, path, value, wanted}: DocumentFault, file: string): string {
  const shown = value === undefined ? words.nothingThere : words.quoted(cut(typeof value === 'string' ? value : asJson(value)));
  switch (fault) {
    case 'no-json': return words.noJson(file);
    case 'foreign': return words.foreign(file);
    case 'newer': return words.newer(file, shown);
    case 'wrong': {
      const {shot, name} = placeOf(path);
      return words.wrong(file, shot ? (name ? words.ofShot(name, shot) : words.shot(shot)) : name, shown, words.say.wanted(wanted));
    }
  }
}

/** Letters of a link that are shown: enough to see where it leads. */
const LINK_SHOWN = 56;

/** A link as it is shown. What is copied is the whole of it. */
export function linkWords(words: AlongWords, link: string): string {
  const shown = link.replace(/^https?:\/\//, '');
  return shown.length > LINK_SHOWN ? words.linkShown(shown.slice(0, LINK_SHOWN), link.length) : shown;
}
