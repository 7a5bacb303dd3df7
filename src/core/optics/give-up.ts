import {fillJob, MOST_FRAMES} from './plan-job.js';
import type {PlanJob} from './plan-job.js';
import {candidates} from './plan-search.js';

/** A wish that could be given up. */
export interface GiveUp {
  readonly wish: 'frames' | 'picture-width' | 'blur-limit' | 'contrast' | 'shutter' | 'room' | 'margin';
  /** The value that would do, in the wish's own unit: frames, pixels, pixels, contrast, longest s, mm, share */
  readonly to: number;
  /** How many times it is more, or less, than what was wished for, above 1 */
  readonly factor: number;
}

/**
 * What stands in the way of a job that no setting can do.
 * @returns `giveUp`, the wish that has to yield least first; `oneIsEnough` when any single one of them will do. When one
 * is not enough, those that have to yield together; empty when not even a factor of 32 in all of them helps.
 * @throws {Problem} naming the first part of the job that cannot be used
 * Source: candidates, asked again with each wish loosened until there is one.
 */
export function whatToGiveUp(job: PlanJob): {
  readonly giveUp: readonly GiveUp[]; readonly oneIsEnough: boolean;
} {
  const alone = WISHES.flatMap(({wish, loosen, value}) => {
    const factor = leastFactor((by) => loosen(job, by));
    return factor === undefined ? [] : [{wish, to: value(loosen(job, factor)), factor}];
  }).sort((one, other) => one.factor - other.factor);
  if (alone.length) return {giveUp: alone, oneIsEnough: true};
  return {giveUp: together(job), oneIsEnough: false};
}

const possible = (job: PlanJob): boolean => !candidates(fillJob(job)).next().done;

/** Most that a wish is asked to yield. */
const MOST_FACTOR = 32;

/** A wish, how it yields by a factor of 1 or more, and how to read its value. */
interface Wish {
  readonly wish: GiveUp['wish'];
  readonly loosen: (job: PlanJob, factor: number) => PlanJob;
  readonly value: (job: PlanJob) => number;
}

/** Dearest first. */
const WISHES: readonly Wish[] = [
  {
    wish: 'contrast', value: (job) => fillJob(job).leastContrast,
    loosen: (job, factor) => ({...job, leastContrast: fillJob(job).leastContrast / factor}),
  },
  {
    wish: 'blur-limit', value: (job) => job.blurPixels,
    loosen: (job, factor) => ({...job, blurPixels: job.blurPixels * factor}),
  },
  {
    wish: 'picture-width', value: (job) => job.pictureWidth,
    loosen: (job, factor) =>
      ({...job, pictureWidth: job.pictureWidth / factor, pictureHeight: job.pictureHeight / factor}),
  },
  {
    wish: 'margin', value: (job) => job.margin,
    loosen: (job, factor) => ({...job, margin: job.margin / factor}),
  },
  {
    wish: 'frames', value: (job) => job.mostFrames,
    loosen: (job, factor) => ({...job, mostFrames: Math.min(MOST_FRAMES, Math.floor(job.mostFrames * factor))}),
  },
  {
    wish: 'shutter', value: (job) => job.shutterRange[1],
    loosen: (job, factor) => ({...job, shutterRange: [job.shutterRange[0], job.shutterRange[1] * factor]}),
  },
  {
    wish: 'room', value: (job) => job.room,
    loosen: (job, factor) => ({...job, room: job.room * factor}),
  },
];

/** Smallest factor, within a hundredth, that makes the job possible; `undefined` when the largest does not. */
function leastFactor(loosened: (factor: number) => PlanJob): number | undefined {
  if (!possible(loosened(MOST_FACTOR))) return undefined;
  let [no, yes] = [1, MOST_FACTOR];
  while (yes / no > 1.01) {
    const middle = Math.sqrt(no * yes);
    if (possible(loosened(middle))) yes = middle; else no = middle;
  }
  return yes;
}

/**
 * Loosens all wishes, takes back each that need not have been, and then each of the others as far as it goes. What the
 * picture is to be is taken back first, what stands in the way of it last.
 */
function together(job: PlanJob): GiveUp[] {
  const all = (factors: ReadonlyMap<Wish, number>): PlanJob =>
    [...factors].reduce((so, [{loosen}, factor]) => loosen(so, factor), job);
  let factors: ReadonlyMap<Wish, number> = new Map(WISHES.map((wish) => [wish, MOST_FACTOR]));
  if (!possible(all(factors))) return [];
  for (const wish of WISHES) {
    const without = new Map([...factors].filter(([other]) => other !== wish));
    if (possible(all(without))) factors = without;
  }
  for (const wish of factors.keys()) {
    const others = factors;
    factors = new Map(others).set(wish, leastFactor((by) => all(new Map(others).set(wish, by))) ?? MOST_FACTOR);
  }
  return [...factors].map(([{wish, value}, factor]) => ({wish, to: value(all(factors)), factor}));
}
