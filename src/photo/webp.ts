import {fourLetters, word16, word32} from './bytes.js';
import type {FoundFacts} from './kind.js';

/** Facts of a WebP file from its first chunk and its stated length. Source: RFC 9649, from memory. */
export function readWebp(bytes: Uint8Array): FoundFacts {
  return {...firstChunk(bytes), cutShort: word32(bytes, 4, true) + 8 > bytes.length};
}

function firstChunk(bytes: Uint8Array): FoundFacts {
  const body = 20;
  switch (fourLetters(bytes, 12)) {
    case 'VP8X': {
      const flags = bytes[body] ?? 0;
      return {
        width: 1 + word24(bytes, body + 4), height: 1 + word24(bytes, body + 7),
        profile: (flags & 0x20) > 0, alpha: (flags & 0x10) > 0, metadata: (flags & 0x08) > 0, animated: (flags & 0x02) > 0,
      };
    }
    case 'VP8L': {
      const bits = word32(bytes, body + 1, true);
      return {width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff), alpha: ((bits >>> 28) & 1) > 0};
    }
    case 'VP8 ':
      return {width: word16(bytes, body + 6, true) & 0x3fff, height: word16(bytes, body + 8, true) & 0x3fff};
    default:
      return {};
  }
}

function word24(bytes: Uint8Array, at: number): number {
  return word16(bytes, at, true) + (bytes[at + 2] ?? 0) * 0x10000;
}
