import {Problem} from '../problem.js';
import {attributeOf} from './field.js';
import {fieldOf, refusalOf, refusalOfText, sameValue, shotKeys, writtenOf} from './given.js';
import {keyOf} from './record.js';
import {DEFAULT_SHOT, type ShotKey} from './shot.js';
import {withText, withValue} from './saying.js';
import {EMPTY_STATE, type ShotState} from './state.js';

/** Raised when a reader of version 1 would take a link for something it does not say. */
export const LINK_VERSION = 1;

/** Something in a link that was not as expected. Everything else of the link stands. */
export type LinkNotice =
  /** A newer page made the link; what is known here was taken. */
  | {readonly kind: 'newer'; readonly version: number}
  /** A part nobody here knows; kept, so that the next link has it again. */
  | {readonly kind: 'unknown'; readonly name: string; readonly text: string}
  /** A value that cannot be used; kept as text that was typed. */
  | {readonly kind: 'unreadable'; readonly name: string; readonly text: string; readonly problem: Problem}
  /** A part too long to be a value, left out. */
  | {readonly kind: 'too-long'; readonly name: string; readonly length: number};

export interface LinkReading {
  readonly state: ShotState;
  readonly notices: readonly LinkNotice[];
  /** Parts that are not known here, as they came: for {@link writeLink}. */
  readonly kept: readonly string[];
}

/** Longer parts are no value, longer links no link; so that a pasted page cannot stall the reader. */
const LONGEST_PART = 20_000;
const LONGEST_LINK = 200_000;

/** Opens text that was typed and is not in use; opens a value to the last bit. */
const TYPED = '~';
const EXACT = '=';

/**
 * A shot as the fragment of an address, without `#`: `shot=1&aperture=f/8&shutter=0.3s&base-depth=90mm`. Only what was
 * stated; keys as attributes, values as people write them, blanks left out or as `_`. A value that its text would not
 * give back to the last bit is written as a number behind a second `=`: `aperture==11`. Text that was typed and is not
 * in use stands behind `~`, after the value that is.
 * @param kept - parts of the link that was opened which are not known here
 */
export function writeLink(state: ShotState, kept: readonly string[] = []): string {
  const parts = shotKeys().flatMap((key) => {
    const name = attributeOf(key);
    const [value, text] = [state.values[key], state.texts[key]];
    const typed = text !== undefined && refusalOfText(key, text, value) ? [`${name}=${TYPED}${encode(text)}`] : [];
    return value === undefined ? typed : [`${name}=${valueText(key, value)}`, ...typed];
  });
  return [`shot=${LINK_VERSION}`, ...parts, ...kept].join('&');
}

/**
 * The shot that the fragment of an address describes.
 * @param fragment - with or without `#`, any text
 * @returns the shot, what was not as expected, and what is to be handed on; `null` when the fragment is no link to a
 *   shot. Never throws.
 */
export function readLink(fragment: string): LinkReading | null {
  // A link contains no blanks: those that are there came with a line break in a letter.
  const parts = fragment.slice(0, LONGEST_LINK).replace(/^#/, '').replace(/\s+/g, '').split('&')
    .map((part) => part.replace(/^amp;/, '')).filter(Boolean);
  const version = parts.find((part) => /^shot=/.test(part))?.slice(5);
  if (version === undefined) return null;
  let state = EMPTY_STATE;
  const kept: string[] = [];
  const notices: LinkNotice[] = [];
  if (/^\d{1,9}$/.test(version) && Number(version) > LINK_VERSION) notices.push({kind: 'newer', version: Number(version)});
  for (const part of parts) {
    const at = part.indexOf('=');
    const [name, raw] = at < 0 ? [part, ''] : [part.slice(0, at), part.slice(at + 1)];
    const key = keyOf(name);
    if (name === 'shot') continue;
    if (part.length > LONGEST_PART) {
      notices.push({kind: 'too-long', name: name.slice(0, 60), length: part.length});
    } else if (!key || at < 0) {
      kept.push(part);
      notices.push({kind: 'unknown', name, text: decode(raw)});
    } else {
      state = taken(state, key, raw);
      const problem = state.problems[key];
      if (problem && !raw.startsWith(TYPED)) notices.push({kind: 'unreadable', name, text: decode(raw), problem});
    }
  }
  return {state, notices, kept};
}

/** The state after one part of a link. */
function taken(state: ShotState, key: ShotKey, raw: string): ShotState {
  const text = decode(raw.replace(/^~/, ''));
  if (raw.startsWith(TYPED)) {
    const problem = refusalOfText(key, text, state.values[key]);
    return {...state, texts: {...state.texts, [key]: text}, ...(problem && {problems: {...state.problems, [key]: problem}})};
  }
  const exact = raw.startsWith(EXACT) ? exactFrom(key, decode(raw.slice(1))) : undefined;
  if (exact !== undefined && !refusalOf(key, exact)) return withValue(state, key, exact as never);
  const next = withText(state, key, text);
  if (next.problems[key]) return next;
  // What the text says is in use; how it was typed is a matter of the page it came from.
  return withValue(next, key, next.values[key] as never);
}

/** A value so that reading gives the very same one back. */
function valueText(key: ShotKey, value: unknown): string {
  const field = fieldOf(key);
  const written = wellFormed(writtenOf(key, value));
  const plain = written.replaceAll('−', '-');
  const found = [plain.replace(/\s/g, ''), plain, written].find((text) => {
    const read = field.read(text);
    return !(read instanceof Problem) && sameValue(read, typeof value === 'string' ? wellFormed(value) : value);
  });
  return found === undefined ? EXACT + encode(exactText(value)) : encode(found);
}

/** Numbers one after the other where that says all, and JSON where it does not. */
function exactText(value: unknown): string {
  const numbers = typeof value === 'object' && value ? Object.values(value) as unknown[] : [value];
  return numbers.every((number) => typeof number === 'number') ? numbers.join(',') : JSON.stringify(value);
}

/** @returns `undefined` when the text is nothing that {@link exactText} wrote */
function exactFrom(key: ShotKey, text: string): unknown {
  const like: unknown = DEFAULT_SHOT[key];
  if (/^\s*[[{]/.test(text)) {
    try { return JSON.parse(text) as unknown; } catch { return undefined; }
  }
  const numbers = text.split(',').map((part) => (/^[+-]?[\d.]+(e[+-]?\d+)?$/i.test(part) ? Number(part) : NaN));
  if (numbers.some(Number.isNaN)) return undefined;
  if (Array.isArray(like)) return numbers;
  if (typeof like !== 'object') return numbers.length === 1 ? numbers[0] : undefined;
  const names = Object.keys(like as object);
  return names.length === numbers.length ? Object.fromEntries(names.map((name, at) => [name, numbers[at]])) : undefined;
}

/** Half a pair of surrogates is no character, and no address can hold it. */
const wellFormed = (text: string): string => text.replace(/\p{Surrogate}/gu, '\ufffd');

const percent = (sign: string): string =>
  [...new TextEncoder().encode(sign)].map((byte) => `%${byte.toString(16).toUpperCase().padStart(2, '0')}`).join('');

/** Text that an address, a chat and a letter leave alone. A stop at the end would be taken for the sentence's. */
function encode(text: string): string {
  return wellFormed(text).replace(/[^A-Za-z0-9\-./:,;+=@$ ]/gu, percent).replace(/^[=]|[.,;:]$/g, percent).replaceAll(' ', '_');
}

function decode(raw: string): string {
  const text = raw.replaceAll('_', ' ');
  try {
    return decodeURIComponent(text);
  } catch (error) {
    if (!(error instanceof URIError)) throw error;
    return text;
  }
}
