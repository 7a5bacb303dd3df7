import {whatToGiveUp} from '../../core/optics/give-up.js';
import {fillJob, type PlanJob} from '../../core/optics/plan-job.js';
import {candidates, type Candidate} from '../../core/optics/plan-search.js';
import {planWay, type PlanWay} from '../../core/optics/plan-way.js';
import type {Plan} from '../../core/optics/plan.js';

/** Pause before what cannot be cut into slices, ms: longer than between two moves of a drag. */
const REST_MS = 350;

/**
 * `shotPlan` in pieces, so that a page goes on answering: after each there is a `yield`, now and then with ms to rest.
 * @throws {Problem} as shotPlan
 */
export function* planInSteps(job: PlanJob): Generator<number | undefined, Plan> {
  const full = fillJob(job);
  const best = new Map<string, Candidate>();
  for (const aperture of job.apertures) {
    for (const next of candidates({...full, apertures: [aperture]})) {
      const {lensIndex, frames, place, nearest, cost} = next;
      const kind = `${lensIndex} ${frames > 1 ? 'stack' : place.distance > nearest.distance * (1 + 1e-9) ? 'back' : 'stay'}`;
      if (!(cost >= (best.get(kind)?.cost ?? Infinity))) best.set(kind, next);
      yield;
    }
    yield;
  }
  if (!best.size) {
    // This comes in one go, and longer than a slice: only once the wishes have come to rest.
    yield REST_MS;
    return {ways: [], ...whatToGiveUp(job)};
  }
  const ways: PlanWay[] = [];
  for (const {lensIndex, aperture, place, nearest} of best.values()) {
    ways.push(planWay(full, lensIndex, aperture, place, nearest));
    yield;
  }
  return {ways: ways.sort((one, other) => one.cost - other.cost), giveUp: [], oneIsEnough: false};
}

/** Longest the page is held at a time, ms: half a picture at 60 a second. */
const SLICE_MS = 8;

/**
 * Runs steps in slices with room for the page in between.
 * @param done - given the result
 * @param failed - given whatever was thrown
 * @returns a function that gives the rest up
 */
export function runInSlices<T>(steps: Generator<number | undefined, T>, done: (result: T) => void, failed: (error: unknown) => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const slice = (): void => {
    const end = performance.now() + SLICE_MS;
    try {
      for (;;) {
        const step = steps.next();
        if (step.done) { done(step.value); return; }
        if (step.value === undefined && performance.now() < end) continue;
        timer = setTimeout(slice, step.value);
        return;
      }
    } catch (error) { failed(error); }
  };
  slice();
  return () => { clearTimeout(timer); };
}
