import type {Shot} from '../../../core/shot/shot.js';
import {lengthIn} from '../../../core/units.js';
import type {FocusReading} from './ruler-readings.js';
import type {SharpnessWords} from './words/en.js';

/** How places on the line are written: on the ruler when it was read, otherwise as parts of the way from A to B. */
export interface Places {
  /** `120 mm`; or `A`, `34%`, `B`. */
  readonly write: (along: number) => string;
  readonly onRuler: boolean;
}

/** A length in the reader's unit, as fine as a ruler is read. */
export function rulerText({say}: SharpnessWords, mm: number, unit: Shot['unit']): string {
  const length = lengthIn(mm, unit);
  return `${unit === 'mm' ? say.number(length) : say.fixed(length, 2)}\u00a0${unit}`;
}

/** So near to an end is at the end. */
const AT_END = 0.005;

/** `A`, `34%`, `B`: as finely as the readings lie. */
export function placeOnWay({say}: SharpnessWords, along: number): string {
  return along <= AT_END ? 'A' : along >= 1 - AT_END ? 'B' : say.percent(along);
}

/** `at B`, `about 34% of the way from A to B`, `at 120 mm`. */
function whereText(words: SharpnessWords, {write, onRuler}: Places, along: number): string {
  const place = write(along);
  return onRuler || place === 'A' || place === 'B' ? words.at(place) : words.onWay(place);
}

export interface PieceOfLine {
  readonly from: number;
  readonly to: number;
}

/** Pieces of the line in words; those that are written alike are one place. */
function piecesText(words: SharpnessWords, list: readonly PieceOfLine[], {write}: Places): string {
  const texts = list.map(({from, to}) => {
    const [start, end] = [write(from), write(to)];
    return start === end ? words.at(start) : words.stretch(start, end);
  });
  return words.say.list([...new Set(texts)]);
}

/** Pieces, and gaps between them, that are shorter than this are stray readings; share of the line. */
const LEAST_PIECE = 0.03;

/** Pieces without the gaps that a stray reading makes, and without stray pieces where there are longer ones. */
function plainPieces(pieces: readonly PieceOfLine[]): readonly PieceOfLine[] {
  const joined: {from: number; to: number}[] = [];
  for (const {from, to} of pieces) {
    const last = joined.at(-1);
    if (last && from - last.to < LEAST_PIECE) last.to = to;
    else joined.push({from, to});
  }
  const long = joined.filter(({from, to}) => to - from >= LEAST_PIECE);
  return long.length ? long : joined;
}

/** Where the shot is sharp along the line. */
export function sharpText(words: SharpnessWords, sharp: readonly PieceOfLine[], known: boolean, places: Places): string {
  const plain = plainPieces(sharp);
  const [only, ...more] = plain;
  if (!known || !only) return words.nothingKnown;
  if (more.length === 0 && only.from <= AT_END && only.to >= 1 - AT_END) return words.sharpAll;
  const pieces = piecesText(words, plain, places);
  return places.onRuler ? words.sharpOnRuler(pieces) : words.sharp(pieces);
}

/** Finest step that a ruler is read to, mm: a millimetre, or a twentieth of an inch. */
const FINEST_MM = {mm: 1, cm: 1.3, in: 1.3} as const;

/** Where the focus is, and what it was taken from. */
export function focusText(
  words: SharpnessWords, along: number | undefined, reading: FocusReading | undefined, places: Places, unit: Shot['unit'],
): string {
  if (along === undefined) return words.noFocus;
  if (!reading) return words.focusAt(whereText(words, places, along));
  const {onRuler, within, behindFront} = reading;
  const give = rulerText(words, Math.max(within, FINEST_MM[unit]), unit);
  const place = rulerText(words, onRuler, unit);
  return behindFront === undefined ? words.focusOnRuler(place, give)
    : words.focusFromFront(place, rulerText(words, Math.abs(behindFront), unit), behindFront < 0, give);
}

/** One shot against another. */
export interface Worth {
  /** Aperture of this shot and of the earlier one. */
  readonly now: number;
  readonly before: number;
  /** Parts of the line that this shot shows sharper, softer and alike, and that nobody can judge, 0 to 1. */
  readonly sharper: number;
  readonly softer: number;
  readonly alike: number;
  readonly unknown: number;
  /** Most blur that this shot took away and added, finished px. */
  readonly gained: number;
  readonly lost: number;
  /** Where it gained most. */
  readonly best: number;
}

/** Whether the second shot was worth it, and where. */
export function worthText(words: SharpnessWords, worth: Worth, places: Places): string {
  const {say} = words;
  const {sharper, softer, alike, unknown, gained, lost, best} = worth;
  const [now, before] = [say.aperture(worth.now), say.aperture(worth.before)];
  const [shot, other] = now === before ? [words.thisShot, words.earlierShot] : [now, before];
  if (!sharper && !softer) return alike ? words.noGain(shot, other) : words.noDetail;
  if (!sharper) return words.notWorth(shot, other, say.percent(softer), say.pixels(lost));
  return [
    words.worth(shot, other, say.percent(sharper), say.pixels(gained), whereText(words, places, best)),
    softer ? words.butSofter(say.percent(softer), say.pixels(lost)) : '',
    alike ? unknown ? words.restMixed : words.restAlike : unknown ? words.restUnknown : '',
  ].filter(Boolean).join(' ');
}

/** What diffraction does at the aperture, where it is worth a word. */
export function diffractionText(words: SharpnessWords, aperture: number, disc: number, limit: number): string {
  const {say} = words;
  const says = disc > limit ? words.diffractionOver : words.diffractionWithin;
  return says(say.aperture(aperture), say.pixels(disc), say.pixels(limit));
}

/** The curve in words, for those who do not see it. */
export function curveText(words: SharpnessWords, least: number, most: number, points: number, known: number): string {
  const {say} = words;
  return known === 0 ? words.nothingKnown : words.curve(say.pixels(least), say.pixels(most), say.percent(1 - known / points));
}
