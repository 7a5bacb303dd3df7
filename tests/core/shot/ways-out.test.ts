import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {zoneFit} from '../../../src/core/optics/fit.js';
import {sensorToSubject} from '../../../src/core/optics/lens.js';
import {framingOf} from '../../../src/core/shot/framing.js';
import {DEFAULT_SHOT, type Shot} from '../../../src/core/shot/shot.js';
import {waysOfShot, type Way} from '../../../src/core/shot/ways-out.js';

/** Table-top shots, invented. */
const anyShot: fc.Arbitrary<Shot> = fc.record({
  aperture: fc.integer({min: 9, max: 27}).map((third) => 2 ** (third / 6)),
  shutter: fc.integer({min: -20, max: 10}).map((third) => 2 ** (third / 3)),
  focalLength: fc.integer({min: 30, max: 120}), fieldWidth: fc.integer({min: 60, max: 500}), baseDepth: fc.integer({min: 10, max: 150}),
  focus: fc.integer({min: -20, max: 120}), tilt: fc.integer({min: 0, max: 30}), pictureWidth: fc.integer({min: 500, max: 6000}),
  room: fc.integer({min: 150, max: 3000}),
}).map((some) => ({...DEFAULT_SHOT, ...some}));

const done = (shot: Shot, {changes}: Way): Shot => ({...shot, ...changes});
const waysOf = (shot: Shot) => waysOfShot(shot, framingOf(shot));

describe('ways out of a shot', () => {
  it('do what they say, once set: every one but the nearest leaves all of the figure in the sharp zone', () => {
    fc.assert(fc.property(anyShot, (shot) => {
      const {ways, nearest} = waysOf(shot);
      for (const way of ways) expect(zoneFit(framingOf(done(shot, way)).framing).end).toBe(null);
      if (nearest) {
        const fit = zoneFit(framingOf(done(shot, nearest)).framing);
        expect(fit.end).not.toBe(null);
        const along = 1 / Math.cos(shot.tilt * Math.PI / 180); // from along the view to along the table
        expect((Math.max(0, fit.outsideFront) + Math.max(0, fit.outsideBack)) * along).toBeCloseTo(nearest.outside, 6);
      }
    }));
  });

  it('keep the picture, its pixels and the light, and never leave the room', () => {
    fc.assert(fc.property(anyShot, (shot) => {
      const {ways, nearest} = waysOf(shot);
      for (const way of [...ways, ...nearest ? [nearest] : []]) {
        const then = done(shot, way);
        expect(then.crop.width * then.fieldWidth).toBeCloseTo(shot.crop.width * shot.fieldWidth, 6);
        expect(framingOf(then).pixelsAcross).toBeCloseTo(way.pixelsLeft, 6);
        // t·S/N² is the light, of which less is lost from further off; what is left over is said.
        const light = (at: Shot) => Math.log2(at.shutter * at.iso / at.aperture ** 2);
        expect(light(then) - light(shot) + way.light).toBeCloseTo(way.rounding, 6);
        if (way.kind === 'move-back' || way.kind === 'both') {
          expect(sensorToSubject(then.sensorWidth / then.fieldWidth, then.focalLength)).toBeLessThanOrEqual(shot.room * (1 + 1e-6));
          expect(way.pixelsLeft).toBeGreaterThanOrEqual(shot.pictureWidth * (1 - 1e-6));
          // What stands written of the camera adds up: the sensor mark's distance from the focus plane before, and how far back.
          const away = (at: Shot) => sensorToSubject(at.sensorWidth / at.fieldWidth, at.focalLength);
          expect(away(shot) + way.back).toBeCloseTo(away(then), 6);
        } else {
          expect(then.fieldWidth).toBe(shot.fieldWidth);
        }
      }
    }));
  });

  it('say which distance would do it where the room does not allow it', () => {
    // Invented: 9000 pixels would allow it, 600 mm of room do not.
    const shot: Shot = {...DEFAULT_SHOT, frameWidth: 9000, focus: 25, room: 600};
    const {ways, tooFar} = waysOf(shot);
    expect(ways.some(({kind}) => kind === 'move-back')).toBe(false);
    expect(tooFar?.pixelsEnough).toBe(true);
    expect(tooFar?.roomEnough).toBe(false);
    expect(waysOf({...shot, room: 5000}).ways.some(({kind}) => kind === 'move-back')).toBe(true);
  });

  it('change nothing but the focus when that is all that is wrong', () => {
    const shot: Shot = {...DEFAULT_SHOT, aperture: 16, fieldWidth: 300, baseDepth: 30, figureHeight: 0, focus: -25};
    const {ways: [way, ...others]} = waysOf(shot);
    expect(Object.keys(way?.changes ?? {})).toEqual(['focus']);
    expect(others).toEqual([]);
  });

  it('let the ISO pay when the shutter goes no further', () => {
    const shot: Shot = {...DEFAULT_SHOT, shutter: 32, fieldWidth: 180, baseDepth: 30, figureHeight: 0, focus: 14};
    const down = waysOf(shot).ways.find(({kind}) => kind === 'stop-down');
    expect(down?.changes.shutter).toBe(32);
    expect(down?.changes.iso).toBeGreaterThan(100);
    expect(down?.rounding).toBeCloseTo(0, 9);
  });
});
