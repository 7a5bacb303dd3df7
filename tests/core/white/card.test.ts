import {describe, expect, it} from 'vitest';
import type {Pixels} from '../../../src/core/tone/pixels.js';
import {readCard} from '../../../src/core/white/card.js';
import type {CardReading} from '../../../src/core/white/card.js';
import {findCard} from '../../../src/core/white/patches.js';
import type {CardPatches} from '../../../src/core/white/patches.js';
import {cropOf, picture, shiftsIn, truthOf} from '../../reference/shots/picture.js';

/** Ground truth: tests/reference/shots/shots.json, means of the linear render before it was cut off and compressed. */
const CLEAN = ['card-neutral', 'card-warm', 'card-mixed'];
const PATCHES = ['white', 'gray', 'black'] as const;

function marked(name: string): CardPatches {
  const truth = truthOf(name).card!.patches_px;
  return {white: cropOf(truth.white.rect), gray: cropOf(truth.gray.rect), black: cropOf(truth.black.rect)};
}

/** As the product reads a photo: the pixels, and what the file knows of what decoding rounded off. */
async function reading(name: string, how: 'found' | 'marked', shifts?: 'pixels alone'): Promise<CardReading> {
  const pixels = await picture(name);
  const patches = how === 'marked' ? marked(name) : findCard(pixels) as CardPatches;
  return readCard(pixels, patches, undefined, shifts ? undefined : await shiftsIn(name));
}

const both = CLEAN.flatMap((name) => (['found', 'marked'] as const).map((how) => [name, how] as const));

describe('a clean card shot', () => {
  it.each(both)('%s, %s: gains are those of the render within 1 per cent', async (name, how) => {
    const {gains} = await reading(name, how);
    const [red, green, blue] = truthOf(name).card!.patches_px.gray.mean_linear;
    expect(Math.abs(gains!.red * red / green - 1)).toBeLessThan(0.01);
    expect(Math.abs(gains!.blue * blue / green - 1)).toBeLessThan(0.01);
  });

  it.each(both)('%s, %s: every patch is within one code of the render', async (name, how) => {
    const read = await reading(name, how);
    for (const patch of PATCHES) {
      truthOf(name).card!.patches_px[patch].mean_linear.forEach((light, at) =>
        expect(Math.abs(read[patch][(['red', 'green', 'blue'] as const)[at]!].code - codeOf(light))).toBeLessThan(1));
    }
  });

  it('is off by more than 1 per cent from its pixels alone, since decoders round colour to whole steps', async () => {
    const {gains} = await reading('card-neutral', 'marked', 'pixels alone');
    const [, green, blue] = truthOf('card-neutral').card!.patches_px.gray.mean_linear;
    expect(Math.abs(gains!.blue * blue / green - 1)).toBeGreaterThan(0.02);
  });

  it.each(CLEAN)('%s: gains are within 1 per cent where no compression came between', (name) => {
    const {pixels, patches} = uncompressed(name);
    const {gains} = readCard(pixels, patches);
    const [red, green, blue] = truthOf(name).card!.patches_px.gray.mean_linear;
    expect(Math.abs(gains!.red * red / green - 1)).toBeLessThan(0.01);
    expect(Math.abs(gains!.blue * blue / green - 1)).toBeLessThan(0.01);
  });

  it.each(both)('%s, %s: exposure error is that of the render', async (name, how) => {
    const {exposureError} = await reading(name, how);
    const [red, green, blue] = truthOf(name).card!.patches_px.gray.mean_linear;
    expect(Math.abs(exposureError - Math.log2((0.2126 * red + 0.7152 * green + 0.0722 * blue) / 0.18))).toBeLessThan(0.03);
  });

  it.each(both)('%s, %s: may be trusted, with no glare and nothing uneven', async (name, how) => {
    const {trusted, faults, veil} = await reading(name, how);
    expect(trusted).toBe(true);
    expect(faults.filter(({fault}) => fault !== 'white-clipped')).toEqual([]);
    expect(Math.abs(veil)).toBeLessThan(0.03);
  });

  it.each([
    ['card-neutral', false], ['card-warm', true], ['card-mixed', true],
  ] as const)('%s: white clipped is %s', async (name, clipped) => {
    // Rendered white is 0.95 under neutral light; under the coloured lamps red is 1.7, well past 1.
    const {faults} = await reading(name, 'marked');
    expect(truthOf(name).card!.patches_px.white.mean_linear[0] > 1).toBe(clipped);
    expect(faults.some(({fault}) => fault === 'white-clipped')).toBe(clipped);
  });
});

describe('a card that mirrors the lamp', () => {
  it.each(['found', 'marked'] as const)('is not to be trusted: patches %s', async (how) => {
    const {trusted, faults, gains, veil} = await reading('card-glare', how);
    expect(trusted).toBe(false);
    expect(gains).toBeUndefined();
    expect(faults.map(({fault}) => fault)).toEqual(expect.arrayContaining(['gray-clipped', 'black-lifted', 'uneven']));
    expect(veil).toBeGreaterThan(0.5);
  });

  it('is told from a clean one by the veil alone, when a weaker reflection clips nothing', () => {
    // Invented: a tenth, then three tenths of the gray patch's light laid over all three patches.
    const light = [0.9, 0.18, 0.035] as const;
    const clean = readCard(...cardOf(light));
    const slight = readCard(...cardOf(light.map((value) => value + 0.009)));
    const strong = readCard(...cardOf(light.map((value) => value * 0.7 + 0.054)));
    expect(clean.veil).toBeCloseTo(0, 1);
    expect(slight.veil).toBeCloseTo(0.05, 2);
    expect(slight.trusted).toBe(true);
    expect(strong.veil).toBeCloseTo(0.054 / (0.18 * 0.7), 1);
    expect(strong.faults.map(({fault}) => fault)).toEqual(['black-lifted']);
  });

  it.each([
    ['left', (x: number) => 1 - x], ['right', (x: number) => x],
    ['top', (_: number, y: number) => 1 - y], ['bottom', (_: number, y: number) => y],
    ['middle', (x: number, y: number) => (Math.hypot(x - 0.5, y - 0.5) < 0.17 ? 1 : 0)],
  ] as const)('says on which side of gray the light sits: %s', (side, shape) => {
    const [pixels, patches] = cardOf([0.9, 0.18, 0.035], (patch, x, y) => (patch === 1 ? 1 + 0.4 * shape(x, y) : 1));
    const {faults, trusted} = readCard(pixels, patches);
    expect(faults).toEqual([expect.objectContaining({fault: 'uneven', patch: 'gray', brighter: side})]);
    expect(trusted).toBe(false);
  });
});

describe('a card under impossible light', () => {
  it('has no gains when a channel of gray is black', () => {
    const [pixels, patches] = cardOf([0.9, 0.18, 0.035]);
    for (let at = 2; at < pixels.data.length; at += 4) pixels.data[at] = 0;
    const {gains, faults, trusted} = readCard(pixels, patches);
    expect(gains).toBeUndefined();
    expect(trusted).toBe(false);
    expect(faults.map(({fault}) => fault)).toContain('gray-black');
  });

  it('is all glare when black is as bright as gray', () => {
    const {veil, trusted} = readCard(...cardOf([0.9, 0.4, 0.4]));
    expect(veil).toBe(Infinity);
    expect(trusted).toBe(false);
  });
});

type Shade = (patch: number, x: number, y: number) => number;

/** A drawn card of three patches, 60 px each, evenly lit unless shaded. Invented. */
function cardOf(light: readonly number[], shade: Shade = () => 1): [Pixels, CardPatches] {
  return drawn(light.map((value) => [value, value, value] as const), shade);
}

/** The render's own patch means, rounded to codes with the grain they were rendered with, but never compressed. */
function uncompressed(name: string): {pixels: Pixels; patches: CardPatches} {
  const truth = truthOf(name).card!.patches_px;
  let state = 1;
  const grain: Shade = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return 1 + 0.05 * (state / 2 ** 32 - 0.5);
  };
  const [pixels, patches] = drawn(PATCHES.map((patch) => truth[patch].mean_linear), grain);
  return {pixels, patches};
}

function drawn(lights: readonly (readonly [number, number, number])[], shade: Shade): [Pixels, CardPatches] {
  const side = 60;
  const data = new Uint8ClampedArray(side * 3 * side * 4).fill(255);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side * 3; x++) {
      const patch = Math.floor(x / side);
      const factor = shade(patch, (x % side) / side, y / side);
      lights[patch]!.forEach((light, channel) => { data[(y * side * 3 + x) * 4 + channel] = codeOf(light * factor); });
    }
  }
  const crop = (patch: number): CardPatches['white'] => ({x: patch * side, y: 0, width: side, height: side});
  return [{data, width: side * 3, height: side}, {white: crop(0), gray: crop(1), black: crop(2)}];
}

/** sRGB code of linear light, IEC 61966-2-1, written out here so that the drawing does not lean on what it checks. */
function codeOf(light: number): number {
  return 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.min(1, light) ** (1 / 2.4) - 0.055);
}
