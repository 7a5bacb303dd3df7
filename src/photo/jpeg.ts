import {startsWith, word16} from './bytes.js';
import type {FoundFacts} from './kind.js';

export const START_OF_SCAN = 0xda;
const END = 0xd9;
/** Frame headers: C0 to CF but for C4 (tables), C8 (reserved) and CC (arithmetic coding). */
export const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Markers without a length: 01, the restarts D0 to D7, the start D8 and the end D9. */
export const standsAlone = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd9);

const EXIF = [0x45, 0x78, 0x69, 0x66, 0, 0];
export const PROFILE = [0x49, 0x43, 0x43, 0x5f, 0x50, 0x52, 0x4f, 0x46];

/**
 * Facts of a JPEG file, marker by marker up to the end of its first picture. A thumbnail inside the metadata has an
 * end marker of its own, so it does not do to look for the last two bytes.
 * Source: ITU-T T.81, annex B, from memory.
 */
export function readJpeg(bytes: Uint8Array): FoundFacts {
  const facts: {-readonly [K in keyof FoundFacts]: FoundFacts[K]} = {cutShort: true};
  let at = 2;
  while (at + 1 < bytes.length) {
    if (bytes[at] !== 0xff) { at++; continue; }
    const marker = bytes[at + 1] as number;
    if (marker === END) { facts.cutShort = false; break; }
    // FF may be repeated as filling, and FF 00 stands for a plain FF in the picture's data.
    if (marker === 0xff) { at++; continue; }
    if (marker === 0x00 || standsAlone(marker)) { at += 2; continue; }
    const length = word16(bytes, at + 2);
    if (length < 2 || at + 2 + length > bytes.length) break;
    note(facts, bytes, marker, at + 4);
    at += 2 + length;
    if (marker === START_OF_SCAN) at = endOfScan(bytes, at);
  }
  return facts;
}

function note(facts: {-readonly [K in keyof FoundFacts]: FoundFacts[K]}, bytes: Uint8Array, marker: number, at: number): void {
  if (isFrame(marker)) {
    facts.bits = bytes[at] ?? 8;
    facts.height = word16(bytes, at + 1);
    facts.width = word16(bytes, at + 3);
    facts.progressive = [0xc2, 0xc6, 0xca, 0xce].includes(marker);
    facts.colours = bytes[at + 5] === 1 ? 'gray' : bytes[at + 5] === 4 ? 'cmyk' : 'colour';
  }
  if (marker === 0xe1 && startsWith(bytes, EXIF, at)) facts.metadata = true;
  if (marker === 0xe2 && startsWith(bytes, PROFILE, at)) facts.profile = true;
}

/** Where the coded data that starts at `at` gives way to a marker that is neither a restart nor a coded FF. */
export function endOfScan(bytes: Uint8Array, at: number): number {
  for (;;) {
    const next = bytes.indexOf(0xff, at);
    if (next < 0 || next + 1 >= bytes.length) return bytes.length;
    const marker = bytes[next + 1] as number;
    if (marker !== 0 && marker !== 0xff && !(marker >= 0xd0 && marker <= 0xd7)) return next;
    at = next + (marker === 0xff ? 1 : 2);
  }
}
