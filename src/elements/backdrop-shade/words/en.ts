import type {Say} from '../../shared/say.js';
import type {Added} from '../things.js';

export {family} from '../../shared/words/en.js';

/** Values come written: `5.1 stops`, `230 mm`, `key`. Codes are those of the picture, 0 to 255. */
export const words = (say: Say) => ({
  say,
  plate: 'Light on the backdrop',
  strip: (codes: string) => `The backdrop as it will look, with its values from 0 (black) to 255 (white): ${codes}`,
  drawing: 'The set from above and from the side',
  above: 'from above',
  side: 'from the side',
  under: 'stops under the gray card, brightest of each column',
  wish: 'asked for',

  // how dark
  looks: {black: 'black', nearBlack: 'near black', darkGray: 'dark gray', shows: 'a gray that shows', middleGray: 'middle gray', lightGray: 'light gray'},
  noLight: 'No light reaches the backdrop: black, value 0 of 255.',
  verdict: (stops: string, under: boolean, uneven: boolean, code: string, looks: string) =>
    `${uneven ? 'At its brightest the' : 'The'} backdrop will be ${looks}: ${stops} ${under ? 'under' : 'over'} the gray card, value ${code} of 255.`,
  short: (stops: string, wish: string) => `${stops} short of the ${wish} asked for.`,
  reached: 'As dark as you want it.',
  spare: (stops: string) => `As dark as you want it, with ${stops} to spare.`,
  darker: (material: string, code: string) => `${material} alone would give value ${code}.`,
  keepsAll: 'The figure keeps all of its light.',
  flagTakes: (share: string, lamp: string) => `A flag takes up to ${share} of the ${lamp} from part of the figure.`,
  exposedForCard: 'Exposed so that a gray card beside the figure shows as 118 of 255.',
  exposedOff: (stops: string, brighter: boolean) => `Exposed ${stops} ${brighter ? 'brighter' : 'darker'} than asked for: a gray card beside the figure shows that much `
    + `${brighter ? 'above' : 'below'} 118 of 255.`,

  // things and places
  names: {key: 'key', fill: 'fill', flag: 'flag', backdrop: 'backdrop', camera: 'camera', figure: 'figure'},
  flagNumber: (number: number) => `flag ${number}`,
  place: {
    right: (length: string) => `${length} right`, left: (length: string) => `${length} left`, behind: (length: string) => `${length} behind`,
    before: (length: string) => `${length} in front`, up: (length: string) => `${length} up`, below: (length: string) => `${length} below`, here: 'at the figure',
  },
  handle: (name: string, fromAbove: boolean) => `${name}, ${fromAbove ? 'from above' : 'from the side'}`,
  keys: 'Drag a dot, or move it with the arrow keys: 10 mm a step, 50 with Shift. Places are counted from the middle of the base.',
  glossary: 'A gray card throws back 18% of the light; exposed right it is middle gray, from which the stops here are counted. The key is the main lamp, the fill a weaker one that lightens its shadows. A flag is a card that stands in a lamp’s way, so that its light misses the backdrop.',
  shadows: 'Dark: full shadow of the lamp that a flag shades most. Hatched: its soft edge, where part of the lamp is seen.',

  // ways out
  find: 'Find a place for a card',
  move: 'Smallest move that does it',
  looking: 'Looking…',
  enough: 'It is dark enough already.',
  noFlag: 'No card keeps a lamp off the backdrop without standing in the picture or in the figure’s light. Move the lamp to the side or the backdrop back, then look again.',
  noMove: 'No single move does it. Try a card, a darker backdrop, or two moves.',
  standCard: (width: string, height: string, lamp: string) => `Stand a card of ${width} by ${height} in the way of the ${lamp}`,
  lowerEdge: (height: string, from: string, to: string) => `Lower edge ${height} above the table; from the middle of the base to its ends: ${from} – ${to}`,
  lyingFlat: (height: string, at: string) => `Lying flat ${height} above the table; from the middle of the base to its middle: ${at}`,
  upright: 'upright',
  leaning: (degrees: string, toCamera: boolean) => `leaning ${degrees} to the ${toCamera ? 'camera' : 'backdrop'}`,
  backdropBack: (by: string) => `Move the backdrop ${by} back`,
  moveThing: (name: string, by: string, way: string) => `Move the ${name} ${by} ${way}`,
  ways: {
    nearer: 'nearer', away: 'away', right: 'to the right', left: 'to the left', toBackdrop: 'towards the backdrop', toCamera: 'towards the camera', up: 'up', down: 'down',
  },
  reaches: (stops: string, short: boolean) => `${stops} under the gray card${short ? ', still short of the wish' : ''}`,
  keepsLight: 'the figure keeps all of its light',
  standsInLight: 'but a card then stands in the figure’s light',
  paid: (stops: string, shutter: string) => `the figure’s light changes by ${stops}, ${shutter} restores it`,
  swap: (material: string) => `Hang ${material}`,
  swapCost: (then: string, now: string) => `value ${then} instead of ${now}, the light as it is`,
  doWithout: (lamp: string) => `Do without the ${lamp}: switch it off`,
  set: (value: string) => `Set ${value}`,
  restores: (stops: string, more: boolean) => `the figure now gets ${stops} ${more ? 'more' : 'less'} light than when it was metered`,
  done: (what: string) => `Done: ${what}`,
  undo: 'Undo',

  // the backdrop's fields
  wishField: 'How dark should the backdrop be?',
  wishHint: (code: string, looks: string) => `stops under the gray card: value ${code}, ${looks}. The darker it is, the less its creases and stray light show behind the figure.`,
  distance: 'Middle of base to backdrop',
  material: 'Backdrop of',
  materials: {
    'black-velvet': 'Black velvet', 'black-card': 'Black card', 'dark-gray-card': 'Dark gray card', 'gray-card': 'Gray card', 'white-card': 'White card',
  },
  inText: {
    'black-velvet': 'black velvet', 'black-card': 'black card', 'dark-gray-card': 'dark gray card', 'gray-card': 'gray card', 'white-card': 'white card',
  },
  reflects: 'Light it throws back',
  ownMaterial: 'something else',
  table: 'Table top',
  tables: {0: 'left out', 0.04: 'black', 0.18: 'gray', 0.85: 'white'},

  // the set's fields
  things: 'Lamps, flags, figure and camera: sizes and places, add and take away',
  add: 'Add',
  adding: {lamp: 'A lamp', window: 'A window', ceiling: 'A ceiling lamp', flag: 'A flag'} satisfies Record<Added, string>,
  newNames: {lamp: 'lamp', window: 'window', ceiling: 'ceiling lamp'},
  takeAway: (name: string) => `Take the ${name} away`,
  name: 'Name',
  right: 'Right (+), left (−)',
  back: 'Behind (+), in front (−)',
  up: 'Above the table',
  width: 'Width',
  high: 'Height',
  across: 'Diameter',
  power: 'Power',
  powerHint: 'stops against the others',
  aimRight: 'Aimed right (+), left (−)',
  aimBack: 'Aimed behind (+), in front (−)',
  aimUp: 'Aimed above the table',
  kind: 'Face',
  kinds: {rectangle: 'rectangle', disc: 'round', small: 'small', bulb: 'bare bulb'},
  turn: 'Turned',
  lean: 'Leaning up',
  turnHint: 'degrees; 0 faces the camera',
  leanHint: 'degrees; 90 lies flat',
  degreesWanted: 'degrees from −90 to 90',
  powerWanted: 'a number of stops from −30 to 30',
  setUp: 'Camera, table top and the set as text',
  text: 'The set as text',
  figureWidth: 'Figure, side to side',
  figureHeight: 'Figure’s height',
  baseDepth: 'Base, front to back',
  fieldWidth: 'Field width',
  focalLength: 'Focal length',
  tilt: 'Camera looks down',
  direct: 'The table top is left out: light that bounces off it is not counted.',
  bounced: 'Light off walls, figure and backdrop itself is not counted.',
  impossible: (what: string, wanted: string) => `This set cannot be worked out: ${what} should be ${wanted}. The last picture stays.`,
  refused: (sentence: string, what: string) => `${sentence} (${what})`,

  // a photo beside it
  photo: 'Compare with a photo',
  photoCode: 'Backdrop at its brightest in the photo',
  photoHint: 'a value from 0 to 255, from the chart of a photo of this set',
  photoTake: (code: string) => `Take ${code} from the photo`,
  photoWanted: 'a value from 0 to 255, above 0',
  photoUnplanned: 'By the plan no light reaches the backdrop: what the photo shows comes from a lamp that is not in it.',
  photoAgrees: (stops: string) => `The photo agrees with the plan, within ${stops}.`,
  photoDiffers: (stops: string, brighter: boolean) => `The photo’s backdrop is ${stops} ${brighter ? 'brighter' : 'darker'} than the plan says.`,
  photoLikeliest: (lamp: string, stops: string, more: boolean) => `Likeliest of the plan: the ${lamp}, if it gave the backdrop ${stops} ${more ? 'more' : 'less'}.`,
  photoStranger: 'That is a lot: rather a window or a lamp that is not in the plan. Add it and look again.',

  // mains
  mains: 'Lamps that flicker with the mains',
  mainsField: 'Mains',
  shutter: 'Shutter',
  even: (time: string, mains: string) => `At ${time} lamps that pulse with ${mains} mains come out even.`,
  uneven: (time: string, mains: string, stops: string) =>
    `At ${time} LED and tube lamps on ${mains} mains can come out uneven, from shot to shot or in bands, by up to ${stops} if they go out between pulses.`,
  veryUneven: (time: string, mains: string) =>
    `At ${time} LED and tube lamps on ${mains} mains can come out uneven, from shot to shot or in bands, by several stops if they go out between pulses.`,
  sameLight: (aperture: string) => `${aperture} for the same light`,

  // cautions: always shown. Common practice, no source
  cautionsTitle: 'Before the lamps are on',
  cautions: [
    'Lamps get hot. Keep cloth, card, paper and boxes clear of them and never leave them burning alone; keep the distances the lamp’s maker gives.',
    'Weigh down stands and clamp cards so that nothing topples onto a lamp or the figure; lay cables where nobody trips.',
    'Do not look into bare LEDs or lamps, and shield them from others’ eyes.',
    'Keep to the rules of your place. Wiring and anything fixed to the mains is for those licensed to do it.',
  ],
  closeTo: (card: string, gap: string, lamp: string) => `The ${card} stands only ${gap} from the ${lamp}. Move it away unless the lamp’s maker allows it.`,
  atFace: (card: string, lamp: string) => `The ${card} stands at the face of the ${lamp}. Move it away unless the lamp’s maker allows it.`,
});

export type ShadeWords = ReturnType<typeof words>;
