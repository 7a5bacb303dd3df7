import fc from 'fast-check';
import {expect} from 'vitest';
import type {LensSetup} from '../../../src/core/optics/lens.js';
import type {Outline} from '../../../src/core/optics/outline.js';

/** A number in a range, ends included. */
export const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({min, max, noNaN: true});

/** Lenses from a phone's to a long macro lens, from a room away to life size. Invented ranges. */
export const anyLens: fc.Arbitrary<LensSetup> = fc.record({
  focalLength: between(4, 200), aperture: between(1.4, 45), magnification: between(0.01, 1), pupilRatio: between(0.4, 2.5),
});

/** Blur limits, mm: from a fine crop to a generous print. Invented range. */
export const anyLimit = between(0.002, 0.08);

/** Figures from a small bust to a diorama, with overhangs at both ends. Invented ranges. */
export const anyOutline: fc.Arbitrary<Outline> = fc.record({
  baseDepth: between(15, 240),
  overhangFront: between(0, 40), overhangFrontHeight: between(0, 120),
  overhangBack: between(0, 60), overhangBackHeight: between(0, 120),
  height: between(0, 200),
});

export const anyTilt = between(-10, 45);

/** Asks that `actual` lies within a share of `expected`: rounding of a few operations, nothing else. */
export function expectSame(actual: number, expected: number, share = 1e-9): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(share * Math.abs(expected));
}
