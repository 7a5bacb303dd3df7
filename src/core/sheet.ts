/** The record as people read it: labels, sheet, and text for places that run no script. */
export {Problem} from './problem.js';
export {labelOf} from './shot/labels.js';
export {settingsText, sheetOf} from './shot/sheet.js';
export {english} from './shot/english.js';
export {sheetIn} from './shot/sheet-lines.js';
export type {SheetLanguage, SheetNumbers, SheetWords} from './shot/sheet-words.js';
export type {Sheet, SheetGroup} from './shot/sheet.js';
export {escapeHtml, writeSheets} from './shot/text.js';
export type {SheetForm} from './shot/text.js';
