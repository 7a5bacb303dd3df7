import type {Patch, Side} from '../../../../core/white/card.js';
import {photoWords} from '../../../shared/photo/words/en.js';
import type {Say} from '../../../shared/say.js';
import type {Tint, Warmth} from '../light-speech.js';

export {family} from '../../../shared/words/en.js';

const correct = (red: string, blue: string, neutral: boolean): string =>
  (neutral ? `it is neutral, so its colour needs no correcting: red ×\u00a0${red} and blue ×\u00a0${blue} would not be seen` : `multiply red by ${red} and blue by ${blue}`);

/** Values come written: `0.34 stop`, `3.1%`, factors `0.48`. Codes are whole numbers from 0 to 255. */
export const words = (say: Say) => ({
  ...photoWords,
  say,
  opening: 'Reading the card shot…',

  // the shot and its frames
  patches: {white: 'White', gray: 'Gray', black: 'Black'} satisfies Record<Patch, string>,
  picture: 'The card shot, with a frame on each patch',
  frames: {white: 'Frame on the white patch', gray: 'Frame on the gray patch', black: 'Frame on the black patch'},
  frameAt: (width: string, height: string, x: string, y: string) => `${width} by ${height} px, ${x} from the left, ${y} from the top`,
  frameWaits: (width: string, height: string, x: string, y: string, patch: Patch) =>
    `${width} by ${height} px, ${x} from the left, ${y} from the top, not on the ${patch} patch yet`,
  frameKeys: 'Arrow keys move the frame, with Shift they size it; Page Up and Page Down grow and shrink it.',
  looking: 'Looking for the card…',
  noneFound: 'No gray card was found in this shot: mark it by hand, if there is one.',
  pressOn: {
    white: 'Press on the white patch, or move the frame White onto it.', gray: 'Press on the gray patch, or move the frame Gray onto it.',
    black: 'Press on the black patch, or move the frame Black onto it.',
  },
  closer: 'Close in on the card',
  whole: 'Show the whole shot',
  again: 'Look for the card again',
  byNumbers: 'Frames by numbers',
  markField: {white: 'White: left, top, size, px', gray: 'Gray: left, top, size, px', black: 'Black: left, top, size, px'},
  markWanted: (width: string, height: string) => `left, top, width and height in px, such as 184, 823, 54 × 54, inside ${width} × ${height}`,

  // the verdict
  misplaced: 'The frames do not fall from white through gray to black: there is no card to trust under them yet.',
  trusted: (red: string, blue: string, neutral: boolean) => `The card can be trusted: gray sits where it belongs; ${correct(red, blue, neutral)}.`,
  trustedOff: (stops: string, over: boolean, red: string, blue: string, neutral: boolean) =>
    `The card can be trusted: gray sits ${stops} ${over ? 'over' : 'under'} where it belongs; ${correct(red, blue, neutral)}.`,
  distrust: {
    grayBlack: 'Do not trust this card: a colour of the gray patch is at 0. Give more light or a longer time, and shoot it again.',
    grayClipped: 'Do not trust this card: gray is cut off at white. Expose at least two and a half stops less, and shoot it again.',
    whiteClipped: 'Do not trust this card: white is cut off.',
    uneven: (patch: Patch, share: string) => `Do not trust this card: ${patch} is uneven, ${share} from its darkest to its brightest part.`,
    glare: (lifted: string) => `Do not trust this card: ${lifted}: glare. Turn the card until the lamp’s mirror image leaves it.`,
    veil: (lifted: string) => `Do not trust this card: ${lifted}: a veil of stray light. Shade the lens, clean it, and turn the card a little.`,
  },
  lifted: (stops: string) => `black is lifted ${stops} against gray`,
  liftedAbout: (stops: string) => `black is lifted about ${stops} against gray`,
  liftedToGray: 'black is no darker than gray',
  doubtLinked: 'But the light has changed since: its gains may not hold for the photo in the tonal chart.',
  doubtNext: 'But lamps or flags have changed since: its gains may not hold for the next photo.',

  // what was found, and what to do about it
  misplacedSeen: 'Put the frame White on the white patch, Gray on gray and Black on black.',
  misplacedThen: 'If they lie there already, the card mirrors a lamp so strongly that nothing can be read: turn it until the black patch goes dark.',
  whiteClipped: (share: string) => `White is cut off in ${share} of the patch.`,
  whiteClippedUsable: 'Gray still gives the right gains. Only a lamp mirrored on white would not show: to rule that out, shoot the card once more a stop darker.',
  whiteClippedElse: 'Expose less when you shoot the card again.',
  grayClipped: (share: string) => `Gray is cut off at white in ${share} of the patch: it has no colour left to measure.`,
  grayClippedThen: 'Take the mirror image off the card first; if it is only too bright, expose at least two and a half stops less.',
  grayBlack: (share: string) => `A colour of gray is at 0 in ${share} of the patch: nothing multiplies it up.`,
  grayBlackThen: 'Expose more.',
  glareThen: 'The card mirrors a lamp. Lean or turn it until the black patch goes dark from where the camera stands.',
  veilThen: 'Stray light lies over card and picture alike. Shade the lens from the lamp, look for haze on the glass, and shoot again.',
  uneven: {
    white: (share: string) => `White is uneven: ${share} between its darkest and brightest part.`,
    gray: (share: string) => `Gray is uneven: ${share} between its darkest and brightest part.`,
    black: (share: string) => `Black is uneven: ${share} between its darkest and brightest part.`,
  } satisfies Record<Patch, unknown>,
  unevenThen: {
    left: 'The light sits to the left: turn the card away from what it mirrors, or move the frame off a shadow.',
    right: 'The light sits to the right: turn the card away from what it mirrors, or move the frame off a shadow.',
    top: 'The light sits at the top: turn the card away from what it mirrors, or move the frame off a shadow.',
    bottom: 'The light sits at the bottom: turn the card away from what it mirrors, or move the frame off a shadow.',
    middle: 'The light sits in the middle: turn the card away from what it mirrors, or move the frame off a shadow.',
  } satisfies Record<Side, string>,
  exposed: (code: string, noWhite: boolean) => `${noWhite ? 'Gray is exposed right, white is not' : 'The exposure is right'}: gray comes out at ${code} of 255.`,
  exposedThen: (share: string, code: string) => `${share} gray belongs at ${code}; no third-stop click would bring it nearer.`,
  exposedOff: (stops: string, over: boolean, code: string, belongs: string) =>
    `The exposure is ${stops} ${over ? 'over' : 'under'}: gray comes out at ${code} of 255 instead of ${belongs}.`,
  lessLight: 'Less light puts it right:',
  moreLight: 'More light puts it right:',

  // the table
  table: 'The three patches',
  columns: {patch: 'Patch', codes: 'R G B of 255', off: 'Off by', even: 'Uneven by'},
  cutOff: 'cut off',
  noLight: 'no light',
  asItShould: 'as it should',
  offBy: (stops: string, over: boolean) => `${stops} ${over ? 'over' : 'under'}`,
  unknown: 'unknown',

  // the light
  light: 'The light',
  castNone: 'Gray comes out neutral: what is left of a cast would not be seen.',
  castWarm: (warmth: Warmth, stops: string) => `Gray comes out ${warmth} than neutral, red and blue ${stops} apart.`,
  castTint: (tint: Tint) => `Gray comes out ${tint} than neutral.`,
  castTintOfLamp: (tint: Tint) => `Gray comes out a little ${tint} than a lamp of that warmth.`,
  castBoth: (warmth: Warmth, stops: string, tint: Tint) => `Gray comes out ${warmth} than neutral, red and blue ${stops} apart, and ${tint}.`,
  castBothOfLamp: (warmth: Warmth, stops: string, tint: Tint) =>
    `Gray comes out ${warmth} than neutral, red and blue ${stops} apart, and a little ${tint} than a lamp of that warmth.`,
  noTemperature: 'It is far from daylight and from any glowing lamp, so a colour temperature would say nothing.',
  temperature: (kelvin: string, neutral: string) => `As a colour temperature: about ${kelvin}, where this picture is balanced for ${neutral}.`,
  temperatureOff: (kelvin: string, neutral: string, mired: string, warmth: Warmth) =>
    `As a colour temperature: about ${kelvin} where this picture is balanced for ${neutral}, ${mired} ${warmth}.`,
  miredIs: 'Mired is a million divided by the kelvin: equal steps look about equally large, and fewer than about 5 go unseen even side by side.',

  // the gains
  gains: 'Gains: what to multiply by',
  gainsAre: 'They multiply amounts of light, as the white balance of a raw photo does. The numbers from 0 to 255 in a finished picture are no amounts of light: multiplied like this they would change too much.',
  doubtful: 'These gains come from a card that is not to be trusted.',
  noGains: 'There are no gains to show: see above what to do.',
  greenHeld: 'Factors, green held',
  noneBelowOne: 'Factors, none below 1',
  quotients: 'Green over red, over blue',
  copy: 'Copy',
  copied: (text: string) => `Copied: ${text}`,
  notCopied: 'The clipboard is out of reach here. The numbers are selected: copy them with the keyboard or a long press.',

  // whether they hold
  holdsNot: 'These gains may not hold for the photo in the tonal chart. Shoot the card again in this light.',
  holds: 'The gains hold for the photo in the tonal chart: where the two pictures agree, the light has the same colour.',
  holdsUnknown: 'Nothing is known to have changed since the card shot, but the two pictures show too different things to see it in them. The gains hold as long as lamps, flags and walls stood still.',
  holdsNotNext: 'Lamps or flags have changed since the card shot. For the next photo shoot the card again.',
  lampNamed: (name: string) => `The ${name}`,
  lampNumber: (number: number) => `Lamp ${number}`,
  lampsNow: (now: number, then: number) => `There ${now === 1 ? 'is 1 lamp' : `are ${now} lamps`} now, with the card there ${then === 1 ? 'was' : 'were'} ${then}.`,
  flagsNow: (now: number, then: number) => `There ${now === 1 ? 'is 1 flag' : `are ${now} flags`} now, with the card there ${then === 1 ? 'was' : 'were'} ${then}.`,
  lampMoved: (lamp: string, length: string) => `${lamp} has moved ${length} since the card shot.`,
  flagMoved: (number: number, length: string) => `Flag ${number} has moved ${length} since the card shot.`,
  lampPower: (lamp: string, stops: string, brighter: boolean) => `${lamp} is ${stops} ${brighter ? 'brighter' : 'darker'} against the first lamp than with the card.`,
  whiteBalance: 'The camera’s white balance was set differently.',
  litDifferently: (red: string, redMore: boolean, blue: string, blueMore: boolean) =>
    `The photo in the tonal chart was lit differently from the card: red ${red} ${redMore ? 'stronger' : 'weaker'} and blue ${blue} ${blueMore ? 'stronger' : 'weaker'} against green.`,

  // before and after
  beforeAfter: 'Before and after',
  previewOf: (name: string, share: string) => `${name}, as shot up to ${share} from the left, with the gains to the right of it`,
  preview: (share: string) => `The picture, as shot up to ${share} from the left, with the gains to the right of it`,
  wipe: 'Where before ends and after begins',
  wipeAt: (before: string, after: string) => `${before} before, ${after} after`,
  before: 'before',
  after: 'after',
  ofCard: 'the card shot',
  ofPhoto: 'the photo in the tonal chart',
  shown: 'Shown on',
  withExposure: 'exposure put right too',
});

export type SheetWords = ReturnType<typeof words>;
