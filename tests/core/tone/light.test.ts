import Color from 'colorjs.io';
import {converter} from 'culori';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import {codeFromLinear, codeStops, linearFromCode, linearTable, luminance} from '../../../src/core/tone/light.js';
import {input, published, publishedValue} from '../../reference/published.js';

const CODES = Array.from({length: 256}, (_, code) => code);

describe('light of a code value', () => {
  it('agrees with two independent colour libraries at every code', () => {
    const toLinear = converter('lrgb'); // culori 4
    for (const code of CODES) {
      const light = linearFromCode(code);
      expect(light).toBeCloseTo(toLinear({mode: 'rgb', r: code / 255, g: 0, b: 0}).r, 12);
      expect(light).toBeCloseTo(new Color('srgb', [code / 255, 0, 0]).to('srgb-linear').coords[0] as number, 12);
      expect(linearTable()[code]).toBe(light);
    }
  });

  // Source: IEC 61966-2-1, values in reference/published/tone.json.
  it('gives the published light of code 118 and of half the scale', () => {
    const code118 = publishedValue('tone', 'srgb-dec-118');
    expect(Math.abs(linearFromCode(118) - (code118.expected.value as number))).toBeLessThan(code118.tolerance!);
    const half = publishedValue('tone', 'srgb-dec-05');
    expect(Math.abs(linearFromCode(127.5) - (half.expected.value as number))).toBeLessThan(half.tolerance!);
  });

  it.each([-1, 255.01, NaN, Infinity])('refuses the code %s by name', (code) => {
    expect(() => linearFromCode(code)).toThrow(new Problem('code', code, 'a number from 0 to 255'));
  });
});

describe('code of an amount of light', () => {
  it('agrees with an independent colour library', () => {
    const toCodes = converter('rgb'); // culori 4
    fc.assert(fc.property(fc.double({min: 0, max: 1, noNaN: true}), (light) => {
      expect(codeFromLinear(light)).toBeCloseTo(255 * toCodes({mode: 'lrgb', r: light, g: 0, b: 0}).r, 9);
    }));
  });

  it('returns to every code it came from', () => {
    // The standard's two thresholds do not quite meet: 1e-4 of a code.
    for (const code of CODES) expect(Math.abs(codeFromLinear(linearFromCode(code)) - code)).toBeLessThan(1e-4);
  });

  // Source: IEC 61966-2-1, values in reference/published/tone.json.
  it('gives the published codes of 18 %, of a half and of whole stops below white', () => {
    const gray = publishedValue('tone', 'srgb-018-code');
    expect(Math.abs(codeFromLinear(0.18) - (gray.expected.value as number))).toBeLessThan(gray.tolerance!);
    const rows = published('tone').filter(({id}) => /^stop-code-/.test(id));
    expect(rows.length).toBeGreaterThan(7);
    for (const row of rows) expect(Math.round(codeFromLinear(2 ** -input(row, 'k'))), row.id).toBe(row.expected.value);
  });

  it('cuts off at white, as a file does', () => {
    expect(codeFromLinear(1)).toBe(255);
    expect(codeFromLinear(7)).toBe(255);
    expect(codeFromLinear(0)).toBe(0);
  });

  it.each([-0.001, NaN, Infinity])('refuses %s of light by name', (light) => {
    expect(() => codeFromLinear(light)).toThrow(new Problem('light', light, 'a number, 0 or above'));
  });
});

describe('stops between codes', () => {
  // Source: IEC 61966-2-1, values in reference/published/tone.json.
  it('gives the published stops below white', () => {
    const rows = published('tone').filter(({id}) => /^code-stops-/.test(id));
    expect(rows.length).toBeGreaterThan(7);
    for (const row of rows) {
      const difference = codeStops(input(row, 'code'), 255) - (row.expected.value as number);
      expect(Math.abs(difference), row.id).toBeLessThan(row.tolerance!);
    }
  });

  it('is antisymmetric and adds up', () => {
    const code = fc.integer({min: 1, max: 255});
    fc.assert(fc.property(code, code, code, (a, b, c) => {
      expect(codeStops(a, b)).toBeCloseTo(-codeStops(b, a), 12);
      expect(codeStops(a, b) + codeStops(b, c)).toBeCloseTo(codeStops(a, c), 12);
    }));
  });

  it('has no end towards black, and no difference between black and black', () => {
    expect(codeStops(200, 0)).toBe(-Infinity);
    expect(codeStops(0, 200)).toBe(Infinity);
    expect(codeStops(0, 0)).toBe(0);
  });
});

describe('luminance', () => {
  it('agrees with the Y of an independent colour library', () => {
    const part = fc.double({min: 0, max: 1, noNaN: true});
    fc.assert(fc.property(part, part, part, (red, green, blue) => {
      // The library derives its weights from the primaries; the standard rounds them to four places.
      const y = new Color('srgb-linear', [red, green, blue]).to('xyz-d65').coords[1] as number;
      expect(Math.abs(luminance(red, green, blue) - y)).toBeLessThan(1e-4);
    }));
  });
});

it('has no light at code -0, and no negative none', () => {
  expect(linearFromCode(-0)).toBe(0);
  expect(codeStops(-0, 118)).toBe(Infinity);
});
