import {shotKeys} from './given.js';
import type {ShotKey} from './shot.js';
import type {SheetHeading} from './sheet-words.js';

/** Values that are said in the line of settings, or as the note. */
export const SAID_APART: readonly ShotKey[] = ['aperture', 'shutter', 'iso', 'note'];

const GROUPS = (): readonly (readonly [SheetHeading, readonly ShotKey[]])[] => [
  ['exposure', [
    'meteredAperture', 'meteredShutter', 'meteredIso', 'correction', 'pay', 'clicksPerStop', 'apertureShown', 'meteredMagnification',
    'apertureWidest', 'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'isoLowest', 'isoHighest',
  ]],
  ['camera', [
    'focalLength', 'pupilRatio', 'sensorWidth', 'sensorHeight', 'fieldWidth', 'frameWidth', 'crop', 'tilt', 'focus', 'focalLengths',
    'closestFocus', 'room', 'mostFrames',
  ]],
  ['figure', ['baseDepth', 'overhangFront', 'overhangFrontHeight', 'overhangBack', 'overhangBackHeight', 'figureHeight', 'figureWidth']],
  ['picture', ['pictureWidth', 'pictureHeight', 'margin', 'blurLimit', 'leastContrast', 'intent', 'unit']],
  ['light', ['lights', 'backdropDistance', 'backdropReflectance', 'backdropWish']],
];

/** Every value of a record under its heading; those that were not given one stand under one of their own. */
export function keyGroups(): readonly (readonly [SheetHeading, readonly ShotKey[]])[] {
  const groups = GROUPS();
  const named = new Set([...groups.flatMap(([, keys]) => keys), ...SAID_APART]);
  const rest = shotKeys().filter((key) => !named.has(key));
  return rest.length ? [...groups, ['also', rest]] : groups;
}
