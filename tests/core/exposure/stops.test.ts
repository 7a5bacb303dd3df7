import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {
  afterStops, apertureStops, depthStops, exposureStops, exposureValue, exposureValue100, isoStops, lightStops,
  SETTINGS, shutterStops,
} from '../../../src/core/exposure/stops.js';
import {exactFromNominal} from '../../../src/core/exposure/clicks.js';
import {readShutter} from '../../../src/core/exposure/read-shutter.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published} from '../../reference/published.js';

const aperture = fc.double({min: 0.7, max: 128, noNaN: true});
const shutter = fc.double({min: 1 / 32000, max: 4000, noNaN: true});
const iso = fc.double({min: 25, max: 409600, noNaN: true});
const exposure = fc.record({aperture, shutter, iso});

describe('against the APEX tables (encyclopedia article “APEX (photography)”, through a text that quotes it)', () => {
  const apex = published('apex').filter((record) => record.agrees);
  it.each(apex.filter(({id}) => id.startsWith('apex-av-')))('$id', (record) => {
    const av = apertureStops(input(record, 'N'), 1);
    expect(Math.abs(av - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance ?? 0);
  });
  it.each(apex.filter(({id}) => id.startsWith('apex-tv-')))('$id', (record) => {
    const tv = shutterStops(input(record, 't'), 1);
    expect(Math.abs(tv - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance ?? 0);
  });
  it.each(apex.filter(({id}) => id.startsWith('apex-sv-')))('$id, as stops above speed value 0 at 3.125', (record) => {
    expect(isoStops(3.125, input(record, 'S'))).toBeCloseTo(Number(record.expected.value), 9);
  });
  it.each(apex.filter(({id}) => /^ev(100)?-f/.test(id)))('$id', (record) => {
    const n = input(record, 'N'), t = input(record, 't');
    const ev = record.inputs['S'] ? exposureValue100({aperture: n, shutter: t, iso: input(record, 'S')})
      : exposureValue({aperture: n, shutter: t});
    expect(Math.abs(ev - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance ?? 0);
  });
  it.each(apex.filter(({id}) => id.startsWith('ev-grid-')))('$id: printed numbers, taken as clicks, give whole Ev', (record) => {
    const times = record.inputs['tNominal']?.value as unknown as readonly string[];
    const evs = times.map((text) => {
      const read = readShutter(text.includes('/') ? text : `${text} s`);
      if (read instanceof Problem) throw read;
      return exposureValue({aperture: exactFromNominal('aperture', input(record, 'N')), shutter: read.value});
    });
    const expected = record.expected.value as readonly number[];
    // On exact clicks nothing of the printed table's 0.19 Ev of slack is needed.
    evs.forEach((ev, at) => expect(ev).toBeCloseTo(expected[at] as number, 9));
  });
});

test('brighter is positive for each setting, and depth runs the other way', () => {
  expect(apertureStops(8, 4)).toBe(2);
  expect(shutterStops(1 / 4, 1)).toBe(2);
  expect(isoStops(100, 400)).toBe(2);
  expect(depthStops(8, 16)).toBe(2);
});

test('stops add up along any way from one exposure to another, and back is the opposite', () => {
  fc.assert(fc.property(exposure, exposure, exposure, (one, two, three) => {
    expect(exposureStops(one, two) + exposureStops(two, three)).toBeCloseTo(exposureStops(one, three), 9);
    expect(exposureStops(two, one)).toBeCloseTo(-exposureStops(one, two), 9);
  }));
});

test('two exposures balance exactly when their Ev at ISO 100 agree', () => {
  fc.assert(fc.property(exposure, exposure, (one, two) => {
    expect(exposureValue100(one) - exposureValue100(two)).toBeCloseTo(exposureStops(one, two), 9);
  }));
});

test('a setting moved by some stops is that many stops away', () => {
  const stops = fc.double({min: -9, max: 9, noNaN: true});
  fc.assert(fc.property(fc.constantFrom(...SETTINGS), iso, stops, (setting, from, by) => {
    expect(lightStops(setting, from, afterStops(setting, from, by))).toBeCloseTo(by, 9);
  }));
});

test('no light gained or lost is 0, never -0', () => {
  expect(Object.is(apertureStops(8, 8), 0)).toBe(true);
  expect(Object.is(depthStops(8, 8), 0)).toBe(true);
});

it.each([0, -8, NaN, Infinity])('refuses %s by the name of the setting', (bad) => {
  expect(() => apertureStops(8, bad)).toThrow(new Problem('aperture', bad, 'a number above 0'));
  expect(() => shutterStops(bad, 1)).toThrow(new Problem('shutter', bad, 'a number above 0'));
  expect(() => exposureStops({aperture: 8, shutter: 1, iso: bad}, {aperture: 8, shutter: 1, iso: 100}))
    .toThrow(new Problem('iso', bad, 'a number above 0'));
  expect(() => afterStops('aperture', bad, 1)).toThrow(Problem);
});

test('more stops than lie between any two exposures are refused by name', () => {
  for (const far of [901, -901, Infinity, NaN]) {
    expect(() => afterStops('iso', 100, far)).toThrow(expect.objectContaining({name: 'Problem', parameter: 'stops'}));
  }
});
