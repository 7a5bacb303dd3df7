import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {shotDifference} from '../../../src/core/shot/difference.js';
import {completeShot} from '../../../src/core/shot/shot.js';
import {anyValues} from './arbitrary.js';

describe('what changed between two shots', () => {
  it('gives settings their stops', () => {
    const changes = shotDifference({aperture: 8, shutter: 1 / 4, tilt: 5}, {aperture: 2 ** 3.5, shutter: 1 / 2, tilt: 8});
    // common practice, no source: f/8 to f/11 is a stop less light, 1/4 to 1/2 s a stop more
    expect(changes.map(({key, stops}) => [key, stops === undefined ? undefined : Math.round(stops * 1e9) / 1e9])).toEqual([
      ['aperture', -1], ['shutter', 1], ['tilt', undefined]]);
    expect(changes[2]).toEqual({key: 'tilt', from: 5, to: 8});
  });

  it('does not call it a change when a value follows another', () => {
    expect(shotDifference({aperture: 8}, {aperture: 4}).map(({key}) => key)).toEqual(['aperture']);
  });

  it('holds a value stated once against what stands in its place', () => {
    expect(shotDifference({}, {aperture: 8})).toEqual([]);
    expect(shotDifference({baseDepth: 90}, {})).toEqual([{key: 'baseDepth', from: 90, to: 60}]);
  });

  it('sees into values that have parts', () => {
    const crop = {left: 0, top: 0, width: 1, height: 0.9};
    expect(shotDifference({crop}, {crop: {...crop}})).toEqual([]);
    expect(shotDifference({crop}, {crop: {...crop, left: -0}})).toEqual([]);
    expect(shotDifference({crop}, {crop: {...crop, height: 0.8}})).toHaveLength(1);
    expect(shotDifference({focalLengths: [50, 60]}, {focalLengths: [50]})).toHaveLength(1);
  });

  it('finds nothing between a shot and itself, and the same both ways', () => {
    fc.assert(fc.property(anyValues, anyValues, (one, other) => {
      expect(shotDifference(one, one)).toEqual([]);
      const [there, back] = [shotDifference(one, other), shotDifference(other, one)];
      expect(back.map(({key, from, to}) => ({key, from: to, to: from}))).toEqual(there.map(({key, from, to}) => ({key, from, to})));
      for (const [at, {stops}] of there.entries()) {
        // Beyond a thousand stops a quotient leaves what a number can hold.
        if (stops !== undefined && Math.abs(stops) < 1000) expect(back[at]?.stops).toBeCloseTo(-stops, 9);
      }
    }));
  });

  it('is all that parts two shots', () => {
    fc.assert(fc.property(anyValues, anyValues, (one, other) => {
      const keys = new Set(shotDifference(one, other).map(({key}) => key));
      const [before, after] = [completeShot(one), completeShot(other)];
      for (const key of Object.keys({...one, ...other}) as (keyof typeof before)[]) {
        if (!keys.has(key)) expect(after[key]).toEqual(before[key]);
      }
    }));
  });
});
