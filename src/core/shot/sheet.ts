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

/** Text without line breaks. */
export const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();
