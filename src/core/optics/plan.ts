import {giveUpSteps} from './give-up.js';
import type {GiveUp, GiveUps} from './give-up.js';
import {fillJob} from './plan-job.js';
import type {PlanJob} from './plan-job.js';
import {candidates} from './plan-search.js';
import type {Candidate} from './plan-search.js';
import {planWay} from './plan-way.js';
import type {PlanWay} from './plan-way.js';
import {toEnd} from './steps.js';
import type {Steps} from './steps.js';

export type {GiveUp, GiveUps, Steps};

/** Ways out, and when there are none, what stands in the way. */
export interface Plan extends GiveUps {
  /** The cheapest way of each kind for each lens, cheapest first. `giveUp` is empty when there is one */
  readonly ways: readonly PlanWay[];
}

/**
 * How to get the whole figure sharp: every lens at hand, every f-number, every distance and every number of frames
 * compared, with the focus where both ends are equally blurred, which no other focus point betters.
 *
 * A way frames the figure with its margin, keeps its blur within the limit from the foremost to the rearmost point,
 * keeps the finest line visible, leaves as many sensor pixels as the finished picture has, and stays within the room
 * and the shutter limits.
 * @throws {Problem} naming the first part of the job that cannot be used
 * Source: candidates for the search, planWay for the numbers; the ranking is weighed by {@link PlanJob.rates}.
 */
export function shotPlan(job: PlanJob): Plan {
  return toEnd(planSteps(job));
}

/**
 * {@link shotPlan} in pieces of a few ms, so that a page that runs them one by one goes on answering.
 * @throws {Problem} as {@link shotPlan}
 */
export function* planSteps(job: PlanJob): Steps<Plan> {
  const full = fillJob(job);
  const best = new Map<string, Candidate>();
  for (const next of candidates(full)) {
    if (next) {
      const kind = next.frames > 1 ? 'stack' : next.place.distance > next.nearest.distance * (1 + 1e-9) ? 'back' : 'stay';
      const known = best.get(kind + next.lensIndex);
      if (!known || next.cost < known.cost) best.set(kind + next.lensIndex, next);
    }
    yield;
  }
  const ways: PlanWay[] = [];
  for (const {lensIndex, aperture, place, nearest} of best.values()) {
    ways.push(planWay(full, lensIndex, aperture, place, nearest));
    yield;
  }
  ways.sort((one, other) => one.cost - other.cost);
  return ways.length ? {ways, giveUp: [], oneIsEnough: false} : {ways, ...yield* giveUpSteps(job)};
}
