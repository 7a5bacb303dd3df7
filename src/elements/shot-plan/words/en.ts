import type {GiveUp} from '../../../core/optics/give-up.js';
import type {PlanWay} from '../../../core/optics/plan-way.js';
import type {Say} from '../../shared/say.js';

export {family} from '../../shared/words/en.js';

/** Values come written: `f/11`, `0.6 s`, `42 mm`, `30%`, `1 600 × 1 067 px`. */
export const words = (say: Say) => ({
  say,
  plan: 'Shot plan',

  // the verdict
  /** Sharp, or only in focus, where diffraction leaves nothing sharp: then `softened` follows. */
  sharpInOne: (sharp: boolean, setting: string, from: string, focus: string) =>
    `${sharp ? 'Sharp' : 'In focus'} from tip to tip in one frame: ${setting}, from ${from} away, focus ${focus}.`,
  sharpInOneWith: (sharp: boolean, lens: string, setting: string, from: string, focus: string) =>
    `${sharp ? 'Sharp' : 'In focus'} from tip to tip in one frame: ${setting}, from ${from} away with the ${lens} lens, focus ${focus}.`,
  sharpInFrames: (sharp: boolean, frames: string, setting: string, from: string) =>
    `${sharp ? 'Sharp' : 'In focus'} from tip to tip in ${frames}: ${setting} each, from ${from} away.`,
  sharpInFramesWith: (sharp: boolean, lens: string, frames: string, setting: string, from: string) =>
    `${sharp ? 'Sharp' : 'In focus'} from tip to tip in ${frames}: ${setting} each, from ${from} away with the ${lens} lens.`,
  softened: (little: boolean, point: string, limit: string) =>
    `Diffraction softens all of it${little ? ' a little' : ''}: a point is ${point} wide, the limit is ${limit}.`,
  pair: (aperture: string, shutter: string) => `${aperture} at ${shutter}`,
  shown: (aperture: string, shown: string) => `${aperture} (the body shows ${shown})`,
  frames: (count: number, written: string) => say.plural(count, {one: 'one frame', other: `${written} frames`}),
  atEdge: 'on the base’s front edge',
  beforeBase: (length: string) => `${length} before the base`,
  behindEdge: (length: string) => `${length} behind the base’s front edge`,
  hopeless: 'These wishes cannot be met, however far they give way.',
  giveUpOne: (wish: string) => `Not all of these wishes can be met at once. Least to give up: “${wish}”.`,
  giveUpAll: 'Not all of these wishes can be met, and giving up a single one is not enough. Giving up all of these is:',
  rests: (depth: string, picture: string, blur: string, contrast: string) => `${depth} of depth along the table to hold in a picture of ${picture}. Sharp means blurred by no more than ${
    blur} of it; the finest line, as wide as that, keeps at least ${contrast} of its contrast.`,
  nothingToSet: (which: 'aperture' | 'shutter') => `No plan: between the limits of the ${which} there is nothing to set. The last good plan stays.`,
  noPlan: (name: string, value: string, wanted: string) => `No plan: “${name}” is ${value}, wanted is ${wanted}. The last good plan stays.`,

  // ways
  ways: 'Ways to get it sharp',
  weighs: (contrast: string) => `Ranked by time, frames to blend, way back, pixels and a change of lens; in all of them the finest line keeps at least ${
    contrast} of its contrast. The sharp-zone bar only frees the ends, so it may name another setting.`,
  way: (kind: PlanWay['kind'], frames: string) => ({
    stay: 'As near as the frame allows', 'move-back': 'Further back, cropped', stack: `${frames}, blended`,
  })[kind],
  wayOf: (way: string, lens: string) => `${way} (${lens} lens)`,
  from: (setting: string, distance: string) => `${setting}, from ${distance} away`,
  each: (setting: string, distance: string) => `${setting} each, from ${distance} away`,
  set: 'set',
  pick: 'set it',
  further: 'Further ways',
  fewer: 'Only the best',
  done: (what: string) => `Done: ${what}.`,
  undo: 'Undo',

  // the price
  price: (parts: string) => `Price: ${parts}`,
  /** Between the parts of a price. */
  parting: '; ',
  smaller: (clicks: number, written: string) => say.plural(clicks, {one: 'aperture one click smaller', other: `aperture ${written} clicks smaller`}),
  larger: (clicks: number, written: string) => say.plural(clicks, {one: 'aperture one click larger', other: `aperture ${written} clicks larger`}),
  stackTime: (seconds: string, frames: string, shutter: string, settle: string) =>
    `${seconds} (${frames} × ${shutter}, and ${settle} of moving and settling between frames)`,
  back: (length: string, now: boolean) => `${length} further back than ${now ? 'now' : 'the nearest place'}`,
  pixels: (pixels: string) => `${pixels} of width cropped away`,
  moreFrames: (count: number, written: string) => say.plural(count, {one: 'one more frame to blend', other: `${written} more frames to blend`}),
  otherLens: 'a change of lens',

  // wishes that could be given up
  giveUp: 'What to give up',
  single: 'What a single frame would take',
  singleAny: 'Any one of these, and no frames need blending:',
  singleAll: 'All of these together, and no frames need blending:',
  allTogether: 'Give up all of these',
  wish: (wish: GiveUp['wish'], to: string) => ({
    frames: `Take up to ${to}`, 'picture-width': `Show it ${to} wide`, 'blur-limit': `Accept ${to} of blur`,
    contrast: `Let the finest line fade to ${to} of its contrast`, shutter: `Let the shutter stay open up to ${to}`,
    room: `Make room for ${to}`, margin: `Leave only ${to} free around it`,
  })[wish],
  noMargin: 'Leave nothing free around it',
  now: (value: string, most: boolean) => (most ? `${value} at most now` : `${value} now`),

  // the drawing
  drawing: 'Side view: figure, camera and view',
  noPlace: 'no place found',
  mark: 'sensor mark to focus',
  camera: (distance: string, tilt: string) => `${distance}, ${tilt}`,
  tilt: (way: 'level' | 'down' | 'up', degrees: string) => (way === 'level' ? 'level' : `${degrees}° ${way}`),
  focusAt: (length: string) => `focus ${length}`,
  focusPlanes: (count: string) => `${count} focus planes`,
  drawn: (way: string, unit: string) =>
    `Drawn to scale: “${way}”. The ruler counts ${unit} along the table from the base’s front edge, and its thick part is sharp.`,
  broken: 'At the break a stretch is left out: the camera stands further off.',
  inches: 'inches',
  grips: {
    'overhang-front': 'Foremost tip', 'overhang-back': 'Rearmost tip', top: 'Top of the figure', 'base-front': 'Front edge of the base',
    'base-back': 'Back edge of the base', tilt: 'Camera, looking down',
  },
  noOverhang: 'does not reach past the base; left and right pull it out',
  overhang: (length: string, front: boolean, height: string) => `${length} past the ${front ? 'front' : 'back'} edge, ${height} up`,
  aboveTable: (length: string) => `${length} above the table`,
  deep: (length: string) => `base ${length} deep`,
  free: {both: 'Left and right for its reach, up and down for its height', up: 'Up and down', along: 'Left and right'},
  gripTitle: (name: string, value: string, hint: string) => `${name}: ${value}. ${hint}.`,

  // folds
  compare: 'Side by side',
  curve: 'Fine lines at every aperture',
  rates: 'What counts how much',
  figure: 'Figure in numbers',
  cameraAndLens: 'Camera, lens and limits',
  sharp: 'What counts as sharp, frames, unit',

  // fields
  focalLengths: 'Focal lengths',
  focalLengthsHint: 'at hand, the mounted one first',
  room: 'Tripod room',
  roomHint: 'from the sensor mark (⌀ on the body) to the focus, at most',
  metered: 'Metered aperture',
  meteredWorking: 'Metered, as the body shows it',
  meteredShutter: 'Metered shutter',
  pictureWidth: 'Picture width, px',
  pictureHeight: 'Picture height, px',
  margin: 'Free around it',
  marginHint: 'of the width, on all sides',
});

export type PlanWords = ReturnType<typeof words>;
