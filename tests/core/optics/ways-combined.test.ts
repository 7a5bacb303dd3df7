import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {blurDisc} from '../../../src/core/optics/blur.js';
import type {Framing} from '../../../src/core/optics/fit.js';
import type {LensSetup} from '../../../src/core/optics/lens.js';
import {pupilToSubject, sensorToSubject} from '../../../src/core/optics/lens.js';
import {axialDepth, outlinePoints} from '../../../src/core/optics/outline.js';
import {backAndDown, openUp} from '../../../src/core/optics/ways-combined.js';
import type {Means} from '../../../src/core/optics/ways-out.js';
import {waysOut} from '../../../src/core/optics/ways-out.js';
import {anyLimit, anyOutline, anyTilt, between, expectSame} from './arbitrary.js';

/** Third-stop clicks from f/2.8 to f/32. */
const CLICKS = Array.from({length: 22}, (_, at) => 2 ** ((at + 9) / 6));

/** Table-top lenses and figures, invented. */
const anyTableLens: fc.Arbitrary<LensSetup> = fc.record({
  focalLength: between(20, 120), aperture: fc.constantFrom(...CLICKS), magnification: between(0.03, 0.5),
  pupilRatio: between(0.5, 2),
});
const anyFraming: fc.Arbitrary<Framing> = fc.record({
  outline: anyOutline, tilt: anyTilt, lens: anyTableLens, focus: between(-20, 120), limit: anyLimit,
});
const anyMeans: fc.Arbitrary<Means> = fc.record({
  apertures: fc.constant(CLICKS), pixelsAcross: between(1500, 9000), pictureWidth: between(800, 4000), room: between(100, 4000),
});

/** With the blur disc alone, over every point of the outline: is all of it sharp? */
function sharp({outline, tilt, lens, focus, limit}: Framing, slack = 1): boolean {
  const away = pupilToSubject(lens);
  return outlinePoints(outline).every(({y, z}) => {
    const depth = axialDepth(y - focus, z, tilt);
    return depth > -away && blurDisc(lens, depth) <= limit * slack;
  });
}

/** Rounding, as a share of the limit. */
const JUST = 1 + 1e-6;
const FOCI = Array.from({length: 241}, (_, at) => -300 + at * 2.5);

describe('distance and aperture together, by brute force', () => {
  it('keeps the room and the pixels, and uses up one of them', () => {
    fc.assert(fc.property(anyFraming, anyMeans, (framing, means) => {
      const {step, pixelsLeft, by} = backAndDown(framing, means);
      const {lens: {magnification, focalLength}} = framing;
      const room = means.room as number;
      if (step) {
        const away = sensorToSubject(step.lens.magnification, focalLength);
        expect(away).toBeLessThanOrEqual(room * JUST);
        expect(pixelsLeft).toBeGreaterThanOrEqual(means.pictureWidth / JUST);
        expect(Math.min(room / away, pixelsLeft / means.pictureWidth)).toBeCloseTo(1, 6);
        expectSame(pixelsLeft * step.lens.magnification ** -1, means.pixelsAcross / magnification);
      } else {
        expect(by).toBe(0);
        expect(means.pixelsAcross <= means.pictureWidth || sensorToSubject(magnification, focalLength) >= room / JUST).toBe(true);
      }
    }));
  });

  it('is sharp where it says so, at no wider click, and is honest about what stays outside', () => {
    fc.assert(fc.property(anyFraming, anyMeans, (framing, means) => {
      const {step, aperture, focus, outside, pixelsLeft} = backAndDown(framing, means);
      const at = (click: number, mark = focus): Framing => ({
        ...framing, focus: mark, lens: {...(step?.lens ?? framing.lens), aperture: click},
        limit: framing.limit * pixelsLeft / means.pixelsAcross,
      });
      if (outside === 0) {
        expect(sharp(at(aperture), JUST)).toBe(true);
        const wider = CLICKS.filter((click) => click < aperture && click > framing.lens.aperture);
        for (const click of wider) expect(FOCI.some((mark) => sharp(at(click, mark), 1 / JUST))).toBe(false);
      } else {
        expect(sharp(at(aperture))).toBe(false);
        expect(FOCI.some((mark) => sharp(at(Math.max(...CLICKS), mark), 1 / JUST))).toBe(false);
      }
    }), {numRuns: 60});
  });

  it('is never less than the camera that stays', () => {
    fc.assert(fc.property(anyFraming, anyMeans, (framing, means) => {
      const {stopDown} = waysOut(framing, means);
      if (stopDown.way) expect(backAndDown(framing, means).outside).toBe(0);
    }), {numRuns: 60});
  });

  it('does without a limit to the room, and stays where the room is smaller than the nearest focus', () => {
    const framing: Framing = {
      outline: {baseDepth: 60}, tilt: 0, lens: {focalLength: 60, aperture: 8, magnification: 0.2, pupilRatio: 1}, focus: 20, limit: 0.03,
    };
    const means = {apertures: CLICKS, pixelsAcross: 6000, pictureWidth: 1500};
    // A quarter of the pixels is a quarter of the magnification, 1/20: thin lens, D = 60 × (2 + 0.05 + 20) = 1323 mm.
    expect(backAndDown(framing, means).step?.sensorToSubject).toBeCloseTo(1323, 6);
    expect(backAndDown(framing, {...means, room: 1000}).step?.sensorToSubject).toBeCloseTo(1000, 6);
    for (const room of [100, 240, 300]) expect(backAndDown(framing, {...means, room}).step).toBe(null);
  });
});

describe('what could be opened up', () => {
  it('is the widest click that leaves everything sharp', () => {
    fc.assert(fc.property(anyFraming, (framing) => {
      const open = openUp(framing, [...CLICKS].reverse());
      const at = (aperture: number, focus: number): Framing => ({...framing, focus, lens: {...framing.lens, aperture}});
      if (open) {
        expect(open.aperture).toBeLessThan(framing.lens.aperture);
        expect(sharp(at(open.aperture, open.focus), JUST)).toBe(true);
      }
      const wider = CLICKS.filter((click) => click < Math.min(open?.aperture ?? Infinity, framing.lens.aperture * 0.999));
      for (const click of wider) expect(FOCI.some((mark) => sharp(at(click, mark), 1 / JUST))).toBe(false);
    }), {numRuns: 60});
  });
});

describe('the room for the camera', () => {
  it('decides which distances can be stood at', () => {
    fc.assert(fc.property(anyFraming, anyMeans, (framing, means) => {
      const {moveBack} = waysOut(framing, means);
      if (!moveBack.way) return;
      const away = sensorToSubject(moveBack.step.lens.magnification, framing.lens.focalLength);
      expect(moveBack.roomEnough).toBe(away <= (means.room as number) * (1 + 1e-9));
      const {apertures, pixelsAcross, pictureWidth} = means;
      expect(waysOut(framing, {apertures, pixelsAcross, pictureWidth}).moveBack).toEqual({...moveBack, roomEnough: true});
    }));
  });

  it.each([0, -1, NaN, Infinity])('refuses %s by name', (room) => {
    const framing: Framing = {
      outline: {baseDepth: 60}, tilt: 0, lens: {focalLength: 60, aperture: 8, magnification: 0.2, pupilRatio: 1}, focus: 20, limit: 0.03,
    };
    expect(() => waysOut(framing, {apertures: CLICKS, pixelsAcross: 6000, pictureWidth: 1500, room})).toThrow(/^room/);
  });
});
