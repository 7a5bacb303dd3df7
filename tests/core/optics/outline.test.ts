import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {
  axialDepth, axialToRuler, depthToCover, outlinePoints, rulerToAxial,
} from '../../../src/core/optics/outline.js';
import type {Outline} from '../../../src/core/optics/outline.js';
import {anyOutline, anyTilt, between, expectSame} from './arbitrary.js';
import {renderedShots} from './rendered.js';

// Ground truth of the rendered scenes: depths measured along the axis of a camera that looks down.
describe('depth under tilt in the rendered shots', () => {
  const shots = renderedShots();

  it.each(shots)('finds how deep the base of $file lies', ({camera, scene, depths_from_lens_mm: depths}) => {
    const cover = depthToCover({baseDepth: scene.base.depth_y}, camera.tilt_down_deg);
    expect(cover.spread).toBeCloseTo(depths.base_back_table - depths.base_front_table, 2);
    expect([cover.foremost.part, cover.rearmost.part]).toEqual(['base-front', 'base-back']);
  });

  it.each(shots)('reads the ruler of $file where it is focused', ({camera, scene, depths_from_lens_mm, ...shot}) => {
    const [mark] = shot.ruler_marks_px;
    if (!mark) throw new Error('no marks');
    const tilt = camera.tilt_down_deg;
    const focused = mark.mark_mm + axialToRuler(depths_from_lens_mm.focus_plane - mark.depth_from_lens_mm, tilt);
    expect(focused).toBeCloseTo(scene.ruler.mark_mm_of.focus_plane, 1);
    for (const other of shot.ruler_marks_px) {
      expect(rulerToAxial(other.mark_mm - mark.mark_mm, tilt))
        .toBeCloseTo(other.depth_from_lens_mm - mark.depth_from_lens_mm, 2);
    }
  });

  it('finds the same thickness of ruler in all of them: what lies higher is nearer', () => {
    const heights = shots.map(({camera, scene, depths_from_lens_mm: depths}) => {
      const {base_front, focus_plane} = scene.ruler.mark_mm_of;
      // Axial depth falls by sinθ a millimetre of height.
      const perMm = axialDepth(0, 0, camera.tilt_down_deg) - axialDepth(0, 1, camera.tilt_down_deg);
      const lower = rulerToAxial(focus_plane - base_front, camera.tilt_down_deg);
      return (lower - (depths.focus_plane - depths.base_front_table)) / perMm;
    });
    for (const height of heights) expect(height).toBeCloseTo(1.2, 1);
  });
});

describe('the depth of an outline', () => {
  it('is the base with its overhangs when the camera is level', () => {
    fc.assert(fc.property(anyOutline, (outline) => {
      const {front, back, spread} = depthToCover(outline, 0);
      expectSame(spread, outline.baseDepth + (outline.overhangFront ?? 0) + (outline.overhangBack ?? 0));
      expectSame(-front, outline.overhangFront ?? 0);
      expectSame(back - front, spread);
    }));
  });

  it('spans all its points, whichever way the camera looks', () => {
    fc.assert(fc.property(anyOutline, anyTilt, (outline, tilt) => {
      // A second road without the rotation: distances from a camera so far away that depth is all they show.
      const [far, angle] = [1e8, tilt * Math.PI / 180];
      const camera = {y: -far * Math.cos(angle), z: far * Math.sin(angle)};
      const depths = outlinePoints(outline).map(({y, z}) => Math.hypot(y - camera.y, z - camera.z) - far);
      const {front, back} = depthToCover(outline, tilt);
      expect(Math.abs(Math.min(...depths) - front)).toBeLessThan(0.001);
      expect(Math.abs(Math.max(...depths) - back)).toBeLessThan(0.001);
    }));
  });

  it('names the tall part that comes forward when the camera looks down', () => {
    const bearer: Outline = {baseDepth: 60, height: 90, overhangBack: 12, overhangBackHeight: 5}; // invented
    expect(depthToCover(bearer, 0).foremost.part).toBe('base-front');
    const down = depthToCover(bearer, 30);
    expect(down.foremost).toEqual({part: 'top', y: 30, z: 90});
    // 30 degrees: half of the height, and 0.866 of the depth. By hand: 30 · 0.8660 − 45 = −19.02.
    expect(down.front).toBeCloseTo(-19.019, 3);
    expect(down.rearmost.part).toBe('overhang-back');
    expect(down.back).toBeCloseTo(59.854, 3); // 72 · 0.8660 − 2.5
  });

  it('sends the tall part back when the camera looks up', () => {
    expect(depthToCover({baseDepth: 40, height: 120}, -20).rearmost.part).toBe('top');
  });

  it('takes the top where it stands and any further point', () => {
    expect(depthToCover({baseDepth: 40, height: 100, topBehind: 5}, 45).front)
      .toBeLessThan(depthToCover({baseDepth: 40, height: 100}, 45).front);
    const spear = depthToCover({baseDepth: 40, points: [{y: -70, z: 30}]}, 0);
    expect(spear.foremost).toEqual({part: 'point', y: -70, z: 30});
  });

  it('gives a tie to the base, which can be seen', () => {
    const cover = depthToCover({baseDepth: 40, overhangFrontHeight: 50, overhangBackHeight: 50}, 0);
    expect([cover.foremost.part, cover.rearmost.part]).toEqual(['base-front', 'base-back']);
    expect(Object.is(cover.front, 0)).toBe(true);
  });

  it.each([
    ['base-depth', {baseDepth: 0}], ['base-depth', {baseDepth: NaN}],
    ['overhang-front', {baseDepth: 40, overhangFront: -1}], ['overhang-back', {baseDepth: 40, overhangBack: Infinity}],
    ['overhang-front-height', {baseDepth: 40, overhangFrontHeight: -2}],
    ['overhang-back-height', {baseDepth: 40, overhangBackHeight: NaN}],
    ['height', {baseDepth: 40, height: -1}], ['top-behind', {baseDepth: 40, topBehind: NaN}],
    ['points', {baseDepth: 40, points: [{y: 1, z: NaN}]}],
  ])('refuses a %s that cannot be: %o', (parameter, outline) => {
    expect(() => depthToCover(outline, 0)).toThrow(expect.objectContaining({name: 'Problem', parameter}));
  });

  it.each([90, -86, NaN])('refuses a tilt of %s', (tilt) => {
    expect(() => depthToCover({baseDepth: 40}, tilt)).toThrow(expect.objectContaining({parameter: 'tilt'}));
  });
});

describe('axis and ruler', () => {
  it('are one when the camera is level', () => {
    fc.assert(fc.property(between(-300, 300), (length) => {
      expect(axialToRuler(length, 0)).toBeCloseTo(length, 12);
      expect(rulerToAxial(length, 0)).toBeCloseTo(length, 12);
    }));
  });

  it('lead there and back, the ruler never the shorter', () => {
    fc.assert(fc.property(between(-300, 300), anyTilt, (length, tilt) => {
      expect(axialToRuler(rulerToAxial(length, tilt), tilt)).toBeCloseTo(length, 9);
      expect(Math.abs(axialToRuler(length, tilt))).toBeGreaterThanOrEqual(Math.abs(length));
    }));
  });

  it('doubles on the ruler at 60 degrees', () => {
    expect(axialToRuler(10, 60)).toBeCloseTo(20, 9); // cos 60° = ½
  });
});
