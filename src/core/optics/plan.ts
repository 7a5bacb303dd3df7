import {whatToGiveUp} from './give-up.js';
import type {GiveUp} from './give-up.js';
import {fillJob} from './plan-job.js';
import type {PlanJob} from './plan-job.js';
import {candidates} from './plan-search.js';
import type {Candidate} from './plan-search.js';
import {planWay} from './plan-way.js';
import type {PlanWay} from './plan-way.js';

export type {GiveUp};

/** Ways out, and when there are none, what stands in the way. */
export interface Plan {
  /** The cheapest way of each kind for each lens, cheapest first */
  readonly ways: readonly PlanWay[];
  /** Only when there is no way: what to give up, first the wish that has to yield least */
  readonly giveUp: readonly GiveUp[];
  /** True when any one of `giveUp` is enough, false when all of them have to yield together */
  readonly oneIsEnough: boolean;
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
  const full = fillJob(job);
  const best = new Map<string, Candidate>();
  for (const next of candidates(full)) {
    const kind = next.frames > 1 ? 'stack' : next.place.distance > next.nearest.distance * (1 + 1e-9) ? 'back' : 'stay';
    const known = best.get(kind + next.lensIndex);
    if (!known || next.cost < known.cost) best.set(kind + next.lensIndex, next);
  }
  const ways = [...best.values()]
    .map(({lensIndex, aperture, place, nearest}) => planWay(full, lensIndex, aperture, place, nearest))
    .sort((one, other) => one.cost - other.cost);
  return ways.length ? {ways, giveUp: [], oneIsEnough: false} : {ways, ...whatToGiveUp(job)};
}
