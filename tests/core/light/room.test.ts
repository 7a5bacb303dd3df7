import {describe, expect, it, test} from 'vitest';
import type {Flag} from '../../../src/core/light/flag.js';
import type {Place} from '../../../src/core/light/reach.js';
import type {TableSet} from '../../../src/core/light/set.js';
import {flagClearance} from '../../../src/core/light/clearance.js';
import {TABLE_ROOM, isFree} from '../../../src/core/light/room.js';
import {rendered} from './rendered.js';

const {set} = rendered('key');
const PLACES: readonly Place[] = [[-100, 40], [100, 140]];
const card = (position: Flag['position']): Flag => ({position, facing: [0, 1, 0], width: 60, height: 60});
const withCard = (position: Flag['position']): TableSet => ({...set, flags: [card(position)]});
const free = (after: TableSet, before: TableSet = set): boolean => isFree(before, after, PLACES, TABLE_ROOM);

describe('isFree', () => {
  it('lets a card stand beside the figure, out of the picture', () => {
    expect(free(withCard([-250, 100, 60]))).toBe(true);
  });
  it('lets none through the table, or through the backdrop', () => {
    expect(free(withCard([-250, 100, 20]))).toBe(false);
    expect(free({...set, flags: [{...card([-250, 290, 60]), facing: [1, 0, 0]}]})).toBe(false);
  });
  it('lets none into the picture, before the figure or before the backdrop between the places', () => {
    expect(free(withCard([0, -150, 60]))).toBe(false);
    expect(free(withCard([0, 200, 90]))).toBe(false);
    const {lamps, flags, figure, backdrop} = set;
    const unseen = {lamps, flags, figure, backdrop};
    expect(free({...unseen, flags: [card([0, 200, 90])]}, unseen)).toBe(true);
  });
  it('lets none nearer to a lamp than its clearance', () => {
    expect(free(withCard([-230, -200, 220]))).toBe(false);
    expect(isFree(set, withCard([-230, -200, 100]), PLACES, {...TABLE_ROOM, clearance: 20})).toBe(true);
  });
  it('lets no lamp onto the figure', () => {
    const moved = set.lamps.map((lamp, index) => index === 0 ? {...lamp, position: [-30, -120, 200] as const} : lamp);
    expect(free({...set, lamps: moved})).toBe(false);
  });
  it('does not hold against a move what was wrong before it', () => {
    const wrong = withCard([0, 200, 20]);
    expect(free({...wrong, flags: [card([10, 200, 20])]}, wrong)).toBe(true);
  });
});

test('a card is never told farther from a lamp than it is', () => {
  // Invented: a card that hangs 50 mm before the middle of a small lamp, and beside a large one.
  const small = {kind: 'small', position: [0, 0, 300], aim: [0, 0, 0], power: 0} as const;
  const below: Flag = {position: [0, 0, 250], facing: [0, 0, 1], width: 80, height: 80};
  expect(flagClearance(below, small)).toBe(50);
  expect(flagClearance({...below, position: [70, 0, 300]}, small)).toBe(30);
  expect(flagClearance(below, {...small, kind: 'disc', width: 40})).toBe(30);
  expect(flagClearance(below, {...small, kind: 'rectangle', width: 30, height: 40})).toBe(25);
});
