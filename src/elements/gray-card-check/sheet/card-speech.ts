import {GRAY_LIGHT} from '../../../core/tone/level.js';
import {codeFromLinear} from '../../../core/tone/light.js';
import type {Crop} from '../../../core/tone/pixels.js';
import type {CardFault, CardReading, Patch} from '../../../core/white/card.js';
import type {Gains} from '../../../core/white/gains.js';
import {tight, type Say} from '../../shared/say.js';
import type {CardShot, GrayCard} from '../reading.js';
import {PATCHES, gainsFromOne, isMisplaced, offBy, tintOf} from './judge.js';
import type {SheetWords} from './words/en.js';

/** Stops that no dial can show and nobody would see. */
const UNSEEN = 0.015;

/** Half a third-stop click: nearer than this no click brings it. */
const HALF_CLICK = 1 / 6;

/** Measured stops without a sign: `0.02 stop`, `1.2 stops`. */
export function measuredStops({say}: {readonly say: Say}, amount: number): string {
  const size = Math.abs(amount);
  const decimals = size < 0.995 ? 2 : 1;
  return tight(say.family.stops(say.fixed(size, decimals), Number(size.toFixed(decimals))));
}

/** A factor with two decimals, with three where two would say too little. */
const factor = ({say}: SheetWords, gain: number): string => say.fixed(gain, gain < 0.1 ? 3 : 2);

const percent = ({say}: SheetWords, part: number): string => say.percent(part, part < 0.1 ? 1 : 0);

const capital = (text: string): string => `${text.charAt(0).toLocaleUpperCase()}${text.slice(1)}`;

// —— the verdict ——

/** Whether the card can be used, and what it says. */
export function verdict(words: SheetWords, {reading, gains, trusted, cast}: GrayCard): string {
  if (isMisplaced(reading)) return words.misplaced;
  const worst = reading.faults.find(({fault}) => fault === 'black-lifted') ?? reading.faults[0];
  if (!trusted && worst) return distrustOf(words, worst, reading);
  const {exposureError} = reading;
  const isNeutral = cast !== undefined && !cast.warmer && !tintOf(cast);
  const [red, blue] = [factor(words, gains?.red ?? 1), factor(words, gains?.blue ?? 1)];
  return Math.abs(exposureError) < UNSEEN ? words.trusted(red, blue, isNeutral)
    : words.trustedOff(measuredStops(words, exposureError), exposureError > 0, red, blue, isNeutral);
}

function distrustOf(words: SheetWords, fault: CardFault, reading: CardReading): string {
  const {distrust} = words;
  switch (fault.fault) {
    case 'gray-black': return distrust.grayBlack;
    case 'gray-clipped': return distrust.grayClipped;
    case 'uneven': return `${distrust.uneven(fault.patch, percent(words, fault.unevenness))} ${words.unevenThen[fault.brighter]}`;
    case 'black-lifted': return (isGlare(reading) ? distrust.glare : distrust.veil)(lifted(words, reading));
    case 'white-clipped': return distrust.whiteClipped;
  }
}

/** How far black is lifted; once gray itself is cut off, the figure is a rough one. */
function lifted(words: SheetWords, reading: CardReading): string {
  if (reading.black.luminance.mean >= reading.gray.luminance.mean) return words.liftedToGray;
  const isRough = reading.faults.some(({fault}) => fault === 'gray-clipped');
  return (isRough ? words.liftedAbout : words.lifted)(measuredStops(words, offBy(reading, 'black')));
}

/** A lamp mirrored in the card lies on part of it; a veil of stray light lies on everything alike. */
function isGlare({faults}: CardReading): boolean {
  return faults.some(({fault}) => fault === 'uneven' || fault === 'gray-clipped');
}

// —— findings ——

/** A finding: what was seen, and what to do. */
export interface Finding {
  readonly seen: string;
  readonly then: string;
  /** Whether it speaks against the card. */
  readonly against?: true;
}

/** Everything that speaks against the card, and how its exposure lies. */
export function findings(words: SheetWords, card: GrayCard): Finding[] {
  const {reading} = card;
  if (isMisplaced(reading)) return [{seen: words.misplacedSeen, then: words.misplacedThen, against: true}];
  return [...reading.faults.map((fault) => ({...faultFinding(words, fault, reading), against: true as const})), ...exposureFinding(words, card)];
}

function faultFinding(words: SheetWords, fault: CardFault, reading: CardReading): Finding {
  switch (fault.fault) {
    case 'white-clipped': return {
      seen: words.whiteClipped(percent(words, fault.share)),
      then: reading.gains !== undefined && reading.trusted ? words.whiteClippedUsable : words.whiteClippedElse,
    };
    case 'gray-clipped': return {seen: words.grayClipped(percent(words, fault.share)), then: words.grayClippedThen};
    case 'gray-black': return {seen: words.grayBlack(percent(words, fault.share)), then: words.grayBlackThen};
    case 'black-lifted': return {seen: `${capital(lifted(words, reading))}.`, then: isGlare(reading) ? words.glareThen : words.veilThen};
    case 'uneven': return {seen: words.uneven[fault.patch](percent(words, fault.unevenness)), then: words.unevenThen[fault.brighter]};
  }
}

function exposureFinding(words: SheetWords, {trusted, exposureError, reading}: GrayCard): Finding[] {
  if (!trusted) return [];
  const {say} = words;
  const [code, belongs] = [say.number(reading.gray.luminance.code), say.number(codeFromLinear(GRAY_LIGHT))];
  if (Math.abs(exposureError) < HALF_CLICK) return [{seen: words.exposed(code, isCutOff(reading, 'white')), then: words.exposedThen(say.percent(GRAY_LIGHT), belongs)}];
  return [{
    seen: words.exposedOff(measuredStops(words, exposureError), exposureError > 0, code, belongs),
    then: exposureError > 0 ? words.lessLight : words.moreLight,
  }];
}

// —— the table ——

function isCutOff({faults}: CardReading, patch: Patch): boolean {
  return faults.some(({fault}) => fault === `${patch}-clipped`);
}

/** How a patch lies against where it belongs. */
export function offText(words: SheetWords, reading: CardReading, patch: Patch): string {
  const by = offBy(reading, patch);
  if (isCutOff(reading, patch)) return words.cutOff;
  if (!Number.isFinite(by)) return words.noLight;
  return Math.abs(by) < UNSEEN ? words.asItShould : words.offBy(measuredStops(words, by), by > 0);
}

/** How even a patch is. */
export function evenText(words: SheetWords, reading: CardReading, patch: Patch): string {
  return isCutOff(reading, patch) ? words.unknown : percent(words, reading.unevenness[patch]);
}

/** The codes of a patch: `118 117 117`. */
export function codesText(reading: CardReading, patch: Patch): string {
  return [reading[patch].red, reading[patch].green, reading[patch].blue].map(({code}) => Math.round(code)).join(' ');
}

// —— gains to copy ——

/** Gains in the ways they are asked for. They go into other programs: with a point in every language. */
export function gainTexts(words: SheetWords, gains: Gains): readonly {readonly label: string; readonly text: string}[] {
  const write = ({red, green, blue}: {readonly red: number; readonly green: number; readonly blue: number}): string =>
    `R ${red.toFixed(3)} G ${green.toFixed(3)} B ${blue.toFixed(3)}`;
  return [
    {label: words.greenHeld, text: write(gains)},
    {label: words.noneBelowOne, text: write(gainsFromOne(gains))},
    {label: words.quotients, text: `G/R ${gains.red.toFixed(3)} G/B ${gains.blue.toFixed(3)}`},
  ];
}

// —— marking ——

/** What is known of the card while its frames are not all placed; `undefined` once they are. */
export function markingText(words: SheetWords, {how, placed}: CardShot): string | undefined {
  if (how === 'looking') return words.looking;
  return placed.length === PATCHES.length ? undefined : words.noneFound;
}

/** The next step of marking, under the shot so that nothing above it moves. */
export function nextMark(words: SheetWords, {how, placed}: CardShot): string | undefined {
  const next = PATCHES.find((patch) => !placed.includes(patch));
  return next && how !== 'looking' ? words.pressOn[next] : undefined;
}

/** Where a frame lies, as a slider says it. */
export function frameText(words: SheetWords, patch: Patch, {x, y, width, height}: Crop, placed: boolean): string {
  const [across, down, left, top] = [width, height, x, y].map((px) => words.say.number(px)) as [string, string, string, string];
  return placed ? words.frameAt(across, down, left, top) : words.frameWaits(across, down, left, top, patch);
}
