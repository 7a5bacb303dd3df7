import {lengthIn} from '../../core/units.js';
import type {Difference} from '../../core/shot/difference.js';
import type {LinkNotice} from '../../core/shot/link.js';
import type {MeasuredChange} from '../../core/shot/measured-lines.js';
import type {Measured} from '../../core/shot/record.js';
import {valueIn} from '../../core/shot/sheet-lines.js';
import type {SheetLanguage, SheetNumbers} from '../../core/shot/sheet-words.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import {NBSP, tight, type Say} from '../shared/say.js';
import type {SheetElementWords} from './words/en.js';

/** Stops that nobody would see in a picture. */
const UNSEEN = 0.015;

/** Values longer than this are named only, letters. */
const LONGEST = 60;

/** How a language writes the numbers of a record. Where the comma is a decimal sign, it parts no numbers. */
function numbersOf(say: Say): SheetNumbers {
  return {
    number: (value, decimals) => say.number(value, decimals),
    fixed: (value, decimals) => say.fixed(value, decimals),
    percent: (share) => say.percent(share, 2),
    length: (mm, unit) => `${say.digits(lengthIn(mm, unit), 4)}${NBSP}${unit}`,
    stops: (stops) => say.stops(Math.round(stops * 10) / 10),
    text: (written) => say.typed(written),
    between: say.typed('0.5') === '0.5' ? ', ' : ' · ',
  };
}

/** The language of a record, for words as they are loaded. */
export function languageOfSheet({record, say}: SheetElementWords): SheetLanguage {
  return {words: record, numbers: numbersOf(say)};
}

/** Settings whose blanks do not break inside a value. */
export function settingsTight(settings: string, {numbers: {between}}: SheetLanguage): string {
  return settings.split(between).map(tight).join(between);
}

/** One change: `Aperture f/8 → f/11, 1 stop darker`. Long values are named only. */
export function changeWords(words: SheetElementWords, {key, from, to, stops}: Difference, unit: Shot['unit']): string {
  const language = languageOfSheet(words);
  const label = words.record.labels[key];
  const [before, after] = [valueIn(language, key, from, unit), valueIn(language, key, to, unit)];
  // What differs by less than is written has changed all the same.
  if (key === 'note' || before === after || before.length + after.length > LONGEST) return words.changed(label);
  const seen = stops !== undefined && Number.isFinite(stops) && Math.abs(stops) > UNSEEN;
  const ends = [tight(before || '–'), tight(after || '–')] as const;
  return seen ? words.changeBy(label, ...ends, words.say.stops(stops), stops > 0) : words.change(label, ...ends);
}

export const measuredWords = (words: SheetElementWords, {label, from, to}: MeasuredChange): string => words.change(label, from, to);

/** `2`, or `2 “heron front”` where it has a name of its own. */
export function shotNamed(words: SheetElementWords, count: number, title: string): string {
  return title && title !== words.numbered(count) ? `${count} ${words.record.quoted(cut(title))}` : `${count}`;
}

/** Changes that the verdict names. */
const MOST_NAMED = 2;

export function verdictWords(
  words: SheetElementWords, settings: string, last: {readonly count: number; readonly title: string; readonly changes: readonly Difference[]} | null, unit: Shot['unit'],
): string {
  const now = settingsTight(settings, languageOfSheet(words));
  if (!last) return words.noneKept(now);
  const {changes} = last;
  const count = shotNamed(words, last.count, last.title);
  if (!changes.length) return words.asKept(now, count);
  const named = changes.slice(0, MOST_NAMED).map((change) => changeWords(words, change, unit)).join('; ');
  const rest = changes.length - MOST_NAMED;
  return rest > 0 ? words.sinceAndMore(now, count, named, rest) : words.since(now, count, named);
}

/** The beginning of someone's text. */
export const cut = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);

export function noticeWords(words: SheetElementWords, notice: LinkNotice): string {
  switch (notice.kind) {
    case 'newer': return words.linkNewer(`${notice.version}`);
    case 'unknown': return words.linkUnknown(notice.name);
    case 'unreadable': return words.linkUnreadable(notice.name, cut(notice.text), words.say.wanted(notice.problem.wanted));
    case 'too-long': return words.linkTooLong(notice.name, notice.length);
  }
}

/** Parts of a set-up, by the values of which one at least has to be stated. */
const PARTS: Readonly<Record<Exclude<keyof SheetElementWords['missingParts'], 'card'>, readonly ShotKey[]>> = {
  camera: ['focalLength', 'fieldWidth'], figure: ['baseDepth', 'figureHeight', 'figureWidth'], lamps: ['lights'],
  backdrop: ['backdropDistance', 'backdropReflectance'],
};

/** Parts of the set-up that are not on the sheet, and where each is added. */
export function missingWords({missingParts}: SheetElementWords, values: Partial<Shot>, {cardTrusted}: Measured): readonly string[] {
  const stated = (part: keyof typeof missingParts) => (part === 'card' ? cardTrusted !== undefined : PARTS[part].some((key) => values[key] !== undefined));
  return (Object.keys(missingParts) as (keyof typeof missingParts)[]).filter((part) => !stated(part)).map((part) => missingParts[part]);
}

/** When a shot was kept, in the reader's own time. */
export function madeWords({say}: SheetElementWords, made: string): string {
  // British English, as everything here is written.
  return new Intl.DateTimeFormat(say.language === 'en' ? 'en-GB' : say.language, {dateStyle: 'medium', timeStyle: 'short'}).format(new Date(made));
}
