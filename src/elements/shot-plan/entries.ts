import {html, type TemplateResult} from 'lit';
import type {Problem} from '../../core/problem.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import {readNumber, type LengthUnit} from '../../core/units.js';
import {textField, type TextField} from '../shared/fields.js';
import type {PlanWords} from './words/en.js';

/** What the entries need of their element. */
export interface EntryHost {
  readonly words: PlanWords;
  readonly shot: Shot;
  readonly field: (key: ShotKey, label: string, more?: Partial<TextField> & {readonly write?: () => string}) => TemplateResult;
  readonly act: (changes: Partial<Shot>) => void;
  readonly type: (key: ShotKey, text: string) => void;
  /** The metered f-number as the body shows it: as typed, or written out. */
  readonly shown: {readonly text: string; readonly problem?: Problem | undefined};
  readonly typeShown: (text: string) => void;
}

type LengthKey = 'room' | 'baseDepth' | 'overhangFront' | 'overhangFrontHeight' | 'overhangBack' | 'overhangBackHeight' | 'figureHeight' | 'figureWidth';

/** A bare number typed while inches are shown means inches. */
const withUnit = (text: string, unit: LengthUnit): string => (unit !== 'mm' && readNumber(text) !== undefined ? `${text.trim()} ${unit}` : text);

export const lengthField = ({field, shot, type, words}: EntryHost, key: LengthKey, label: string, hint?: string): TemplateResult => field(key, label, {
  hint, write: () => words.say.fieldLength(shot[key], shot.unit), onType: (text) => { type(key, withUnit(text, shot.unit)); },
});

/** The wishes that change from figure to figure. */
export function everyday(host: EntryHost): TemplateResult {
  const {field, shot, words} = host;
  return html`${field('focalLengths', words.focalLengths, {hint: words.focalLengthsHint})}
    ${lengthField(host, 'room', words.room, words.roomHint)}
    ${field('pictureWidth', words.pictureWidth, {inputmode: 'numeric'})}${field('pictureHeight', words.pictureHeight, {inputmode: 'numeric'})}
    ${field('margin', words.margin, {hint: words.marginHint})}
    ${shot.apertureShown === 'marked' ? field('meteredAperture', words.metered)
      : textField({id: 'metered-aperture', say: words.say, label: words.meteredWorking, ...host.shown, onType: host.typeShown})}
    ${field('meteredShutter', words.meteredShutter)}`;
}
