import {converter} from 'culori';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import {compareShots} from '../../../src/core/tone/compare.js';
import {readLevel} from '../../../src/core/tone/level.js';
import {readCard} from '../../../src/core/white/card.js';
import {applyTables, gainsFromGray, gainTables} from '../../../src/core/white/gains.js';
import {findCard} from '../../../src/core/white/patches.js';
import type {CardPatches} from '../../../src/core/white/patches.js';
import {input, publishedValue} from '../../reference/published.js';
import {picture} from '../../reference/shots/picture.js';
import {noise, strip} from '../tone/plain.js';

const patch = {x: 0, y: 0, width: 4, height: 1};

describe('gains from a gray patch', () => {
  it('divide linear light, as published with the trap of dividing codes', () => {
    const record = publishedValue('white', 'graycard-gains');
    const [red, green, blue] = ['codeR', 'codeG', 'codeB'].map((name) => input(record, name)) as [number, number, number];
    const gains = gainsFromGray(readLevel(strip([red, green, blue, 4]), patch));
    [gains.red, gains.green, gains.blue].forEach((gain, at) =>
      expect(Math.abs(gain - (record.expected.value as number[])[at]!)).toBeLessThan(record.tolerance!));
  });

  it.each([[0, 90, 90], [90, 0, 90], [90, 90, 0]] as const)('refuse a patch that is black in a channel: %i %i %i', (red, green, blue) => {
    expect(() => gainsFromGray(readLevel(strip([red, green, blue, 4]), patch)))
      .toThrow(new Problem('gray', 0, 'a gray patch with light in every channel'));
  });
});

describe('preview with the gains applied', () => {
  it('makes the patch they were taken from neutral, to a code', () => {
    const code = fc.integer({min: 40, max: 150});
    fc.assert(fc.property(code, code, code, (red, green, blue) => {
      const pixels = strip([red, green, blue, 4]);
      const {data} = applyTables(pixels, gainTables(gainsFromGray(readLevel(pixels, patch))));
      expect(Math.abs(data[0]! - data[1]!)).toBeLessThanOrEqual(1);
      expect(Math.abs(data[2]! - data[1]!)).toBeLessThanOrEqual(1);
    }));
  });

  it('multiplies light as an independent colour library does', () => {
    const [linear, encoded] = [converter('lrgb'), converter('rgb')];
    const gain = fc.double({min: 0.3, max: 3, noNaN: true});
    const exposure = fc.double({min: -2, max: 2, noNaN: true});
    fc.assert(fc.property(fc.integer({min: 0, max: 255}), gain, gain, exposure, (code, red, blue, stops) => {
      const [ofRed, ofGreen, ofBlue] = gainTables({red, green: 1, blue}, stops);
      const light = linear({mode: 'rgb', r: code / 255, g: code / 255, b: code / 255});
      const wanted = encoded({mode: 'lrgb', r: light.r * red * 2 ** stops, g: light.g * 2 ** stops, b: light.b * blue * 2 ** stops});
      const clip = (value: number): number => Math.min(255, 255 * value);
      expect(Math.abs(ofRed[code]! - clip(wanted.r))).toBeLessThan(0.51);
      expect(Math.abs(ofGreen[code]! - clip(wanted.g))).toBeLessThan(0.51);
      expect(Math.abs(ofBlue[code]! - clip(wanted.b))).toBeLessThan(0.51);
    }));
  });

  it('changes nothing with gains of 1, and keeps alpha', () => {
    const pixels = noise(9, 7, 3, true);
    const same = applyTables(pixels, gainTables({red: 1, green: 1, blue: 1}));
    expect([...same.data]).toEqual([...pixels.data]);
    expect(same.data).not.toBe(pixels.data);
  });

  it('turns the picture under warm lamps into the one under neutral lamps', async () => {
    const card = await picture('card-warm');
    const {gains} = readCard(card, findCard(card) as CardPatches);
    const neutral = await picture('aperture-f8');
    const before = compareShots(neutral, await picture('nocard-warm'));
    const after = compareShots(neutral, applyTables(await picture('nocard-warm'), gainTables(gains!)));
    expect(Math.abs(before.colour!.red)).toBeGreaterThan(1);
    expect(Math.abs(before.colour!.blue)).toBeGreaterThan(1.5);
    // The gray patch itself is 0.035 stop off neutral under the neutral lamps: the table's colour is in it.
    expect(Math.abs(after.colour!.red)).toBeLessThan(0.06);
    expect(Math.abs(after.colour!.blue)).toBeLessThan(0.06);
  });

  it.each([0, -1, NaN, Infinity])('refuses a gain of %s by name', (bad) => {
    expect(() => gainTables({red: bad, green: 1, blue: 1})).toThrow(new Problem('gains', bad, 'a number above 0'));
  });
});
