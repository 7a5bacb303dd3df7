import {SETTINGS} from '../exposure/stops.js';
import type {Lights, NamedLamp} from '../light/set-text.js';
import type {Point} from '../light/space.js';
import {magnificationFromField, sensorToSubject} from '../optics/lens.js';
import {refusalOfText, writtenOf} from './given.js';
import {measuredIn} from './measured-lines.js';
import type {ShotRecord} from './record.js';
import {keyGroups} from './sheet-keys.js';
import type {SheetLanguage, SheetWords} from './sheet-words.js';
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
  readonly lines: readonly SheetLine[];
}

export type SheetLine = readonly [label: string, text: string];

/** Text without line breaks. */
export const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** The setting as a list of settings has it in a language. Reading it gives the same setting back. */
export function settingsIn({numbers}: SheetLanguage, values: Partial<Shot>): string {
  const shot = completeShot(values);
  return SETTINGS.map((key) => numbers.text(writtenOf(key, shot[key]))).join(numbers.between);
}

/** What a record says in a language: its settings, and under headings whatever was stated and measured. Text that was typed and is not in use is said as such. */
export function sheetIn(language: SheetLanguage, {title, values, texts, measured}: Pick<ShotRecord, 'title' | 'values' | 'texts' | 'measured'>): Sheet {
  const {headings, labels, quoted} = language.words;
  const unit = values.unit ?? 'mm';
  const groups = keyGroups().map(([heading, keys]) => ({
    heading: headings[heading],
    lines: keys.flatMap((key) => {
      const value = values[key];
      return value === undefined || key === 'unit' ? [] : [[labels[key], valueIn(language, key, value, unit)] as const];
    }),
  }));
  const unused = (Object.keys(texts) as ShotKey[]).flatMap((key) => {
    const text = texts[key];
    return text !== undefined && refusalOfText(key, text, values[key]) ? [[labels[key], quoted(text)] as const] : [];
  });
  const all = [
    ...groups, {heading: headings.setUp, lines: setUpIn(language, values)}, {heading: headings.measured, lines: measuredIn(language, measured)},
    {heading: headings.unused, lines: unused},
  ];
  return {title: oneLine(title), settings: settingsIn(language, values), groups: all.filter(({lines}) => lines.length), note: values.note ?? ''};
}

/** Values of the camera, which are in mm whatever the table is measured in. */
const OF_CAMERA: readonly ShotKey[] = ['focalLength', 'sensorWidth', 'sensorHeight'];

/** Shorter lengths are pointed at in tenths, mm. */
const FINE = 9.95;

/** What was typed with so many decimals stays; what was reckoned is said as finely as anybody can set it. */
function readable(value: number, typed: number, set: number): number {
  const exact = +value.toFixed(typed);
  return Math.abs(value - exact) < 1e-6 ? exact : +value.toFixed(set);
}

/** One value beside its label, lengths of the set in the unit of the shot, numbers as people write them; lamps and flags on a line each. */
export function valueIn<K extends ShotKey>(language: SheetLanguage, key: K, value: Shot[K], unit: Shot['unit']): string {
  const {words, numbers} = language;
  const part = (share: number) => numbers.percent(readable(100 * share, 1, 0) / 100);
  const known: {readonly [Key in ShotKey]?: (value: Shot[Key]) => string | undefined} = {
    lights: (lights) => lightsIn(language, lights, unit).join(';\n'),
    intent: (intent) => words.intents[intent],
    pay: (pay) => words.payers[pay],
    clicksPerStop: (clicks) => words.clicks[clicks],
    apertureShown: (shown) => words.apertures[shown],
    backdropReflectance: () => words.materials[writtenOf(key, value)],
    crop: ({width, height, left, top}) => words.crop(part(width), part(height), part(left), part(top)),
  };
  const said = (known[key] as ((value: Shot[K]) => string | undefined) | undefined)?.(value);
  if (said !== undefined) return said;
  const written = writtenOf(key, value).replace(/^ISO /, '');
  if (typeof value === 'number' && written.endsWith(' mm')) {
    if (unit !== 'mm' && !OF_CAMERA.includes(key)) return numbers.length(value, unit);
    return numbers.text(`${readable(value, 2, Math.abs(value) < FINE ? 1 : 0)} mm`);
  }
  if (typeof value === 'number' && /\.\d{3,}$/.test(written)) return numbers.number(value, 2);
  return key === 'note' ? written : numbers.text(Array.isArray(value) ? written.replaceAll(', ', numbers.between) : written);
}

/** Lamps, flags and table top, each in words. */
function lightsIn({words, numbers}: SheetLanguage, {lamps, flags, table}: Lights, unit: Shot['unit']): readonly string[] {
  const length = (mm: number) => numbers.length(mm, unit);
  const size = (mm = 0) => length(Math.round(mm * 10) / 10);
  const place = (at: Point) => placeIn(words, at, length, numbers.between);
  const face = ({kind, width, height}: NamedLamp) => {
    const known = words.faces[kind];
    return typeof known === 'string' ? known : known(size(width), size(height));
  };
  return [
    ...lamps.map((lamp) => [
      `${lampName(words, lamp)}: ${face(lamp)}`, place(lamp.position), ...(lamp.kind === 'bulb' ? [] : [words.aimed(place(lamp.aim))]),
      ...(lamp.power ? [words.power(numbers.stops(Math.abs(lamp.power)), lamp.power > 0)] : []),
    ].join(numbers.between)),
    ...flags.map((flag) => [words.flag(size(flag.width), size(flag.height)), place(flag.position)].join(numbers.between)),
    ...(table > 0 ? [words.table(numbers.percent(table))] : []),
  ];
}

const lampName = ({lampNames}: SheetWords, {name}: NamedLamp): string =>
  (Object.hasOwn(lampNames, name) ? lampNames[name] : undefined) ?? oneLine(name);

/** Distances smaller than this are none, mm. */
const NOWHERE = 0.5;

function placeIn(words: SheetWords, place: Point, length: (mm: number) => string, between: string): string {
  const sides = [['right', 'left'], ['behind', 'before'], ['above', 'below']] as const;
  const said = sides.flatMap(([more, less], axis) => {
    const size = place[axis] ?? 0;
    return Math.abs(size) < NOWHERE ? [] : [words.side[size > 0 ? more : less](length(Math.round(Math.abs(size))))];
  });
  return said.join(between) || words.atFigure;
}

/**
 * Where the camera and the lamps stand, to the millimetre; nothing that rests on a field or a lens nobody stated.
 * Source: definitions; thin-lens conjugates for the camera.
 */
export function setUpIn({words, numbers}: SheetLanguage, values: Partial<Shot>): readonly SheetLine[] {
  const {focalLength, fieldWidth, sensorWidth, lights} = values;
  const length = (mm: number) => numbers.length(Math.round(mm), values.unit ?? 'mm');
  const lines: SheetLine[] = [];
  if (focalLength !== undefined && fieldWidth !== undefined) {
    const sensor = completeShot(values).sensorWidth;
    const distance = length(sensorToSubject(magnificationFromField(sensor, fieldWidth), focalLength));
    lines.push([words.sensorToFocus, sensorWidth === undefined ? words.sensorTaken(distance, numbers.length(sensor, 'mm')) : distance]);
  }
  for (const lamp of lights?.lamps ?? []) {
    const away = Math.hypot(...lamp.position.map((part, axis) => part - (lamp.aim[axis] ?? 0)));
    lines.push([words.lamp(lampName(words, lamp)), words.fromAim(length(away))]);
  }
  return lines;
}
