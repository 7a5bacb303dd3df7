import {Problem} from '../problem.js';
import {attributeOf, type Field} from './field.js';
import {SHOT_FIELDS} from './fields.js';
import {DEFAULT_SHOT, type Shot, type ShotKey} from './shot.js';

/** Every key of a shot, in the order in which they are written. */
export const shotKeys = (): readonly ShotKey[] => Object.keys(SHOT_FIELDS) as ShotKey[];

/** Reading, writing and judging of a key whose type is not known here. */
export function fieldOf(key: ShotKey): Field<unknown> {
  return SHOT_FIELDS[key] as Field<unknown>;
}

/** A value as its field writes it; the number itself where it lies beyond anything that has a way of writing. */
export function writtenOf(key: ShotKey, value: unknown): string {
  try {
    return fieldOf(key).write(value);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return String(value);
  }
}

/** Whether two values of a shot are the very same, to the last bit. −0 is 0. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) return one === other;
  const [keys, others] = [Object.keys(one), Object.keys(other)];
  return Array.isArray(one) === Array.isArray(other) && keys.length === others.length && keys.every((key) =>
    Object.hasOwn(other, key) && sameValue((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key]));
}

/**
 * What is wrong with a value for `key` that came from a file or a link and may be anything at all.
 * @returns `undefined` when a shot can have it. Never throws.
 */
export function refusalOf(key: ShotKey, value: unknown): Problem | undefined {
  const like = DEFAULT_SHOT[key];
  const kind = Array.isArray(like) ? 'a list' : typeof like === 'object' ? 'an object' : `a ${typeof like}`;
  if (typeof value !== typeof like || value === null || Array.isArray(value) !== Array.isArray(like)) {
    return new Problem(attributeOf(key), shown(value), kind);
  }
  try {
    return fieldOf(key).refuse(value);
  } catch (error) {
    // A list with holes or an object without its parts.
    if (!(error instanceof TypeError)) throw error;
    return new Problem(attributeOf(key), shown(value), `${kind} with all its parts`);
  }
}

/** What came, for a message: an object from a file may have a way of its own of turning into text. */
const shown = (value: unknown): unknown => (typeof value === 'object' ? JSON.stringify(value) : value);

/**
 * Why text that was typed for `key` is not in use.
 * @param value - what is in use
 * @returns `undefined` when the text says that value
 */
export function refusalOfText(key: ShotKey, text: string, value: Shot[ShotKey] | undefined): Problem | undefined {
  const read = fieldOf(key).read(text);
  if (read instanceof Problem) return read;
  return sameValue(read, value) ? undefined : new Problem(attributeOf(key), text, 'a value that can be used here');
}
