import {writeAperture} from '../../core/exposure/write.js';
import type {Shot} from '../../core/shot/shot.js';
import type {SharpnessChange} from '../../core/tone/sharpness-change.js';
import type {Sharper} from '../../core/tone/sharpness-change.js';
import {lengthIn} from '../../core/units.js';
import type {FocusReading} from './ruler-readings.js';
import type {LineEnd, Place} from './sharpness-line.js';
import type {Sharpness} from './sharpness-draw.js';

/** No-break space. */
const S = '\u00a0';

/** Writes a place on the line: on the ruler when it was read, otherwise as a share of the way from A to B. */
export type WritePlace = (along: number) => string;

/** A length in the reader's unit, as fine as a ruler is read. */
export function writeRuler(mm: number, unit: Shot['unit']): string {
  const text = lengthIn(mm, unit).toFixed(unit === 'mm' ? 0 : 2).replace(/^-(0(?:\.0+)?)$/, '$1').replace('-', '−');
  return `${text}${S}${unit}`;
}

export const placeOnLine: WritePlace = (along) => (along <= 0.005 ? 'A' : along >= 0.995 ? 'B' : `${Math.round(along * 100)}${S}%`);

/** Finished pixels. */
export function blurText(pixels: number): string {
  return `${pixels < 10 ? pixels.toFixed(1) : Math.round(pixels)}${S}px`;
}

export interface PieceOfLine {
  readonly from: number;
  readonly to: number;
}

function pieces(list: readonly PieceOfLine[], write: WritePlace): string {
  const texts = list.map(({from, to}) => (write(from) === write(to) ? `at ${write(from)}` : `from ${write(from)} to ${write(to)}`));
  return texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} and ${texts.at(-1)}`;
}

const whole = (list: readonly PieceOfLine[]): boolean => list.length === 1 && (list[0] as PieceOfLine).from <= 0.005 && (list[0] as PieceOfLine).to >= 0.995;

/** Where the shot is sharp along the line. */
export function sharpSentence(sharp: readonly PieceOfLine[], known: boolean, write: WritePlace): string {
  if (!known) return SHARP.nothingKnown;
  return whole(sharp) ? 'As sharp from A to B as at its sharpest.' : `Sharp ${pieces(sharp, write)}.`;
}

/** Where the focus is, and what it was taken from. */
export function focusSentence(found: boolean, along: number, within: number, reading: FocusReading | undefined, unit: Shot['unit']): string {
  if (!found) return SHARP.noFocus;
  if (!reading) return `The focus lies ${Math.round(along * 100)}${S}% of the way from A to B, give or take ${Math.max(1, Math.round(within * 100))}${S}%.`;
  const margin = writeRuler(Math.max(reading.within, unit === 'mm' ? 1 : 1.3), unit);
  const {behindFront} = reading;
  const front = behindFront === undefined ? '' : `, ${writeRuler(Math.abs(behindFront), unit)} ${behindFront < 0 ? 'before' : 'behind'} the base’s front edge`;
  return `The focus lies at ${writeRuler(reading.onRuler, unit)} on the ruler${front}, give or take ${margin}.`;
}

/** One shot against another, and where. */
export interface Worth {
  /** Aperture of this shot and of the earlier one. */
  readonly now: number;
  readonly before: number;
  readonly sharper: readonly PieceOfLine[];
  readonly softer: readonly PieceOfLine[];
  readonly alike: readonly PieceOfLine[];
  /** Most blur that this shot took away and added, finished px. */
  readonly gained: number;
  readonly lost: number;
}

/** Whether the second shot was worth it, and where. */
export function worthSentence({now, before, sharper, softer, alike, gained, lost}: Worth, write: WritePlace): string {
  const same = writeAperture(now) === writeAperture(before);
  const [shot, other] = same ? ['This shot', 'the earlier one'] : [writeAperture(now), writeAperture(before)];
  if (!sharper.length && !softer.length) {
    return alike.length ? `No gain: ${shot} is as sharp as ${other} wherever both can be judged.`
      : 'There is no detail along this line that both shots can be judged by.';
  }
  if (!sharper.length) return `Not worth it: ${shot} is nowhere sharper than ${other}, and softer ${pieces(softer, write)}, by up to ${blurText(lost)}.`;
  const gain = `${shot} was worth it ${pieces(sharper, write)}: up to ${blurText(gained)} less blur than ${other}.`;
  if (softer.length) return `${gain} It is softer ${pieces(softer, write)}, by up to ${blurText(lost)}.`;
  return alike.length ? `${gain} No gain ${pieces(alike, write)}.` : gain;
}

/** What diffraction does at the apertures, where it is worth a word. */
export function diffractionNote(aperture: number, disc: number, limit: number): string {
  return disc > limit
    ? `Diffraction is reached: at ${writeAperture(aperture)} it alone makes a disc ${blurText(disc)} wide of every point, over the ${blurText(limit)} that look sharp. Closing further sharpens nothing in focus.`
    : `Diffraction at ${writeAperture(aperture)} makes a disc ${blurText(disc)} wide, within the ${blurText(limit)} that look sharp.`;
}

/** Where an end of the line lies, as it is read out. */
export function endText([x, y]: Place): string {
  return `${Math.round(x * 100)}${S}% from the left, ${Math.round(y * 100)}${S}% from the top`;
}

/** The curve in words, for those who do not see it. */
export function profileText(least: number, most: number, points: number, known: number): string {
  return known === 0 ? SHARP.nothingKnown
    : `Blur along the line from A to B: ${blurText(least)} at the sharpest, ${blurText(most)} at the softest; ${Math.round(100 * (1 - known / points))}${S}% of it unknown.`;
}

export function progressText(done: number): string {
  return `Looking… ${Math.round(done * 100)}${S}%`;
}

export function scaleNote(limit: number, upTo: number): string {
  return `Blur in pixels of the finished picture. Detail has a width of its own that is in every reading, so a place counts as sharp while it adds no more than ${blurText(limit)} to the sharpest of the line: up to ${blurText(upTo)}. Hatched: nothing there to judge by.`;
}

export function useText(behindFront: number, unit: Shot['unit']): string {
  return `Focus ${writeRuler(Math.abs(behindFront), unit)} ${behindFront < 0 ? 'before' : 'behind'} the front edge`;
}

export function useCost(now: number, unit: Shot['unit']): string {
  return `The bench has it at ${writeRuler(now, unit)}. Use it.`;
}

export const SHARP = {
  looking: 'Looking…',
  line: {a: 'Line, end A', b: 'Line, end B'} satisfies Record<LineEnd, string>,
  keys: 'Arrow keys move an end of the line, with Shift in small steps.',
  frontToBack: 'Front to back',
  across: 'Side to side',
  lay: 'Lay the line through the crop’s middle',
  nothingKnown: 'Along this line there is nothing to judge sharpness by: a plain surface, or blur so wide that no detail is left. That is unknown, not soft.',
  noFocus: 'The focus cannot be placed on this line: blur has to be seen growing to both sides of it.',
  oneShot: 'From one shot. Detail that gets finer along the line pulls this a little; a second shot at another aperture takes that out.',
  bothShots: 'From both shots: the detail’s own width drops out.',
  ruler: 'With a ruler under the line',
  atA: 'Ruler at A', atMiddle: 'At the cross', atB: 'Ruler at B', atFront: 'Base’s front edge',
  middleHint: 'gives the perspective',
  reckoned: 'Perspective reckoned from the lens and the field width of the bench. Read the ruler at the cross on the line to measure it.',
  wrongMiddle: 'The reading at the cross has to lie between the two at the ends.',
  heat: 'Show it over the photo',
  heatOf: 'Over the photo',
  heatSharp: 'This shot', heatChange: 'Against the earlier shot',
  softerUp: 'softer',
  otherSize: 'The earlier shot has other pixels or shows another set: its sharpness cannot be set beside this one’s.',
  legendNote: 'Judged against the sharpest tenth of the crop, up to half as broad again. Broad detail reads softer than fine detail just as sharp: compare like with like, or two shots.',
} as const;

export const HEAT_NAMES: Readonly<Record<Sharpness, string>> = {
  sharp: 'among the sharpest', near: 'softer', soft: 'soft', unknown: 'unknown: no detail',
};

/** How this shot, the second, stands against the earlier one. */
export type Change = 'sharper' | 'softer' | 'alike' | 'unknown';

export const CHANGE_OF: Readonly<Record<NonNullable<Sharper>, Change>> = {first: 'softer', second: 'sharper', neither: 'alike'};

export function changeOf({sharper}: Pick<SharpnessChange, 'sharper'>): Change {
  return sharper === null ? 'unknown' : CHANGE_OF[sharper];
}

export const CHANGE_NAMES: Readonly<Record<Change, string>> = {
  sharper: 'sharper now', softer: 'softer now', alike: 'no change', unknown: 'unknown: no detail',
};
