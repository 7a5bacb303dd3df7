import {nearestClick} from '../../core/exposure/clicks.js';
import {writeAperture, writeShutter} from '../../core/exposure/write.js';
import {workingAperture} from '../../core/optics/lens.js';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import type {GiveUp, Plan} from '../../core/optics/plan.js';
import type {Problem} from '../../core/problem.js';
import type {Shot} from '../../core/shot/shot.js';
import {MM_PER_INCH, lengthIn, type LengthUnit} from '../../core/units.js';
import type {Curve, CurvePoint} from './curve.js';
import {FREE, tipHeight, valueOf, type Grip} from './handles.js';

const NBSP = '\u00a0';

/** Digits after the point, without zeros that say nothing, never −0. */
const plain = (value: number, digits: number): string => String(+value.toFixed(digits) + 0).replace('-', '−');

const tight = (text: string): string => text.replaceAll(' ', NBSP);

/** `2 900`, thousands set apart by a thin space that does not break. */
export const whole = (value: number): string => String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, '\u202f');

const pixels = (value: number): string => `${whole(value)}${NBSP}px`;

const percent = (share: number): string => `${plain(share * 100, share < 0.1 ? 1 : 0)}${NBSP}%`;

/** A length without its unit, as finely as anybody can point: 9.4, 41, 2 3/8. */
function size(mm: number, unit: LengthUnit): string {
  if (unit === 'cm') return plain(mm / 10, Math.abs(mm) < 99.5 ? 1 : 0);
  if (unit === 'mm') return Math.abs(mm) >= 1000 ? `${mm < 0 ? '−' : ''}${whole(Math.abs(mm))}` : plain(mm, Math.abs(mm) < 9.95 ? 1 : 0);
  const inches = Math.abs(mm) / MM_PER_INCH;
  const per = inches < 12 ? 16 : 4;
  const parts = Math.round(inches * per);
  let [over, under] = [parts % per, per];
  while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const text = [Math.floor(parts / per) || '', over ? `${over}/${under}` : ''].filter(Boolean).join(NBSP) || '0';
  return mm < 0 && parts ? `−${text}` : text;
}

export const length = (mm: number, unit: LengthUnit): string => `${size(mm, unit)}${NBSP}${unit}`;

/** A length to go into a field: exact enough to be taken back. */
export function fieldLength(mm: number, unit: LengthUnit): string {
  if (unit !== 'in') return `${plain(lengthIn(mm, unit), 2)} ${unit}`;
  const sixteenths = mm / MM_PER_INCH * 16;
  return Math.abs(sixteenths - Math.round(sixteenths)) < 0.001 ? `${size(mm, unit)} in` : `${plain(mm / MM_PER_INCH, 2)} in`;
}

/** Focal lengths are in mm whatever else is. */
export const focalLength = (mm: number): string => `${plain(mm, 1)}${NBSP}mm`;

/** A place to point at. */
export function place(mark: number, unit: LengthUnit): string {
  if (Math.abs(mark) < 0.05) return 'on the base’s front edge';
  return mark < 0 ? `${length(-mark, unit)} before the base` : `${length(mark, unit)} behind the base’s front edge`;
}

/** The printed f-number a body shows that counts close-up in. */
export function shownAperture({lens}: Pick<PlanWay, 'lens'>): string {
  const working = workingAperture(lens.aperture, lens.magnification, lens.pupilRatio);
  return `f/${nearestClick('aperture', working, 3).label}`;
}

/** f-number to set, in the terms of the body. */
export function aperture(way: PlanWay, shot: Shot): string {
  const marked = writeAperture(way.lens.aperture);
  if (shot.apertureShown === 'marked') return marked;
  const shown = shownAperture(way);
  return shown === marked ? marked : `${marked}, body shows ${shown}`;
}

const shutter = (seconds: number): string => tight(writeShutter(seconds));

const frames = (count: number): string => (count === 1 ? 'one frame' : `${count}${NBSP}frames`);

/** Contrast in words. Where one word ends and the next begins is our judgement, no source. */
export function contrastWord(contrast: number): string {
  if (contrast >= 0.6) return 'crisp';
  if (contrast >= 0.4) return 'clear';
  if (contrast >= 0.2) return 'soft';
  return contrast >= 0.05 ? 'faint' : 'lost';
}

export const contrastNumber = (contrast: number): string => (contrast < 0.005 ? '0' : contrast.toFixed(2));

// —— the verdict ——

const several = (job: PlanJob): boolean => job.lenses.length > 1;

/** The best way in a sentence. */
export function verdict(plan: Plan, job: PlanJob, shot: Shot): string {
  const [way] = plan.ways;
  const {unit} = shot;
  if (!way) return impossible(plan, shot);
  const shown = shot.apertureShown === 'working' ? shownAperture(way) : undefined;
  const opening = writeAperture(way.lens.aperture);
  const setting = `${shown && shown !== opening ? `${opening} (the body shows ${shown})` : opening} at ${shutter(way.shutter.value)}`;
  const lens = several(job) ? `, with the ${focalLength(way.lens.focalLength)}` : '';
  const where = `from ${length(way.cameraDistance, unit)}${lens}`;
  return way.frames.length === 1
    ? `Sharp from tip to tip in one frame: ${setting}, ${where}, focus ${place(way.focus, unit)}.`
    : `Sharp from tip to tip in ${frames(way.frames.length)}: ${setting} each, ${where}.`;
}

function impossible({giveUp: [first], oneIsEnough}: Plan, shot: Shot): string {
  if (!first) return 'These wishes cannot be met, however far they give way.';
  return oneIsEnough ? `Not all of these wishes can be met. Give up first: ${wish(first, shot)[0]}.`
    : 'No single wish is enough to give up. Together these are:';
}

/** What the verdict rests on. */
export function reason(depth: number, job: PlanJob, {unit}: Shot): string {
  return `${length(depth, unit)} of depth to hold in a picture of ${whole(job.pictureWidth)} × ${pixels(job.pictureHeight)}; sharp means blurred by no more than ${
    plain(job.blurPixels, 2)}${NBSP}px of it, and the finest line keeps at least a contrast of ${contrastNumber(job.leastContrast ?? 0.3)}.`;
}

/** A wish and how far it has to give way; then what is wished for now. */
export function wish({wish: which, to, factor}: GiveUp, shot: Shot): readonly [what: string, now: string] {
  switch (which) {
    case 'frames': return [`take up to ${frames(Math.ceil(to))}`, `${frames(shot.mostFrames)} at most now`];
    case 'picture-width': return [`show it ${pixels(Math.floor(to))} wide`, `${pixels(shot.pictureWidth)} now`];
    case 'blur-limit': return [`accept ${plain(Math.ceil(to * 20) / 20, 2)}${NBSP}px of blur`, `${plain(shot.blurLimit, 2)}${NBSP}px now`];
    case 'contrast': return [`let the finest line fade to a contrast of ${contrastNumber(Math.floor(to * 100) / 100)}`, `${contrastNumber(shot.leastContrast)} now`];
    case 'shutter': return [`let the shutter stay open ${plain(factor, 1)} times as long`, `${shutter(shot.shutterSlowest)} at most now`];
    case 'room': return [`make room for ${length(Math.ceil(to / 5) * 5, shot.unit)}`, `${length(shot.room, shot.unit)} now`];
    case 'margin': return [to > 0.005 ? `leave only ${percent(Math.floor(to * 200) / 200)} free around it` : 'leave no margin', `${percent(shot.margin)} now`];
  }
}

// —— one way ——

/** What a way is called. */
export function title({kind, frames: {length: count}, lens}: PlanWay, job: PlanJob): string {
  const name = {stay: 'As near as the frame allows', 'move-back': 'Further back, cropped', stack: `${count} frames, blended`}[kind];
  return several(job) ? `${focalLength(lens.focalLength)}: ${name.charAt(0).toLowerCase()}${name.slice(1)}` : name;
}

/** One line of the comparison. */
export interface Line {
  readonly key: string;
  readonly label: string;
  readonly text: string;
}

/** A way as lines that stand beside the same lines of the next. */
export function lines(way: PlanWay, job: PlanJob, shot: Shot): readonly Line[] {
  const {unit} = shot;
  const count = way.frames.length;
  const focus = way.frames.slice(0, 12).map((mark) => size(mark, unit)).join(', ');
  return [
    {key: 'aperture', label: 'Aperture', text: aperture(way, shot)},
    {key: 'shutter', label: 'Shutter', text: count > 1 ? `${shutter(way.shutter.value)} each` : shutter(way.shutter.value)},
    {key: 'camera', label: 'Sensor mark to focus', text: length(way.cameraDistance, unit)},
    {key: 'focus', label: 'Focus behind front edge', text: `${focus}${count > 12 ? ' …' : ''}${NBSP}${unit}`},
    {key: 'field', label: 'Frame’s width by ruler', text: length(way.fieldWidth, unit)},
    {key: 'zone', label: 'Sharp', text: way.zone.to === Infinity ? `${size(way.zone.from, unit)} to no end` : `${size(way.zone.from, unit)} to ${length(way.zone.to, unit)}`},
    {key: 'contrast', label: 'Worst contrast', text: `${contrastWord(way.worst)}, ${contrastNumber(way.worst)}`},
    {key: 'pixels', label: 'Pixels kept across', text: `${whole(way.pixelsAcross)}, ${percent(way.keptShare)}`},
    {key: 'frames', label: 'Frames', text: String(count)},
    {key: 'price', label: 'Price', text: price(way, job, unit)},
  ];
}

/** What a way costs against the metered setting and the nearest place. */
export function price({price: paid, lens}: PlanWay, {metered}: PlanJob, unit: LengthUnit): string {
  const clicks = Math.round(paid.clicks);
  const parts = [
    clicks ? `${clicks} ${clicks === 1 ? 'click' : 'clicks'} ${lens.aperture > metered.aperture ? 'down' : 'open'}` : '',
    `${paid.seconds < 10 ? plain(paid.seconds, paid.seconds < 0.995 ? 2 : 1) : whole(paid.seconds)}${NBSP}s`,
    paid.back >= 1 ? `${length(paid.back, unit)} back` : '',
    paid.pixels >= 1 ? `${pixels(paid.pixels)} given up` : '',
    paid.frames ? `${paid.frames} more ${paid.frames === 1 ? 'frame' : 'frames'} to blend` : '',
    paid.otherLens ? 'change the lens' : '',
  ].filter(Boolean);
  return parts.map((part) => part.replace(/(\d) /g, `$1${NBSP}`)).join('; ');
}

// —— drawing and chart ——

/** Over the camera. */
export const cameraLabel = (way: PlanWay, {unit}: Shot): string => length(way.cameraDistance, unit);

export const focusLabel = (way: PlanWay, {unit}: Shot): string =>
  (way.frames.length === 1 ? `focus ${length(way.focus, unit)}` : `${way.frames.length} focus planes`);

export function drawn(way: PlanWay, job: PlanJob, broken: boolean, {unit}: Shot): string {
  const ruler = `The ruler counts ${unit === 'in' ? 'inches' : unit} from the base’s front edge, and its thick part is sharp.`;
  return broken
    ? `Drawn to scale: ${title(way, job)}. ${ruler} At the break a stretch is left out: the camera stands further off.`
    : `Drawn to scale: ${title(way, job)}. ${ruler}`;
}

export function tiltLabel(tilt: number): string {
  if (tilt === 0) return 'level';
  return tilt > 0 ? `${plain(tilt, 1)}° down` : `${plain(-tilt, 1)}° up`;
}

export const GRIP_NAMES: Readonly<Record<Grip, string>> = {
  'overhang-front': 'Foremost tip', 'overhang-back': 'Rearmost tip', top: 'Top of the figure', 'base-front': 'Front edge of the base',
  'base-back': 'Back edge of the base', tilt: 'Camera, looking down',
};

/** What a handle says of itself. */
export function gripText(grip: Grip, shot: Shot): string {
  const {unit} = shot;
  const value = valueOf(grip, shot);
  switch (grip) {
    case 'overhang-front': case 'overhang-back': {
      const front = grip === 'overhang-front';
      if (!value) return 'does not reach past the base; left and right pull it out';
      return `${length(value, unit)} past the ${front ? 'front' : 'back'} edge, ${length(tipHeight(shot, front ? 'Front' : 'Back'), unit)} up`;
    }
    case 'top': return `${length(value, unit)} above the table`;
    case 'tilt': return tiltLabel(value);
    case 'base-front': case 'base-back': return `base ${length(value, unit)} deep`;
  }
}

export const gripHint = (grip: Grip): string => ({both: 'Left and right for its reach, up and down for its height', up: 'Up and down', along: 'Left and right'})[FREE[grip]];

/** Over the best click of the curve. */
export const bestLabel = (best: CurvePoint, way: PlanWay): string => (way.kind === 'stack'
  ? `${writeAperture(best.aperture)}, ${frames(best.frames)}: ${contrastNumber(best.worst)}` : `${WORDS.best} ${writeAperture(best.aperture)}: ${contrastNumber(best.worst)}`);

/** What the curve shows. */
export function curveWords({points, best}: Curve, way: PlanWay, job: PlanJob): string {
  const here = `${writeAperture(way.lens.aperture)} leaves ${contrastNumber(way.worst)}`;
  const top = `${writeAperture(best.aperture)} would be best with ${contrastNumber(best.worst)}`;
  const place = way.kind === 'stack' ? 'in as many frames as each takes' : 'from this place, in one frame';
  if (best.aperture === way.lens.aperture) return `Worst contrast of the finest line ${place}: ${here}, and no other click more.`;
  if (way.kind === 'stack') {
    const more = points.some(({worst}) => worst > best.worst) ? ' Some other clicks keep more, but not as much more as their extra frames ask for.' : '';
    return `Worst contrast of the finest line ${place}: ${here}; worth the most at ${writeAperture(best.aperture)} with ${contrastNumber(best.worst)}, in ${
      frames(best.frames)}.${more} At least ${contrastNumber(job.leastContrast ?? 0.3)} is wished for.`;
  }
  return `Worst contrast of the finest line ${place}: ${here}; ${top}. At least ${contrastNumber(job.leastContrast ?? 0.3)} is wished for.`;
}

/** Said in place of numbers that cannot be. */
export function trouble({parameter, value, wanted}: Problem): string {
  return `No plan: ${parameter} cannot be ${String(value)}, wanted ${wanted}. The last good plan stays.`;
}

export const WORDS = {
  drawing: 'Side view: figure, camera and view', set: 'set', pick: 'set it', more: 'Further ways', fewer: 'Only the best',
  chart: 'Worst contrast over the apertures', defocus: 'lost to defocus', diffraction: 'lost to diffraction', best: 'best', wished: 'wished for',
  compare: 'Ways to get it sharp', giveUp: 'What to give up', single: 'What a single frame would take',
  singleAny: 'Any one of these, and no frames need blending:', singleAll: 'All of these together, and no frames need blending:', allTogether: 'Give up all of these', noPlace: 'no place found', mark: 'sensor mark to focus',
} as const;

/** Labels of the entries, and their hints. */
export const FIELDS = {
  focalLengths: 'Focal lengths', focalLengthsHint: 'at hand, the mounted one first', room: 'Tripod room', roomHint: 'sensor mark to focus, at most',
  metered: 'Metered aperture', meteredWorking: 'Metered, as the body shows it', meteredShutter: 'Metered shutter',
  pictureWidth: 'Picture width, px', pictureHeight: 'Picture height, px', margin: 'Margin', marginHint: 'of the width, on all sides',
  figure: 'Figure in numbers', baseDepth: 'Base depth', overhangFront: 'Past the front edge', overhangFrontHeight: '… at a height of',
  overhangBack: 'Past the back edge', overhangBackHeight: '… at a height of', figureHeight: 'Height above the table', figureWidth: 'Figure, side to side',
  tilt: 'Camera looks down by',
  camera: 'Camera, lens and limits', format: 'Sensor', own: 'own numbers', sensorWidth: 'Sensor width', sensorHeight: 'Sensor height', held: 'Camera held',
  landscape: 'landscape', portrait: 'portrait', frameWidth: 'Frame width as held, px', apertureWidest: 'Widest aperture', apertureSmallest: 'Smallest aperture',
  shutterFastest: 'Shortest time', shutterSlowest: 'Longest time', apertureShown: 'Body shows f-numbers', marked: 'marked', working: 'working',
  pupilRatio: 'Pupil ratio', pupilRatioHint: 'exit over entrance pupil; 1 when unknown', closestFocus: 'Closest focus', closestFocusHint: 'one for each lens, as far as known',
  meteredMagnification: 'Metered at a magnification of', meteredMagnificationHint: '0 for a hand-held meter',
  sharp: 'What counts as sharp, frames, unit', blurLimit: 'Blur that still looks sharp, px', leastContrast: 'Contrast to keep', mostFrames: 'Frames at most',
  mostFramesHint: '1 for no blending', unit: 'Lengths in',
} as const;
