import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {blurDisc} from '../../../src/core/optics/blur.js';
import {readSharpRuler, rulerScale} from '../../../src/core/optics/ruler.js';
import {Problem} from '../../../src/core/problem.js';
import shots from '../../reference/shots/shots.json' with {type: 'json'};

/** All rendered views that are not a crop of another: there the frame is the whole sensor. */
const rendered = shots.shots.flatMap(({file, camera}) => (camera && !file.includes('crop') ? [{file, camera}] : []));

const strips = shots.shots.flatMap((shot) => shot.strips ?? []).filter(({render}) => !render.includes('native'));

describe('two points on a ruler', () => {
  /*
   * Where the renderer put two points 40 mm apart across the view at the focus distance: its camera model, an ideal thin
   * lens, from the ground truth of the rendered pictures.
   */
  it.each(rendered.map(({file, camera}) => [file, camera] as const))('give the field the renderer had, %s', (_, camera) => {
    const perMm = camera.px_per_mm_at_focus;
    const [width, height] = camera.resolution_px as [number, number];
    const one = {x: width / 2 - 12 * perMm, y: height / 3};
    const scale = rulerScale(one, {x: one.x + 24 * perMm, y: one.y + 32 * perMm}, 40, width, camera.sensor_mm[0] as number);
    expect(scale.fieldWidth).toBeCloseTo(camera.field_width_at_focus_mm, 1);
    expect(scale.magnification).toBeCloseTo(camera.magnification, 4);
    expect(scale.pixelsPerMm).toBeCloseTo(perMm, 9);
  });

  it('does not care which point comes first', () => {
    const [one, other] = [{x: 100, y: 700}, {x: 1300, y: 640}];
    expect(rulerScale(one, other, 100, 1500, 36)).toEqual(rulerScale(other, one, 100, 1500, 36));
  });

  it('refuses what cannot be measured by name', () => {
    const [one, other] = [{x: 0, y: 0}, {x: 3, y: 4}];
    expect(() => rulerScale(one, one, 10, 100, 36)).toThrow(new Problem('ruler-points', 0, 'two points that lie apart'));
    expect(() => rulerScale(one, {x: NaN, y: 0}, 10, 100, 36)).toThrow(/^ruler-points/);
    expect(() => rulerScale(one, other, 0, 100, 36)).toThrow(new Problem('ruler-length', 0, 'a number above 0'));
    expect(() => rulerScale(one, other, 10, -1, 36)).toThrow(new Problem('photo-width', -1, 'a number above 0'));
    expect(() => rulerScale(one, other, 10, 100, 0)).toThrow(new Problem('sensor-width', 0, 'a number above 0'));
  });
});

describe('what looked sharp along a ruler', () => {
  test('gives back the limit and the focus that made it, wherever the focus was', () => {
    fc.assert(fc.property(
      fc.record({
        focalLength: fc.double({min: 4, max: 200, noNaN: true}), aperture: fc.double({min: 1.4, max: 32, noNaN: true}),
        magnification: fc.double({min: 0.01, max: 1, noNaN: true}), pupilRatio: fc.double({min: 0.5, max: 2, noNaN: true}),
      }),
      fc.double({min: -40, max: 90, noNaN: true}), fc.double({min: 0, max: 70, noNaN: true}),
      fc.double({min: 0.001, max: 0.8, noNaN: true}),
      (lens, focus, tilt, share) => {
        // The marks are found by bisection on the blur itself: what an eye going along the ruler would do.
        const limit = share * lens.magnification * lens.focalLength / lens.aperture;
        const along = Math.cos(tilt * Math.PI / 180);
        const distance = lens.focalLength * (1 / lens.magnification + 1 / lens.pupilRatio);
        const edge = (inside: number, outside: number): number => {
          for (let k = 0; k < 200; k++) {
            const middle = (inside + outside) / 2;
            if (blurDisc(lens, middle) > limit) outside = middle; else inside = middle;
          }
          return inside;
        };
        const nearest = focus + edge(0, -distance * (1 - 1e-9)) / along;
        const farthest = focus + edge(0, distance * 1e3) / along;
        const reading = readSharpRuler(lens, nearest, farthest, tilt);
        expect(reading.limit / limit).toBeCloseTo(1, 6);
        expect(Math.abs(reading.focus - focus)).toBeLessThan(1e-6 * (farthest - nearest));
        expect(blurDisc(lens, -reading.near)).toBeCloseTo(blurDisc(lens, reading.far), 9);
      }));
  });

  /*
   * Rendered depth chart: blur measured on dots at known depths (1 % above 3 pixels). The marks are where a straight
   * line between two dots passes the limit, 2 % more.
   */
  const rows = strips.map((strip) => [strip.render, strip] as const);
  it.each(rows)('reads a rendered row of dots, %s', (_, {camera, dots}) => {
    const focusAt = camera.focus_distance_lens_mm + (dots[0]?.depth_mm ?? NaN) - (dots[0]?.distance_mm ?? NaN);
    const ends = [dots[0], dots.at(-1)].map((dot) => dot?.measured_blur_mm ?? NaN);
    const limit = 0.6 * Math.min(...ends);
    const marks = dots.slice(1).flatMap((dot, at) => {
      const before = dots[at] as typeof dot;
      const share = (limit - before.measured_blur_mm) / (dot.measured_blur_mm - before.measured_blur_mm);
      return share >= 0 && share < 1 ? [before.depth_mm + share * (dot.depth_mm - before.depth_mm)] : [];
    });
    expect(marks).toHaveLength(2);
    const lens = {
      focalLength: camera.focal_length_mm, aperture: camera.f_number, magnification: camera.magnification,
    };
    const reading = readSharpRuler(lens, marks[0] as number, marks[1] as number);
    expect(Math.abs(reading.limit / limit - 1)).toBeLessThan(0.03);
    expect(Math.abs(reading.focus - focusAt)).toBeLessThan(1);
  });

  it('puts the focus in front of the middle', () => {
    const {near, far, focus} = readSharpRuler({focalLength: 60, aperture: 8, magnification: 0.2}, 10, 30);
    expect(focus).toBeLessThan(20);
    expect(focus).toBeCloseTo(10 + near, 12);
    expect(near + far).toBeCloseTo(20, 12);
  });

  it('refuses marks in the wrong order by name', () => {
    const lens = {focalLength: 60, aperture: 8, magnification: 0.2};
    expect(() => readSharpRuler(lens, 30, 10)).toThrow(new Problem('farthest-sharp', 10, 'a graduation beyond 30 mm'));
    expect(() => readSharpRuler(lens, 30, 30)).toThrow(/^farthest-sharp/);
    expect(() => readSharpRuler(lens, NaN, 30)).toThrow(new Problem('nearest-sharp', NaN, 'a finite number'));
    expect(() => readSharpRuler(lens, 1, Infinity)).toThrow(/^farthest-sharp/);
    expect(() => readSharpRuler(lens, 1, 2, 89)).toThrow(/^tilt/);
  });
});
