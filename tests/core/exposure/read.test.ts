import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {readAperture, readCorrection, readIso} from '../../../src/core/exposure/read.js';
import {Problem} from '../../../src/core/problem.js';

describe('an f-number', () => {
  // Exact f-numbers behind printed ones: 2^(k/6), see the published series in clicks.test.ts.
  it.each([
    ['f/8', 8], ['F8', 8], ['f 8', 8], ['ƒ/8', 8], ['f:8', 8], ['f=8', 8], ['8', 8], [' f / 8 ', 8], ['f⁄8', 8],
    ['5,6', 2 ** 2.5], ['f/5.6', 2 ** 2.5], ['f5,6', 2 ** 2.5], ['1:2.8', 2 ** 1.5], ['f/8.0', 8], ['f/11.0', 2 ** 3.5],
    ['aperture f/22', 2 ** 4.5], ['Aperture: 22', 2 ** 4.5], ['f-number 4', 4], ['f-stop: 16', 16],
    ['f/1.78', 1.78], ['f/3.4', 3.4], ['.95', 0.95], ['f/0.95', 0.95], ['f/11.31', 11.31],
  ])('%s', (text, value) => {
    expect(readAperture(text)).toMatchObject({value: expect.closeTo(value, 12), how: 'f-number', text: text.trim()});
  });

  it.each(['', 'f/', 'f/0', 'T2', 'eleven', 'f/8 1/60', '-8', 'f/1e3', 'f/5000', '8 mm', '5,6,7'])(
    'says what would do instead of “%s”', (text) => {
      expect(readAperture(text)).toEqual(new Problem('aperture', text, 'an f-number such as f/8 or 5.6'));
    });

  test('f/13 carries the half stop printed alike, a sixth of a stop darker; a half-stop dial takes it first', () => {
    expect(readAperture('f/13')).toMatchObject({
      value: 2 ** (22 / 6), others: expect.arrayContaining([
        {value: 2 ** (15 / 4), how: 'other-click', stops: expect.closeTo(-1 / 6, 9)}]),
    });
    expect(readAperture('f/13', 2)).toMatchObject({value: 2 ** (15 / 4)});
  });

  test('f/56 may be f/5.6 with its point left out, f/57 may not', () => {
    expect(readAperture('f/56')).toMatchObject({value: 56, others: [{value: 2 ** 2.5, how: 'point-lost'}]});
    expect(readAperture('f/64')).toMatchObject({value: 64, others: []});
  });
});

describe('an ISO speed', () => {
  it.each([
    ['100', 100], ['ISO 100', 100], ['ISO100', 100], ['iso: 400', 400], ['100 ISO', 100], ['ASA 100', 100],
    ['ISO 100/21°', 100], ['100/21°', 100], ['1600', 1600], ['1,600', 1600], ['1 600', 1600], ['1.600', 1600],
    ['12.8k', 12800], ['12,8K', 12800], ['409,600', 409600],
    ['125', 100 * 2 ** (1 / 3)], ['ISO 320', 100 * 2 ** (5 / 3)], ['1328', 1328],
  ])('%s', (text, value) => {
    expect(readIso(text)).toMatchObject({value: expect.closeTo(value, 9), how: 'iso', text});
  });

  it.each(['', 'auto', 'ISO', '0', '-100', 'f/8', '1e5', '100000000', '100 20'])(
    'says what would do instead of “%s”', (text) => {
      expect(readIso(text)).toEqual(new Problem('iso', text, 'an ISO speed such as 100'));
    });
});

describe('a correction', () => {
  it.each([
    ['+2', 2], ['2', 2], ['-1 1/3', -4 / 3], ['−2/3', -2 / 3], ['–2/3', -2 / 3], ['2/3', 2 / 3], ['+1⅓', 4 / 3],
    ['+0,7', 2 / 3], ['1.3', 4 / 3], ['-0.3', -1 / 3], ['0.33', 1 / 3], ['0.67', 2 / 3], ['+1.7', 5 / 3],
    ['0.5', 0.5], ['1/2', 0.5], ['0.34', 0.34], ['1.03', 1.03], ['+1 stop', 1], ['2 stops', 2], ['1 EV', 1],
    ['+ 1/3', 1 / 3],
    ['2 stops under', -2], ['2/3 under', -2 / 3], ['1 over', 1], ['1 stop brighter', 1], ['-1 under', -1],
    ['1 1/3 IL', 4 / 3], ['−1 Blende', -1], ['2 Blendenstufen', 2], ['-2/3 paso', -2 / 3], ['+0,7 EV', 2 / 3], // as German, French, Spanish and Polish have it
    ['2/3 de paso', 2 / 3], ['-1/3 de paso', -1 / 3], ['1/3 d\'IL', 1 / 3], ['+1/3 d’IL', 1 / 3], ['1,5 pasos', 1.5], // a part of one, as Spanish and French have it
    ['±0', 0], ['0', 0], ['-0', 0],
  ])('%s', (text, stops) => {
    expect(readCorrection(text)).toBeCloseTo(stops, 12);
  });

  test('nothing is 0, never -0', () => {
    for (const text of ['-0', '−0.0', '0 under']) expect(Object.is(readCorrection(text), 0), text).toBe(true);
  });

  it.each(['', '+', 'x', '--2', '1/0', '2 f', '99', '1e1', 'stops', '+1/60 s', '2 de', 'de paso', '2 d’'])(
    'says what would do instead of “%s”', (text) => {
      expect(readCorrection(text)).toEqual(new Problem('correction', text, 'a number of stops such as +1 1/3'));
    });
});

test('no text makes a reader throw or give what is not a number above 0', () => {
  const pieces = fc.constantFrom('f', '/', '8', '5', '0', '.', ',', ' ', 'iso', 'k', '°', '-', '+', '½', 'stop', 'under');
  fc.assert(fc.property(fc.oneof(fc.string({maxLength: 80}), fc.array(pieces, {maxLength: 9}).map((all) => all.join(''))),
    (text) => {
      for (const reading of [readAperture(text), readIso(text)]) {
        if (!(reading instanceof Problem)) expect(reading.value > 0 && Number.isFinite(reading.value)).toBe(true);
      }
      const stops = readCorrection(text);
      if (!(stops instanceof Problem)) expect(Number.isFinite(stops) && !Object.is(stops, -0)).toBe(true);
    }), {numRuns: 500});
});

test('a pasted page is a problem, not a wait', () => {
  const page = `f${' '.repeat(200_000)}x`;
  for (const read of [readAperture, readIso, readCorrection]) expect(read(page)).toBeInstanceOf(Problem);
});
