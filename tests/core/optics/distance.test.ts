import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {blurInPixels} from '../../../src/core/optics/blur.js';
import {stepBackBy, stepBackForPixels, stepBackForStops, stepBackTo} from '../../../src/core/optics/distance.js';
import {
  airyDiameter, magnificationFromPupil, pupilToSubject, viewAngle, workingAperture,
} from '../../../src/core/optics/lens.js';
import type {LensSetup} from '../../../src/core/optics/lens.js';
import {sharpZone} from '../../../src/core/optics/zone.js';
import {anyLens, between, expectSame} from './arbitrary.js';
import {renderedShots} from './rendered.js';

/** Width of the kept field at the focus plane and of the finished picture; invented. */
const FIELD_MM = 120;
const PICTURE_PX = 2000;

/** The picture that keeps FIELD_MM at the focus plane, whatever the lens. */
const sameCrop = ({magnification}: LensSetup) => ({keptWidth: FIELD_MM * magnification, pictureWidth: PICTURE_PX});

const airyPixels = (lens: LensSetup): number =>
  airyDiameter(workingAperture(lens.aperture, lens.magnification, lens.pupilRatio)) /
  sameCrop(lens).keptWidth * PICTURE_PX;

describe('distance as a currency', () => {
  it('blurs a point alike in the finished picture wherever it sees the lens under the same angle', () => {
    fc.assert(fc.property(anyLens, between(1.01, 6), between(-0.3, 2), (lens, times, share) => {
      const away = pupilToSubject(lens);
      const depth = share * away;
      fc.pre(Math.abs(depth) > 1e-6);
      const further = stepBackTo(lens, away * times).lens;
      // The same angle from that point: the pupil wider as the point's distance grew.
      const aperture = lens.aperture * (away + depth) / (away * times + depth);
      const there = blurInPixels({...further, aperture}, depth, sameCrop(further));
      expectSame(there, blurInPixels(lens, depth, sameCrop(lens)), 1e-8);
    }));
  });

  it('makes stops of distance worth stops of aperture: diffraction exactly, depth as far as it is short', () => {
    fc.assert(fc.property(anyLens, between(0.1, 4), (lens, stops) => {
      const further = stepBackForStops(lens, stops).lens;
      const closed = {...lens, aperture: lens.aperture * 2 ** (stops / 2)};
      expectSame(airyPixels(further), airyPixels(closed), 1e-8);
      const near = pupilToSubject(lens) * 1e-6;
      expectSame(blurInPixels(further, near, sameCrop(further)), blurInPixels(closed, near, sameCrop(closed)), 2e-6);
    }));
  });

  it('gives the longer zone to the one further back, for the same stops', () => {
    const lens = {focalLength: 60, aperture: 8, magnification: 0.2};
    const further = stepBackForStops(lens, 2);
    const zoneHere = sharpZone({...lens, aperture: 16}, 0.03);
    const zoneThere = sharpZone(further.lens, 0.03 * further.pixelShare);
    expectSame(zoneThere.near + zoneThere.far, zoneHere.near + zoneHere.far, 0.01);
    expect(zoneThere.near).toBeGreaterThan(zoneHere.near); // the far one is nearer to symmetrical
  });

  // Ground truth: the same figure from 420 and from 1020 mm, the second cropped to the framing of the first.
  it('agrees with the pair of rendered shots 600 mm apart', () => {
    const [near, far] = ['deep-near.jpg', 'deep-far.jpg'].map((name) => renderedShots().find(({file}) => file === name));
    if (!near?.camera || !far?.equivalent_crop_px) throw new Error('the pair is gone');
    const lens = {
      focalLength: near.camera.focal_length_mm, aperture: near.camera.f_number,
      magnification: magnificationFromPupil(near.camera.focus_distance_lens_mm, near.camera.focal_length_mm),
    };
    const step = stepBackTo(lens, far.camera.focus_distance_lens_mm);
    expectSame(step.lens.magnification, far.camera.magnification, 1e-5);
    expectSame(step.by, far.camera.sensor_to_focus_plane_mm - near.camera.sensor_to_focus_plane_mm, 1e-4);
    expectSame(step.sensorToSubject, far.camera.sensor_to_focus_plane_mm, 1e-5);
    expect(Math.abs(step.pixelShare * far.camera.resolution_px[0] - far.equivalent_crop_px[2])).toBeLessThanOrEqual(0.5);
    expect(step.stops).toBeCloseTo(2.56, 2); // 1020 / 420 = 2.4286, twice its log2 by hand
    // From further back the whole frame takes in more of the table, under a slightly wider angle.
    expect(viewAngle(step.lens, 36)).toBeGreaterThan(viewAngle(lens, 36));
  });
});

describe('the three ways to ask for a step', () => {
  it('answer alike', () => {
    fc.assert(fc.property(anyLens, between(0.05, 5), (lens, stops) => {
      fc.pre(lens.magnification < 0.9);
      const step = stepBackForStops(lens, stops);
      const byMm = stepBackBy(lens, step.by);
      const byPixels = stepBackForPixels(lens, 5000, 5000 * step.pixelShare);
      for (const same of [byMm, byPixels]) {
        expectSame(same.by, step.by, 1e-6);
        expectSame(same.stops, step.stops, 1e-6);
        expectSame(same.pixelShare, step.pixelShare, 1e-6);
        expectSame(same.sensorToSubject, step.sensorToSubject, 1e-6);
      }
    }));
  });

  it('cost pixels and win light going back, the other way round coming nearer', () => {
    fc.assert(fc.property(anyLens, between(0.01, 4), (lens, stops) => {
      const back = stepBackForStops(lens, stops);
      expect(back.pixelShare).toBeLessThan(1);
      expect(back.light).toBeGreaterThan(0);
      expectSame(back.lens.aperture, lens.aperture);
      const home = stepBackForStops(back.lens, -stops);
      expectSame(home.lens.magnification, lens.magnification, 1e-8);
      expect(home.by).toBeCloseTo(-back.by, 4);
      expect(home.light).toBeCloseTo(-back.light, 9);
    }));
  });

  it('change nothing for nothing', () => {
    const lens = {focalLength: 100, aperture: 11, magnification: 0.3, pupilRatio: 0.8};
    for (const step of [stepBackForStops(lens, 0), stepBackBy(lens, 0), stepBackForPixels(lens, 3000, 3000)]) {
      expect(step.by).toBeCloseTo(0, 9);
      expect(step.stops).toBeCloseTo(0, 9);
      expect(step.light).toBeCloseTo(0, 9);
      expect(step.pixelShare).toBeCloseTo(1, 9);
    }
  });

  const lens = {focalLength: 60, aperture: 8, magnification: 0.2};
  it.each([
    [() => stepBackForStops(lens, NaN), 'stops'], [() => stepBackForStops(lens, -40), 'camera-distance'],
    [() => stepBackBy(lens, -300), 'camera-distance'], [() => stepBackBy(lens, NaN), 'camera-distance'],
    [() => stepBackBy({...lens, magnification: 1.2}, 10), 'magnification'],
    [() => stepBackForPixels(lens, 0, 2000), 'pixels-across'],
    [() => stepBackForPixels(lens, 4000, -1), 'picture-width'], [() => stepBackTo(lens, 60), 'camera-distance'],
  ] as const)('refuse what cannot be: %s, %s', (act, parameter) => {
    expect(act).toThrow(expect.objectContaining({name: 'Problem', parameter}));
  });
});
