import {html, nothing, type TemplateResult} from 'lit';
import {fieldWidth, magnificationFromDistance} from '../../../core/optics/lens.js';
import {Problem} from '../../../core/problem.js';
import type {ApertureShown} from '../../../core/shot/shot.js';
import {readLength, type LengthUnit} from '../../../core/units.js';
import {choiceField, textField} from '../../shared/fields.js';
import {formatField, heldField} from '../../shared/sensor/sensor-fields.js';
import {apertureField, degreesField, lengthField, millimetreField, withUnit} from '../entries.js';
import {acrossText} from '../speech.js';
import type {FoldHost} from './host.js';

/** What reaches past the base, and how the camera looks at it. */
export function figureView(host: FoldHost): TemplateResult {
  const {fold} = host;
  return html`<div class="fields">
    ${lengthField(host, 'overhangFront', fold.overhangFront)}${lengthField(host, 'overhangFrontHeight', fold.overhangFrontHeight)}
    ${lengthField(host, 'overhangBack', fold.overhangBack)}${lengthField(host, 'overhangBackHeight', fold.overhangBackHeight)}
    ${lengthField(host, 'figureHeight', fold.figureHeight)}
    ${degreesField(host, 'tilt', fold.tilt)}
  </div>`;
}

/** What becomes of the frame, and what still counts as sharp. */
export function pictureView({fold, shot, reading, field, act}: FoldHost): TemplateResult {
  const {say} = fold;
  return html`<div class="fields">
      ${field('pictureWidth', fold.pictureWidth, {inputmode: 'numeric'})}
      ${field('frameWidth', fold.frameWidth, {inputmode: 'numeric'})}
      ${field('blurLimit', fold.blurLimit, {inputmode: 'decimal'})}
      ${choiceField<LengthUnit>({
        id: 'unit', label: fold.unit, value: shot.unit, options: [['mm', 'mm'], ['cm', 'cm'], ['in', fold.inches]], onChoose: (unit) => { act({unit}); },
      })}
    </div>
    ${reading ? html`<p class="note">${fold.kept(`${say.number(reading.picture.keptWidth, 1)}\u00a0mm`, acrossText({say}, reading.pixelsAcross))}</p>` : nothing}`;
}

/** Where the camera stands and what it can do. A distance can be typed instead of the field width. */
export class CameraFold {
  /** The distance as typed, while it holds. */
  #distance: {readonly text: string; readonly problem?: Problem; readonly fieldWidth?: number} | undefined;

  view(host: FoldHost): TemplateResult {
    const {fold, shot, field, act} = host;
    const sensor = {words: fold, shot, act};
    return html`<div class="fields">
      ${this.#distanceField(host)}
      ${lengthField(host, 'room', fold.room, fold.roomHint)}
      ${field('shutter', fold.say.settingName('shutter'))}
      ${formatField(sensor)}
      ${millimetreField(host, 'sensorWidth', fold.sensorWidth)}${millimetreField(host, 'sensorHeight', fold.sensorHeight)}
      ${heldField(sensor)}
      ${apertureField(host, 'apertureWidest', fold.apertureWidest)}${apertureField(host, 'apertureSmallest', fold.apertureSmallest)}
      ${choiceField<ApertureShown>({
        id: 'aperture-shown', label: fold.apertureShown, value: shot.apertureShown,
        options: [['marked', fold.marked], ['working', fold.working]], onChoose: (apertureShown) => { act({apertureShown}); },
      })}
      ${field('pupilRatio', fold.pupilRatio, {hint: fold.pupilRatioHint, inputmode: 'decimal'})}
    </div>`;
  }

  #distanceField({fold, shot, reading, act, refused}: FoldHost): TemplateResult {
    const typed = this.#distance;
    // Once the field is framed anew, what was typed is no longer true.
    const holds = typed && (typed.problem || typed.fieldWidth === shot.fieldWidth) ? typed : undefined;
    return textField({
      id: 'camera-distance', say: fold.say, label: fold.distance, hint: fold.distanceHint, problem: holds?.problem,
      text: holds?.text ?? (reading ? fold.say.fieldLength(reading.cameraDistance, shot.unit) : ''),
      onType: (typedText) => {
        const text = withUnit(typedText, shot.unit);
        try {
          const distance = readLength('camera-distance', text, shot.unit);
          if (distance instanceof Problem) throw distance;
          const width = fieldWidth(shot.sensorWidth, magnificationFromDistance(distance, shot.focalLength));
          this.#distance = {text, fieldWidth: width};
          act({fieldWidth: width});
        } catch (error) {
          if (!(error instanceof Problem)) throw error;
          const problem = new Problem(error.parameter, text, error.wanted);
          this.#distance = {text, problem};
          refused(problem);
        }
      },
    });
  }
}
