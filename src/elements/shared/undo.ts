import type {ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';

/** The state with some keys as they were before: stated, typed, refused, or not said at all. The others stay as they are now. */
export function takenBack(now: ShotState, before: ShotState, keys: readonly ShotKey[]): ShotState {
  const back = <T extends object>(here: T, then: T): T => {
    const kept = Object.entries(here).filter(([key]) => !keys.includes(key as ShotKey));
    const old = Object.entries(then).filter(([key]) => keys.includes(key as ShotKey));
    return Object.fromEntries([...kept, ...old]) as T;
  };
  return {values: back(now.values, before.values), texts: back(now.texts, before.texts), problems: back(now.problems, before.problems)};
}
