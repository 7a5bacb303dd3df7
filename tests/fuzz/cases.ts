import fc from 'fast-check';
import {expect, it} from 'vitest';
import {Problem} from '../../src/core/problem.js';

declare module 'vitest' {
  interface TaskMeta {
    /** How many cases the test tried; added up in the closing line. */
    cases?: number;
  }
}

/** `FUZZ=10 npm run check:core` tries ten times as many cases. */
const TIMES = Number(process.env.FUZZ ?? 1);

/** A test that tries `runs` cases, times FUZZ. A failing case is printed with the seed that brings it back. */
export function fuzz<T>(name: string, runs: number, cases: fc.Arbitrary<T>, check: (value: T) => void): void {
  const numRuns = Math.max(1, Math.round(runs * TIMES));
  it(`${name} (${numRuns} cases)`, {timeout: 0}, ({task}) => {
    fc.assert(fc.property(cases, check), {numRuns});
    task.meta.cases = numRuns;
  });
}

/** What arithmetic gives, or the Problem it refuses with; any other exception fails the test. */
export function outcome<T>(job: () => T): T | Problem {
  try {
    return job();
  } catch (error) {
    if (error instanceof Problem) return sound(error);
    throw error;
  }
}

/** Asks that no number anywhere in a result is NaN, and that a Problem can be said. Gives the value back. */
export function sound<T>(value: T, path = 'result'): T {
  if (typeof value === 'number') {
    if (Number.isNaN(value)) expect.fail(`${path} is NaN`);
  } else if (value instanceof Problem) {
    // Its value is the caller's own, NaN or not.
    expect(value.parameter).toMatch(/^[a-z][a-z-]*$/);
    expect(value.wanted.replace(/“[^]*”/, '')).not.toMatch(/NaN|undefined|^$/);
  } else if (ArrayBuffer.isView(value)) {
    for (const number of value as unknown as Iterable<number>) sound(number, path);
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, part] of Object.entries(value)) sound(part, `${path}.${key}`);
  }
  return value;
}
