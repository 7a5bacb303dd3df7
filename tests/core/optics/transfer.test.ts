import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {defocusTransfer} from '../../../src/core/optics/transfer.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published, publishedValue} from '../../reference/published.js';

/**
 * Overlap of a defocused pupil with itself, summed over its area with the complex pupil written out: the definition
 * of the transfer function (Goodman, "Introduction to Fourier Optics", section on aberrations; from memory).
 */
function pupilOverlap(s: number, waves: number, rows = 400, columns = 3000): {re: number; im: number} {
  let re = 0;
  let im = 0;
  const top = Math.sqrt(1 - s * s / 4);
  for (let row = 0; row < rows; row++) {
    const turn = ((row + 0.5) / rows - 0.5) * Math.PI;
    const y = top * Math.sin(turn);
    const reach = Math.sqrt(1 - y * y) - s / 2;
    const area = (2 * reach / columns) * (top * Math.cos(turn) * Math.PI / rows);
    for (let column = 0; column < columns; column++) {
      const x = -reach + (2 * reach * (column + 0.5)) / columns;
      const one = 2 * Math.PI * waves * ((x + s / 2) ** 2 + y * y);
      const other = 2 * Math.PI * waves * ((x - s / 2) ** 2 + y * y);
      re += area * (Math.cos(one) * Math.cos(other) + Math.sin(one) * Math.sin(other));
      im += area * (Math.sin(one) * Math.cos(other) - Math.cos(one) * Math.sin(other));
    }
  }
  return {re: re / Math.PI, im: im / Math.PI};
}

/** Bessel function of the first kind, order 1, from its integral (Bessel 1824), by the trapezium rule on a whole turn. */
function besselOne(z: number): number {
  const steps = 64 + Math.ceil(2 * z);
  let sum = 0;
  for (let k = 0; k < steps; k++) {
    const turn = (2 * Math.PI * k) / steps;
    sum += Math.cos(turn - z * Math.sin(turn));
  }
  return sum / steps;
}

const geometric = (z: number): number => 2 * besselOne(z) / z;

describe('transfer through a defocused lens', () => {
  const shifts = [0.001, 0.01, 0.08, 0.3, 0.7, 1, 1.3, 1.7, 1.9, 1.99];

  it.each([0, 0.1, 0.6, 2.2, 9, 31.4, 50])(
    'agrees with the overlap of the pupil with itself at %s waves', (waves) => {
      for (const s of shifts) {
        const {re, im} = pupilOverlap(s, waves);
        expect(Math.abs(im)).toBeLessThan(1e-6);
        expect(Math.abs(defocusTransfer(s, waves) - re), `s ${s}`).toBeLessThan(1e-5);
      }
    });

  it.each([60, 2000])('agrees with a plain sum over a million slices of the overlap at %s waves', (waves) => {
    for (const s of [0.002, 0.05, 0.5, 1, 1.8, 1.995]) {
      const slices = 1e6;
      const width = (1 - s / 2) / slices;
      let sum = 0;
      for (let k = 0; k < slices; k++) {
        const x = (k + 0.5) * width;
        // Height of the overlap times the phase between the two pupils, both sides of the middle at once.
        sum += 4 * width * Math.sqrt(1 - (x + s / 2) ** 2) * Math.cos(2 * Math.PI * waves * 2 * x * s);
      }
      expect(Math.abs(defocusTransfer(s, waves) - sum / Math.PI), `s ${s}`).toBeLessThan(1e-5);
    }
  });

  it('tends to the shadow of the stop when diffraction is small', () => {
    for (const z of [0.1, 1, 2.5, 3.8317, 5.1, 7, 20, 45, 90]) {
      const s = 1e-5;
      expect(defocusTransfer(s, z / (4 * Math.PI * s))).toBeCloseTo(geometric(z), 4);
    }
  });

  it('first reaches 0 where the published disc does', () => {
    const record = publishedValue('diffraction', 'defocus-otf-zero');
    const cycles = record.expected.value as number;
    const blur = input(record, 'c');
    const s = 1e-5;
    const waves = (near: number): number => (Math.PI * blur * cycles * near) / (4 * Math.PI * s);
    expect(defocusTransfer(s, waves(1 - 1e-4))).toBeGreaterThan(0);
    expect(defocusTransfer(s, waves(1 + 1e-4))).toBeLessThan(0);
  });

  const limits = published('diffraction').filter(({id}) => id.startsWith('mtf-'));
  it.each(limits.map((record) => [record.id, record] as const))(
    'in focus is the published diffraction limit, %s', (_, record) => {
      // Published against the cut-off; here the cut-off is 2.
      expect(Math.abs(defocusTransfer(2 * input(record, 's'), 0) - (record.expected.value as number)))
        .toBeLessThanOrEqual(record.tolerance as number);
    });

  it('loses half of the contrast in focus where published', () => {
    const record = publishedValue('diffraction', 'mtf50');
    const s = 2 * (record.expected.value as number);
    expect(defocusTransfer(s - 2e-5, 0)).toBeGreaterThan(0.5);
    expect(defocusTransfer(s + 2e-5, 0)).toBeLessThan(0.5);
  });

  const frequency = fc.double({min: 0, max: 2.5, noNaN: true});
  const defocus = fc.double({min: -300, max: 300, noNaN: true});

  test('never beats focus, and does not care which side of it', () => {
    fc.assert(fc.property(frequency, defocus, (s, waves) => {
      const value = defocusTransfer(s, waves);
      expect(Math.abs(value)).toBeLessThanOrEqual(defocusTransfer(s, 0) + 2e-6);
      expect(value).toBe(defocusTransfer(s, -waves));
    }));
  });

  test('in focus the finer detail always has less', () => {
    fc.assert(fc.property(frequency, frequency, (a, b) => {
      fc.pre(Math.abs(a - b) > 1e-6 && Math.min(a, b) < 2 - 1e-6);
      expect(defocusTransfer(Math.min(a, b), 0)).toBeGreaterThan(defocusTransfer(Math.max(a, b), 0));
    }));
  });

  test('runs on without a step where the way of summing changes', () => {
    fc.assert(fc.property(fc.double({min: 0.001, max: 1.99, noNaN: true}), (s) => {
      for (let waves = 0; waves < 40; waves += 0.37) {
        const [one, two] = [defocusTransfer(s, waves), defocusTransfer(s, waves + 1e-6)];
        expect(Math.abs(one - two)).toBeLessThan(5e-5 + 2e-6);
      }
    }), {numRuns: 40});
  });

  it('is 1 for an even tone, 0 from the cut-off on', () => {
    expect(defocusTransfer(0, 30)).toBeCloseTo(1, 12);
    expect(defocusTransfer(2, 3)).toBe(0);
    expect(defocusTransfer(7, 0)).toBe(0);
  });

  it.each([-1, NaN, Infinity])('refuses a frequency of %s by name', (bad) => {
    expect(() => defocusTransfer(bad, 0)).toThrow(new Problem('detail', bad, 'a number, 0 or above'));
    expect(() => defocusTransfer(1, Number.NaN)).toThrow(new Problem('defocus', NaN, 'a finite number'));
  });
});
