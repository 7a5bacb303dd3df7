import {converter} from 'culori';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import {GRAY_LIGHT, readLevel} from '../../../src/core/tone/level.js';
import type {Level} from '../../../src/core/tone/level.js';
import {publishedValue, input} from '../../reference/published.js';
import {cropOf, picture, shiftsIn, shots} from '../../reference/shots/picture.js';
import {noise, strip} from './plain.js';

/** An independent colour library: culori. */
const linear = converter('lrgb');

/** Ground truth: tests/reference/shots/shots.json. Tolerance there: patch means 3 % in linear light after JPEG. */
const MEAN_TOLERANCE = 0.03;

const channels = ({red, green, blue}: Level): number[] => [red.mean, green.mean, blue.mean];

describe('level of the backdrop', () => {
  const withProbe = shots.filter(({scene, measured}) => scene.backdrop.probe_rect_px && measured.backdrop_probe);

  it('is checked in most of the rendered pictures', () => {
    expect(withProbe.length).toBeGreaterThan(15);
  });

  it.each(withProbe.map(({file}) => file.replace('.jpg', '')))('%s reads as rendered', async (name) => {
    const truth = withProbe.find(({file}) => file === `${name}.jpg`)!;
    const region = cropOf(truth.scene.backdrop.probe_rect_px!);
    const level = readLevel(await picture(name), region, GRAY_LIGHT, (await shiftsIn(name))(region));
    const rendered = truth.measured.backdrop_probe!.mean_linear;
    channels(level).forEach((mean, at) => expect(Math.abs(mean / rendered[at]! - 1)).toBeLessThan(MEAN_TOLERANCE));
    const [red, green, blue] = rendered.map((light) => codeOf(light)) as [number, number, number];
    // Half a code either way is what the picture lost when it was written in whole codes.
    expect(Math.abs(level.red.code - red)).toBeLessThan(0.6);
    expect(Math.abs(level.green.code - green)).toBeLessThan(0.6);
    expect(Math.abs(level.blue.code - blue)).toBeLessThan(0.6);
    const luminance = [0.2126, 0.7152, 0.0722].reduce((sum, weight, at) => sum + weight * rendered[at]!, 0);
    expect(level.stopsFromGray).toBeCloseTo(Math.log2(luminance / 0.18), 1);
  });
});

describe('level of the card’s patches', () => {
  const cards = shots.flatMap(({file, card}) =>
    (card ? Object.entries(card.patches_px).map(([patch, truth]) => ({file, patch, truth})) : []));

  it.each(cards)('$file, $patch', async ({file, truth}) => {
    const [name, region] = [file.replace('.jpg', ''), cropOf(truth.rect)];
    const level = readLevel(await picture(name), region, GRAY_LIGHT, (await shiftsIn(name))(region));
    truth.mean_linear.forEach((rendered, at) => {
      // The render is not cut off at white, the file is.
      const light = Math.min(1, rendered);
      expect(Math.abs(channels(level)[at]! / light - 1)).toBeLessThan(MEAN_TOLERANCE);
      const code = [level.red, level.green, level.blue][at]!.code;
      expect(Math.abs(code - codeOf(light))).toBeLessThan(1);
    });
  });
});

describe('arithmetic of a region', () => {
  it('agrees with an independent colour library, pixel by pixel', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 1e6}), (seed) => {
      const pixels = noise(7, 5, seed);
      const level = readLevel(pixels, {x: 1, y: 1, width: 4, height: 3});
      const lights = [1, 2, 3].flatMap((y) => [1, 2, 3, 4].map((x) => {
        const [r, g, b] = pixels.data.subarray((y * 7 + x) * 4, (y * 7 + x) * 4 + 3) as unknown as number[];
        return linear({mode: 'rgb', r: r! / 255, g: g! / 255, b: b! / 255});
      }));
      const mean = (of: 'r' | 'g' | 'b'): number => lights.reduce((sum, light) => sum + light[of], 0) / lights.length;
      expect(level.red.mean).toBeCloseTo(mean('r'), 10);
      expect(level.green.mean).toBeCloseTo(mean('g'), 10);
      expect(level.blue.mean).toBeCloseTo(mean('b'), 10);
      expect(level.pixels).toBe(12);
    }));
  });

  it('averages light, not codes: half black, half white is half the light', () => {
    // sRGB 188 is half of white: published, see the tone file.
    const record = publishedValue('tone', 'stop-code-1');
    const {luminance} = readLevel(strip([0, 0, 0, 5], [255, 255, 255, 5]), {x: 0, y: 0, width: 10, height: 1});
    expect(luminance.mean).toBeCloseTo(0.5, 12);
    expect(luminance.spread).toBeCloseTo(0.5, 12);
    expect(Math.abs(luminance.code - (record.expected.value as number))).toBeLessThan(record.tolerance!);
  });

  it('tells stops from the gray card by the published code of gray', () => {
    const record = publishedValue('tone', 'srgb-dec-118');
    const {stopsFromGray, luminance} = readLevel(strip([118, 118, 118, 3]), {x: 0, y: 0, width: 3, height: 1});
    expect(input(record, 'code')).toBe(118);
    expect(Math.abs(luminance.mean - (record.expected.value as number))).toBeLessThan(record.tolerance!);
    expect(Math.abs(stopsFromGray)).toBeLessThan(0.01);
  });

  it('measures against a gray card that was read in the same picture', () => {
    const region = {x: 0, y: 0, width: 3, height: 1};
    const {stopsFromGray} = readLevel(strip([118, 118, 118, 3]), region);
    expect(readLevel(strip([118, 118, 118, 3]), region, GRAY_LIGHT / 4).stopsFromGray).toBeCloseTo(stopsFromGray + 2, 12);
  });

  it('counts the share at both edges, any channel', () => {
    const level = readLevel(strip([255, 0, 9, 1], [255, 9, 9, 2], [9, 9, 9, 5]), {x: 0, y: 0, width: 8, height: 1});
    expect([level.atWhite, level.atBlack]).toEqual([3 / 8, 1 / 8]);
  });

  it('has no light in black, and says so', () => {
    expect(readLevel(strip([0, 0, 0, 2]), {x: 0, y: 0, width: 2, height: 1}).stopsFromGray).toBe(-Infinity);
  });

  it('adds what decoding rounded off, channel by channel, but to nothing at 0 or 255', () => {
    const pixels = strip([100, 100, 100, 3]);
    const region = {x: 0, y: 0, width: 3, height: 1};
    const level = readLevel(pixels, region, GRAY_LIGHT, [0.4, 0, -0.4]);
    expect([level.red.code, level.green.code, level.blue.code].map((code) => Number(code.toFixed(9)))).toEqual([100.4, 100, 99.6]);
    const edges = readLevel(strip([255, 0, 255, 3]), region, GRAY_LIGHT, [-0.4, 0.4, 0.4]);
    expect([edges.red.code, edges.green.code, edges.blue.code]).toEqual([255, 0, 255]);
    expect(readLevel(strip([254, 1, 9, 3]), region, GRAY_LIGHT, [1.5, -1.5, 0])).toMatchObject({red: {code: 255}, green: {code: 0}});
  });

  it('cuts a region to the picture and leaves transparent pixels out', () => {
    const pixels = strip([10, 10, 10, 1], [200, 200, 200, 1]);
    pixels.data[3] = 0;
    const level = readLevel(pixels, {x: -5, y: -5, width: 50, height: 50});
    expect(level.pixels).toBe(1);
    expect(level.green.code).toBeCloseTo(200, 9);
    expect(() => readLevel(pixels, {x: 0, y: 0, width: 1, height: 1})).toThrow(Problem);
  });

  it.each([0, -1, NaN])('refuses a gray of %s by name', (gray) => {
    expect(() => readLevel(strip([1, 1, 1, 1]), {x: 0, y: 0, width: 1, height: 1}, gray))
      .toThrow(new Problem('gray', gray, 'a number above 0'));
  });
});

/** Code of an amount of light by culori. */
function codeOf(light: number): number {
  return 255 * converter('rgb')({mode: 'lrgb', r: light, g: light, b: light}).g;
}
