import {Problem} from '../problem.js';
import {readShutter} from '../exposure/read-shutter.js';
import {readAperture, readCorrection, readIso} from '../exposure/read.js';
import {writeAperture, writeIso, writeShutter, writeStops} from '../exposure/write.js';
import {REFLECTANCES} from '../light/reflectances.js';
import {readLights, refuseLights, writeLights} from '../light/set-text.js';
import {readLength, readNumber} from '../units.js';
import type {CropShare, Shot, ShotKey} from './shot.js';

/** How one value of a shot is read from text, written as text and judged. */
export interface Field<T> {
  /** Value of text as a person writes it, or what is wrong with it. Never throws. */
  readonly read: (text: string) => T | Problem;
  /** Text that reads back as the same value. */
  readonly write: (value: T) => string;
  /** What is wrong with a value that came from a script, if anything. */
  readonly refuse: (value: T) => Problem | undefined;
}

/** Reading, writing and judging of every value of a shot, by key. */
export const SHOT_FIELDS: {readonly [K in ShotKey]: Field<Shot[K]>} = /* @__PURE__ */ fields();

function fields(): {readonly [K in ShotKey]: Field<Shot[K]>} {
  const aperture = (key: ShotKey) => setting(key, readAperture, writeAperture);
  const shutter = (key: ShotKey) => setting(key, readShutter, writeShutter);
  const iso = (key: ShotKey) => setting(key, readIso, writeIso);
  return {
    aperture: aperture('aperture'),
    shutter: shutter('shutter'),
    iso: iso('iso'),
    meteredAperture: aperture('meteredAperture'),
    meteredShutter: shutter('meteredShutter'),
    meteredIso: iso('meteredIso'),
    correction: {
      read: readCorrection, write: writeStops, refuse: (value) => outside('correction', value, -30, 30, 'a number of stops'),
    },
    pay: choice('pay', ['aperture', 'shutter', 'iso']),
    clicksPerStop: {
      read: (text) => readClicks(text),
      write: (value) => (value === 1 ? 'full' : value === 2 ? 'half' : 'third'),
      refuse: (value) => ([1, 2, 3].includes(value) ? undefined : new Problem('clicks-per-stop', value, '1, 2 or 3')),
    },
    apertureWidest: aperture('apertureWidest'),
    apertureSmallest: aperture('apertureSmallest'),
    shutterFastest: shutter('shutterFastest'),
    shutterSlowest: shutter('shutterSlowest'),
    isoLowest: iso('isoLowest'),
    isoHighest: iso('isoHighest'),
    focalLength: length('focalLength', 1, 5000),
    pupilRatio: number('pupilRatio', 0.1, 10, 'a ratio above 0, 1 when unknown'),
    sensorWidth: length('sensorWidth', 1, 300),
    sensorHeight: length('sensorHeight', 1, 300),
    fieldWidth: length('fieldWidth', 1, 20_000),
    frameWidth: count('frameWidth'),
    crop: {read: readCrop, write: writeCrop, refuse: refuseCrop},
    pictureWidth: count('pictureWidth'),
    blurLimit: number('blurLimit', 0.1, 100, 'a number of finished pixels, such as 1.5'),
    baseDepth: length('baseDepth', 1, 5000),
    overhangFront: length('overhangFront', 0, 5000),
    overhangFrontHeight: length('overhangFrontHeight', 0, 5000),
    overhangBack: length('overhangBack', 0, 5000),
    overhangBackHeight: length('overhangBackHeight', 0, 5000),
    figureHeight: length('figureHeight', 0, 5000),
    tilt: number('tilt', -80, 80, 'degrees from −80 to 80', /\s*(°|deg(rees?)?)\s*$/i),
    focus: length('focus', -10_000, 10_000),
    backdropDistance: length('backdropDistance', 1, 50_000),
    backdropReflectance: reflectance(),
    backdropWish: number('backdropWish', 0, 12, 'stops under the gray card from 0 to 12, such as 4.5', /\s*stops?\s*$/i),
    lights: {read: readLights, write: writeLights, refuse: refuseLights},
    intent: choice('intent', ['dark-backdrop', 'even']),
    unit: choice('unit', ['mm', 'cm', 'in']),
    focalLengths: lengths('focalLengths', 1, 5000, 'focal lengths such as 50, 60, 100 mm'),
    closestFocus: lengths('closestFocus', 1, 100_000, 'distances such as 25, 40 cm, one for each lens', true),
    meteredMagnification: number('meteredMagnification', 0, 10, 'a magnification such as 0.2; 0 for a hand-held meter'),
    apertureShown: choice('apertureShown', ['marked', 'working']),
    figureWidth: length('figureWidth', 1, 5000),
    pictureHeight: count('pictureHeight'),
    margin: margin(),
    room: length('room', 20, 100_000),
    mostFrames: {
      read: (text) => wholeFrames(readNumber(text.replace(/\s*frames?\s*$/i, '')), text),
      write: String,
      refuse: (value) => { const frames = wholeFrames(value, value); return frames instanceof Problem ? frames : undefined; },
    },
    leastContrast: number('leastContrast', 0.01, 1, 'a contrast from 0.01 to 1'),
    note: {
      read: (text) => text, write: (value) => value,
      refuse: (value) => (typeof value === 'string' ? undefined : new Problem('note', value, 'text')),
    },
  };
}

/** Attribute of a key: `overhangFrontHeight` → `overhang-front-height`. */
export function attributeOf(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function outside(key: string, value: unknown, least: number, most: number, wanted: string): Problem | undefined {
  return typeof value === 'number' && value >= least && value <= most ? undefined : new Problem(attributeOf(key), value, wanted);
}

/** An exposure setting: its reader tells more than the value, which is all a shot keeps. */
function setting(
  key: ShotKey, read: (text: string) => {readonly value: number} | Problem, write: (value: number) => string,
): Field<number> {
  return {
    read: (text) => {
      const reading = read(text);
      return reading instanceof Problem ? new Problem(attributeOf(key), text, reading.wanted) : reading.value;
    },
    write,
    refuse: (value) => outside(key, value, 1e-30, 1e30, 'a number above 0'),
  };
}

function length(key: ShotKey, least: number, most: number): Field<number> {
  const name = attributeOf(key);
  const wanted = `a length from ${least} to ${most} mm`;
  const refuse = (value: number) => outside(key, value, least, most, wanted);
  return {
    read: (text) => {
      const mm = readLength(name, text);
      if (mm instanceof Problem) return mm;
      return refuse(mm) ? new Problem(name, text, wanted) : mm;
    },
    write: (mm) => `${+mm.toPrecision(6)} mm`,
    refuse,
  };
}

/**
 * Lengths in one field. A comma with a blank behind it, a semicolon or "and" parts them, and so does a comma between two
 * digits on either side; any other is a decimal comma. The last unit counts for all before it that have none.
 */
function lengths(key: ShotKey, least: number, most: number, wanted: string, empty = false): Field<readonly number[]> {
  const name = attributeOf(key);
  const refuse = (values: readonly number[]) => (Array.isArray(values) && (empty || values.length > 0)
    && values.every((value) => !outside(key, value, least, most, wanted)) ? undefined : new Problem(name, values, wanted));
  return {
    read: (text) => {
      const pieces = text.trim().split(/\s*(?:;|,(?=\s)|\band\b|(?<=\d{2}),(?=\d{2}))\s*/i).filter(Boolean);
      const unit = /[a-z"″]+$/i.exec(text.trim())?.[0] ?? 'mm';
      const values = pieces.map((piece) => {
        const mm = readLength(name, /\d$/.test(piece) ? `${piece} ${unit}` : piece);
        return mm instanceof Problem ? NaN : mm;
      });
      return refuse(values) ? new Problem(name, text, wanted) : values;
    },
    write: (values) => (values.length ? `${values.map((mm) => +mm.toPrecision(6)).join(', ')} mm` : ''),
    refuse,
  };
}

/** `8%`, `8` and `0.08` are the same margin. */
function margin(): Field<number> {
  const wanted = 'a share of the picture’s width below 45%, such as 8%';
  const refuse = (value: number) => outside('margin', value, 0, 0.45, wanted);
  return {
    read: (text) => {
      const value = readNumber(text.replace(/\s*%\s*$/, '')) ?? NaN;
      const share = value >= 1 || text.includes('%') ? value / 100 : value;
      return refuse(share) ? new Problem('margin', text, wanted) : share;
    },
    write: (share) => `${+(share * 100).toPrecision(6)}%`,
    refuse,
  };
}

/** `black card`, `4%` and `0.04` are the same backdrop. */
function reflectance(): Field<number> {
  const wanted = 'a backdrop such as black card, or the share of light it throws back, such as 4%';
  const materials = Object.entries(REFLECTANCES);
  const refuse = (value: number) => outside('backdropReflectance', value, 0.001, 1, wanted);
  return {
    read: (text) => {
      const named = materials.find(([name]) => name === text.trim().toLowerCase().replace(/[\s_]+/g, '-'));
      const number = readNumber(text.replace(/\s*%\s*$/, '')) ?? NaN;
      const value = named?.[1] ?? (text.includes('%') || number > 1 ? number / 100 : number);
      return refuse(value) ? new Problem('backdrop-reflectance', text, wanted) : value;
    },
    write: (value) => materials.find(([, share]) => share === value)?.[0].replaceAll('-', ' ') ?? `${+(value * 100).toPrecision(6)}%`,
    refuse,
  };
}

function wholeFrames(value: number | undefined, given: unknown): number | Problem {
  return Number.isInteger(value) && value as number >= 1 && value as number <= 60 ? value as number
    : new Problem('most-frames', given, 'a whole number of frames from 1 to 60');
}

function number(key: ShotKey, least: number, most: number, wanted: string, suffix?: RegExp): Field<number> {
  const refuse = (value: number) => outside(key, value, least, most, wanted);
  return {
    read: (text) => {
      const value = readNumber(suffix ? text.replace(suffix, '') : text);
      return value === undefined || refuse(value) ? new Problem(attributeOf(key), text, wanted) : value;
    },
    write: (value) => String(+value.toPrecision(6)),
    refuse,
  };
}

/** Pixels: a whole number, thousands set apart or not. */
function count(key: ShotKey): Field<number> {
  const wanted = 'a whole number of pixels, 1 or more';
  const refuse = (value: number) => (Number.isInteger(value) ? outside(key, value, 1, 1e6, wanted) : new Problem(attributeOf(key), value, wanted));
  return {
    read: (text) => {
      const value = Number(text.replace(/px|pixels?/i, '').replace(/(?<=\d)[\s.,'](?=\d{3}\b)/g, '').trim() || NaN);
      return refuse(value) ? new Problem(attributeOf(key), text, wanted) : value;
    },
    write: String,
    refuse,
  };
}

function choice<T extends string>(key: ShotKey, options: readonly T[]): Field<T> {
  const wanted = options.join(' or ');
  return {
    read: (text) => options.find((option) => option === text.trim().toLowerCase()) ?? new Problem(attributeOf(key), text, wanted),
    write: (value) => value,
    refuse: (value) => (options.includes(value) ? undefined : new Problem(attributeOf(key), value, wanted)),
  };
}

function readClicks(text: string): 1 | 2 | 3 | Problem {
  const found = /^\s*(?:(1|full|whole)|(2|1\/2|½|half)|(3|1\/3|⅓|third))\b.*$|^\s*[½⅓]\s*$/i.exec(text);
  if (!found) return new Problem('clicks-per-stop', text, 'full, half or third');
  if (found[1] && !/^\s*1\//.test(text)) return 1;
  return found[2] || /½|1\/2/.test(text) ? 2 : 3;
}

const CROP_WANTED = 'four shares of the frame: left, top, width, height, such as 10% 5% 80% 90%';

/** `10% 5% 80% 90%` or `0.1 0.05 0.8 0.9`. */
function readCrop(text: string): CropShare | Problem {
  const parts = text.trim().split(/[\s;]+/);
  const [left, top, width, height] = parts.map((part) => {
    const value = readNumber(part.replace(/%$/, ''));
    return value === undefined ? NaN : part.endsWith('%') ? value / 100 : value;
  });
  if (parts.length !== 4) return new Problem('crop', text, CROP_WANTED);
  const crop = {left, top, width, height} as CropShare;
  return refuseCrop(crop) ? new Problem('crop', text, CROP_WANTED) : crop;
}

function writeCrop({left, top, width, height}: CropShare): string {
  return [left, top, width, height].map((share) => `${+(share * 100).toFixed(2)}%`).join(' ');
}

/** Room for the rounding of shares that were worked out from pixels. */
const SHARE_SLACK = 1e-9;

function refuseCrop(crop: CropShare): Problem | undefined {
  // A script may give anything, null too.
  const {left, top, width, height} = (crop ?? {});
  const inside = [left, top, width, height].every(Number.isFinite) && left >= 0 && top >= 0 && width > 0 && height > 0
    && left + width <= 1 + SHARE_SLACK && top + height <= 1 + SHARE_SLACK;
  return inside ? undefined : new Problem('crop', crop, CROP_WANTED);
}
