import type {FileKind} from '../../photo/kind.js';
import type {PhotoProblem} from '../../photo/problem.js';
import type {Exposure} from '../../core/exposure/stops.js';
import {exposure} from './words.js';
import type {TakenPhoto} from './settings.js';

/** No-break space. */
const S = '\u00a0';

/** Kinds of file as they are spoken of. */
const KINDS: Readonly<Partial<Record<FileKind, string>>> = {
  avif: 'an AVIF', tiff: 'a TIFF', 'jpeg-xl': 'a JPEG XL', 'jpeg-2000': 'a JPEG 2000', layers: 'a layered picture',
  video: 'a film', document: 'a document', drawing: 'a drawing made of lines',
};

/** What is wrong with a file and what to do about it. */
export function trouble(problem: PhotoProblem): string {
  const file = problem.name ? `“${problem.name}”` : 'What was given';
  const kind = KINDS[problem.kind] ?? 'a picture';
  switch (problem.problem) {
    case 'empty': return `${file} is empty: there is nothing in the file. Copy it from the camera again.`;
    case 'unreadable': return `${file} could not be read: it may have been moved or taken away. Choose it again.`;
    case 'not-a-picture': return `${file} is ${KINDS[problem.kind] ?? 'no picture that can be recognised'}. Choose a photo saved as JPEG, PNG, WebP or AVIF.`;
    case 'raw': return `${file} is a raw file, straight from the sensor, and has no tones yet. Develop it, or choose the JPEG that was saved with it.`;
    case 'heic': return `${file} is in a phone’s space-saving format (HEIC) that this browser does not open. Set the phone to save in the most compatible format, or export the photo as JPEG.`;
    case 'unsupported': return `${file} is ${kind} file, which this browser does not open. Export it as JPEG or PNG.`;
    case 'cut-short': return `${file} stops before its end, as when a copy was broken off. Copy or send it again.`;
    case 'too-large': return `${file} is too large to hold${sizeOf(problem)}. Export it smaller.`;
    case 'damaged': return `${file} is damaged inside and cannot be shown. Copy it from the camera again, or open it elsewhere and export it as JPEG.`;
  }
}

function sizeOf({width, height, limit}: PhotoProblem): string {
  if (limit && 'bytes' in limit) return `: more than ${Math.round(limit.bytes / 2 ** 20)}${S}MB`;
  const most = limit ? `, and ${Math.round(limit.pixels / 1e6)} megapixels is the most` : '';
  return width && height ? `: ${width}${S}×${S}${height} pixels${most}` : '';
}

/** What to say of an address that gave no photo. */
export function notLoaded(src: string, why: string): string {
  return `The photo at “${src}” did not load (${why}). Choose one of your own, or look whether the address is right.`;
}

/** Sentence for {@link notLoaded} when the network gave nothing at all. */
export const NO_ANSWER = 'no answer from there';

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
