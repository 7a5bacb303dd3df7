import {html, type TemplateResult} from 'lit';
import type {ApertureShown} from '../../core/shot/shot.js';
import type {LengthUnit} from '../../core/units.js';
import {choiceField} from '../shared/fields.js';
import {formatField, heldField} from '../shared/sensor/sensor-fields.js';
import type {UnfoldedWords} from './book.js';
import {lengthField, type EntryHost} from './entries.js';

/** With the words of the folds. */
export interface SetUpHost extends EntryHost { readonly words: UnfoldedWords }

/** The figure's measures, which its outline has too. */
export function figureFields(host: SetUpHost): TemplateResult {
  const {field, shot, words} = host;
  return html`<div class="fields">
    ${lengthField(host, 'baseDepth', words.baseDepth)}${lengthField(host, 'overhangFront', words.overhangFront)}${lengthField(host, 'overhangFrontHeight', words.overhangFrontHeight)}
    ${lengthField(host, 'overhangBack', words.overhangBack)}${lengthField(host, 'overhangBackHeight', words.overhangBackHeight)}${lengthField(host, 'figureHeight', words.figureHeight)}
    ${lengthField(host, 'figureWidth', words.figureWidth)}${field('tilt', words.lookingDown, {write: () => `${words.say.number(shot.tilt, 1)}°`})}
  </div>`;
}

/** What camera and lens are, and what they can do. */
export function cameraFields(host: SetUpHost): TemplateResult {
  const {field, shot, act, words} = host;
  return html`<div class="fields">
    ${formatField(host)}${heldField(host)}
    ${field('sensorWidth', words.sensorWidth)}${field('sensorHeight', words.sensorHeight)}
    ${field('frameWidth', words.frameWidth, {inputmode: 'numeric'})}
    ${field('apertureWidest', words.apertureWidest)}${field('apertureSmallest', words.apertureSmallest)}
    ${field('shutterFastest', words.shutterFastest)}${field('shutterSlowest', words.shutterSlowest)}
    ${field('closestFocus', words.closestFocus, {hint: words.closestFocusHint})}
    ${choiceField<ApertureShown>({
      id: 'aperture-shown', label: words.apertureShown, value: shot.apertureShown,
      options: [['marked', words.marked], ['working', words.working]], onChoose: (apertureShown) => { act({apertureShown}); },
    })}
    ${field('pupilRatio', words.pupilRatio, {hint: words.pupilRatioHint, inputmode: 'decimal'})}
    ${field('meteredMagnification', words.meteredMagnification, {
      hint: words.meteredMagnificationHint, inputmode: 'decimal', write: () => words.say.digits(shot.meteredMagnification, 3),
    })}
  </div>`;
}

/** How sharp is sharp enough, how many frames may be blended, and the unit of all lengths. */
export function sharpFields({field, shot, act, words}: SetUpHost): TemplateResult {
  return html`<div class="fields">
    ${field('blurLimit', words.blurLimit, {inputmode: 'decimal'})}
    ${field('leastContrast', words.leastContrast, {hint: words.leastContrastHint, inputmode: 'decimal'})}
    ${field('mostFrames', words.mostFrames, {hint: words.mostFramesHint, inputmode: 'numeric'})}
    ${choiceField<LengthUnit>({
      id: 'unit', label: words.unit, value: shot.unit, options: [['mm', 'mm'], ['cm', 'cm'], ['in', words.inches]], onChoose: (unit) => { act({unit}); },
    })}
  </div>`;
}
