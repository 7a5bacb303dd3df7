import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {figureField} from '../../../src/core/optics/figure-field.js';
import type {FigureInPicture} from '../../../src/core/optics/figure-field.js';
import {axialDepth, outlinePoints} from '../../../src/core/optics/outline.js';
import {Problem} from '../../../src/core/problem.js';

/** Invented. */
const FIGURE: FigureInPicture = {
  outline: {baseDepth: 60, height: 90, overhangFront: 12, overhangFrontHeight: 70}, tilt: 12, figureWidth: 50,
  pictureWidth: 1000, pictureHeight: 1250, margin: 0.1,
};

const figures = fc.record({
  outline: fc.record({
    baseDepth: fc.integer({min: 10, max: 200}), height: fc.integer({min: 0, max: 200}),
    overhangFront: fc.integer({min: 0, max: 40}), overhangFrontHeight: fc.integer({min: 0, max: 150}),
    overhangBack: fc.integer({min: 0, max: 40}), overhangBackHeight: fc.integer({min: 0, max: 150}),
  }),
  tilt: fc.integer({min: -20, max: 60}), figureWidth: fc.integer({min: 5, max: 300}),
  pictureWidth: fc.constant(1000), pictureHeight: fc.integer({min: 500, max: 2000}),
  margin: fc.double({min: 0, max: 0.2, noNaN: true}),
});

describe('field a figure takes', () => {
  test('holds every corner of the figure inside the margins when rays are followed from a pinhole, and no more', () => {
    fc.assert(fc.property(figures, fc.integer({min: 350, max: 5000}), fc.integer({min: -20, max: 60}), (figure, distance, focus) => {
      const {fieldWidth, aim} = figureField(figure)(distance, focus);
      const slope = figure.tilt * Math.PI / 180;
      const ahead = [0, Math.cos(slope), -Math.sin(slope)] as const;
      const up = [0, Math.sin(slope), Math.cos(slope)] as const;
      const dot = (a: readonly number[], b: readonly number[]): number =>
        a.reduce((sum, value, at) => sum + value * (b[at] as number), 0);
      // The pinhole stands `distance` before the aim, along the axis.
      const pinhole = [0, aim.y, aim.z].map((value, at) => value - distance * (ahead[at] as number));
      const shares = outlinePoints(figure.outline).flatMap(({y, z}) => [-0.5, 0.5].map((side) => {
        const ray = [side * figure.figureWidth, y, z].map((value, at) => value - (pinhole[at] as number));
        const scale = distance / dot(ray, ahead);
        const height = fieldWidth * figure.pictureHeight / figure.pictureWidth;
        return Math.max(
          Math.abs((ray[0] as number) * scale) / (fieldWidth * (0.5 - figure.margin)),
          Math.abs(dot(ray, up) * scale) / (height / 2 - fieldWidth * figure.margin));
      }));
      expect(Math.max(...shares)).toBeCloseTo(1, 9);
    }));
  });

  it('aims into the focus plane', () => {
    const {aim} = figureField(FIGURE)(600, 25);
    expect(axialDepth(aim.y, aim.z, FIGURE.tilt)).toBeCloseTo(25, 9);
  });

  it('from far away is the plain silhouette and its margins', () => {
    // 90 mm upright and 50 mm wide, looked at level: 90 mm are 1.25 − 0.2 of the width.
    const {fieldWidth} = figureField({...FIGURE, tilt: 0})(1e7, 0);
    expect(fieldWidth).toBeCloseTo(90 / 1.05, 3);
    const wide = figureField({...FIGURE, tilt: 0, figureWidth: 200})(1e7, 0);
    expect(wide.fieldWidth).toBeCloseTo(200 / 0.8, 3);
  });

  it('is larger from nearby, since what stands in front is drawn larger', () => {
    const wide = figureField({...FIGURE, figureWidth: 200});
    expect(wide(300, 30).fieldWidth).toBeGreaterThan(wide(3000, 30).fieldWidth * 1.1);
  });

  it('refuses by name', () => {
    expect(() => figureField({...FIGURE, margin: 0.5})).toThrow(new Problem('margin', 0.5, 'a share below 0.5'));
    expect(() => figureField({...FIGURE, pictureHeight: 400, margin: 0.2}))
      .toThrow(new Problem('margin', 0.2, 'a share below 0.2'));
    expect(() => figureField({...FIGURE, figureWidth: -1})).toThrow(/^figure-width/);
    expect(() => figureField(FIGURE)(20, 30)).toThrow(/^camera-distance/);
  });
});
