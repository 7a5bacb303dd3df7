import type {OutlinePart} from '../../../core/optics/outline.js';
import type {Say} from '../../shared/say.js';

export {family} from '../../shared/words/en.js';

/** Values come written: `f/11`, `42 mm`, `1.5 px`, `1 1/3 stops`. A place is one of the first three. */
export const words = (say: Say) => ({
  say,
  atEdge: 'at the base’s front edge',
  beforeBase: (length: string) => `${length} before the base`,
  behindEdge: (length: string) => `${length} behind the base’s front edge`,

  // the verdict
  sharp: (before: string, behind: string) => `Sharp from front to back, with ${before} to spare in front and ${behind} behind.`,
  sharpWithoutEnd: (before: string) => `Sharp from front to back, with ${before} to spare in front and no limit behind.`,
  softThroughout: (little: boolean) => `In focus from front to back, but all of it ${little ? 'a little ' : ''}soft.`,
  /** Before a verdict on one of them. */
  planned: (_count: number, frames: string) => `The plan blends ${frames} frames, which together hold all of it. This is one alone, focused in the middle.`,
  frontOutside: (length: string, of: Whole) => `Not sharp: the front ${length} of the ${of} lies outside the sharp zone.`,
  backOutside: (length: string, of: Whole) => `Not sharp: the back ${length} of the ${of} lies outside the sharp zone.`,
  bothOutside: (front: string, back: string, of: Whole) =>
    `Not sharp: the front ${front} and the back ${back} of the ${of} lie outside the sharp zone.`,
  missed: (length: string, before: boolean) => `Not sharp: the whole figure lies ${length} ${before ? 'in front of' : 'behind'} the sharp zone.`,

  // what it rests on
  zoneWithoutEnd: (place: string) => `The sharp zone begins ${place} and has no end.`,
  zoneBefore: (from: string, to: string) => `The sharp zone reaches from ${from} to ${to} before the base.`,
  zoneAcross: (from: string, to: string) => `The sharp zone reaches from ${from} before the base to ${to} behind its front edge.`,
  zoneBehind: (from: string, to: string) => `The sharp zone reaches from ${from} to ${to} behind the base’s front edge.`,
  rests: (aperture: string, depth: string, limit: string, width: string) =>
    `${aperture} has to hold ${depth} of depth along the table; sharp means blurred by no more than ${limit} in a picture ${width} wide.`,
  ends: (front: string, frontBlur: string, back: string, backBlur: string) => `Blur ${front} ${frontBlur}, ${back} ${backBlur}.`,
  parts: {
    'base-front': 'at the front edge', 'base-back': 'at the back edge', 'overhang-front': 'at the foremost tip',
    'overhang-back': 'at the rearmost tip', 'top': 'at the top', 'point': 'at the point',
  } satisfies Readonly<Record<OutlinePart, string>> as Readonly<Record<OutlinePart, string>>,
  diffraction: (point: string, limit: string) =>
    `So small an opening softens everything, what is in focus too: diffraction draws a point ${point} wide, the limit is ${limit}.`,
  tilted: 'The camera is not level: lengths are read on a flat ruler on the table, where the slanting planes of the drawing meet it.',
  behindLens: 'The foremost point would lie behind the lens. The last picture that could be drawn stays.',
  cannotBe: (parameter: string, value: string, wanted: string) =>
    `${parameter} cannot be ${value}: wanted ${wanted}. The last picture that could be drawn stays.`,

  // ways out
  refocus: (place: string) => `Focus ${place}`,
  stopDown: (aperture: string) => `Stop down to ${aperture}`,
  openUp: (aperture: string) => `Open up to ${aperture}`,
  moveBack: (length: string) => `Move the camera ${length} back, then crop`,
  moveBackAndStopDown: (length: string, aperture: string) => `Move the camera ${length} back, stop down to ${aperture}, then crop`,
  gives: 'Gives',
  price: 'Price',
  set: 'Set',
  allSharp: 'everything sharp',
  stillSharp: 'everything is still sharp',
  allInFocus: 'everything in focus',
  allBut: (length: string) => `all in focus but for ${length} at the ends`,
  samePicture: 'the same picture',
  softened: (little: boolean, point: string, limit: string) =>
    `diffraction softens all of it${little ? ' a little' : ''}: a point is ${point} wide, the limit is ${limit}`,
  nothing: 'nothing',
  shutterUnchanged: 'shutter unchanged',
  shutterInstead: (now: string, before: string) => `${now} instead of ${before}`,
  isoSince: (iso: string) => `${iso}, since the shutter goes no further`,
  gets: (stops: string, brighter: boolean) => `the picture gets ${stops} ${brighter ? 'brighter' : 'darker'}`,
  pixelsLeft: (left: string, needed: string) => `${left} left across the picture, ${needed} needed`,
  closeUpLess: (stops: string) => `close-up loses ${stops} less light from there, which the time allows for`,
  frameWidth: (length: string) => `go back until the frame takes in ${length} of a ruler held across the focus`,
  focusAt: (place: string) => `focus ${place}`,
  apertureAlone: (needed: string, smallest: string) => `Aperture alone: it would take ${needed}, and the lens closes to ${smallest}.`,
  apertureNever: 'Aperture alone: no opening is small enough.',
  distanceAlone: (by: string, but: string) => `Distance alone: ${by} back would do it, but ${but}.`,
  tooFewPixels: (left: string, needed: string) => `only ${left} would be left of the ${needed} you need`,
  beyondRoom: (away: string, room: string) => `the camera would stand ${away} from the focus and has room for ${room}`,
  nearest: 'No single frame holds all of it. This comes nearest:',
  planWeighs: 'These ways only bring the ends into the sharp zone. A shot plan also weighs time, contrast and pixels, and may choose another distance and aperture.',
  done: (what: string, verdict: string) => `Done: ${what}. ${verdict}`,
  undo: 'Undo',

  // the drawing
  drawing: 'Side view over a ruler: base, sharp zone, focus and blur',
  handle: 'Focus',
  front: 'front',
  back: 'back',
  camera: 'camera',
  focusMark: (length: string) => `focus ${length}`,
  limit: (pixels: string) => `limit ${pixels}`,
  blurCaption: 'blur, in pixels of the finished picture',
  curve: 'Curve under the ruler',
  blur: 'Blur',
  contrast: 'Contrast',

  // fields
  apertureWorking: 'Aperture, as shown',
  markedAs: (aperture: string) => `marked ${aperture}`,
  focalLength: 'Focal length',
  fieldWidth: 'Field width',
  fieldWidthHint: 'fills the frame',
  baseDepth: 'Base depth',
  focus: 'Focus',
  focusHint: 'behind front edge',
  detailWanted: 'the width of a line, such as 1 px or 0.2 mm',

  // folds
  folds: {
    figure: 'Figure: what reaches past the base',
    camera: 'Camera: distance, sensor, limits',
    picture: 'Finished picture, blur limit, unit',
    stack: 'Or several frames, to stack',
    distance: 'What a step back is worth',
    rulerPhoto: 'Field width, from a photo of a ruler',
    ownLimit: 'Your own limit, from a ruler shot',
  },
});

/** What some of it lies outside: the base alone, or the figure with what reaches past it. */
export type Whole = 'base' | 'figure';

export type ZoneWords = ReturnType<typeof words>;
