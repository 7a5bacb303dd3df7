import {describe, expect, it, test} from 'vitest';
import type {Lamp} from '../../../src/core/light/lamp.js';
import {backdropLevels} from '../../../src/core/light/backdrop.js';
import {illuminance} from '../../../src/core/light/lamp.js';
import {
  backdropDistanceFor, brightestBelowGray, firstReach, lampDistanceFor, lightTrade,
} from '../../../src/core/light/reach.js';
import {input, publishedValue} from '../../reference/published.js';
import {rendered} from './rendered.js';

const {set, probe} = rendered('key');

describe('backdropDistanceFor', () => {
  it('asks the rendered backdrop back to where the second picture has it, for the difference the pictures show', () => {
    const far = rendered('twice-as-far');
    const stops = Math.log2(rendered('key').measured / far.measured);
    const distance = backdropDistanceFor(set, [probe], brightestBelowGray(set, [probe]) + stops, 3000);
    expect(Math.abs(distance - far.set.backdrop.distance)).toBeLessThan(30);
  });
  it('reaches the wish and not more', () => {
    const distance = backdropDistanceFor(set, [probe], 4.5, 3000);
    const level = (at: number): number =>
      backdropLevels({...set, backdrop: {...set.backdrop, distance: at}}, [probe])[0]?.belowGray ?? NaN;
    expect(level(distance)).toBeGreaterThanOrEqual(4.5);
    expect(level(distance - 0.01)).toBeLessThan(4.5);
  });
  it('leaves it where it is when it is dark enough', () => {
    expect(backdropDistanceFor(set, [probe], 1, 3000)).toBe(300);
  });
  it('says so when the room is too short, and when no place is named', () => {
    expect(() => backdropDistanceFor(set, [probe], 9, 1000)).toThrow(/^backdrop-distance/);
    expect(() => backdropDistanceFor(set, [], 2, 1000)).toThrow(/^places/);
  });
});

describe('lampDistanceFor', () => {
  const at = [0, 0, 45] as const;
  const bulb: Lamp = {kind: 'bulb', position: [0, -1000, 45], aim: at, power: 0};
  it.each(['stops-1-2', 'stops-1-1.41421356', 'stops-1-3'])('inverts the printed inverse square: %s', (id) => {
    // IES definition 9.1.1, tests/reference/published/light.json.
    const record = publishedValue('light', id);
    const lost = Number(record.expected.value);
    expect(lampDistanceFor(bulb, at, [0, -1, 0], -lost, 10, 9000)).toBeCloseTo(1000 * input(record, 'd2'), 2);
    expect(lampDistanceFor(bulb, at, [0, -1, 0], lost, 10, 9000)).toBeCloseTo(1000 / input(record, 'd2'), 2);
  });
  it('brings a soft box nearer than a bulb for the same two stops, as large lamps gain less', () => {
    const box: Lamp = {...bulb, kind: 'rectangle', width: 600, height: 600};
    const near = lampDistanceFor(box, at, [0, -1, 0], 2, 10, 9000);
    expect(near).toBeLessThan(lampDistanceFor(bulb, at, [0, -1, 0], 2, 10, 9000));
    const moved = illuminance({...box, position: [0, -near, 45]}, at, [0, -1, 0]);
    expect(Math.log2(moved / illuminance(box, at, [0, -1, 0]))).toBeCloseTo(2, 6);
  });
  it('says so when a large lamp cannot give that much from anywhere', () => {
    const box: Lamp = {...bulb, kind: 'rectangle', width: 600, height: 600};
    expect(() => lampDistanceFor(box, at, [0, -1, 0], 5, 10, 9000)).toThrow(/^lamp-distance/);
    expect(() => lampDistanceFor(bulb, at, [0, 1, 0], 1, 10, 9000)).toThrow(/^lamp-distance/);
  });
});

test('a lamp alone moved to twice the distance costs two stops and four times the shutter', () => {
  // IES definition 9.1.1, record stops-1-2.
  const before = {...set, lamps: [{kind: 'bulb', position: [0, -500, 45], aim: [0, 0, 45], power: 0}] as const};
  const after = {...set, lamps: [{...before.lamps[0], position: [0, -1000, 45]}] as const};
  const trade = lightTrade(before, after);
  expect(trade.stops).toBeCloseTo(-Number(publishedValue('light', 'stops-1-2').expected.value), 9);
  expect(trade.shutterFactor).toBeCloseTo(4, 9);
});

describe('firstReach', () => {
  it('finds the first of several places', () => {
    expect(firstReach((x) => Math.sin(x), 4, 20)).toBeCloseTo(2 * Math.PI, 8);
  });
  it('stays where it starts when that will do, walks down as well as up, and knows when nothing does', () => {
    expect(firstReach((x) => x, 5, 20)).toBe(5);
    expect(firstReach((x) => 3 - x, 10, 0)).toBeCloseTo(3, 8);
    expect(firstReach(() => -1, 0, 1)).toBeNull();
  });
});
