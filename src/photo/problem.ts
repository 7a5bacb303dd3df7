import type {FileKind} from './kind.js';

/** Why a file did not become a photo. */
export type PhotoTrouble =
  /** Nothing in it. */
  | 'empty'
  /** The browser may not read it, or it is gone: moved, renamed, on a drive that was taken out. */
  | 'unreadable'
  /** By its contents no picture at all. */
  | 'not-a-picture'
  /** Straight from the sensor: it has to be developed, or the JPEG beside it taken. */
  | 'raw'
  /** A phone's format that this browser cannot open. */
  | 'heic'
  /** A picture in a format that this browser cannot open. */
  | 'unsupported'
  /** The end is missing: copied or sent only in part. */
  | 'cut-short'
  /** More pixels, or more bytes, than can be held. */
  | 'too-large'
  /** The right kind, all there, and still not to be decoded: damaged inside. */
  | 'damaged';

/** A file that did not become a photo, with what a sentence about it needs. */
export interface PhotoProblem {
  readonly problem: PhotoTrouble;
  /** Name of the file, '' when it has none (pasted). */
  readonly name: string;
  /** Bytes. */
  readonly size: number;
  /** What the file is, by its contents. */
  readonly kind: FileKind;
  /** Pixels across and down as stored, where the file says so. */
  readonly width?: number;
  readonly height?: number;
  /** With `too-large`: the most that is opened, in pixels; or in bytes, when the file alone is too large. */
  readonly limit?: {readonly pixels: number} | {readonly bytes: number};
}

/** Tells a problem from a photo. */
export function isPhotoProblem(result: object): result is PhotoProblem {
  return 'problem' in result;
}
