import type {Say} from '../../shared/say.js';
import {sensor} from '../../shared/sensor/words/en.js';

export {family} from '../../shared/words/en.js';

/** What a fine line looks like with so much of its contrast left. */
export type Clarity = 'crisp' | 'clear' | 'soft' | 'faint' | 'lost';

/** What stands behind the folds. Values come written. */
export const words = (say: Say) => ({
  say,
  ...sensor,
  lines: {
    aperture: 'Aperture', shutter: 'Shutter', camera: 'Sensor mark to focus', focus: 'Focus behind front edge', field: 'Frame shows, at the focus',
    zone: 'Sharp along the table', contrast: 'Finest line at its softest', pixels: 'Pixels kept across', frames: 'Frames', price: 'Price',
    cost: 'Counts as',
  },
  shutterEach: (shutter: string) => `${shutter} each`,
  bodyShows: (aperture: string, shown: string) => `${aperture}, body shows ${shown}`,
  zone: (from: string, to: string) => `${from} to ${to}`,
  zoneWithoutEnd: (from: string) => `${from} to no end`,
  clarity: (clarity: Clarity, contrast: string) => `${clarity}, ${contrast} left`,
  kept: (pixels: string, share: string) => `${pixels}, ${share}`,
  curveText: (stack: boolean, aperture: string, contrast: string) =>
    `What the finest line keeps of its contrast where it is softest, ${stack ? 'in as many frames as each aperture takes' : 'from this place, in one frame'}: ${aperture} leaves ${contrast}.`,
  noneBetter: 'No other click leaves more.',
  better: (aperture: string, contrast: string) => `${aperture} would leave the most, ${contrast}.`,
  worthMost: (aperture: string, contrast: string, frames: string) => `Worth the most is ${aperture} with ${contrast}, in ${frames}.`,
  notWorth: 'Some other clicks keep more, but not as much more as their extra frames ask for.',
  wished: (contrast: string) => `At least ${contrast} is wished for.`,
  best: (aperture: string, contrast: string) => `best ${aperture}: ${contrast}`,
  bestStack: (aperture: string, frames: string, contrast: string) => `${aperture}, ${frames}: ${contrast}`,
  defocus: 'lost to defocus',
  diffraction: 'lost to diffraction',
  ratesText: 'Every way is counted in seconds of patience, and the cheapest comes first. Way back and pixels count from the nearest place that takes in the figure. How much a thing counts is our judgement:',
  rate: {
    seconds: 'a second of exposing, moving or settling', clicks: 'a click of the aperture', back: (length: string) => `${length} further back`,
    pixels: (pixels: string) => `${pixels} of width cropped away`, frames: 'a further frame to take and blend', otherLens: 'a change of lens',
  },
  baseDepth: 'Base depth',
  overhangFront: 'Past the front edge',
  overhangFrontHeight: '… at a height of',
  overhangBack: 'Past the back edge',
  overhangBackHeight: '… at a height of',
  figureHeight: 'Height above the table',
  figureWidth: 'Figure, side to side',
  lookingDown: 'Camera looks down by',
  frameWidth: 'Frame width as held, px',
  apertureWidest: 'Widest aperture',
  apertureSmallest: 'Smallest aperture',
  shutterFastest: 'Shortest time',
  shutterSlowest: 'Longest time',
  apertureShown: 'In close-up the body shows',
  marked: 'the lens’s own f-number',
  working: 'a larger f-number',
  pupilRatio: 'Rear pupil ÷ front pupil',
  pupilRatioHint: 'width of the opening seen from behind and from the front; 1 when unknown',
  closestFocus: 'Closest focus',
  closestFocusHint: 'one for each lens, as far as known',
  meteredMagnification: 'Magnification when metered',
  meteredMagnificationHint: 'sensor width ÷ width seen; 0 for a hand-held meter',
  blurLimit: 'Blur that still looks sharp, px',
  leastContrast: 'Contrast the finest line keeps',
  leastContrastHint: '1 is all of it, 0.3 is 30%',
  mostFrames: 'Frames at most',
  mostFramesHint: '1 for no blending',
  unit: 'Lengths in',
});

export type FoldWords = ReturnType<typeof words>;
