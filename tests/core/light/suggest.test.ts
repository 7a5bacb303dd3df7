import {describe, expect, it, test} from 'vitest';
import type {Place} from '../../../src/core/light/reach.js';
import type {SetMove} from '../../../src/core/light/suggest.js';
import type {TableSet} from '../../../src/core/light/set.js';
import {flagClearance} from '../../../src/core/light/clearance.js';
import {brightestBelowGray} from '../../../src/core/light/reach.js';
import {TABLE_ROOM} from '../../../src/core/light/room.js';
import type {Point} from '../../../src/core/light/space.js';
import {along, minus} from '../../../src/core/light/space.js';
import {suggestFlag, suggestMoves} from '../../../src/core/light/suggest.js';
import {castRays} from './rays.js';
import {rendered} from './rendered.js';

/** Corners of the backdrop behind the figure that the picture shows, x and z, mm. */
const PLACES: readonly Place[] = [[-120, 40], [120, 40], [-120, 150], [120, 150]];

const spoiled = rendered('spill').set;
const flagged = rendered('spill-flag').set;

/** Light of one lamp on the places of a set, by ray-cast. */
const raysOn = (set: TableSet, lamp: number): number => PLACES.reduce((sum, [x, z]) => sum + castRays(
  set.lamps[lamp] as TableSet['lamps'][number], [x, set.backdrop.distance, z], [0, -1, 0], set.flags).light, 0);

describe('suggestFlag, in the rendered set that an overhead lamp spoils', () => {
  const move = suggestFlag(spoiled, 2, PLACES) as SetMove;
  const card = move.set.flags[0] as TableSet['flags'][number];

  it('hides the lamp from all of the backdrop, which the rendered flag does not', () => {
    expect(raysOn(move.set, 2)).toBe(0);
    expect(raysOn(flagged, 2)).toBeGreaterThan(0);
  });
  it('leaves the figure all of every lamp, and the exposure as it was', () => {
    expect(move.keepsLight).toBe(true);
    for (const [lamp, source] of spoiled.lamps.entries()) {
      const {least, most} = spoiled.figure;
      for (const corner of [least, most]) {
        expect([lamp, castRays(source, corner, [0, -1, 0], [card]).share]).toEqual([lamp, 1]);
      }
    }
    expect(move.stops).toBeCloseTo(0, 9);
    expect(move.shutterFactor).toBeCloseTo(1, 9);
  });
  it('helps as far as the other lamps let it: to the level without that lamp', () => {
    const without = {...spoiled, lamps: spoiled.lamps.slice(0, 2)};
    expect(move.belowGray).toBeCloseTo(brightestBelowGray(without, PLACES), 9);
    expect(move.belowGray).toBeGreaterThan(brightestBelowGray(spoiled, PLACES) + 1);
  });
  it('keeps clear of every lamp', () => {
    for (const lamp of spoiled.lamps) expect(flagClearance(card, lamp)).toBeGreaterThanOrEqual(TABLE_ROOM.clearance);
  });
  it('finds none where the figure needs the same light: the key from the front', () => {
    const key = spoiled.lamps[0] as TableSet['lamps'][number];
    expect(suggestFlag({...spoiled, lamps: [{...key, position: [0, -600, 60]}]}, 0, PLACES)).toBeNull();
  });
  it('names a lamp that is not there', () => {
    expect(() => suggestFlag(spoiled, 7, PLACES)).toThrow(/^lamp:/);
  });
});

/** An invented pair of soft boxes in front of a small figure, close before a card, and the camera that sees both. */
const TIGHT: TableSet = {
  lamps: [
    {kind: 'rectangle', width: 180, height: 180, position: [-230, -200, 300], aim: [0, 0, 45], power: 0},
    {kind: 'rectangle', width: 420, height: 420, position: [360, -330, 180], aim: [0, 0, 45], power: -1.5},
  ],
  flags: [], camera: [0, -380, 47.5],
  figure: {card: [0, 0, 47.5], facing: [0, -1, 0], least: [-45, -45, 0], most: [45, 45, 95]},
  backdrop: {distance: 300, reflectance: 0.04},
};
const SEEN: readonly Place[] = [-170, 0, 170].flatMap((x) => [20, 90, 160].map((z): Place => [x, z]));

describe('suggestFlag, where no card can hide all of a lamp', () => {
  const move = suggestFlag(TIGHT, 0, SEEN) as SetMove;
  const [card] = move.set.flags as [TableSet['flags'][number]];

  it('finds the card that hides most of it, cut back to where it can stand', () => {
    const without = brightestBelowGray({...TIGHT, lamps: TIGHT.lamps.slice(1)}, SEEN);
    expect(move.belowGray).toBeGreaterThan(brightestBelowGray(TIGHT, SEEN) + 2);
    // Against the gray card, which the key still lights: more than the fill alone would leave.
    expect(move.belowGray).toBeGreaterThan(without);
    const key = TIGHT.lamps[0] as TableSet['lamps'][number];
    const left = SEEN.map(([x, z]) => castRays(key, [x, 300, z], [0, -1, 0], [card]).share);
    expect(Math.max(...left)).toBeGreaterThan(0);
    expect(Math.max(...left)).toBeLessThan(0.15);
  });
  it('leaves the figure all of every lamp, by ray-cast', () => {
    for (const lamp of TIGHT.lamps) {
      for (const x of [-45, 45]) {
        for (const y of [-45, 45]) {
          for (const z of [0, 95]) expect(castRays(lamp, [x, y, z], [0, -1, 0], [card]).share).toBe(1);
        }
      }
    }
  });
  it('keeps the card out of the picture: no line from the camera to what it sees meets it', () => {
    const [x, y, z] = TIGHT.camera as Point;
    const [left, right] = [card.position[0] - card.width / 2, card.position[0] + card.width / 2];
    const [low, high] = [card.position[2] - card.height / 2, card.position[2] + card.height / 2];
    expect(card.facing.map(Math.abs)).toEqual([0, 1, 0]); // upright, so that it lies at one depth
    for (const [toX, toZ] of SEEN) {
      const share = (card.position[1] - y) / (300 - y);
      const at = [x + (toX - x) * share, z + (toZ - z) * share] as const;
      expect(at[0] > left && at[0] < right && at[1] > low && at[1] < high).toBe(false);
    }
  });
});

describe('suggestMoves', () => {
  const wish = brightestBelowGray(flagged, PLACES) + 0.3;
  const moves = suggestMoves(flagged, PLACES, wish);

  it('moves the flag that is there, and the lamp and the backdrop as other ways', () => {
    expect(moves.map(({thing}) => thing)).toEqual(expect.arrayContaining(['flag', 'lamp', 'backdrop']));
  });
  it('reaches the wish with each, as the set it hands over says itself', () => {
    for (const move of moves) {
      expect(move.belowGray).toBeGreaterThanOrEqual(wish);
      expect(brightestBelowGray(move.set, PLACES)).toBe(move.belowGray);
    }
  });
  it('moves no farther than it must: half of each way does not reach', () => {
    const shift = <T extends {readonly position: Point}>(things: readonly T[], index: number, position: Point): T[] =>
      things.map((thing, at) => at === index ? {...thing, position} : thing);
    for (const {thing, index, from, to} of moves) {
      const halfway = along(from, minus(to, from), 0.5);
      const half: TableSet = {
        ...flagged,
        flags: thing === 'flag' ? shift(flagged.flags, index, halfway) : flagged.flags,
        lamps: thing === 'lamp' ? shift(flagged.lamps, index, halfway) : flagged.lamps,
        backdrop: thing === 'backdrop' ? {...flagged.backdrop, distance: halfway[1]} : flagged.backdrop,
      };
      expect([thing, brightestBelowGray(half, PLACES) < wish]).toEqual([thing, true]);
    }
  });
  it('puts moves that leave the figure its light first, the shortest of them first', () => {
    const order = moves.map(({keepsLight, distance}) => (keepsLight ? 0 : 1e6) + distance);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });
  it('says what a moved lamp costs at the figure, in stops and shutter', () => {
    const key = moves.find(({thing, index}) => thing === 'lamp' && index === 0);
    expect(key?.stops).not.toBe(0);
    expect(Math.log2(key?.shutterFactor ?? NaN)).toBeCloseTo(-(key?.stops ?? NaN), 9);
  });
  it('has nothing to say when it is dark enough, and nothing that would do for the impossible', () => {
    expect(suggestMoves(flagged, PLACES, brightestBelowGray(flagged, PLACES) - 0.1)).toEqual([]);
    expect(suggestMoves(flagged, PLACES, 30)).toEqual([]);
  });
});

test('a lamp moved to the figure stops short of it', () => {
  const dark = suggestMoves(rendered('key').set, PLACES, 4, {...TABLE_ROOM, backdrop: 300});
  for (const {to} of dark) {
    const {least, most} = spoiled.figure;
    const outside = [0, 1, 2].some((axis) =>
      (to[axis] as number) < (least[axis] as number) || (to[axis] as number) > (most[axis] as number));
    expect(outside).toBe(true);
  }
});
