import {SHOT_FIELDS} from './fields.js';
import type {Field} from './field.js';
import type {Shot, ShotKey} from './shot.js';
import {withTextOf, withValueOf, withValuesOf, type ShotState} from './state.js';

/** The state after somebody typed `text` for `key`. Text that cannot be read is kept and explained. */
export function withText<K extends ShotKey>(state: ShotState, key: K, text: string): ShotState {
  return withTextOf(state, key, text, SHOT_FIELDS[key] as Field<Shot[K]>);
}

/** The state after `key` was set to `value` by script or by turning something. A useless value is refused by name. */
export function withValue<K extends ShotKey>(state: ShotState, key: K, value: Shot[K]): ShotState {
  return withValueOf(state, key, value, SHOT_FIELDS[key] as Field<Shot[K]>);
}

/** The state after several values changed at once. */
export function withValues(state: ShotState, values: Partial<Shot>): ShotState {
  return withValuesOf(state, values, SHOT_FIELDS);
}
