import {html, type TemplateResult} from 'lit';
import {readAperture} from '../../core/exposure/read.js';
import {markedFromWorking} from '../../core/optics/lens.js';
import {Problem} from '../../core/problem.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';
import {readNumber, type LengthUnit} from '../../core/units.js';
import {textField, type TextField} from '../shared/fields.js';
import {apertureText} from './speech.js';
import type {ZoneWords} from './words/en.js';

/** What the entries need of their element. */
export interface EntryHost {
  readonly words: ZoneWords;
  readonly shot: Shot;
  readonly state: ShotState;
  readonly field: (key: ShotKey, label: string, more?: Partial<TextField> & {readonly write?: () => string}) => TemplateResult;
  readonly act: (changes: Partial<Shot>) => void;
  readonly type: (key: ShotKey, text: string) => void;
  readonly refused: (problem: Problem) => void;
}

/** A bare number keeps the unit it was taken in, so that the field says what it means. */
export const withUnit = (text: string, unit: string): string => (readNumber(text) === undefined ? text : `${text.trim()} ${unit}`);

type Measured = 'fieldWidth' | 'baseDepth' | 'focus' | 'overhangFront' | 'overhangFrontHeight' | 'overhangBack' | 'overhangBackHeight'
  | 'figureHeight' | 'room';

/** A length in the reader's unit. */
export function lengthField(
  {words: {say}, shot, field, type}: Pick<EntryHost, 'words' | 'shot' | 'field' | 'type'>, key: Measured, label: string, hint?: string,
): TemplateResult {
  return field(key, label, {
    hint, write: () => say.fieldLength(shot[key], shot.unit), onType: (text) => { type(key, withUnit(text, shot.unit)); },
  });
}

/** A length of lens or body: mm whatever else is. */
export const millimetreField = (
  {field, type}: Pick<EntryHost, 'field' | 'type'>, key: 'focalLength' | 'sensorWidth' | 'sensorHeight', label: string,
): TemplateResult => field(key, label, {onType: (text) => { type(key, withUnit(text, 'mm' satisfies LengthUnit)); }});

/** An f-number as engraved. */
export const apertureField = (
  {field, type}: Pick<EntryHost, 'field' | 'type'>, key: 'aperture' | 'apertureWidest' | 'apertureSmallest', label: string,
): TemplateResult => field(key, label, {onType: (text) => { type(key, readNumber(text) === undefined ? text : `f/${text.trim()}`); }});

/** The f-number that a body shows which counts close-up in. The shot keeps it as engraved. */
export class ShownAperture {
  /** As typed, while it holds. */
  #typed: {readonly text: string; readonly problem?: Problem; readonly aperture?: number; readonly fieldWidth?: number} | undefined;

  view({words, shot, state: {texts, problems}, act, refused}: EntryHost): TemplateResult {
    const typed = this.#typed;
    const holds = typed?.problem || (typed?.aperture === shot.aperture && typed.fieldWidth === shot.fieldWidth);
    const shown = typed && holds ? typed
      : problems.aperture ? {text: texts.aperture ?? '', problem: problems.aperture} : {text: apertureText(words, shot.aperture, shot)};
    return textField({
      id: 'aperture', say: words.say, label: words.apertureWorking, hint: words.markedAs(words.say.aperture(shot.aperture)),
      text: shown.text, problem: shown.problem,
      onType: (text) => {
        const reading = readAperture(text, shot.clicksPerStop);
        if (reading instanceof Problem) {
          const problem = new Problem('aperture', text, reading.wanted);
          this.#typed = {text, problem};
          refused(problem);
          return;
        }
        const marked = markedFromWorking(reading.value, shot.sensorWidth / shot.fieldWidth, shot.pupilRatio);
        this.#typed = {text: readNumber(text) === undefined ? text : `f/${text.trim()}`, aperture: marked, fieldWidth: shot.fieldWidth};
        act({aperture: marked});
      },
    });
  }
}

/** The five that change from shot to shot. */
export function everyday(host: EntryHost, shown: ShownAperture): TemplateResult {
  const {words, shot} = host;
  return html`${shot.apertureShown === 'marked' ? apertureField(host, 'aperture', words.say.settingName('aperture')) : shown.view(host)}
    ${millimetreField(host, 'focalLength', words.focalLength)}
    ${lengthField(host, 'fieldWidth', words.fieldWidth, words.fieldWidthHint)}
    ${lengthField(host, 'baseDepth', words.baseDepth)}
    ${lengthField(host, 'focus', words.focus, words.focusHint)}`;
}
