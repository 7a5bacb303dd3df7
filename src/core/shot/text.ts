import {exactFromNominal} from '../exposure/clicks.js';
import {SETTINGS} from '../exposure/stops.js';
import {writeStops} from '../exposure/write.js';
import {lengthIn} from '../units.js';
import {refusalOfText, writtenOf} from './given.js';
import {labelGroups, labelOf} from './labels.js';
import type {Measured, ShotRecord} from './record.js';
import {completeShot, type Shot, type ShotKey} from './shot.js';

/** What a record says, ready to be written in any form. */
export interface Sheet {
  readonly title: string;
  /** The settings as a list of settings has them: `f/8, 0.3 s, ISO 100`. */
  readonly settings: string;
  readonly groups: readonly SheetGroup[];
  readonly note: string;
}

export interface SheetGroup {
  readonly heading: string;
  readonly lines: readonly (readonly [label: string, text: string])[];
}

/** Forms of text for places that run no script. */
export type SheetForm = 'text' | 'markdown' | 'bbcode' | 'html';

/** The setting as a list of settings has it: `f/8, 0.3 s, ISO 100`. Reading it gives the same setting back. */
export function settingsText(values: Partial<Shot>): string {
  const shot = completeShot(values);
  return SETTINGS.map((key) => writtenOf(key, shot[key])).join(', ');
}

/** One value as its field writes it beside its label, lengths of the set in the unit of the shot. */
export function valueWords(key: ShotKey, value: Shot[ShotKey], unit: Shot['unit']): string {
  const written = writtenOf(key, value).replace(/^ISO /, '');
  const ofCamera = key === 'focalLength' || key === 'sensorWidth' || key === 'sensorHeight';
  if (unit === 'mm' || ofCamera || typeof value !== 'number' || !written.endsWith(' mm')) return written;
  return `${+lengthIn(value, unit).toPrecision(4)} ${unit}`;
}

/**
 * What a record says: its settings, and under headings whatever was stated and measured. Text that was typed and is not
 * in use is said as such.
 */
export function sheetOf({title, values, texts, measured}: Pick<ShotRecord, 'title' | 'values' | 'texts' | 'measured'>): Sheet {
  const unit = values.unit ?? 'mm';
  const groups = labelGroups().map(({heading, labels}) => ({
    heading,
    lines: (Object.keys(labels) as ShotKey[]).flatMap((key) => {
      const value = values[key];
      return value === undefined || key === 'unit' ? [] : [[labelOf(key), valueWords(key, value, unit)] as const];
    }),
  }));
  const unused = (Object.keys(texts) as ShotKey[]).flatMap((key) => {
    const text = texts[key];
    return text !== undefined && refusalOfText(key, text, values[key]) ? [[labelOf(key), `“${text}”`] as const] : [];
  });
  const all = [...groups, {heading: 'Measured', lines: measuredLines(measured)}, {heading: 'Typed, not in use', lines: unused}];
  return {title: oneLine(title), settings: settingsText(values), groups: all.filter(({lines}) => lines.length), note: values.note ?? ''};
}

/** What was measured, line by line. */
export function measuredLines(measured: Measured): readonly (readonly [label: string, text: string])[] {
  const {photo, taken, width, height, atBlack, atWhite, roomBelow, roomAbove} = measured;
  const said = SETTINGS.flatMap((key) => (measured[key] ? [writtenOf(key, exactFromNominal(key, measured[key]))] : [])).join(', ');
  const share = (part: number | undefined) => part !== undefined && (part > 0 && part < 0.0001 ? 'under 0.01 %' : `${+(part * 100).toFixed(2)} %`);
  const room = (stops: number | undefined) => stops !== undefined && `${writeStops(stops, 1).replace('+', '')} ${stops > 1.001 || stops < 0.05 ? 'stops' : 'stop'}`;
  const lines: readonly (readonly [string, string | false | undefined])[] = [
    ['Photo', photo], ['Taken', taken?.replace('T', ' ')], ['Size, px', width && height ? `${width} × ${height}` : undefined],
    ['From the file', said], ['At black', share(atBlack)], ['At white', share(atWhite)],
    ['Room to black', room(roomBelow)], ['Room to white', room(roomAbove)],
  ];
  return lines.flatMap(([label, text]) => (text ? [[label, text] as const] : []));
}

/**
 * Records as text, one after the other.
 * @param form - `text` for anywhere; `markdown`, `bbcode` and `html` for places that take those. What a person typed
 *   stays text in all of them.
 */
export function writeSheets(sheets: readonly Sheet[], form: SheetForm): string {
  const write = {text: plain, markdown, bbcode, html}[form];
  return sheets.map(write).join('\n\n');
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();
const lines = (text: string): readonly string[] => text.split(/\r\n?|\n/).map((line) => line.trim()).filter(Boolean);

function plain({title, settings, groups, note}: Sheet): string {
  const blocks = groups.map(({heading, lines: said}) => [heading, ...said.map(([label, text]) => `  ${label}: ${text}`)].join('\n'));
  return [[title, settings].filter(Boolean).join('\n'), ...blocks, lines(note).join('\n')].filter(Boolean).join('\n\n');
}

/** Signs that begin markup anywhere. Source: CommonMark 0.31, backslash escapes. */
const mark = (text: string): string => oneLine(text).replace(/[\\`*_{}[\]<>#|~&!]/g, '\\$&').replace(/^([-+=]|\d+(?=[.)]))/, (start) =>
  (/\d/.test(start) ? `${start}\u200b` : `\\${start}`));

function markdown({title, settings, groups, note}: Sheet): string {
  const blocks = groups.map(({heading, lines: said}) => [`**${mark(heading)}**\n`, ...said.map(([label, text]) => `- ${mark(label)}: ${mark(text)}`)].join('\n'));
  return [title && `### ${mark(title)}`, `**${mark(settings)}**`, ...blocks, ...lines(note).map(mark)].filter(Boolean).join('\n\n');
}

/** A bracket that begins no tag: no board has an escape of its own. */
const bracket = (text: string): string => oneLine(text).replaceAll('[', '[\u200b');

function bbcode({title, settings, groups, note}: Sheet): string {
  const blocks = groups.map(({heading, lines: said}) => [`[b]${bracket(heading)}[/b]`, '[list]',
    ...said.map(([label, text]) => `[*]${bracket(label)}: ${bracket(text)}`), '[/list]'].join('\n'));
  return [title && `[b]${bracket(title)}[/b]`, `[b]${bracket(settings)}[/b]`, ...blocks, ...lines(note).map(bracket)].filter(Boolean).join('\n\n');
}

const SIGNS: Readonly<Record<string, string>> = {'&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;'};

/** Text that stays text in HTML, in an attribute too. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (sign) => SIGNS[sign] ?? sign);

function html({title, settings, groups, note}: Sheet): string {
  const blocks = groups.map(({heading, lines: said}) => [`  <h4>${escapeHtml(heading)}</h4>`, '  <dl>',
    ...said.map(([label, text]) => `    <dt>${escapeHtml(label)}</dt><dd>${escapeHtml(oneLine(text))}</dd>`), '  </dl>'].join('\n'));
  return ['<section>', title && `  <h3>${escapeHtml(title)}</h3>`, `  <p><strong>${escapeHtml(settings)}</strong></p>`, ...blocks,
    ...lines(note).map((line) => `  <p>${escapeHtml(line)}</p>`), '</section>'].filter(Boolean).join('\n');
}
