import type {OutlinePart} from '../../core/optics/outline.js';
import type {Problem} from '../../core/problem.js';
import {writeAperture, writeIso, writeShutter, writeStops} from '../../core/exposure/write.js';
import type {Shot} from '../../core/shot/shot.js';
import {MM_PER_INCH, lengthIn, type LengthUnit} from '../../core/units.js';
import type {Reading} from './reading.js';
import type {Way} from './ways.js';

const NBSP = '\u00a0';

/** Digits after the point, without zeros that say nothing, never −0. */
const plain = (value: number, digits: number): string => String(+value.toFixed(digits) + 0).replace('-', '−');

/** Text whose blanks do not break. */
const tight = (text: string): string => text.replaceAll(' ', NBSP);

/** `2 900`, thousands set apart by a thin space that does not break. */
export const whole = (value: number): string => String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, '\u202f');

/**
 * Size of a length, sign left out, as finely as anybody can point: 9.4 mm, 41 mm, 1.2 cm, 2 3/8 in.
 * @param fine - hundredths, where two lengths would otherwise read alike
 */
export function length(mm: number, unit: LengthUnit, fine = false): string {
  const size = Math.abs(mm);
  if (fine) return `${plain(lengthIn(size, unit), 2)}${NBSP}${unit}`;
  if (unit === 'in') return `${inches(size / MM_PER_INCH)}${NBSP}in`;
  const text = unit === 'cm' ? plain(size / 10, size < 9.95 ? 2 : 1) : plain(size, size < 9.95 ? 1 : 0);
  return `${size >= 1000 && unit === 'mm' ? whole(size) : text}${NBSP}${unit}`;
}

function inches(size: number): string {
  const per = size < 12 ? 16 : 4;
  const parts = Math.round(size * per);
  if (parts === 0) return plain(size, 2);
  let [over, under] = [parts % per, per];
  while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
  return [Math.floor(parts / per) || '', over ? `${over}/${under}` : ''].filter(Boolean).join(NBSP);
}

/** A length to go into a field: exact enough to be taken back. */
export function fieldLength(mm: number, unit: LengthUnit): string {
  const sixteenths = mm / MM_PER_INCH * 16;
  if (unit === 'in') {
    return Math.abs(sixteenths - Math.round(sixteenths)) < 0.001 && sixteenths > 0
      ? `${inches(mm / MM_PER_INCH)} in` : `${plain(mm / MM_PER_INCH, 3)} in`;
  }
  return unit === 'cm' ? `${plain(mm / 10, 2)} cm` : `${plain(mm, 1)} mm`;
}

/** `3.4 px`. */
export const pixels = (value: number): string => `${value < 9.95 ? plain(value, 1) : whole(value)}${NBSP}px`;

/** A mark on the ruler as a place to point at. */
export function place(mark: number, unit: LengthUnit): string {
  if (Math.abs(mark) < 0.05) return 'at the base’s front edge';
  return mark < 0 ? `${length(mark, unit)} before the base` : `${length(mark, unit)} behind the base’s front edge`;
}

function stretch({from, to, shot: {unit}}: Reading): string {
  if (to === Infinity) return `Sharp from ${place(from, unit)} on, without end.`;
  const fine = length(from, unit) === length(to, unit) && from * to > 0;
  const [one, other] = [length(from, unit, fine), length(to, unit, fine)];
  if (to < 0) return `Sharp from ${one} to ${other} before the base.`;
  if (from < 0) return `Sharp from ${one} before the base to ${other} behind its front edge.`;
  return `Sharp from ${one} to ${other} behind the base’s front edge.`;
}

const PARTS: Readonly<Record<OutlinePart, string>> = {
  'base-front': 'front edge', 'base-back': 'back edge', 'overhang-front': 'foremost tip', 'overhang-back': 'rearmost tip',
  top: 'top', point: 'point',
};

function missing({fit, from, to, front, back, shot: {unit}}: Reading): string {
  const [foremost, rearmost] = [PARTS[fit.depth.foremost.part], PARTS[fit.depth.rearmost.part]];
  const [before, behind] = [length(from - front, unit), length(back - to, unit)];
  switch (fit.end) {
    case 'front': return `The ${foremost} is ${before} outside.`;
    case 'back': return `The ${rearmost} is ${behind} outside.`;
    case 'both': return `The ${foremost} is ${before} outside, the ${rearmost} ${behind}.`;
    case null: return '';
  }
}

/** The verdict: what is sharp, and what is not, by how much. */
export function verdict(reading: Reading): string {
  const {fit, from, to, front, back, shot: {unit}} = reading;
  if (fit.end !== null) return `${stretch(reading)} ${missing(reading)}`;
  if (to === Infinity) return `Everything is sharp, with ${length(front - from, unit)} to spare in front and no end behind.`;
  return `Everything is sharp, with ${length(front - from, unit)} to spare in front and ${length(to - back, unit)} behind.`;
}

/** What the verdict rests on. */
export function reason({shot, front, back}: Reading): string {
  const {unit} = shot;
  return `${writeAperture(shot.aperture)} has to hold ${length(back - front, unit)} of depth; sharp means blurred by no more than ${
    pixels(shot.blurLimit)} in a picture ${whole(shot.pictureWidth)}${NBSP}px wide.`;
}

/** Why even the focus plane is soft, when it is. */
export function diffraction({airy, shot}: Reading): string | undefined {
  if (airy <= shot.blurLimit) return undefined;
  return `So small an opening softens everything, in focus too: diffraction draws a point ${pixels(airy)} wide, the limit is ${
    pixels(shot.blurLimit)}.`;
}

/** What a way is called on its button. */
export function wayTitle({kind, changes, back}: Way, {unit}: Shot): string {
  const aperture = writeAperture(changes.aperture ?? 1);
  switch (kind) {
    case 'refocus': return `Focus ${place(changes.focus ?? 0, unit)}`;
    case 'stop-down': return `Stop down to ${aperture}`;
    case 'open-up': return `Open up to ${aperture}`;
    case 'move-back': return `Camera ${length(back, unit)} back, same picture cropped`;
    case 'both': return `Camera ${length(back, unit)} back, cropped, and ${aperture}`;
  }
}

/** What it costs, sentence by sentence. */
export function wayCost(way: Way, shot: Shot): string {
  const {changes, pixelsLeft, rounding, light, outside, diffracted} = way;
  const {unit} = shot;
  const said: string[] = [];
  if (outside > 0) said.push(`Still leaves ${length(outside, unit)} outside.`);
  if (way.kind === 'refocus') said.push('Costs nothing.');
  if (changes.shutter !== undefined) {
    said.push(changes.shutter === shot.shutter ? 'Shutter unchanged.'
      : `${tight(writeShutter(changes.shutter))} instead of ${tight(writeShutter(shot.shutter))}.`);
  } else if (way.back) said.push('Shutter unchanged.');
  if (changes.iso !== undefined && changes.iso !== shot.iso) said.push(`${tight(writeIso(changes.iso))}, the shutter goes no further.`);
  if (Math.abs(rounding) > 0.05) said.push(`The picture gets ${stops(rounding)}.`);
  if (way.back) {
    said.push(`${whole(pixelsLeft)}${NBSP}px left of the ${whole(shot.pictureWidth)} you need.`);
    said.push(`Frame ${length(changes.fieldWidth ?? 0, unit)} by the ruler.`);
  }
  if (light > 0.15) said.push(`Less light is lost to close-up: ${stops(light)}.`);
  if (changes.focus !== undefined && way.kind !== 'refocus') said.push(`Focus ${place(changes.focus, unit)}.`);
  if (diffracted) said.push('Diffraction then shows more than your limit.');
  return said.join(' ');
}

function stops(value: number): string {
  const size = writeStops(Math.abs(value), Math.abs(value) < 0.17 ? 2 : undefined).slice(1);
  return `${size}${NBSP}stop${Math.abs(value) > 1.17 ? 's' : ''} ${value > 0 ? 'brighter' : 'darker'}`;
}

/** Why there are no more ways, a sentence each. */
export function dead({ways, shot}: Reading): readonly string[] {
  const {unit} = shot;
  const said: string[] = [];
  if (ways.tooSmall !== undefined) {
    said.push(Number.isFinite(ways.tooSmall)
      ? `Aperture alone: it would take f/${plain(ways.tooSmall, 0)}, and the lens closes to ${writeAperture(shot.apertureSmallest)}.`
      : 'Aperture alone: no opening is small enough.');
  }
  if (ways.tooFar) {
    said.push(`Distance alone: ${length(ways.tooFar.by, unit)} back would do it, but only ${whole(ways.tooFar.pixelsLeft)}${
      NBSP}px would be left of the ${whole(shot.pictureWidth)} you need.`);
  }
  if (ways.nearest) said.push('No single frame holds all of it. This comes nearest:');
  return said;
}

/** What of the frame is kept. */
export function kept({picture, pixelsAcross}: Reading): string {
  return `The crop keeps ${plain(picture.keptWidth, 1)}${NBSP}mm of the sensor’s width, ${whole(pixelsAcross)}${NBSP}px.`;
}

/** How to read the ruler when the camera is not level. */
export function tilted({shot}: Reading): string | undefined {
  if (shot.tilt === 0) return undefined;
  return 'Lengths are read on a flat ruler on the table; what stands higher counts where its slanting plane meets the table.';
}

/** Said in place of numbers that cannot be. */
export function impossible(problem: Problem): string {
  return problem.parameter === 'depth'
    ? 'The foremost point would lie behind the lens. The last picture that could be drawn stays.'
    : `${problem.parameter} cannot be ${String(problem.value)}: wanted ${problem.wanted}. The last picture that could be drawn stays.`;
}

/** How blurred both ends are. */
export function ends({fit: {depth}, blurFront, blurBack}: Reading): string {
  return `Blur at the ${PARTS[depth.foremost.part]} ${pixels(blurFront)}, at the ${PARTS[depth.rearmost.part]} ${pixels(blurBack)}.`;
}

/** Labels of the entries, and their hints. */
export const FIELDS = {
  aperture: 'Aperture', focalLength: 'Focal length', fieldWidth: 'Field width', fieldWidthHint: 'what fills the frame, by ruler', baseDepth: 'Base depth',
  focus: 'Focus', focusHint: 'behind the base’s front edge', figure: 'Figure: what reaches past the base', camera: 'Camera: distance, sensor, limits',
  picture: 'Finished picture, blur limit, unit', overhangFront: 'Past the front edge', overhangFrontHeight: '… at a height of',
  overhangBack: 'Past the back edge', overhangBackHeight: '… at a height of', figureHeight: 'Height above the table',
  tilt: 'Camera looks down by', shutter: 'Shutter', distance: 'Sensor mark to focus plane', distanceHint: 'instead of the field width',
  format: 'Sensor', own: 'own numbers', sensorWidth: 'Sensor width', sensorHeight: 'Sensor height', held: 'Camera held',
  landscape: 'landscape', portrait: 'portrait', apertureWidest: 'Widest aperture', apertureSmallest: 'Smallest aperture',
  pupilRatio: 'Pupil ratio', pupilRatioHint: 'exit over entrance pupil; 1 when unknown',
  pictureWidth: 'Finished width, pixels', frameWidth: 'Frame width, pixels', blurLimit: 'Blur that still looks sharp, px', unit: 'Lengths in',
} as const;
