import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {blurDisc} from '../../../src/core/optics/blur.js';
import {stepBackTo} from '../../../src/core/optics/distance.js';
import type {Framing} from '../../../src/core/optics/fit.js';
import {zoneFit} from '../../../src/core/optics/fit.js';
import {airyDiameter, pupilToSubject, workingAperture} from '../../../src/core/optics/lens.js';
import type {LensSetup} from '../../../src/core/optics/lens.js';
import {axialDepth, outlinePoints, rulerToAxial} from '../../../src/core/optics/outline.js';
import {waysOut} from '../../../src/core/optics/ways-out.js';
import type {Means} from '../../../src/core/optics/ways-out.js';
import {anyLimit, anyOutline, anyTilt, between, expectSame} from './arbitrary.js';

/** Third-stop clicks from f/2.8 to f/32. */
const CLICKS = Array.from({length: 22}, (_, at) => 2 ** ((at + 9) / 6));
const MEANS: Means = {apertures: CLICKS, pixelsAcross: 5000, pictureWidth: 2000};

/** Table-top lenses, invented. */
const anyTableLens: fc.Arbitrary<LensSetup> = fc.record({
  focalLength: between(20, 120), aperture: fc.constantFrom(...CLICKS), magnification: between(0.03, 0.5),
  pupilRatio: between(0.5, 2),
});
const anyFraming: fc.Arbitrary<Framing> = fc.record({
  outline: anyOutline, tilt: anyTilt, lens: anyTableLens, focus: between(-20, 120), limit: anyLimit,
});

/** By brute force over every point of the outline, with the blur disc alone: is all of it sharp? */
function sharp({outline, tilt, lens, focus, limit}: Framing, slack = 1): boolean {
  const away = pupilToSubject(lens);
  return outlinePoints(outline).every(({y, z}) => {
    const depth = axialDepth(y - focus, z, tilt);
    return depth > -away && blurDisc(lens, depth) <= limit * slack;
  });
}

/** Focus points to try: well past both ends, closely. */
const FOCI = Array.from({length: 1201}, (_, at) => -300 + at * 0.5);
const sharpSomewhere = (framing: Framing): boolean => FOCI.some((focus) => sharp({...framing, focus}));

/** Rounding, as a share of the limit. */
const JUST = 1 + 1e-6;

describe('ways out, against brute force over clicks and focus points', () => {
  it('moves the focus when that alone cures it, and says so when it does not', () => {
    fc.assert(fc.property(anyFraming, (framing) => {
      const {fit, refocus} = waysOut(framing, MEANS);
      if (refocus.way) {
        expect(sharp(framing)).toBe(false);
        expect(sharp({...framing, focus: refocus.focus}, JUST)).toBe(true);
        expect(refocus.by).toBeCloseTo(refocus.focus - framing.focus, 9);
      } else if (refocus.reason === 'already-sharp') {
        expect(fit.end).toBe(null);
        expect(sharp(framing, JUST)).toBe(true);
      } else {
        expect(refocus.reason).toBe('zone-too-short');
        expect(sharpSomewhere(framing)).toBe(false);
      }
    }), {numRuns: 60});
  });

  it('stops down to the first click that does it', () => {
    fc.assert(fc.property(anyFraming, (framing) => {
      const at = (aperture: number, focus = framing.focus): Framing =>
        ({...framing, focus, lens: {...framing.lens, aperture}});
      const {stopDown, stopDownFocusKept} = waysOut(framing, MEANS);
      if (stopDown.way) {
        expect(stopDown.aperture).toBeGreaterThan(framing.lens.aperture);
        expect(sharp(at(stopDown.aperture, stopDown.focus), JUST)).toBe(true);
        const tooWide = CLICKS.filter((click) => click < stopDown.aperture);
        for (const wider of tooWide) expect(sharpSomewhere(at(wider))).toBe(false);
      } else if (stopDown.reason === 'no-such-click') {
        for (const click of CLICKS) expect(sharpSomewhere(at(click))).toBe(false);
        expect(stopDown.aperture).toBeGreaterThan(Math.max(...CLICKS));
      }
      if (stopDownFocusKept.way) {
        expect(sharp(at(stopDownFocusKept.aperture), JUST)).toBe(true);
        const tooWide = CLICKS.filter((click) => click < stopDownFocusKept.aperture);
        for (const wider of tooWide) expect(sharp(at(wider))).toBe(false);
      } else if (stopDownFocusKept.reason === 'no-such-click') {
        for (const click of CLICKS) expect(sharp(at(click))).toBe(false);
      }
    }), {numRuns: 40});
  });

  it('goes back just far enough', () => {
    fc.assert(fc.property(anyFraming, (framing) => {
      const {moveBack, moveBackFocusKept} = waysOut(framing, MEANS);
      const from = (distance: number): Framing => {
        const {lens, pixelShare} = stepBackTo(framing.lens, distance);
        return {...framing, lens, limit: framing.limit * pixelShare};
      };
      if (moveBack.way) {
        const away = pupilToSubject(moveBack.step.lens);
        expect(moveBack.step.by).toBeGreaterThan(0);
        expect(sharp({...from(away), focus: moveBack.focus}, JUST)).toBe(true);
        expect(sharpSomewhere(from(away * 0.999))).toBe(false);
        expectSame(moveBack.limit, from(away).limit);
      }
      if (moveBackFocusKept.way) {
        const away = pupilToSubject(moveBackFocusKept.step.lens);
        expect(sharp(from(away), JUST)).toBe(true);
        expect(sharp(from(away * 0.999))).toBe(false);
      }
    }), {numRuns: 60});
  });

  it('gives ways that the fit itself calls sharp', () => {
    fc.assert(fc.property(anyFraming, (framing) => {
      const ways = waysOut(framing, MEANS);
      for (const way of [ways.stopDown, ways.stopDownFocusKept]) {
        if (way.way) {
          const lens = {...framing.lens, aperture: way.aperture};
          expect(zoneFit({...framing, lens, focus: way.focus}).end).toBe(null);
        }
      }
      for (const way of [ways.moveBack, ways.moveBackFocusKept]) {
        if (way.way) {
          const {lens} = way.step;
          expect(zoneFit({...framing, lens, focus: way.focus, limit: way.limit}).end).toBe(null);
        }
      }
    }));
  });
});

/** The guild's bearer on a 60 mm base: 36 mm of sensor take in 240 mm, picture 1200 px wide; invented. */
const BEARER: Framing = {
  outline: {
    baseDepth: 60, overhangFront: 8, overhangFrontHeight: 60, overhangBack: 10, overhangBackHeight: 20, height: 80,
  },
  tilt: 10, lens: {focalLength: 60, aperture: 8, magnification: 0.15}, focus: 30, limit: 0.045,
};

describe('what a way out costs', () => {
  const bearer = waysOut(BEARER, MEANS);

  it('is shutter time when stopping down, by the stops between the f-numbers', () => {
    if (!bearer.stopDown.way) throw new Error(bearer.stopDown.reason);
    // A third-stop click is a sixth of an octave of f-number.
    const clicks = Math.log(bearer.stopDown.aperture / 8) / Math.log(2) * 6;
    expect(clicks).toBeCloseTo(Math.round(clicks), 9);
    expect(bearer.stopDown.shutterStops).toBeCloseTo(clicks / 3, 9);
  });

  it('is pixels when going back, by the magnification that is left', () => {
    if (!bearer.moveBack.way) throw new Error(bearer.moveBack.reason);
    const {step, pixelsLeft, pixelsEnough, by, focus} = bearer.moveBack;
    expectSame(pixelsLeft, 5000 * step.lens.magnification / 0.15);
    expect(pixelsEnough).toBe(pixelsLeft >= 2000);
    // The camera's own way: where its sensor stands on the axis, before and after.
    const before = rulerToAxial(BEARER.focus, 10) - 60 * (2 + 0.15 + 1 / 0.15);
    const m = step.lens.magnification;
    expect(by).toBeCloseTo(before - (rulerToAxial(focus, 10) - 60 * (2 + m + 1 / m)), 6);
  });

  it('says when too few pixels would be left', () => {
    const poor = waysOut(BEARER, {...MEANS, pixelsAcross: 2000});
    expect(poor.moveBack).toMatchObject({way: 'move-back', pixelsEnough: false});
  });

  it('says when diffraction alone is wider than the limit', () => {
    const fine = waysOut({...BEARER, limit: 0.012}, MEANS);
    const generous = waysOut({...BEARER, limit: 0.08}, MEANS);
    for (const [ways, over] of [[fine, true], [generous, false]] as const) {
      const way = ways.moveBack;
      if (!way.way) throw new Error(way.reason);
      const {aperture, magnification} = way.step.lens;
      expectSame(way.diffraction.airy, airyDiameter(workingAperture(aperture, magnification)));
      expect(way.diffraction.overLimit).toBe(over);
      expect(way.diffraction.overLimit).toBe(way.diffraction.airy > way.limit);
    }
  });

  it('names the f-number that would do when no click does', () => {
    const none = waysOut(BEARER, {...MEANS, apertures: [2.8, 4, 5.6]}).stopDown;
    if (none.way) throw new Error('found one');
    expect(none.reason).toBe('no-such-click');
    const just = {...BEARER, lens: {...BEARER.lens, aperture: none.aperture}};
    expect(sharpSomewhere({...just, limit: just.limit * 1.02})).toBe(true);
    expect(sharpSomewhere({...just, limit: just.limit * 0.98})).toBe(false);
    expect(waysOut(BEARER, {...MEANS, apertures: []}).stopDown).toMatchObject({reason: 'no-such-click'});
  });

  it('takes the clicks in any order', () => {
    expect(waysOut(BEARER, {...MEANS, apertures: [...CLICKS].reverse()})).toEqual(bearer);
  });

  it('offers nothing to what is sharp, and only the focus where that is enough', () => {
    const sharpAlready = waysOut({...BEARER, limit: 0.5}, MEANS);
    for (const way of [sharpAlready.refocus, sharpAlready.stopDown, sharpAlready.stopDownFocusKept,
      sharpAlready.moveBack, sharpAlready.moveBackFocusKept]) {
      expect(way).toMatchObject({way: null, reason: 'already-sharp'});
    }
    const offFocus = waysOut({...BEARER, focus: 75, limit: 0.12}, MEANS);
    expect(offFocus.refocus.way).toBe('refocus');
    expect(offFocus.stopDown).toMatchObject({reason: 'refocus-is-enough'});
    expect(offFocus.moveBack).toMatchObject({reason: 'refocus-is-enough'});
    expect(offFocus.moveBackFocusKept.way).toBe('move-back');
  });

  it('has no f-number for a front that reaches behind the lens', () => {
    const phone: Framing = {outline: {baseDepth: 200}, tilt: 0, focus: 190, limit: 0.004,
      lens: {focalLength: 6, aperture: 1.8, magnification: 0.05}}; // invented: 126 mm from pupil to focus plane
    expect(waysOut(phone, MEANS).stopDownFocusKept).toEqual({way: null, reason: 'no-such-click', aperture: Infinity});
    expect(waysOut(phone, MEANS).moveBackFocusKept.way).toBe('move-back');
  });

  it.each([
    [{...MEANS, apertures: [8, 0]}, 'aperture'], [{...MEANS, pixelsAcross: 0}, 'pixels-across'],
    [{...MEANS, pictureWidth: NaN}, 'picture-width'],
  ])('refuses means that cannot be: %o', (means, parameter) => {
    expect(() => waysOut(BEARER, means)).toThrow(expect.objectContaining({name: 'Problem', parameter}));
  });
});
