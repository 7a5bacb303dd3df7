import {GRAY_CARD} from '../../core/light/reflectances.js';
import type {NamedLamp} from '../../core/light/set-text.js';
import type {Point} from '../../core/light/space.js';
import type {Problem} from '../../core/problem.js';
import type {Shot} from '../../core/shot/shot.js';
import {codeFromLinear} from '../../core/tone/light.js';
import type {LengthUnit} from '../../core/units.js';
import {tight, type Say} from '../shared/say.js';
import {UNSEEN, type CloseCard, type Reading} from './reading.js';
import {flagOf, lampOf, numberOf, type Thing} from './things.js';
import type {ShadeWords} from './words/en.js';

/** Stops without a sign, to a tenth: `2.1 stops`. */
export function stopsOf(say: Say, stops: number): string {
  const size = Math.round(Math.abs(stops) * 10) / 10;
  return tight(say.family.stops(say.number(size, 1), size));
}

/** Level of a picture a place shows as. */
export const levelOf = (say: Say, code: number): string => say.number(code);

/** What a level looks like to the eye in a finished picture: up to which level each word holds. Our choice. */
const LOOKS: readonly (readonly [below: number, look: keyof ShadeWords['looks']])[] = [
  [6, 'black'], [20, 'nearBlack'], [45, 'darkGray'], [85, 'showing'], [150, 'middle'], [Infinity, 'light'],
];

export function looksOf({looks}: ShadeWords, code: number): string {
  return looks[LOOKS.find(([below]) => code < below)?.[1] ?? 'light'];
}

/** Difference within the backdrop that is said, stops. */
const UNEVEN = 0.3;

export function verdictWords(words: ShadeWords, {brightest, darkest}: Reading): string {
  const {belowGray, code} = brightest;
  if (!Number.isFinite(belowGray)) return words.noLight;
  const {say} = words;
  const said = darkest.belowGray - belowGray > UNEVEN ? words.verdictUneven : words.verdict;
  return said(stopsOf(say, belowGray), belowGray >= 0, levelOf(say, code), looksOf(words, code));
}

export function wishWords(words: ShadeWords, {short, shot, brightest}: Reading): string {
  const {say} = words;
  if (short > UNSEEN) return words.short(stopsOf(say, short), stopsOf(say, shot.backdropWish));
  return Number.isFinite(brightest.belowGray) && short < -UNSEEN ? words.spare(stopsOf(say, short)) : words.reached;
}

/** What the wished darkness shows as, under its field. */
export function wishHint(words: ShadeWords, {backdropWish}: Shot): string {
  const code = codeFromLinear(GRAY_CARD * 2 ** -backdropWish);
  return words.wishHint(levelOf(words.say, code), looksOf(words, code));
}

export function darkerWords(words: ShadeWords, {darker}: Reading): string {
  return darker ? words.alone[darker.material](levelOf(words.say, darker.code)) : '';
}

/** What a lamp is called: names that the library gives are said in the reader's language. */
export const lampName = ({lampNames}: ShadeWords, lamp: NamedLamp | undefined): string => lamp ? lampNames[lamp.name] ?? lamp.name : '';

/** Less of a lamp than this is missed by nobody, as a share. */
const ALL_OF_IT = 1e-6;

/** Whether the figure keeps all of its light. */
export function keptWords(words: ShadeWords, {shares, lamps, set}: Reading): string {
  if (set.flags.length === 0) return '';
  const worst = shares.indexOf(Math.min(...shares));
  const lost = 1 - (shares[worst] ?? 1);
  return lost < ALL_OF_IT ? words.keepsAll : words.flagTakes(words.say.percent(Math.max(0.01, lost)), lampName(words, lamps[worst]));
}

/** What an exposure besides the card's does to the levels. */
export function offsetWords(words: ShadeWords, {offset}: Reading): string {
  const card = levelOf(words.say, codeFromLinear(GRAY_CARD));
  return Math.abs(offset) < UNSEEN ? words.exposedRight(card) : words.exposedOff(stopsOf(words.say, offset), offset > 0, card);
}

/** What the words in use mean: the gray card always, the others where there is one. */
export function termsWords({terms}: ShadeWords, {lamps, set}: Reading): string {
  const called = (name: string) => lamps.some((lamp) => lamp.name === name);
  return [terms.card, called('key') ? terms.key : '', called('fill') ? terms.fill : '', set.flags.length ? terms.flag : ''].filter(Boolean).join(' ');
}

/** Distances smaller than this are none, mm. */
const NOWHERE = 0.5;

/** `230 mm left, 200 mm in front, 300 mm up`, from the middle of the base. */
export function placeWords(words: ShadeWords, place: Point, unit: LengthUnit): string {
  const said = ([['right', 'left'], ['behind', 'before'], ['above', 'below']] as const).flatMap(([more, less], axis) => {
    const size = place[axis] ?? 0;
    return Math.abs(size) < NOWHERE ? [] : [words.sides[size > 0 ? more : less](words.say.length(size, unit))];
  });
  return said.join(', ') || words.atFigure;
}

export function nameOf(words: ShadeWords, thing: Thing, shot: Shot): string {
  const lamp = lampOf(thing, shot);
  if (lamp) return lampName(words, lamp);
  if (flagOf(thing, shot)) return shot.lights.flags.length > 1 ? words.numberedFlag(numberOf(thing) + 1) : words.names.flag;
  return thing === 'backdrop' || thing === 'camera' || thing === 'figure' ? words.names[thing] : '';
}

export function handleWords(words: ShadeWords, thing: Thing, shot: Shot, at: Point, view: 'plan' | 'side'): string {
  return words.handle(nameOf(words, thing, shot), view === 'plan', placeWords(words, at, shot.unit));
}

/** A card that stands near a lamp. */
export function closeWords(words: ShadeWords, {flag, lamp, gap}: CloseCard, {shot, lamps}: Reading): string {
  const [card, name] = [nameOf(words, `flag${flag}`, shot), lampName(words, lamps[lamp])];
  return gap > 0 ? words.tooClose(card, words.say.length(gap, shot.unit), name) : words.touching(card, name);
}

/** What keeps the set from being drawn anew. */
export function impossibleWords({impossible, say}: ShadeWords, {parameter, wanted}: Problem): string {
  return impossible(parameter.replaceAll('-', ' '), say.wanted(wanted));
}

/** A value without a field of its own that could not be used. */
export function refusedWords({refused, say}: ShadeWords, {parameter, value, wanted}: Problem): string {
  return refused(String(value), say.wanted(wanted), parameter);
}
