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
  if (typeof value !== 'string') {
    // From a script anything may come, an object that has no words for itself included.
    try { return String(value); } catch { return typeof value; }
  }
  return value.length > LONGEST_QUOTE ? `“${value.slice(0, LONGEST_QUOTE)}…”` : `“${value}”`;
}

/**
 * Beyond this, above or below 1, nothing here is measured in anything, and the product of a few numbers would leave what
 * a double can hold: as an infinity or a zero that becomes NaN further on.
 */
const FURTHEST = 1e30;

function requireBelievable(parameter: string, value: number): void {
  if (Math.abs(value) > FURTHEST) throw new Problem(parameter, value, `a number below ${FURTHEST}`);
}

/** @throws {Problem} unless `value` is a finite number, and no larger than 1e30. */
export function requireFinite(parameter: string, value: number): void {
  if (!Number.isFinite(value)) throw new Problem(parameter, value, 'a finite number');
  requireBelievable(parameter, value);
}

/** @throws {Problem} unless `value` is a finite number above 0, from 1e-30 to 1e30. */
export function requirePositive(parameter: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0)) throw new Problem(parameter, value, 'a number above 0');
  if (value < 1 / FURTHEST) throw new Problem(parameter, value, `a number above ${1 / FURTHEST}`);
  requireBelievable(parameter, value);
}

/** @throws {Problem} unless `value` is a finite number, 0 or above, and no larger than 1e30. */
export function requireNotNegative(parameter: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) throw new Problem(parameter, value, 'a number, 0 or above');
  requireBelievable(parameter, value);
}

/** @throws {Problem} unless `value` is a number from `least` to `most`, both ends included. */
export function requireWithin(parameter: string, value: number, least: number, most: number): void {
  if (!(value >= least && value <= most)) throw new Problem(parameter, value, `a number from ${least} to ${most}`);
}
