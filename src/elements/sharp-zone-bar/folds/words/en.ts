import type {Say} from '../../../shared/say.js';
import {sensor} from '../../../shared/sensor/words/en.js';

export {family} from '../../../shared/words/en.js';

/** Values come written: `f/11`, `42 mm`, `1.5 px`. A place is one that the words of the bar have, a part is `at the front edge`. */
export const words = (say: Say) => ({
  say,
  ...sensor,

  // what is set up once
  overhangFront: 'Past the front edge',
  overhangFrontHeight: '… at a height of',
  overhangBack: 'Past the back edge',
  overhangBackHeight: '… at a height of',
  figureHeight: 'Height above the table',
  tilt: 'Camera looks down by',
  distance: 'Camera to focus',
  distanceHint: 'from the ⌀ on the body, where the sensor lies; sets the field width',
  room: 'Room for the camera',
  roomHint: 'farthest that it can stand from the focus',
  apertureWidest: 'Widest aperture',
  apertureSmallest: 'Smallest aperture',
  apertureShown: 'Body shows f-numbers',
  marked: 'as engraved',
  working: 'with close-up counted in',
  pupilRatio: 'Pupil ratio of the lens',
  pupilRatioHint: 'how large its opening looks from behind, over how large from the front; 1 when unknown',
  pictureWidth: 'Finished width, pixels',
  frameWidth: 'Frame width, pixels',
  blurLimit: 'Blur limit, finished px',
  unit: 'Lengths in',
  inches: 'inches',
  kept: (width: string, pixels: string) => `The crop keeps ${width} of the sensor’s width, ${pixels}.`,

  // the finest line
  detail: 'Finest line',
  detailHint: '1 px, or 0.2 mm on the figure',
  lost: 'nothing left',
  lostAt: 'lost',
  contrastCaption: 'contrast of the finest line',
  tooFine: (width: string) => `A line ${width} wide is too fine for this opening: nothing of its contrast is left, in focus either.`,
  keeps: (width: string, inFocus: string, front: string, frontKeeps: string, back: string, backKeeps: string) =>
    `A line ${width} wide keeps ${inFocus} of its contrast in focus, ${frontKeeps} ${front}, ${backKeeps} ${back}.`,
  none: 'none',

  // a stack
  frames: (aperture: string, count: number, places: string) => say.plural(count, {
    one: `At ${aperture}, one frame holds it, focused this far behind the base’s front edge: ${places}.`,
    other: `At ${aperture}, ${count} frames hold it, each sharp zone overlapping the next by a quarter or more. `
      + `Focus behind the base’s front edge, from the front on: ${places}.`,
  }),
  tooManyAt: (aperture: string) => `At ${aperture} it would take more frames than anybody takes.`,
  tooMany: 'It would take more frames than anybody takes, at any aperture.',
  bestNow: 'No aperture is better for fine lines from here.',
  best: (aperture: string, count: number) => say.plural(count, {
    one: `Best for fine lines from here: one frame at ${aperture}.`,
    other: `Best for fine lines from here: ${count} frames at ${aperture}. A shot plan also counts the work of each frame and may take fewer.`,
  }),
  stackTakes: (seconds: string, time: string, contrast: string) =>
    `With ${seconds} between frames they take about ${time} in all; where it is weakest the finest line keeps ${contrast} of its contrast.`,
  setStack: (aperture: string, shutter: string) => `Set ${aperture} and ${shutter} for it`,

  // a step back
  back: 'Camera back by',
  slide: 'Slide to see what a step back is worth: the picture is cropped to what it shows now.',
  worth: (stops: string, now: string, then: string) => `Worth ${stops} of depth: the sharp zone grows from ${now} to ${then}, at the same f-number.`,
  worthWithoutEnd: (stops: string) => `Worth ${stops} of depth: the sharp zone no longer ends behind, at the same f-number.`,
  costs: (share: string, left: string, needed: string) => `It costs ${share} of the pixels across: ${left} left, ${needed} needed.`,
  reach: (length: string) => `Your pixels reach ${length} back.`,
  noReach: 'There are no pixels to spare.',
  roomReach: (length: string) => `The room for the camera reaches ${length} back.`,
  noRoom: 'There is no more room for the camera.',
  goBack: (length: string) => `Go ${length} back and crop`,
  goBackNowhere: 'Go back and crop',

  // two points on a photographed ruler
  rulerHow: 'Drag the two points onto two graduations. Both must lie at the same distance from the camera, in focus, on a ruler held across the '
    + 'view: along a ruler that runs away from the camera the scale changes, and two points cannot say how.',
  photoLinked: 'No photo is open yet. Open one in the tonal chart of this page: it is linked with this bar, and the photo then shows up here.',
  photoAlone: 'Once a tonal chart on this page is linked with this bar, a photo that is open there shows up here.',
  photo: 'Photo with two points',
  points: ['First point', 'Second point'] as readonly [string, string],
  at: (x: string, y: string) => `${x} pixels from the left, ${y} from the top`,
  cropped: 'This photo has another shape than the sensor. If it was cropped, the field comes out too narrow: take it as it left the camera.',
  apart: 'Length between the points',
  apartHint: 'as the ruler counts it',
  together: 'The two points lie on one another. Drag one of them away.',
  takesIn: (field: string, magnification: string) => `The frame takes in ${field} across: a magnification of ${magnification}.`,
  isSet: 'That is what is set.',
  setNow: (field: string, off: string, less: boolean) => `Set now: ${field}, ${off} ${less ? 'less' : 'more'}.`,
  useField: (field: string) => `Set the field width to ${field}`,

  // a reader's own limit
  ownHow: 'Photograph a flat ruler that runs away from the camera past the base’s front edge, with the settings above. '
    + 'Look at it in the finished size and read off what still looks sharp.',
  zero: 'Graduation at the front edge',
  nearest: 'Nearest still sharp',
  farthest: 'Farthest still sharp',
  farthestWanted: 'a graduation beyond the nearest',
  ownLimit: (limit: string) => `Your own limit is ${limit}.`,
  focusWas: (place: string) => `The focus was ${place}, where it was meant to be.`,
  focusWasOff: (place: string, off: string, behind: boolean) => `The focus was ${place}, ${off} ${behind ? 'behind' : 'before'} where it was meant to be.`,
  useOwn: 'Use this limit and focus from now on',
});

export type FoldWords = ReturnType<typeof words>;
