import {writeStops} from '../exposure/write.js';
import {lengthIn} from '../units.js';
import type {ShotKey} from './shot.js';
import type {SheetLanguage, SheetNumbers, SheetWords} from './sheet-words.js';

/** Labels of every value, in the words of the trade. */
export const englishLabels = (): Readonly<Record<ShotKey, string>> => ({
  aperture: 'Aperture', shutter: 'Shutter', iso: 'ISO', note: 'Note',
  meteredAperture: 'Metered aperture', meteredShutter: 'Metered shutter', meteredIso: 'Metered ISO', correction: 'Correction asked, stops',
  pay: 'Paid by', clicksPerStop: 'Clicks of the dials', apertureShown: 'Aperture shown', meteredMagnification: 'Metered at magnification',
  apertureWidest: 'Lens fully open', apertureSmallest: 'Lens fully closed', shutterFastest: 'Shortest time', shutterSlowest: 'Longest time',
  isoLowest: 'Base ISO', isoHighest: 'Highest ISO used',
  focalLength: 'Focal length', pupilRatio: 'Pupil magnification', sensorWidth: 'Sensor width', sensorHeight: 'Sensor height',
  fieldWidth: 'Field width', frameWidth: 'Frame width, px', crop: 'Crop kept', tilt: 'Tilt down, degrees', focus: 'Focus behind the base’s front edge',
  focalLengths: 'Lenses at hand', closestFocus: 'Closest focus', room: 'Room for the camera', mostFrames: 'Most frames',
  baseDepth: 'Base depth', overhangFront: 'Overhang in front', overhangFrontHeight: 'Overhang front at height', overhangBack: 'Overhang behind',
  overhangBackHeight: 'Overhang back at height', figureHeight: 'Figure height', figureWidth: 'Figure width',
  pictureWidth: 'Picture width, px', pictureHeight: 'Picture height, px', margin: 'Margin', blurLimit: 'Blur limit, px',
  leastContrast: 'Least contrast', intent: 'Meant to be', unit: 'Lengths in',
  lights: 'Lights', backdropDistance: 'Backdrop behind the base’s middle', backdropReflectance: 'Backdrop', backdropWish: 'Backdrop under the gray card, stops',
});

/** What a record says in English. */
export const englishSheetWords = (): SheetWords => ({
  headings: {
    exposure: 'Exposure', camera: 'Camera', figure: 'Figure', picture: 'Picture', light: 'Light and backdrop', also: 'Also set',
    setUp: 'Set up', measured: 'Measured', unused: 'Typed, not in use',
  },
  labels: englishLabels(),
  measured: {
    photo: 'Photo', taken: 'Taken', size: 'Size, px', file: 'From the file', atBlack: 'At black, any colour', atWhite: 'At white, any colour',
    roomBelow: 'Room to black', roomAbove: 'Room to white', card: 'Gray card', cardOff: 'Card’s gray', balance: 'White balance', spot: 'Measured spot',
  },
  quoted: (text) => `“${text}”`,

  intents: {'dark-backdrop': 'dark, before a dark backdrop', even: 'even, over the whole range of tones'},
  payers: {aperture: 'aperture', shutter: 'shutter', iso: 'ISO'},
  clicks: {1: 'whole stops', 2: 'half stops', 3: 'third stops'},
  apertures: {marked: 'as marked on the lens', working: 'with close-up counted in'},
  materials: {
    'black velvet': 'black velvet', 'black card': 'black card', 'dark gray card': 'dark gray card', 'gray card': 'gray card', 'white card': 'white card',
  },
  crop: (width, height, left, top) => `${width} of the width and ${height} of the height, from ${left} on the left and ${top} at the top`,

  lampNames: {},
  faces: {
    rectangle: (width, height) => `face of ${width} by ${height}`,
    disc: (across) => `round face, ${across} across`,
    small: 'small and aimed',
    bulb: 'bare bulb',
  },
  flag: (width, height) => `card of ${width} by ${height} that shades`,
  table: (share) => `table top throws back ${share}`,
  side: {
    right: (length) => `${length} to the right`, left: (length) => `${length} to the left`, behind: (length) => `${length} behind`,
    before: (length) => `${length} in front`, above: (length) => `${length} up`, below: (length) => `${length} down`,
  },
  atFigure: 'at the middle of the base',
  aimed: (place) => `aimed ${place}`,
  power: (stops, more) => `${stops} ${more ? 'stronger' : 'weaker'}`,

  sensorToFocus: 'Sensor mark to the plane in focus',
  sensorTaken: (distance, sensor) => `${distance} (sensor taken as ${sensor} wide)`,
  lamp: (name) => `Lamp “${name}”`,
  fromAim: (distance) => `${distance} from where it aims`,

  underShare: (share) => `under ${share}`,
  trusted: (trusted) => (trusted ? 'can be relied on' : 'not to be relied on'),
  photoTrusted: (photo, trusted) => `${photo}, ${trusted ? 'can be relied on' : 'not to be relied on'}`,
  asItShould: 'as it should be',
  cardOff: (stops, bright) => `${stops} too ${bright ? 'bright' : 'dark'}`,
  balance: (red, blue) => `red × ${red}, green × 1, blue × ${blue}`,
  level: (code) => `level ${code} of 255`,
  levelAsCard: (code) => `level ${code} of 255, as bright as the gray card`,
  levelFromCard: (code, stops, above) => `level ${code} of 255, ${stops} ${above ? 'above' : 'under'} the gray card`,
});

/** Numbers with a point, as the core writes them. */
const plainNumbers = (): SheetNumbers => ({
  number: (value, decimals) => String(+value.toFixed(decimals)),
  fixed: (value, decimals) => value.toFixed(decimals),
  percent: (share) => `${+(share * 100).toFixed(2)} %`,
  length: (mm, unit) => `${+lengthIn(mm, unit).toPrecision(4)} ${unit}`,
  stops: (stops) => `${writeStops(stops, 1).replace('+', '')} ${stops >= 1.05 || stops < 0.05 ? 'stops' : 'stop'}`,
  text: (written) => written,
  between: ', ',
});

/** English, the language of the core. */
export const english = (): SheetLanguage => ({words: englishSheetWords(), numbers: plainNumbers()});
