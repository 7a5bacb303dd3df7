import {fillJob, MOST_FRAMES} from './plan-job.js';
import type {PlanJob} from './plan-job.js';
import {candidates} from './plan-search.js';
import {toEnd} from './steps.js';
import type {Steps} from './steps.js';

/** A wish that could be given up. */
export interface GiveUp {
  readonly wish: 'frames' | 'picture-width' | 'blur-limit' | 'contrast' | 'shutter' | 'room' | 'margin';
  /** The value that would do, in the wish's own unit: frames, pixels, pixels, contrast, longest s, mm, share */
  readonly to: number;
  /** How many times it is more, or less, than what was wished for, above 1 */
  readonly factor: number;
}

/** What stands in the way of a job. */
export interface GiveUps {
  /** The wish that has to yield least first; empty when not even a factor of 32 in all of them helps */
  readonly giveUp: readonly GiveUp[];
  /** True when any single one of `giveUp` will do; false when they have to yield together */
  readonly oneIsEnough: boolean;
}

/**
 * What stands in the way of a job that no setting can do.
 * @throws {Problem} naming the first part of the job that cannot be used
 * Source: candidates, asked again with each wish loosened until there is one.
 */
export function whatToGiveUp(job: PlanJob): GiveUps {
  return toEnd(giveUpSteps(job));
}

/** {@link whatToGiveUp} in pieces of a few ms. */
export const giveUpSteps = (job: PlanJob): Steps<GiveUps> => looseningSteps(job, WISHES);

/**
 * What it would take to do without a stack, in pieces of a few ms.
 * @returns as {@link whatToGiveUp}, of everything but the number of frames, which is one; nothing to give up where one
 * frame does it as it is
 * @throws {Problem} naming the first part of the job that cannot be used
 */
export function* singleFrameSteps(job: PlanJob): Steps<GiveUps> {
  const single = {...job, mostFrames: 1};
  if (yield* possible(single)) return {giveUp: [], oneIsEnough: true};
  return yield* looseningSteps(single, WISHES.filter(({wish}) => wish !== 'frames'));
}

function* looseningSteps(job: PlanJob, wishes: readonly Wish[]): Steps<GiveUps> {
  const alone: GiveUp[] = [];
  for (const {wish, loosen, value} of wishes) {
    const factor = yield* leastFactor((by) => loosen(job, by));
    if (factor !== undefined) alone.push({wish, to: value(loosen(job, factor)), factor});
  }
  if (alone.length) return {giveUp: alone.sort((one, other) => one.factor - other.factor), oneIsEnough: true};
  return {giveUp: yield* together(job, wishes), oneIsEnough: false};
}

function* possible(job: PlanJob): Steps<boolean> {
  for (const next of candidates(fillJob(job))) {
    if (next) return true;
    yield;
  }
  return false;
}

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
function* leastFactor(loosened: (factor: number) => PlanJob): Steps<number | undefined> {
  if (!(yield* possible(loosened(MOST_FACTOR)))) return undefined;
  let [no, yes] = [1, MOST_FACTOR];
  while (yes / no > 1.01) {
    const middle = Math.sqrt(no * yes);
    if (yield* possible(loosened(middle))) yes = middle; else no = middle;
  }
  return yes;
}

/**
 * Loosens all wishes, takes back each that need not have been, and then each of the others as far as it goes. What the
 * picture is to be is taken back first, what stands in the way of it last.
 */
function* together(job: PlanJob, wishes: readonly Wish[]): Steps<GiveUp[]> {
  const all = (factors: ReadonlyMap<Wish, number>): PlanJob =>
    [...factors].reduce((so, [{loosen}, factor]) => loosen(so, factor), job);
  let factors: ReadonlyMap<Wish, number> = new Map(wishes.map((wish) => [wish, MOST_FACTOR]));
  if (!(yield* possible(all(factors)))) return [];
  for (const wish of wishes) {
    const without = new Map([...factors].filter(([other]) => other !== wish));
    if (yield* possible(all(without))) factors = without;
  }
  for (const wish of factors.keys()) {
    const others = factors;
    const least = yield* leastFactor((by) => all(new Map(others).set(wish, by)));
    factors = new Map(others).set(wish, least ?? MOST_FACTOR);
  }
  return [...factors].map(([{wish, value}, factor]) => ({wish, to: value(all(factors)), factor}));
}
