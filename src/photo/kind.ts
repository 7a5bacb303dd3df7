import {readBoxes} from './boxes.js';
import {fourLetters, startsWith, word16, word32} from './bytes.js';
import {readJpeg} from './jpeg.js';
import {readPng} from './png.js';
import {isRawTiff} from './tiff.js';
import {readWebp} from './webp.js';

/** What a file is by its contents. `unknown` is not a picture, as far as anyone can tell. */
export type FileKind =
  | 'jpeg' | 'png' | 'webp' | 'avif' | 'gif' | 'bmp'
  | 'heic' | 'raw' | 'tiff' | 'jpeg-xl' | 'jpeg-2000' | 'layers' | 'drawing' | 'video' | 'document' | 'empty' | 'unknown';

/** What can be said of a picture file before it is decoded. */
export interface FileFacts {
  readonly kind: FileKind;
  /** Pixels across and down as stored, before any rotation; 0 when the file does not say so early. */
  readonly width: number;
  readonly height: number;
  /** Whether the end of the picture is missing. */
  readonly cutShort: boolean;
  /** Bits a channel; what is above 8 is counted at 8. */
  readonly bits: number;
  readonly colours: 'colour' | 'gray' | 'palette' | 'cmyk';
  /** Whether pixels may be transparent. */
  readonly alpha: boolean;
  /** Whether the picture is stored from coarse to fine. */
  readonly progressive: boolean;
  /** Whether it holds more than one picture; the first is taken. */
  readonly animated: boolean;
  /** Whether a colour profile comes with it. */
  readonly profile: boolean;
  /** Whether it carries metadata worth loading a reader for. */
  readonly metadata: boolean;
}

/** What a reader of one format found: the facts that differ from {@link PLAIN}. */
export type FoundFacts = Partial<Omit<FileFacts, 'kind'>>;

const PLAIN: Omit<FileFacts, 'kind'> = {
  width: 0, height: 0, cutShort: false, bits: 8, colours: 'colour', alpha: false, progressive: false, animated: false,
  profile: false, metadata: false,
};

/** One kind of file: how it starts, and how its facts are read. */
interface Signature {
  readonly kind: FileKind;
  readonly starts: (bytes: Uint8Array) => boolean;
  readonly facts?: (bytes: Uint8Array) => FoundFacts;
}

const ascii = (text: string, at = 0) => {
  const pattern = Array.from(text, (letter) => letter.charCodeAt(0));
  return (bytes: Uint8Array) => startsWith(bytes, pattern, at);
};
const brand = (...brands: readonly string[]) => (bytes: Uint8Array) => {
  if (fourLetters(bytes, 4) !== 'ftyp') return false;
  return brandsOf(bytes).some((found) => brands.includes(found));
};
const either = (...tests: readonly ((bytes: Uint8Array) => boolean)[]) => (bytes: Uint8Array) =>
  tests.some((test) => test(bytes));

/** Major brand and compatible brands of a file made of boxes; `mif1` alone says neither codec. */
function brandsOf(bytes: Uint8Array): readonly string[] {
  const end = Math.min(word32(bytes, 0), bytes.length, 512);
  const brands = [fourLetters(bytes, 8)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(fourLetters(bytes, at));
  return brands;
}

const isTiff = either(ascii('II*\0'), ascii('MM\0*'), ascii('II+\0'), ascii('MM\0+'));

/** Signatures that are somebody's name are written as numbers. */
const signed = (...codes: readonly number[]) => (bytes: Uint8Array): boolean => startsWith(bytes, codes);

/**
 * The first that fits decides. Sources: the formats' published signatures, from memory; raw files are kept apart from
 * each other by nothing here, since none of them opens in a browser.
 */
const signatures = (): readonly Signature[] => [
  {kind: 'jpeg', starts: (bytes) => startsWith(bytes, [0xff, 0xd8, 0xff]), facts: readJpeg},
  {kind: 'png', starts: ascii('\x89PNG\r\n\x1a\n'), facts: readPng},
  {kind: 'webp', starts: (bytes) => fourLetters(bytes, 0) === 'RIFF' && fourLetters(bytes, 8) === 'WEBP', facts: readWebp},
  {kind: 'avif', starts: brand('avif', 'avis'), facts: readBoxes},
  {kind: 'raw', starts: brand('crx ')},
  {kind: 'heic', starts: brand('heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'), facts: readBoxes},
  {kind: 'video', starts: either((bytes) => fourLetters(bytes, 4) === 'ftyp', ascii('\x1aE\xdf\xa3'),
    (bytes) => fourLetters(bytes, 0) === 'RIFF' && fourLetters(bytes, 8) === 'AVI ')},
  {kind: 'raw', starts: (bytes) => isTiff(bytes) && isRawTiff(bytes)},
  {kind: 'raw', starts: either(ascii('IIRO'), ascii('IIRS'), ascii('MMOR'), ascii('IIU\0'), ascii('\0MRM'), ascii('FOVb'),
    signed(0x46, 0x55, 0x4a, 0x49), ascii('HEAP', 6))},
  {kind: 'tiff', starts: isTiff},
  {kind: 'gif', starts: either(ascii('GIF87a'), ascii('GIF89a')), facts: readGif},
  {kind: 'bmp', starts: (bytes) => ascii('BM')(bytes) && word32(bytes, 14, true) >= 12 && word32(bytes, 14, true) <= 124,
    facts: readBmp},
  {kind: 'jpeg-xl', starts: either((bytes) => startsWith(bytes, [0xff, 0x0a]), ascii('JXL ', 4))},
  {kind: 'jpeg-2000', starts: either(ascii('jP  ', 4), (bytes) => startsWith(bytes, [0xff, 0x4f, 0xff, 0x51]))},
  {kind: 'layers', starts: either(ascii('8BPS'), signed(0x67, 0x69, 0x6d, 0x70, 0x20, 0x78, 0x63, 0x66))},
  {kind: 'document', starts: either(ascii('%PDF'), ascii('PK\x03\x04'))},
  {kind: 'drawing', starts: isDrawing},
];

function isDrawing(bytes: Uint8Array): boolean {
  return /^\s*(<\?xml[^]*?)?(<!--[^]*?-->\s*)*(<!DOCTYPE svg[^]*?>\s*)?<svg[\s>]/i
    .test(new TextDecoder().decode(bytes.subarray(0, 1024)).replace(/^\ufeff/, ''));
}

function readGif(bytes: Uint8Array): FoundFacts {
  return {width: word16(bytes, 6, true), height: word16(bytes, 8, true), colours: 'palette', cutShort: bytes.at(-1) !== 0x3b};
}

function readBmp(bytes: Uint8Array): FoundFacts {
  // A height below 0 means rows from the top down. The oldest header has sizes of two bytes.
  const old = word32(bytes, 14, true) === 12;
  const width = old ? word16(bytes, 18, true) : word32(bytes, 18, true);
  const height = old ? word16(bytes, 20, true) : Math.abs(word32(bytes, 22, true) | 0);
  return {width, height, cutShort: word32(bytes, 2, true) > bytes.length};
}

/**
 * What a file is, from its bytes and never from its name.
 * @param bytes - the whole file; with only its beginning, it may be called cut short
 * @returns facts; those the format does not tell before decoding have their plainest value
 */
export function fileFacts(bytes: Uint8Array): FileFacts {
  if (bytes.length === 0) return {kind: 'empty', ...PLAIN};
  const found = signatures().find(({starts}) => starts(bytes));
  if (!found) return {kind: 'unknown', ...PLAIN};
  return {kind: found.kind, ...PLAIN, ...found.facts?.(bytes)};
}
