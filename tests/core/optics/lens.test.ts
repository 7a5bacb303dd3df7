import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {
  airyDiameter, entrancePupil, fieldWidth, lightLoss, magnificationFromDistance, magnificationFromField,
  magnificationFromPupil, markedFromWorking, principalToSubject, pupilToSubject, sensorToSubject, viewAngle,
  workingAperture,
} from '../../../src/core/optics/lens.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published} from '../../reference/published.js';
import type {PublishedValue} from '../../reference/published.js';
import {anyLens, between, expectSame} from './arbitrary.js';
import {renderedShots} from './rendered.js';

/** Records of `topic` whose id begins so, without those that fail their own formula. */
const records = (topic: string, start: string): PublishedValue[] =>
  published(topic).filter((record) => record.id.startsWith(start) && record.agrees !== false);

function expectPublished(record: PublishedValue, actual: number): void {
  const off = Math.abs(actual - Number(record.expected.value));
  // The inputs are written with nine digits, so a third or a twelfth is off by a few 1e-9 of the answer.
  const allowed = Number(record.tolerance) + 1e-8 * Math.abs(Number(record.expected.value));
  expect(off, `${record.id}: ${actual}`).toBeLessThanOrEqual(allowed);
}

// Sources: NAVEDTRA 14209, SS0511, Hasluck, Jacobson's lens tutorial; each record of lens.json names its own.
describe('distances', () => {
  const conjugates = [...records('lens', 'conj-'), ...records('lens', 'dist-total-')];

  it('has published conjugates to check against', () => expect(conjugates.length).toBeGreaterThan(18));

  it.each(conjugates)('agrees with the published $id', (record) => {
    const [m, f] = [input(record, 'm'), input(record, 'f')];
    const subject = principalToSubject(m, f);
    const total = sensorToSubject(m, f);
    const byQuantity: Record<string, number> = {
      'object distance': subject, 'image distance': total - subject,
      'object-to-image distance': total, 'object-to-image distance (thin lens)': total,
    };
    expectPublished(record, byQuantity[record.quantity] as number);
  });

  it('takes the usable root: the published 0.5 and not 2', () => {
    const [record] = records('lens', 'mag-from-total');
    expectPublished(record as PublishedValue,
      magnificationFromDistance(input(record as PublishedValue, 'D'), input(record as PublishedValue, 'f')));
  });

  it('finds the magnification again from the tape measure', () => {
    fc.assert(fc.property(anyLens, between(-20, 40), ({magnification, focalLength}, gap) => {
      const found = magnificationFromDistance(sensorToSubject(magnification, focalLength, gap), focalLength, gap);
      // Near life size the distance hardly changes with m: half the digits are lost there.
      expectSame(found, magnification, 1e-6);
    }));
  });

  it('is life size at exactly four focal lengths and says so when nearer', () => {
    expect(magnificationFromDistance(240, 60)).toBe(1);
    expect(() => magnificationFromDistance(239, 60)).toThrow(
      new Problem('camera-distance', 239, 'at least 240 mm from the sensor mark, four focal lengths'));
    expect(() => magnificationFromDistance(250, 60, 20)).toThrow(Problem);
  });

  it.each([0, -400, NaN, Infinity])('refuses a camera distance of %s by name', (bad) => {
    expect(() => magnificationFromDistance(bad, 60)).toThrow(expect.objectContaining({parameter: 'camera-distance'}));
  });

  it('keeps the magnification of a far subject', () => {
    // Thin lens, far away: m → f / D; a 50 mm lens at 10 km.
    expectSame(magnificationFromDistance(1e7, 50), 5e-6, 2e-5);
  });

  it('measures from the pupil and back again', () => {
    fc.assert(fc.property(anyLens, (lens) => {
      expectSame(magnificationFromPupil(pupilToSubject(lens), lens.focalLength, lens.pupilRatio), lens.magnification);
    }));
    expect(() => magnificationFromPupil(50, 100, 2)).toThrow(expect.objectContaining({parameter: 'camera-distance'}));
  });

  it('has pupil and principal plane in one place when the pupils are alike', () => {
    fc.assert(fc.property(anyLens, ({focalLength, aperture, magnification}) => {
      expectSame(pupilToSubject({focalLength, aperture, magnification}), principalToSubject(magnification, focalLength));
    }));
  });
});

describe('magnification and pupil of the rendered shots', () => {
  // The crop of the far shot gives the field of the crop beside the sensor of the whole frame.
  const shots = renderedShots().filter(({file}) => file !== 'deep-far-crop.jpg');

  it('has them', () => expect(shots.length).toBeGreaterThan(19));

  it.each(shots)('agrees with the camera of $file', ({camera}) => {
    const m = magnificationFromField(camera.sensor_mm[0], camera.field_width_at_focus_mm);
    expectSame(m, camera.magnification, 1e-5);
    expectSame(fieldWidth(camera.sensor_mm[0], camera.magnification), camera.field_width_at_focus_mm, 1e-5);
    expectSame(magnificationFromDistance(camera.sensor_to_focus_plane_mm, camera.focal_length_mm), m, 1e-4);
    expectSame(sensorToSubject(m, camera.focal_length_mm), camera.sensor_to_focus_plane_mm, 1e-5);
    expectSame(entrancePupil(camera.focal_length_mm, camera.f_number), camera.aperture_diameter_mm, 1e-5);
    const lens = {focalLength: camera.focal_length_mm, aperture: camera.f_number, magnification: m};
    expectSame(pupilToSubject(lens), camera.focus_distance_lens_mm, 1e-5);
  });
});

// Sources: lens.json, each record names its own (Jacobson, SS0511, Focal Press, Brown).
describe('light in close-up', () => {
  it.each(records('lens', 'bellows-stops-'))('agrees with the published $id', (record) => {
    expectPublished(record, lightLoss(input(record, 'm')));
  });

  it.each(records('lens', 'neff-'))('agrees with the published $id', (record) => {
    expectPublished(record, workingAperture(input(record, 'N'), input(record, 'm'), input(record, 'P')));
  });

  it.each(records('lens', 'bef-').filter(({inputs}) => 'v' in inputs))('agrees with the published $id', (record) => {
    expectPublished(record, 2 ** lightLoss(input(record, 'v') / input(record, 'f') - 1));
  });

  it.each(records('lens', 'bef-').filter(({inputs}) => 'N' in inputs))('agrees with the published $id', (record) => {
    expectPublished(record, markedFromWorking(input(record, 'N'), input(record, 'm')));
  });

  it('costs two stops at life size, four times the exposure', () => {
    const [record] = records('lens', 'bef-m1').filter(({id}) => id === 'bef-m1');
    expectPublished(record as PublishedValue, 2 ** lightLoss(1));
  });

  it('goes from marked to working and back', () => {
    fc.assert(fc.property(anyLens, ({aperture, magnification, pupilRatio}) => {
      const working = workingAperture(aperture, magnification, pupilRatio);
      expectSame(markedFromWorking(working, magnification, pupilRatio), aperture);
    }));
  });

  it('loses nothing at infinity', () => {
    expect(lightLoss(0)).toBe(0);
    expect(workingAperture(8, 0, 0.5)).toBe(8);
  });
});

// Sources: diffraction.json (common optics texts; Airy).
describe('the Airy disc', () => {
  it.each(records('diffraction', 'airy-550-'))('agrees with the published $id', (record) => {
    expectPublished(record, airyDiameter(input(record, 'N'), input(record, 'lambda') * 1e-6) * 1000);
  });

  it.each(records('diffraction', 'airy-eff-'))('agrees with the published $id', (record) => {
    expectPublished(record, airyDiameter(workingAperture(input(record, 'N'), input(record, 'm'))) * 1000);
  });

  it('is twice the published Rayleigh distance', () => {
    const [record] = records('diffraction', 'rayleigh-f8');
    expectPublished(record as PublishedValue, airyDiameter(8) * 1000 / 2);
  });
});

// Source: Jacobson's lens tutorial, through lens.json.
describe('the angle of view', () => {
  it.each(records('lens', 'fov-'))('agrees with the published $id', (record) => {
    const magnification = Math.max(input(record, 'M'), 1e-9);
    expectPublished(record, viewAngle({focalLength: input(record, 'f'), aperture: 8, magnification}, input(record, 'X')));
  });
});

describe('a lens that cannot be', () => {
  const lens = {focalLength: 60, aperture: 8, magnification: 0.2, pupilRatio: 1};

  it.each([
    ['focal-length', {...lens, focalLength: 0}], ['aperture', {...lens, aperture: -8}],
    ['magnification', {...lens, magnification: NaN}], ['pupil-ratio', {...lens, pupilRatio: Infinity}],
  ])('is refused by its %s', (parameter, bad) => {
    expect(() => pupilToSubject(bad)).toThrow(expect.objectContaining({name: 'Problem', parameter}));
  });

  it.each([[() => magnificationFromField(0, 100), 'sensor-width'], [() => fieldWidth(36, 0), 'magnification'],
    [() => entrancePupil(NaN, 8), 'focal-length'], [() => airyDiameter(0), 'aperture'],
    [() => lightLoss(-0.1), 'magnification'], [() => markedFromWorking(8, 0.2, 0), 'pupil-ratio'],
    [() => principalToSubject(0, 60), 'magnification']] as const)('is refused by %s: %s', (act, parameter) => {
    expect(act).toThrow(expect.objectContaining({name: 'Problem', parameter}));
  });
});

describe('what a lens cannot be', () => {
  it.each([
    ['sensor-width', () => magnificationFromField(0, 100)], ['field-width', () => magnificationFromField(36, 0)],
    ['sensor-width', () => fieldWidth(0, 0.3)], ['magnification', () => fieldWidth(36, 0)],
    ['focal-length', () => magnificationFromDistance(1000, 0)], ['focal-length', () => principalToSubject(0.3, 0)],
    ['focal-length', () => magnificationFromPupil(500, 0)], ['pupil-ratio', () => magnificationFromPupil(500, 60, 0)],
    ['aperture', () => workingAperture(0, 0.3)], ['aperture', () => markedFromWorking(0, 0.3)],
    ['aperture', () => airyDiameter(0)], ['wavelength', () => airyDiameter(8, 0)],
  ])('is named: %s', (parameter, act) => {
    expect(act).toThrow(new Problem(parameter, 0, 'a number above 0'));
  });

  it('is told with the nearest it can be: four focal lengths and the gap, or the focal length over the pupil ratio', () => {
    // By hand: 4 · 60 + 5 = 245; 60 / 2 = 30.
    expect(() => magnificationFromDistance(200, 60, 5)).toThrow(new Problem('camera-distance', 200, 'at least 245 mm from the sensor mark, four focal lengths'));
    expect(magnificationFromDistance(240, 60)).toBeCloseTo(1, 5);
    expect(() => magnificationFromPupil(20, 60, 2)).toThrow(new Problem('camera-distance', 20, 'more than 30 mm from the entrance pupil'));
  });
});
