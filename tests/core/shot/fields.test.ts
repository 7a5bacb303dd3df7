import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import {SHOT_FIELDS} from '../../../src/core/shot/fields.js';
import {completeShot} from '../../../src/core/shot/shot.js';

describe('what a plan asks for', () => {
  it.each([
    ['50, 60, 100 mm', [50, 60, 100]], ['60', [60]], ['50,60,100', [50, 60, 100]], ['5,4; 9 mm', [5.4, 9]], ['60 mm and 10 cm', [60, 100]],
    ['5,4 mm', [5.4]], ['35mm, 60mm', [35, 60]],
  ])('reads the lenses %s', (text, wanted) => {
    expect(SHOT_FIELDS.focalLengths.read(text)).toEqual(wanted);
  });

  it.each(['', 'the long one', '60, , zoom', '0', '-50', '60, 1e9'])('keeps “%s” from being taken for lenses', (text) => {
    expect(SHOT_FIELDS.focalLengths.read(text)).toBeInstanceOf(Problem);
  });

  it('takes the last unit for all distances before it, and no distance at all', () => {
    expect(SHOT_FIELDS.closestFocus.read('25, 40 cm')).toEqual([250, 400]);
    expect(SHOT_FIELDS.closestFocus.read('25 mm, 40 cm')).toEqual([25, 400]);
    expect(SHOT_FIELDS.closestFocus.read(' ')).toEqual([]);
  });

  it('reads back the lenses it writes', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: 10, max: 50_000}), {minLength: 1, maxLength: 6}), (tenths) => {
      const values = tenths.map((value) => value / 10);
      expect(SHOT_FIELDS.focalLengths.read(SHOT_FIELDS.focalLengths.write(values))).toEqual(values);
    }));
  });

  it.each([['8%', 0.08], ['8', 0.08], ['0.08', 0.08], ['0,1', 0.1], ['0', 0], ['0.5 %', 0.005]])('reads a margin of %s', (text, share) => {
    expect(SHOT_FIELDS.margin.read(text)).toBeCloseTo(share, 12);
  });

  it.each(['50%', '-1', 'some'])('refuses a margin of %s', (text) => {
    expect(SHOT_FIELDS.margin.read(text)).toBeInstanceOf(Problem);
  });

  it('counts whole frames only', () => {
    expect(SHOT_FIELDS.mostFrames.read('12 frames')).toBe(12);
    for (const text of ['0', '1.5', '61', 'many']) expect(SHOT_FIELDS.mostFrames.read(text)).toBeInstanceOf(Problem);
    expect(SHOT_FIELDS.mostFrames.refuse(NaN)).toBeInstanceOf(Problem);
    expect(SHOT_FIELDS.mostFrames.refuse(1)).toBeUndefined();
  });

  it('refuses what a script gives in place of lenses', () => {
    for (const bad of [[], [60, NaN], [0], 'sixty' as unknown as number[]]) expect(SHOT_FIELDS.focalLengths.refuse(bad)).toBeInstanceOf(Problem);
  });

  it('takes the lens in use for the only one, and the light for metered as framed', () => {
    const shot = completeShot({focalLength: 85, fieldWidth: 120, sensorWidth: 24});
    expect(shot.focalLengths).toEqual([85]);
    expect(shot.meteredMagnification).toBeCloseTo(0.2, 12);
    expect(completeShot({focalLength: 85, focalLengths: [50, 60]}).focalLengths).toEqual([50, 60]);
  });

  it('draws a picture’s other side from what is kept of the frame', () => {
    expect(completeShot({sensorWidth: 24, sensorHeight: 36, pictureWidth: 1000}).pictureHeight).toBe(1500);
    expect(completeShot({crop: {left: 0, top: 0, width: 0.5, height: 0.75}, pictureWidth: 900}).pictureHeight).toBe(900);
    expect(completeShot({pictureWidth: 1000, pictureHeight: 1250}).pictureHeight).toBe(1250);
  });
});
