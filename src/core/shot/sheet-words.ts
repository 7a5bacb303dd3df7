import type {LengthUnit} from '../units.js';
import type {Shot, ShotKey} from './shot.js';

/** Parts of a record, each under a heading of its own. */
export type SheetHeading = 'exposure' | 'camera' | 'figure' | 'picture' | 'light' | 'also' | 'setUp' | 'measured' | 'unused';

/** Lines of what was measured. */
export type MeasuredLabel = 'photo' | 'taken' | 'size' | 'file' | 'atBlack' | 'atWhite' | 'roomBelow' | 'roomAbove' | 'card' | 'cardOff' | 'balance' | 'spot';

/** Sides of a place on the table, seen by the camera. */
export type Side = 'right' | 'left' | 'behind' | 'before' | 'above' | 'below';

/** What a record says in one language. Numbers come written, with their units. */
export interface SheetWords {
  readonly headings: Readonly<Record<SheetHeading, string>>;
  readonly labels: Readonly<Record<ShotKey, string>>;
  readonly measured: Readonly<Record<MeasuredLabel, string>>;
  readonly quoted: (text: string) => string;

  readonly intents: Readonly<Record<Shot['intent'], string>>;
  readonly payers: Readonly<Record<Shot['pay'], string>>;
  readonly clicks: Readonly<Record<Shot['clicksPerStop'], string>>;
  readonly apertures: Readonly<Record<Shot['apertureShown'], string>>;
  /** Backdrops by the name that a field takes: `black card`. */
  readonly materials: Readonly<Record<string, string>>;
  readonly crop: (width: string, height: string, left: string, top: string) => string;

  /** Lamps that a set comes with, by the name they have there: `key`. Others keep theirs. */
  readonly lampNames: Readonly<Record<string, string>>;
  readonly faces: {
    readonly rectangle: (width: string, height: string) => string;
    readonly disc: (across: string) => string;
    readonly small: string;
    readonly bulb: string;
  };
  readonly flag: (width: string, height: string) => string;
  readonly table: (share: string) => string;
  /** One part of a place, counted from the middle of the base at table height. */
  readonly side: Readonly<Record<Side, (length: string) => string>>;
  readonly atFigure: string;
  readonly aimed: (place: string) => string;
  /** A lamp that gives more or less than the others. */
  readonly power: (stops: string, more: boolean) => string;

  readonly sensorToFocus: string;
  readonly sensorTaken: (distance: string, sensor: string) => string;
  readonly lamp: (name: string) => string;
  readonly fromAim: (distance: string) => string;

  readonly underShare: (share: string) => string;
  readonly trusted: (trusted: boolean) => string;
  readonly photoTrusted: (photo: string, trusted: boolean) => string;
  readonly asItShould: string;
  readonly cardOff: (stops: string, bright: boolean) => string;
  readonly balance: (red: string, blue: string) => string;
  readonly level: (code: string) => string;
  readonly levelAsCard: (code: string) => string;
  readonly levelFromCard: (code: string, stops: string, above: boolean) => string;
}

/** How one language writes numbers. */
export interface SheetNumbers {
  /** At most so many digits behind the point, none that say nothing. */
  readonly number: (value: number, decimals: number) => string;
  /** Always so many digits behind the point. */
  readonly fixed: (value: number, decimals: number) => string;
  /** At most two digits behind the point. */
  readonly percent: (share: number) => string;
  /** A length with its unit, four digits. */
  readonly length: (mm: number, unit: LengthUnit) => string;
  /** A number of stops with its unit, to a tenth. */
  readonly stops: (stops: number) => string;
  /** Text as a field writes it. */
  readonly text: (written: string) => string;
  /** Stands between numbers of a list. */
  readonly between: string;
}

/** One language: its words and its numbers. */
export interface SheetLanguage {
  readonly words: SheetWords;
  readonly numbers: SheetNumbers;
}
