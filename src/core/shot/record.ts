import {attributeOf} from './field.js';
import {refusalOfText, shotKeys} from './given.js';
import type {Problem} from '../problem.js';
import type {Shot, ShotKey} from './shot.js';
import type {ShotState} from './state.js';

/** What was measured on a photo of the shot. What is missing was not measured. */
export interface Measured {
  /** Name of the photo's file. */
  readonly photo?: string;
  /** Local time of the camera: `2026-03-01T12:00:00`. */
  readonly taken?: string;
  /** Size of the photo, pixels. */
  readonly width?: number;
  readonly height?: number;
  /** Exposure as the file has it: f-number, s, ISO speed. */
  readonly aperture?: number;
  readonly shutter?: number;
  readonly iso?: number;
  /** Share of the pixels in the crop that are at code 0, and at 255, in at least one colour; 0 to 1. */
  readonly atBlack?: number;
  readonly atWhite?: number;
  /** Stops the crop could be darkened and brightened before an edge is reached. */
  readonly roomBelow?: number;
  readonly roomAbove?: number;
  /** Name of the gray card's file, and whether what it said can be used. */
  readonly cardPhoto?: string;
  readonly cardTrusted?: boolean;
  /** Factors on linear light that make the card neutral, green = 1. */
  readonly gainRed?: number;
  readonly gainBlue?: number;
  /** Stops by which the card shot was too bright; negative = too dark. */
  readonly cardOff?: number;
  /** The measured spot, as of the backdrop: its code, 0 to 255, and stops above the gray card; negative = darker. */
  readonly spotCode?: number;
  readonly spotStops?: number;
}

export type MeasuredKey = keyof Measured;

/** One shot to be kept: everything that was stated and typed, what was measured, and a small picture. */
export interface ShotRecord {
  readonly title: string;
  /** When it was kept: ISO 8601 with a time and a zone, `2026-03-01T12:00:00Z`. */
  readonly made: string;
  /** What was stated, base units; the note too. */
  readonly values: Partial<Shot>;
  /** Text as typed, for the keys whose last word came as text. */
  readonly texts: Readonly<Partial<Record<ShotKey, string>>>;
  readonly measured: Measured;
  /** Small picture, as a `data:` URL of a JPEG, PNG or WebP. */
  readonly picture?: string;
  /** Values of a newer vocabulary, kept as they came. */
  readonly others?: Readonly<Record<string, unknown>>;
}

/** What a record has besides the shot. */
export type RecordExtras = Omit<ShotRecord, 'values' | 'texts'>;

/** The record of a shot as it stands. */
export function recordOf({values, texts}: ShotState, extras: RecordExtras): ShotRecord {
  return {...extras, values, texts};
}

/** The shot of a record, with the reasons against text that is not in use. */
export function stateOf({values, texts}: Pick<ShotRecord, 'values' | 'texts'>): ShotState {
  const problems: Partial<Record<ShotKey, Problem>> = {};
  for (const key of shotKeys()) {
    const text = texts[key];
    const problem = text === undefined ? undefined : refusalOfText(key, text, values[key]);
    if (problem) problems[key] = problem;
  }
  return {values, texts, problems};
}

/** Key of an attribute: `base-depth` → `baseDepth`; `undefined` for anything that is none. */
export function keyOf(attribute: string): ShotKey | undefined {
  return shotKeys().find((key) => attributeOf(key) === attribute);
}
