/**
 * The one error of the core. It carries what an element needs to speak of it beside the field: which
 * parameter, the value as it was given, and what would do.
 *
 * Arithmetic throws it; readers of typed text return it, since text that cannot be read is nothing unusual.
 */
export class Problem extends RangeError {
  override readonly name = 'Problem';

  constructor(
    /** Name from the shared vocabulary: `aperture`, `base-depth` … */
    readonly parameter: string,
    /** The value as given, to be shown back. */
    readonly value: unknown,
    /** What would do, to follow "wanted": `a number above 0`. */
    readonly wanted: string,
  ) {
    super(`${parameter}: wanted ${wanted}, got ${describe(value)}`);
  }
}

/** Longest piece of someone's text that a message repeats. */
const LONGEST_QUOTE = 60;

function describe(value: unknown): string {
  if (typeof value !== 'string') return String(value);
  return value.length > LONGEST_QUOTE ? `“${value.slice(0, LONGEST_QUOTE)}…”` : `“${value}”`;
}

/** @throws {Problem} unless `value` is a finite number. */
export function requireFinite(parameter: string, value: number): void {
  if (!Number.isFinite(value)) throw new Problem(parameter, value, 'a finite number');
}

/** @throws {Problem} unless `value` is a finite number above 0. */
export function requirePositive(parameter: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0)) throw new Problem(parameter, value, 'a number above 0');
}

/** @throws {Problem} unless `value` is a finite number, 0 or above. */
export function requireNotNegative(parameter: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) throw new Problem(parameter, value, 'a number, 0 or above');
}

/** @throws {Problem} unless `value` is a number from `least` to `most`, both ends included. */
export function requireWithin(parameter: string, value: number, least: number, most: number): void {
  if (!(value >= least && value <= most)) throw new Problem(parameter, value, `a number from ${least} to ${most}`);
}
