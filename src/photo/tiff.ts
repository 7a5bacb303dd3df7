import {word16, word32} from './bytes.js';

/** Tags that tell a raw file from a picture in the same container. Source: TIFF 6.0, TIFF/EP (ISO 12234-2), from memory. */
const SUBFILE_TYPE = 254;
const PHOTOMETRIC = 262;
const MORE_DIRECTORIES = 330;
const RAW_VERSION = 50706;
/** What the numbers of a pixel mean: a colour-filter mosaic, or linear raw. */
const RAW_PHOTOMETRIC = [32803, 34892];

/**
 * Whether a TIFF container holds a raw file: it says so, holds a mosaic, or its first picture is only a small copy
 * and the rest hides in further directories.
 * @param bytes - the file from its beginning; what lies beyond the end is taken as not there
 */
export function isRawTiff(bytes: Uint8Array): boolean {
  const little = bytes[0] === 0x49;
  // Some raw files mark themselves in the bytes right after the header.
  if (bytes[8] === 0x43 && bytes[9] === 0x52) return true;
  const directory = word32(bytes, 4, little);
  const count = word16(bytes, directory, little);
  let reduced = false;
  let more = false;
  for (let entry = 0; entry < count; entry++) {
    const at = directory + 2 + entry * 12;
    if (at + 12 > bytes.length) break;
    const tag = word16(bytes, at, little);
    const value = word16(bytes, at + 2, little) === 3 ? word16(bytes, at + 8, little) : word32(bytes, at + 8, little);
    if (tag === RAW_VERSION || (tag === PHOTOMETRIC && RAW_PHOTOMETRIC.includes(value))) return true;
    if (tag === SUBFILE_TYPE && value === 1) reduced = true;
    if (tag === MORE_DIRECTORIES) more = true;
  }
  return reduced || more;
}
