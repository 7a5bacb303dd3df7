import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {blurDisc} from '../../../src/core/optics/blur.js';
import {contrastAt, contrastProfile, detailCycles, whiteContrast} from '../../../src/core/optics/contrast.js';
import type {LensSetup} from '../../../src/core/optics/lens.js';
import {defocusTransfer} from '../../../src/core/optics/transfer.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published} from '../../reference/published.js';

describe('contrast in white light', () => {
  /** CIE 1924 V(λ), 440 nm to 680 nm in steps of 10; from memory. */
  const EYE = [0.023, 0.038, 0.06, 0.091, 0.139, 0.208, 0.323, 0.503, 0.71, 0.862, 0.954, 0.995, 0.995, 0.952, 0.87, 0.757,
    0.631, 0.503, 0.381, 0.265, 0.175, 0.107, 0.061, 0.032, 0.017];
  const total = EYE.reduce((sum, weight) => sum + weight, 0);

  it('agrees with the whole visible range in steps of 10 nm', () => {
    for (const aperture of [2.8, 8, 16, 27]) {
      for (const blur of [0, 0.004, 0.011, 0.02, 0.05, 0.3]) {
        for (const cycles of [5, 20, 40, 80, 130]) {
          const sum = EYE.reduce((so, weight, k) => {
            const wavelength = (440 + 10 * k) * 1e-6;
            const waves = blur / (8 * wavelength * aperture);
            return so + (weight / total) * defocusTransfer(2 * wavelength * aperture * cycles, waves);
          }, 0);
          expect(Math.abs(whiteContrast(aperture, blur, cycles) - sum)).toBeLessThan(0.002);
        }
      }
    }
  });

  it('is near green light alone', () => {
    // 0.00055 mm is what the published diffraction tables take for white light.
    for (const cycles of [10, 40, 80]) {
      expect(whiteContrast(11, 0.01, cycles))
        .toBeCloseTo(defocusTransfer(2 * 0.00055 * 11 * cycles, 0.01 / (8 * 0.00055 * 11)), 1);
    }
  });

  it('a pixel as wide as a line pair sees none of it, a pixel half as wide sees 2/π of it', () => {
    expect(whiteContrast(8, 0.01, 50, 0.02)).toBeCloseTo(0, 12);
    // 0.6366: response of a pixel without gaps at the finest detail it can carry; common textbook value, from memory.
    expect(whiteContrast(8, 0.01, 50, 0.01) / whiteContrast(8, 0.01, 50)).toBeCloseTo(0.6366, 4);
  });

  it('refuses what has no meaning by name', () => {
    expect(() => whiteContrast(NaN, 0, 10)).toThrow(new Problem('aperture', NaN, 'a number above 0'));
    expect(() => whiteContrast(0, 0, 10)).toThrow(new Problem('aperture', 0, 'a number above 0'));
    expect(() => whiteContrast(8, -1, 10)).toThrow(new Problem('blur', -1, 'a number, 0 or above'));
    expect(() => whiteContrast(8, 0, Infinity)).toThrow(new Problem('detail', Infinity, 'a number, 0 or above'));
    expect(() => whiteContrast(8, 0, 10, -1)).toThrow(new Problem('pixel', -1, 'a number, 0 or above'));
  });
});

describe('contrast of a detail along the depth', () => {
  /** Invented set: the lantern bearer on a 36 mm wide sensor, 120 mm across. */
  const lens: LensSetup = {focalLength: 100, aperture: 11, magnification: 0.3};

  it('reaches 0 in focus at the published cut-off of each wavelength, never later than at the shortest', () => {
    for (const record of published('diffraction').filter(({id}) => /^cutoff-.*550$/.test(id))) {
      const aperture = input(record, 'N');
      // 550 nm is published; the shortest wavelength that counts here is 480 nm.
      const cutOff = (record.expected.value as number) * 550 / 480;
      expect(whiteContrast(aperture, 0, cutOff * (1 + 1e-6))).toBe(0);
      expect(whiteContrast(aperture, 0, record.expected.value as number)).toBeGreaterThan(0);
      expect(whiteContrast(aperture, 0, record.expected.value as number)).toBeLessThan(0.02);
    }
  });

  it('a line on the figure is a line on the sensor, m times as wide in focus and smaller behind', () => {
    expect(detailCycles(lens, {onFigure: 0.1})).toBeCloseTo(1 / 0.06, 10);
    expect(detailCycles(lens, {onSensor: 0.03}, 50)).toBeCloseTo(1 / 0.06, 10);
    // Pupil 433.33 mm away: 43.333 mm further back everything is drawn at 10/11 of the size.
    expect(detailCycles(lens, {onFigure: 0.1}, 100 * (1 / 0.3 + 1) / 10)).toBeCloseTo(1.1 / 0.06, 10);
    expect(contrastAt(lens, 10, {onFigure: 0.1})).toBeLessThan(contrastAt(lens, 10, {onSensor: 0.03}));
  });

  test('one depth and a whole profile say the same', () => {
    const depths = Array.from({length: 200}, (_, k) => k - 100);
    const profile = contrastProfile(lens, depths, {onFigure: 0.12}, 0.005);
    depths.forEach((depth, k) => expect(profile[k]).toBe(contrastAt(lens, depth, {onFigure: 0.12}, 0.005)));
    expect(profile).toHaveLength(200);
    expect(contrastProfile(lens, [], {onFigure: 0.12})).toHaveLength(0);
  });

  test('only the blur disc, the working f-number and the line on the sensor count', () => {
    const lensSetup = fc.record({
      focalLength: fc.double({min: 4, max: 200, noNaN: true}), aperture: fc.double({min: 1.4, max: 32, noNaN: true}),
      magnification: fc.double({min: 0.01, max: 1.5, noNaN: true}), pupilRatio: fc.double({min: 0.4, max: 2, noNaN: true}),
    });
    fc.assert(fc.property(lensSetup, fc.double({min: -0.5, max: 3, noNaN: true}), (setup, share) => {
      // Share of the pupil's distance, so that every lens sees the point in front of it.
      const distance = setup.focalLength * (1 / setup.magnification + 1 / setup.pupilRatio);
      const depth = share * distance;
      const working = setup.aperture * (1 + setup.magnification / setup.pupilRatio);
      const expected = whiteContrast(working, blurDisc(setup, depth), 1 / 0.04);
      expect(contrastAt(setup, depth, {onSensor: 0.02})).toBeCloseTo(expected, 9);
    }));
  });

  it.each([0, -1, NaN])('refuses a line of %s mm by name', (bad) => {
    expect(() => contrastAt(lens, 0, {onFigure: bad})).toThrow(new Problem('detail', bad, 'a number above 0'));
    expect(() => contrastAt(lens, 0, {onSensor: bad})).toThrow(new Problem('detail', bad, 'a number above 0'));
  });

  it('refuses a point behind the lens by name', () => {
    expect(() => contrastAt(lens, -500, {onFigure: 0.1})).toThrow(Problem);
    expect(() => contrastAt(lens, NaN, {onFigure: 0.1})).toThrow(new Problem('depth', NaN, 'a finite number'));
  });
});
