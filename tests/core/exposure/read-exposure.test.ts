import fc from 'fast-check';
import {expect, it, test} from 'vitest';
import {readExposure} from '../../../src/core/exposure/read-exposure.js';

/** Pieces of the text each setting was read from, and what was left. */
function pieces(text: string) {
  const {unused, ...found} = readExposure(text);
  const used = Object.entries(found).map(([name, {start, end}]) => [name, text.slice(start, end)]);
  return {...Object.fromEntries(used), ...(unused.length ? {unused: unused.map((piece) => piece.text)} : {})};
}

// Lines as people note settings: invented, in the forms that are common practice.
it.each([
  ['f/2.8 1/6', {aperture: 'f/2.8', shutter: '1/6'}],
  ['f8, 0.3s, ISO 100', {aperture: 'f8', shutter: '0.3s', iso: 'ISO 100'}],
  ['1/25 f/8 +2', {shutter: '1/25', aperture: 'f/8', correction: '+2'}],
  ['f/8,1/60', {aperture: 'f/8', shutter: '1/60'}],
  ['f/8,0.3s', {aperture: 'f/8', shutter: '0.3s'}],
  ['f/5,6 0,6s', {aperture: 'f/5,6', shutter: '0,6s'}],
  ['f/5,6; 1/60; ISO 1,600', {aperture: 'f/5,6', shutter: '1/60', iso: 'ISO 1,600'}],
  ['8 1/60 100', {aperture: '8', shutter: '1/60', iso: '100'}],
  ['1/25 5.6', {shutter: '1/25', aperture: '5.6'}],
  ['f/8 25', {aperture: 'f/8', shutter: '25'}],
  ['f/11 0"6 iso100 2 stops under', {aperture: 'f/11', shutter: '0"6', iso: 'iso100', correction: '2 stops under'}],
  ['F8 30" -1 1/3', {aperture: 'F8', shutter: '30"', correction: '-1 1/3'}],
  ['f/5.6 −2/3 1/60', {aperture: 'f/5.6', shutter: '1/60', correction: '−2/3'}],
  ['f/8 - 1/60 - ISO 200', {aperture: 'f/8', shutter: '1/60', iso: 'ISO 200'}],
  ['f/16, 1 1/3 s', {aperture: 'f/16', shutter: '1 1/3 s'}],
  ['f/8 ½ s', {aperture: 'f/8', shutter: '½ s'}],
  ['f/22 1 min 4 s', {aperture: 'f/22', shutter: '1 min 4 s'}],
  ['f/8 for 2 seconds', {aperture: 'f/8', shutter: '2 seconds'}],
  ['100mm f/2.8 at 1/6 s', {aperture: 'f/2.8', shutter: '1/6 s', unused: ['100mm']}],
  ['f/8 f/11 1/60', {aperture: 'f/8', shutter: '1/60', unused: ['f/11']}],
  ['T2 1/4', {shutter: '1/4', unused: ['T2']}],
  ['f/8 1/60 ISO auto', {aperture: 'f/8', shutter: '1/60', unused: ['ISO', 'auto']}],
  ['the lantern, from the left', {unused: ['lantern', 'from', 'left']}],
  ['', {}],
])('%s', (text, expected) => {
  expect(pieces(text)).toEqual(expected);
});

test('each setting carries its reading: exact value, notation, other readings', () => {
  const {aperture, shutter, correction} = readExposure('1/25 f/8 +0.7');
  expect(aperture).toMatchObject({value: 8, how: 'f-number', start: 5, end: 8});
  expect(shutter).toMatchObject({value: 2 ** (-14 / 3), how: 'fraction', start: 0, end: 4});
  expect(correction).toMatchObject({value: expect.closeTo(2 / 3, 12), start: 9, end: 13});
});

test('a half-stop dial reads its own f/13 and 1/6', () => {
  expect(readExposure('f/13 1/6', 2)).toMatchObject({aperture: {value: 2 ** (15 / 4)}, shutter: {value: 2 ** (-5 / 2)}});
});

test('whatever the order and the separators, the same settings are found', () => {
  const parts = fc.shuffledSubarray(['f/5.6', '1/60', 'ISO 200', '+1 1/3'], {minLength: 4, maxLength: 4});
  fc.assert(fc.property(parts, fc.constantFrom(' ', ', ', '; ', ' | ', ' · '), (order, between) => {
    expect(pieces(order.join(between)))
      .toEqual({aperture: 'f/5.6', shutter: '1/60', iso: 'ISO 200', correction: '+1 1/3'});
  }));
});

test('no text makes it throw, and every place lies in the text', () => {
  const bits = fc.constantFrom('f/', 'f', '8', '1/60', '0"6', 's', ' ', ',', 'ISO', '100', '+', '-', '1', 'min', '½',
    'mm', 'İ');
  fc.assert(fc.property(fc.oneof(fc.string({maxLength: 60}), fc.array(bits, {maxLength: 12}).map((all) => all.join(''))),
    (text) => {
      const {unused, ...found} = readExposure(text);
      const places = [...unused, ...Object.values(found)];
      for (const {start, end, text: piece} of places) expect(text.slice(start, end).trim()).toBe(piece.trim());
      const sorted = places.sort((one, two) => one.start - two.start);
      sorted.forEach(({start}, at) => expect(start).toBeGreaterThanOrEqual(sorted[at - 1]?.end ?? 0));
    }), {numRuns: 500});
});

test('a pasted page is searched in its first thousand characters only', () => {
  const page = `f/8 ${'1'.repeat(5000)} 1/60`;
  expect(readExposure(page)).toMatchObject({aperture: {value: 8}});
  expect(readExposure(page).shutter).toBeUndefined();
});

test('a bare number past every dial is left over, however many digits it has', () => {
  for (const digits of [12, 400]) {
    const {shutter, unused} = readExposure(`1/60 ${'9'.repeat(digits)}`);
    expect(shutter?.nominal).toBeCloseTo(1 / 60, 9);
    expect(unused).toHaveLength(1);
  }
});
