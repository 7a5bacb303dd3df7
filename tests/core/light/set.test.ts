import {describe, expect, it} from 'vitest';
import type {TableSet} from '../../../src/core/light/set.js';
import {figureShares, lightAt, tableGlow} from '../../../src/core/light/set.js';
import {castRays} from './rays.js';
import {rendered} from './rendered.js';

const {set, probe} = rendered('spill-flag');
const at = [probe[0], set.backdrop.distance, probe[1]] as const;
const facing = [0, -1, 0] as const;
/** Invented: a wooden table top. */
const wood = {left: -300, right: 300, front: -300, back: 300, reflectance: 0.3};

describe('light off the table top', () => {
  const open: TableSet = {...set, flags: [], table: wood};

  it('is what ray-cast light on a far finer grid throws on', () => {
    const lit = lightAt(open, at, facing);
    const cells = 60;
    const side = 600 / cells;
    open.lamps.forEach((lamp, index) => {
      let sum = 0;
      for (let i = 0; i < cells ** 2; i++) {
        const spot = [-300 + side * (i % cells + 0.5), -300 + side * (Math.floor(i / cells) + 0.5), 0] as const;
        const way = at.map((part, axis) => part - (spot[axis] as number)) as [number, number, number];
        const far = Math.hypot(...way);
        sum += 0.3 / Math.PI * castRays(lamp, spot, [0, 0, 1], [], 6).light * way[2] * way[1] / far ** 4 * side ** 2;
      }
      expect(Math.abs((lit.bounced[index] as number) / sum - 1)).toBeLessThan(0.03);
    });
  });
  it('adds nothing without a table, and twice as much from one twice as pale', () => {
    expect(tableGlow(set)).toEqual([]);
    expect(lightAt({...open, table: {...wood, reflectance: 0}}, at, facing).bounced).toEqual([0, 0, 0]);
    const pale = lightAt({...open, table: {...wood, reflectance: 0.6}}, at, facing).bounced[2] as number;
    expect(pale / (lightAt(open, at, facing).bounced[2] as number)).toBeCloseTo(2, 9);
  });
  it('is nothing on a surface that faces away from the table', () => {
    expect(lightAt(open, at, [0, 0, 1]).bounced.map((part) => Math.round(part * 1e9))).toEqual([0, 0, 0]);
  });
  it('leaves what comes straight from the lamps as it is', () => {
    expect(lightAt(open, at, facing).direct).toEqual(lightAt({...set, flags: []}, at, facing).direct);
  });
});

describe('figureShares', () => {
  it('finds that the rendered flag takes nothing of key and fill', () => {
    expect(figureShares(set).slice(0, 2)).toEqual([1, 1]);
  });
  it('tells which lamp a card before the key takes from the figure, by its worst corner', () => {
    const card = {position: [-115, -100, 172], facing: [-230, -200, 255], width: 60, height: 60} as const;
    const [key, fill] = figureShares({...set, flags: [card]});
    expect(key).toBeLessThan(0.9);
    expect(fill).toBe(1);
    const worst = Math.min(...[set.figure.least[0], set.figure.most[0]].flatMap((x) =>
      [set.figure.least[1], set.figure.most[1]].flatMap((y) => [set.figure.least[2], set.figure.most[2]].map((z) =>
        castRays(set.lamps[0] as TableSet['lamps'][number], [x, y, z], facing, [card]).share))));
    expect(key).toBeCloseTo(worst, 1);
  });
});
