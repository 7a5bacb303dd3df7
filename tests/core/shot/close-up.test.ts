import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {closeUpOf, exposureOff} from '../../../src/core/shot/close-up.js';
import {framingOf} from '../../../src/core/shot/framing.js';
import {completeShot} from '../../../src/core/shot/shot.js';
import {waysOfShot} from '../../../src/core/shot/ways-out.js';

describe('closeUpOf', () => {
  it('is nothing where the camera stands where it was metered, and where nothing is said of that', () => {
    expect(closeUpOf(completeShot({}))).toBe(0);
    expect(closeUpOf(completeShot({sensorWidth: 36, fieldWidth: 72, meteredMagnification: 0.5}))).toBe(0);
  });
  it('is two stops at life size, metered by hand', () => {
    // Textbooks on close-up: at life size two stops more are needed. From memory.
    expect(closeUpOf(completeShot({sensorWidth: 36, fieldWidth: 36, meteredMagnification: 0}))).toBeCloseTo(2, 12);
  });
  it('is less than nothing further back than metered', () => {
    expect(closeUpOf(completeShot({sensorWidth: 36, fieldWidth: 72, meteredMagnification: 1}))).toBeLessThan(0);
  });
});

test('what settings give more than close-up loses comes out brighter than the start', () => {
  // Metered by hand at f/8 1/4 s; from life size f/8 at 1 s, two stops more, is the same picture.
  const start = {aperture: 8, shutter: 0.25, iso: 100, meteredShutter: 0.25, sensorWidth: 36, fieldWidth: 36, meteredMagnification: 0};
  expect(exposureOff(completeShot({...start, shutter: 1}))).toBeCloseTo(0, 12);
  expect(exposureOff(completeShot(start))).toBeCloseTo(-2, 12);
  expect(exposureOff(completeShot({...start, fieldWidth: 1e9}))).toBeCloseTo(0, 6);
});

test('a stop more of time is a stop brighter, wherever the camera stands', () => {
  fc.assert(fc.property(fc.double({min: 20, max: 2000, noNaN: true}), fc.double({min: 0, max: 2, noNaN: true}), (fieldWidth, meteredMagnification) => {
    const shot = completeShot({fieldWidth, meteredMagnification, meteredShutter: 0.25, shutter: 0.25});
    expect(exposureOff({...shot, shutter: 0.5}) - exposureOff(shot)).toBeCloseTo(1, 9);
  }));
});

test('what a correction asks for is no light too many', () => {
  // A meter that shows two stops under asks for +2; two stops more time is then what was asked for.
  const shot = completeShot({meteredShutter: 0.25, shutter: 1, correction: 2});
  expect(exposureOff(shot)).toBeCloseTo(0, 12);
  expect(exposureOff({...shot, shutter: 0.25})).toBeCloseTo(-2, 12);
});

test('a way back comes out as bright as the start to half a click, close-up counted, also where nobody had stated a start', () => {
  // Invented: pixels and room that allow it.
  const stated = {frameWidth: 9000, room: 3000};
  const shot = completeShot(stated);
  const back = waysOfShot(shot, framingOf(shot)).ways.find(({kind}) => kind === 'move-back');
  expect(back?.light).toBeGreaterThan(1 / 6);
  const then = exposureOff(completeShot({...stated, ...back?.changes}));
  expect(then).toBeCloseTo(back?.rounding ?? NaN, 9);
  expect(Math.abs(then)).toBeLessThanOrEqual(1 / 6);
});
