import type {ClicksPerStop} from './clicks.js';
import {NUMBERING, cutBetween, groupProse, isFrom, isSetting} from './prose-steps.js';
import type {Piece} from './prose-steps.js';
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

/** Longer text is cut, so that a pasted book cannot stall the page. */
const LONGEST = 20_000;

/** No lesson has more steps; the rest is left alone. */
const MOST_STEPS = 60;

/** Words after a time that are part of it. */
const SECOND = /^(?:th)?\s+of\s+an?\s+sec(?:ond)?\b/i;

/** A text with pieces ruled out, so that nothing can be read across them. */
function ruledOut(text: string, pieces: readonly Place[]): string {
  const signs = text.split('');
  for (const {start, end} of pieces) signs.fill('|', start, end);
  return signs.join('');
}

interface Line extends Place { readonly pieces: readonly Piece[] }

function linesOf(text: string, pieces: readonly Piece[]): Line[] {
  let [start, next] = [0, 0];
  return text.split('\n').map((line) => {
    const [place, first] = [{start, end: start + line.length}, next];
    while ((pieces[next]?.start ?? Infinity) < place.end) next += 1;
    start = place.end + 1;
    return {...place, pieces: pieces.slice(first, next).filter((piece) => piece.end <= place.end)};
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
function stepOf(stages: Stages, place: Place, pieces: readonly Piece[], clicksPerStop: ClicksPerStop): FoundStep {
  const {text, uncounted, readable, misspelt} = stages;
  const [whole, words] = [text, uncounted].map((stage) => stage.slice(place.start, place.end)) as [string, string];
  const start = place.start + (/^(?:[\s,;.:→)]|->|[-–—]\s)*/.exec(words)?.[0].length ?? 0);
  const end = Math.max(start, place.start + whole.replace(/(?:[\s,;→]|->)+$/, '').length);
  const from = pieces[0]?.start ?? start;
  const to = Math.min(pieces.at(-1)?.end ?? end, from + 1000);
  const {aperture, shutter, iso} = readExposure(readable.slice(from, to), clicksPerStop);
  const moved = <T extends Place>(found: T): T => ({...found, start: found.start + from, end: found.end + from});
  const used = [aperture, shutter, iso].map((found) => found && found.start + from);
  const unread = [...pieces.filter((piece) => piece.kind !== 'bare' && !used.includes(piece.start)), ...misspelt]
    .filter((word) => word.start >= start && word.end <= end)
    .map((word) => ({start: word.start, end: word.end, text: word.text}));
  return {
    start, end, text: text.slice(start, end), unread,
    ...(aperture ? {aperture: moved(aperture)} : {}),
    ...(shutter ? {shutter: withSecond(text.slice(0, end), moved(shutter))} : {}),
    ...(iso ? {iso: moved(iso)} : {}),
  };
}

/** What of a text is a setting, and the text with everything else that looks like one ruled out. */
function sift(uncounted: string, all: readonly Piece[], list: boolean): Omit<Stages, 'text'> & {readonly pieces: readonly Piece[]} {
  const pieces: Piece[] = [];
  const misspelt: {start: number; end: number; text: string}[] = [];
  const out: Piece[] = [];
  for (const piece of all) {
    const isMarked = piece.kind === 'shutter' || piece.kind === 'aperture';
    const more = isMarked ? /^(?!th\b)[a-z][\w/]*/i.exec(uncounted.slice(piece.end, piece.end + 20))?.[0] : undefined;
    if (more) misspelt.push({start: piece.start, end: piece.end + more.length, text: piece.text + more});
    const fits = list ? piece.kind !== 'other' : isSetting(uncounted, piece, pieces.at(-1));
    if (fits && !more && piece.kind !== 'correction') pieces.push(piece);
    else out.push(piece);
  }
  const again = list ? [] : pieces.filter((piece, at) => isFrom(uncounted, piece, at, pieces));
  const readable = ruledOut(uncounted, [...out, ...again]);
  return {uncounted, readable, misspelt, pieces: pieces.filter((piece) => !again.includes(piece))};
}

/**
 * The steps of a lesson: settings one an item, one a line, or found in running text (“we started at f/2.8 and 1/25 of a
 * second, then went to f/5.6, 1/6 s”). In running text a step ends where a kind of setting comes again, or where a
 * complete one is followed by a new sentence, a semicolon, an arrow or a word such as “then”.
 * @param source - a text, of which the first 20 000 characters and 60 steps count, or items, each a step
 * @param clicksPerStop - of the dial in use; only numbers that a third and a half share depend on it
 * @returns each step with its place and its settings. An item is a step even where nothing is found in it. Never throws.
 */
export function findSteps(source: string | readonly string[], clicksPerStop: ClicksPerStop = 3): FoundSteps {
  const items = typeof source === 'string' ? null : source.map((item) => item.replace(/\s+/g, ' ').trim());
  const text = (items ? items.join('\n') : (source as string).replace(/\r\n?/g, '\n')).slice(0, LONGEST);
  const uncounted = text.replace(NUMBERING, (count) => ' '.repeat(count.length))
    .replace(/\d{13,}/g, (number) => '|'.repeat(number.length)); // no setting, and slow to search
  const all = piecesIn(uncounted);
  const list = items !== null || isList(text, linesOf(text, all));
  const {pieces, ...sifted} = sift(uncounted, all, list);
  const lines = linesOf(text, pieces).filter((line) => items || line.pieces.some(({kind}) => kind !== 'bare'));
  const groups = (list ? lines.map((line) => line.pieces) : groupProse(text, pieces)).slice(0, MOST_STEPS);
  const cuts = groups.map((group, at) => (list ? lines[at]?.end ?? 0
    : cutBetween(text, group.at(-1)?.end ?? 0, groups[at + 1]?.[0]?.start ?? text.length)));
  const sentence = [...text.slice(0, groups[0]?.[0]?.start ?? 0).matchAll(/[.!?;]\s|\n/g)].at(-1);
  const opening = list ? lines[0]?.start ?? 0 : sentence ? sentence.index + 1 : 0;
  const steps = groups.map((group, at) => {
    const place = {start: cuts[at - 1] ?? opening, end: cuts[at] ?? text.length};
    return stepOf({text, ...sifted}, place, group, clicksPerStop);
  });
  return {
    text, steps, around: [text.slice(0, steps[0]?.start ?? text.length), text.slice(steps.at(-1)?.end ?? text.length)],
  };
}
