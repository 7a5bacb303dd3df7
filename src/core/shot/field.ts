import {Problem} from '../problem.js';
import type {Shot, ShotKey} from './shot.js';

/** How one value of a shot is read from text, written as text and judged. */
export interface Field<T> {
  /** Value of text as a person writes it, or what is wrong with it. Never throws. */
  readonly read: (text: string) => T | Problem;
  /** Text that reads back as the same value. */
  readonly write: (value: T) => string;
  /** What is wrong with a value that came from a script, if anything. */
  readonly refuse: (value: T) => Problem | undefined;
}

/** Fields of some values of a shot, by key. */
export type ShotFields<K extends ShotKey = ShotKey> = {readonly [Key in K]: Field<Shot[Key]>};

/** Attribute of a key: `overhangFrontHeight` → `overhang-front-height`. */
export function attributeOf(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

/** Problem of a number beyond its ends, or of something that is no number. */
export function outside(key: string, value: unknown, least: number, most: number, wanted: string): Problem | undefined {
  return typeof value === 'number' && value >= least && value <= most ? undefined : new Problem(attributeOf(key), value, wanted);
}
