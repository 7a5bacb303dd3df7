import fc from 'fast-check';
import sharp from 'sharp';
import type {JpegOptions} from 'sharp';
import {describe, expect, it} from 'vitest';
import {NO_SHIFT} from '../../src/core/tone/level.js';
import {readCellMeans} from '../../src/photo/jpeg-cells.js';
import type {CellMeans} from '../../src/photo/jpeg-cells.js';
import {roundedOff} from '../../src/photo/rounded-off.js';
import {fileOf, picture, pixelsOf, sharpOf} from './shots/picture.js';

/** Reads the means of a JPEG file's cells; the decoder beside it is sharp's, which is not ours. */
const cellsOf = (bytes: Uint8Array): Promise<CellMeans | undefined> => readCellMeans(new Uint8Array(bytes), () => undefined);

/** A file with soft colours and grain, of a size that fills no whole number of cells. Invented. */
async function made(seed: number, options: JpegOptions, width = 203, height = 117): Promise<Buffer> {
  const data = new Uint8Array(width * height * 3);
  let state = seed;
  for (let at = 0; at < data.length; at++) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const [x, y] = [Math.floor(at / 3) % width, Math.floor(at / 3 / width)];
    data[at] = 120 + 60 * Math.sin(x / (30 + 9 * (at % 3)) + seed) * Math.cos(y / 40 + at % 3) + (state >>> 28);
  }
  return sharp(data, {raw: {width, height, channels: 3}}).jpeg(options).toBuffer();
}

/** Largest difference between the means in the file and those of the decoded pixels, over cells inside the picture. */
async function largestDifference(file: Buffer): Promise<number> {
  const [cells, pixels] = [await cellsOf(file), await pixelsOf(sharp(file))];
  const {cellWidth, cellHeight, columns, codes} = cells!;
  let largest = 0;
  for (let cell = 0; cell * 3 < codes.length; cell++) {
    const [x, y] = [cell % columns * cellWidth, Math.floor(cell / columns) * cellHeight];
    if (x + cellWidth > pixels.width || y + cellHeight > pixels.height) continue;
    for (let channel = 0; channel < 3; channel++) {
      let sum = 0;
      for (let row = y; row < y + cellHeight; row++) {
        for (let column = x; column < x + cellWidth; column++) sum += pixels.data[(row * pixels.width + column) * 4 + channel]!;
      }
      largest = Math.max(largest, Math.abs(codes[cell * 3 + channel]! - sum / (cellWidth * cellHeight)));
    }
  }
  return largest;
}

describe('means of a JPEG file’s cells', () => {
  it.each([
    ['full colour', {chromaSubsampling: '4:4:4'}], ['colour at half the resolution', {chromaSubsampling: '4:2:0'}],
    ['best quality', {quality: 100, chromaSubsampling: '4:4:4'}], ['coarse', {quality: 40}],
    ['from coarse to fine', {progressive: true}], ['from coarse to fine, scans rearranged', {mozjpeg: true}],
    ['from coarse to fine, full colour', {progressive: true, chromaSubsampling: '4:4:4', quality: 95}],
  ] as const)('are those of another decoder’s pixels, but for its rounding: %s', async (_, options) => {
    await fc.assert(fc.asyncProperty(fc.integer({min: 1, max: 1e6}), async (seed) => {
      // Where colour is stretched to full resolution, a decoder takes some from the next cell as well.
      expect(await largestDifference(await made(seed, options))).toBeLessThan(2);
    }), {numRuns: 8});
  });

  it('are equal in red, green and blue of a gray file', async () => {
    const file = await sharp(await made(3, {})).toColourspace('b-w').jpeg().toBuffer();
    expect(await largestDifference(file)).toBeLessThan(0.6);
  });

  it('go on after a restart', async () => {
    // Three blocks, each after a restart, of +4, +5 and −7 steps of 16: written by hand after ITU-T T.81.
    const file = restarted([4, 5, -7]);
    const {data} = await pixelsOf(sharp(file));
    const {codes} = (await cellsOf(file))!;
    expect([0, 8, 16].map((row) => data[row * 8 * 4])).toEqual([136, 138, 114]);
    expect([codes[0], codes[3], codes[6]]).toEqual([136, 138, 114]);
  });

  it.each([
    ['four inks', () => sharp({create: {width: 32, height: 32, channels: 3, background: 'teal'}}).toColourspace('cmyk').jpeg().toBuffer()],
    ['another profile', () => sharp({create: {width: 32, height: 32, channels: 3, background: 'teal'}}).withIccProfile('p3').jpeg().toBuffer()],
    ['no picture', () => Promise.resolve(Buffer.from([0xff, 0xd8, 0xff, 0xd9, 0, 0]))],
  ])('are not made up: %s', async (_, file) => {
    expect(await cellsOf(await file())).toBeUndefined();
  });

  it('are read where the profile is sRGB’s own', async () => {
    const file = await sharp({create: {width: 32, height: 32, channels: 3, background: 'teal'}}).withIccProfile('srgb').jpeg().toBuffer();
    expect(await cellsOf(file)).toBeDefined();
  });

  it('of a file with bytes missing or wrong end in a reading or none, never in an error', async () => {
    const file = await made(5, {});
    await fc.assert(fc.asyncProperty(fc.nat({max: file.length - 1}), fc.nat({max: 255}), fc.boolean(), async (at, byte, cut) => {
      const bad = new Uint8Array(cut ? file.subarray(0, at) : file);
      if (!cut) bad[at] = byte;
      const cells = await cellsOf(bad);
      expect(cells === undefined || cells.codes.length > 0).toBe(true);
    }));
  });
});

describe('what decoding rounded off', () => {
  it('brings the mean of any region with whole cells in it back to the file’s', async () => {
    const flat = await sharp({create: {width: 64, height: 64, channels: 3, background: {r: 119, g: 117, b: 110}}})
      .jpeg({quality: 90, chromaSubsampling: '4:2:0'}).toBuffer();
    const [cells, pixels] = [(await cellsOf(flat))!, await pixelsOf(sharp(flat))];
    const shift = roundedOff(cells, pixels, {x: 3, y: 5, width: 40, height: 40}, 1);
    // One flat colour: every pixel and every cell is the same.
    [0, 1, 2].forEach((channel) => expect(pixels.data[channel]! + shift[channel]!).toBeCloseTo(cells.codes[channel]!, 4));
    expect(shift.some((codes) => Math.abs(codes) > 0.1)).toBe(true);
  });

  it('is nothing where no cell is whole, where the picture has another size, or is another one', async () => {
    const cells = (await cellsOf(fileOf('card-neutral')))!;
    const pixels = await picture('card-neutral');
    expect(roundedOff(cells, pixels, {x: 181, y: 819, width: 7, height: 60}, 1)).toEqual(NO_SHIFT);
    expect(roundedOff(cells, pixels, {x: 181, y: 819, width: 62, height: 63}, 6)).toEqual(NO_SHIFT);
    expect(roundedOff(cells, await picture('card-warm'), {x: 181, y: 819, width: 62, height: 63}, 1)).toEqual(NO_SHIFT);
    expect(roundedOff(cells, pixels, {x: 181, y: 819, width: 62, height: 63}, 1)).not.toEqual(NO_SHIFT);
  });

  it.each([2, 3, 4, 5, 6, 7, 8])('is the same for a picture turned as Exif orientation %i says', async (orientation) => {
    const cells = (await cellsOf(fileOf('card-neutral')))!;
    const stored = await picture('card-neutral');
    const written = await sharpOf(stored).withMetadata({orientation}).png().toBuffer();
    const upright = await pixelsOf(sharp(written).rotate()); // sharp turns it
    const whole = {x: 16, y: 16, width: upright.width - 32, height: upright.height - 32};
    const wanted = roundedOff(cells, stored, {x: 16, y: 16, width: stored.width - 32, height: stored.height - 32}, 1);
    const found = roundedOff(cells, upright, whole, orientation);
    found.forEach((codes, channel) => expect(codes).toBeCloseTo(wanted[channel]!, 9));
    expect(wanted).not.toEqual(NO_SHIFT);
  });
});

/**
 * A gray file 8 pixels wide of one block after another, with a restart between them. Tables of two codes: `0` for a level
 * of three bits, and for the end of a block.
 */
function restarted(levels: readonly number[]): Uint8Array<ArrayBuffer> {
  const segment = (marker: number, ...body: readonly number[]): number[] => [0xff, marker, 0, body.length + 2, ...body];
  const lengths = [1, ...Array<number>(15).fill(0)];
  const coded = levels.flatMap((level, at) => {
    const bits = level < 0 ? level + 7 : level;
    return [...(at > 0 ? [0xff, 0xd0 + at - 1] : []), bits << 4 | 0b111];
  });
  return Uint8Array.from([
    0xff, 0xd8, ...segment(0xdb, 0, ...Array<number>(64).fill(16)),
    ...segment(0xc0, 8, 0, 8 * levels.length, 0, 8, 1, 1, 0x11, 0),
    ...segment(0xc4, 0, ...lengths, 3), ...segment(0xc4, 0x10, ...lengths, 0), ...segment(0xdd, 0, 1),
    ...segment(0xda, 1, 1, 0, 0, 63, 0), ...coded, 0xff, 0xd9,
  ]);
}
