import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {worstContrast} from '../../../src/core/optics/best-aperture.js';
import {blurDisc} from '../../../src/core/optics/blur.js';
import {contrastAt} from '../../../src/core/optics/contrast.js';
import {focusForBothEnds} from '../../../src/core/optics/focus.js';
import {pupilToSubject} from '../../../src/core/optics/lens.js';
import {bestStack, stackContrast, stackFrames} from '../../../src/core/optics/stack.js';
import type {StackFrame, StackJob} from '../../../src/core/optics/stack.js';
import {sharpZone} from '../../../src/core/optics/zone.js';
import {Problem} from '../../../src/core/problem.js';

/** Invented: 240 mm deep scene, 60 mm lens. */
const JOB: StackJob = {
  lens: {focalLength: 60, aperture: 8, magnification: 0.12}, ends: {front: -20, back: 220}, tilt: 20, limit: 0.015,
};

const job = fc.record({
  lens: fc.record({
    focalLength: fc.double({min: 5, max: 150, noNaN: true}), aperture: fc.double({min: 2, max: 32, noNaN: true}),
    magnification: fc.double({min: 0.03, max: 0.8, noNaN: true}), pupilRatio: fc.double({min: 0.6, max: 1.6, noNaN: true}),
  }),
  ends: fc.tuple(fc.double({min: -60, max: 0, noNaN: true}), fc.double({min: 1, max: 250, noNaN: true}))
    .map(([front, spread]) => ({front, back: front + spread})),
  tilt: fc.double({min: 0, max: 60, noNaN: true}),
  limit: fc.double({min: 0.006, max: 0.08, noNaN: true}),
  overlap: fc.double({min: 0, max: 0.6, noNaN: true}),
}).filter(({lens, ends, limit}) => {
  const zone = sharpZone(lens, limit);
  // As deep as the figure is, it is seen from at least twice as far: a lens that touches its subject focuses nowhere.
  const spread = ends.back - ends.front;
  return spread / (zone.near + zone.far) < 60 && spread < pupilToSubject(lens) / 2;
});

describe('frames of a stack', () => {
  test('leave no depth unsharp, step by step', () => {
    fc.assert(fc.property(job, (each) => {
      const {frames} = stackFrames(each);
      for (let k = 0; k <= 300; k++) {
        const depth = each.ends.front + (each.ends.back - each.ends.front) * k / 300;
        const least = Math.min(...frames.map((frame) => blurDisc(frame.lens, depth - frame.focusDepth) / frame.limit));
        expect(least).toBeLessThanOrEqual(1 + 1e-6);
      }
    }), {numRuns: 60});
  });

  test('say of each zone what the sharp zone of that frame is', () => {
    fc.assert(fc.property(job, (each) => {
      for (const frame of stackFrames(each).frames) {
        const {near, far} = sharpZone(frame.lens, frame.limit);
        expect(frame.focusDepth - frame.from).toBeCloseTo(near, 6);
        if (far < 1e6) expect(frame.to - frame.focusDepth).toBeCloseTo(far, 4);
        expect(frame.focus * Math.cos(each.tilt * Math.PI / 180)).toBeCloseTo(frame.focusDepth, 9);
      }
    }), {numRuns: 60});
  });

  test('are taken from one place, at one size in the finished picture', () => {
    fc.assert(fc.property(job, (each) => {
      const pupil = focusForBothEnds(each.lens, each.ends) - pupilToSubject(each.lens);
      for (const frame of stackFrames(each).frames) {
        const distance = pupilToSubject(frame.lens);
        expect((frame.focusDepth - distance) / pupil).toBeCloseTo(1, 9);
        // A rod of 1 mm anywhere in front of the pupil: its picture is m·u_e/d mm long.
        expect(frame.limit / (frame.lens.magnification * distance))
          .toBeCloseTo(each.limit / (each.lens.magnification * pupilToSubject(each.lens)), 12);
      }
    }), {numRuns: 60});
  });

  test('overlap by the share asked for, and one frame less would not', () => {
    fc.assert(fc.property(job, (each) => {
      const {frames, overlap} = stackFrames(each);
      const pupil = focusForBothEnds(each.lens, each.ends) - pupilToSubject(each.lens);
      const inverse = (depth: number): number => 1 / (depth - pupil);
      frames.slice(1).forEach((frame, at) => {
        const before = frames[at] as typeof frame;
        const shared = inverse(frame.from) - inverse(before.to);
        expect(shared / (inverse(before.from) - inverse(before.to))).toBeCloseTo(overlap, 6);
      });
      if (frames.length > 1) {
        expect(overlap).toBeGreaterThanOrEqual(each.overlap - 1e-9);
        const [{from, to}] = frames as [(typeof frames)[number]];
        const zone = inverse(from) - inverse(to);
        const reach = zone * (1 + (frames.length - 2) * (1 - each.overlap));
        expect(reach).toBeLessThan((inverse(each.ends.front) - inverse(each.ends.back)) * (1 + 1e-6));
      }
    }), {numRuns: 60});
  });

  test('what is left over goes where it keeps the worst blur smallest', () => {
    let looser = 0;
    fc.assert(fc.property(job, (each) => {
      const {frames, overlap} = stackFrames(each);
      const pupil = focusForBothEnds(each.lens, each.ends) - pupilToSubject(each.lens);
      const [first, second] = frames;
      const last = frames.at(-1) as StackFrame;
      if (!first || !second) return;
      const blur = (frame: StackFrame, depth: number): number => blurDisc(frame.lens, depth - frame.focusDepth) / frame.limit;
      // Both ends alike, and never worse than halfway between two frames unless the overlap asked for has it so.
      expect(blur(first, each.ends.front)).toBeCloseTo(blur(last, each.ends.back), 6);
      const [one, two] = [first.focusDepth - pupil, second.focusDepth - pupil];
      const halfway = blur(first, pupil + 2 * one * two / (one + two));
      if (overlap > each.overlap + 1e-6) {
        looser++;
        expect(blur(first, each.ends.front)).toBeCloseTo(halfway, 6);
      } else expect(blur(first, each.ends.front)).toBeGreaterThan(halfway - 1e-6);
    }), {numRuns: 60});
    expect(looser).toBeGreaterThan(0);
  });

  it('is one frame, focused for both ends, when one is enough', () => {
    const {frames, overlap} = stackFrames({...JOB, ends: {front: 0, back: 8}, limit: 0.02});
    expect(frames).toHaveLength(1);
    expect(overlap).toBe(0);
    expect(frames[0]?.focusDepth).toBeCloseTo(focusForBothEnds(JOB.lens, {front: 0, back: 8}), 9);
    expect(frames[0]?.lens.magnification).toBeCloseTo(JOB.lens.magnification, 12);
  });

  it('is one frame for a flat target', () => {
    expect(stackFrames({...JOB, ends: {front: 3, back: 3}}).frames).toMatchObject([{focusDepth: 3}]);
  });

  it('lists the focus from front to back, in millimetres on the ruler', () => {
    const marks = stackFrames(JOB).frames.map(({focus}) => focus);
    expect(marks.length).toBeGreaterThan(3);
    marks.slice(1).forEach((mark, at) => expect(mark).toBeGreaterThan(marks[at] as number));
    // Zones grow with the distance, so do the steps.
    const steps = marks.slice(1).map((mark, at) => mark - (marks[at] as number));
    expect(steps.at(-1)).toBeGreaterThan(steps[0] as number);
  });

  it('refuses by name', () => {
    expect(() => stackFrames({...JOB, limit: 0})).toThrow(new Problem('blur-limit', 0, 'a number above 0'));
    expect(() => stackFrames({...JOB, overlap: 1})).toThrow(new Problem('overlap', 1, 'a number from 0 to 0.9'));
    expect(() => stackFrames({...JOB, limit: 1e-6})).toThrow(/^frames/);
    expect(() => stackFrames({...JOB, ends: {front: 5, back: 0}})).toThrow(/^depth/);
    expect(() => stackFrames({...JOB, tilt: 90})).toThrow(/^tilt/);
  });
});

describe('contrast of a finished stack', () => {
  test('is the worst over the depth of the best over the frames', () => {
    for (const detail of [{onSensor: 0.012}, {onFigure: 0.12}]) {
      for (const aperture of [4, 8, 16]) {
        const set = {...JOB, lens: {...JOB.lens, aperture}};
        const {frames} = stackFrames(set);
        const reference = set.lens.magnification * pupilToSubject(set.lens);
        let worst = 1;
        for (let k = 0; k <= 2000; k++) {
          const depth = set.ends.front + (set.ends.back - set.ends.front) * k / 2000;
          worst = Math.min(worst, Math.max(...frames.map((frame) => {
            const scale = frame.lens.magnification * pupilToSubject(frame.lens) / reference;
            const line = detail.onSensor ? {onSensor: detail.onSensor * scale} : {onFigure: detail.onFigure as number};
            return contrastAt(frame.lens, depth - frame.focusDepth, line);
          })));
        }
        expect(Math.abs(stackContrast(set, detail.onSensor ? {onSensor: detail.onSensor} : {onFigure: 0.12}) - worst))
          .toBeLessThan(0.002);
      }
    }
  });

  test('of a single frame is that of the frame', () => {
    const single = {...JOB, ends: {front: 0, back: 8}, limit: 0.02};
    const focus = focusForBothEnds(single.lens, single.ends);
    expect(stackContrast(single, {onSensor: 0.012}))
      .toBeCloseTo(worstContrast(single.lens, {front: -focus, back: 8 - focus}, {onSensor: 0.012}).worst, 9);
  });
});

describe('best aperture for a stack', () => {
  const trade = {
    detail: {onSensor: 0.012}, apertures: [4, 5.66, 8, 11.3, 16, 22.6], settle: 4,
    shutterFor: (aperture: number) => aperture ** 2 / 200,
  };

  it('lists every f-number with frames, contrast and time', () => {
    const {choices} = bestStack(JOB, trade);
    expect(choices.map(({aperture}) => aperture)).toEqual(trade.apertures);
    choices.forEach((choice, at) => {
      const set = {...JOB, lens: {...JOB.lens, aperture: choice.aperture}};
      expect(choice.frames).toBe(stackFrames(set).frames.length);
      expect(choice.worst).toBe(stackContrast(set, trade.detail));
      // Four exposures have three pauses between them.
      expect(choice.seconds).toBeCloseTo(choice.frames * choice.aperture ** 2 / 200 + (choice.frames - 1) * 4, 9);
      if (at) expect(choice.frames).toBeLessThanOrEqual((choices[at - 1] as typeof choice).frames);
    });
  });

  it('takes the highest contrast when frames cost nothing, the fewest frames when they cost all', () => {
    const free = bestStack(JOB, {...trade, worth: 0});
    expect(free.best.worst).toBe(Math.max(...free.choices.map(({worst}) => worst)));
    const dear = bestStack(JOB, {...trade, worth: 1});
    expect(dear.best.frames).toBe(Math.min(...dear.choices.map(({frames}) => frames)));
  });

  it('never takes a frame that does not bring what it has to', () => {
    for (const worth of [0.002, 0.01, 0.03]) {
      const {best, choices} = bestStack(JOB, {...trade, worth});
      for (const other of choices) {
        const rate = (best.worst - other.worst) / (best.frames - other.frames);
        if (other.frames < best.frames) expect(rate).toBeGreaterThanOrEqual(worth);
        if (other.frames > best.frames) expect(rate).toBeLessThanOrEqual(worth);
      }
    }
  });

  it('leaves out f-numbers that would take hundreds of frames, and says so when nothing is left', () => {
    const fine = {...JOB, limit: 0.0004};
    const {choices} = bestStack(fine, trade);
    expect(choices.length).toBeGreaterThan(0);
    expect(choices.length).toBeLessThan(trade.apertures.length);
    expect(() => bestStack({...JOB, limit: 1e-6}, trade)).toThrow(/^frames/);
    expect(() => bestStack(JOB, {...trade, apertures: []})).toThrow(/^aperture/);
    expect(() => bestStack(JOB, {...trade, settle: -1})).toThrow(new Problem('settle', -1, 'a number, 0 or above'));
  });
});
