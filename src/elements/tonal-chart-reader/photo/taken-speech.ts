import {SETTINGS, type Exposure} from '../../../core/exposure/stops.js';
import type {TakenPhoto} from '../../shared/photo/settings.js';
import {exposureText} from '../../shared/photo/way-speech.js';
import type {SheetWords} from './words/en.js';

/** A sensor known less exactly than this is about so wide, mm. */
const EXACT_MM = 0.01;

/** What the file told of the shot, and what it did not. */
export function takenText(words: SheetWords, photo: TakenPhoto, exposure: Exposure | undefined): string {
  const {say} = words;
  const {settings, settings: {focalLength, sensorWidth}} = photo;
  const mm = (length: number) => `${say.digits(length, 3)}\u00a0mm`;
  const read = [
    ...(exposure ? [exposureText(words, exposure)] : []),
    ...(focalLength === undefined ? [] : [words.lens(mm(focalLength))]),
    ...(sensorWidth === undefined ? [] : [words.sensor(mm(sensorWidth.mm), sensorWidth.within > EXACT_MM)]),
  ];
  if (read.length === 0) return words.fileSilent;
  const missing = [...SETTINGS, 'focalLength', 'sensorWidth'] as const;
  const lacks = missing.filter((name) => settings[name] === undefined).map((name) => words.missing[name]);
  return [words.fromFile(read.join(', ')), lacks.length ? words.notInFile(lacks.join(', '), lacks.length > 1) : ''].filter(Boolean).join(' ');
}
