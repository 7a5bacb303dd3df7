import {describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import {findCard} from '../../../src/core/white/patches.js';
import type {CardPatches} from '../../../src/core/white/patches.js';
import type {Crop, Pixels} from '../../../src/core/tone/pixels.js';
import {readLevel} from '../../../src/core/tone/level.js';
import {picture, pixelsOf, sharpOf, shots, truthOf} from '../../reference/shots/picture.js';
import {noise} from '../tone/plain.js';

/** Ground truth: corners of the patches in tests/reference/shots/shots.json. */
const cards = shots.filter(({card}) => card).map(({file}) => file.replace('.jpg', ''));
const others = shots.filter(({card}) => !card).map(({file}) => file.replace('.jpg', ''));
const PATCHES = ['white', 'gray', 'black'] as const;

/** The rectangle that the corners of a patch enclose. */
function extent(name: string, patch: typeof PATCHES[number]): {left: number; top: number; right: number; bottom: number} {
  const {corners} = truthOf(name).card!.patches_px[patch];
  const [x, y] = [corners.map((corner) => corner[0]), corners.map((corner) => corner[1])];
  return {left: Math.min(...x), top: Math.min(...y), right: Math.max(...x), bottom: Math.max(...y)};
}

describe('finding the card', () => {
  it.each(cards)('in %s: each patch in its place, and a good part of it', async (name) => {
    const found = findCard(await picture(name)) as CardPatches;
    for (const patch of PATCHES) {
      const {x, y, width, height} = found[patch];
      const truth = extent(name, patch);
      expect(x).toBeGreaterThan(truth.left);
      expect(y).toBeGreaterThan(truth.top);
      expect(x + width).toBeLessThan(truth.right);
      expect(y + height).toBeLessThan(truth.bottom);
      expect(width * height / ((truth.right - truth.left) * (truth.bottom - truth.top))).toBeGreaterThan(0.15);
    }
  });

  it.each(others)('finds none in %s, where there is none', async (name) => {
    expect(findCard(await picture(name))).toBeUndefined();
  });

  it.each([90, 180, 270])('does not mind a picture turned by %i°', async (angle) => {
    const pixels = await picture('card-neutral');
    const found = findCard(await pixelsOf(sharpOf(pixels).rotate(angle))) as CardPatches;
    const straight = findCard(pixels) as CardPatches;
    const [white, gray, black] = PATCHES.map((patch) => middle(found[patch])) as [Point, Point, Point];
    PATCHES.forEach((patch) => {
      const [x, y] = turned(middle(straight[patch]), pixels, angle);
      // A cell of the search is 9 px.
      expect(Math.hypot(middle(found[patch])[0] - x, middle(found[patch])[1] - y)).toBeLessThan(18);
    });
    expect(Math.hypot(white[0] - gray[0], white[1] - gray[1])).toBeCloseTo(Math.hypot(gray[0] - black[0], gray[1] - black[1]), -2);
  });

  it.each([700, 3000])('does not mind a file %i px wide', async (width) => {
    const pixels = await picture('card-neutral');
    const sized = await pixelsOf(sharpOf(pixels).resize({width}));
    const found = findCard(sized) as CardPatches;
    const truth = extent('card-neutral', 'gray');
    const scale = width / pixels.width;
    const [x, y] = middle(found.gray);
    expect(Math.abs(x / scale - (truth.left + truth.right) / 2)).toBeLessThan(10);
    expect(Math.abs(y / scale - (truth.top + truth.bottom) / 2)).toBeLessThan(10);
  });

  it('finds it two stops darker and brighter, until white and gray are one', async () => {
    const pixels = await picture('card-neutral');
    for (const factor of [0.5, 1.3]) {
      const found = findCard(await pixelsOf(sharpOf(pixels).removeAlpha().linear(factor, 0)));
      expect(found).toBeDefined();
      expect(readLevel(pixels, found!.gray).luminance.mean).toBeCloseTo(0.18, 2);
    }
  });

  it('looks only where it is told to', async () => {
    const pixels = await picture('card-neutral');
    expect(findCard(pixels, {x: 0, y: 750, width: 420, height: 200})).toBeDefined();
    expect(findCard(pixels, {x: 420, y: 0, width: 1000, height: 1000})).toBeUndefined();
    expect(() => findCard(pixels, {x: 2000, y: 0, width: 10, height: 10})).toThrow(Problem);
  });

  it.each([['squares', true], ['diamonds', false]] as const)('takes three %s in a row for a card: %s', (shape, isCard) => {
    // Card tones, codes 243, 118 and 53, on a busy ground. Invented.
    const pixels = noise(640, 400, 9);
    [243, 118, 53].forEach((code, patch) => {
      for (let y = -40; y < 40; y++) {
        for (let x = -40; x < 40; x++) {
          if (shape === 'diamonds' && Math.abs(x) + Math.abs(y) > 40) continue;
          const at = ((200 + y) * 640 + 200 + patch * 90 + x) * 4;
          pixels.data.fill(code, at, at + 3);
        }
      }
    });
    expect(findCard(pixels) !== undefined).toBe(isCard);
  });

  it('finds nothing in noise, in one tone, in one pixel', () => {
    expect(findCard(noise(300, 200, 5))).toBeUndefined();
    expect(findCard({data: new Uint8ClampedArray(300 * 200 * 4).fill(90), width: 300, height: 200})).toBeUndefined();
    expect(findCard(noise(1, 1, 5))).toBeUndefined();
  });
});

type Point = readonly [number, number];

function middle({x, y, width, height}: Crop): Point {
  return [x + width / 2, y + height / 2];
}

/** Where a point goes when the picture is turned clockwise. */
function turned([x, y]: Point, {width, height}: Pixels, angle: number): Point {
  if (angle === 90) return [height - y, x];
  return angle === 180 ? [width - x, height - y] : [y, width - x];
}
