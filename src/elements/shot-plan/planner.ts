import {singleFrameSteps, type GiveUps} from '../../core/optics/give-up.js';
import type {PlanJob} from '../../core/optics/plan-job.js';
import {planSteps, type Plan} from '../../core/optics/plan.js';
import {Problem} from '../../core/problem.js';
import {runInSlices} from './planning.js';

/** Quiet time after a change before planning starts anew, ms: a drag goes on while the last good plan stands. */
const QUIET_MS = 120;

/** A plan and what it was made from. */
export interface Planned {
  readonly plan: Plan;
  readonly job: PlanJob;
  /** What one frame would take, once that is known; only where all ways are stacks */
  readonly single?: GiveUps;
}

/** Plans whenever the wishes change, a slice at a time, and keeps the last good plan meanwhile. */
export class Planner {
  /** The last good plan. */
  planned: Planned | undefined;
  /** Why the wishes of now give no plan. */
  trouble: Problem | undefined;
  /** Whether a plan is on its way. */
  busy = false;

  readonly #tell: () => void;
  #wanted = '';
  #stop: (() => void) | undefined;
  #quiet: ReturnType<typeof setTimeout> | undefined;

  /** @param tell - called when there is news */
  constructor(tell: () => void) { this.#tell = tell; }

  /** Starts when the wishes changed: at once for the first, after a quiet moment for others. */
  plan(job: PlanJob): void {
    const wanted = JSON.stringify(job);
    if (wanted === this.#wanted) return;
    this.rest();
    this.#wanted = wanted;
    this.busy = true;
    this.#quiet = setTimeout(() => { this.#start(job); }, this.planned ? QUIET_MS : 0);
  }

  /** Leaves off; the next wishes are planned, whatever they are. */
  rest(): void {
    clearTimeout(this.#quiet);
    this.#stop?.();
    this.#stop = undefined;
    this.#wanted = '';
  }

  #start(job: PlanJob): void {
    const failed = (error: unknown): void => {
      if (!(error instanceof Problem)) throw error;
      this.#settle(undefined, error);
    };
    this.#stop = runInSlices(planSteps(job), (plan) => {
      this.#settle({plan, job});
      if (!plan.ways.length || plan.ways.some(({kind}) => kind !== 'stack')) return;
      this.#stop = runInSlices(singleFrameSteps(job), (single) => { this.#settle({plan, job, single}); }, failed);
    }, failed);
  }

  #settle(planned: Planned | undefined, problem?: Problem): void {
    if (planned) this.planned = planned;
    this.trouble = problem;
    this.busy = false;
    this.#tell();
  }
}
