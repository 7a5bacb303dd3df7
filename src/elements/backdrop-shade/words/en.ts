import type {Say} from '../../shared/say.js';
import type {LampKind, MaterialName} from '../vocabulary.js';

export {family} from '../../shared/words/en.js';

/** Numbers come written: `2.1 stops`, `180 mm`, `36%`. `level` is a code value of the finished picture, 0 to 255. A `name` is what a lamp or flag is called. */
export const words = (say: Say) => ({
  say,
  plate: 'Light on the backdrop',

  // the verdict
  looks: {
    black: 'black', nearBlack: 'near black', darkGray: 'dark gray', showing: 'a gray that shows', middle: 'middle gray', light: 'light gray',
  },
  verdict: (stops: string, darker: boolean, level: string, looks: string) =>
    `Backdrop ${stops} ${darker ? 'under' : 'over'} a gray card beside the figure: level ${level} of 255, reads as ${looks}.`,
  verdictUneven: (stops: string, darker: boolean, level: string, looks: string) =>
    `Backdrop ${stops} ${darker ? 'under' : 'over'} a gray card beside the figure at its brightest: level ${level} of 255, reads as ${looks}.`,
  noLight: 'No light reaches the backdrop: level 0, black.',
  short: (stops: string, wish: string) => `${stops} short of the ${wish} asked for below.`,
  spare: (stops: string) => `As dark as asked for, with ${stops} to spare.`,
  reached: 'As dark as asked for.',
  alone: {
    'black-card': (level: string) => `Black card alone would give level ${level}.`,
    'black-velvet': (level: string) => `Black velvet alone would give level ${level}.`,
  },
  keepsAll: 'The figure keeps all of its light.',
  flagTakes: (percent: string, name: string) => `A flag takes up to ${percent} of the ${name} from part of the figure.`,
  exposedRight: (level: string) => `Exposed so that a gray card beside the figure shows as level ${level}.`,
  exposedOff: (stops: string, brighter: boolean, level: string) =>
    `Exposed ${stops} ${brighter ? 'brighter' : 'darker'} than metered: a gray card beside the figure shows that much ${brighter ? 'above' : 'below'} level ${level}.`,
  impossible: (name: string, wanted: string) => `This set cannot be worked out: ${name} should be ${wanted}. The last picture stays.`,
  refused: (text: string, wanted: string, name: string) => `“${text}” does not read as ${wanted} (${name}). The last good value stays in use.`,

  // what the words of the trade mean
  terms: {
    card: 'A gray card throws back 18% of the light; exposed right it is middle gray, and the backdrop is counted from it.',
    key: 'The key is the main lamp.',
    fill: 'The fill is a weaker lamp that lifts the shadows of the key.',
    flag: 'A flag is a card that shades: it keeps a lamp off the backdrop.',
  },

  // the drawing
  strip: (levels: string) => `The backdrop as it will look, with its levels: ${levels}`,
  stripNote: 'Left: the gray card. Right: the backdrop as it will look, and its levels of 255. Under it: stops under the gray card, at the brightest of each column.',
  drawing: 'The set from above and from the side',
  above: 'from above',
  side: 'from the side',
  wish: 'asked for',
  keys: 'Drag a dot, or move it with the arrow keys: 10 mm a step, 50 with Shift.',
  shadows: 'Dark: full shadow of the lamp that a flag shades most. Hatched: its soft edge, where part of the lamp is seen.',
  sides: {
    right: (length: string) => `${length} right`, left: (length: string) => `${length} left`, behind: (length: string) => `${length} behind`,
    before: (length: string) => `${length} in front`, above: (length: string) => `${length} up`, below: (length: string) => `${length} down`,
  },
  atFigure: 'at the figure',
  handle: (name: string, above: boolean, place: string) => `${name}, ${above ? 'from above' : 'from the side'}: ${place}. Arrow keys move it.`,
  names: {backdrop: 'backdrop', camera: 'camera', figure: 'figure', flag: 'flag'},
  numberedFlag: (count: number) => `flag ${count}`,
  /** Lamps by the names that the library gives them. */
  lampNames: {'key': 'key', 'fill': 'fill', 'lamp': 'lamp', 'window': 'window', 'ceiling lamp': 'ceiling lamp'} as Readonly<Record<string, string>>,

  // ways out
  find: 'Find a place for a card',
  move: 'Smallest move that does it',
  looking: 'Looking…',
  enough: 'It is dark enough already.',
  noCard: 'No card keeps a lamp off the backdrop without standing in the picture or in the figure’s light. Move the lamp or the backdrop.',
  noMove: 'No single move does it. Try a card, a darker backdrop, or two moves.',
  standCard: (width: string, height: string, name: string) => `Shade the ${name} with a card ${width} wide and ${height} high`,
  layCard: (width: string, height: string, name: string) => `Shade the ${name} with a card of ${width} by ${height}, held flat`,
  lowerEdge: (height: string, place: string) => `Middle of its lower edge: ${height} above the table, ${place}.`,
  frontEdge: (height: string, place: string) => `Middle of the edge towards the camera: ${height} above the table, ${place}.`,
  behindBase: (length: string) => `${length} behind the back edge of the base`,
  beforeBase: (length: string) => `${length} in front of the base`,
  overBase: (length: string) => `${length} behind the front edge of the base`,
  besideMiddle: (along: string, length: string, right: boolean) => `${along} and ${length} ${right ? 'right' : 'left'} of its middle`,
  upright: 'It stands upright.',
  leans: (length: string, back: boolean) => `Its upper edge is ${length} nearer the ${back ? 'backdrop' : 'camera'} than the lower.`,
  facesCamera: 'Both its ends are as far from the camera.',
  turned: (length: string, rightBack: boolean) => `Its ${rightBack ? 'right' : 'left'} end is ${length} nearer the backdrop than the other.`,
  edgeOn: 'It is seen edge-on from the camera.',
  backdropBack: (length: string) => `Move the backdrop ${length} back`,
  moveBy: {
    nearer: (name: string, length: string) => `Move the ${name} ${length} nearer`,
    away: (name: string, length: string) => `Move the ${name} ${length} away`,
    right: (name: string, length: string) => `Move the ${name} ${length} to the right`,
    left: (name: string, length: string) => `Move the ${name} ${length} to the left`,
    back: (name: string, length: string) => `Move the ${name} ${length} towards the backdrop`,
    front: (name: string, length: string) => `Move the ${name} ${length} towards the camera`,
    up: (name: string, length: string) => `Move the ${name} ${length} up`,
    down: (name: string, length: string) => `Move the ${name} ${length} down`,
  },
  reaches: (stops: string) => `Backdrop then ${stops} under the gray card.`,
  reachesShort: (stops: string) => `Backdrop then ${stops} under the gray card, still less than asked for.`,
  inLight: 'But a card then stands in the figure’s light.',
  costs: (stops: string, shutter: string) => `The figure’s light changes by ${stops}; ${shutter} makes up for it.`,
  off: (name: string) => `Do without the ${name}: switch it off or cover it`,
  hang: {'black-card': 'Hang black card', 'black-velvet': 'Hang black velvet'},
  hangs: (level: string, now: string) => `level ${level} instead of ${now}, the light as it is`,
  set: (shutter: string) => `Set ${shutter}`,
  metered: (stops: string, more: boolean) => `the figure now gets ${stops} ${more ? 'more' : 'less'} light than when it was metered`,
  done: (what: string) => `Done: ${what}.`,
  undo: 'Undo',

  // fields at first sight
  wishField: 'How dark should the backdrop be?',
  wishHint: (level: string, looks: string) =>
    `stops under the gray card; shows as level ${level}, ${looks}. The darker, the less creases and stray light show behind the figure`,
  distance: 'Base to backdrop',
  material: 'Backdrop of',
  materials: {
    'black-velvet': 'Black velvet', 'black-card': 'Black card', 'dark-gray-card': 'Dark gray card', 'gray-card': 'Gray card', 'white-card': 'White card',
  } satisfies Readonly<Record<MaterialName, string>> as Readonly<Record<string, string>>,
  ownMaterial: 'your own',

  // lamps, flags and the rest
  things: 'Lamps, flags, figure and camera: add, place by numbers',
  add: 'Add',
  adding: {lamp: 'A lamp', window: 'A window', ceiling: 'A ceiling lamp', flag: 'A flag (card that shades)'},
  takeAway: (name: string) => `Take the ${name} away`,
  name: 'Name',
  right: 'Right (+), left (−)',
  back: 'Behind (+), in front (−)',
  up: 'Above the table',
  width: 'Width',
  high: 'Height',
  across: 'Diameter',
  power: 'Power',
  powerHint: 'stops against the other lamps',
  aimRight: 'Aimed right',
  aimBack: 'Aimed behind',
  aimUp: 'Aimed above',
  kind: 'Face',
  kinds: {rectangle: 'rectangle', disc: 'round', small: 'small', bulb: 'bare bulb'} satisfies Readonly<Record<LampKind, string>>,
  turn: 'Turned',
  turnHint: 'degrees; 0 faces the camera',
  lean: 'Leaning up',
  leanHint: 'degrees; 90 lies flat',
  degreesWanted: 'degrees from −90 to 90',
  powerWanted: 'a number of stops from −30 to 30',
  figureWidth: 'Figure, side to side',
  figureHeight: 'Figure’s height',
  baseDepth: 'Base, front to back',
  fieldWidth: 'Field width',
  focalLength: 'Focal length',
  tilt: 'Camera looks down',

  // folds
  photo: 'Compare with a photo',
  photoLevel: 'Level of the backdrop at its brightest',
  photoHint: '0 to 255, from the chart of a photo of this set',
  photoTake: (level: string) => `Take level ${level} from the photo`,
  photoWanted: 'a level from 0 to 255, above 0',
  photoUnlit: 'By the plan no light reaches the backdrop: what the photo shows comes from a lamp that is not in it.',
  photoAgrees: (stops: string) => `The photo agrees with the plan, within ${stops}.`,
  photoOff: (stops: string, brighter: boolean) => `The photo’s backdrop is ${stops} ${brighter ? 'brighter' : 'darker'} than the plan says.`,
  likeliest: (name: string, stops: string, more: boolean) =>
    `Likeliest of the plan: the ${name}, if it gave the backdrop ${stops} ${more ? 'more' : 'less'}.`,
  stranger: 'That is a lot: rather a window or a lamp that is not in the plan. Add it and look again.',
  mains: 'LED or tube lamps: even from shot to shot?',
  mainsField: 'Mains',
  even: (shutter: string, mains: number) => `At ${shutter} lamps that pulse with ${mains} Hz mains come out even.`,
  uneven: (shutter: string, mains: number, stops: string) =>
    `At ${shutter} LED and tube lamps on ${mains} Hz mains can come out uneven, from shot to shot or in bands, by up to ${stops} if they go out between pulses.`,
  unevenMuch: (shutter: string, mains: number) =>
    `At ${shutter} LED and tube lamps on ${mains} Hz mains can come out uneven, from shot to shot or in bands, by several stops if they go out between pulses.`,
  sameLight: (aperture: string) => `${aperture} for the same light`,
  setUp: 'Materials, table top and the set as text',
  reflects: 'The backdrop throws back',
  table: 'Table top',
  tables: {0: 'left out', 0.04: 'black', 0.18: 'gray', 0.85: 'white'} as Readonly<Record<number, string>>,
  text: 'The set as text',
  tableLeftOut: 'The table top is left out: light that bounces off it is not counted.',
  bounced: 'Light off walls, figure and backdrop itself is not counted.',

  // cautions: common practice, no source
  cautionsHead: 'Before the lamps are on',
  cautions: [
    'Lamps get hot. Keep cloth, card, paper and boxes clear of them and never leave them burning alone; keep the distances the lamp’s maker gives.',
    'Weigh down stands and clamp cards so that nothing topples onto a lamp or the figure; lay cables where nobody trips.',
    'Do not look into bare LEDs or lamps, and shield them from others’ eyes.',
    'Keep to the rules of your place. Wiring and anything fixed to the mains is for those licensed to do it.',
  ] as readonly string[],
  tooClose: (flag: string, length: string, name: string) =>
    `The ${flag} stands only ${length} from the ${name}. Move it away unless the lamp’s maker allows it.`,
  touching: (flag: string, name: string) => `The ${flag} stands at the face of the ${name}. Move it away unless the lamp’s maker allows it.`,
});

export type ShadeWords = ReturnType<typeof words>;
