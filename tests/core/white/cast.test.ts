import Color from 'colorjs.io';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import {castOf, chromaticity, colourTemperature, glowingBodyUv, mired, PICTURE_WHITE} from '../../../src/core/white/cast.js';
import type {Chromaticity} from '../../../src/core/white/cast.js';
import {input, published, publishedValue} from '../../reference/published.js';
import type {PublishedValue} from '../../reference/published.js';
import {truthOf} from '../../reference/shots/picture.js';

/** Pairs stand in the records as arrays. */
const pair = (value: unknown): readonly [number, number] => value as [number, number];
const expected = (record: PublishedValue): readonly [number, number] => pair(record.expected.value);
const at = ([x, y]: readonly [number, number]): Chromaticity => ({x, y});

/** CIE 1960 to 1931. */
const fromUv = ([u, v]: readonly [number, number]): Chromaticity =>
  ({x: 3 * u / (2 * u - 8 * v + 4), y: 2 * v / (2 * u - 8 * v + 4)});

describe('chromaticity', () => {
  it('agrees with an independent colour library: colorjs.io', () => {
    const light = fc.double({min: 0.001, max: 2, noNaN: true});
    fc.assert(fc.property(light, light, light, (red, green, blue) => {
      const [X, Y, Z] = new Color('srgb-linear', [red, green, blue]).to('xyz-d65').coords as [number, number, number];
      const {x, y} = chromaticity(red, green, blue);
      // The standard prints its matrix to four digits, the library carries more.
      expect(x).toBeCloseTo(X / (X + Y + Z), 3);
      expect(y).toBeCloseTo(Y / (X + Y + Z), 3);
    }));
  });

  it('of equal channels is the picture’s white', () => {
    const {x, y} = chromaticity(0.18, 0.18, 0.18);
    expect(x).toBeCloseTo(PICTURE_WHITE.x, 4);
    expect(y).toBeCloseTo(PICTURE_WHITE.y, 4);
  });

  it('does not hang on brightness', () => {
    const [dark, bright] = [chromaticity(0.02, 0.01, 0.004), chromaticity(0.8, 0.4, 0.16)];
    expect(dark.x).toBeCloseTo(bright.x, 12);
    expect(dark.y).toBeCloseTo(bright.y, 12);
  });

  it.each([[0, 0, 0], [-1, 1, 1], [NaN, 1, 1], [Infinity, 1, 1]] as const)('refuses %d %d %d', (red, green, blue) => {
    expect(() => chromaticity(red, green, blue)).toThrow(Problem);
  });
});

describe('colour temperature', () => {
  // CIE illuminants: chromaticity from a colour library's tables after CIE 15, temperature of the D series from its definition.
  it.each(['ill-A', 'ill-D50', 'ill-D55', 'ill-D75'])('of %s', (id) => {
    const record = publishedValue('white', id);
    const found = colourTemperature(at(expected(record)));
    // Daylight lies off the locus, where definitions of "nearest" differ by a few kelvin: half a per cent.
    expect(Math.abs(found!.kelvin / input(record, 'T') - 1)).toBeLessThan(0.005);
  });

  const lamps = published('white').filter(({id, agrees}) => agrees && /^ill-(FL|LED)/.test(id));
  it.each(lamps.map(({id}) => id))('of lamp %s as listed', (id) => {
    const record = publishedValue('white', id);
    const found = colourTemperature(at(pair(record.inputs.xy!.value)));
    expect(Math.abs(found!.kelvin - input(record, 'listedCCT'))).toBeLessThan(record.tolerance!);
  });

  it.each(['kim-xy-2222', 'kim-xy-2856', 'kim-xy-4000', 'kim-xy-5500'])('of a glowing body by another fit: %s', (id) => {
    const record = publishedValue('white', id);
    const found = colourTemperature(at(expected(record)));
    expect(Math.abs(found!.kelvin / input(record, 'T') - 1)).toBeLessThan(0.005);
    expect(Math.abs(found!.duv)).toBeLessThan(0.0005);
  });

  it('and distance from the locus as published with Ohno’s method', () => {
    const record = publishedValue('white', 'ohno');
    const found = colourTemperature(fromUv(pair(record.inputs.uv!.value)));
    // The fitted locus is off by up to 8e-5, which at this place is some 10 K.
    expect(Math.abs(found!.kelvin - expected(record)[0])).toBeLessThan(10);
    expect(Math.abs(found!.duv - expected(record)[1])).toBeLessThan(1e-4);
  });

  it('locus as integrated from Planck’s law', () => {
    const record = publishedValue('white', 'planck-uv-6504');
    glowingBodyUv(input(record, 'T')).forEach((value, axis) =>
      expect(Math.abs(value - expected(record)[axis as 0 | 1])).toBeLessThan(record.tolerance!));
  });

  it('comes back from the locus', () => {
    fc.assert(fc.property(fc.double({min: 1200, max: 13000, noNaN: true}), (kelvin) => {
      const found = colourTemperature(fromUv(glowingBodyUv(kelvin)));
      expect(found!.kelvin / kelvin).toBeCloseTo(1, 5);
      expect(Math.abs(found!.duv)).toBeLessThan(1e-7);
    }));
  });

  it.each([
    ['a saturated green', chromaticity(0, 1, 0)], ['a saturated blue', chromaticity(0, 0, 1)], ['a saturated red', chromaticity(1, 0, 0)],
  ] as const)('means nothing for %s', (_, colour) => {
    expect(colourTemperature(colour)).toBeUndefined();
  });

  it.each([999, 15001, NaN])('no locus at %d K', (kelvin) => {
    expect(() => glowingBodyUv(kelvin)).toThrow(new Problem('colour-temperature', kelvin, 'a number from 1000 to 15000'));
  });
});

describe('mireds', () => {
  it.each(['mired-25000', 'mired-5500', 'mired-3600', 'mired-6500'])('%s as published', (id) => {
    const record = publishedValue('white', id);
    expect(Math.abs(mired(input(record, 'T')) - (record.expected.value as number))).toBeLessThan(record.tolerance!);
  });

  it.each(['mired-shift-3200-5700', 'mired-shift-3200-5500'])('%s as published', (id) => {
    const record = publishedValue('white', id);
    const shift = mired(input(record, 'T2')) - mired(input(record, 'T1'));
    expect(Math.abs(shift - (record.expected.value as number))).toBeLessThan(record.tolerance!);
  });

  it.each([0, -1, NaN])('refuse %d K', (kelvin) => {
    expect(() => mired(kelvin)).toThrow(new Problem('colour-temperature', kelvin, 'a number above 0'));
  });
});

describe('the cast of a gray patch', () => {
  it('is none for gray', () => {
    expect(castOf(0.18, 0.18, 0.18)).toMatchObject({warmth: 0, greenness: 0, warmer: undefined, greener: undefined});
    expect(castOf(0.18, 0.18, 0.18).miredShift).toBeCloseTo(0, 0);
  });

  it.each([
    {light: [0.3, 0.18, 0.1], warmer: 'warmer'}, {light: [0.1, 0.18, 0.3], warmer: 'cooler'},
    {light: [0.18, 0.21, 0.18], greener: 'greener'}, {light: [0.18, 0.15, 0.18], greener: 'pinker'},
  ])('$light is $warmer $greener', ({light: [red, green, blue], warmer, greener}) => {
    const cast = castOf(red!, green!, blue!);
    if (warmer) expect(cast.warmer).toBe(warmer);
    if (greener) expect(cast.greener).toBe(greener);
  });

  it('turns its sign when red and blue change places, and does not hang on exposure', () => {
    const light = fc.double({min: 0.01, max: 1, noNaN: true});
    fc.assert(fc.property(light, light, light, fc.double({min: 0.1, max: 10, noNaN: true}), (red, green, blue, factor) => {
      const cast = castOf(red, green, blue);
      expect(castOf(blue, green, red).warmth).toBeCloseTo(-cast.warmth, 9);
      expect(castOf(red * factor, green * factor, blue * factor).warmth).toBeCloseTo(cast.warmth, 9);
      expect(castOf(red * factor, green * factor, blue * factor).greenness).toBeCloseTo(cast.greenness, 9);
    }));
  });

  it('of the rendered warm lamps is their colour’s', () => {
    const [red, green, blue] = truthOf('card-warm').lights.key!.linear_rgb;
    const {warmer, temperature, miredShift} = castOf(red, green, blue);
    // colorjs.io, an independent library, and McCamy's cubic from memory: CCT = 449 n³ + 3525 n² + 6823.3 n + 5520.33.
    const [X, Y, Z] = new Color('srgb-linear', [red, green, blue]).to('xyz-d65').coords as [number, number, number];
    const n = (X / (X + Y + Z) - 0.332) / (0.1858 - Y / (X + Y + Z));
    const mcCamy = 449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33;
    expect(warmer).toBe('warmer');
    expect(Math.abs(temperature!.kelvin / mcCamy - 1)).toBeLessThan(0.01);
    expect(miredShift).toBeCloseTo(1e6 / mcCamy - 1e6 / 6504, -1);
  });

  it('has no mireds far from daylight and glow', () => {
    const cast = castOf(0.1, 0.5, 0.1);
    expect(cast).toMatchObject({greener: 'greener', temperature: undefined, miredShift: undefined});
  });

  it.each([[0, 1, 1], [1, -1, 1], [1, 1, NaN]] as const)('refuses %d %d %d', (red, green, blue) => {
    expect(() => castOf(red, green, blue)).toThrow(Problem);
  });
});
