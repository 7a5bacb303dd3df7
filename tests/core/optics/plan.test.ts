import {describe, expect, it, test} from 'vitest';
import {exposureStops} from '../../../src/core/exposure/stops.js';
import {worstContrast} from '../../../src/core/optics/best-aperture.js';
import {blurInPixels, onePixel} from '../../../src/core/optics/blur.js';
import {zoneFit} from '../../../src/core/optics/fit.js';
import {bestFocus} from '../../../src/core/optics/focus.js';
import {lightLoss, magnificationFromField, sensorToSubject} from '../../../src/core/optics/lens.js';
import {axialDepth, depthToCover, rulerToAxial} from '../../../src/core/optics/outline.js';
import type {PlanJob, PlanLens} from '../../../src/core/optics/plan-job.js';
import {singleFrameSteps, whatToGiveUp} from '../../../src/core/optics/give-up.js';
import type {GiveUp} from '../../../src/core/optics/give-up.js';
import type {PlanWay} from '../../../src/core/optics/plan-way.js';
import {planSteps, shotPlan} from '../../../src/core/optics/plan.js';
import {toEnd} from '../../../src/core/optics/steps.js';
import {stackContrast, stackFrames} from '../../../src/core/optics/stack.js';
import {Problem} from '../../../src/core/problem.js';
import {
  costOf, evenFocus, fault, framesNeeded, nearestPlace, tryPlace,
} from './plan-by-brute-force.js';
import type {TriedPlace} from './plan-by-brute-force.js';
import {JOBS} from './plan-jobs.js';

const NAMED = Object.entries(JOBS);

describe.each(NAMED)('a plan for a %s', (_, job) => {
  const {ways} = shotPlan(job);

  it('has ways out, cheapest first, one of a kind for each lens', () => {
    expect(ways.length).toBeGreaterThan(0);
    ways.slice(1).forEach((way, at) => expect(way.cost).toBeGreaterThanOrEqual((ways[at] as typeof way).cost));
    expect(new Set(ways.map(({kind, lensIndex}) => kind + lensIndex)).size).toBe(ways.length);
  });

  it('says of each way what the other functions say of that setting', () => {
    for (const way of ways) {
      const picture = {keptWidth: way.keptShare * job.sensorWidth, pictureWidth: job.pictureWidth};
      const pixel = onePixel(picture);
      const ends = depthToCover(job.outline, job.tilt);
      expect(magnificationFromField(job.sensorWidth, way.fieldWidth)).toBeCloseTo(way.lens.magnification, 12);
      expect(way.keptField / way.fieldWidth).toBeCloseTo(way.keptShare, 12);
      expect(way.keptShare * job.pixelsAcross).toBeCloseTo(way.pixelsAcross, 9);
      expect(sensorToSubject(way.lens.magnification, way.lens.focalLength)).toBeCloseTo(way.cameraDistance, 9);
      expect(bestFocus(job.outline, job.tilt, way.lens)).toBeCloseTo(way.focus, 9);
      expect(job.blurPixels * pixel).toBeCloseTo(way.limit, 12);
      const stack = {lens: way.lens, ends, tilt: job.tilt, limit: way.limit, overlap: job.overlap};
      expect(stackFrames(stack).frames.map(({focus}) => focus)).toEqual(way.frames);
      const detail = {onSensor: job.blurPixels * pixel};
      const pitch = job.sensorWidth / job.pixelsAcross;
      const depth = rulerToAxial(way.focus, job.tilt);
      if (way.kind === 'stack') {
        expect(way.worst).toBeCloseTo(stackContrast(stack, detail, pitch), 9);
        expect(way.frames.length).toBeGreaterThan(1);
      } else {
        const away = {front: ends.front - depth, back: ends.back - depth};
        expect(way.worst).toBeCloseTo(worstContrast(way.lens, away, detail, pitch).worst, 9);
        const fit = zoneFit({outline: job.outline, tilt: job.tilt, lens: way.lens, focus: way.focus, limit: way.limit});
        expect(fit.end).toBeNull();
        expect(rulerToAxial(way.zone.from, job.tilt)).toBeCloseTo(depth - fit.zone.near, 6);
        expect(rulerToAxial(way.zone.to, job.tilt)).toBeCloseTo(depth + fit.zone.far, 6);
        expect(blurInPixels(way.lens, away.front, picture)).toBeLessThanOrEqual(job.blurPixels * (1 + 1e-9));
        expect(blurInPixels(way.lens, away.back, picture)).toBeLessThanOrEqual(job.blurPixels * (1 + 1e-9));
      }
      expect(axialDepth(way.aim.y, way.aim.z, job.tilt)).toBeCloseTo(depth, 9);
    }
  });

  it('exposes each way as metered, but for the rounding to a click', () => {
    for (const {lens, shutter, iso} of ways) {
      const change = exposureStops(job.metered, {aperture: lens.aperture, shutter: shutter.value, iso});
      const lost = job.meteredMagnification === undefined
        ? 0 : lightLoss(lens.magnification, lens.pupilRatio) - lightLoss(job.meteredMagnification, lens.pupilRatio);
      expect(change - lost).toBeCloseTo(shutter.rounding, 9);
      expect(Math.abs(shutter.rounding)).toBeLessThanOrEqual(0.5 / job.clicksPerStop + 1e-6);
      expect(iso).toBe(job.metered.iso);
    }
  });

  /** The place of a way, as it would be set up by hand. */
  const placeOf = (way: PlanWay): TriedPlace =>
    tryPlace(job, way.lensIndex, way.cameraDistance, rulerToAxial(way.focus, job.tilt), 1e-6) as TriedPlace;
  const nearest = job.lenses.map((__, lensIndex) => nearestPlace(job, lensIndex));
  const price = (place: TriedPlace, aperture: number, frames = 1): number =>
    costOf(job, place, nearest[place.lensIndex] ?? place, aperture, frames);
  const priceOf = (way: PlanWay): number => price(placeOf(way), way.lens.aperture, way.frames.length);
  const {front, back} = depthToCover(job.outline, job.tilt);

  /** Distances from the nearest to the end of the room in steps of 2 per cent, whether they will do or not. */
  function* distances(lens: PlanLens): Generator<number> {
    for (let away = Math.max(4 * lens.focalLength, lens.closest ?? 0); away <= job.room; away *= 1.02) yield away;
  }

  /** Whether a lens does not focus on what is `away` mm in front of it: nearer than its scale goes, or than life size. */
  const tooNear = ({focalLength, closest = 0}: PlanLens, away: number): boolean =>
    away < 2 * focalLength || away + 1 / (1 / focalLength - 1 / away) < closest;

  it('keeps every wish when the setting is tried with a thin lens and followed ray by ray', () => {
    for (const way of ways) {
      const place = placeOf(way);
      expect(place).toBeTypeOf('object');
      if (way.kind !== 'stack') expect(fault(job, place, way.lens.aperture, 1e-6)).toBeNull();
      expect(framesNeeded(job, place, way.lens.aperture)).toBe(way.frames.length);
      const foremost = place.subject + rulerToAxial(way.frames[0] ?? NaN, job.tilt) - place.focusDepth;
      expect(tooNear(job.lenses[way.lensIndex] as PlanLens, foremost * (1 + 1e-9))).toBe(false);
      expect(way.worst).toBeGreaterThanOrEqual(0.3 - 1e-9);
      // Ranked by the exact time, priced by the click: at most half a third of a stop apart, 12.3 per cent.
      expect(Math.abs(priceOf(way) - way.cost)).toBeLessThan(0.01 + 0.123 * way.price.seconds);
    }
  });

  it('is not beaten in one frame by any click, distance and focus position', () => {
    for (const [lensIndex, lens] of job.lenses.entries()) {
      let best = Infinity;
      for (const cameraDistance of distances(lens)) {
        const even = evenFocus(job, lens, cameraDistance);
        for (const focusDepth of [even, ...Array.from({length: 13}, (__, k) => front + (back - front) * k / 12)]) {
          const place = tryPlace(job, lensIndex, cameraDistance, focusDepth);
          if (typeof place === 'string') continue;
          for (const aperture of job.apertures) {
            if (fault(job, place, aperture) === null) best = Math.min(best, price(place, aperture));
          }
        }
      }
      const single = ways.filter((way) => way.lensIndex === lensIndex && way.kind !== 'stack');
      // A focus point beside the even one shifts the price by the few mm it shifts the pupil, at 0.05 a mm.
      if (best < Infinity) expect(Math.min(...single.map(priceOf))).toBeLessThanOrEqual(best + 0.2);
    }
  }, 60_000);

  it('is not beaten in several frames by any click and distance', () => {
    for (const [lensIndex, lens] of job.lenses.entries()) {
      let best = Infinity;
      for (const cameraDistance of distances(lens)) {
        const place = tryPlace(job, lensIndex, cameraDistance, evenFocus(job, lens, cameraDistance));
        if (typeof place === 'string') continue;
        for (const aperture of job.apertures) {
          if (fault(job, place, aperture) === 'shutter') continue;
          const frames = framesNeeded(job, place, aperture);
          if (frames < 2 || frames > job.mostFrames || price(place, aperture, frames) >= best) continue;
          const pixel = place.kept / job.pictureWidth;
          const stack = {
            lens: {focalLength: lens.focalLength, aperture, magnification: place.image / place.subject},
            ends: {front, back}, tilt: job.tilt, limit: job.blurPixels * pixel,
          };
          if (tooNear(lens, place.subject + (stackFrames(stack).frames[0]?.focusDepth ?? NaN) - place.focusDepth)) continue;
          const worst = stackContrast(stack, {onSensor: job.blurPixels * pixel}, job.sensorWidth / job.pixelsAcross);
          if (worst >= 0.3) best = price(place, aperture, frames);
        }
      }
      const stack = ways.find((way) => way.lensIndex === lensIndex && way.kind === 'stack');
      if (best < Infinity) expect(priceOf(stack as PlanWay)).toBeLessThanOrEqual(best + 1e-3);
    }
  }, 60_000);
});

test('the figures above are of all sorts: some need one frame, some several, some more distance', () => {
  const kinds = NAMED.flatMap(([, job]) => shotPlan(job).ways.map(({kind}) => kind));
  expect(new Set(kinds)).toEqual(new Set(['stay', 'move-back', 'stack']));
});

describe('wishes that cannot all be had', () => {
  const job = JOBS['75 mm infantry base'] as PlanJob;
  const impossible: Readonly<Record<string, PlanJob>> = {
    'too large a picture for one frame': {...job, mostFrames: 1, pictureWidth: 1600, pictureHeight: 2000},
    'no room': {...job, room: 200},
    'more pixels than the sensor has': {...job, pictureWidth: 4500, pictureHeight: 5625},
    'a fast shutter in one frame': {...job, mostFrames: 1, shutterRange: [1 / 4000, 1 / 10]},
    'a finer line than any aperture leaves': {...job, detailPixels: 1, leastContrast: 0.9},
  };

  function yielded(wishes: PlanJob, {wish, to}: GiveUp): PlanJob {
    switch (wish) {
      case 'frames': return {...wishes, mostFrames: to};
      case 'picture-width':
        return {...wishes, pictureWidth: to, pictureHeight: wishes.pictureHeight * to / wishes.pictureWidth};
      case 'blur-limit': return {...wishes, blurPixels: to};
      case 'contrast': return {...wishes, leastContrast: to};
      case 'shutter': return {...wishes, shutterRange: [wishes.shutterRange[0], to]};
      case 'room': return {...wishes, room: to};
      case 'margin': return {...wishes, margin: to};
    }
  }

  it.each(Object.entries(impossible))('%s: any one of the wishes named will do, and none much less of it', (_, wishes) => {
    const {ways, giveUp, oneIsEnough} = shotPlan(wishes);
    expect(ways).toEqual([]);
    expect(oneIsEnough).toBe(true);
    expect(giveUp.length).toBeGreaterThan(0);
    giveUp.forEach((each, at) => {
      expect(shotPlan(yielded(wishes, each)).ways.length).toBeGreaterThan(0);
      if (at) expect(each.factor).toBeGreaterThanOrEqual((giveUp[at - 1] as GiveUp).factor);
      const before = {
        frames: wishes.mostFrames, 'picture-width': wishes.pictureWidth, 'blur-limit': wishes.blurPixels,
        contrast: wishes.leastContrast ?? 0.3, shutter: wishes.shutterRange[1], room: wishes.room, margin: wishes.margin,
      }[each.wish];
      // A fiftieth of the way back towards what was wished for.
      const less = before * (each.to / before) ** 0.98;
      if (each.factor > 1.6) {
        expect(shotPlan(yielded(wishes, {...each, to: each.wish === 'frames' ? each.to - 1 : less})).ways).toEqual([]);
      }
    });
  });

  it('names room alone when there is no room', () => {
    expect(shotPlan({...job, room: 200}).giveUp.map(({wish}) => wish)).toContain('room');
    // The lens that is mounted first wants 240 mm and the sensor a frame from further away still.
    expect(shotPlan({...job, room: 200}).giveUp[0]?.factor).toBeGreaterThan(1.2);
  });

  it('says which have to yield together when one is not enough', () => {
    const wishes: PlanJob = {...job, mostFrames: 1, room: 200, shutterRange: [1 / 4000, 1 / 10]};
    const {ways, giveUp, oneIsEnough} = shotPlan(wishes);
    expect(ways).toEqual([]);
    expect(oneIsEnough).toBe(false);
    expect(giveUp.length).toBeGreaterThan(1);
    expect(shotPlan(giveUp.reduce(yielded, wishes)).ways.length).toBeGreaterThan(0);
    for (const kept of giveUp) {
      expect(shotPlan(giveUp.filter((each) => each !== kept).reduce(yielded, wishes)).ways).toEqual([]);
    }
  });
});

describe('a plan in pieces', () => {
  const job = JOBS['75 mm infantry base'] as PlanJob;
  const pieces = (of: PlanJob): number => {
    let count = 0;
    for (const steps = planSteps(of); !steps.next().done;) count++;
    return count;
  };

  it.each([['that can be had', job], ['that cannot', {...job, mostFrames: 1, room: 200}]] as const)(
    'of wishes %s is cut at least once for each lens and f-number', (_, wishes) => {
      expect(pieces(wishes)).toBeGreaterThan(wishes.lenses.length * (shotPlan(wishes).ways.length ? wishes.apertures.length : 1));
    });

  it('is cut the finer, the more there is to look through', () => {
    expect(pieces({...job, pictureWidth: 4500, pictureHeight: 5625})).toBeGreaterThan(pieces(job));
    expect(pieces({...job, mostFrames: 1})).toBeLessThan(pieces(job));
  });

  it('can be left off half way, and another be made', () => {
    const [left, whole] = [planSteps(job), planSteps(job)];
    for (let count = 0; count < 10; count++) left.next();
    expect(toEnd(whole)).toEqual(toEnd(left));
  });
});

describe('what a single frame would take, where only stacks do it', () => {
  const stacked = NAMED.filter(([, job]) => shotPlan(job).ways.every(({kind}) => kind === 'stack'));

  it('is asked of a figure above', () => { expect(stacked.length).toBeGreaterThan(0); });

  it.each(stacked)('makes one frame of a %s, and never asks for more frames', (_, job) => {
    const {giveUp, oneIsEnough} = toEnd(singleFrameSteps(job));
    expect(oneIsEnough).toBe(true);
    expect(giveUp.length).toBeGreaterThan(0);
    expect(giveUp.map(({wish}) => wish)).not.toContain('frames');
    // What would be given up if nobody could blend, told by the other function.
    expect(giveUp).toEqual(whatToGiveUp({...job, mostFrames: 1}).giveUp.filter(({wish}) => wish !== 'frames'));
  });

  it('is nothing where one frame does it', () => {
    const [, job] = NAMED.find(([, each]) => shotPlan(each).ways.some(({kind}) => kind !== 'stack')) as (typeof NAMED)[number];
    expect(toEnd(singleFrameSteps(job))).toEqual({giveUp: [], oneIsEnough: true});
  });
});

describe('what must not make a plan dearer', () => {
  const cheapest = (job: PlanJob): number => Math.min(Infinity, ...shotPlan(job).ways.map((way) => way.cost));
  // The exact time decides the rank, the click the cost: half a third of a stop of the seconds.
  const slack = (job: PlanJob): number => 0.13 * (shotPlan(job).ways[0]?.price.seconds ?? 0);

  it.each(NAMED)('more room, more frames, more blur, more sensor for a %s', (_, job) => {
    const before = cheapest(job) + slack(job);
    expect(cheapest({...job, room: job.room * 1.5})).toBeLessThanOrEqual(before);
    expect(cheapest({...job, mostFrames: 30})).toBeLessThanOrEqual(before);
    expect(cheapest({...job, blurPixels: job.blurPixels * 1.1})).toBeLessThanOrEqual(before);
    expect(cheapest({...job, leastContrast: 0.2})).toBeLessThanOrEqual(before);
    expect(cheapest({...job, lenses: [...job.lenses, {focalLength: 50}]})).toBeLessThanOrEqual(before);
  });
});

describe('jobs that cannot be read', () => {
  const job = JOBS['75 mm infantry base'] as PlanJob;
  it.each<[string, Partial<PlanJob>]>([
    ['focal-length', {lenses: []}], ['focal-length', {lenses: [{focalLength: 0}]}],
    ['pupil-ratio', {lenses: [{focalLength: 50, pupilRatio: -1}]}],
    ['closest-focus', {lenses: [{focalLength: 50, closest: 100}]}],
    ['sensor-width', {sensorWidth: NaN}], ['sensor-height', {sensorHeight: 0}], ['pixels-across', {pixelsAcross: -5}],
    ['aperture', {apertures: []}], ['aperture', {apertures: [8, 0]}], ['room', {room: Infinity}],
    ['blur-limit', {blurPixels: 0}], ['detail', {detailPixels: 0}], ['contrast', {leastContrast: 1.1}],
    ['frames', {mostFrames: 1.5}], ['frames', {mostFrames: 0}], ['overlap', {overlap: 1}], ['settle', {settle: -1}],
    ['margin', {margin: 0.5}], ['figure-width', {figureWidth: 0}], ['picture-height', {pictureHeight: NaN}],
    ['tilt', {tilt: 90}], ['base-depth', {outline: {baseDepth: -1}}],
    ['shutter', {shutterRange: [1, 0]}], ['shutter', {shutterRange: [1.01, 1.02]}],
    ['shutter', {metered: {aperture: 8, shutter: 0, iso: 100}}], ['iso', {metered: {aperture: 8, shutter: 1, iso: NaN}}],
    ['magnification', {meteredMagnification: -0.1}],
  ])('names %s', (parameter, part) => {
    let found: unknown;
    try {
      shotPlan({...job, ...part});
    } catch (error) {
      found = error;
    }
    expect(found).toBeInstanceOf(Problem);
    expect((found as Problem).parameter).toBe(parameter);
  });
});
