import {exactFromNominal} from '../exposure/clicks.js';
import {SETTINGS} from '../exposure/stops.js';
import {writeStops} from '../exposure/write.js';
import {magnificationFromField, sensorToSubject} from '../optics/lens.js';
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
  const all = [...groups, {heading: 'Set up', lines: setUpLines(values)}, {heading: 'Measured', lines: measuredLines(measured)}, {heading: 'Typed, not in use', lines: unused}];
  return {title: oneLine(title), settings: settingsText(values), groups: all.filter(({lines}) => lines.length), note: values.note ?? ''};
}

/**
 * Where the camera and the lamps stand, to the millimetre; nothing that rests on a field or a lens nobody stated.
 * Source: definitions; thin-lens conjugates for the camera.
 */
export function setUpLines(values: Partial<Shot>): readonly (readonly [label: string, text: string])[] {
  const {focalLength, fieldWidth, sensorWidth, lights} = values;
  const unit = values.unit ?? 'mm';
  const length = (mm: number) => valueWords('backdropDistance', Math.round(mm), unit);
  const lines: [string, string][] = [];
  if (focalLength !== undefined && fieldWidth !== undefined) {
    const sensor = completeShot(values).sensorWidth;
    const distance = length(sensorToSubject(magnificationFromField(sensor, fieldWidth), focalLength));
    lines.push(['Sensor mark to the plane in focus', sensorWidth === undefined ? `${distance} (sensor taken as ${sensor} mm wide)` : distance]);
  }
  for (const {name, position, aim} of lights?.lamps ?? []) {
    const [x, y, z] = position;
    lines.push([`Lamp “${oneLine(name)}”`, `${length(Math.hypot(x - aim[0], y - aim[1], z - aim[2]))} from where it aims`]);
  }
  return lines;
}

/** What was measured, line by line. */
export function measuredLines(measured: Measured): readonly (readonly [label: string, text: string])[] {
  const {photo, taken, width, height, atBlack, atWhite, roomBelow, roomAbove} = measured;
  const said = SETTINGS.flatMap((key) => (measured[key] ? [writtenOf(key, exactFromNominal(key, measured[key]))] : [])).join(', ');
  const share = (part: number | undefined) => part !== undefined && (part > 0 && part < 0.0001 ? 'under 0.01 %' : `${+(part * 100).toFixed(2)} %`);
  const room = (stops: number | undefined) => stops !== undefined && stopsSaid(stops);
  const lines: readonly (readonly [string, string | false | undefined])[] = [
    ['Photo', photo], ['Taken', taken?.replace('T', ' ')], ['Size, px', width && height ? `${width} × ${height}` : undefined],
    ['From the file', said], ['At black', share(atBlack)], ['At white', share(atWhite)],
    ['Room to black', room(roomBelow)], ['Room to white', room(roomAbove)], ...cardLines(measured), ...spotLines(measured),
  ];
  return lines.flatMap(([label, text]) => (text ? [[label, text] as const] : []));
}

type Line = readonly [label: string, text: string | false | undefined];

const stopsSaid = (stops: number): string => `${writeStops(stops, 1).replace('+', '')} ${stops >= 1.05 || stops < 0.05 ? 'stops' : 'stop'}`;

function cardLines({cardPhoto, cardTrusted, gainRed, gainBlue, cardOff}: Measured): readonly Line[] {
  const off = cardOff === undefined ? undefined : Math.abs(cardOff) < 0.05 ? 'as it should be' : `${stopsSaid(Math.abs(cardOff))} too ${cardOff > 0 ? 'bright' : 'dark'}`;
  return [
    ['Gray card', cardTrusted === undefined ? cardPhoto : [cardPhoto, cardTrusted ? 'can be relied on' : 'not to be relied on'].filter(Boolean).join(', ')],
    ['Card’s gray', off],
    ['White balance', gainRed !== undefined && gainBlue !== undefined && `red × ${gainRed.toFixed(3)}, green × 1, blue × ${gainBlue.toFixed(3)}`],
  ];
}

function spotLines({spotCode, spotStops}: Measured): readonly Line[] {
  const from = spotStops === undefined ? '' : Math.abs(spotStops) < 0.05 ? ', as bright as the gray card'
    : `, ${stopsSaid(Math.abs(spotStops))} ${spotStops > 0 ? 'above' : 'under'} the gray card`;
  return [['Measured spot', spotCode !== undefined && `level ${+spotCode.toFixed(1)} of 255${from}`]];
}

/** One line of what was measured that does not say the same in two shots. */
export interface MeasuredChange {
  readonly label: string;
  readonly from: string;
  readonly to: string;
}

/** What was measured otherwise from one shot to another, as written. What only one has is not compared, nor whose photo it was. */
export function measuredDifference(from: Measured, to: Measured): readonly MeasuredChange[] {
  const before = new Map(measuredLines(from));
  return measuredLines(to).flatMap(([label, text]) => {
    const earlier = before.get(label);
    return earlier === undefined || earlier === text || label === 'Photo' || label === 'Taken' ? [] : [{label, from: earlier, to: text}];
  });
}

/** Text without line breaks. */
export const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();
