import type {Problem} from '../../core/problem.js';
import type {Shot} from '../../core/shot/shot.js';
import type {Point} from '../../core/light/space.js';
import {UNSEEN, type CloseCard, type Reading} from './reading.js';
import {flagOf, lampOf, numberOf, type Thing} from './things.js';
import type {ShadeWords} from './words/en.js';

/** `5.1 stops`, sign left out; endless darkness is said by its own sentence. */
export const stopsOf = ({say}: ShadeWords, value: number): string => say.measuredStops(value);

/** What a value looks like to the eye in a finished picture. Our choice of words. */
export function looks({looks: names}: ShadeWords, code: number): string {
  if (code < 6) return names.black;
  if (code < 20) return names.nearBlack;
  if (code < 45) return names.darkGray;
  if (code < 85) return names.shows;
  return code < 150 ? names.middleGray : names.lightGray;
}

/** Differences along the backdrop that are worth a word, stops. */
const UNEVEN = 0.3;

export function verdictWords(words: ShadeWords, {brightest, darkest}: Reading): string {
  const {belowGray, code} = brightest;
  if (!Number.isFinite(belowGray)) return words.noLight;
  return words.verdict(stopsOf(words, belowGray), belowGray >= 0, darkest.belowGray - belowGray > UNEVEN, words.say.number(code), looks(words, code));
}

export function wishWords(words: ShadeWords, {short, shot, brightest}: Reading): string {
  if (short > UNSEEN) return words.short(stopsOf(words, short), stopsOf(words, shot.backdropWish));
  return Number.isFinite(brightest.belowGray) && short < -UNSEEN ? words.spare(stopsOf(words, short)) : words.reached;
}

export function darkerWords(words: ShadeWords, {darker}: Reading): string {
  return darker ? words.darker(words.materials[darker.material], words.say.number(darker.code)) : '';
}

/** Whether the figure keeps all of its light. */
export function keptWords(words: ShadeWords, {shares, set, shot}: Reading): string {
  if (set.flags.length === 0) return '';
  const worst = shares.indexOf(Math.min(...shares));
  const lost = 1 - (shares[worst] ?? 1);
  return lost < 1e-6 ? words.keepsAll : words.flagTakes(words.say.percent(Math.max(0.01, lost)), nameOf(words, `lamp${worst}`, shot));
}

/** What an exposure besides the card’s does to the picture. */
export function offsetWords(words: ShadeWords, {offset}: Reading): string {
  return Math.abs(offset) < UNSEEN ? words.exposedForCard : words.exposedOff(stopsOf(words, offset), offset > 0);
}

/** `230 mm left, 200 mm in front, 300 mm up`, from the middle of the base. */
export function placeWords({say, place}: ShadeWords, [x, y, z]: Point, {unit}: Shot): string {
  const parts = [[x, place.right, place.left], [y, place.behind, place.before], [z, place.up, place.below]] as const;
  const said = parts.filter(([size]) => Math.abs(size) >= 0.5).map(([size, more, less]) => (size > 0 ? more : less)(say.length(size, unit)));
  return said.length ? said.join(', ') : place.here;
}

/** Names of lamps are a reader's own; those a set comes with are said in the language of the page. */
const COMES_WITH: ReadonlySet<string> = new Set(['key', 'fill']);

const lampName = ({names}: ShadeWords, name: string): string => (COMES_WITH.has(name) ? names[name as 'key' | 'fill'] : name);

/** The name a shot keeps for what a reader typed: the same in every language for those a set comes with. */
export const keptName = (words: ShadeWords, typed: string): string =>
  [...COMES_WITH].find((name) => lampName(words, name) === typed.trim()) ?? typed;

export function nameOf(words: ShadeWords, thing: Thing, shot: Shot): string {
  const lamp = lampOf(thing, shot);
  if (lamp) return lampName(words, lamp.name);
  if (flagOf(thing, shot)) return shot.lights.flags.length > 1 ? words.flagNumber(numberOf(thing) + 1) : words.names.flag;
  return words.names[thing as 'backdrop' | 'camera' | 'figure'] ?? '';
}

export function handleWords(words: ShadeWords, thing: Thing, shot: Shot, view: 'plan' | 'side'): string {
  return words.handle(nameOf(words, thing, shot), view === 'plan');
}

export function closeWords(words: ShadeWords, {flag, lamp, gap}: CloseCard, {shot}: Reading): string {
  const [card, by] = [nameOf(words, `flag${flag}`, shot), nameOf(words, `lamp${lamp}`, shot)];
  return gap > 0 ? words.closeTo(card, words.say.length(gap, shot.unit), by) : words.atFace(card, by);
}

/** What keeps the set from being drawn anew. */
export const impossibleWords = (words: ShadeWords, {parameter, wanted}: Problem): string =>
  words.impossible(parameter.replaceAll('-', ' '), words.say.wanted(wanted));

/** A value without a field of its own that could not be used. */
export const refusedWords = (words: ShadeWords, problem: Problem): string => words.refused(words.say.problem(problem), problem.parameter);
