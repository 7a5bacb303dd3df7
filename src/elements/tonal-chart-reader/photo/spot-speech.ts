import type {IntentExposure, ToneAims} from '../../../core/tone/card-exposure.js';
import type {Level} from '../../../core/tone/level.js';
import {measuredStops, shareText, thirdsText, valueText} from './shares.js';
import type {SheetWords} from './words/en.js';

/** Nearer to the gray card than this is on it, stops. */
const ON_GRAY = 0.05;

/**
 * Level of a spot, against the gray card.
 * @param measured - whether a gray card was measured in this light; otherwise it is the card as it should come out
 */
export function levelText(words: SheetWords, {luminance, stopsFromGray}: Level, measured: boolean): string {
  const value = valueText(words.say, luminance.code);
  if (luminance.mean === 0) return words.spotBlack(value);
  return Math.abs(stopsFromGray) < ON_GRAY ? words.spotOn(measured, value)
    : words.spotOff(measuredStops(words.say, stopsFromGray), stopsFromGray > 0, measured, value);
}

/** How even the spot is, and whether its mean can be trusted. */
export function levelNote(words: SheetWords, {luminance, red, green, blue, atWhite, atBlack}: Level): string {
  const {say} = words;
  const percent = (light: number) => say.percent(+light.toPrecision(2), 4);
  return [
    words.spotMean(percent(luminance.mean), percent(luminance.spread), [red, green, blue].map(({code}) => valueText(say, code)).join(', ')),
    atWhite > 0 ? words.spotAtWhite(shareText(say, atWhite)) : '',
    atBlack > 0 ? words.spotAtBlack(shareText(say, atBlack)) : '',
  ].filter(Boolean).join(' ');
}

/** Where highlights and shadows sit, and what brings the highlights to their aim. */
export function aimsText(words: SheetWords, {thirds, highlightsAt, shadowsAt, estimated}: IntentExposure, aims: ToneAims): string {
  if (estimated) return words.aimsUnknown;
  const {say} = words;
  const [highlights, shadows] = [valueText(say, highlightsAt), valueText(say, shadowsAt)];
  return thirds === 0 ? words.aimsFit(highlights, shadows, valueText(say, aims.highlights))
    : words.aimsAsk(thirdsText(say, thirds), thirds > 0, highlights, shadows);
}

/** What is left of the shadows. */
export function shadowsText(words: SheetWords, {shadowsShort, estimated}: IntentExposure, aims: ToneAims): string {
  return shadowsShort === 0 || estimated ? '' : words.shadowsShort(measuredStops(words.say, shadowsShort), valueText(words.say, aims.shadows));
}
