import type {Crop} from '../../core/tone/pixels.js';
import type {CardFault, CardReading, Patch, Side} from '../../core/white/card.js';
import type {Gains} from '../../core/white/gains.js';
import {gainsFromOne, isMisplaced, offBy, type CardShot, type GrayCard} from './reading.js';

/** No-break space: a number and its unit stay on one line. */
const S = '\u00a0';

/** Stops that no dial can show and nobody would see. */
const UNSEEN = 0.015;

export const PATCH_LETTERS: Readonly<Record<Patch, string>> = {white: 'W', gray: 'G', black: 'K'};
export const PATCH_NAMES: Readonly<Record<Patch, string>> = {white: 'White', gray: 'Gray', black: 'Black'};

/** `0.02 stop`, `1.2 stops`: small amounts with two decimals. */
export function stops(amount: number): string {
  const size = Math.abs(amount);
  const text = size < 0.995 ? size.toFixed(2) : size.toFixed(1);
  return `${text}${S}${Number(text) > 1 ? 'stops' : 'stop'}`;
}

/** A factor with two decimals, with three where two would say too little. */
function factor(gain: number): string {
  return gain < 0.1 ? gain.toFixed(3) : gain.toFixed(2);
}

const percent = (part: number): string => {
  const text = part * 100 < 10 ? (part * 100).toFixed(1) : String(Math.round(part * 100));
  return `${text}${S}%`;
};

const overOrUnder = (amount: number): string => (amount > 0 ? 'over' : 'under');

/** Whether the card can be used, and what it says. */
export function verdict({reading, gains, trusted}: GrayCard): string {
  if (isMisplaced(reading)) return 'The frames do not fall from white through gray to black: there is no card to trust under them yet.';
  const worst = reading.faults.find(({fault}) => fault === 'black-lifted') ?? reading.faults[0];
  if (!trusted && worst) return `Do not trust this card: ${reasonOf(worst, reading)}`;
  const {exposureError} = reading;
  const sits = Math.abs(exposureError) < UNSEEN ? 'gray sits where it belongs'
    : `gray sits ${stops(exposureError)} ${overOrUnder(exposureError)} where it belongs`;
  return `The card can be trusted: ${sits}${gains ? `; multiply red by ${factor(gains.red)} and blue by ${factor(gains.blue)}` : ''}.`;
}

function reasonOf(fault: CardFault, reading: CardReading): string {
  switch (fault.fault) {
    case 'gray-black': return 'a colour of the gray patch is at 0. Give more light or a longer time, and shoot it again.';
    case 'gray-clipped': return 'gray is cut off at white. Expose at least two and a half stops less, and shoot it again.';
    case 'uneven': return `${PATCH_NAMES[fault.patch].toLowerCase()} is uneven, ${percent(fault.unevenness)} from its darkest to its brightest part. ${againstUneven(fault.brighter)}`;
    case 'black-lifted': return `${lift(reading)}: ${isGlare(reading) ? 'glare. Turn the card until the lamp’s mirror image leaves it.'
      : 'a veil of stray light. Shade the lens, clean it, and turn the card a little.'}`;
    case 'white-clipped': return 'white is cut off.';
  }
}

/** How far black is lifted; once gray itself is cut off, the figure is a rough one. */
function lift(reading: CardReading): string {
  const by = offBy(reading, 'black');
  const isRough = reading.faults.some(({fault}) => fault === 'gray-clipped');
  return reading.black.luminance.mean >= reading.gray.luminance.mean ? 'black is no darker than gray'
    : `black is lifted ${isRough ? 'about ' : ''}${stops(by)} against gray`;
}

/** A lamp mirrored in the card lies on part of it; a veil of stray light lies on everything alike. */
function isGlare({faults}: CardReading): boolean {
  return faults.some(({fault}) => fault === 'uneven' || fault === 'gray-clipped');
}

const SIDES: Readonly<Record<Side, string>> = {
  left: 'to the left', right: 'to the right', top: 'at the top', bottom: 'at the bottom', middle: 'in the middle',
};

function againstUneven(brighter: Side): string {
  return `The light sits ${SIDES[brighter]}: turn the card away from what it mirrors, or move the frame off a shadow.`;
}

/** A finding: what was seen, and what to do. */
export interface Finding {
  readonly seen: string;
  readonly then: string;
  /** Whether it speaks against the card. */
  readonly against?: true;
}

/** Everything that speaks against the card, and how its exposure lies. What the verdict said is not said again. */
export function findings(card: GrayCard): Finding[] {
  const {reading} = card;
  if (isMisplaced(reading)) {
    return [{
      seen: 'Put W on the white patch, G on gray and K on black.',
      then: 'If they lie there already, the card mirrors a lamp so strongly that nothing can be read: turn it until the black patch goes dark.',
      against: true,
    }];
  }
  return [...reading.faults.map((fault) => ({...faultFinding(fault, reading), against: true as const})), ...exposureFinding(card)];
}

function faultFinding(fault: CardFault, reading: CardReading): Finding {
  switch (fault.fault) {
    case 'white-clipped': return {
      seen: `White is cut off in ${percent(fault.share)} of the patch.`,
      then: isUsable(reading) ? 'Gray still gives the right gains. Should a lamp lie on white, it would not show: expose a stop less to be sure.'
        : 'Expose less when you shoot the card again.',
    };
    case 'gray-clipped': return {
      seen: `Gray is cut off at white in ${percent(fault.share)} of the patch: it has no colour left to measure.`,
      then: 'Take the mirror image off the card first; if it is only too bright, expose at least two and a half stops less.',
    };
    case 'gray-black': return {
      seen: `A colour of gray is at 0 in ${percent(fault.share)} of the patch: nothing multiplies it up.`, then: 'Expose more.',
    };
    case 'black-lifted': return {
      seen: `${capital(lift(reading))}.`,
      then: isGlare(reading) ? 'The card mirrors a lamp. Lean or turn it until the black patch goes dark from where the camera stands.'
        : 'Stray light lies over card and picture alike. Shade the lens from the lamp, look for haze on the glass, and shoot again.',
    };
    case 'uneven': return {
      seen: `${PATCH_NAMES[fault.patch]} is uneven: ${percent(fault.unevenness)} between its darkest and brightest part.`,
      then: againstUneven(fault.brighter),
    };
  }
}

/** Whether gains can be had. */
function isUsable({gains, trusted}: CardReading): boolean {
  return gains !== undefined && trusted;
}

/** Half a third-stop click: nearer than this no click brings it. */
const HALF_CLICK = 1 / 6;

function exposureFinding({trusted, exposureError, reading}: GrayCard): Finding[] {
  if (!trusted) return [];
  const code = Math.round(reading.gray.luminance.code);
  if (Math.abs(exposureError) < HALF_CLICK) {
    return [{seen: `The exposure is right: gray comes out at sRGB${S}${code}.`, then: `18${S}% gray belongs at 118; no third-stop click would bring it nearer.`}];
  }
  return [{
    seen: `The exposure is ${stops(exposureError)} ${exposureError > 0 ? 'over' : 'under'}: gray comes out at sRGB${S}${code} instead of 118.`,
    then: exposureError > 0 ? 'Less light puts it right:' : 'More light puts it right:',
  }];
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

function isCutOff({faults}: CardReading, patch: Patch): boolean {
  return faults.some(({fault}) => fault === `${patch}-clipped`);
}

/** How a patch lies against where it belongs. */
export function offText(reading: CardReading, patch: Patch): string {
  const by = offBy(reading, patch);
  if (isCutOff(reading, patch)) return 'cut off';
  if (!Number.isFinite(by)) return 'no light';
  return Math.abs(by) < UNSEEN ? 'as it should' : `${stops(by)} ${overOrUnder(by)}`;
}

/** How even a patch is. */
export function evenText(reading: CardReading, patch: Patch): string {
  return isCutOff(reading, patch) ? 'unknown' : percent(reading.unevenness[patch]);
}

/** The codes of a patch: `118 117 117`. */
export function codesText(reading: CardReading, patch: Patch): string {
  return [reading[patch].red, reading[patch].green, reading[patch].blue].map(({code}) => Math.round(code)).join(S);
}

/** Gains in the ways they are asked for. */
export function gainTexts(gains: Gains): readonly {readonly label: string; readonly text: string}[] {
  const write = ({red, green, blue}: {readonly red: number; readonly green: number; readonly blue: number}): string =>
    `R ${red.toFixed(3)} G ${green.toFixed(3)} B ${blue.toFixed(3)}`;
  return [
    {label: 'Factors, green held', text: write(gains)},
    {label: 'Factors, none below 1', text: write(gainsFromOne(gains))},
    {label: 'Green over red, over blue', text: `G/R ${gains.red.toFixed(3)} G/B ${gains.blue.toFixed(3)}`},
  ];
}

/** What is known of the card while its frames are not all placed; `undefined` once they are. */
export function markingText({how, placed}: CardShot): string | undefined {
  if (how === 'looking') return 'Looking for the card…';
  return placed.length === 3 ? undefined : 'No gray card was found in this shot: mark it by hand, if there is one.';
}

/** The next step of marking, under the shot so that nothing above it moves. */
export function nextMark({how, placed}: CardShot): string | undefined {
  const next = (['white', 'gray', 'black'] as const).find((patch) => !placed.includes(patch));
  if (!next || how === 'looking') return undefined;
  return `Press on the ${next} patch, or move frame ${PATCH_LETTERS[next]} onto it.`;
}

/** Where a frame lies, as a slider says it. */
export function frameText(patch: Patch, {x, y, width, height}: Crop, placed: boolean): string {
  return `${width} by ${height}${S}px, ${x} from the left, ${y} from the top${placed ? '' : `, not on the ${patch} patch yet`}`;
}

/** How the card shot was exposed, under the file's name. */
export function shotText(name: string, {width, height}: {readonly width: number; readonly height: number}, exposure: string | undefined): string {
  return [name, `${width}${S}×${S}${height}${S}px`, exposure].filter(Boolean).join(', ');
}

export const WORDS = {
  element: 'Gray card check',
  invite: 'Drop a shot of your gray card here, paste one or choose a file: you will see whether the card can be trusted, what to multiply red and blue by, and how far off the exposure is.',
  stays: 'It is read on this device and goes nowhere.',
  open: 'Choose a card shot',
  openOther: 'Choose another card shot',
  useBench: 'Use the photo on the bench',
  opening: 'Reading the card shot…',
  picture: 'The card shot, with a frame on each patch',
  frame: {white: 'Frame on the white patch', gray: 'Frame on the gray patch', black: 'Frame on the black patch'},
  frameKeys: 'Arrow keys move the frame, with Shift they size it; Page Up and Page Down grow and shrink it.',
  closer: 'Close in on the card',
  whole: 'Show the whole shot',
  again: 'Look for the card again',
  byNumbers: 'Frames by numbers',
  markField: {white: 'W: left, top, size, px', gray: 'G: left, top, size, px', black: 'K: left, top, size, px'},
  table: 'The three patches',
  columns: {patch: 'Patch', codes: 'sRGB', off: 'Off by', even: 'Uneven by'},
  found: 'Findings',
  light: 'The light',
  gains: 'Gains, on linear light',
  copy: 'Copy',
  copied: 'Copied:',
  notCopied: 'The clipboard is out of reach here. The numbers are selected: copy them with the keyboard or a long press.',
  preview: 'Before and after',
  wipe: 'Where before ends and after begins',
  before: 'before',
  after: 'after',
  ofCard: 'the card shot',
  ofPhoto: 'the photo on the bench',
  shown: 'Shown on',
  withExposure: 'exposure put right too',
  noGains: 'There are no gains to show: see above what to do.',
  doubtful: 'These gains come from a card that is not to be trusted.',
} as const;

/** Said of the picture that is wiped, for those who do not see it. */
export function previewText(name: string, share: number): string {
  return `${name || 'The picture'}, as shot up to ${share}${S}% from the left, with the gains to the right of it`;
}

/** Where the wipe stands. */
export function wipeText(share: number): string {
  return `${share}${S}% before, ${100 - share}${S}% after`;
}
