import type {ClicksPerStop} from './clicks.js';
import {piecesIn, readExposure} from './read-exposure.js';
import type {ExposureReading, PieceKind, Place} from './read-exposure.js';
import type {Reading} from './reading.js';

/** One step of a lesson: the words it stands in and the settings that are said in it. */
export interface FoundStep extends Place, Pick<ExposureReading, 'aperture' | 'shutter' | 'iso'> {
  /** The step as written, `start` to `end` of the whole text; a number that only counts it is left off. */
  readonly text: string;
  /** What looks like a setting and is not in use: `1/6o`, a second f-number. */
  readonly unread: readonly (Place & {readonly text: string})[];
}

/** The steps found in a text. */
export interface FoundSteps {
  /** What all places count in: the text, or the items one a line. */
  readonly text: string;
  readonly steps: readonly FoundStep[];
  /** What is said before the first step and after the last. */
  readonly around: readonly [before: string, after: string];
}

type Piece = ReturnType<typeof piecesIn>[number];

/** Longer text is cut, so that a pasted book cannot stall the page. */
const LONGEST = 20_000;

/** Numbers that count steps: `2.`, `3)` at the head of a line, `Step 4` anywhere. */
const NUMBERING = /^[^\S\n]*(?:(?:step|shot|frame|picture|trial)\s+)?\(?\d{1,2}[.):](?=\s)|\b(?:step|shot|frame|picture|trial|figure|part)\s+\d{1,2}\b(?![./"]\d)/gim;

/** No lesson has more steps; the rest is left alone. */
const MOST_STEPS = 100;

/** What follows a number that is no time: a model's scale, a lamp's power, a share or a size of something. */
const NO_TIME_BEFORE = new RegExp(String.raw`^\s*(?:(?:scale|power|way|size|inch(?:es)?|base|deep|wide|tall|high|away|behind|apart|later|ago`
  + String.raw`|(?:self-?)?timer|delay)\b|of\s+(?:the|its|an?\s+(?!sec))\b)`, 'i');

/** What leads to a number of seconds that nobody sets. */
const NO_TIME_AFTER = /\b(?:wait(?:ed|ing)?|every|within|another)\s+(?:(?:of|for|about|the)\s+)?$/i;

/** What may stand between two settings of one step. */
const JOINED = /^[\s,@("“]*(?:at|and|with|for)?[\s("“]*$/i;

/** Where one step of running text ends and the next begins. */
const BREAK = /[.!?](?=\s|$)|;|→|->|\n|(?:,?\s*\b(?:and|but)\s+)?\b(?:then|next|finally|lastly|now|afterwards|after that)\b/i;

/** A remark that follows its setting at once: `(one stop darker)`, `+2`. */
const REMARK = /^\s*[)"”’]|^[\s,]*(?:\([^)]*\)|[+±−–-]\s?[\d½⅓⅔][^,;.\n]*)/;

/** Words after a time that are part of it. */
const SECOND = /^(?:th)?\s+of\s+an?\s+sec(?:ond)?\b/i;

/** A text with a piece ruled out, so that nothing can be read across it. */
function blanked(text: string, {start, end}: Place): string {
  return text.slice(0, start) + '|'.repeat(end - start) + text.slice(end);
}

/** Whether a piece of running text is a setting, seen in its surroundings. */
function isSetting(text: string, piece: Piece, before: Piece | undefined): boolean {
  const after = text.slice(piece.end, piece.end + 40);
  if (piece.kind === 'bare') {
    return before !== undefined && (before.kind === 'aperture' || before.kind === 'shutter')
      && JOINED.test(text.slice(before.end, piece.start)) && !/^\s*(?!(?:and|at|then|f|iso|or)\b)[a-zµ%°]/i.test(after);
  }
  if (piece.kind !== 'shutter') return piece.kind === 'aperture' || piece.kind === 'iso';
  // A length in metres or feet, a date or a page, unless it stands right beside an f-number.
  if (/\d\s*[m'’′]$|^(?!1\/)\d+\s*\/\s*\d+$/i.test(piece.text) && !/^\s*s(?:ec|\b)/i.test(after)) {
    return before?.kind === 'aperture' && JOINED.test(text.slice(before.end, piece.start));
  }
  return !NO_TIME_BEFORE.test(after) && (piece.text.includes('/') || !NO_TIME_AFTER.test(text.slice(Math.max(0, piece.start - 30), piece.start)));
}

/** Whether a piece only says again where a change began: the first of “from 1/25 to 1/6”, with a time said before. */
function isFrom(text: string, piece: Piece, at: number, pieces: readonly Piece[]): boolean {
  const next = pieces[at + 1];
  return next?.kind === piece.kind && /^\s*to\s+$/i.test(text.slice(piece.end, next.start))
    && /\bfrom\s+$/i.test(text.slice(Math.max(0, piece.start - 10), piece.start))
    && pieces.slice(0, at).some(({kind}) => kind === piece.kind);
}

/**
 * Pieces that make one step belong together until a kind comes again, words part two complete ones, or a pair that
 * stands close together begins.
 */
function groupProse(text: string, pieces: readonly Piece[]): Piece[][] {
  const groups: Piece[][] = [];
  let kinds = new Set<PieceKind>();
  for (const [at, piece] of pieces.entries()) {
    const kind = piece.kind !== 'bare' ? piece.kind : !kinds.has('shutter') ? 'shutter' : kinds.has('aperture') ? 'iso' : 'aperture';
    const group = groups.at(-1);
    const gap = text.slice(group?.at(-1)?.end ?? 0, piece.start);
    const next = pieces[at + 1];
    const opensPair = next && kinds.has(next.kind) && next.kind !== kind && !JOINED.test(gap) && JOINED.test(text.slice(piece.end, next.start));
    if (!group || kinds.has(kind) || opensPair || (kinds.has('aperture') && kinds.has('shutter') && BREAK.test(gap))) {
      kinds = new Set();
      groups.push([]);
    }
    kinds.add(kind);
    groups.at(-1)?.push(piece);
  }
  return groups;
}

/** Where between two steps the words of the first end. */
function cutBetween(text: string, start: number, end: number): number {
  const gap = text.slice(start, end);
  const remark = REMARK.exec(gap)?.[0].length ?? 0; // stays with the setting before it
  const counts = [...gap.slice(remark).matchAll(NUMBERING)];
  const found = counts.at(-1) ?? BREAK.exec(gap.slice(remark));
  if (!found) return start + (end === text.length ? gap.length : remark);
  // A word opens the next step, a mark closes this one.
  return start + remark + found.index + (/\w/.test(found[0]) ? 0 : found[0].length);
}

interface Line extends Place { readonly pieces: readonly Piece[] }

function linesOf(text: string, pieces: readonly Piece[]): Line[] {
  let start = 0;
  return text.split('\n').map((line) => {
    const place = {start, end: start + line.length};
    start = place.end + 1;
    return {...place, pieces: pieces.filter((piece) => piece.start >= place.start && piece.end <= place.end)};
  });
}

/** Whether a text lists one step a line: no line says a setting twice, and none runs on into the next. */
function isList(text: string, lines: readonly Line[]): boolean {
  const used = lines.filter(({start, end}) => text.slice(start, end).trim());
  const count = ({pieces}: Line, wanted: PieceKind): number => pieces.filter(({kind}) => kind === wanted).length;
  return used.filter((line) => count(line, 'aperture') + count(line, 'shutter') + count(line, 'iso') > 0).length > 1
    && used.every((line, at) => count(line, 'aperture') < 2 && count(line, 'shutter') < 2
      && (line.end - line.start < 50 || at === used.length - 1 || /[.!?:;)]\s*$/.test(text.slice(line.start, line.end))));
}

/** `1/25 of a second` whole. */
function withSecond(text: string, time: Reading & Place): Reading & Place {
  const second = SECOND.exec(text.slice(time.end))?.[0] ?? '';
  return {...time, end: time.end + second.length, text: time.text + second};
}

/** A text in its stages, character for character the same. */
interface Stages {
  readonly text: string;
  /** Without the numbers that only count. */
  readonly uncounted: string;
  /** Without anything else that is no setting either. */
  readonly readable: string;
  /** What looks like a setting at first and goes on as something else. */
  readonly misspelt: readonly (Place & {readonly text: string})[];
}

/** One step out of its words, `start` to `end`, and its pieces. */
function stepOf({text, uncounted, readable, misspelt}: Stages, place: Place, pieces: readonly Piece[], clicksPerStop: ClicksPerStop): FoundStep {
  const whole = text.slice(place.start, place.end);
  const start = place.start + (/^(?:[\s,;.:→)]|->|[-–—]\s)*/.exec(uncounted.slice(place.start, place.end))?.[0].length ?? 0);
  const end = Math.max(start, place.start + whole.replace(/(?:[\s,;→]|->)+$/, '').length);
  const from = pieces[0]?.start ?? start;
  const {aperture, shutter, iso} = readExposure(readable.slice(from, Math.min(pieces.at(-1)?.end ?? end, from + 1000)), clicksPerStop);
  const moved = <T extends Place>(found: T): T => ({...found, start: found.start + from, end: found.end + from});
  const used = [aperture, shutter, iso].map((found) => found && found.start + from);
  const unread = [...pieces.filter((piece) => piece.kind !== 'bare' && !used.includes(piece.start)), ...misspelt]
    .filter((word) => word.start >= start && word.end <= end).map((word) => ({start: word.start, end: word.end, text: word.text}));
  return {
    start, end, text: text.slice(start, end), unread, ...(aperture ? {aperture: moved(aperture)} : {}),
    ...(shutter ? {shutter: withSecond(text.slice(0, end), moved(shutter))} : {}), ...(iso ? {iso: moved(iso)} : {}),
  };
}

/**
 * The steps of a lesson: settings one an item, one a line, or found in running text (“we started at f/2.8 and 1/25 of a
 * second, then went to f/5.6, 1/6 s”). In running text a step ends where a kind of setting comes again, or where a
 * complete one is followed by a new sentence, a semicolon, an arrow or a word such as “then”.
 * @param source - a text, of which the first 20 000 characters count, or items, each a step
 * @param clicksPerStop - of the dial in use; only numbers that a third and a half share depend on it
 * @returns each step with its place and its settings. An item is a step even where nothing is found in it. Never throws.
 */
export function findSteps(source: string | readonly string[], clicksPerStop: ClicksPerStop = 3): FoundSteps {
  const items = typeof source === 'string' ? null : source.map((item) => item.replace(/\s+/g, ' ').trim());
  const text = (items ? items.join('\n') : (source as string).replace(/\r\n?/g, '\n')).slice(0, LONGEST);
  const uncounted = text.replace(NUMBERING, (count) => ' '.repeat(count.length));
  let readable = uncounted;
  const misspelt: {start: number; end: number; text: string}[] = [];
  const all = piecesIn(readable);
  const asList = linesOf(text, all);
  const list = items !== null || isList(text, asList);
  let pieces: Piece[] = [];
  for (const piece of all) {
    const more = piece.kind === 'shutter' || piece.kind === 'aperture' ? /^(?!th\b)[a-z][\w/]*/i.exec(readable.slice(piece.end, piece.end + 20))?.[0] : undefined;
    if (more) misspelt.push({start: piece.start, end: piece.end + more.length, text: piece.text + more});
    if (!more && piece.kind !== 'correction' && (list ? piece.kind !== 'other' : isSetting(readable, piece, pieces.at(-1)))) pieces.push(piece);
    else readable = blanked(readable, piece);
  }
  const from = list ? [] : pieces.filter((piece, at) => isFrom(text, piece, at, pieces));
  for (const piece of from) readable = blanked(readable, piece);
  pieces = pieces.filter((piece) => !from.includes(piece));
  const lines = linesOf(text, pieces).filter((line) => items || line.pieces.some(({kind}) => kind !== 'bare'));
  const groups = (list ? lines.map((line) => line.pieces) : groupProse(text, pieces)).slice(0, MOST_STEPS);
  const edge = (at: number, end: 'start' | 'end'): number => groups[at]?.[end === 'start' ? 0 : groups[at].length - 1]?.[end] ?? 0;
  const cuts = groups.map((_, at) => (list ? lines[at]?.end ?? 0
    : cutBetween(text, edge(at, 'end'), at + 1 < groups.length ? edge(at + 1, 'start') : text.length)));
  const opening = list ? lines[0]?.start ?? 0 : text.slice(0, edge(0, 'start')).replace(/(?:(?!(?:[.!?;]\s|\n)).)*$/, '').length;
  const steps = groups.map((group, at) => stepOf({text, uncounted, readable, misspelt}, {start: cuts[at - 1] ?? opening, end: cuts[at] ?? text.length}, group, clicksPerStop));
  return {text, steps, around: [text.slice(0, steps[0]?.start ?? text.length), text.slice(steps.at(-1)?.end ?? text.length)]};
}
