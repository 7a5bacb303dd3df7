import {sensorWidth} from './sensor.js';
import type {SensorWidth} from './sensor.js';

/** Metadata as the reader library gives it: tag name to a value that may be anything at all. */
export type Tags = Readonly<Record<string, {readonly value?: unknown} | undefined>>;

/** A tag that was there and could not be believed. */
export interface LeftOut {
  readonly tag: string;
  /** As it stands in the file: `0/0`, `-3`, `65535`. */
  readonly value: string;
  /** `no-number`: nothing finite in it; `absurd`: a number that no camera can mean. */
  readonly why: 'no-number' | 'absurd';
}

/** What a picture file says of how it was taken. Whatever is missing was not said, or not credible. */
export interface PhotoSettings {
  /** f-number. */
  readonly aperture?: number;
  /** Exposure time, s, as written: nominal (0.0166667 for 1/60) or measured. */
  readonly shutter?: number;
  /** ISO speed. */
  readonly iso?: number;
  /** mm. */
  readonly focalLength?: number;
  /** 35 mm equivalent, mm. */
  readonly equivalentFocalLength?: number;
  /** Pixels on each mm of the sensor, across and down. */
  readonly focalPlaneResolution?: {readonly x: number; readonly y: number};
  /** Size in pixels as the metadata has it: as recorded, before any rotation. */
  readonly recordedSize?: {readonly width: number; readonly height: number};
  /** Exif orientation, 1 to 8. */
  readonly orientation?: number;
  /** Local time of the camera, `2026-03-01T12:00:00`. */
  readonly takenAt?: string;
  /** Distance the lens was focused at, mm, as some lenses report it; from where it is measured is not said. */
  readonly subjectDistance?: number;
  readonly sensorWidth?: SensorWidth;
  readonly leftOut: readonly LeftOut[];
}

/** A number to look for: under which names, in the order they are trusted, and what is credible. */
interface Wanted {
  readonly tags: readonly (readonly [tag: string, meaning?: (written: number) => number])[];
  readonly least: number;
  readonly most: number;
}

/** Tag names as the Exif standard has them; APEX values turn into plain ones. Source: Exif 2.32 (CIPA DC-008). */
const WANTED = {
  aperture: {tags: [['FNumber'], ['ApertureValue', (av) => 2 ** (av / 2)]], least: 0.5, most: 1000},
  shutter: {tags: [['ExposureTime'], ['ShutterSpeedValue', (tv) => 2 ** -tv]], least: 1e-6, most: 1e5},
  // 65535 is not a speed: it says that the speed stands in one of the longer tags.
  iso: {
    tags: [['ISOSpeedRatings'], ['PhotographicSensitivity'], ['StandardOutputSensitivity'],
      ['RecommendedExposureIndex'], ['ISOSpeed']],
    least: 1, most: 1e7,
  },
  focalLength: {tags: [['FocalLength']], least: 0.5, most: 10_000},
  equivalentFocalLength: {tags: [['FocalLengthIn35mmFilm']], least: 1, most: 30_000},
  orientation: {tags: [['Orientation']], least: 1, most: 8},
  // Metres; 0xFFFFFFFF is infinity.
  subjectDistance: {tags: [['SubjectDistance', (metres) => metres * 1000]], least: 1, most: 1e8},
  width: {tags: [['PixelXDimension']], least: 1, most: 1e6},
  height: {tags: [['PixelYDimension']], least: 1, most: 1e6},
} as const satisfies Record<string, Wanted>;

const ISO_ELSEWHERE = 65535;

/**
 * Settings from metadata tags. Never throws: what cannot be believed is left out and listed.
 * @param tags - Exif tags by name; rationals as `[numerator, denominator]`
 * @param size - pixels of the picture as decoded, before rotation: the metadata of an edited file may be out of date
 */
export function settingsFromTags(tags: Tags, size?: {readonly width: number; readonly height: number}): PhotoSettings {
  const leftOut: LeftOut[] = [];
  const find = (wanted: Wanted) => firstCredible(tags, wanted, leftOut);
  const [width, height] = [find(WANTED.width), find(WANTED.height)];
  const resolution = focalPlaneResolution(tags, leftOut);
  const takenAt = timeFrom(tags, leftOut);
  const found = {
    aperture: find(WANTED.aperture),
    shutter: find(WANTED.shutter),
    iso: find(WANTED.iso),
    focalLength: find(WANTED.focalLength),
    equivalentFocalLength: find(WANTED.equivalentFocalLength),
    subjectDistance: find(WANTED.subjectDistance),
    orientation: find(WANTED.orientation),
    recordedSize: width !== undefined && height !== undefined ? {width, height} : undefined,
    focalPlaneResolution: resolution?.perMm,
    takenAt,
  };
  const sensor = sensorWidth({
    size: size ?? found.recordedSize, recordedSize: found.recordedSize, resolution,
    focalLength: found.focalLength, equivalentFocalLength: found.equivalentFocalLength,
  });
  return {...stated({...found, sensorWidth: sensor}), leftOut};
}

/** The record without its undefined values. */
function stated<T extends object>(record: T): {readonly [K in keyof T]?: Exclude<T[K], undefined>} {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as
    {readonly [K in keyof T]?: Exclude<T[K], undefined>};
}

function firstCredible(tags: Tags, {tags: names, least, most}: Wanted, leftOut: LeftOut[]): number | undefined {
  for (const [tag, meaning] of names) {
    const written = valueOf(tags, tag);
    if (written === undefined) continue;
    const number = numberFrom(written);
    const value = number === undefined ? undefined : meaning ? meaning(number) : number;
    if (value !== undefined && value >= least && value <= most && !(tag.startsWith('ISO') && value === ISO_ELSEWHERE)) {
      return value;
    }
    leftOut.push({tag, value: asWritten(written), why: number === undefined ? 'no-number' : 'absurd'});
  }
  return undefined;
}

function valueOf(tags: Tags, tag: string): unknown {
  // Own properties only: a tag may be called anything, `constructor` included.
  return Object.hasOwn(tags, tag) ? tags[tag]?.value : undefined;
}

/** A plain number, a rational, or the first of a list of either; `undefined` when nothing finite comes of it. */
function numberFrom(value: unknown): number | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? value : undefined;
  if (!Array.isArray(value)) return undefined;
  const [first, second] = value as unknown[];
  if (Array.isArray(first)) return numberFrom(first);
  if (typeof first !== 'number') return undefined;
  // A list of ISO speeds is told from a rational by its length only when it is longer or shorter than two.
  return numberFrom(value.length === 2 && typeof second === 'number' ? first / second : first);
}

function asWritten(value: unknown): string {
  const text = Array.isArray(value) ? value.flat().join('/') : String(value);
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}

/** Millimetres in the units of a focal-plane resolution. Source: Exif 2.32; 4 and 5 (mm, µm) come from TIFF/EP. */
const UNIT_MM: Readonly<Record<number, number>> = {2: 25.4, 3: 10, 4: 1, 5: 0.001};
const INCH_UNIT = 2;

/** A focal-plane resolution, and whether the unit was stated. */
export interface Resolution {
  readonly perMm: {readonly x: number; readonly y: number};
  readonly unitStated: boolean;
}

function focalPlaneResolution(tags: Tags, leftOut: LeftOut[]): Resolution | undefined {
  const credible = {least: 1e-3, most: 1e9};
  const x = firstCredible(tags, {tags: [['FocalPlaneXResolution']], ...credible}, leftOut);
  const y = firstCredible(tags, {tags: [['FocalPlaneYResolution']], ...credible}, leftOut);
  if (x === undefined) return undefined;
  const unit = firstCredible(tags, {tags: [['FocalPlaneResolutionUnit']], least: 2, most: 5}, leftOut);
  const mm = UNIT_MM[unit ?? INCH_UNIT];
  return mm === undefined ? undefined : {perMm: {x: x / mm, y: (y ?? x) / mm}, unitStated: unit !== undefined};
}

function timeFrom(tags: Tags, leftOut: LeftOut[]): string | undefined {
  for (const tag of ['DateTimeOriginal', 'DateTimeDigitized', 'DateTime']) {
    const written = valueOf(tags, tag);
    if (written === undefined) continue;
    const text = String(Array.isArray(written) ? written[0] : written).trim();
    const parts = /^(\d{4})[:-](\d{2})[:-](\d{2})[ T](\d{2}):(\d{2}):(\d{2})/.exec(text);
    const time = parts ? `${parts[1]}-${parts[2]}-${parts[3]}T${parts[4]}:${parts[5]}:${parts[6]}` : '';
    if (isRealTime(time)) return time;
    leftOut.push({tag, value: asWritten(text), why: parts ? 'absurd' : 'no-number'});
  }
  return undefined;
}

/** Whether the calendar has that moment: 30 February comes back as 1 or 2 March. */
function isRealTime(time: string): boolean {
  const moment = new Date(`${time}Z`);
  return !Number.isNaN(moment.getTime()) && moment.toISOString().startsWith(time);
}
