import {html, type TemplateResult} from 'lit';
import {SENSOR_FORMATS, nearestFormat} from '../../core/optics/sensors.js';
import type {ApertureShown, Shot} from '../../core/shot/shot.js';
import type {LengthUnit} from '../../core/units.js';
import {choiceField} from '../shared/fields.js';
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
    ${sensorFields(host)}
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

/** A size within this share of a usual format goes by its name: sizes vary that much from body to body. */
const SAME_FORMAT = 0.012;

function sensorFields({field, shot, act, words}: SetUpHost): TemplateResult {
  const {sensorWidth, sensorHeight} = shot;
  const {format, off} = nearestFormat(sensorWidth, sensorHeight);
  const upright = sensorHeight > sensorWidth;
  const {say} = words;
  return html`${choiceField<string>({
      id: 'sensor-format', label: words.format, value: off < SAME_FORMAT ? format.id : 'own',
      options: [
        ...SENSOR_FORMATS.map(({id, name, width, height}) =>
          [id, `${words.formats[id] ?? say.typed(name)} (${say.number(width, 2)} × ${say.number(height, 2)})`] as const),
        ['own', words.own],
      ],
      onChoose: (id) => {
        const found = SENSOR_FORMATS.find((each) => each.id === id);
        if (found) act(upright ? {sensorWidth: found.height, sensorHeight: found.width} : {sensorWidth: found.width, sensorHeight: found.height});
      },
    })}
    ${choiceField<'wide' | 'tall'>({
      id: 'held', label: words.held, value: upright ? 'tall' : 'wide', options: [['wide', words.landscape], ['tall', words.portrait]],
      onChoose: (held) => { if ((held === 'tall') !== upright) act(turned(shot)); },
    })}
    ${field('sensorWidth', words.sensorWidth)}${field('sensorHeight', words.sensorHeight)}
    ${field('frameWidth', words.frameWidth, {inputmode: 'numeric'})}`;
}

/** The camera turned by a quarter where it stands: magnification and pixels per mm stay. */
function turned({sensorWidth, sensorHeight, fieldWidth, frameWidth}: Shot): Partial<Shot> {
  const share = sensorHeight / sensorWidth;
  return {
    sensorWidth: sensorHeight, sensorHeight: sensorWidth, fieldWidth: fieldWidth * share,
    frameWidth: Math.max(1, Math.round(frameWidth * share)),
  };
}
