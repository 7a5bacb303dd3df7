import {attributeOf} from './field.js';
import {shotKeys} from './given.js';
import type {ShotKey} from './shot.js';

/** Part of a record under one heading. */
export interface LabelGroup {
  readonly heading: string;
  readonly labels: Readonly<Partial<Record<ShotKey, string>>>;
}

/** Values that are said in the line of settings, or as the note. */
export const SAID_APART: readonly ShotKey[] = ['aperture', 'shutter', 'iso', 'note'];

/** Every value of a shot under its heading, in the words of the trade. */
const GROUPS = (): readonly LabelGroup[] => [
  {heading: 'Exposure', labels: {
    meteredAperture: 'Metered aperture', meteredShutter: 'Metered shutter', meteredIso: 'Metered ISO', correction: 'Correction asked, stops',
    pay: 'Paid by', clicksPerStop: 'Clicks of the dials', apertureShown: 'Aperture shown', meteredMagnification: 'Metered at magnification',
    apertureWidest: 'Lens fully open', apertureSmallest: 'Lens fully closed', shutterFastest: 'Shortest time', shutterSlowest: 'Longest time',
    isoLowest: 'Base ISO', isoHighest: 'Highest ISO used',
  }},
  {heading: 'Camera', labels: {
    focalLength: 'Focal length', pupilRatio: 'Pupil magnification', sensorWidth: 'Sensor width', sensorHeight: 'Sensor height',
    fieldWidth: 'Field width', frameWidth: 'Frame width, px', crop: 'Crop kept', tilt: 'Tilt down, degrees', focus: 'Focus behind the base’s front edge',
    focalLengths: 'Lenses at hand', closestFocus: 'Closest focus', room: 'Room for the camera', mostFrames: 'Most frames',
  }},
  {heading: 'Figure', labels: {
    baseDepth: 'Base depth', overhangFront: 'Overhang in front', overhangFrontHeight: '… at height', overhangBack: 'Overhang behind',
    overhangBackHeight: '… at height', figureHeight: 'Figure height', figureWidth: 'Figure width',
  }},
  {heading: 'Picture', labels: {
    pictureWidth: 'Picture width, px', pictureHeight: 'Picture height, px', margin: 'Margin', blurLimit: 'Blur limit, px',
    leastContrast: 'Least contrast', intent: 'Meant to be', unit: 'Lengths in',
  }},
  {heading: 'Light and backdrop', labels: {
    lights: 'Lights', backdropDistance: 'Backdrop behind the base’s middle', backdropReflectance: 'Backdrop', backdropWish: 'Backdrop under the gray card, stops',
  }},
];

/** All values that have a label, and those that have none yet under a heading of their own. */
export function labelGroups(): readonly LabelGroup[] {
  const groups = GROUPS();
  const named = new Set(groups.flatMap(({labels}) => Object.keys(labels)));
  const rest = shotKeys().filter((key) => !named.has(key) && !SAID_APART.includes(key));
  return rest.length ? [...groups, {heading: 'Also set', labels: Object.fromEntries(rest.map((key) => [key, plainLabel(key)]))}] : groups;
}

/** Label of one value. */
export function labelOf(key: ShotKey): string {
  const apart: Readonly<Partial<Record<ShotKey, string>>> = {aperture: 'Aperture', shutter: 'Shutter', iso: 'ISO', note: 'Note'};
  return apart[key] ?? GROUPS().find(({labels}) => labels[key])?.labels[key]?.replace('…', `${plainLabel(key).replace(/ height$/, '')}`) ?? plainLabel(key);
}

/** A key in words: `baseDepth` → `Base depth`. */
function plainLabel(key: ShotKey): string {
  const words = attributeOf(key).replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
