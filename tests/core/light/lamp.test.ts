import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import type {Flag} from '../../../src/core/light/flag.js';
import type {Lamp} from '../../../src/core/light/lamp.js';
import type {Point} from '../../../src/core/light/space.js';
import {illuminance, lampCorners, visibleShare} from '../../../src/core/light/lamp.js';
import {along, minus, norm} from '../../../src/core/light/space.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published, publishedValue} from '../../reference/published.js';
import {anyFacing, anyFlag, anyLamp, anyPlace} from './arbitrary.js';
import {castRays} from './rays.js';

// View factors: tests/reference/published/light.json (Howell's catalogue, Siegel and Howell, Incropera).

/** A face of that size in the plane z = `up`, shining down, its first corner over 0, 0. */
const ceiling = (wide: number, deep: number, up: number, x = wide / 2, y = deep / 2): Lamp =>
  ({kind: 'rectangle', position: [x, y, up], aim: [x, y, up - 1], width: wide, height: deep, power: 0});

/** Light as a share of what leaves the face: the unit of the catalogues. */
const viewFactor = (lamp: Lamp, at: Point, facing: Point): number =>
  illuminance(lamp, at, facing) * (lamp.width as number) * (lamp.height as number) / (Math.PI * 1e6);

/** Mean of a function over a square from 0 to `side`, by midpoints. */
function mean(side: number, cells: number, value: (u: number, v: number) => number): number {
  let sum = 0;
  for (let i = 0; i < cells; i++) {
    for (let j = 0; j < cells; j++) sum += value((i + 0.5) / cells * side, (j + 0.5) / cells * side);
  }
  return sum / cells ** 2;
}

const corners = published('light').filter(({id}) => id.startsWith('vf-corner-'));

test.each(corners.map((record) => [record.id, record] as const))(
  'a small patch below the corner of a lit rectangle gets the printed share: %s', (_, record) => {
    const factor = viewFactor(ceiling(200 * input(record, 'A'), 200 * input(record, 'B'), 200), [0, 0, 0], [0, 0, 1]);
    expect(Math.abs(factor - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance as number);
  });

test('a centred soft box gives the printed share, well below what the inverse square says', () => {
  const record = publishedValue('light', 'softbox-centred');
  const factor = viewFactor(ceiling(600, 900, 700, 0, 0), [0, 0, 0], [0, 0, 1]);
  expect(Math.abs(factor - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance as number);
});

test.each([['vf-squares', 50], ['vf-squares-1', 100]])(
  'opposed squares exchange the printed share, summed over one of them: %s', (id, gap) => {
    const record = publishedValue('light', id);
    const factor = mean(100, 40, (x, y) => viewFactor(ceiling(100, 100, gap), [x, y, 0], [0, 0, 1]));
    expect(Math.abs(factor - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance as number);
  });

test('squares that share an edge at right angles exchange the printed share', () => {
  const record = publishedValue('light', 'vf-perp-1-1');
  const wall: Lamp = {kind: 'rectangle', position: [50, 0, 50], aim: [50, 1, 50], width: 100, height: 100, power: 0};
  const factor = mean(100, 80, (x, y) => viewFactor(wall, [x, y, 0], [0, 0, 1]));
  expect(Math.abs(factor - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance as number);
});

/** mm of a point from the plane of a card. */
const offPlane = ({position, facing: [x, y, z]}: Flag, at: Point): number =>
  ((at[0] - position[0]) * x + (at[1] - position[1]) * y + (at[2] - position[2]) * z) / Math.hypot(x, y, z);

test('any lamp past any cards, at any place and facing, gives what a ray-cast finds', () => {
  fc.assert(fc.property(
    anyLamp.filter(({kind}) => kind === 'disc' || kind === 'rectangle'), anyPlace, anyFacing,
    fc.array(anyFlag, {maxLength: 3}),
    (lamp, at, facing, flags) => {
      // A card that the point itself lies in is neither before nor behind it.
      fc.pre(flags.every((flag) => Math.abs(offPlane(flag, at)) > 1));
      const rays = castRays(lamp, at, facing, flags, 100);
      const open = castRays(lamp, at, facing, [], 100).light;
      const headOn = castRays(lamp, at, minus(lamp.position, at), [], 20).light;
      // A grid of 100² rays misjudges a shadow's edge by one row, and a sliver above the horizon by its own rows.
      expect(Math.abs(illuminance(lamp, at, facing, flags) - rays.light))
        .toBeLessThanOrEqual(0.03 * open + 0.0005 * headOn + 1e-9);
      expect(Math.abs(visibleShare(lamp, at, flags) - rays.share)).toBeLessThanOrEqual(0.03);
    },
  ), {numRuns: 60, seed: 5, endOnFailure: true});
});

test('a disc cut by a card joins on to the whole disc without a step', () => {
  const lamp: Lamp = {kind: 'disc', position: [0, -300, 300], aim: [0, 0, 45], width: 250, power: 0};
  const speck = {position: [0, -150, 172.5], facing: [0, -300, 255], width: 0.01, height: 0.01} as const;
  const whole = illuminance(lamp, [0, 0, 45], [0, -1, 0]);
  expect(illuminance(lamp, [0, 0, 45], [0, -1, 0], [speck]) / whole).toBeCloseTo(1, 4);
});

describe('laws of light', () => {
  test('farther on the axis is never brighter', () => {
    const mm = fc.double({min: 5, max: 3000, noNaN: true});
    const factor = fc.double({min: 1, max: 4, noNaN: true});
    fc.assert(fc.property(anyLamp, mm, factor, (lamp, near, times) => {
      const way = minus(lamp.aim, lamp.position);
      const light = (far: number): number =>
        illuminance(lamp, along(lamp.position, way, far / norm(way)), minus(lamp.position, lamp.aim));
      expect(light(near * times)).toBeLessThanOrEqual(light(near) * (1 + 1e-9));
    }));
  });
  test('a card never adds light, whichever cards stand there already', () => {
    fc.assert(fc.property(anyLamp, anyPlace, anyFacing, fc.array(anyFlag, {maxLength: 2}), anyFlag,
      (lamp, at, facing, flags, flag) => {
        const before = illuminance(lamp, at, facing, flags);
        // A disc that a card cuts is taken as a polygon of its area, within 0.0001 of the disc.
        expect(illuminance(lamp, at, facing, [...flags, flag])).toBeLessThanOrEqual(before * 1.0002 + 1e-9);
        expect(visibleShare(lamp, at, [...flags, flag])).toBeLessThanOrEqual(visibleShare(lamp, at, flags) + 1e-9);
      }));
  });
  test('a share is from 0 to 1, and the order of cards does not matter', () => {
    fc.assert(fc.property(anyLamp, anyPlace, anyFlag, anyFlag, (lamp, at, one, other) => {
      const share = visibleShare(lamp, at, [one, other]);
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
      expect(visibleShare(lamp, at, [other, one])).toBeCloseTo(share, 6);
    }));
  });
  test('a stop of power doubles the light, and a set twice as large needs two', () => {
    fc.assert(fc.property(anyLamp, anyPlace, anyFacing, anyFlag, (lamp, at, facing, flag) => {
      // A point within a hair of the card's plane: the card hides all or nothing, by rounding.
      fc.pre(Math.abs(offPlane(flag, at)) > 0.001);
      const light = illuminance(lamp, at, facing, [flag]);
      expect(illuminance({...lamp, power: lamp.power + 1}, at, facing, [flag])).toBeCloseTo(2 * light, 9);
      const twice = (point: Point): Point => [2 * point[0], 2 * point[1], 2 * point[2]];
      const large: Lamp = {...lamp, position: twice(lamp.position), aim: twice(lamp.aim),
        width: 2 * (lamp.width as number), height: 2 * (lamp.height as number), power: lamp.power + 2};
      const card = {...flag, position: twice(flag.position), width: 2 * flag.width, height: 2 * flag.height};
      expect(Math.abs(illuminance(large, twice(at), facing, [card]) - light)).toBeLessThanOrEqual(1e-6 * (1 + light));
    }));
  });
});

describe('edges', () => {
  const panel = ceiling(100, 100, 200);
  it('gives nothing behind a lamp, in its plane, and to a surface turned away', () => {
    expect(illuminance(panel, [50, 50, 300], [0, 0, -1])).toBe(0);
    expect(illuminance(panel, [500, 50, 200], [-1, 0, 0])).toBe(0);
    expect(illuminance(panel, [50, 50, 0], [0, 0, -1])).toBe(0);
  });
  it('comes close to all the sky that a face can be', () => {
    expect(viewFactor(panel, [50, 50, 199.99], [0, 0, 1])).toBeCloseTo(1, 3);
  });
  it('knows the corners it draws with, and one point for a lamp without size', () => {
    expect(lampCorners(panel).map((corner) => corner.map(Math.round)).sort())
      .toEqual([[0, 0, 200], [0, 100, 200], [100, 0, 200], [100, 100, 200]]);
    expect(lampCorners({...panel, kind: 'bulb'})).toEqual([[50, 50, 200]]);
  });
  it('sees all of a lamp it is behind: no card matters there', () => {
    const card = {position: [50, 50, 250], facing: [0, 0, 1], width: 500, height: 500} as const;
    expect(visibleShare(panel, [50, 50, 300], [card])).toBe(1);
  });
  it.each([0, -5, NaN])('refuses a lamp %s mm wide, and one aimed at itself, by name', (bad) => {
    expect(() => illuminance({...panel, width: bad}, [0, 0, 0], [0, 0, 1])).toThrow(/^lamp-width/);
    expect(() => illuminance({...panel, height: bad}, [0, 0, 0], [0, 0, 1])).toThrow(/^lamp-height/);
    expect(() => illuminance({...panel, aim: panel.position}, [0, 0, 0], [0, 0, 1])).toThrow(/^lamp-aim/);
    expect(() => illuminance({...panel, power: NaN}, [0, 0, 0], [0, 0, 1])).toThrow(/^lamp-power/);
    expect(() => illuminance(panel, panel.position, [0, 0, 1])).toThrow(Problem);
    expect(() => illuminance(panel, [0, 0, 0], [0, 0, 0])).toThrow(/^facing/);
  });
});
