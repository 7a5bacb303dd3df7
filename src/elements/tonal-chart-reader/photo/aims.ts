import {Problem} from '../../../core/problem.js';
import {
  DARK_BACKDROP_AIMS, endsFromCard, endsFromCrop, exposureForAims, type IntentExposure, type ToneAims,
} from '../../../core/tone/card-exposure.js';
import type {Tally} from '../../../core/tone/tally.js';
import {readNumber} from '../../../core/units.js';
import type {SheetWords} from './words/en.js';

/** A number of the aims that can be typed. */
export type AimField = 'highlights' | 'shadows' | 'backdrop';

/** What was aimed for, as it was typed and as it is used. */
export interface Aims extends ToneAims {
  /** Share of the crop that the dark backdrop fills. */
  readonly backdrop: number;
  readonly texts: Readonly<Partial<Record<AimField, string>>>;
  readonly problems: Readonly<Partial<Record<AimField, Problem | undefined>>>;
}

/** Half of the crop is backdrop until somebody says otherwise. */
export const FIRST_AIMS: Aims = {...DARK_BACKDROP_AIMS, backdrop: 0.5, texts: {}, problems: {}};

/** The aims after one of them was typed. What cannot be used is kept and explained. */
export function withAim(words: SheetWords, aims: Aims, field: AimField, text: string): Aims {
  const number = readNumber(text.replace(/%\s*$/, ''));
  const value = number === undefined ? NaN : field === 'backdrop' ? number / 100 : number;
  const next = {...aims, [field]: value, texts: {...aims.texts, [field]: text}};
  const fits = field === 'backdrop' ? value >= 0 && value < 1
    : next.shadows > 0 && next.shadows < next.highlights && next.highlights < 255;
  if (fits) return {...next, problems: {...aims.problems, [field]: undefined}};
  const problem = new Problem(field, text, field === 'backdrop' ? words.shareWanted : words.valueWanted);
  return {...aims, texts: next.texts, problems: {...aims.problems, [field]: problem}};
}

/**
 * The exposure that brings the figure's highlights to their aim.
 * @param gray - linear light of a gray card in this shot, when one was measured; the crop speaks otherwise
 * @returns `undefined` when there is no light at all
 */
export function exposureForFigure(tally: Tally, aims: Aims, gray: number | undefined): IntentExposure | undefined {
  try {
    return exposureForAims(gray === undefined ? endsFromCrop(tally, aims.backdrop) : endsFromCard(gray), aims);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return undefined;
  }
}
