import {html, type TemplateResult} from 'lit';
import type {Problem} from '../../core/problem.js';
import {SENSOR_FORMATS, nearestFormat} from '../../core/optics/sensors.js';
import type {ApertureShown, Shot, ShotKey} from '../../core/shot/shot.js';
import {readNumber, type LengthUnit} from '../../core/units.js';
import {choiceField, textField, type TextField} from '../shared/fields.js';
import {FIELDS, fieldLength} from './words.js';

/** What the entries need of their element. */
export interface EntryHost {
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

const lengthField = (host: EntryHost, key: LengthKey, hint?: string): TemplateResult => host.field(key, FIELDS[key], {
  hint, write: () => fieldLength(host.shot[key], host.shot.unit), onType: (text) => { host.type(key, withUnit(text, host.shot.unit)); },
});

/** The wishes that change from figure to figure. */
export function everyday(host: EntryHost): TemplateResult {
  const {field, shot} = host;
  return html`${field('focalLengths', FIELDS.focalLengths, {hint: FIELDS.focalLengthsHint})}
    ${lengthField(host, 'room', FIELDS.roomHint)}
    ${field('pictureWidth', FIELDS.pictureWidth, {inputmode: 'numeric'})}${field('pictureHeight', FIELDS.pictureHeight, {inputmode: 'numeric'})}
    ${field('margin', FIELDS.margin, {hint: FIELDS.marginHint})}
    ${shot.apertureShown === 'marked' ? field('meteredAperture', FIELDS.metered)
      : textField({id: 'metered-aperture', label: FIELDS.meteredWorking, ...host.shown, onType: host.typeShown})}
    ${field('meteredShutter', FIELDS.meteredShutter)}`;
}

/** Everything that is set up once. */
export function setUp(host: EntryHost): TemplateResult {
  const {field, shot, act} = host;
  return html`<div class="set-up screen-only"><details>
      <summary>${FIELDS.figure}</summary>
      <div class="fields">
        ${lengthField(host, 'baseDepth')}${lengthField(host, 'overhangFront')}${lengthField(host, 'overhangFrontHeight')}
        ${lengthField(host, 'overhangBack')}${lengthField(host, 'overhangBackHeight')}${lengthField(host, 'figureHeight')}
        ${lengthField(host, 'figureWidth')}${field('tilt', FIELDS.tilt, {write: () => `${+shot.tilt.toFixed(1)}°`})}
      </div>
    </details>
    <details>
      <summary>${FIELDS.camera}</summary>
      <div class="fields">
        ${sensorFields(host)}
        ${field('apertureWidest', FIELDS.apertureWidest)}${field('apertureSmallest', FIELDS.apertureSmallest)}
        ${field('shutterFastest', FIELDS.shutterFastest)}${field('shutterSlowest', FIELDS.shutterSlowest)}
        ${field('closestFocus', FIELDS.closestFocus, {hint: FIELDS.closestFocusHint})}
        ${choiceField<ApertureShown>({
          id: 'aperture-shown', label: FIELDS.apertureShown, value: shot.apertureShown,
          options: [['marked', FIELDS.marked], ['working', FIELDS.working]], onChoose: (apertureShown) => { act({apertureShown}); },
        })}
        ${field('pupilRatio', FIELDS.pupilRatio, {hint: FIELDS.pupilRatioHint, inputmode: 'decimal'})}
        ${field('meteredMagnification', FIELDS.meteredMagnification, {
          hint: FIELDS.meteredMagnificationHint, inputmode: 'decimal', write: () => String(+shot.meteredMagnification.toPrecision(3)),
        })}
      </div>
    </details>
    <details>
      <summary>${FIELDS.sharp}</summary>
      <div class="fields">
        ${field('blurLimit', FIELDS.blurLimit, {inputmode: 'decimal'})}${field('leastContrast', FIELDS.leastContrast, {inputmode: 'decimal'})}
        ${field('mostFrames', FIELDS.mostFrames, {hint: FIELDS.mostFramesHint, inputmode: 'numeric'})}
        ${choiceField<LengthUnit>({
          id: 'unit', label: FIELDS.unit, value: shot.unit, options: [['mm', 'mm'], ['cm', 'cm'], ['in', 'in']], onChoose: (unit) => { act({unit}); },
        })}
      </div>
    </details></div>`;
}

/** A size within this share of a usual format goes by its name: sizes vary that much from body to body. */
const SAME_FORMAT = 0.012;

function sensorFields({field, shot, act}: EntryHost): TemplateResult {
  const {sensorWidth, sensorHeight} = shot;
  const {format, off} = nearestFormat(sensorWidth, sensorHeight);
  const upright = sensorHeight > sensorWidth;
  return html`${choiceField<string>({
      id: 'sensor-format', label: FIELDS.format, value: off < SAME_FORMAT ? format.id : 'own',
      options: [...SENSOR_FORMATS.map(({id, name, width, height}) => [id, `${name} (${width} × ${height})`] as const), ['own', FIELDS.own]],
      onChoose: (id) => {
        const found = SENSOR_FORMATS.find((each) => each.id === id);
        if (found) act(upright ? {sensorWidth: found.height, sensorHeight: found.width} : {sensorWidth: found.width, sensorHeight: found.height});
      },
    })}
    ${choiceField<'wide' | 'tall'>({
      id: 'held', label: FIELDS.held, value: upright ? 'tall' : 'wide', options: [['wide', FIELDS.landscape], ['tall', FIELDS.portrait]],
      onChoose: (held) => { if ((held === 'tall') !== upright) act(turned(shot)); },
    })}
    ${field('sensorWidth', FIELDS.sensorWidth)}${field('sensorHeight', FIELDS.sensorHeight)}
    ${field('frameWidth', FIELDS.frameWidth, {inputmode: 'numeric'})}`;
}

/** The camera turned by a quarter where it stands: magnification and pixels per mm stay. */
function turned({sensorWidth, sensorHeight, fieldWidth, frameWidth}: Shot): Partial<Shot> {
  const share = sensorHeight / sensorWidth;
  return {
    sensorWidth: sensorHeight, sensorHeight: sensorWidth, fieldWidth: fieldWidth * share,
    frameWidth: Math.max(1, Math.round(frameWidth * share)),
  };
}
