import type {Exposure} from '../../core/exposure/stops.js';
import type {TakenPhoto} from '../shared/photo/settings.js';
import {exposure} from './words.js';

const S = '\u00a0';

/** What the file told of the shot, and what it did not. */
export function settingsSentence(photo: TakenPhoto, taken: Exposure | undefined): string {
  const {width, height, settings: {focalLength, sensorWidth}} = photo;
  const size = `${width}${S}×${S}${height}${S}px`;
  const lens = focalLength === undefined ? [] : [`${+focalLength.toPrecision(3)}${S}mm lens`];
  const sensor = sensorWidth === undefined ? []
    : [`${sensorWidth.within > 0.01 ? 'about ' : ''}${+sensorWidth.mm.toPrecision(3)}${S}mm of sensor`];
  const read = [...(taken ? [exposure(taken)] : []), ...lens, ...sensor];
  const missing = [...missingExposure(photo), ...(lens.length ? [] : ['focal length']), ...(sensor.length ? [] : ['sensor width'])];
  if (read.length === 0) return `${size}. The file does not say how it was taken: the settings stay as they stand here, taken for this photo’s.`;
  return `${size}. From the file: ${read.join(', ')}.${missing.length ? ` Not in it: ${missing.join(', ')}, so ${missing.length > 1 ? 'those stay' : 'that stays'} as set here.` : ''}`;
}

const SPOKEN = {aperture: 'aperture', shutter: 'shutter time', iso: 'ISO'} as const;

function missingExposure({settings}: TakenPhoto): string[] {
  return (['aperture', 'shutter', 'iso'] as const).filter((name) => settings[name] === undefined).map((name) => SPOKEN[name]);
}
