import {html, type TemplateResult} from 'lit';
import {readAperture} from '../../core/exposure/read.js';
import {markedFromWorking} from '../../core/optics/lens.js';
import {Problem} from '../../core/problem.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';
import {readNumber} from '../../core/units.js';
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

/** An f-number typed as a bare number, as it is written on a lens. */
const asAperture = (text: string): string => (readNumber(text) === undefined ? text : `f/${text.trim()}`);

type FieldHost = Pick<EntryHost, 'words' | 'shot' | 'state' | 'field' | 'type'>;

/** What was said for a value, marked up with what it was taken for; nothing where it was not said or could not be read. */
const said = ({state: {texts, problems}}: FieldHost, key: ShotKey, mark: (text: string) => string): {readonly text?: string} => {
  const text = texts[key];
  return text === undefined || problems[key] ? {} : {text: mark(text)};
};

/** Bare numbers of a page are mm, whatever is shown. */
const inMillimetres = (text: string): string => withUnit(text, 'mm');

type Measured = 'fieldWidth' | 'baseDepth' | 'focus' | 'overhangFront' | 'overhangFrontHeight' | 'overhangBack' | 'overhangBackHeight'
  | 'figureHeight' | 'room';

/** A length in the reader's unit. */
export function lengthField(host: FieldHost, key: Measured, label: string, hint?: string): TemplateResult {
  const {words: {say}, shot, field, type} = host;
  return field(key, label, {
    hint, write: () => say.fieldLength(shot[key], shot.unit), onType: (text) => { type(key, withUnit(text, shot.unit)); },
    ...said(host, key, inMillimetres),
  });
}

/** A length of lens or body: mm whatever else is. */
export const millimetreField = (host: FieldHost, key: 'focalLength' | 'sensorWidth' | 'sensorHeight', label: string): TemplateResult =>
  host.field(key, label, {onType: (text) => { host.type(key, inMillimetres(text)); }, ...said(host, key, inMillimetres)});

/** An f-number as engraved. */
export const apertureField = (host: FieldHost, key: 'aperture' | 'apertureWidest' | 'apertureSmallest', label: string): TemplateResult =>
  host.field(key, label, {onType: (text) => { host.type(key, asAperture(text)); }, ...said(host, key, asAperture)});

/** Degrees. */
export const degreesField = (host: FieldHost, key: 'tilt', label: string): TemplateResult => host.field(key, label, {
  write: () => `${host.words.say.number(host.shot[key], 1)}°`, onType: (text) => { host.type(key, asDegrees(text)); }, ...said(host, key, asDegrees),
});

const asDegrees = (text: string): string => (readNumber(text) === undefined ? text : `${text.trim()}°`);

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
        this.#typed = {text: asAperture(text), aperture: marked, fieldWidth: shot.fieldWidth};
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
