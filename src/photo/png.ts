import {fourLetters, word32} from './bytes.js';
import type {FoundFacts} from './kind.js';

/** By colour type. Source: PNG specification, third edition, IHDR, from memory. */
const COLOURS: Readonly<Record<number, Pick<Required<FoundFacts>, 'colours' | 'alpha'>>> = {
  0: {colours: 'gray', alpha: false}, 2: {colours: 'colour', alpha: false}, 3: {colours: 'palette', alpha: false},
  4: {colours: 'gray', alpha: true}, 6: {colours: 'colour', alpha: true},
};

/** Facts of a PNG file, chunk by chunk. Without its IEND chunk it is cut short. */
export function readPng(bytes: Uint8Array): FoundFacts {
  const facts: {-readonly [K in keyof FoundFacts]: FoundFacts[K]} = {cutShort: true};
  for (let at = 8; at + 12 <= bytes.length;) {
    const length = word32(bytes, at);
    const body = at + 8;
    if (body + length + 4 > bytes.length) break;
    const name = fourLetters(bytes, at + 4);
    if (name === 'IEND') { facts.cutShort = false; break; }
    if (name === 'IHDR') {
      facts.width = word32(bytes, body);
      facts.height = word32(bytes, body + 4);
      facts.bits = bytes[body + 8] ?? 8;
      Object.assign(facts, COLOURS[bytes[body + 9] ?? 2]);
      facts.progressive = bytes[body + 12] === 1;
    }
    if (name === 'tRNS') facts.alpha = true;
    if (name === 'acTL') facts.animated = true;
    if (name === 'iCCP') facts.profile = true;
    if (name === 'eXIf' || name === 'tEXt' || name === 'iTXt' || name === 'zTXt') facts.metadata = true;
    at = body + length + 4;
  }
  return facts;
}
