import {englishLabels, englishSheetWords} from './english.js';
import {keyGroups} from './sheet-keys.js';
import type {ShotKey} from './shot.js';
import type {SheetWords} from './sheet-words.js';

export {SAID_APART} from './sheet-keys.js';

/** Part of a record under one heading. */
export interface LabelGroup {
  readonly heading: string;
  readonly labels: Readonly<Partial<Record<ShotKey, string>>>;
}

/** All labels under their headings. @param words - of the language; English when left out */
export function labelGroups({headings, labels}: Pick<SheetWords, 'headings' | 'labels'> = englishSheetWords()): readonly LabelGroup[] {
  return keyGroups().map(([heading, keys]) => ({heading: headings[heading], labels: Object.fromEntries(keys.map((key) => [key, labels[key]]))}));
}

/** Label of one value, in English. */
export function labelOf(key: ShotKey): string {
  return englishLabels()[key];
}
