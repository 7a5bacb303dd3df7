import type {FoundStep} from './find-settings.js';
import type {Said, Wish} from './meant.js';
import {depthStops, exposureStops, lightStops, SETTINGS} from './stops.js';
import type {Exposure, Setting} from './stops.js';

/** Who says what a change of light was meant to be. */
export type MeantBy =
  /** the words of the step itself */ 'step'
  /** a meter reading or correction noted at the step before */ | 'before'
  /** words about the whole trail */ | 'trail'
  /** nobody: the same light is taken to be meant */ | 'assumed';

/** From one step to the next. */
export interface TrailLink {
  /** Stops of light gained; positive = brighter. */
  readonly light: number;
  /** Stops of depth gained, see {@link depthStops}. */
  readonly depth: number;
  /** Light each setting brought (+) or took (−). */
  readonly cost: Readonly<Record<Setting, number>>;
  /** What was meant; `null` when nothing was said and nothing is assumed. */
  readonly meant: {readonly wish: Wish; readonly by: MeantBy} | null;
  /** Stops brighter (+) or darker (−) than meant; `null` without a number to hold it to. */
  readonly off: number | null;
  /** Whether it does what was meant; `null` when that cannot be judged. */
  readonly holds: boolean | null;
}

/** One step, complete as far as the trail tells. */
export interface TrailStep extends FoundStep {
  /** What the camera was set to; `null` while an f-number or a time was never said. */
  readonly exposure: Exposure | null;
  /** Settings not said here and taken over from the step before. */
  readonly carried: readonly Setting[];
  /** Settings said neither here nor before, without which nothing can be told. */
  readonly missing: readonly Setting[];
  /** Words about the light, and how they were taken. */
  readonly said: (Said & {readonly taken: 'change' | 'next'}) | null;
  /** From the step before; `null` for the first, where nothing is set, and beside a step that is not complete. */
  readonly link: TrailLink | null;
}

/** Binary rounding, in stops. */
const NOTHING = 1e-9;

/** What stays the same while readings are tried. */
export interface Frame {
  readonly said: readonly (Said | null)[];
  readonly trailWish: {readonly wish: Wish; readonly by: MeantBy} | null;
  readonly tolerance: number;
  /** ISO speed before the first that is said. */
  readonly firstIso: number;
}

type Judged = Pick<TrailStep, 'exposure' | 'carried' | 'missing' | 'said' | 'link'>;

/** Whether a change of light does what was meant; `null` where that says nothing of the settings. */
function fulfils(light: number, wish: Wish, tolerance: number): boolean | null {
  if (wish === 'other') return null;
  if (typeof wish === 'number') return Math.abs(light - wish) <= tolerance + NOTHING;
  return wish === 'brighter' ? light > tolerance : light < -tolerance;
}

/** Each step's exposure, with what it takes over from the one before. */
function fill(found: readonly FoundStep[], firstIso: number): Pick<Judged, 'exposure' | 'carried' | 'missing'>[] {
  let held: Partial<Exposure> = {iso: firstIso};
  return found.map((step, at) => {
    const unsaid = SETTINGS.filter((setting) => !step[setting]);
    const missing = unsaid.filter((setting) => held[setting] === undefined);
    const carried = at === 0 ? [] : unsaid.filter((setting) => held[setting] !== undefined);
    for (const setting of SETTINGS) held = {...held, ...(step[setting] ? {[setting]: step[setting].value} : {})};
    return {exposure: missing.length ? null : held as Exposure, carried, missing};
  });
}

/** Words that can be meant either way are taken the way that the settings bear out. */
function takeSaid({said, tolerance}: Frame, lights: readonly (number | null)[]): Judged['said'][] {
  return said.map((words, at) => {
    if (!words) return null;
    const bears = (light: number | null | undefined, wish: Wish | null): boolean => (
      typeof light === 'number' && wish !== null && fulfils(light, wish, tolerance) === true);
    let taken = words.next === null ? 'change' as const : words.change === null ? 'next' as const : words.rather;
    if (words.change !== null && words.next !== null) {
      const [change, next] = [bears(lights[at], words.change), bears(lights[at + 1], words.next)];
      if (at === 0) taken = 'next';
      else if (change !== next) taken = change ? 'change' : 'next';
      else if (!change && at === said.length - 1) taken = 'change';
    }
    return {...words, taken};
  });
}

/**
 * Exposures and links of a trail.
 * @param found - the steps, as written or with other readings
 * @param frame - what holds whatever the readings
 * @returns one for each step; never throws
 */
export function judge(found: readonly FoundStep[], frame: Frame): readonly Judged[] {
  const filled = fill(found, frame.firstIso);
  const pair = (at: number): readonly [Exposure, Exposure] | null => {
    if (!SETTINGS.some((setting) => found[at]?.[setting])) return null; // nothing was set here
    const [from, to] = [filled[at - 1]?.exposure, filled[at]?.exposure];
    return from && to ? [from, to] : null;
  };
  const lights = filled.map((_, at) => { const both = pair(at); return both && exposureStops(...both); });
  const said = takeSaid(frame, lights);
  return filled.map((step, at) => {
    const [both, light] = [pair(at), lights[at]];
    if (!both || typeof light !== 'number') return {...step, said: said[at] ?? null, link: null};
    const [from, to] = both;
    const [own, before] = [said[at], said[at - 1]];
    const meant = own?.taken === 'change' && own.change !== null ? {wish: own.change, by: 'step' as const}
      : before?.taken === 'next' && before.next !== null ? {wish: before.next, by: 'before' as const} : frame.trailWish;
    const cost = {aperture: 0, shutter: 0, iso: 0};
    for (const setting of SETTINGS) cost[setting] = lightStops(setting, from[setting], to[setting]);
    const link = {
      light, cost, meant, depth: depthStops(from.aperture, to.aperture),
      off: typeof meant?.wish === 'number' ? light - meant.wish : null,
      holds: meant ? fulfils(light, meant.wish, frame.tolerance) : null,
    };
    return {...step, said: said[at] ?? null, link};
  });
}

/** Steps, by index, that do not do what was meant. */
export function brokenSteps(judged: readonly Judged[]): readonly number[] {
  return judged.flatMap(({link}, at) => (link?.holds === false ? [at] : []));
}
