import type {ShotRecord} from '../../core/shot/record.js';

/** The list with one shot elsewhere. Out of range: the list as it was. */
export function moved(shots: readonly ShotRecord[], from: number, to: number): readonly ShotRecord[] {
  const shot = shots[from];
  if (!shot || to < 0 || to >= shots.length) return shots;
  const rest = without(shots, from);
  return [...rest.slice(0, to), shot, ...rest.slice(to)];
}

/** The list without one shot. */
export function without(shots: readonly ShotRecord[], at: number): readonly ShotRecord[] {
  return shots.filter((_, index) => index !== at);
}
