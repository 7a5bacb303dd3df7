import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';

export {family} from '../../shared/words/en.js';

const LIMITS = 'Limits of lens and body';

/** Values come written: `f/11`, `0.6 s`, `1 1/3 stops`. A pair is aperture and shutter, with the ISO where it moved. */
export const words = (say: Say) => ({
  say,
  dial: 'Stop-trade dial',
  hand: 'Aperture and shutter, same light',
  pair: (aperture: string, shutter: string) => `${aperture} at ${shutter}`,
  triple: (pair: string, iso: string) => `${pair}, ${iso}`,
  isoHeld: (iso: string) => `${iso} held`,
  bodyShows: (shutter: string) => `body: ${shutter}`,

  // the verdict
  facing: (pair: string) => `${pair}. Every pair that faces on the dial gives this light.`,
  sameLight: (now: string, then: string) => `${now} gives the same light as ${then}.`,
  asAsked: (now: string, stops: string, brighter: boolean, then: string) =>
    `${now} gives ${stops} ${brighter ? 'more' : 'less'} light than ${then}, as asked.`,
  offFromAsked: (now: string, stops: string, brighter: boolean) => `${now} is ${stops} ${brighter ? 'brighter' : 'darker'} than asked.`,
  offFrom: (now: string, stops: string, brighter: boolean, then: string) => `${now} is ${stops} ${brighter ? 'brighter' : 'darker'} than ${then}.`,
  ends: (setting: Setting, at: string, now: string, stops: string, brighter: boolean) =>
    `The ${SETTING_IN_TEXT[setting]} ends at ${at}: ${now} comes out ${stops} too ${brighter ? 'bright' : 'dark'}.`,
  rounded: (stops: string, brighter: boolean, pay: Setting) =>
    `${stops} ${brighter ? 'brighter' : 'darker'} than asked: ${pay === 'iso' ? 'ISO' : `the ${pay}`} stands on its nearest click.`,
  closeUp: (stops: string, more: boolean) =>
    `From here close-up loses ${stops} ${more ? 'more' : 'less'} light than where it was metered; that is counted in.`,
  closeUpByHand: (stops: string) => `Close-up loses ${stops} of light, which a hand-held meter does not see; that is counted in.`,

  // what it buys and what it takes
  blurShrinks: (percent: string) => `The blur of what is out of focus shrinks to about ${percent} of its width.`,
  blurGrows: (times: string) => `The blur of what is out of focus grows to about ${times} times its width.`,
  openLonger: (times: string) => `The shutter stays open about ${times} times as long.`,
  openShorter: (percent: string) => `The shutter stays open about ${percent} as long.`,
  noise: (more: boolean, stops: string) => `${more ? 'More' : 'Less'} noise: ${stops} of ISO.`,
  handsOff: (shutter: string) => `At ${shutter} keep your hands off: timer or remote.`,
  shock: 'Around these times the shutter’s own shock shows most.',

  // digits that are easily taken for others
  misread: (shutter: string, body: string, other: string, stops: string, brighter: boolean) =>
    `${shutter} shows as ${body} on a camera body. Read as ${other} it would be ${stops} ${brighter ? 'brighter' : 'darker'}.`,
  taken: (text: string, value: string) => `“${text}” was taken as ${value}.`,
  takeInstead: (value: string) => `Take ${value} instead`,

  // what brings the light back
  set: (value: string) => `Set ${value}`,
  bringsBack: 'brings back the light that was asked for',
  makesUpAll: 'makes up all of it',
  stillMissing: (stops: string, missing: boolean) => `${stops} still ${missing ? 'missing' : 'too much'}`,
  moreLight: (times: string) => `${times} times the light on the figure`,
  lessLight: (percent: string) => `${percent} of the light on the figure`,
  lampsNearer: (percent: string) => `lamps at ${percent} of their distance, as a first guess`,
  lampsAway: 'lamps further off or dimmed',
  done: (what: string) => `Done: ${what}.`,
  undo: 'Undo',
  within: (least: string, most: string) => `a value from ${least} to ${most} (see “${LIMITS}” below)`,

  // fields
  correction: 'Brighter (+), darker (−)',
  correctionHint: 'stops; a meter showing 2 under asks for +2',
  darker: 'One click darker',
  brighter: 'One click brighter',
  now: 'Set now',
  pay: 'Keeps the light',
  payHint: 'moves by itself when you change another',
  step: 'Clicks of the dials',
  steps: {1: 'whole stops', 2: 'half stops', 3: 'third stops'},
  start: 'Start: metered or tried',
  startHint: 'as written anywhere: f/2.8 1/25, f8 0"3 ISO 100, 1/25 f/8 +2',
  startWanted: 'a setting such as f/2.8 1/25',
  startKept: (values: string) => `Not typed, so kept: ${values}.`,
  startHere: 'Start from here',
  back: 'Back to the start',
  changes: 'What changed, and the way there',
  moved: (from: string, to: string) => `${from} → ${to}`,
  held: (value: string) => `stays at ${value}`,
  byLight: (stops: string, brighter: boolean) => `${stops} ${brighter ? 'brighter' : 'darker'}`,
  noLight: 'no change in light',
  closeUpName: 'Close-up',
  path: 'Stop by stop',
  limits: LIMITS,
  widest: 'Lens fully open',
  smallest: 'Lens fully closed',
  fastest: 'Shortest time',
  slowest: 'Longest time',
  lowest: 'Base ISO',
  highest: 'Highest ISO you use',
});

const SETTING_IN_TEXT: Readonly<Record<Setting, string>> = {aperture: 'aperture', shutter: 'shutter', iso: 'ISO'};

export type DialWords = ReturnType<typeof words>;
