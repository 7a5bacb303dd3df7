import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {blurDisc} from '../../../src/core/optics/blur.js';
import {zoneFit} from '../../../src/core/optics/fit.js';
import type {Framing} from '../../../src/core/optics/fit.js';
import {pupilToSubject} from '../../../src/core/optics/lens.js';
import {axialDepth, outlinePoints} from '../../../src/core/optics/outline.js';
import {anyLens, anyLimit, anyOutline, anyTilt, between, expectSame} from './arbitrary.js';
import {renderedShots} from './rendered.js';

const anyFraming: fc.Arbitrary<Framing> = fc.record({
  outline: anyOutline, tilt: anyTilt, lens: anyLens, focus: between(-30, 200), limit: anyLimit,
});

/** Blur at every point of the outline, Infinity for one that reaches behind the lens. */
const blurs = ({outline, tilt, lens, focus}: Framing): number[] => outlinePoints(outline).map(({y, z}) => {
  const depth = axialDepth(y - focus, z, tilt);
  return depth > -pupilToSubject(lens) ? blurDisc(lens, depth) : Infinity;
});

describe('a figure in the sharp zone', () => {
  it('is sharp just when no point of it is blurred beyond the limit', () => {
    fc.assert(fc.property(anyFraming, between(0.5, 2), (framing, times) => {
      // A limit about as large as the worst blur, so that both answers come up.
      const worst = Math.max(...blurs(framing));
      const limit = Number.isFinite(worst) && worst > 1e-6 ? worst * times : framing.limit;
      fc.pre(Math.abs(times - 1) > 1e-3);
      expect(zoneFit({...framing, limit}).end === null).toBe(worst <= limit);
    }));
  });

  it('names the end that fails and by how much: there the blur is back at the limit', () => {
    fc.assert(fc.property(anyFraming, (framing) => {
      const fit = zoneFit(framing);
      const {lens, limit} = framing;
      if (fit.outsideFront > 1e-3) {
        expect(['front', 'both']).toContain(fit.end);
        expectSame(blurDisc(lens, fit.depth.front + fit.outsideFront - fit.focusDepth), limit, 1e-6);
      }
      if (fit.outsideBack > 1e-3) {
        expect(['back', 'both']).toContain(fit.end);
        expectSame(blurDisc(lens, fit.depth.back - fit.outsideBack - fit.focusDepth), limit, 1e-6);
      }
    }));
  });

  it('is covered by the share of its depth that counting finds', () => {
    fc.assert(fc.property(anyFraming, (framing) => {
      const {covered, depth, focusDepth} = zoneFit(framing);
      let sharp = 0;
      for (let at = 0.5; at < 1000; at++) {
        const from = depth.front + depth.spread * at / 1000 - focusDepth;
        if (from > -pupilToSubject(framing.lens) && blurDisc(framing.lens, from) <= framing.limit) sharp++;
      }
      expect(Math.abs(covered - sharp / 1000)).toBeLessThan(0.0021);
    }));
  });

  // Ground truth: the base of the rendered shots, focus where their notes put it, blur by the thin lens at the base's
  // edges computed from their distances. 1.5 pixels of a 1500 px picture of the whole frame: 0.036 mm.
  it.each(renderedShots().filter(({file}) => file.startsWith('aperture-')))('judges the base of $file', (shot) => {
    const {camera, scene, depths_from_lens_mm: depths} = shot;
    const edge = (distance: number): number => camera.aperture_diameter_mm * camera.magnification *
      Math.abs(distance - depths.focus_plane) / distance;
    const limit = 1.5 * camera.pixel_pitch_mm;
    const {base_front, focus_plane} = scene.ruler.mark_mm_of;
    const fit = zoneFit({
      outline: {baseDepth: scene.base.depth_y}, tilt: camera.tilt_down_deg, limit, focus: focus_plane - base_front,
      lens: {focalLength: camera.focal_length_mm, aperture: camera.f_number, magnification: camera.magnification},
    });
    expect(fit.outsideFront > 0).toBe(edge(depths.base_front_table) > limit);
    expect(fit.outsideBack > 0).toBe(edge(depths.base_back_table) > limit);
  });

  it('has no end of room behind when the horizon is sharp', () => {
    const fit = zoneFit({outline: {baseDepth: 60}, tilt: 0, focus: 30, limit: 2,
      lens: {focalLength: 60, aperture: 8, magnification: 0.2}});
    expect(fit).toMatchObject({end: null, outsideBack: -Infinity, covered: 1});
  });

  it('is not covered at all when the focus is far off', () => {
    const framing: Framing = {outline: {baseDepth: 60}, tilt: 0, focus: 30, limit: 0.02,
      lens: {focalLength: 60, aperture: 8, magnification: 0.2}};
    expect(zoneFit({...framing, focus: 200})).toMatchObject({end: 'front', covered: 0});
    expect(zoneFit({...framing, focus: -200})).toMatchObject({end: 'back', covered: 0});
    expect(zoneFit(framing).end).toBe('both');
  });

  it.each([NaN, Infinity])('refuses a focus of %s by name', (focus) => {
    expect(() => zoneFit({outline: {baseDepth: 60}, tilt: 0, focus, limit: 0.02,
      lens: {focalLength: 60, aperture: 8, magnification: 0.2}})).toThrow(expect.objectContaining({parameter: 'focus'}));
  });
});
