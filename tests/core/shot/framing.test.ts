import {describe, expect, it} from 'vitest';
import {blurInPixels} from '../../../src/core/optics/blur.js';
import {zoneFit} from '../../../src/core/optics/fit.js';
import {diffractionInPixels, framingOf, outlineOf} from '../../../src/core/shot/framing.js';
import {completeShot} from '../../../src/core/shot/shot.js';
import {Problem} from '../../../src/core/problem.js';
import {renderedShots} from '../optics/rendered.js';

describe('the framing of a shot', () => {
  /* Ground truth of the rendered pictures: a shot said in its terms has the renderer's magnification and depths. */
  it.each(renderedShots().filter(({file}) => !file.includes('crop')).map((shot) => [shot.file, shot] as const))(
    'is the one %s was rendered with', (_, {camera, scene, depths_from_lens_mm: depths}) => {
      const {mark_mm_of: marks} = scene.ruler;
      const [sensorWidth, sensorHeight] = camera.sensor_mm;
      const shot = completeShot({
        focalLength: camera.focal_length_mm, aperture: camera.f_number, sensorWidth, sensorHeight,
        fieldWidth: camera.field_width_at_focus_mm, frameWidth: camera.resolution_px[0],
        pictureWidth: camera.resolution_px[0], tilt: camera.tilt_down_deg, baseDepth: scene.base.depth_y,
        focus: marks.focus_plane - marks.base_front, figureHeight: 1e-6,
      });
      const {framing, picture, pixelsAcross} = framingOf(shot);
      expect(framing.lens.magnification).toBeCloseTo(camera.magnification, 5);
      expect(pixelsAcross).toBe(camera.resolution_px[0]);
      expect(picture.keptWidth).toBe(sensorWidth);
      const {focusDepth} = zoneFit(framing);
      // The blur of the base's front edge in the picture's own pixels, by the truth's formula and distances.
      const near = depths.base_front_table;
      const disc = camera.aperture_diameter_mm * Math.abs(near - camera.focus_distance_lens_mm) / near * camera.magnification;
      // 1 %: the ruler on which the focus plane is read is 1.2 mm thick, the base's front edge is at the table.
      expect(Math.abs(blurInPixels(framing.lens, -focusDepth, picture) / (disc / camera.pixel_pitch_mm) - 1)).toBeLessThan(0.01);
    });

  it('counts the crop, and only the crop, into what is kept', () => {
    const whole = completeShot({pictureWidth: 1000, blurLimit: 2});
    const half = {...whole, crop: {left: 0.3, top: 0.1, width: 0.5, height: 0.5}};
    expect(framingOf(half).pixelsAcross).toBe(3000);
    expect(framingOf(half).picture.keptWidth).toBe(18);
    // 2 of 1000 finished pixels across 36 mm, then across 18 mm.
    expect(framingOf(whole).framing.limit).toBeCloseTo(0.072, 12);
    expect(framingOf(half).framing.limit).toBeCloseTo(0.036, 12);
    expect(framingOf(half).framing.lens).toEqual(framingOf(whole).framing.lens);
  });

  it('says how wide diffraction draws a point in the finished picture', () => {
    // Far away, f/8, green light: a disc of 10.7 µm, as textbooks have it (from memory); 3600 pixels across 36 mm are 10 µm each.
    const far = completeShot({aperture: 8, fieldWidth: 1e6, pictureWidth: 3600});
    expect(diffractionInPixels(far)).toBeCloseTo(1.07, 2);
    expect(diffractionInPixels({...far, crop: {left: 0, top: 0, width: 0.5, height: 0.5}})).toBeCloseTo(2.15, 2);
    // Life size: half of the light's angle is left.
    expect(diffractionInPixels({...far, fieldWidth: 36})).toBeCloseTo(2.15, 2);
  });

  it('carries the whole figure', () => {
    expect(outlineOf(completeShot({
      baseDepth: 60, figureHeight: 90, overhangFront: 12, overhangFrontHeight: 70, overhangBack: 9, overhangBackHeight: 30,
    }))).toEqual({
      baseDepth: 60, height: 90, overhangFront: 12, overhangFrontHeight: 70, overhangBack: 9, overhangBackHeight: 30,
    });
  });

  it('names what cannot be framed', () => {
    expect(() => framingOf(completeShot({fieldWidth: 0}))).toThrow(new Problem('field-width', 0, 'a number above 0'));
  });
});
