import {converter} from 'culori';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {brightnessCode} from '../../../src/core/tone/brightness.js';
import {cropOnto, wholeOf} from '../../../src/core/tone/pixels.js';
import {tallyPixels} from '../../../src/core/tone/tally.js';
import {countTileRow, startTiles, tallyFromTiles} from '../../../src/core/tone/tiles.js';
import {noise, plainTally, strip} from './plain.js';

describe('brightness of a colour', () => {
  it('is the code of a gray with the same luminance, by an independent colour library', () => {
    const [toXyz, toRgb] = [converter('xyz65'), converter('rgb')]; // culori 4
    const code = fc.integer({min: 0, max: 255});
    fc.assert(fc.property(code, code, code, (r, g, b) => {
      const {y} = toXyz({mode: 'rgb', r: r / 255, g: g / 255, b: b / 255});
      const gray = 255 * toRgb({mode: 'lrgb', r: y, g: y, b: y}).r;
      // Half a code of rounding, and a tenth for counting in whole parts and for the library's longer weights.
      expect(Math.abs(brightnessCode(r, g, b) - gray)).toBeLessThan(0.6);
    }), {numRuns: 20_000});
  });

  it('leaves every gray at its own code', () => {
    for (let code = 0; code < 256; code++) expect(brightnessCode(code, code, code)).toBe(code);
  });

  it('puts pure red at code 127, not at the 54 of weighted codes', () => {
    // 0.2126 of white is code 127.06 (culori 4).
    expect(brightnessCode(255, 0, 0)).toBe(127);
  });
});

describe('tally', () => {
  it('counts what the plain loop counts, in any crop, opaque or not', () => {
    const picture = fc.record({
      width: fc.integer({min: 1, max: 40}), height: fc.integer({min: 1, max: 30}),
      seed: fc.integer(), translucent: fc.boolean(),
    });
    const part = fc.double({min: 0, max: 1, noNaN: true});
    fc.assert(fc.property(picture, part, part, part, part, ({width, height, seed, translucent}, x, y, w, h) => {
      const pixels = noise(width, height, seed, translucent);
      const crop = cropOnto({x: x * (width - 1), y: y * (height - 1), width: 1 + w * width, height: 1 + h * height}, width, height);
      expect(tallyPixels(pixels, crop)).toEqual(plainTally(pixels, crop));
    }));
  });

  it.each([['opaque', false], ['translucent', true]])('counts %s pictures of over a megapixel the same', (_, translucent) => {
    const pixels = noise(1201, 1000, 7, translucent);
    for (const crop of [wholeOf(pixels), {x: 1, y: 2, width: 1199, height: 997}]) {
      expect(tallyPixels(pixels, crop)).toEqual(plainTally(pixels, crop));
    }
  });

  it('counts a large picture that is transparent in one corner only', () => {
    const pixels = noise(1300, 900, 8);
    for (const at of [3, 4 * 640_003 + 3, pixels.data.length - 1]) pixels.data[at] = 10;
    expect(tallyPixels(pixels)).toEqual(plainTally(pixels, wholeOf(pixels)));
  });

  it.each([['opaque', 255], ['in part translucent', 90]])('counts a large picture of hardly any colours, %s', (_, alpha) => {
    // A backdrop without a light on it: one colour a hundred thousand times over, and a few others.
    const pixels = noise(1301, 1000, 9);
    for (let at = 0; at < pixels.data.length; at += 4) {
      if (at % 5200 > 400) pixels.data.set([3, 2, at % 36 === 0 ? 0 : 4, at % 400_000 === 0 ? alpha : 255], at);
    }
    expect(tallyPixels(pixels)).toEqual(plainTally(pixels, wholeOf(pixels)));
    // Nothing of it is left for the next picture.
    const next = noise(1200, 1000, 10);
    expect(tallyPixels(next)).toEqual(plainTally(next, wholeOf(next)));
  });

  it('counts nothing outside the crop', () => {
    const pixels = strip([255, 255, 255, 10], [40, 50, 60, 5], [0, 0, 0, 10]);
    const tally = tallyPixels(pixels, {x: 10, y: 0, width: 5, height: 1});
    expect([tally.red[40], tally.green[50], tally.blue[60], tally.pixels]).toEqual([5, 5, 5, 5]);
    expect([tally.anyBlack, tally.anyWhite]).toEqual([0, 0]);
  });

  it('leaves out what is less than half opaque', () => {
    const data = Uint8ClampedArray.from([9, 9, 9, 127, 8, 8, 8, 128, 7, 7, 7, 0]);
    const tally = tallyPixels({data, width: 3, height: 1});
    expect([tally.pixels, tally.red[9], tally.red[8], tally.red[7]]).toEqual([1, 0, 1, 0]);
  });

  it('reads a picture that does not start at a multiple of four bytes', () => {
    const pixels = noise(13, 7, 5);
    const shifted = new Uint8Array(pixels.data.length + 3);
    shifted.set(pixels.data, 3);
    expect(tallyPixels({...pixels, data: shifted.subarray(3)})).toEqual(plainTally(pixels, wholeOf(pixels)));
  });

  it('cuts a crop to the picture and refuses one beside it by name', () => {
    const pixels = strip([1, 2, 3, 4]);
    expect(tallyPixels(pixels, {x: -5, y: -5, width: 7, height: 90}).pixels).toBe(2);
    for (const crop of [{x: 4, y: 0, width: 3, height: 1}, {x: 0, y: 0, width: 0, height: 1}, {x: NaN, y: 0, width: 1, height: 1}]) {
      expect(() => tallyPixels(pixels, crop)).toThrow(/^crop: wanted a rectangle with at least one pixel inside 4 × 1/);
    }
  });

  it('refuses data too short for its size by name', () => {
    expect(() => tallyPixels({data: new Uint8Array(15), width: 2, height: 2})).toThrow(/^pixels: wanted four bytes/);
    expect(() => tallyPixels({data: new Uint8Array(0), width: 0, height: 0})).toThrow(/^pixels:/);
  });
});

describe('tally from tiles', () => {
  const sizes = [[1, 1], [127, 5], [128, 128], [129, 300], [700, 401], [64, 1000]] as const;

  it.each(sizes)('is the same as counting afresh, for any crop of %i × %i', (width, height) => {
    const pixels = noise(width, height, width * height, width === 129);
    const tiles = startTiles(pixels);
    while (countTileRow(tiles));
    const edge = (end: number) => fc.tuple(fc.integer({min: 0, max: end}), fc.integer({min: 0, max: end}));
    fc.assert(fc.property(edge(width), edge(height), ([x1, x2], [y1, y2]) => {
      fc.pre(x1 !== x2 && y1 !== y2);
      const crop = {x: Math.min(x1, x2), y: Math.min(y1, y2), width: Math.abs(x2 - x1), height: Math.abs(y2 - y1)};
      expect(tallyFromTiles(tiles, crop)).toEqual(plainTally(pixels, crop));
    }), {numRuns: 40});
    expect(tallyFromTiles(tiles, wholeOf(pixels))).toEqual(plainTally(pixels, wholeOf(pixels)));
  });
});
