import type {IntentExposure, ToneAims} from '../../core/tone/card-exposure.js';
import type {Level} from '../../core/tone/level.js';
import {share, stops, thirds} from './words.js';

/** No-break space. */
const S = '\u00a0';

/** Nearer to the gray card than this is on it, stops. */
const ON_GRAY = 0.05;

/**
 * Level of a spot, against the gray card.
 * @param measured - whether a gray card was measured in this light; otherwise it is the card as it should come out
 */
export function levelSentence({luminance, stopsFromGray}: Level, measured: boolean): string {
  const code = `sRGB${S}${Math.round(luminance.code)}`;
  if (luminance.mean === 0) return `The spot is black: ${code}.`;
  const card = measured ? 'the gray card that was measured' : `a gray card as it should come out (sRGB${S}118)`;
  return Math.abs(stopsFromGray) < ON_GRAY ? `The spot lies on ${card}: ${code}.`
    : `The spot lies ${stops(stopsFromGray)} ${stopsFromGray < 0 ? 'below' : 'above'} ${card}: ${code}.`;
}

/** How even the spot is, and whether its mean can be trusted. */
export function levelNote({luminance, red, green, blue, atWhite, atBlack}: Level): string {
  const percent = (light: number) => `${+(light * 100).toPrecision(2)}${S}%`;
  const parts = [`Mean ${percent(luminance.mean)} of white in linear light, spread ${percent(luminance.spread)}; red, green, blue ${[red, green, blue].map(({code}) => Math.round(code)).join(', ')}.`];
  if (atWhite > 0) parts.push(`${share(atWhite)} of it is cut off at white, so it is brighter than that.`);
  if (atBlack > 0) parts.push(`${share(atBlack)} of it is at 0 in a colour.`);
  return parts.join(' ');
}

/** Where highlights and shadows sit, and what brings the highlights to their aim. */
export function aimsSentence({thirds: count, highlightsAt, shadowsAt, estimated}: IntentExposure, aims: ToneAims): string {
  if (estimated) return 'The highlights are cut off as shot, so nobody knows where they lie: take the advice first, shoot again and look here then.';
  const at = `sRGB${S}${Math.round(highlightsAt)} and shadows at${S}${Math.round(shadowsAt)}`;
  return count === 0 ? `As shot, highlights sit at ${at}: within a third of the aim of ${aims.highlights}.`
    : `Expose ${thirds(count)} ${count > 0 ? 'more' : 'less'}: highlights then sit at ${at}.`;
}

/** What is left of the shadows. */
export function shadowsNote({shadowsShort, estimated}: IntentExposure, aims: ToneAims): string {
  return shadowsShort === 0 || estimated ? ''
    : `The shadows stay ${stops(shadowsShort)} short of ${aims.shadows}: a fill or a reflector lifts them, more exposure would cost the highlights.`;
}

export const SPOT = {
  measure: 'Measure a spot',
  stop: 'Stop measuring',
  isCard: 'The spot is the gray card',
  noCard: 'Forget the gray card',
  fromCard: 'Lightest and darkest paint are reckoned from the gray card that was measured.',
  fromCrop: 'Read from the crop. To reckon from a gray card instead, measure a spot on it and say so.',
  aims: 'Where the figure’s lights and darks should sit',
  highlights: 'Highlights at',
  shadows: 'Shadows at least',
  backdrop: 'Backdrop fills',
  ofCrop: 'of the crop',
  code: 'sRGB code',
  codeWanted: 'an sRGB code from 1 to 254, shadows below highlights',
  shareWanted: 'a share below 100 %',
} as const;
