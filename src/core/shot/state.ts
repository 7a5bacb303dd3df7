import {Problem} from '../problem.js';
import type {Field, ShotFields} from './field.js';
import type {Shot, ShotKey} from './shot.js';

/**
 * A shot while somebody is describing it: the values in use, the text as it was typed, and what is wrong with text
 * that could not be used. A value that is refused never replaces the last good one, and the text is never lost.
 */
export interface ShotState {
  /** Values stated so far; what is missing has not been said. */
  readonly values: Partial<Shot>;
  /** Text as typed, for the keys whose last word came as text. */
  readonly texts: Readonly<Partial<Record<ShotKey, string>>>;
  /** Why a text or value was refused. */
  readonly problems: Readonly<Partial<Record<ShotKey, Problem>>>;
}

export const EMPTY_STATE: ShotState = {values: {}, texts: {}, problems: {}};

/** The state after somebody typed `text` for `key`, which `field` reads. Text that cannot be read is kept and explained. */
export function withTextOf<K extends ShotKey>(state: ShotState, key: K, text: string, field: Field<Shot[K]>): ShotState {
  const read = field.read(text);
  if (read instanceof Problem) {
    return {...state, texts: {...state.texts, [key]: text}, problems: {...state.problems, [key]: read}};
  }
  return {
    values: {...state.values, [key]: read}, texts: {...state.texts, [key]: text}, problems: without(state.problems, key),
  };
}

/** The state after `key` was set to `value`, which `field` judges where there is one. A useless value is refused by name. */
export function withValueOf<K extends ShotKey>(state: ShotState, key: K, value: Shot[K], field: Field<Shot[K]> | undefined): ShotState {
  const problem = field?.refuse(value);
  if (problem) return {...state, problems: {...state.problems, [key]: problem}};
  return {
    values: {...state.values, [key]: value}, texts: without(state.texts, key), problems: without(state.problems, key),
  };
}

/** The state after several values changed at once. */
export function withValuesOf(state: ShotState, values: Partial<Shot>, fields: Partial<ShotFields>): ShotState {
  let next = state;
  for (const key of Object.keys(values) as ShotKey[]) {
    const value = values[key];
    if (value !== undefined) next = withValueOf(next, key, value, fields[key] as Field<typeof value> | undefined);
  }
  return next;
}

/** The state with whatever `other` says of values that `state` says nothing of. */
export function filledFrom(state: ShotState, other: ShotState): ShotState {
  const unsaid = <T extends object>(record: T): T => Object.fromEntries(Object.entries(record)
    .filter(([key]) => !(key in state.values || key in state.texts || key in state.problems))) as T;
  return {
    values: {...unsaid(other.values), ...state.values},
    texts: {...unsaid(other.texts), ...state.texts},
    problems: {...unsaid(other.problems), ...state.problems},
  };
}

/** The state as if nobody had said anything of `key`. */
export function withoutKey(state: ShotState, key: ShotKey): ShotState {
  return {values: without(state.values, key), texts: without(state.texts, key), problems: without(state.problems, key)};
}

function without<T extends object>(record: T, key: keyof T): T {
  if (!(key in record)) return record;
  const rest = {...record};
  delete rest[key];
  return rest;
}
