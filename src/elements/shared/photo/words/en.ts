import type {FileKind} from '../../../../photo/kind.js';
import type {PhotoTrouble} from '../../../../photo/problem.js';

/** What is wrong with a file, as a sentence about `file`, which is `“name.jpg”` or what stands for one without a name. */
export type TroubleWords = Readonly<Record<Exclude<PhotoTrouble, 'too-large' | 'not-a-picture' | 'unsupported'>, (file: string) => string>>;

/** Kinds of file that have a name people know. */
export type NamedKind = Extract<FileKind, 'avif' | 'tiff' | 'jpeg-xl' | 'jpeg-2000' | 'layers' | 'video' | 'document' | 'drawing'>;

/** Said by every element that opens a photo. Spread into its words; what it says otherwise follows. */
export const photoWords = {
  // choosing one
  choose: 'Choose a photo',
  chooseOther: 'Choose another photo',
  staysHere: 'It is read on this device and goes nowhere.',
  opening: 'Reading the photo…',

  // what did not open
  named: (name: string) => `“${name}”`,
  nameless: 'What was given',
  kinds: {
    avif: 'an AVIF file', tiff: 'a TIFF file', 'jpeg-xl': 'a JPEG XL file', 'jpeg-2000': 'a JPEG 2000 file', layers: 'a layered picture',
    video: 'a film', document: 'a document', drawing: 'a drawing made of lines',
  } as Readonly<Record<NamedKind, string>>,
  trouble: {
    empty: (file) => `${file} is empty: there is nothing in the file. Copy it from the camera again.`,
    unreadable: (file) => `${file} could not be read: it may have been moved or taken away. Choose it again.`,
    raw: (file) => `${file} is a raw file, straight from the sensor, and has no tones yet. Develop it, or choose the JPEG that was saved with it.`,
    heic: (file) => `${file} is in a phone’s space-saving format (HEIC) that this browser does not open. Set the phone to save in the most compatible format, or export the photo as JPEG.`,
    'cut-short': (file) => `${file} stops before its end, as when a copy was broken off. Copy or send it again.`,
    damaged: (file) => `${file} is damaged inside and cannot be shown. Copy it from the camera again, or open it elsewhere and export it as JPEG.`,
  } as TroubleWords,
  notAPicture: (file: string, kind: string | undefined) =>
    `${file} is ${kind ?? 'no picture that can be recognised'}. Choose a photo saved as JPEG, PNG, WebP or AVIF.`,
  unsupported: (file: string, kind: string | undefined) =>
    `${file} is ${kind ?? 'a picture file'}, which this browser does not open. Export it as JPEG or PNG.`,
  tooLarge: (file: string) => `${file} is too large to hold. Export it smaller.`,
  tooManyBytes: (file: string, megabytes: string) => `${file} is too large to hold: more than ${megabytes}. Export it smaller.`,
  tooManyPixels: (file: string, size: string, megapixels: string | undefined) =>
    `${file} is too large to hold: ${size}${megapixels ? `, and ${megapixels} megapixels is the most` : ''}. Export it smaller.`,
  notLoaded: (src: string, status: string | undefined) =>
    `The photo at “${src}” did not load (${status ?? 'no answer from there'}). Choose one of your own, or look whether the address is right.`,
  /** @param problem - a whole sentence on what the attribute cannot take */
  attribute: (name: string, problem: string) => `${name}: ${problem}`,

  // the setting that puts the exposure right
  wayOut: (from: string, to: string, held: string) => `${from} → ${to} at ${held}`,
  wayStands: (to: string, held: string) => `${to} at ${held}`,
  wayCost: (stops: string, brighter: boolean) => `${stops} ${brighter ? 'brighter' : 'darker'} than this photo`,
  wayCostNow: (stops: string, brighter: boolean, now: string, brighterNow: boolean) =>
    `${stops} ${brighter ? 'brighter' : 'darker'} than this photo, and ${now} ${brighterNow ? 'brighter' : 'darker'} than what is set now`,
  takenAt: (exposure: string) => `It was taken at ${exposure}.`,
  wayCloseUp: (stops: string, less: boolean) => `From where the next shot is taken, close-up loses ${stops} ${less ? 'less' : 'more'} light; that is counted.`,
  wayEnds: (setting: string, stops: string, short: boolean) => `${setting} ends there: ${stops} ${short ? 'short' : 'too much'}.`,
  wayRounds: (stops: string, brighter: boolean) => `The nearest click is ${stops} ${brighter ? 'brighter' : 'darker'} than that.`,
  wayDone: (setting: string) => `Done: the next shot is set to ${setting}.`,
  undo: 'Undo',
};

export type PhotoWords = typeof photoWords;
