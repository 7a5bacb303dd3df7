import {Problem} from '../problem.js';
import {readNumber} from '../units.js';
import type {ShotFields} from './field.js';
import {count, length, lengths, number} from './field-kinds.js';

type OpticsKey = 'focalLength' | 'pupilRatio' | 'sensorWidth' | 'sensorHeight' | 'fieldWidth' | 'frameWidth' | 'tilt' | 'focus'
  | 'focalLengths' | 'closestFocus' | 'room' | 'mostFrames' | 'leastContrast' | 'blurLimit'
  | 'baseDepth' | 'overhangFront' | 'overhangFrontHeight' | 'overhangBack' | 'overhangBackHeight' | 'figureHeight' | 'figureWidth';

/** Fields of camera, lens and figure. */
export const OPTICS_FIELDS: ShotFields<OpticsKey> = /* @__PURE__ */ fields();

function fields(): ShotFields<OpticsKey> {
  return {
    focalLength: length('focalLength', 1, 5000),
    pupilRatio: number('pupilRatio', 0.1, 10, 'a ratio above 0, 1 when unknown'),
    sensorWidth: length('sensorWidth', 1, 300),
    sensorHeight: length('sensorHeight', 1, 300),
    fieldWidth: length('fieldWidth', 1, 20_000),
    frameWidth: count('frameWidth'),
    blurLimit: number('blurLimit', 0.1, 100, 'a number of finished pixels, such as 1.5'),
    baseDepth: length('baseDepth', 1, 5000),
    overhangFront: length('overhangFront', 0, 5000),
    overhangFrontHeight: length('overhangFrontHeight', 0, 5000),
    overhangBack: length('overhangBack', 0, 5000),
    overhangBackHeight: length('overhangBackHeight', 0, 5000),
    figureHeight: length('figureHeight', 0, 5000),
    figureWidth: length('figureWidth', 1, 5000),
    tilt: number('tilt', -80, 80, 'degrees from −80 to 80', /\s*(°|deg(rees?)?)\s*$/i),
    focus: length('focus', -10_000, 10_000),
    focalLengths: lengths('focalLengths', 1, 5000, 'focal lengths such as 50, 60, 100 mm'),
    closestFocus: lengths('closestFocus', 1, 100_000, 'distances such as 25, 40 cm, one for each lens', true),
    room: length('room', 20, 100_000),
    mostFrames: {
      read: (text) => wholeFrames(readNumber(text.replace(/\s*frames?\s*$/i, '')), text),
      write: String,
      refuse: (value) => { const frames = wholeFrames(value, value); return frames instanceof Problem ? frames : undefined; },
    },
    leastContrast: number('leastContrast', 0.01, 1, 'a contrast from 0.01 to 1'),
  };
}

function wholeFrames(value: number | undefined, given: unknown): number | Problem {
  return Number.isInteger(value) && value as number >= 1 && value as number <= 60 ? value as number
    : new Problem('most-frames', given, 'a whole number of frames from 1 to 60');
}
