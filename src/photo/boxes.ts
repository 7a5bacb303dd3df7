import {fourLetters, word32} from './bytes.js';
import type {FoundFacts} from './kind.js';

/**
 * Facts of a picture stored in boxes (AVIF, HEIC): the largest picture its properties speak of, which is the whole and
 * not a tile or thumbnail; whether a box reaches past the end of the file.
 * Source: ISO/IEC 14496-12 and 23008-12, from memory.
 */
export function readBoxes(bytes: Uint8Array): FoundFacts {
  const facts: {-readonly [K in keyof FoundFacts]: FoundFacts[K]} = {cutShort: false};
  let hasData = false;
  for (let at = 0; at < bytes.length;) {
    const length = word32(bytes, at) === 1 ? word32(bytes, at + 8) * 2 ** 32 + word32(bytes, at + 12) : word32(bytes, at);
    const name = fourLetters(bytes, at + 4);
    // Length 0 means: up to the end of the file.
    const end = length === 0 ? bytes.length : at + length;
    if (end > bytes.length || (length > 0 && length < 8)) { facts.cutShort = true; break; }
    if (name === 'meta') Object.assign(facts, propertiesIn(bytes.subarray(at, end)));
    if (name === 'mdat') hasData = true;
    if (name === 'moov') facts.animated = true;
    at = end;
  }
  return hasData ? facts : {...facts, cutShort: true};
}

function propertiesIn(meta: Uint8Array): FoundFacts {
  let [width, height, bits] = [0, 0, 8];
  let [alpha, metadata, profile] = [false, false, false];
  for (let at = 0; at + 4 <= meta.length; at++) {
    switch (fourLetters(meta, at)) {
      case 'ispe':
        if (word32(meta, at + 8) * word32(meta, at + 12) > width * height) {
          [width, height] = [word32(meta, at + 8), word32(meta, at + 12)];
        }
        break;
      case 'pixi': bits = Math.max(bits, meta[at + 9] ?? 8); break;
      case 'auxC': alpha ||= new TextDecoder().decode(meta.subarray(at + 8, at + 64)).includes('alpha'); break;
      case 'Exif': metadata = true; break;
      case 'prof': profile = true; break;
      case 'rICC': profile = true; break;
      default: break;
    }
  }
  return {width, height, bits, alpha, metadata, profile};
}
