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
  /** Others that mend the same steps. */
  readonly others: readonly Mend[];
}

/** Slips that a reader would follow up in one list. */
const MOST = 12;

/** Binary rounding, in stops. */
const NOTHING = 1e-9;

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

interface Rated {
  readonly candidate: Candidate;
  readonly repairs: readonly number[];
  /** Stops by which the trail is off then, in all. */
  readonly left: number;
}

/**
 * What a candidate would do for a trail; none that breaks a step, or that puts one further off which comes before all
 * that it repairs.
 */
function rated(found: readonly FoundStep[], frame: Frame, candidate: Candidate): readonly Rated[] {
  const [before, judged] = [judge(found, frame), judge(mended(found, candidate), frame)];
  const [broken, after] = [brokenSteps(before), brokenSteps(judged)];
  const repairs = broken.filter((at) => !after.includes(at));
  const [first] = repairs;
  const off = (links: typeof judged, at: number): number => Math.abs(links[at]?.link?.off ?? 0);
  if (first === undefined || !after.every((at) => broken.includes(at) && (at > first || off(judged, at) <= off(before, at) + NOTHING))) return [];
  return [{candidate, repairs, left: judged.reduce((sum, _, at) => sum + off(judged, at), 0)}];
}

const sameSteps = (one: readonly number[], two: readonly number[]): boolean => one.join() === two.join();

/**
 * Candidates that repair something and break nothing, the best first, and only those that repair the same as it.
 * @param inTurn - whether the first step that fails counts before all that can be repaired at once
 */
function ranked(found: readonly FoundStep[], frame: Frame, candidates: readonly Candidate[], inTurn: boolean): readonly Mend[] {
  const all = candidates.flatMap((candidate) => rated(found, frame, candidate));
  all.sort((one, two) => (inTurn ? (one.repairs[0] as number) - (two.repairs[0] as number) : 0)
    || two.repairs.length - one.repairs.length
    || Number(isTenths(two.candidate)) - Number(isTenths(one.candidate))
    || one.left - two.left || Math.abs(one.candidate.stops) - Math.abs(two.candidate.stops));
  return all.filter(({repairs}) => sameSteps(repairs, all[0]?.repairs ?? []))
    .map(({candidate: {wasAs: _wasAs, ...mend}, repairs}) => ({...mend, repairs, others: []}));
}

/** Mends that do what they say when each is made first, those of the first step that fails before others. */
function madeFirst(found: readonly FoundStep[], frame: Frame, mends: readonly Mend[]): readonly Mend[] {
  const alone = (mend: Mend): readonly Mend[] => rated(found, frame, mend).map(({repairs}) => ({...mend, repairs}));
  return mends.flatMap(alone).map((mend) => ({
    ...mend, others: mend.others.flatMap(alone).filter(({step, setting, value, repairs}) => sameSteps(repairs, mend.repairs)
      && !(step === mend.step && setting === mend.setting && value === mend.value)),
  })).sort((one, two) => (one.repairs[0] as number) - (two.repairs[0] as number));
}

/**
 * The fewest slips that explain a trail which does not balance: one slip that mends both its neighbours is named once.
 * Where no reading of the digits helps, the time that would balance is given, the first step that fails before others:
 * what comes after it is held to what it then says.
 * @param found - the steps as written
 * @returns mends, those of the first step that fails first; each, made alone, repairs at least one step, breaks none
 *   and puts none before it further off
 */
export function findMends(found: readonly FoundStep[], frame: Frame, clicksPerStop: ClicksPerStop): readonly Mend[] {
  const mends: Mend[] = [];
  let now = found;
  const makeBest = (candidates: readonly Candidate[], inTurn: boolean): boolean => {
    const [best, ...others] = ranked(now, frame, candidates, inTurn);
    if (!best || mends.length >= MOST) return false;
    mends.push({...best, others: others.slice(0, 2)});
    now = mended(now, best);
    return true;
  };
  const needed = (): readonly Candidate[] => {
    const judged = judge(now, frame);
    return brokenSteps(judged).flatMap((at) => [at, at - 1].flatMap((which) => {
      const [step, exposure, off] = [now[which], judged[which]?.exposure, judged[at]?.link?.off];
      if (!step || !exposure || typeof off !== 'number') return [];
      return [neededTime(step, which, exposure, which === at ? off : -off, clicksPerStop)];
    })).filter(({step}) => !mends.some((mend) => mend.step === step && mend.setting === 'shutter'));
  };
  while (makeBest(now.flatMap(misreadings), false));
  while (makeBest(needed(), true));
  return madeFirst(found, frame, mends);
}

/**
 * A trail's text with one mend written into it.
 * @param text - the trail's text
 */
export function mendText(text: string, {start, end, text: instead}: Mend): string {
  return text.slice(0, start) + instead + text.slice(end);
}
