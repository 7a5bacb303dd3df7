import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {blurDisc} from '../../../src/core/optics/blur.js';
import {bestFocus, equalBlurDistance, focusForBothEnds, refocusInPlace} from '../../../src/core/optics/focus.js';
import {pupilToSubject} from '../../../src/core/optics/lens.js';
import {axialToRuler, depthToCover, rulerToAxial} from '../../../src/core/optics/outline.js';
import {input, published} from '../../reference/published.js';
import {anyLens, anyOutline, anyTilt, between, expectSame} from './arbitrary.js';

// Sources: Wikipedia (Depth of field), NAVEDTRA 14209, through dof.json.
describe('the distance that blurs both ends alike', () => {
  it.each(published('dof').filter(({id}) => id.startsWith('focus-harmonic-')))('agrees with $id', (record) => {
    expect(Math.abs(equalBlurDistance(input(record, 'DN'), input(record, 'DF')) - Number(record.expected.value)))
      .toBeLessThanOrEqual(Number(record.tolerance));
  });

  it.each(published('dof').filter(({id}) => id === 'navy-focus-harmonic'))('agrees with $id', (record) => {
    expect(Math.abs(equalBlurDistance(input(record, 'd'), input(record, 'D')) - Number(record.expected.value)))
      .toBeLessThanOrEqual(Number(record.tolerance));
  });

  it('is twice the near distance when the far end is the horizon', () => {
    expect(equalBlurDistance(500, Infinity)).toBe(1000);
  });

  it.each([
    [0, 10, 'near'], [NaN, 10, 'near'], [10, 0, 'far'], [10, NaN, 'far'],
  ])('refuses %s and %s', (near, far, parameter) => {
    expect(() => equalBlurDistance(near, far)).toThrow(expect.objectContaining({name: 'Problem', parameter}));
  });
});

describe('focus for both ends', () => {
  it('blurs them alike, in front of the middle', () => {
    fc.assert(fc.property(anyLens, between(-200, 200), between(0.1, 400), (lens, front, spread) => {
      const focus = focusForBothEnds(lens, {front, back: front + spread});
      expectSame(blurDisc(lens, front - focus), blurDisc(lens, front + spread - focus), 1e-6);
      expect(focus).toBeGreaterThan(front);
      expect(focus).toBeLessThan(front + spread / 2);
    }));
  });

  it('leaves no focus plane with a smaller worst blur', () => {
    fc.assert(fc.property(anyLens, between(1, 300), (lens, spread) => {
      const worst = (focus: number): number => {
        const front = pupilToSubject(lens) - focus > 0 ? blurDisc(lens, -focus) : Infinity;
        return Math.max(front, blurDisc(lens, spread - focus));
      };
      const least = worst(focusForBothEnds(lens, {front: 0, back: spread}));
      for (let step = 0; step <= 200; step++) {
        expect(worst(spread * step / 200)).toBeGreaterThanOrEqual(least * (1 - 1e-9));
      }
    }));
  });

  it('is a point on the ruler', () => {
    fc.assert(fc.property(anyOutline, anyTilt, anyLens, (outline, tilt, lens) => {
      const {front, back} = depthToCover(outline, tilt);
      const depth = rulerToAxial(bestFocus(outline, tilt, lens), tilt);
      expectSame(blurDisc(lens, front - depth), blurDisc(lens, back - depth), 1e-6);
    }));
    // A base alone, seen level from very far: the middle.
    expect(bestFocus({baseDepth: 60}, 0, {focalLength: 60, aperture: 8, magnification: 1e-6})).toBeCloseTo(30, 3);
  });

  it('stays on the front when there is no depth and refuses ends in the wrong order', () => {
    const lens = {focalLength: 60, aperture: 8, magnification: 0.2};
    expect(focusForBothEnds(lens, {front: 7, back: 7})).toBe(7);
    expect(() => focusForBothEnds(lens, {front: 7, back: 6})).toThrow(expect.objectContaining({parameter: 'depth'}));
  });
});

describe('focus turned with the camera in its place', () => {
  it('blurs both ends alike as well, and the lens has moved nowhere', () => {
    fc.assert(fc.property(anyLens, between(-0.3, 0.3), between(0.01, 0.5), (lens, before, share) => {
      const away = pupilToSubject(lens);
      // A focus ring cannot bring the plane within one focal length of the lens.
      fc.pre(away * (1 + before) > 1.5 * lens.focalLength * (1 + 1 / (lens.pupilRatio ?? 1)));
      const ends = {front: before * away, back: (before + share) * away};
      const turned = refocusInPlace(lens, 0, ends);
      const [front, back] = [ends.front - turned.depth, ends.back - turned.depth];
      expectSame(blurDisc(turned.lens, front), blurDisc(turned.lens, back), 1e-6);
      expectSame(pupilToSubject(turned.lens), away + turned.depth);
    }));
  });

  it('agrees with the focus that keeps the field when it is already right', () => {
    const lens = {focalLength: 60, aperture: 11, magnification: 0.19};
    const ends = {front: -10, back: 50};
    const depth = focusForBothEnds(lens, ends);
    const turned = refocusInPlace(lens, depth, ends);
    expectSame(turned.depth, depth);
    expectSame(turned.lens.magnification, lens.magnification);
    expect(axialToRuler(turned.depth, 0)).toBeLessThan(20);
  });

  it('refuses a figure that reaches behind the lens', () => {
    const lens = {focalLength: 6, aperture: 2, magnification: 0.05};
    expect(() => refocusInPlace(lens, 0, {front: -130, back: 10})).toThrow(expect.objectContaining({parameter: 'near'}));
  });
});
