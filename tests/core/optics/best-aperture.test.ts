import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {clicks} from '../../../src/core/exposure/clicks.js';
import {bestAperture, worstContrast} from '../../../src/core/optics/best-aperture.js';
import {contrastAt} from '../../../src/core/optics/contrast.js';
import type {Detail} from '../../../src/core/optics/contrast.js';
import {focusForBothEnds} from '../../../src/core/optics/focus.js';
import type {LensSetup} from '../../../src/core/optics/lens.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published} from '../../reference/published.js';

const THIRDS = clicks('aperture', 3, [1.4, 64]).map(({value}) => value);

/** Least contrast at 4001 evenly spaced depths: no idea of where it should be. */
function worstBySearch(lens: LensSetup, front: number, back: number, detail: Detail): number {
  let worst = 1;
  for (let k = 0; k <= 4000; k++) worst = Math.min(worst, contrastAt(lens, front + (back - front) * k / 4000, detail));
  return worst;
}

const lensSetup = fc.record({
  focalLength: fc.double({min: 5, max: 180, noNaN: true}), aperture: fc.double({min: 1.4, max: 45, noNaN: true}),
  magnification: fc.double({min: 0.02, max: 1, noNaN: true}), pupilRatio: fc.double({min: 0.5, max: 2, noNaN: true}),
});
const share = fc.double({min: 0, max: 0.4, noNaN: true});

describe('worst contrast over a depth', () => {
  test('is what a search over thousands of depths finds', () => {
    const detail = fc.oneof(
      fc.record({onSensor: fc.double({min: 0.004, max: 0.1, noNaN: true})}),
      fc.record({onFigure: fc.double({min: 0.05, max: 1, noNaN: true})}),
    );
    fc.assert(fc.property(lensSetup, share, share, detail, (lens, before, behind, line) => {
      const distance = lens.focalLength * (1 / lens.magnification + 1 / lens.pupilRatio);
      const ends = {front: -before * distance, back: behind * distance};
      const found = worstContrast(lens, ends, line);
      // A few thousand even steps can jump over a narrow reversal, so the search may be the one that is too high.
      const searched = worstBySearch(lens, ends.front, ends.back, line);
      expect(found.worst).toBeLessThan(searched + 0.002);
      expect(found.worst).toBeCloseTo(contrastAt(lens, found.depth, line), 12);
      expect(found.depth).toBeGreaterThanOrEqual(ends.front);
      expect(found.depth).toBeLessThanOrEqual(ends.back);
    }), {numRuns: 60});
  });

  test('names the side, and the focus plane itself when there is no depth', () => {
    const lens = {focalLength: 100, aperture: 11, magnification: 0.3};
    expect(worstContrast(lens, {front: -9, back: 4}, {onSensor: 0.02})).toMatchObject({where: 'front', depth: -9});
    expect(worstContrast(lens, {front: -4, back: 9}, {onSensor: 0.02})).toMatchObject({where: 'back', depth: 9});
    expect(worstContrast(lens, {front: 0, back: 0}, {onSensor: 0.02})).toMatchObject({where: 'focus', depth: 0});
    // Same distance both ways: what lies before the focus plane is blurred more.
    expect(worstContrast(lens, {front: -9, back: 9}, {onSensor: 0.02})).toMatchObject({where: 'front'});
    expect(worstContrast(lens, {front: 3, back: 9}, {onSensor: 0.02})).toMatchObject({where: 'back', depth: 9});
  });

  it('does not mistake a ripple at the far end for contrast', () => {
    // f/2.8 at 60 mm: both ends many ripples out, where the contrast itself is near 0 and may be above.
    const lens = {focalLength: 60, aperture: 2.8, magnification: 0.2};
    expect(worstContrast(lens, {front: -60, back: 60}, {onSensor: 0.02}).worst).toBeLessThan(-0.08);
  });

  it('refuses ends in the wrong order', () => {
    const lens = {focalLength: 60, aperture: 8, magnification: 0.2};
    expect(() => worstContrast(lens, {front: 5, back: -5}, {onSensor: 0.02}))
      .toThrow(new Problem('depth', -10, 'a front end before the back end'));
    expect(() => worstContrast(lens, {front: NaN, back: 5}, {onSensor: 0.02}))
      .toThrow(new Problem('depth', NaN, 'a finite number'));
  });
});

describe('best aperture for a depth', () => {
  /** Ends of a depth around the focus that blurs both alike. */
  function ends(lens: LensSetup, spread: number): {front: number; back: number} {
    const focus = focusForBothEnds(lens, {front: 0, back: spread});
    return {front: -focus, back: spread - focus};
  }

  test('is the click a search over all clicks and depths would take', () => {
    fc.assert(fc.property(lensSetup, fc.double({min: 1, max: 120, noNaN: true}), (lens, spread) => {
      const detail = {onSensor: 0.012};
      const around = ends(lens, spread);
      const {best, curve} = bestAperture(lens, around, detail, THIRDS);
      expect(curve).toHaveLength(THIRDS.length);
      const searched = THIRDS.map((aperture) => worstBySearch({...lens, aperture}, around.front, around.back, detail));
      const at = THIRDS.indexOf(best.aperture);
      expect(searched[at]).toBeGreaterThan(Math.max(...searched) - 0.002);
      expect(best.worst).toBe(Math.max(...curve.map(({worst}) => worst)));
    }), {numRuns: 12});
  });

  test('defocus gives way to diffraction along the curve', () => {
    const lens = {focalLength: 100, aperture: 8, magnification: 0.25};
    const {best, curve} = bestAperture(lens, ends(lens, 25), {onSensor: 0.02}, THIRDS);
    const at = curve.findIndex(({aperture}) => aperture === best.aperture);
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(curve.length - 1);
    curve.slice(1).forEach((each, k) => {
      expect(each.inFocus).toBeLessThan((curve[k] as typeof each).inFocus);
      expect(each.inFocus).toBeGreaterThanOrEqual(each.worst);
      if (k + 1 > at) expect(each.worst).toBeLessThan((curve[k] as typeof each).worst);
    });
    // Stopped right down nothing is left for defocus to take.
    const last = curve.at(-1) as (typeof curve)[number];
    expect(last.inFocus - last.worst).toBeLessThan(0.05);
  });

  /*
   * Published rule for the f-number that balances both blurs (P. K. Hansma 1996 and close-up form of it). It adds the two
   * in quadrature and knows no detail size; for a detail about as wide as the balanced blur the contrast must agree with
   * it within a stop.
   */
  it.each(published('dof').filter(({id}) => id.startsWith('optimum-close-')).map((record) => [record.id, record] as const))(
    'is within a stop of the published balance, %s', (_, record) => {
      const balance = record.expected.value as number;
      const lens = {focalLength: 100, aperture: balance, magnification: input(record, 'm')};
      const blur = balance * (1 + lens.magnification) / 750 * Math.SQRT2;
      const {best} = bestAperture(lens, ends(lens, input(record, 'd')), {onSensor: blur}, THIRDS);
      expect(Math.abs(2 * Math.log2(best.aperture / balance))).toBeLessThan(1);
    });

  test('a deeper figure never asks for a wider opening', () => {
    const lens = {focalLength: 90, aperture: 8, magnification: 0.2};
    let last = 0;
    for (const spread of [0, 2, 5, 10, 20, 40]) {
      const {best} = bestAperture(lens, ends(lens, spread), {onSensor: 0.02}, THIRDS);
      expect(best.aperture).toBeGreaterThanOrEqual(last);
      last = best.aperture;
    }
  });

  it('refuses an empty list by name', () => {
    expect(() => bestAperture({focalLength: 50, magnification: 0.1}, {front: -1, back: 1}, {onSensor: 0.02}, []))
      .toThrow(/aperture: wanted at least one/);
  });
});
