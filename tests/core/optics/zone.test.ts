import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {blurDisc} from '../../../src/core/optics/blur.js';
import {magnificationFromPupil} from '../../../src/core/optics/lens.js';
import type {LensSetup} from '../../../src/core/optics/lens.js';
import {limitShare, sharpZone} from '../../../src/core/optics/zone.js';
import {input, published, publishedValue} from '../../reference/published.js';
import type {PublishedValue} from '../../reference/published.js';
import {anyLens, anyLimit, between, expectSame} from './arbitrary.js';

const lensOf = (record: PublishedValue): LensSetup =>
  ({focalLength: input(record, 'f'), aperture: input(record, 'N'), magnification: input(record, 'm')});

/** A simple lens focused at a distance from itself, in whatever unit both are given. */
const focusedAt = (focalLength: number, aperture: number, distance: number): LensSetup =>
  ({focalLength, aperture, magnification: magnificationFromPupil(distance, focalLength)});

function expectPublished(record: PublishedValue, actual: number): void {
  expect(Math.abs(actual - Number(record.expected.value)), `${record.id}: ${actual}`)
    .toBeLessThanOrEqual(Number(record.tolerance));
}

// Sources: Jacobson's lens tutorial, Wikipedia (Circle of confusion, Depth of field), NAVEDTRA 14209, Kodak AA-26,
// named in each record of dof.json. Left out: the two at half the hyperfocal distance, which fail their own formula,
// and those of SS0511 at 15 ft, which leave out f (reading trap 1 of tests/reference).
describe('the sharp zone against published values', () => {
  const closeUps = published('dof').filter(({id}) => /^closeup-(front|rear|total)-/.test(id));

  it('has close-ups to check', () => expect(closeUps.length).toBeGreaterThan(9));

  it.each(closeUps)('agrees with $id', (record) => {
    const {near, far} = sharpZone(lensOf(record), input(record, 'c'));
    const part: Record<string, number> = {front: near, rear: far, total: near + far};
    expectPublished(record, part[record.id.split('-')[1] as string] as number);
  });

  it('agrees with the limits that the shortcut without f gets wrong', () => {
    const lens = focusedAt(60, 16, 360);
    const {near, far} = sharpZone(lens, 0.03);
    expectPublished(publishedValue('dof', 'trap-exact-near'), 360 - near);
    expectPublished(publishedValue('dof', 'trap-exact-far'), 360 + far);
    expectPublished(publishedValue('dof', 'trap-exact-total'), near + far);
  });

  it('divides before and behind as published', () => {
    const record = publishedValue('dof', 'split-ratio-m01');
    const {near, far} = sharpZone(lensOf(record), input(record, 'c'));
    expectPublished(record, near / far);
  });

  it('agrees with a limit set by the angle a blur may have at the subject', () => {
    const near = publishedValue('dof', 'kodak-near-6m');
    const lens = focusedAt(0.05, 8, input(near, 'u'));
    const limit = lens.magnification * input(near, 'u') * Math.tan(input(near, 'theta') * Math.PI / 180);
    const zone = sharpZone(lens, limit);
    expectPublished(near, zone.near);
    expectPublished(publishedValue('dof', 'kodak-far-6m'), zone.far);
  });

  it('agrees with the 155 mm lens at ten feet, in inches', () => {
    const lens = focusedAt(6.1, 2.8, 120);
    const {near, far} = sharpZone(lens, 0.002);
    expectPublished(publishedValue('dof', 'navy-near-10ft'), (120 - near) / 12);
    expectPublished(publishedValue('dof', 'navy-far-10ft'), (120 + far) / 12);
  });

  it('reaches half-way back and without end when focused at the hyperfocal distance', () => {
    const record = publishedValue('dof', 'hyper-50-f8-near');
    const distance = input(record, 's');
    expectPublished(record, distance - sharpZone(focusedAt(50, 8, distance), 0.03).near);
    for (const hyper of published('dof').filter(({id}) => /^hyper-f/.test(id))) {
      const at = (share: number): LensSetup =>
        focusedAt(input(hyper, 'f'), input(hyper, 'N'), Number(hyper.expected.value) * share);
      expect(sharpZone(at(1.000001), input(hyper, 'c')).far, hyper.id).toBe(Infinity);
      expect(sharpZone(at(0.999999), input(hyper, 'c')).far, hyper.id).toBeLessThan(Infinity);
    }
  });

  // The symmetrical close-up form is the limit for a zone short against the distance: a very long lens shows it.
  it.each(published('dof').filter(({id}) => id.startsWith('closeup-pupil-')))('tends to $id', (record) => {
    const lens = {...lensOf({...record, inputs: {...record.inputs, f: {value: 1e6, unit: 'mm'}}}),
      pupilRatio: input(record, 'P')};
    const {near, far} = sharpZone(lens, input(record, 'c'));
    expectPublished(record, near + far);
  });
});

describe('the laws of the sharp zone', () => {
  it('has the limit as its blur at both edges', () => {
    fc.assert(fc.property(anyLens, anyLimit, (lens, limit) => {
      const {near, far} = sharpZone(lens, limit);
      expectSame(blurDisc(lens, -near), limit);
      if (far < 1e9) expectSame(blurDisc(lens, far), limit, 1e-6);
      else expect(blurDisc(lens, 1e6)).toBeLessThan(limit * 1.01);
    }));
  });

  it('is never shortened by stopping down or by a more generous limit', () => {
    // Less than a ten-thousandth more is lost in rounding where the zone all but reaches the horizon.
    fc.assert(fc.property(anyLens, anyLimit, between(1.0001, 4), (lens, limit, more) => {
      const zone = sharpZone(lens, limit);
      for (const wider of [sharpZone({...lens, aperture: lens.aperture * more}, limit), sharpZone(lens, limit * more)]) {
        expect(wider.near).toBeGreaterThanOrEqual(zone.near);
        expect(wider.far).toBeGreaterThanOrEqual(zone.far);
      }
    }));
  });

  it('hardly changes with a longer lens at the same magnification', () => {
    fc.assert(fc.property(anyLens, anyLimit, between(1, 5), (lens, limit, times) => {
      fc.pre(limitShare(lens, limit) < 0.1); // a zone short against the distance, as on a table
      const [one, other] = [sharpZone(lens, limit), sharpZone({...lens, focalLength: lens.focalLength * times}, limit)];
      expectSame(other.near + other.far, one.near + one.far, 0.0102); // the far limit's pull, 0.1²
    }));
  });

  it('is longer behind than before', () => {
    fc.assert(fc.property(anyLens, anyLimit, (lens, limit) => {
      const {near, far} = sharpZone(lens, limit);
      expect(far).toBeGreaterThan(near);
    }));
  });
});

describe('the edges of the sharp zone', () => {
  const lens = {focalLength: 60, aperture: 8, magnification: 0.2};

  it('has no far limit once the blur can never reach it', () => {
    expect(sharpZone(lens, 1.5).far).toBe(Infinity); // the horizon's disc: 0.2 · 60 / 8 = 1.5 mm
    expect(sharpZone(lens, 1.4999).far).toBeGreaterThan(1e6);
    expect(sharpZone(lens, 1.4999).far).toBeLessThan(Infinity);
    expect(sharpZone(lens, 5).near).toBeLessThan(360); // never as near as the lens itself
  });

  it.each([0, -0.02, NaN, Infinity])('refuses a limit of %s by name', (bad) => {
    expect(() => sharpZone(lens, bad)).toThrow(expect.objectContaining({name: 'Problem', parameter: 'blur-limit'}));
  });
});
