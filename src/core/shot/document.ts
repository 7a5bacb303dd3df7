import {attributeOf} from './field.js';
import {refusalOf, shotKeys} from './given.js';
import type {MeasuredKey, ShotRecord} from './record.js';

export const DOCUMENT_FORMAT = 'lampblack-shots';

/** Raised when a reader of version 1 would take a document for something it does not say. */
export const DOCUMENT_VERSION = 1;

/** Most shots of one document, and the longest texts in it: far past any evening at a table. */
export const DOCUMENT_LIMITS = {shots: 500, title: 200, text: 20_000, picture: 400_000} as const;

/** What is wrong with a document, and where. */
export interface DocumentFault {
  /**
   * - `no-json`: damaged, cut off, or something else altogether
   * - `foreign`: JSON, and no list of shots
   * - `newer`: made by a later version than this one reads
   * - `wrong`: one value cannot be used
   */
  readonly fault: 'no-json' | 'foreign' | 'newer' | 'wrong';
  /** Where: `shots[2].values.aperture`; '' for the whole. */
  readonly path: string;
  readonly value: unknown;
  /** What would do. */
  readonly wanted: string;
}

/** ISO 8601 with a zone; the schema has the same pattern. */
export const MADE = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})$/;
export const PICTURE = /^data:image\/(jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}$/;

export type MeasuredKind = 'text' | 'flag' | 'positive' | 'share' | 'room' | 'code' | 'stops';

/** What every measured value is: text, yes or no, or a number within limits. */
export const MEASURED: Readonly<Record<MeasuredKey, MeasuredKind>> = {
  photo: 'text', taken: 'text', width: 'positive', height: 'positive', aperture: 'positive', shutter: 'positive', iso: 'positive',
  atBlack: 'share', atWhite: 'share', roomBelow: 'room', roomAbove: 'room',
  cardPhoto: 'text', cardTrusted: 'flag', gainRed: 'positive', gainBlue: 'positive', cardOff: 'stops', spotCode: 'code', spotStops: 'stops',
};

type Json = Readonly<Record<string, unknown>>;

/**
 * Shots as a JSON document, in order. Reading it gives the very same records.
 * @returns text with one value a line
 */
export function writeDocument(shots: readonly ShotRecord[]): string {
  const written = shots.map(({title, made, values, texts, measured, picture, others}) => (
    {title, made, values: {...others, ...values}, texts, measured, picture}));
  return `${JSON.stringify({format: DOCUMENT_FORMAT, version: DOCUMENT_VERSION, shots: written}, null, 2)}\n`;
}

/**
 * The shots of a JSON document. Values of keys that are not known here are kept as they came.
 * @param text - any text
 * @returns the records, or the first thing that is wrong. Never throws.
 */
export function readDocument(text: string): readonly ShotRecord[] | DocumentFault {
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return {fault: 'no-json', path: '', value: text.slice(0, 60), wanted: 'JSON'};
  }
  return readShots(json);
}

/** The same for JSON that was parsed already. */
export function readShots(json: unknown): readonly ShotRecord[] | DocumentFault {
  if (!isObject(json) || json.format !== DOCUMENT_FORMAT) {
    return {fault: 'foreign', path: isObject(json) ? 'format' : '', value: isObject(json) ? json.format : json, wanted: `the format ${DOCUMENT_FORMAT}`};
  }
  const {version, shots} = json;
  if (!Number.isInteger(version) || (version as number) < 1) return wrong('version', version, 'a whole number, 1 or more');
  if (version as number > DOCUMENT_VERSION) {
    return {fault: 'newer', path: 'version', value: version, wanted: `version ${DOCUMENT_VERSION}`};
  }
  const {shots: most} = DOCUMENT_LIMITS;
  if (!Array.isArray(shots) || shots.length > most) return wrong('shots', shots, `a list of at most ${most} shots`);
  const records: ShotRecord[] = [];
  for (const [at, shot] of shots.entries()) {
    const record = readRecord(`shots[${at}]`, shot);
    if (isFault(record)) return record;
    records.push(record);
  }
  return records;
}

/** Whether reading ended with something wrong. */
export function isFault(read: object): read is DocumentFault {
  return 'fault' in read;
}

function readRecord(path: string, json: unknown): ShotRecord | DocumentFault {
  if (!isObject(json)) return wrong(path, json, 'a shot');
  const {title, made, values, texts, measured, picture} = json;
  if (typeof title !== 'string' || length(title) > DOCUMENT_LIMITS.title) {
    return wrong(`${path}.title`, title, `text of at most ${DOCUMENT_LIMITS.title} characters`);
  }
  if (typeof made !== 'string' || !MADE.test(made)) return wrong(`${path}.made`, made, 'a time such as 2026-03-01T12:00:00Z');
  if (picture !== undefined && (typeof picture !== 'string' || picture.length > DOCUMENT_LIMITS.picture || !PICTURE.test(picture))) {
    return wrong(`${path}.picture`, picture, 'a small JPEG, PNG or WebP picture as a data: address');
  }
  const fault = valuesFault(`${path}.values`, values) ?? textsFault(`${path}.texts`, texts) ?? measuredFault(`${path}.measured`, measured);
  if (fault) return fault;
  const known = new Set<string>(shotKeys());
  const others = pick(values as Json, (key) => !known.has(key));
  return {
    title, made, values: pick(values as Json, (key) => known.has(key)),
    texts: pick(texts as Json, (key) => known.has(key)),
    measured: pick(measured as Json, (key) => Object.hasOwn(MEASURED, key)),
    ...(picture === undefined ? {} : {picture}), ...(Object.keys(others).length ? {others} : {}),
  };
}

function valuesFault(path: string, values: unknown): DocumentFault | undefined {
  if (!isObject(values)) return wrong(path, values, 'the values of a shot');
  for (const key of shotKeys()) {
    if (!Object.hasOwn(values, key)) continue;
    const value = values[key];
    if (typeof value === 'string' && length(value) > DOCUMENT_LIMITS.text) return wrong(`${path}.${key}`, value, 'shorter text');
    const problem = refusalOf(key, value);
    if (problem) return wrong(`${path}.${key}`, value, problem.wanted);
  }
  return undefined;
}

function textsFault(path: string, texts: unknown): DocumentFault | undefined {
  if (!isObject(texts)) return wrong(path, texts, 'texts as they were typed');
  const [bad] = Object.entries(texts).filter(([, text]) => typeof text !== 'string' || length(text) > DOCUMENT_LIMITS.text);
  return bad && wrong(`${path}.${bad[0]}`, bad[1], `text of at most ${DOCUMENT_LIMITS.text} characters`);
}

function measuredFault(path: string, measured: unknown): DocumentFault | undefined {
  if (!isObject(measured)) return wrong(path, measured, 'what was measured');
  for (const [key, kind] of Object.entries(MEASURED)) {
    const value = measured[key];
    if (value === undefined) continue;
    if (!isMeasured(value, kind)) {
      return wrong(`${path}.${key}`, value, WANTED[kind]);
    }
  }
  return undefined;
}

const WANTED = {
  text: `text of at most ${DOCUMENT_LIMITS.title} characters`, flag: 'true or false', positive: 'a number above 0', share: 'a share from 0 to 1',
  room: 'a number of stops, 0 or more', code: 'a code from 0 to 255', stops: 'a number of stops',
} as const;

function isMeasured(value: unknown, kind: MeasuredKind): boolean {
  if (kind === 'text') return typeof value === 'string' && length(value) <= DOCUMENT_LIMITS.title;
  if (kind === 'flag') return typeof value === 'boolean';
  if (typeof value !== 'number' || !Number.isFinite(value)) return false;
  switch (kind) {
    case 'positive': return value > 0;
    case 'share': return value >= 0 && value <= 1;
    case 'code': return value >= 0 && value <= 255;
    case 'room': return value >= 0;
    case 'stops': return true;
  }
}

/** Characters, as a JSON Schema counts them; counted no further than can matter. */
function length(text: string): number {
  return text.length > 2 * DOCUMENT_LIMITS.text ? text.length : [...text].length;
}

function isObject(json: unknown): json is Json {
  return typeof json === 'object' && json !== null && !Array.isArray(json);
}

function pick(json: Json, wanted: (key: string) => boolean): Json {
  return Object.fromEntries(Object.entries(json).filter(([key]) => wanted(key)));
}

function wrong(path: string, value: unknown, wanted: string): DocumentFault {
  return {fault: 'wrong', path, value, wanted};
}

/** Where a value of a record stands, in words a person can follow: `shots[2].values.baseDepth` → shot 3, `base-depth`. */
export function placeOf(path: string): {readonly shot: number | undefined; readonly name: string} {
  const [, shot, name] = /^shots\[(\d+)\]\.?(?:\w+\.)?(.*)$/.exec(path) ?? [];
  return shot === undefined ? {shot: undefined, name: path} : {shot: Number(shot) + 1, name: attributeOf(name ?? '')};
}
