import sharp from 'sharp';
import {describe, expect, it} from 'vitest';
import {edgesOf} from '../../src/core/tone/clipping.js';
import {cutOut} from '../../src/core/tone/pixels.js';
import type {Pixels} from '../../src/core/tone/pixels.js';
import {tallyPixels} from '../../src/core/tone/tally.js';
import {picture, pixelsOf, sharpOf, shots} from './shots/picture.js';

/** How far a reading of the share of clipped pixels may be from the render's. */
const TOLERANCE = 0.0005;
/** All of the pictures are written with the same quantisation tables, so a threshold taken from those is one for all. */
const QUALITY = 90;
const BLOCK = 8;

const written = (pixels: Pixels): Promise<Buffer> =>
  sharpOf(pixels).removeAlpha().jpeg({quality: QUALITY, chromaSubsampling: '4:4:4'}).toBuffer();
const readBack = async (pixels: Pixels): Promise<Pixels> => pixelsOf(sharp(await written(pixels)));
const clipped = (pixels: Pixels): number => edgesOf(tallyPixels(pixels)).anyAtWhite;

/**
 * Another picture that is written into the same file as `from`, as far as any decoder can tell: pixels near white are
 * changed at random by the codes `change` gives, and a block stays changed when it comes back as it did before.
 */
async function twin(from: Pixels, change: (brightest: number, chance: number) => number): Promise<Pixels> {
  const wanted = await readBack(from);
  let kept: Pixels['data'] = from.data.slice();
  let state = 1;
  const chance = (): number => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
  for (let turn = 0; turn < 9; turn++) {
    const share = [0.4, 0.15, 0.05][turn % 3]!;
    const tried = kept.slice();
    for (let at = 0; at < tried.length; at += 4) {
      const brightest = Math.max(tried[at]!, tried[at + 1]!, tried[at + 2]!);
      const next = change(brightest, chance() / share);
      for (let channel = 0; channel < 3; channel++) if (tried[at + channel] === brightest) tried[at + channel] = next;
    }
    const back = await readBack({...from, data: tried});
    kept = blockwise(from, (rows) => rows.every(([start, end]) => same(back.data, wanted.data, start, end)) ? tried : kept);
  }
  return {...from, data: kept};
}

/** A picture put together from blocks, each of the data that `choose` picks by the bytes its rows take. */
function blockwise({width, height}: Pixels, choose: (rows: readonly (readonly [number, number])[]) => Pixels['data']): Uint8ClampedArray {
  const out = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y += BLOCK) {
    for (let x = 0; x < width; x += BLOCK) {
      const rows = Array.from({length: BLOCK}, (_, row) => [((y + row) * width + x) * 4, ((y + row) * width + x + BLOCK) * 4] as const);
      const data = choose(rows);
      for (const [start, end] of rows) out.set(data.subarray(start, end), start);
    }
  }
  return out;
}

function same(one: Pixels['data'], two: Pixels['data'], start: number, end: number): boolean {
  for (let at = start; at < end; at++) if (one[at] !== two[at]) return false;
  return true;
}

describe('what a JPEG file does not tell of clipping', () => {
  it.each(['exposure-plus2', 'aperture-f8'])('%s: pictures with other shares at 255 come out of their files as the same pixels', async (name) => {
    // Part of the figure in the light, in whole blocks.
    const part = cutOut(await picture(name), {x: 560, y: 160, width: 400, height: 320});
    const less = await twin(part, (brightest, chance) => (brightest === 255 && chance < 1 ? 254 : brightest));
    const more = await twin(part, (brightest, chance) => (brightest >= 246 && chance < 1 ? 255 : brightest));
    expect((await readBack(less)).data).toEqual((await readBack(more)).data);
    // Whatever is read from those pixels, it is wrong for one of the two by half of this at least.
    expect(clipped(more) - clipped(less)).toBeGreaterThan(4 * TOLERANCE);
  });

  it('leaves no code from which on a pixel was clipped: any is wrong by more than the tolerance somewhere', async () => {
    const readings = await Promise.all(shots.map(async ({file, measured}) => ({
      shares: sharesFrom(await picture(file.replace('.jpg', ''))), truth: measured.frame.clipped_fraction_any_channel,
    })));
    for (let code = 230; code <= 255; code++) {
      const worst = Math.max(...readings.map(({shares, truth}) => Math.abs(shares[code]! - truth)));
      expect(worst, `from ${code}`).toBeGreaterThan(4 * TOLERANCE);
    }
  });
});

/** Share of the pixels with a channel at a code or above it, for every code. */
function sharesFrom({data, width, height}: Pixels): number[] {
  const counts = Array<number>(256).fill(0);
  for (let at = 0; at < data.length; at += 4) counts[Math.max(data[at]!, data[at + 1]!, data[at + 2]!)]!++;
  for (let code = 254; code >= 0; code--) counts[code]! += counts[code + 1]!;
  return counts.map((count) => count / (width * height));
}
