import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {blurDisc, blurInPixels, blurLimit, blurProfile, onePixel, softnessOf} from '../../../src/core/optics/blur.js';
import {magnificationFromPupil, pupilToSubject} from '../../../src/core/optics/lens.js';
import type {LensSetup} from '../../../src/core/optics/lens.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published} from '../../reference/published.js';
import {anyLens, between, expectSame} from './arbitrary.js';
import {chartStrips} from './rendered.js';

/**
 * The same disc by another road: the point is imaged behind the lens, and its cone from the exit pupil is cut by the
 * sensor. Exit pupil f·(1 − P) behind the rear principal plane, P times as wide as the entrance pupil.
 */
function discBehindTheLens({focalLength: f, aperture, magnification, pupilRatio = 1}: LensSetup, depth: number): number {
  const subject = f * (1 + 1 / magnification) + depth;
  const sensor = f * (1 + magnification);
  const image = 1 / (1 / f - 1 / subject);
  return pupilRatio * (f / aperture) * Math.abs(image - sensor) / Math.abs(image - f * (1 - pupilRatio));
}

describe('the blur disc', () => {
  it('is what imaging the point behind the lens gives', () => {
    fc.assert(fc.property(anyLens, between(-0.5, 5), (lens, share) => {
      const depth = share * pupilToSubject(lens);
      fc.pre(Math.abs(depth) > 1e-3);
      // A point in the front focal plane has its image at infinity; the second road has no answer there.
      fc.pre(Math.abs(depth + lens.focalLength / lens.magnification) > 1e-3 * lens.focalLength);
      expectSame(blurDisc(lens, depth), discBehindTheLens(lens, depth), 1e-6);
    }));
  });

  const strips = chartStrips().filter(({render}) => !render.includes('native'));
  // The dot in the focus plane itself is left out: subtracting the dot's own width leaves 0.3 px where there is none.
  const dots = strips.flatMap(({render, camera, dots}) => dots.map((dot) => ({render, camera, ...dot})))
    .filter(({depth_mm}) => depth_mm !== 0);

  it('has dots to measure', () => expect(dots.length).toBeGreaterThan(20));

  // Measured in the rendered depth chart: within 1 % above 3 px of blur, 0.1 px below.
  it.each(dots)('agrees with the dot measured in $render at $depth_mm mm', ({camera, ...dot}) => {
    const lens: LensSetup = {
      focalLength: camera.focal_length_mm, aperture: camera.f_number,
      magnification: magnificationFromPupil(camera.focus_distance_lens_mm, camera.focal_length_mm),
    };
    const whole = {keptWidth: camera.sensor_mm[0], pictureWidth: camera.resolution_px[0]};
    const pixels = blurInPixels(lens, dot.depth_mm, whole);
    const allowed = pixels > 3 ? 0.01 * pixels : 0.1;
    expect(Math.abs(pixels - dot.measured_blur_px)).toBeLessThanOrEqual(allowed);
  });

  // Source: Wikipedia, Circle of confusion, formula; the values computed by hand.
  it.each(published('dof').filter(({id}) => id.startsWith('blur-')))('agrees with the published $id', (record) => {
    const [f, focus, point] = [input(record, 'f'), input(record, 'S1'), input(record, 'S2')];
    const lens = {focalLength: f, aperture: input(record, 'N'), magnification: magnificationFromPupil(focus, f)};
    const off = blurDisc(lens, point - focus) - Number(record.expected.value);
    expect(Math.abs(off)).toBeLessThan(Number(record.tolerance));
  });

  it('is nothing in the focus plane and larger before it than behind', () => {
    fc.assert(fc.property(anyLens, between(0.01, 0.9), (lens, share) => {
      const depth = share * pupilToSubject(lens);
      expect(blurDisc(lens, 0)).toBe(0);
      expect(blurDisc(lens, -depth)).toBeGreaterThan(blurDisc(lens, depth));
    }));
  });

  it('has none for a point beside or behind the lens', () => {
    const lens = {focalLength: 60, aperture: 8, magnification: 0.2};
    for (const depth of [-360, -1000, NaN, -Infinity, Infinity]) {
      expect(() => blurDisc(lens, depth)).toThrow(expect.objectContaining({name: 'Problem', parameter: 'depth'}));
    }
  });
});

describe('finished pixels', () => {
  it('does not change when the picture keeps half and is shown half as large', () => {
    fc.assert(fc.property(between(1, 60), between(100, 8000), (keptWidth, pictureWidth) => {
      const half = onePixel({keptWidth: keptWidth / 2, pictureWidth: pictureWidth / 2});
      expectSame(half, onePixel({keptWidth, pictureWidth}));
    }));
  });

  it('is the sensor pixel when the whole frame is shown pixel for pixel', () => {
    for (const {camera} of chartStrips()) {
      const whole = {keptWidth: camera.sensor_mm[0], pictureWidth: camera.resolution_px[0]};
      expectSame(onePixel(whole), camera.pixel_pitch_mm);
    }
  });

  it('puts a blur at the limit at just that many pixels', () => {
    fc.assert(fc.property(anyLens, between(0.5, 5), between(200, 6000), (lens, pixels, pictureWidth) => {
      const picture = {keptWidth: 20, pictureWidth};
      const limit = blurLimit(pixels, picture);
      fc.pre(limit < 0.99 * blurDisc(lens, 1e12));
      // Walk to the depth by bisection, not by the zone's formula.
      let [low, high] = [0, 1];
      while (blurDisc(lens, high) < limit) high *= 2;
      for (let step = 0; step < 200; step++) {
        const middle = (low + high) / 2;
        if (blurDisc(lens, middle) < limit) low = middle; else high = middle;
      }
      expectSame(blurInPixels(lens, high, picture), pixels, 1e-6);
    }));
  });

  it.each([
    [() => onePixel({keptWidth: 0, pictureWidth: 1200}), 'kept-width'],
    [() => onePixel({keptWidth: 36, pictureWidth: NaN}), 'picture-width'],
    [() => blurLimit(0, {keptWidth: 36, pictureWidth: 1200}), 'blur-limit'],
    [() => blurProfile({focalLength: 60, aperture: 8, magnification: 0.2}, -10, 10, 1), 'count'],
  ] as const)('refuses what cannot be: %s, %s', (act, parameter) => {
    expect(act).toThrow(expect.objectContaining({name: 'Problem', parameter}));
  });
});

describe('a blur profile', () => {
  it('has both ends, even steps and the disc of each depth', () => {
    const strip = chartStrips()[0];
    const camera = strip?.camera;
    if (!camera) throw new Error('no chart');
    const lens = {
      focalLength: camera.focal_length_mm, aperture: camera.f_number, magnification: camera.magnification,
    };
    const profile = blurProfile(lens, -60, 120, 37);
    expect(profile.map(({depth}) => depth)).toEqual(Array.from({length: 37}, (_, at) => -60 + 5 * at));
    const measured = strip.dots.filter(({depth_mm}) => depth_mm !== 0 && depth_mm % 5 === 0);
    expect(measured.length).toBeGreaterThan(5);
    for (const dot of measured) {
      const there = profile.find(({depth}) => depth === dot.depth_mm);
      // 1 % as the chart's notes say, and half of the last digit the measurement is written with.
      expect(Math.abs((there?.blur ?? NaN) - dot.measured_blur_mm)).toBeLessThan(0.01 * dot.measured_blur_mm + 0.00005);
    }
  });
});

describe('the ends of a blur profile and of the room before a lens', () => {
  const lens = {focalLength: 60, aperture: 8, magnification: 0.5};

  it('is a profile from two depths on, and ends just where it is asked to', () => {
    expect(blurProfile(lens, -0.1, 0.2, 2).map(({depth}) => depth)).toEqual([-0.1, 0.2]);
    expect(blurProfile(lens, -0.1, 0.2, 4).at(-1)?.depth).toBe(0.2); // -0.1 + 0.3 is not, in binary
    expect(() => blurProfile(lens, -1, 1, 1)).toThrow(new Problem('count', 1, 'a whole number, 2 or more'));
  });

  it('says how near a point may lie', () => {
    // 60 mm at half size, pupils alike: 60 · (2 + 1) = 180 mm from the pupil.
    expect(() => blurDisc(lens, -200)).toThrow(new Problem('depth', -200, 'a point in front of the lens, above -180 mm'));
  });
});

describe('how soft a point looks', () => {
  // Where a little ends is the house's judgement: half as wide again as the limit.
  it.each([[0, 'sharp'], [1.5, 'sharp'], [1.51, 'a-little'], [2.25, 'a-little'], [2.26, 'soft'], [9, 'soft']] as const)('%s of 1.5: %s', (width, softness) => {
    expect(softnessOf(width, 1.5)).toBe(softness);
  });
});
