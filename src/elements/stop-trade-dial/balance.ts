import {Problem} from '../../core/problem.js';
import type {Limits} from '../../core/exposure/clicks.js';
import {SETTINGS, type Exposure, type Setting} from '../../core/exposure/stops.js';
import {trade, type Trade} from '../../core/exposure/trade.js';
import {closeUpOf, exposureOff} from '../../core/shot/close-up.js';
import type {Shot} from '../../core/shot/shot.js';

/** How the setting in use stands to the start. */
export interface Balance {
  readonly start: Exposure;
  readonly setting: Exposure;
  readonly correction: number;
  /** Stops lost to close-up beyond what was lost where the start was metered. What is asked is counted with them. */
  readonly closeUp: number;
  /** Whether the start was metered by hand, where nothing is lost to close-up. */
  readonly handHeld: boolean;
  /** Stops by which the setting is brighter (+) or darker (−) than asked. */
  readonly off: number;
  /** Whether that is no more than half a click. */
  readonly even: boolean;
  /** The trade that leads from the start to where the paying setting should be. */
  readonly trade: Trade;
  readonly pay: Setting;
}

/** Binary rounding, in stops. */
const NOTHING = 1e-9;

export function settingOf({aperture, shutter, iso}: Shot): Exposure {
  return {aperture, shutter, iso};
}

export function startOf({meteredAperture, meteredShutter, meteredIso}: Shot): Exposure {
  return {aperture: meteredAperture, shutter: meteredShutter, iso: meteredIso};
}

export function limitsOf(shot: Shot): Limits {
  return {
    aperture: [shot.apertureWidest, shot.apertureSmallest],
    shutter: [shot.shutterFastest, shot.shutterSlowest],
    iso: [shot.isoLowest, shot.isoHighest],
  };
}

/** Who pays when `driven` is set by hand: the chosen payer, or the next best when it is the one being set. */
export function payerFor(driven: Setting, pay: Setting): Setting {
  if (driven !== pay) return pay;
  return driven === 'shutter' ? 'aperture' : 'shutter';
}

/**
 * The setting after one of its values was set by hand and the payer made up for it.
 * @throws {Problem} when the value cannot be set within the limits
 */
export function afterSetting(shot: Shot, driven: Setting, value: number, pay: Setting): Exposure {
  const held = SETTINGS.filter((setting) => setting !== pay && setting !== driven);
  const kept = Object.fromEntries(held.map((setting) => [setting, shot[setting]]));
  return trade({...requestOf(shot, pay), change: {...kept, [driven]: value}}).to;
}

/** How the setting in use stands to the start. A setting beyond the limits is judged as it is. */
export function balanceOf(shot: Shot): Balance {
  const [start, setting] = [startOf(shot), settingOf(shot)];
  const {pay, correction} = shot;
  const closeUp = closeUpOf(shot);
  const {[pay]: _paid, ...change} = setting;
  let result: Trade;
  try {
    result = trade({...requestOf(shot, pay), change});
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const {limits: _limits, ...unlimited} = requestOf(shot, pay);
    result = trade({...unlimited, change});
  }
  const off = exposureOff(shot);
  return {
    start, setting, correction, closeUp, handHeld: shot.meteredMagnification === 0, off, pay, trade: result, even: Math.abs(off) <= 0.5 / shot.clicksPerStop + NOTHING,
  };
}

function requestOf(shot: Shot, pay: Setting) {
  return {from: startOf(shot), correction: shot.correction + closeUpOf(shot), pay, clicksPerStop: shot.clicksPerStop, limits: limitsOf(shot)};
}

/** The setting that hands turn on the dial: not the one that pays, and never the ISO. */
export const drivenBy = (pay: Setting): Exclude<Setting, 'iso'> => (pay === 'aperture' ? 'shutter' : 'aperture');
