import {isFileTrouble, type OpenTrouble} from './opener.js';
import type {Say} from '../say.js';
import type {NamedKind, PhotoWords} from './words/en.js';

type Words = PhotoWords & {readonly say: Say};

/** Why there is no new photo, and what to do about it. */
export function troubleText(words: Words, trouble: OpenTrouble): string {
  if (!isFileTrouble(trouble)) return words.notLoaded(trouble.src, trouble.status);
  const {say} = words;
  const {problem, name, width, height, limit} = trouble;
  const file = name ? words.named(name) : words.nameless;
  const kind: string | undefined = words.kinds[trouble.kind as NamedKind];
  switch (problem) {
    case 'not-a-picture': return words.notAPicture(file, kind);
    case 'unsupported': return words.unsupported(file, kind);
    case 'too-large':
      if (limit && 'bytes' in limit) return words.tooManyBytes(file, `${say.number(limit.bytes / 2 ** 20)}\u00a0MB`);
      return width && height ? words.tooManyPixels(file, pixelSize(words, {width, height}), limit && say.number(limit.pixels / 1e6)) : words.tooLarge(file);
    case 'empty':
    case 'unreadable':
    case 'raw':
    case 'heic':
    case 'cut-short':
    case 'damaged': return words.trouble[problem](file);
  }
}

/** `1500 × 1000 px`. */
export function pixelSize({say}: Words, {width, height}: {readonly width: number; readonly height: number}): string {
  return `${say.number(width)}\u00a0×\u00a0${say.number(height)}\u00a0px`;
}
