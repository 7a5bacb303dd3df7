import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {compareShots, judgeShift} from '../../../src/core/tone/compare.js';
import type {Crop, Pixels} from '../../../src/core/tone/pixels.js';
import {Problem} from '../../../src/core/problem.js';
import {cropOf, picture, pixelsOf, sharpOf, truthOf} from '../../reference/shots/picture.js';
import {noise, strip} from './plain.js';

/** Ground truth: tests/reference/shots/shots.json. Tolerance there: exposure shift 0.03 stop. */
const SHIFT_TOLERANCE = 0.03;

const EXPOSURES = ['exposure-minus2', 'aperture-f11', 'exposure-plus1', 'exposure-plus2'];
const APERTURES = ['aperture-f2.8', 'aperture-f5.6', 'aperture-f8', 'aperture-f11', 'aperture-f16'];

function pairs(names: readonly string[]): (readonly [string, string])[] {
  return names.flatMap((first, at) => names.slice(at + 1).map((second) => [first, second] as const));
}

async function shift(first: string, second: string, crop?: Crop): Promise<number> {
  return compareShots(await picture(first), await picture(second), crop).shift ?? NaN;
}

describe('exposure shift between two pictures of the same set', () => {
  it.each(pairs(EXPOSURES))('%s to %s is the shift they were rendered with', async (first, second) => {
    const rendered = truthOf(second).exposure.ev_offset - truthOf(first).exposure.ev_offset;
    expect(Math.abs(await shift(first, second) - rendered)).toBeLessThan(SHIFT_TOLERANCE);
  });

  it.each(pairs(APERTURES).filter(([first, second]) => first === 'aperture-f8' || second === 'aperture-f8'))('%s to %s is none, whatever the blur', async (first, second) => {
    expect(Math.abs(await shift(first, second))).toBeLessThan(SHIFT_TOLERANCE);
  });

  it('says how far the blocks scatter, and that nearly all agree', async () => {
    const {spread, agreeing, pixels} = compareShots(await picture('aperture-f11'), await picture('exposure-plus1'));
    expect(spread).toBeLessThan(SHIFT_TOLERANCE);
    expect(agreeing).toBeGreaterThan(0.95);
    expect(pixels).toBeGreaterThan(1_000_000);
    expect(pixels).toBeLessThanOrEqual(1_500_000);
  });

  it.each(['card-neutral', 'card-glare'])('is not moved by a card that was put in: %s', async (name) => {
    expect(Math.abs(await shift('aperture-f8', name))).toBeLessThan(SHIFT_TOLERANCE);
  });

  it.each([
    {to: 'brighter', light: 3}, {to: 'darker', light: 0.3},
  ])('follows the figure and not a backdrop that was changed for a $to one', async ({light}) => {
    const changed = withBackdrop(await picture('exposure-plus1'), light);
    const {shift: found, because} = compareShots(await picture('aperture-f11'), changed);
    expect(because).toBeUndefined();
    expect(Math.abs(found as number - 1)).toBeLessThan(SHIFT_TOLERANCE);
  });

  it('is the same inside the figure’s crop', async () => {
    const crop = cropOf(truthOf('aperture-f11').figure_bbox_px);
    expect(Math.abs(await shift('aperture-f11', 'exposure-plus1', crop) - 1)).toBeLessThan(SHIFT_TOLERANCE);
  });

  it.each([750, 1800])('is the same when the second file is %i px wide', async (width) => {
    const resized = await pixelsOf(sharpOf(await picture('exposure-plus1')).resize({width}));
    const {shift: found} = compareShots(await picture('aperture-f11'), resized);
    expect(Math.abs(found as number - 1)).toBeLessThan(SHIFT_TOLERANCE);
  });

  it('turns its sign when the pictures change places', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 1e6}), fc.double({min: -1, max: 0, noNaN: true}), (seed, stops) => {
      const bright = smoothed(seed, 0);
      const dark = smoothed(seed, stops);
      const there = compareShots(bright, dark).shift as number;
      const back = compareShots(dark, bright).shift as number;
      // Codes are whole: a hundredth of a stop is half a code at middle gray.
      expect(there).toBeCloseTo(stops, 1);
      expect(Math.abs(there + back)).toBeLessThan(0.02);
    }), {numRuns: 20});
  });

  it('shows a light of another colour as a shift of red and blue against green', async () => {
    const [red, green, blue] = truthOf('nocard-warm').lights.key!.linear_rgb;
    const {colour} = compareShots(await picture('aperture-f8'), await picture('nocard-warm'));
    // Light thrown from coloured things onto others is in the picture as well; 0.05 stop leaves room for it.
    expect(Math.abs((colour?.red as number) - Math.log2(red / green))).toBeLessThan(0.05);
    expect(Math.abs((colour?.blue as number) - Math.log2(blue / green))).toBeLessThan(0.05);
  });
});

describe('pictures that cannot be compared', () => {
  it.each([
    ['aperture-f8', 'deep-near'], ['aperture-f8', 'backdrop-key'], ['deep-near', 'deep-far'], ['aperture-f8', 'white-edge'],
  ])('%s and %s do not show the same set', async (first, second) => {
    const {shift: found, because, colour} = compareShots(await picture(first), await picture(second));
    expect({found, because, colour}).toEqual({found: undefined, because: 'other-set', colour: undefined});
  });

  it('another light is no exposure: shadows of blinds, the same things in the picture', async () => {
    const pixels = await picture('aperture-f11');
    const data = new Uint8ClampedArray(pixels.data);
    for (let at = 0; at < data.length; at++) {
      if (at % 4 !== 3) data[at] = (data[at] as number) * [1, 0.9, 0.8, 0.7][Math.floor(((at / 4) % pixels.width) / 48) % 4]!;
    }
    const {because, pattern, agreeing} = compareShots(pixels, {...pixels, data});
    expect(because).toBe('other-set');
    expect(pattern).toBeGreaterThan(0.75);
    expect(agreeing).toBeLessThan(0.4);
  });

  it('frames of another shape are told apart', async () => {
    const square = await pixelsOf(sharpOf(await picture('aperture-f8')).extract({left: 0, top: 0, width: 1000, height: 1000}));
    expect(compareShots(await picture('aperture-f8'), square).because).toBe('shape');
  });

  it.each([0, 255])('two pictures of code %i all over have nothing in common to measure', (code) => {
    const plain: Pixels = {data: new Uint8ClampedArray(64 * 64 * 4).fill(code), width: 64, height: 64};
    expect(compareShots(plain, plain)).toMatchObject({shift: undefined, because: 'nothing-in-common', agreeing: 0, pixels: 0});
  });

  it('one pixel each is no reason to fail', () => {
    const {because} = compareShots(strip([90, 90, 90, 1]), strip([120, 120, 120, 1]));
    expect(because).toBe('other-set');
  });

  it('refuses a crop beside the picture', () => {
    expect(() => compareShots(noise(8, 8, 1), noise(8, 8, 1), {x: 9, y: 0, width: 3, height: 3})).toThrow(Problem);
  });
});

describe('what the shift did to the edges', () => {
  it('counts pixels at 0 and 255 of both pictures, channel by channel', () => {
    const {atBlack, atWhite} = compareShots(strip([0, 40, 40, 1], [60, 255, 60, 3]), strip([0, 90, 0, 2], [255, 255, 255, 2]));
    expect(atBlack).toEqual({
      red: {before: 1 / 4, after: 2 / 4}, green: {before: 0, after: 0}, blue: {before: 0, after: 2 / 4},
    });
    expect(atWhite).toEqual({
      red: {before: 0, after: 2 / 4}, green: {before: 3 / 4, after: 2 / 4}, blue: {before: 0, after: 2 / 4},
    });
  });

  it('agrees with the clipped share of the renders', async () => {
    const {atWhite} = compareShots(await picture('aperture-f11'), await picture('exposure-plus2'));
    for (const [when, name] of [['before', 'aperture-f11'], ['after', 'exposure-plus2']] as const) {
      const any = truthOf(name).measured.frame.clipped_fraction_any_channel;
      const [red, green, blue] = [atWhite.red[when], atWhite.green[when], atWhite.blue[when]];
      // Pixels with any channel clipped are at least those of one channel and at most all three together.
      expect(Math.max(red, green, blue)).toBeLessThan(any + 0.001);
      expect(red + green + blue).toBeGreaterThan(any - 0.001);
    }
  });
});

describe('a shift beside what was meant', () => {
  // Common practice, no source: a third-stop click is 1/3 stop, and the nearest click is the one meant.
  it.each([
    {shift: -0.34, meant: -1 / 3, thirds: -1, asMeant: true},
    {shift: -0.34, meant: undefined, thirds: -1, asMeant: true},
    {shift: 0.02, meant: undefined, thirds: 0, asMeant: true},
    {shift: 0.98, meant: 1, thirds: 3, asMeant: true},
    {shift: 0.98, meant: 2 / 3, thirds: 3, asMeant: false},
    {shift: 0.02, meant: -1 / 3, thirds: 0, asMeant: false},
    {shift: -0.16, meant: 0, thirds: 0, asMeant: true},
  ])('$shift stop where $meant was meant', ({shift: measured, meant, thirds, asMeant}) => {
    const verdict = judgeShift(measured, meant);
    expect(verdict.thirds).toBe(thirds);
    expect(verdict.asMeant).toBe(asMeant);
    expect(verdict.off).toBeCloseTo(measured - (meant ?? thirds / 3), 12);
  });

  it('never prints a negative zero', () => {
    expect(Object.is(judgeShift(-0.05).thirds, 0)).toBe(true);
  });

  it.each([NaN, Infinity])('refuses a shift of %s by name', (bad) => {
    expect(() => judgeShift(bad)).toThrow(new Problem('shift', bad, 'a finite number'));
    expect(() => judgeShift(0, bad)).toThrow(new Problem('meant', bad, 'a finite number'));
  });
});

/** The picture with everything above the table that is not figure replaced by one plain tone, `light` times the code it had. */
function withBackdrop(pixels: Pixels, light: number): Pixels {
  const data = new Uint8ClampedArray(pixels.data);
  const [left, , width] = truthOf('aperture-f11').figure_bbox_px;
  for (let y = 0; y < 590; y++) {
    for (let x = 0; x < pixels.width; x++) {
      if (x >= left && x < left + width) continue;
      const at = (y * pixels.width + x) * 4;
      data.fill(Math.min(240, (data[at] as number) * light), at, at + 3);
    }
  }
  return {...pixels, data};
}

/** A soft random pattern between codes 60 and 200, multiplied by light. Invented. */
function smoothed(seed: number, stops: number): Pixels {
  const [width, height] = [96, 64];
  const coarse = noise(width / 8, height / 8, seed);
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let at = 0; at < width * height; at++) {
    const cell = (Math.floor(at / width / 8) * coarse.width + Math.floor((at % width) / 8)) * 4;
    for (let channel = 0; channel < 3; channel++) {
      const code = 60 + (coarse.data[cell + channel] as number) * 140 / 255;
      data[at * 4 + channel] = ((code / 255) ** 2.2 * 2 ** stops) ** (1 / 2.2) * 255;
    }
  }
  return {data, width, height};
}
