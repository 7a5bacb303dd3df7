import {Problem, requireFinite, requirePositive} from '../problem.js';
import {clicks, exactFromNominal, nearestClick, WIDEST} from './clicks.js';
import type {ClicksPerStop, Limits, Range} from './clicks.js';
import {afterStops, exposureStops, lightStops, SETTINGS} from './stops.js';
import type {Exposure, Setting} from './stops.js';
import {writeSetting} from './write.js';

/** What is to be traded. */
export interface TradeRequest {
  /** Exact values; off the clicks when metered so. */
  readonly from: Exposure;
  /** Stops by which the picture has to become brighter (+) or darker (−) on the way; 0 when left out. */
  readonly correction?: number;
  /** The settings to change and their new exact values; none, when only the correction is to be paid. */
  readonly change: Partial<Exposure>;
  /** The setting that pays, on its clicks. */
  readonly pay: Setting;
  readonly clicksPerStop: ClicksPerStop;
  readonly limits?: Limits;
  /** Steps of the path: whole stops, the default, or single clicks. */
  readonly step?: 'stop' | 'click';
}

/** Something else that could make up for what a limit withholds. */
export interface TradeWayOut {
  /** `light`: the lamps. */
  readonly setting: Setting | 'light';
  /** The setting's new exact value; for `light`, how many times as much light. */
  readonly value: number;
  /** Light it brings; positive = brighter. */
  readonly stops: number;
  /** Stops still missing after it; positive = too dark. */
  readonly left: number;
}

/** Where the paying setting ran out. */
export interface TradeLimit {
  readonly setting: Setting;
  /** The last click within the limits, exact. */
  readonly at: number;
  /** Stops missing there; positive = too dark, negative = too bright. */
  readonly short: number;
  /** Settings first, those that leave least before the others; the lamps last. */
  readonly waysOut: readonly TradeWayOut[];
}

/** A trade and everything it costs. */
export interface Trade {
  readonly from: Exposure;
  readonly to: Exposure;
  /** What the paying setting would be if it had no clicks and no limits. */
  readonly wanted: number;
  /** Stops by which `to` is brighter (+) or darker (−) than asked: at most half a click without a `limit`. */
  readonly rounding: number;
  /** Light each setting brought (+) or took (−), in stops. */
  readonly cost: Readonly<Record<Setting, number>>;
  /** From `from` to `to`; every exposure between balances to half a click, the correction taken first. */
  readonly path: readonly Exposure[];
  readonly limit: TradeLimit | null;
}

/** Less light than this nobody could measure: binary rounding, no more. Stops. */
const NOTHING = 1e-9;

function settled(stops: number): number {
  return Math.abs(stops) < NOTHING ? 0 : stops;
}

function rangeOf(setting: Setting, limits: Limits | undefined): Range {
  return limits?.[setting] ?? WIDEST[setting];
}

function requireTradable({change, pay, clicksPerStop, limits}: TradeRequest): void {
  if (change[pay] !== undefined) throw new Problem('pay', pay, 'a setting that is not being changed');
  for (const setting of SETTINGS) {
    const value = change[setting];
    if (value === undefined) continue;
    requirePositive(setting, value);
    const [low, high] = rangeOf(setting, limits);
    const least = exactFromNominal(setting, low, clicksPerStop);
    const greatest = exactFromNominal(setting, high, clicksPerStop);
    if (value < least * (1 - NOTHING) || value > greatest * (1 + NOTHING)) {
      throw new Problem(setting, value, `${writeSetting(setting, least)} to ${writeSetting(setting, greatest)}`);
    }
  }
}

/** `at` with the paying setting put on the click that leaves it `correction` stops brighter than `from`. */
function balanced({from, correction = 0, pay, clicksPerStop, limits}: TradeRequest, at: Exposure): Exposure {
  const missing = correction - exposureStops(from, at);
  // What owes nothing is not touched, a metered 0.37 s least of all.
  if (Math.abs(missing) < NOTHING) return at;
  const click = nearestClick(pay, afterStops(pay, at[pay], missing), clicksPerStop, rangeOf(pay, limits));
  return {...at, [pay]: click.value};
}

/** One setting from a value up to, not including, another, by whole stops or single clicks. */
function stepsBetween(setting: Setting, from: number, to: number, {clicksPerStop, step}: TradeRequest): number[] {
  const stops = lightStops(setting, from, to);
  const size = Math.sign(stops) / (step === 'click' ? clicksPerStop : 1);
  const start = nearestClick(setting, from, clicksPerStop).value;
  const count = Math.ceil(Math.abs(stops / size) - NOTHING) - 1;
  return Array.from({length: Math.max(0, count || 0)}, (_, at) => (
    nearestClick(setting, afterStops(setting, start, size * (at + 1)), clicksPerStop).value
  )).filter((value) => lightStops(setting, value, to) * size > NOTHING);
}

function pathTo(to: Exposure, request: TradeRequest): readonly Exposure[] {
  const {from, correction = 0, pay, clicksPerStop} = request;
  const between: Exposure[] = [];
  let at = from;
  const add = (next: Exposure): void => { at = next; between.push(balanced(request, {...next, [pay]: from[pay]})); };
  if (Math.abs(correction) > NOTHING) add(from);
  for (const setting of SETTINGS) {
    if (setting === pay || Math.abs(lightStops(setting, from[setting], to[setting])) < NOTHING) continue;
    for (const value of stepsBetween(setting, from[setting], to[setting], request)) add({...at, [setting]: value});
    add({...at, [setting]: to[setting]});
  }
  // A step that a limit keeps from balancing is left out: the trade goes past it in one.
  const halfClick = 0.5 / clicksPerStop + NOTHING;
  const balances = (step: Exposure): boolean => Math.abs(exposureStops(from, step) - correction) <= halfClick;
  const same = (one: Exposure, two: Exposure): boolean => SETTINGS.every((setting) => one[setting] === two[setting]);
  const steps = between.filter((step) => balances(step) && !same(step, from) && !same(step, to));
  return same(from, to) ? [from] : [from, ...steps, to];
}

function waysOut(to: Exposure, short: number, {pay, clicksPerStop, limits}: TradeRequest): readonly TradeWayOut[] {
  const ways: TradeWayOut[] = [];
  for (const setting of SETTINGS) {
    const range = rangeOf(setting, limits);
    // A lens with one aperture, off the clicks, has nothing to give.
    if (setting === pay || !clicks(setting, clicksPerStop, range).length) continue;
    const {value} = nearestClick(setting, afterStops(setting, to[setting], short), clicksPerStop, range);
    const stops = lightStops(setting, to[setting], value);
    if (Math.abs(short - stops) < Math.abs(short)) ways.push({setting, value, stops, left: settled(short - stops)});
  }
  ways.sort((one, two) => Math.abs(one.left) - Math.abs(two.left));
  return [...ways, {setting: 'light', value: 2 ** short, stops: short, left: 0}];
}

/**
 * The same light, or light corrected by so many stops, with other settings.
 *
 * Changed settings are taken as given, the paying one goes to its nearest click within the limits; computed on exact
 * values, so that a trade on the clicks and back returns to where it began.
 * @returns the new exposure with its rounding, costs and path; with `limit` when the paying setting runs out
 * @throws {Problem} `pay` when that setting is also to be changed; named for a setting whose value is not above 0, is
 *   changed to beyond its limits, or whose limits have no click between them; `correction` when not a finite number
 * Source: equal exposure N²/(t·S); the arithmetic of stops.
 */
export function trade(request: TradeRequest): Trade {
  const {from, correction = 0, change, pay, clicksPerStop} = request;
  requireFinite('correction', correction);
  requireTradable(request);
  const changed: Exposure = {...from, ...change, [pay]: from[pay]};
  const owed = correction - exposureStops(from, changed);
  const wanted = afterStops(pay, from[pay], owed);
  const to = balanced(request, changed);
  const rounding = settled(exposureStops(from, to) - correction);
  const cost = {aperture: 0, shutter: 0, iso: 0};
  for (const setting of SETTINGS) cost[setting] = lightStops(setting, from[setting], to[setting]);
  const stopped = Math.abs(owed) >= NOTHING && nearestClick(pay, wanted, clicksPerStop).value !== to[pay];
  const limit = stopped || Math.abs(rounding) > 0.5 / clicksPerStop + NOTHING
    ? {setting: pay, at: to[pay], short: -rounding, waysOut: waysOut(to, -rounding, request)} : null;
  return {from, to, wanted, rounding, cost, path: pathTo(to, request), limit};
}
