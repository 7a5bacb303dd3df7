import {Problem} from '../problem.js';
import {readLength, readNumber} from '../units.js';
import {attributeOf, outside, type Field} from './field.js';
import type {ShotKey} from './shot.js';

/** A length in mm, in whatever unit it is typed. */
export function length(key: ShotKey, least: number, most: number): Field<number> {
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
export function lengths(key: ShotKey, least: number, most: number, wanted: string, empty = false): Field<readonly number[]> {
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

/** A number, with or without the unit it is counted in. */
export function number(key: ShotKey, least: number, most: number, wanted: string, suffix?: RegExp): Field<number> {
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
export function count(key: ShotKey): Field<number> {
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

/** One of a few words. */
export function choice<T extends string>(key: ShotKey, options: readonly T[]): Field<T> {
  const wanted = options.join(' or ');
  return {
    read: (text) => options.find((option) => option === text.trim().toLowerCase()) ?? new Problem(attributeOf(key), text, wanted),
    write: (value) => value,
    refuse: (value) => (options.includes(value) ? undefined : new Problem(attributeOf(key), value, wanted)),
  };
}
