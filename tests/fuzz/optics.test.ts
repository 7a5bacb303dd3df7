import fc from 'fast-check';
import {describe, expect} from 'vitest';
import {
  Problem, bestFocus, blurDisc, contrastAt, contrastProfile, depthToCover, equalBlurDistance, lightLoss, magnificationFromDistance, markedFromWorking,
  pupilToSubject, readSharpRuler, sensorToSubject, sharpZone, shotPlan, stackFrames, stepBackBy, stepBackForPixels, stepBackForStops, stepBackTo,
  viewAngle, waysOut, whatToGiveUp, whiteContrast, workingAperture, worstContrast, zoneFit,
} from '../../src/core/index.js';
import type {LensSetup, Outline, PlanJob} from '../../src/core/index.js';
import {anyLens, anyLimit, anyOutline, anyTilt, between} from '../core/optics/arbitrary.js';
import {JOBS} from '../core/optics/plan-jobs.js';
import {fuzz, outcome, sound} from './cases.js';
import {anyNumber} from './hostile.js';

const wildLens: fc.Arbitrary<LensSetup> = fc.record(
  {focalLength: anyNumber, aperture: anyNumber, magnification: anyNumber, pupilRatio: anyNumber}, {requiredKeys: ['focalLength', 'aperture', 'magnification']});
const wildOutline: fc.Arbitrary<Outline> = fc.record({
  baseDepth: anyNumber, overhangFront: anyNumber, overhangFrontHeight: anyNumber, overhangBack: anyNumber, overhangBackHeight: anyNumber, height: anyNumber,
}, {requiredKeys: ['baseDepth']});

describe('optics where physics is monotonic', () => {
  fuzz('stopping down never shortens the sharp zone, on either side', 12_000, fc.tuple(anyLens, anyLimit, between(1.0001, 8)), ([lens, limit, more]) => {
    const [open, closed] = [sharpZone(lens, limit), sharpZone({...lens, aperture: lens.aperture * more}, limit)];
    expect(closed.near).toBeGreaterThanOrEqual(open.near * (1 - 1e-12));
    expect(closed.far === Infinity || closed.far >= open.far * (1 - 1e-12)).toBe(true);
  });
  // The symmetric close-up form 2·N·c·(1 + m/P)/m² has no focal length in it. What is left is second order in
  // share = c·N/(m·f): near and far together are that form divided by 1 − share².
  fuzz('a longer lens at the same magnification never lengthens the zone, and shortens it by no more than the square of the far share', 12_000,
    fc.tuple(anyLens, anyLimit, between(1, 10)), ([lens, limit, longer]) => {
      const total = (of: LensSetup): number => { const zone = sharpZone(of, limit); return zone.near + zone.far; };
      const [short, long] = [total(lens), total({...lens, focalLength: lens.focalLength * longer})];
      if (short === Infinity) return;
      const share = limit * lens.aperture / (lens.magnification * lens.focalLength);
      expect(long).toBeLessThanOrEqual(short * (1 + 1e-12));
      expect(1 - long / short).toBeLessThanOrEqual(share ** 2 + 1e-12);
    });
  fuzz('blur grows away from the focus plane, and a closer one is never less deep in the far', 8000, fc.tuple(anyLens, between(0, 0.9), between(0, 1)), ([lens, part, nearer]) => {
    const away = pupilToSubject(lens);
    for (const side of [-away, away]) expect(blurDisc(lens, side * part * nearer)).toBeLessThanOrEqual(blurDisc(lens, side * part) * (1 + 1e-12));
  });
  fuzz('contrast is at most one, and never over what diffraction alone leaves', 6000,
    fc.tuple(between(1.4, 45), between(0, 0.2), between(1, 300), between(0, 0.01)), ([working, blur, cycles, pixel]) => {
      const [kept, inFocus] = [whiteContrast(working, blur, cycles, pixel), whiteContrast(working, 0, cycles, pixel)];
      expect(Math.abs(kept)).toBeLessThanOrEqual(Math.abs(inFocus) + 1e-6);
      expect(inFocus).toBeLessThanOrEqual(1 + 1e-12);
    });
  fuzz('one more point of a figure never makes it less deep', 5000, fc.tuple(anyOutline, anyTilt, between(-300, 300), between(0, 300)), ([outline, tilt, y, z]) => {
    expect(depthToCover({...outline, points: [{y, z}]}, tilt).spread).toBeGreaterThanOrEqual(depthToCover(outline, tilt).spread);
  });
  fuzz('ways out, followed, lead to a figure that is sharp', 3000, fc.tuple(anyLens, anyLimit, anyOutline, anyTilt), ([lens, limit, outline, tilt]) => {
    const framing = {outline, tilt, lens, limit, focus: outline.baseDepth / 2};
    const ways = sound(outcome(() => waysOut(framing, {apertures: [2.8, 5.6, 11.3, 22.6, 45.3], pixelsAcross: 6000, pictureWidth: 1000})));
    if (ways instanceof Problem) return;
    const {stopDown} = ways;
    if (stopDown.way) expect(zoneFit({...framing, focus: stopDown.focus, lens: {...lens, aperture: stopDown.aperture}}).end).toBeNull();
  });
});

describe('optics with numbers nobody means', () => {
  fuzz('every function of a lens is sound or refuses', 1500, fc.tuple(wildLens, anyNumber, anyNumber), ([lens, one, other]) => {
    for (const job of [
      () => sharpZone(lens, one), () => blurDisc(lens, one), () => pupilToSubject(lens), () => viewAngle(lens, one),
      () => stepBackTo(lens, one), () => stepBackBy(lens, one), () => stepBackForStops(lens, one), () => stepBackForPixels(lens, one, other),
      () => readSharpRuler(lens, one, other), () => workingAperture(one, other), () => markedFromWorking(one, other), () => lightLoss(one, other),
      () => magnificationFromDistance(one, other), () => sensorToSubject(one, other), () => equalBlurDistance(one, other),
    ]) sound(outcome<unknown>(job));
  });
  fuzz('every function of a figure is sound or refuses', 4000, fc.tuple(wildOutline, fc.oneof(anyNumber, anyTilt), wildLens, anyNumber, anyNumber), ([outline, tilt, lens, focus, limit]) => {
    const framing = {outline, tilt, lens, focus, limit};
    for (const job of [
      () => depthToCover(outline, tilt), () => bestFocus(outline, tilt, lens), () => zoneFit(framing),
      () => waysOut(framing, {apertures: [8, limit], pixelsAcross: 4000, pictureWidth: 1000}),
    ]) sound(outcome<unknown>(job));
  });
  fuzz('contrast of anything is sound or refused, and comes to an end', 3000, fc.tuple(wildLens, anyNumber, anyNumber, anyNumber), ([lens, depth, width, pixel]) => {
    for (const detail of [{onFigure: width}, {onSensor: width}]) {
      for (const job of [
        () => contrastAt(lens, depth, detail, pixel), () => contrastProfile(lens, [depth, 0, -depth], detail, pixel),
        () => worstContrast(lens, {front: -Math.abs(depth), back: depth}, detail, pixel),
      ]) sound(outcome<unknown>(job));
    }
  });
  fuzz('a stack of anything has few enough frames or is refused', 3000, fc.tuple(wildLens, anyNumber, anyNumber, anyTilt, anyNumber), ([lens, front, back, tilt, limit]) => {
    const stack = sound(outcome(() => stackFrames({lens, ends: {front, back}, tilt, limit})));
    if (!(stack instanceof Problem)) expect(stack.frames.length).toBeLessThanOrEqual(500);
  });
  // One or two numbers of a real job put out of joint; all of them at once is refused at the first.
  const spoilt = fc.tuple(fc.constantFrom(...Object.values(JOBS)), fc.dictionary(fc.constantFrom(
    'tilt', 'figureWidth', 'pictureWidth', 'pictureHeight', 'margin', 'sensorWidth', 'sensorHeight', 'pixelsAcross', 'room', 'blurPixels', 'mostFrames',
    'meteredMagnification', 'leastContrast', 'overlap', 'settle'), anyNumber, {minKeys: 1, maxKeys: 2})).map(([job, wrong]): PlanJob => ({...job, ...wrong}));
  fuzz('a plan of anything is sound or refused, and comes to an end', 150, spoilt, (job) => {
    for (const plan of [() => shotPlan(job), () => whatToGiveUp(job)]) sound(outcome<unknown>(plan));
  });
});
