import {describe, expect, it} from 'vitest';
import {exposureAdvice} from '../../../src/core/tone/advice.js';
import {edgesOf} from '../../../src/core/tone/clipping.js';
import {cropChange} from '../../../src/core/tone/cropped.js';
import {tallyPixels} from '../../../src/core/tone/tally.js';
import {cropOf, picture, sharpOf, truthOf} from '../../reference/shots/picture.js';
import type {Rectangle} from '../../reference/shots/picture.js';

/** Truth of the picture with a white table edge; only that one has a crop of interest. */
const whiteEdge = truthOf('white-edge') as ReturnType<typeof truthOf> & {
  readonly crop_of_interest_px: Rectangle;
  readonly measured: {readonly inside_crop: {readonly clipped_fraction_any_channel: number}};
};
const truthIn = (name: string) => truthOf(name).measured.frame.clipped_fraction_any_channel;

// Truth: rendered pictures, clipping counted before the JPEG was written (reference/shots/shots.json).
describe('clipping in the rendered shots', () => {
  it('is found inside the crop within 0.05 per cent of its pixels, and does not hear of the white edge outside', async () => {
    const crop = cropOf(whiteEdge.crop_of_interest_px);
    const {anyNearWhite} = edgesOf(tallyPixels(await picture('white-edge'), crop));
    expect(Math.abs(anyNearWhite - whiteEdge.measured.inside_crop.clipped_fraction_any_channel)).toBeLessThan(0.0005);
  });

  it.each(['aperture-f2.8', 'aperture-f5.6', 'aperture-f8', 'aperture-f11', 'aperture-f16', 'exposure-minus2', 'deep-near',
    'deep-far', 'deep-far-crop', 'backdrop-key', 'backdrop-twice-as-far', 'card-glare'])('is found in %s within 0.05 per cent of the pixels', async (name) => {
    const {anyNearWhite} = edgesOf(tallyPixels(await picture(name)));
    expect(Math.abs(anyNearWhite - truthIn(name))).toBeLessThan(0.0005);
  });

  it.each(['exposure-plus1', 'exposure-plus2', 'card-mixed', 'card-warm', 'nocard-warm', 'backdrop-spill', 'backdrop-spill-flag'])(
    // One colour is lost in wide areas here, and a JPEG keeps colour at half the resolution: it can only be found in part.
    'is a lower bound in %s, where one colour is lost and the file has smeared it', async (name) => {
      const {anyAtWhite, anyNearWhite} = edgesOf(tallyPixels(await picture(name)));
      expect(anyAtWhite).toBeLessThan(truthIn(name));
      expect(anyNearWhite).toBeLessThan(truthIn(name));
      expect(anyAtWhite).toBeGreaterThan(0.5 * truthIn(name));
      expect(anyNearWhite).toBeGreaterThan(0.7 * truthIn(name));
    });
});

describe('advice for the rendered shots', () => {
  it('grows with the exposure that was too much', async () => {
    const thirds = [];
    for (const name of ['aperture-f11', 'exposure-plus1', 'exposure-plus2']) {
      const advice = exposureAdvice(tallyPixels(await picture(name)), 'dark-backdrop');
      expect(advice).toMatchObject({reason: 'white-lost', channel: 'red'});
      thirds.push(advice.thirds);
    }
    // 0, +1 and +2 stops of the same scene; at −2 stops next to nothing is cut off any more (0.0035 %).
    expect(thirds).toEqual([...thirds].sort((one, two) => two - one));
    expect(thirds[0]).toBeLessThan(0);
    expect(thirds[2]! / 3).toBeGreaterThan(-4);
    expect(thirds[2]!).toBeLessThan(thirds[0]! - 3);
  });

  it('is another one with the crop than without, where the white edge lies outside', async () => {
    const pixels = await picture('white-edge');
    const change = cropChange(tallyPixels(pixels, cropOf(whiteEdge.crop_of_interest_px)), tallyPixels(pixels), 'dark-backdrop');
    expect(change.matters).toBe(true);
    expect(change.adviceWithout.thirds).toBeLessThan(change.adviceInside.thirds);
    expect(change.kept).toBeCloseTo(900 * 809 / 1_500_000, 12);
  });
});

describe('counts of a rendered shot', () => {
  it('agree with the statistics of an independent image library', async () => {
    const pixels = await picture('aperture-f8');
    const tally = tallyPixels(pixels);
    const {channels} = await sharpOf(pixels).stats(); // sharp
    for (const [index, channel] of (['red', 'green', 'blue'] as const).entries()) {
      const counts = Array.from(tally[channel]);
      expect(counts.reduce((sum, count, code) => sum + count * code, 0)).toBe(channels[index]!.sum);
      expect(counts.reduce((sum, count, code) => sum + count * code * code, 0)).toBe(channels[index]!.squaresSum);
      expect(counts.findIndex((count) => count > 0)).toBe(channels[index]!.min);
      expect(counts.findLastIndex((count) => count > 0)).toBe(channels[index]!.max);
    }
  });
});
