import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import {endsFromCard, endsFromCrop, exposureForAims} from '../../../src/core/tone/card-exposure.js';
import type {ToneEnds} from '../../../src/core/tone/card-exposure.js';
import {readLevel} from '../../../src/core/tone/level.js';
import {tallyPixels} from '../../../src/core/tone/tally.js';
import {cropOf, picture, truthOf} from '../../reference/shots/picture.js';
import {strip} from './plain.js';

const code = (value: number, times = 1): readonly [number, number, number, number] => [value, value, value, times];

describe('lights and darks from the card', () => {
  it('are the card’s own white and black in the rendered shot', async () => {
    const pixels = await picture('card-neutral');
    const {white, gray, black} = truthOf('card-neutral').card!.patches_px;
    const ends = endsFromCard(readLevel(pixels, cropOf(gray.rect)).luminance.mean);
    // The white patch stands a little nearer to the key lamp: 3 % in the render; black 5 %.
    expect(Math.abs(ends.highlights / readLevel(pixels, cropOf(white.rect)).luminance.mean - 1)).toBeLessThan(0.06);
    expect(Math.abs(ends.shadows / readLevel(pixels, cropOf(black.rect)).luminance.mean - 1)).toBeLessThan(0.06);
    expect(ends.clipped).toBe(false);
  });

  it.each([0, -1, NaN])('refuse a gray of %d by name', (gray) => {
    expect(() => endsFromCard(gray)).toThrow(new Problem('gray', gray, 'a number above 0'));
  });
});

describe('lights and darks from the crop', () => {
  it('leave glints out, and the share that is backdrop', () => {
    // 1000 pixels: 2 glints, 98 highlights, 300 middle, 100 dark folds, 500 backdrop. Invented.
    const tally = tallyPixels(strip(code(255, 2), code(200, 98), code(120, 300), code(30, 100), code(5, 500)));
    const {highlights, shadows, clipped} = endsFromCrop(tally, 0.5);
    expect(highlights).toBeCloseTo(readLevel(strip(code(200)), {x: 0, y: 0, width: 1, height: 1}).red.mean, 12);
    expect(shadows).toBeCloseTo(readLevel(strip(code(30)), {x: 0, y: 0, width: 1, height: 1}).red.mean, 12);
    expect(clipped).toBe(false);
    expect(endsFromCrop(tally).shadows).toBeLessThan(shadows);
  });

  it('take the brightest colour as the highlight', () => {
    const red = endsFromCrop(tallyPixels(strip([255, 20, 20, 10], code(100, 90))));
    expect(red).toMatchObject({highlights: 1, clipped: true});
  });

  it('move with the exposure of the rendered series', async () => {
    const crop = cropOf(truthOf('aperture-f11').figure_bbox_px);
    const ends = async (name: string): Promise<ToneEnds> => endsFromCrop(tallyPixels(await picture(name), crop), 0.5);
    const [dark, even] = [await ends('exposure-minus2'), await ends('aperture-f11')];
    expect(even.clipped).toBe(truthOf('aperture-f11').measured.frame.clipped_fraction_any_channel > 0.005);
    expect(Math.log2(even.shadows / dark.shadows)).toBeCloseTo(2, 0);
    expect(exposureForAims(dark).wanted).toBeGreaterThan(exposureForAims(even).wanted);
  });

  it.each([-0.1, 1.1, NaN])('refuse a backdrop of %d by name', (backdrop) => {
    expect(() => endsFromCrop(tallyPixels(strip(code(9))), backdrop)).toThrow(Problem);
  });
});

describe('exposure for the aims', () => {
  const light = fc.double({min: 1e-4, max: 1, noNaN: true});

  it('never brings the highlights past their aim, and stays within a click of it', () => {
    fc.assert(fc.property(light, light, fc.integer({min: 60, max: 254}), (one, other, highlights) => {
      const ends = {highlights: Math.max(one, other), shadows: Math.min(one, other), clipped: false};
      const {wanted, thirds, highlightsAt, shadowsAt, shadowsShort} = exposureForAims(ends, {highlights, shadows: 12});
      expect(Number.isInteger(thirds)).toBe(true);
      expect(highlightsAt).toBeLessThan(highlights + 1e-6);
      expect(wanted - thirds / 3).toBeGreaterThan(-1e-9);
      expect(wanted - thirds / 3).toBeLessThan(1 / 3);
      expect(shadowsShort > 0).toBe(shadowsAt < 12 - 1e-9);
    }));
  });

  it('is nothing when all sits where it should', () => {
    const at = (value: number): number => readLevel(strip(code(value)), {x: 0, y: 0, width: 1, height: 1}).red.mean;
    const fits = exposureForAims({highlights: at(240), shadows: at(12), clipped: false});
    expect(fits).toMatchObject({thirds: 0, estimated: false});
    expect(fits.shadowsShort).toBeCloseTo(0, 9);
  });

  it('asks for the stop that is missing, as the rendered card shot does one stop under', () => {
    // With gray at 0.18 the lightest paint, 0.9, shows code 244: aims at 240 leave it a click down.
    expect(exposureForAims(endsFromCard(0.18)).thirds).toBe(-1);
    expect(exposureForAims(endsFromCard(0.09)).thirds).toBe(2);
  });

  it('says how far the shadows stay below, since more light would cost the highlights', () => {
    const {shadowsShort, thirds} = exposureForAims({highlights: 0.9, shadows: 0.0005, clipped: false});
    expect(thirds).toBeLessThan(0);
    // Code 12 is 0.0037 of white, published as code 13 at eight stops down (0.0039): about three stops above 0.0005.
    expect(shadowsShort).toBeGreaterThan(2.5);
    expect(shadowsShort).toBeLessThan(3.5);
  });

  it('says when it is only an estimate', () => {
    expect(exposureForAims({highlights: 1, shadows: 0.01, clipped: true})).toMatchObject({estimated: true, thirds: -1});
  });

  it.each([
    ['highlights-aim', {highlights: 255, shadows: 12}], ['highlights-aim', {highlights: 0, shadows: 12}],
    ['shadows-aim', {highlights: 200, shadows: 200}], ['shadows-aim', {highlights: 200, shadows: 0}],
  ])('refuses %s out of range', (parameter, aims) => {
    try {
      exposureForAims({highlights: 0.5, shadows: 0.1, clipped: false}, aims);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(Problem);
      expect((error as Problem).parameter).toBe(parameter);
    }
  });
});
