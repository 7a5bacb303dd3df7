import type {OutlinePart} from '../../core/optics/outline.js';
import {workingAperture} from '../../core/optics/lens.js';
import type {RulerScale} from '../../core/optics/ruler.js';
import type {Problem} from '../../core/problem.js';
import {nearestClick} from '../../core/exposure/clicks.js';
import {writeAperture, writeIso, writeShutter, writeStops} from '../../core/exposure/write.js';
import type {Shot} from '../../core/shot/shot.js';
import type {LengthUnit} from '../../core/units.js';
import type {DetailContrast, SaidDetail} from './detail.js';
import type {DistancePrice} from './distance-price.js';
import {NBSP, length, percent, pixels, plain, tight, whole} from './lengths.js';
import type {OwnLimit} from './own-limit.js';
import type {Reading} from './reading.js';
import {isSet} from './ruler-scale.js';
import {SETTLE_SECONDS, type StackOffer} from './stack.js';
import type {Way} from './ways.js';

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
  // Past its limit diffraction leaves nothing quite sharp, however well it lies in focus.
  const held = reading.airy > reading.shot.blurLimit ? 'Everything is in focus, all of it a little soft' : 'Everything is sharp';
  const behind = to === Infinity ? 'no end' : length(to - back, unit);
  return `${held}, with ${length(front - from, unit)} to spare in front and ${behind} behind.`;
}

/** What the verdict rests on. */
export function reason({shot, front, back}: Reading): string {
  const {unit} = shot;
  return `${aperture(shot.aperture, shot)} has to hold ${length(back - front, unit)} of depth; sharp means blurred by no more than ${
    pixels(shot.blurLimit)} in a picture ${whole(shot.pictureWidth)}${NBSP}px wide.`;
}

/** Why even the focus plane is soft, when it is. */
export function diffraction({airy, shot}: Reading): string | undefined {
  if (airy <= shot.blurLimit) return undefined;
  return `So small an opening softens everything, in focus too: diffraction draws a point ${pixels(airy)} wide, the limit is ${
    pixels(shot.blurLimit)}.`;
}

/** An f-number as the body shows it from where the camera stands, or will stand. */
export function aperture(marked: number, shot: Shot, fieldWidth = shot.fieldWidth): string {
  if (shot.apertureShown === 'marked') return writeAperture(marked);
  const working = workingAperture(marked, shot.sensorWidth / fieldWidth, shot.pupilRatio);
  return `f/${nearestClick('aperture', working, shot.clicksPerStop).label}`;
}

/** What a way is called on its button: what to do. */
export function wayTitle({kind, changes, back}: Way, shot: Shot): string {
  const {unit} = shot;
  const opening = aperture(changes.aperture ?? shot.aperture, shot, changes.fieldWidth);
  switch (kind) {
    case 'refocus': return `Focus ${place(changes.focus ?? 0, unit)}`;
    case 'stop-down': return `Stop down to ${opening}`;
    case 'open-up': return `Open up to ${opening}`;
    case 'move-back': return `Move the camera ${length(back, unit)} back, then crop`;
    case 'both': return `Move the camera ${length(back, unit)} back, stop down to ${opening}, then crop`;
  }
}

/** One line of what a way gives, costs or asks for. */
export interface WayLine {
  readonly label: string;
  readonly text: string;
}

/** A way in lines that can be run over with the eye. */
export function wayLines(way: Way, shot: Shot): readonly WayLine[] {
  return [
    {label: 'Gives', text: wayGives(way, shot)},
    {label: 'Price', text: wayPrice(way, shot)},
    {label: 'Set', text: waySetting(way, shot)},
  ].filter(({text}) => text);
}

function wayGives({kind, outside, back, diffracted}: Way, {unit}: Shot): string {
  return [
    outside > 0 ? `all in focus but for ${length(outside, unit)} at the ends`
      : diffracted ? 'everything in focus' : kind === 'open-up' ? 'everything is still sharp' : 'everything sharp',
    back ? 'the same picture' : '',
    diffracted ? 'all of it a little soft, since diffraction passes your limit' : '',
  ].filter(Boolean).join('; ');
}

function wayPrice({kind, changes, back, pixelsLeft, rounding, light}: Way, shot: Shot): string {
  const {shutter = shot.shutter, iso = shot.iso} = changes;
  return [
    kind === 'refocus' ? 'nothing' : shutter === shot.shutter ? 'shutter unchanged' : `${tight(writeShutter(shutter))} instead of ${tight(writeShutter(shot.shutter))}`,
    iso !== shot.iso ? `${tight(writeIso(iso))}, since the shutter goes no further` : '',
    Math.abs(rounding) > 0.05 ? `the picture gets ${stops(rounding)}` : '',
    back ? `${whole(pixelsLeft)}${NBSP}px left of the ${whole(shot.pictureWidth)} needed` : '',
    light > 0.15 ? `less light is lost to close-up: ${stops(light)}` : '',
  ].filter(Boolean).join('; ');
}

function waySetting({kind, changes: {focus, fieldWidth}, back}: Way, {unit}: Shot): string {
  return [
    back ? `frame ${length(fieldWidth ?? 0, unit)} by the ruler` : '',
    focus !== undefined && kind !== 'refocus' ? `focus ${place(focus, unit)}` : '',
  ].filter(Boolean).join('; ');
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
      ? `Aperture alone: it would take f/${plain(shot.apertureShown === 'marked' ? ways.tooSmall
        : workingAperture(ways.tooSmall, shot.sensorWidth / shot.fieldWidth, shot.pupilRatio), 0)}, and the lens closes to ${aperture(shot.apertureSmallest, shot)}.`
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
  aperture: 'Aperture', apertureWorking: 'Aperture, as shown', markedAs: (marked: number) => `marked ${writeAperture(marked)}`,
  apertureShown: 'Body shows f-numbers', marked: 'marked', working: 'working', focalLength: 'Focal length', fieldWidth: 'Field width', fieldWidthHint: 'fills the frame', baseDepth: 'Base depth',
  focus: 'Focus', focusHint: 'behind front edge', figure: 'Figure: what reaches past the base', camera: 'Camera: distance, sensor, limits',
  picture: 'Finished picture, blur limit, unit', overhangFront: 'Past the front edge', overhangFrontHeight: '… at a height of',
  overhangBack: 'Past the back edge', overhangBackHeight: '… at a height of', figureHeight: 'Height above the table',
  tilt: 'Camera looks down by', shutter: 'Shutter', distance: 'Sensor mark to focus plane', distanceHint: 'instead of the field width',
  format: 'Sensor', own: 'own numbers', sensorWidth: 'Sensor width', sensorHeight: 'Sensor height', held: 'Camera held',
  landscape: 'landscape', portrait: 'portrait', apertureWidest: 'Widest aperture', apertureSmallest: 'Smallest aperture',
  pupilRatio: 'Pupil ratio', pupilRatioHint: 'exit over entrance pupil; 1 when unknown',
  pictureWidth: 'Finished width, pixels', frameWidth: 'Frame width, pixels', blurLimit: 'Blur limit, finished px', unit: 'Lengths in',
} as const;


/** What becomes of a detail. */
export function contrastWords(
  {inFocus, front, back}: DetailContrast, detail: SaidDetail, {fit: {depth}, shot: {unit}}: Reading,
): string {
  const wide = 'pixels' in detail ? pixels(detail.pixels) : length(detail.onFigure, unit, true);
  const keeps = (contrast: number | null): string => (contrast === null ? 'none' : percent(contrast));
  if (inFocus === null) return `A line ${wide} wide is too fine for this opening: nothing of its contrast is left, in focus either.`;
  return `A line ${wide} wide keeps ${percent(inFocus)} of its contrast in focus, ${keeps(front)} at the ${
    PARTS[depth.foremost.part]}, ${keeps(back)} at the ${PARTS[depth.rearmost.part]}.`;
}

/** `600 mm back is worth 1.3 stops of depth …` */
export function distancePrice({step, pixelsLeft, zoneNow, zoneThen}: DistancePrice, {shot}: Reading): string {
  if (step.by === 0) return 'Slide to see what a step back is worth: the picture is cropped to what it shows now.';
  const grows = Number.isFinite(zoneThen)
    ? `the sharp zone grows from ${length(zoneNow, shot.unit)} to ${length(zoneThen, shot.unit)}` : 'the sharp zone no longer ends behind';
  return `Worth ${plain(step.stops, 1)}${NBSP}stops of depth: ${grows}, shutter unchanged. It costs ${
    percent(1 - step.pixelShare)} of the pixels across; ${whole(pixelsLeft)}${NBSP}px are left of the ${whole(shot.pictureWidth)} you need.`;
}

/** How far the pixels reach. */
export function pixelsToSpare({reach}: DistancePrice, {unit}: Shot): string {
  return reach > 0 ? `Your pixels reach ${length(reach, unit)} back.` : 'There are no pixels to spare.';
}

/** Where each frame is focused at the aperture that is set. */
export function stackWords({frames}: StackOffer, {shot}: Reading): string {
  const set = aperture(shot.aperture, shot);
  if (!frames.length) return `At ${set} it would take more frames than anybody takes.`;
  const at = frames.map(({focus}) => `${focus <= -0.05 ? '−' : ''}${length(focus, shot.unit)}`).join(', ');
  return `At ${set}, ${frames.length} frames hold it, each zone overlapping the next by a quarter or more. Focus behind the base’s front edge, from the front on: ${at}.`;
}

/** The aperture at which a stack is best. */
export function stackBest({best, frames}: StackOffer, {shot}: Reading): string {
  const time = tight(writeShutter(Math.max(1, Math.round(best.seconds))));
  const worst = best.worst > 0 ? percent(best.worst) : 'nothing';
  const taken = `with ${SETTLE_SECONDS}${NBSP}s between frames about ${time} in all; the finest line keeps ${worst} of its contrast at worst`;
  return frames.length && Math.abs(best.aperture / shot.aperture - 1) < 1e-6 ? `No aperture is better for it: ${taken}.`
    : `Best at ${aperture(best.aperture, shot)}: ${best.frames} frames, ${taken}.`;
}

/** What a ruler shot says of its reader. */
export function ownLimit({blurLimit, focus}: OwnLimit, {shot}: Reading): string {
  const off = focus - shot.focus;
  const where = Math.abs(off) < 0.5 ? 'where it was meant to be'
    : `${length(off, shot.unit)} ${off > 0 ? 'behind' : 'before'} where it was meant to be`;
  return `Your own limit is ${plain(blurLimit, 2)}${NBSP}px. The focus was ${place(focus, shot.unit)}, ${where}.`;
}

/** Labels of what is asked less often. */
export const EXTRAS = {
  curve: 'Curve under the ruler', blur: 'Blur', contrast: 'Contrast', detail: 'Finest line', detailHint: '1 px, or 0.2 mm on the figure',
  stack: 'Or several frames, to stack', setStack: (opening: number, shutter: number, shot: Shot) => `Set ${aperture(opening, shot)} and ${tight(writeShutter(shutter))} for it`,
  noStack: 'It would take more frames than anybody takes, at any aperture.',
  distance: 'What a step back is worth', back: 'Camera back by', goBack: (by: number, unit: LengthUnit) => (by ? `Go ${length(by, unit)} back and crop` : 'Go back and crop'),
  own: 'Your own limit, from a ruler shot',
  ownLimitHow: 'Photograph a flat ruler that runs away from the camera past the base’s front edge, with the settings above. '
    + 'Look at it in the finished size and read off what still looks sharp.',
  zero: 'Graduation at the front edge', nearest: 'Nearest still sharp', farthest: 'Farthest still sharp',
  farthestWanted: 'a graduation beyond the nearest', useOwnLimit: 'Use this limit and focus from now on',
} as const;

/** What two points on a ruler say of the field. */
export function rulerField(scale: RulerScale, shot: Shot): string {
  const {fieldWidth, magnification} = scale;
  const {unit, fieldWidth: now} = shot;
  const said = `The frame takes in ${length(fieldWidth, unit)} across: a magnification of ${plain(magnification, 3)}.`;
  const off = fieldWidth / now - 1;
  return isSet(scale, shot) ? `${said} That is what is set.` : `${said} Set now: ${length(now, unit)}, ${plain(Math.abs(off) * 100, off < 0.1 ? 1 : 0)}${NBSP}% ${off > 0 ? 'less' : 'more'}.`;
}

/** Words of the photo with two points. */
export const RULER = {
  title: 'Field width, from a photo of a ruler', photo: 'Photo with two points', points: ['First point', 'Second point'],
  how: 'Drag the two points onto two graduations. Both must lie at the same distance from the camera, in the focus plane, on a ruler held across the '
    + 'view: along a ruler that runs away from the camera the scale changes, and two points cannot say how.',
  none: 'There is no photo on the bench. Open one in a tonal-chart-reader that has the same bench name as this element; it then shows up here.',
  cropped: 'This photo has another shape than the sensor. If it was cropped, the field comes out too narrow: take it as it left the camera.',
  apart: 'Length between the points', apartHint: 'as the ruler counts it', together: 'The two points lie on one another. Drag one of them away.',
  at: (x: number, y: number): string => `${Math.round(x)} pixels from the left, ${Math.round(y)} from the top`,
  use: (field: string): string => `Set the field width to ${field}`,
} as const;

/** Words in the drawing. */
export const MARKS = {
  front: 'front', back: 'back', camera: 'camera',
  focus: (mark: number, unit: LengthUnit) => `focus ${mark <= -0.05 ? '−' : ''}${length(mark, unit)}`,
  drawing: 'Side view over a ruler: base, sharp zone, focus plane and blur', handle: 'Focus plane',
} as const;

/** Words of the curves under the ruler. */
export const PANELS = {
  limit: (limit: number) => `limit ${pixels(limit)}`, blur: 'blur, in pixels of the finished picture',
  lost: 'nothing left', lostAt: 'lost', contrast: 'contrast of the finest line',
} as const;
