import {exactFromNominal} from '../exposure/clicks.js';
import {SETTINGS} from '../exposure/stops.js';
import {writtenOf} from './given.js';
import type {Measured} from './record.js';
import type {MeasuredLabel, SheetLanguage} from './sheet-words.js';

/** One line of what was measured that does not say the same in two shots. */
export interface MeasuredChange {
  readonly label: string;
  readonly from: string;
  readonly to: string;
}

/** Shares below this are said to be under it. */
const LEAST_SHARE = 0.0001;

/** Stops that are none. */
const UNSEEN = 0.05;

/** What was measured in a language, line by line. */
export function measuredIn(language: SheetLanguage, measured: Measured): readonly (readonly [label: string, text: string])[] {
  return linesOf(language, measured).map(([key, text]) => [language.words.measured[key], text]);
}

/** What was measured otherwise from one shot to another. What only one has is not compared, nor whose photo it was. */
export function measuredDifferenceIn(language: SheetLanguage, from: Measured, to: Measured): readonly MeasuredChange[] {
  const before = new Map(linesOf(language, from));
  return linesOf(language, to).flatMap(([key, text]) => {
    const earlier = before.get(key);
    return earlier === undefined || earlier === text || key === 'photo' || key === 'taken' ? []
      : [{label: language.words.measured[key], from: earlier, to: text}];
  });
}

function linesOf(language: SheetLanguage, measured: Measured): readonly (readonly [MeasuredLabel, string])[] {
  const {words, numbers} = language;
  const {photo, taken, width, height, atBlack, atWhite, roomBelow, roomAbove, gainRed, gainBlue} = measured;
  const share = (part: number | undefined) => part !== undefined
    && (part > 0 && part < LEAST_SHARE ? words.underShare(numbers.percent(LEAST_SHARE)) : numbers.percent(+part.toFixed(part < 0.001 ? 4 : part < 0.1 ? 3 : 2)));
  const room = (stops: number | undefined) => stops !== undefined && numbers.stops(stops);
  const lines: readonly (readonly [MeasuredLabel, string | false | undefined])[] = [
    ['photo', photo], ['taken', taken?.replace('T', ' ')],
    ['size', width && height ? `${numbers.number(width, 0)} × ${numbers.number(height, 0)}` : undefined],
    ['file', SETTINGS.flatMap((key) => (measured[key] ? [numbers.text(writtenOf(key, exactFromNominal(key, measured[key])))] : [])).join(numbers.between)],
    ['atBlack', share(atBlack)], ['atWhite', share(atWhite)], ['roomBelow', room(roomBelow)], ['roomAbove', room(roomAbove)],
    ['card', cardIn(language, measured)], ['cardOff', cardOffIn(language, measured)],
    ['balance', gainRed !== undefined && gainBlue !== undefined && words.balance(numbers.fixed(gainRed, 3), numbers.fixed(gainBlue, 3))],
    ['spot', spotIn(language, measured)],
  ];
  return lines.flatMap(([key, text]) => (text ? [[key, text] as const] : []));
}

function cardIn({words}: SheetLanguage, {cardPhoto, cardTrusted}: Measured): string | undefined {
  if (cardTrusted === undefined) return cardPhoto;
  return cardPhoto ? words.photoTrusted(cardPhoto, cardTrusted) : words.trusted(cardTrusted);
}

function cardOffIn({words, numbers}: SheetLanguage, {cardOff}: Measured): string | undefined {
  if (cardOff === undefined) return undefined;
  return Math.abs(cardOff) < UNSEEN ? words.asItShould : words.cardOff(numbers.stops(Math.abs(cardOff)), cardOff > 0);
}

function spotIn({words, numbers}: SheetLanguage, {spotCode, spotStops}: Measured): string | undefined {
  if (spotCode === undefined) return undefined;
  const code = numbers.number(spotCode, 1);
  if (spotStops === undefined) return words.level(code);
  return Math.abs(spotStops) < UNSEEN ? words.levelAsCard(code) : words.levelFromCard(code, numbers.stops(Math.abs(spotStops)), spotStops > 0);
}
