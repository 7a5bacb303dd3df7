import type {TemplateResult} from 'lit';
import {SENSOR_FORMATS, nearestFormat} from '../../../core/optics/sensors.js';
import type {Shot} from '../../../core/shot/shot.js';
import {choiceField} from '../fields.js';
import type {Say} from '../say.js';
import type {SensorWords} from './words/en.js';

/** What the fields show, and what is to be done when a reader chooses. */
export interface SensorHost {
  readonly words: SensorWords & {readonly say: Say};
  readonly shot: Shot;
  readonly act: (changes: Partial<Shot>) => void;
}

/** A size within this share of a usual format goes by its name: sizes vary that much from body to body. */
const SAME_FORMAT = 0.012;

const isUpright = ({sensorWidth, sensorHeight}: Shot): boolean => sensorHeight > sensorWidth;

/** The usual sizes by name, or one's own numbers. */
export function formatField({words, shot, act}: SensorHost): TemplateResult {
  const {say} = words;
  const {format, off} = nearestFormat(shot.sensorWidth, shot.sensorHeight);
  return choiceField<string>({
    id: 'sensor-format', label: words.format, value: off < SAME_FORMAT ? format.id : 'own',
    options: [
      ...SENSOR_FORMATS.map(({id, name, width, height}) =>
        [id, `${words.formats[id] ?? say.typed(name)} (${say.number(width, 2)} × ${say.number(height, 2)})`] as const),
      ['own', words.own],
    ],
    onChoose: (id) => {
      const found = SENSOR_FORMATS.find((each) => each.id === id);
      if (found) act(isUpright(shot) ? {sensorWidth: found.height, sensorHeight: found.width} : {sensorWidth: found.width, sensorHeight: found.height});
    },
  });
}

/** Whether the camera is held wide or tall. */
export function heldField({words, shot, act}: SensorHost): TemplateResult {
  const upright = isUpright(shot);
  return choiceField<'wide' | 'tall'>({
    id: 'held', label: words.held, value: upright ? 'tall' : 'wide', options: [['wide', words.landscape], ['tall', words.portrait]],
    onChoose: (held) => { if ((held === 'tall') !== upright) act(turned(shot)); },
  });
}

/** The camera turned by a quarter where it stands: magnification and pixels per mm stay. */
function turned({sensorWidth, sensorHeight, fieldWidth, frameWidth}: Shot): Partial<Shot> {
  const share = sensorHeight / sensorWidth;
  return {
    sensorWidth: sensorHeight, sensorHeight: sensorWidth, fieldWidth: fieldWidth * share,
    frameWidth: Math.max(1, Math.round(frameWidth * share)),
  };
}
