import {english} from './english.js';
import {measuredDifferenceIn, measuredIn, type MeasuredChange} from './measured-lines.js';
import type {Measured, ShotRecord} from './record.js';
import {setUpIn, settingsIn, sheetIn, valueIn, type Sheet, type SheetLine} from './sheet-lines.js';
import type {Shot, ShotKey} from './shot.js';
import type {SheetLanguage} from './sheet-words.js';

export {oneLine} from './sheet-lines.js';
export type {Sheet, SheetGroup, SheetLine} from './sheet-lines.js';
export type {MeasuredChange} from './measured-lines.js';
export type {MeasuredLabel, SheetHeading, SheetLanguage, SheetNumbers, SheetWords, Side} from './sheet-words.js';

/** The setting as a list of settings has it: `f/8, 0.3 s, ISO 100`. Reading it gives the same setting back. */
export function settingsText(values: Partial<Shot>, language: SheetLanguage = english()): string {
  return settingsIn(language, values);
}

/** One value in words beside its label, lengths of the set in the unit of the shot. */
export function valueWords(key: ShotKey, value: Shot[ShotKey], unit: Shot['unit'], language: SheetLanguage = english()): string {
  return valueIn(language, key, value, unit);
}

/**
 * What a record says: its settings, and under headings whatever was stated and measured. Text that was typed and is not
 * in use is said as such.
 * @param language - labels, headings, sentences and numbers; English when left out
 */
export function sheetOf(record: Pick<ShotRecord, 'title' | 'values' | 'texts' | 'measured'>, language: SheetLanguage = english()): Sheet {
  return sheetIn(language, record);
}

/** Where the camera and the lamps stand, to the millimetre; nothing that rests on a field or a lens nobody stated. */
export function setUpLines(values: Partial<Shot>, language: SheetLanguage = english()): readonly SheetLine[] {
  return setUpIn(language, values);
}

/** What was measured, line by line. */
export function measuredLines(measured: Measured, language: SheetLanguage = english()): readonly SheetLine[] {
  return measuredIn(language, measured);
}

/** What was measured otherwise from one shot to another, as written. What only one has is not compared, nor whose photo it was. */
export function measuredDifference(from: Measured, to: Measured, language: SheetLanguage = english()): readonly MeasuredChange[] {
  return measuredDifferenceIn(language, from, to);
}
