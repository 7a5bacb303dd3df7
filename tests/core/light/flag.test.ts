import {describe, expect, it, test} from 'vitest';
import type {Flag} from '../../../src/core/light/flag.js';
import type {Lamp} from '../../../src/core/light/lamp.js';
import {flagCorners, isHidden, penumbraWidth, umbraWidth} from '../../../src/core/light/flag.js';
import {illuminance, visibleShare} from '../../../src/core/light/lamp.js';
import {input, publishedValue} from '../../reference/published.js';
import {castRays} from './rays.js';

test.each([['penumbra-nde', 'f', 10], ['penumbra-60-300-200', 'S', 1]] as const)(
  'the soft edge is as wide as the printed example: %s', (id, size, mm) => {
    // Geometric unsharpness, NDE-Ed.org (Iowa State University); its lengths are in cm, its widths in mm.
    const record = publishedValue('light', id);
    const width = penumbraWidth(input(record, size), mm * input(record, 'a'), mm * input(record, 'b'));
    expect(Math.abs(width - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance as number);
  });

describe('a shadow measured on the backdrop', () => {
  // Lamp 60 mm, card 80 mm wide 300 mm behind it, backdrop 200 mm further: the two printed examples in one set.
  const umbra = publishedValue('light', 'umbra-flag');
  const [card, size, near, far] = ['W', 'S', 'a', 'b'].map((name) => input(umbra, name)) as
    [number, number, number, number];
  const lamp: Lamp = {kind: 'rectangle', position: [0, -near, 0], aim: [0, 0, 0], width: size, height: size, power: 0};
  const flag: Flag = {position: [0, 0, 0], facing: [0, 1, 0], width: card, height: 4000};
  const share = (x: number): number => visibleShare(lamp, [x, far, 0], [flag]);
  const shadowEdge = Number(umbra.expected.value) / 2;
  const lightEdge = shadowEdge + Number(publishedValue('light', 'penumbra-60-300-200').expected.value);

  it('is as wide as the printed full shadow, to a hundredth of a mm', () => {
    expect(umbraWidth(card, size, near, far)).toBeCloseTo(Number(umbra.expected.value), 5);
    expect(share(shadowEdge - 0.01)).toBe(0);
    expect(share(shadowEdge + 0.01)).toBeGreaterThan(0);
  });
  it('ends where the printed soft edge ends', () => {
    expect(share(lightEdge - 0.01)).toBeLessThan(1);
    expect(share(lightEdge + 0.01)).toBe(1);
  });
  it('rises evenly between the two, for a square lamp square to the card', () => {
    // Common practice, no source: halfway across the soft edge half the lamp is seen (widths printed to 6 decimals).
    expect(share((shadowEdge + lightEdge) / 2)).toBeCloseTo(0.5, 7);
  });
  it('has no full shadow once the card is too small for the lamp at that distance', () => {
    expect(umbraWidth(20, size, near, far)).toBeLessThan(0);
    expect(visibleShare(lamp, [0, far, 0], [{...flag, width: 20}])).toBeGreaterThan(0);
  });
});

test('two cards that overlap take their common shadow once', () => {
  const lamp: Lamp = {kind: 'rectangle', position: [0, 0, 600], aim: [0, 0, 0], width: 200, height: 200, power: 2};
  const one: Flag = {position: [-20, 0, 300], facing: [0, 0.2, 1], width: 60, height: 90};
  const other: Flag = {position: [20, 15, 280], facing: [0.3, 0, 1], width: 70, height: 60};
  const at = [5, -8, 0] as const;
  const rays = castRays(lamp, at, [0, 0, 1], [one, other], 500);
  expect(visibleShare(lamp, at, [one, other])).toBeCloseTo(rays.share, 2);
  expect(illuminance(lamp, at, [0, 0, 1], [one, other]) / rays.light).toBeCloseTo(1, 2);
  const lost = (flags: readonly Flag[]): number => 1 - visibleShare(lamp, at, flags);
  expect(lost([one, other])).toBeLessThan(lost([one]) + lost([other]));
});

test('a bulb is seen or it is not', () => {
  const bulb: Lamp = {kind: 'bulb', position: [0, 0, 600], aim: [0, 0, 0], power: 0};
  const flag: Flag = {position: [0, 0, 300], facing: [0, 0, 1], width: 20, height: 20};
  expect(visibleShare(bulb, [0, 0, 0], [flag])).toBe(0);
  expect(illuminance(bulb, [0, 0, 0], [0, 0, 1], [flag])).toBe(0);
  expect(visibleShare(bulb, [21, 0, 0], [flag])).toBe(1);
  expect(isHidden([0, 0, 600], [flag], [19, 0, 0])).toBe(true);
});

test('a card beyond the lamp, behind the point, or seen edge-on hides nothing', () => {
  const lamp: Lamp = {kind: 'rectangle', position: [0, 0, 600], aim: [0, 0, 0], width: 100, height: 100, power: 0};
  const card = {width: 400, height: 400} as const;
  expect(visibleShare(lamp, [0, 0, 0], [{...card, position: [0, 0, 700], facing: [0, 0, 1]}])).toBe(1);
  expect(visibleShare(lamp, [0, 0, 0], [{...card, position: [0, 0, -50], facing: [0, 0, 1]}])).toBe(1);
  expect(visibleShare(lamp, [0, 0, 0], [{...card, position: [0, 0, 300], facing: [0, 1, 0]}])).toBe(1);
});

test('a card that cuts through the lamp hides the part behind it only', () => {
  const lamp: Lamp = {kind: 'rectangle', position: [0, 0, 600], aim: [0, 0, 0], width: 100, height: 100, power: 0};
  const card: Flag = {position: [0, 0, 600], facing: [1, 0, 1], width: 400, height: 400};
  expect(visibleShare(lamp, [0, 0, 0], [card])).toBeCloseTo(0.5, 9);
});

test('the corners of an upright card lie where its size says', () => {
  const corners = flagCorners({position: [10, 20, 30], facing: [0, -3, 0], width: 40, height: 60});
  expect(corners.map(([x, y, z]) => [x, y, z].map(Math.round)).sort())
    .toEqual([[-10, 20, 0], [-10, 20, 60], [30, 20, 0], [30, 20, 60]]);
});

it.each([0, -1, NaN])('refuses sizes and distances of %s by name', (bad) => {
  const flag: Flag = {position: [0, 0, 0], facing: [0, 1, 0], width: 10, height: 10};
  expect(() => flagCorners({...flag, width: bad})).toThrow(/^flag-width/);
  expect(() => flagCorners({...flag, height: bad})).toThrow(/^flag-height/);
  expect(() => flagCorners({...flag, facing: [bad * 0, 0, 0]})).toThrow(/^flag-facing/);
  expect(() => penumbraWidth(10, bad, 10)).toThrow(/^flag-distance/);
  expect(() => umbraWidth(bad, 10, 10, 10)).toThrow(/^flag-width/);
});
