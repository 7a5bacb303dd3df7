import {html, nothing, type TemplateResult} from 'lit';
import type {Problem} from '../../core/problem.js';
import {SENSOR_FORMATS, nearestFormat} from '../../core/optics/sensors.js';
import type {ApertureShown, Shot, ShotKey} from '../../core/shot/shot.js';
import {readNumber, type LengthUnit} from '../../core/units.js';
import {choiceField, textField, type TextField} from '../shared/fields.js';
import type {Reading} from './reading.js';
import {fieldLength} from './lengths.js';
import {FIELDS, kept} from './words.js';

/** What the entries need of their element. */
export interface EntryHost {
  readonly shot: Shot;
  readonly field: (key: ShotKey, label: string, more?: Partial<TextField> & {readonly write?: () => string}) => TemplateResult;
  readonly act: (changes: Partial<Shot>) => void;
  readonly type: (key: ShotKey, text: string) => void;
  /** The distance as typed, while it holds. */
  readonly distance: {readonly text: string; readonly problem?: Problem | undefined} | undefined;
  readonly typeDistance: (text: string) => void;
  /** The f-number as the body shows it: as typed, or written out. */
  readonly shown: {readonly text: string; readonly problem?: Problem | undefined};
  readonly typeShown: (text: string) => void;
}

type LengthKey = 'fieldWidth' | 'baseDepth' | 'focus' | 'overhangFront' | 'overhangFrontHeight' | 'overhangBack'
  | 'overhangBackHeight' | 'figureHeight';

/** A bare number typed while inches are shown means inches. */
export function withUnit(text: string, unit: LengthUnit): string {
  return unit !== 'mm' && readNumber(text) !== undefined ? `${text.trim()} ${unit}` : text;
}

function lengthField(host: EntryHost, key: LengthKey, hint?: string): TemplateResult {
  const {shot} = host;
  return host.field(key, FIELDS[key], {
    hint,
    write: () => fieldLength(shot[key], shot.unit),
    onType: (text) => { host.type(key, withUnit(text, shot.unit)); },
  });
}

/** The five that change from shot to shot. */
export function everyday(host: EntryHost): TemplateResult {
  return html`${host.shot.apertureShown === 'marked' ? host.field('aperture', FIELDS.aperture)
    : textField({
      id: 'aperture', label: FIELDS.apertureWorking, hint: FIELDS.markedAs(host.shot.aperture), ...host.shown, onType: host.typeShown,
    })}
    ${host.field('focalLength', FIELDS.focalLength)}
    ${lengthField(host, 'fieldWidth', FIELDS.fieldWidthHint)}
    ${lengthField(host, 'baseDepth')}
    ${lengthField(host, 'focus', FIELDS.focusHint)}`;
}

/** Everything that is set up once. */
export function setUp(host: EntryHost, reading: Reading | undefined): TemplateResult {
  return html`<details>
      <summary>${FIELDS.figure}</summary>
      <div class="fields">
        ${lengthField(host, 'overhangFront')}${lengthField(host, 'overhangFrontHeight')}
        ${lengthField(host, 'overhangBack')}${lengthField(host, 'overhangBackHeight')}
        ${lengthField(host, 'figureHeight')}${host.field('tilt', FIELDS.tilt, {write: () => `${+host.shot.tilt.toFixed(1)}°`})}
      </div>
    </details>
    <details>
      <summary>${FIELDS.camera}</summary>
      <div class="fields">
        ${distanceField(host, reading)}
        ${host.field('shutter', FIELDS.shutter)}
        ${sensorFields(host)}
        ${host.field('apertureWidest', FIELDS.apertureWidest)}${host.field('apertureSmallest', FIELDS.apertureSmallest)}
        ${choiceField<ApertureShown>({
          id: 'aperture-shown', label: FIELDS.apertureShown, value: host.shot.apertureShown,
          options: [['marked', FIELDS.marked], ['working', FIELDS.working]], onChoose: (apertureShown) => { host.act({apertureShown}); },
        })}
        ${host.field('pupilRatio', FIELDS.pupilRatio, {hint: FIELDS.pupilRatioHint, inputmode: 'decimal'})}
      </div>
    </details>
    <details>
      <summary>${FIELDS.picture}</summary>
      <div class="fields">
        ${host.field('pictureWidth', FIELDS.pictureWidth, {inputmode: 'numeric'})}
        ${host.field('frameWidth', FIELDS.frameWidth, {inputmode: 'numeric'})}
        ${host.field('blurLimit', FIELDS.blurLimit, {inputmode: 'decimal'})}
        ${choiceField<LengthUnit>({
          id: 'unit', label: FIELDS.unit, value: host.shot.unit, options: [['mm', 'mm'], ['cm', 'cm'], ['in', 'in']],
          onChoose: (unit) => { host.act({unit}); },
        })}
      </div>
      ${reading ? html`<p class="note">${kept(reading)}</p>` : nothing}
    </details>`;
}

function distanceField({shot, distance, typeDistance}: EntryHost, reading: Reading | undefined): TemplateResult {
  return textField({
    id: 'camera-distance', label: FIELDS.distance, hint: FIELDS.distanceHint,
    text: distance?.text ?? (reading ? fieldLength(reading.cameraDistance, shot.unit) : ''),
    problem: distance?.problem,
    onType: typeDistance,
  });
}

/** A size within this share of a usual format goes by its name. */
const SAME_FORMAT = 0.012;

function sensorFields(host: EntryHost): TemplateResult {
  const {sensorWidth, sensorHeight} = host.shot;
  const {format, off} = nearestFormat(sensorWidth, sensorHeight);
  const upright = sensorHeight > sensorWidth;
  return html`${choiceField<string>({
      id: 'sensor-format', label: FIELDS.format, value: off < SAME_FORMAT ? format.id : 'own',
      options: [...SENSOR_FORMATS.map(({id, name, width, height}) => [id, `${name} (${width} × ${height})`] as const), ['own', FIELDS.own]],
      onChoose: (id) => {
        const found = SENSOR_FORMATS.find((each) => each.id === id);
        if (found) host.act(upright ? {sensorWidth: found.height, sensorHeight: found.width} : {sensorWidth: found.width, sensorHeight: found.height});
      },
    })}
    ${host.field('sensorWidth', FIELDS.sensorWidth)}${host.field('sensorHeight', FIELDS.sensorHeight)}
    ${choiceField<'wide' | 'tall'>({
      id: 'held', label: FIELDS.held, value: upright ? 'tall' : 'wide', options: [['wide', FIELDS.landscape], ['tall', FIELDS.portrait]],
      onChoose: (held) => { if ((held === 'tall') !== upright) host.act(turned(host.shot)); },
    })}`;
}

/** The camera turned by a quarter where it stands: magnification and pixels per mm stay. */
function turned({sensorWidth, sensorHeight, fieldWidth, frameWidth}: Shot): Partial<Shot> {
  const share = sensorHeight / sensorWidth;
  return {
    sensorWidth: sensorHeight, sensorHeight: sensorWidth, fieldWidth: fieldWidth * share,
    frameWidth: Math.max(1, Math.round(frameWidth * share)),
  };
}
