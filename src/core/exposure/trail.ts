import type {ClicksPerStop} from './clicks.js';
import {findSteps} from './find-settings.js';
import type {FoundStep} from './find-settings.js';
import {brokenSteps, judge} from './judge-trail.js';
import type {Frame, TrailStep} from './judge-trail.js';
import {readMeant} from './meant.js';
import type {Said} from './meant.js';
import {findMends} from './mend-trail.js';
import type {Mend} from './mend-trail.js';
import {SETTINGS} from './stops.js';

/** A list of settings, held to what was meant. */
export interface Trail {
  /** What all places count in: the text, or the items one a line. */
  readonly text: string;
  readonly steps: readonly TrailStep[];
  /** Whether any step says an ISO speed. Where none does, ISO 100 is taken throughout. */
  readonly isoSaid: boolean;
  /** Steps, by index, that do not do what was meant. */
  readonly broken: readonly number[];
  /** Slips that would explain it, each with its mend; those of the first step that fails first. */
  readonly mends: readonly Mend[];
  /** Stops that count as nothing: half a click of the dial. */
  readonly tolerance: number;
}

export interface TrailOptions {
  /** What is meant where nothing is said. */
  readonly expect?: 'same-light' | 'nothing';
  /** Clicks of the dials to one stop; third stops when left out. */
  readonly clicksPerStop?: ClicksPerStop;
}

/**
 * What the words of a step say of the light, its settings taken out. A fault named before its settings (“that was one
 * stop too dark, so 1/6 s”) may be that of the step before.
 */
function saidIn(step: FoundStep): Said | null {
  let words = step.text;
  for (const setting of SETTINGS) {
    const place = step[setting];
    if (!place) continue;
    const [start, end] = [place.start - step.start, place.end - step.start];
    words = words.slice(0, start) + ' '.repeat(end - start) + words.slice(end);
  }
  const said = readMeant(words);
  if (!said) return null;
  const place = {start: said.start + step.start, end: said.end + step.start};
  const ahead = SETTINGS.every((setting) => place.end <= (step[setting]?.start ?? Infinity));
  return {...said, ...place, change: said.change ?? (ahead ? said.next : null)};
}

/**
 * Holds a list of settings, as a lesson tells them, to what was meant: stops of light and of depth from step to step,
 * the steps that do not do what was meant, and the slips of reading that would explain them.
 *
 * A setting that a step does not say is taken over from the step before; an ISO speed that is first said later holds
 * from the start, unless the trail balances better from ISO 100. Where nothing is said of the light, the same light is
 * taken to be meant, or nothing, as `expect` has it; “same light” before the first step or after the last speaks for
 * the whole trail. What differs by no more than half a click does what was meant.
 * @param source - a text, one setting a line or running, or items, each a step
 * @returns every step found, in order; never throws
 * Source: equal exposure N²/(t·S); half a click is all that a dial can be off.
 */
export function trail(
  source: string | readonly string[], {expect = 'same-light', clicksPerStop = 3}: TrailOptions = {},
): Trail {
  const {text, steps: found, around} = findSteps(source, clicksPerStop);
  const said = found.map(saidIn);
  const whole = [...around.map(readMeant), said[0]].some((words) => words?.change === 0);
  const trailWish = whole ? {wish: 0, by: 'trail' as const} : expect === 'same-light' ? {wish: 0, by: 'assumed' as const} : null;
  const firstSaid = found.find(({iso}) => iso)?.iso?.value;
  const frames = [...new Set([firstSaid ?? 100, 100])]
    .map((firstIso): Frame => ({said, trailWish, tolerance: 0.5 / clicksPerStop, firstIso}));
  const [best] = frames.map((frame) => ({frame, judged: judge(found, frame)}))
    .sort((one, two) => brokenSteps(one.judged).length - brokenSteps(two.judged).length);
  const {frame, judged} = best as NonNullable<typeof best>;
  return {
    text, isoSaid: firstSaid !== undefined, tolerance: frame.tolerance, broken: brokenSteps(judged),
    steps: found.map((step, at) => ({...step, ...judged[at] as NonNullable<typeof judged[number]>})),
    mends: findMends(found, frame, clicksPerStop),
  };
}
