import {describe, expect, it} from 'vitest';
import {zoneFit} from '../../../src/core/optics/fit.js';
import {shotPlan} from '../../../src/core/optics/plan.js';
import {framingOf} from '../../../src/core/shot/framing.js';
import {planJobOf, wayChanges, wayIsSet, wishChanges} from '../../../src/core/shot/plan-job.js';
import {completeShot, type Shot} from '../../../src/core/shot/shot.js';

/** Invented, as all figures here: a lantern bearer whose bill reaches past its base. */
const bearer = completeShot({
  baseDepth: 60, overhangFront: 12, overhangFrontHeight: 70, figureHeight: 80, tilt: 10, focalLengths: [60, 100],
  closestFocus: [250], pictureWidth: 1200, pictureHeight: 900, meteredAperture: 8, meteredShutter: 0.25, correction: -1,
});

describe('the wishes of a shot', () => {
  const job = planJobOf(bearer);

  it('start from the metered setting as corrected', () => {
    expect(job.metered).toEqual({aperture: 8, shutter: 0.125, iso: 100});
  });

  it('give each lens its own nearest focus, none where nothing is said', () => {
    expect(job.lenses).toEqual([{focalLength: 60, pupilRatio: 1, closest: 250}, {focalLength: 100, pupilRatio: 1}]);
  });

  it('go no nearer than life size', () => {
    expect(planJobOf({...bearer, closestFocus: [100]}).lenses[0]?.closest).toBe(240);
  });

  it('hold every click between the lens’s limits, and no other', () => {
    expect(job.apertures).toHaveLength(19); // f/2.8 to f/22 in thirds, 6 stops
    expect(Math.min(...job.apertures)).toBeCloseTo(2 ** 1.5, 12);
    expect(Math.max(...job.apertures)).toBeCloseTo(2 ** 4.5, 12);
  });
});

describe('a way on the bench', () => {
  const {ways} = shotPlan(planJobOf(bearer));
  const set = (way: (typeof ways)[number]): Shot => ({...bearer, ...wayChanges(way, bearer)});

  it('is sharp from end to end by the functions that know nothing of plans', () => {
    const single = ways.filter(({kind}) => kind !== 'stack');
    expect(single.length).toBeGreaterThan(0);
    for (const way of single) {
      const {framing, pixelsAcross} = framingOf(set(way));
      expect(zoneFit({...framing, limit: framing.limit * (1 + 1e-9)}).end).toBeNull();
      expect(pixelsAcross).toBeCloseTo(way.pixelsAcross, 6);
      expect(pixelsAcross).toBeGreaterThanOrEqual(bearer.pictureWidth * (1 - 1e-9));
    }
  });

  it('keeps a crop inside the frame, in the shape of the picture', () => {
    for (const way of ways) {
      const {crop, sensorWidth, sensorHeight} = set(way);
      expect(crop.left).toBeGreaterThanOrEqual(0);
      expect(crop.left + crop.width).toBeLessThanOrEqual(1 + 1e-12);
      expect(crop.top + crop.height).toBeLessThanOrEqual(1 + 1e-12);
      expect(crop.width * sensorWidth / (crop.height * sensorHeight)).toBeCloseTo(1200 / 900, 9);
    }
  });

  it('changes no wish, so that the plan stays as it is', () => {
    for (const way of ways) expect(planJobOf(set(way))).toEqual(planJobOf(bearer));
  });

  it('is known again, and no other way is', () => {
    for (const way of ways) expect(ways.filter((other) => wayIsSet(other, set(way)))).toEqual([way]);
    expect(ways.some((way) => wayIsSet(way, bearer))).toBe(false);
  });
});

describe('a wish given up', () => {
  const strict: readonly Partial<Shot>[] = [
    {mostFrames: 1, room: 400}, {pictureWidth: 5000, pictureHeight: 3333, frameWidth: 4000}, {mostFrames: 1, blurLimit: 0.3},
    {mostFrames: 1, shutterSlowest: 0.1},
  ];

  it.each(strict)('written as a person would write it still makes a plan possible: %o', (more) => {
    const shot = {...bearer, ...more};
    const {giveUp, oneIsEnough} = shotPlan(planJobOf(shot));
    expect(giveUp.length).toBeGreaterThan(0);
    const tries = oneIsEnough ? giveUp.map((each) => [each]) : [giveUp];
    for (const wishes of tries) {
      const yielded = Object.assign({}, shot, ...wishes.map((each) => wishChanges(each, shot))) as Shot;
      expect(shotPlan(planJobOf(yielded)).ways.length).toBeGreaterThan(0);
    }
  });
});
