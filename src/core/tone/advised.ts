import {trade} from '../exposure/trade.js';
import type {Trade} from '../exposure/trade.js';
import type {ClicksPerStop, Limits} from '../exposure/clicks.js';
import type {Exposure, Setting} from '../exposure/stops.js';
import type {Advice} from './advice.js';

/**
 * The setting an advice leads to.
 * @param advice - thirds of a stop to move by
 * @param from - what the picture was taken with, exact
 * @param pay - the setting that is turned; on a tripod the shutter, since it costs neither depth nor noise
 * @param clicksPerStop - how finely its dial turns
 * @returns the trade: new setting, rounding left, and ways out where a limit stops it. `to` is `from` when there is
 *   nothing to change
 * @throws {Problem} named for a setting that is not a finite number above 0, or whose limits have no click between them
 */
export function advisedTrade(
  advice: Advice, from: Exposure, pay: Setting, clicksPerStop: ClicksPerStop, limits: Limits = {},
): Trade {
  return trade({from, correction: advice.thirds / 3, change: {}, pay, clicksPerStop, limits});
}
