import {NO_SHIFT} from '../core/tone/level.js';
import type {Pixels} from '../core/tone/pixels.js';
import {countTileRow, startTiles} from '../core/tone/tiles.js';
import {decodeApart} from './apart.js';
import {decodeBitmap, pixelsOf, previewOf} from './decode.js';
import type {Breathe} from './decode.js';
import {readCellMeans} from './jpeg-cells.js';
import type {CellMeans} from './jpeg-cells.js';
import {fileFacts} from './kind.js';
import type {FileFacts, FileKind} from './kind.js';
import {readSettings} from './metadata.js';
import type {PhotoProblem, PhotoTrouble} from './problem.js';
import type {Picture} from './questions.js';
import {roundedOff} from './rounded-off.js';
import type {PhotoSettings} from './settings.js';

/** Most pixels that are opened. They take four bytes each while the photo is open, and twice that while it is opened. */
export const MOST_PIXELS = 120_000_000;
/** Most bytes that are read: no picture of so many pixels needs more. */
export const MOST_BYTES = 512 * 2 ** 20;
/** Longest side of the preview, pixels: sharp across the widest column on a dense screen. */
const PREVIEW_SIDE = 1600;
/** Enough of a file to tell what it is. */
const HEAD_BYTES = 2 ** 16;

/** Files that no browser opens as what they are. */
const HOPELESS: Readonly<Partial<Record<FileKind, PhotoTrouble>>> = {
  raw: 'raw', unknown: 'not-a-picture', document: 'not-a-picture', video: 'not-a-picture', drawing: 'not-a-picture',
  layers: 'unsupported', empty: 'empty',
};

/** What to call it when the browser fails to decode a file: some open them, some do not. */
const NOT_EVERYWHERE: Readonly<Partial<Record<FileKind, PhotoTrouble>>> = {
  heic: 'heic', avif: 'unsupported', tiff: 'unsupported', 'jpeg-xl': 'unsupported', 'jpeg-2000': 'unsupported',
};

/** A file that became a picture. */
export interface Developed {
  readonly picture: Picture;
  readonly preview: ImageBitmap;
  readonly facts: FileFacts;
  readonly settings: PhotoSettings;
}

/**
 * Turns a file into a picture that can be asked things. Runs wherever it is called, worker or page.
 * @returns the picture, or why there is none; never rejects for anything the file does
 */
export async function develop(file: Blob, breathe: Breathe): Promise<Developed | PhotoProblem> {
  const read = await readFile(file);
  if ('problem' in read) return read;
  const {bytes, facts} = read;
  const refuse = refusal(file, facts);
  if (facts.cutShort) return refuse('cut-short');
  if (facts.width * facts.height > MOST_PIXELS) return {...refuse('too-large'), limit: {pixels: MOST_PIXELS}};
  const settings: PhotoSettings = facts.metadata ? await readSettings(bytes, facts) : {leftOut: []};
  let bitmap: ImageBitmap;
  try {
    bitmap = (facts.kind === 'jpeg' ? await decodeApart(bytes) : undefined) ?? await decodeBitmap(file);
  } catch {
    return refuse(NOT_EVERYWHERE[facts.kind] ?? 'damaged');
  }
  try {
    if (bitmap.width * bitmap.height > MOST_PIXELS) return {...refuse('too-large'), limit: {pixels: MOST_PIXELS}};
    const pixels = await pixelsOf(bitmap, facts.alpha, breathe);
    const tiles = startTiles(pixels);
    while (countTileRow(tiles)) await breathe();
    const shifts = shiftsFrom(pixels, facts.kind === 'jpeg' ? file : undefined, settings.orientation ?? 1, breathe);
    const picture: Picture = {pixels, tiles, shifts};
    return {picture, preview: await previewOf(bitmap, PREVIEW_SIDE), facts, settings};
  } catch (error) {
    // No memory for pixels (RangeError) or for a canvas or preview (DOMException).
    if (!(error instanceof RangeError || error instanceof DOMException)) throw error;
    return {...refuse('too-large'), limit: {pixels: MOST_PIXELS}};
  } finally {
    bitmap.close();
  }
}

/** A JPEG file is read once more, when what its decoder rounded off is first wanted: most photos are never asked for it. */
function shiftsFrom(pixels: Pixels, jpeg: Blob | undefined, orientation: number, breathe: Breathe): Picture['shifts'] {
  let cells: Promise<CellMeans | undefined> | undefined;
  const read = async (file: Blob) => readCellMeans(new Uint8Array(await file.arrayBuffer()), breathe);
  return async () => {
    // A file that cannot be read any more still leaves its pixels.
    const known = await (cells ??= jpeg ? read(jpeg).catch(() => undefined) : Promise.resolve(undefined));
    return (region) => (known ? roundedOff(known, pixels, region, orientation) : NO_SHIFT);
  };
}

type Read = {readonly bytes: Uint8Array<ArrayBuffer>; readonly facts: FileFacts};

async function readFile(file: Blob): Promise<Read | PhotoProblem> {
  try {
    // A file that is no picture is told from its beginning, however large it is.
    const head = fileFacts(new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer()));
    const hopeless = HOPELESS[head.kind];
    if (hopeless) return refusal(file, {...head, width: 0, height: 0})(hopeless);
    if (file.size > MOST_BYTES) return {...refusal(file, head)('too-large'), limit: {bytes: MOST_BYTES}};
    const bytes = new Uint8Array(await file.arrayBuffer());
    return {bytes, facts: fileFacts(bytes)};
  } catch {
    return refusal(file, {kind: 'unknown', width: 0, height: 0})('unreadable');
  }
}

function refusal(file: Blob, {kind, width, height}: Pick<FileFacts, 'kind' | 'width' | 'height'>) {
  return (problem: PhotoTrouble): PhotoProblem => ({
    problem, kind, size: file.size, name: 'name' in file && typeof file.name === 'string' ? file.name : '',
    ...(width > 0 && height > 0 ? {width, height} : {}),
  });
}
