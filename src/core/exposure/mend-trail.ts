import {nearestClick} from './clicks.js';
import type {ClicksPerStop} from './clicks.js';
import type {FoundStep} from './find-settings.js';
import {brokenSteps, judge} from './judge-trail.js';
import type {Frame} from './judge-trail.js';
import type {Place} from './read-exposure.js';
import type {ReadAs} from './reading.js';
import {afterStops, lightStops, SETTINGS} from './stops.js';
import type {Exposure, Setting} from './stops.js';
import {writeAperture, writeIso, writeShutter} from './write.js';

/** A change of one setting that mends a trail. Its place is the text to be written over, in the trail's text. */
export interface Mend extends Place {
  /** Index of the step. */
  readonly step: number;
  readonly setting: Setting;
  /** The setting as written; empty when the step does not say it. */
  readonly was: string;
  /** What to write there instead. */
  readonly text: string;
  /** The setting's new exact value. */
  readonly value: number;
  /** How the digits would have to be read; `needed` when no reading of them helps and this is what would balance. */
  readonly how: ReadAs | 'needed';
  /** Light it brings to the step; positive = brighter. */
  readonly stops: number;
  /** Steps, by index, that then do what was meant. */
  readonly repairs: readonly number[];
  /** Others that mend as much. */
  readonly others: readonly Mend[];
}

/** Slips that a reader would follow up in one list. */
const MOST = 12;

type Candidate = Omit<Mend, 'repairs' | 'others'> & {readonly wasAs?: ReadAs};

/** Setting as it would be written in the place of `was`: as prose has it where it had a unit, else as a body shows it. */
function writeLike(was: string, setting: Setting, value: number): string {
  if (setting === 'aperture') return writeAperture(value);
  if (setting === 'iso') return writeIso(value);
  return writeShutter(value, /[sm]/i.test(was) ? 'prose' : 'body');
}

/** Whether a dial can be set to a value; nobody misreads what no body shows. */
function isOnDial(setting: Setting, value: number): boolean {
  return ([3, 2] as const).some((clicks) => Math.abs(nearestClick(setting, value, clicks).rounding) < 1e-6);
}

/** Other readings of the digits in a step. The half-stop click of the same print is no slip. */
function misreadings(step: FoundStep, at: number): readonly Candidate[] {
  return SETTINGS.flatMap((setting) => {
    const reading = step[setting];
    if (!reading) return [];
    const {start, end, text: was, how: wasAs} = reading;
    const others = reading.others.filter(({how, value}) => how !== 'other-click' && isOnDial(setting, value));
    return others.map(({value, how, stops}) => ({
      step: at, setting, start, end, was, wasAs, value, how, stops, text: writeLike(was, setting, value),
    }));
  });
}

/** The time that would balance a step that is so many stops too bright. */
function neededTime(step: FoundStep, at: number, exposure: Exposure, off: number, clicksPerStop: ClicksPerStop): Candidate {
  const {value} = nearestClick('shutter', afterStops('shutter', exposure.shutter, -off), clicksPerStop);
  const {start, end, text: was} = step.shutter ?? {start: step.end, end: step.end, text: ''};
  const text = step.shutter ? writeLike(was, 'shutter', value) : `, ${writeShutter(value)}`;
  return {step: at, setting: 'shutter', start, end, was, value, text, how: 'needed', stops: lightStops('shutter', exposure.shutter, value)};
}

/** The step with a setting in it taken for another value. */
function mended(found: readonly FoundStep[], {step, setting, value, start, end, text}: Candidate): readonly FoundStep[] {
  return found.map((old, at) => (at !== step ? old : {
    ...old, [setting]: {...old[setting] ?? {text, nominal: value, how: 'seconds', start, end}, value, others: []},
  }));
}

/** A sixth written for six tenths is the commonest slip. */
const isTenths = ({wasAs, how}: Candidate): boolean => wasAs === 'fraction' && how === 'seconds';

/** Candidates that repair something and break nothing, the best first. */
function ranked(found: readonly FoundStep[], frame: Frame, candidates: readonly Candidate[]): readonly Mend[] {
  const before = brokenSteps(judge(found, frame));
  const rated = candidates.flatMap((candidate) => {
    const judged = judge(mended(found, candidate), frame);
    const after = brokenSteps(judged);
    if (after.length >= before.length || !after.every((at) => before.includes(at))) return [];
    const left = judged.reduce((sum, {link}) => sum + Math.abs(link?.off ?? 0), 0);
    return [{candidate, left, repairs: before.filter((at) => !after.includes(at))}];
  });
  rated.sort((one, two) => two.repairs.length - one.repairs.length
    || Number(isTenths(two.candidate)) - Number(isTenths(one.candidate))
    || one.left - two.left || Math.abs(one.candidate.stops) - Math.abs(two.candidate.stops));
  return rated.filter(({repairs}) => repairs.length === rated[0]?.repairs.length)
    .map(({candidate: {wasAs: _wasAs, ...mend}, repairs}) => ({...mend, repairs, others: []}));
}

/**
 * The fewest slips that explain a trail which does not balance: one slip that mends both its neighbours is named once.
 * Where no reading of the digits helps, the time that would balance is given.
 * @param found - the steps as written
 * @returns mends in the order in which they are best made; each repairs at least one step and breaks none
 */
export function findMends(found: readonly FoundStep[], frame: Frame, clicksPerStop: ClicksPerStop): readonly Mend[] {
  const mends: Mend[] = [];
  let now = found;
  const makeBest = (candidates: readonly Candidate[]): boolean => {
    const [best, ...others] = ranked(now, frame, candidates);
    if (!best || mends.length >= MOST) return false;
    mends.push({...best, others: others.slice(0, 2)});
    now = mended(now, best);
    return true;
  };
  while (makeBest(now.flatMap(misreadings)));
  const judged = judge(now, frame);
  const needed = brokenSteps(judged).flatMap((at) => [at, at - 1].flatMap((which) => {
    const [step, exposure, off] = [now[which], judged[which]?.exposure, judged[at]?.link?.off];
    if (!step || !exposure || typeof off !== 'number') return [];
    return [neededTime(step, which, exposure, which === at ? off : -off, clicksPerStop)];
  }));
  while (makeBest(needed.filter(({step}) => !mends.some((mend) => mend.step === step && mend.setting === 'shutter'))));
  return mends;
}

/**
 * A trail's text with one mend written into it.
 * @param text - the trail's text
 */
export function mendText(text: string, {start, end, text: instead}: Mend): string {
  return text.slice(0, start) + instead + text.slice(end);
}
