import {flagCorners, type Flag} from '../../core/light/flag.js';
import type {SetMove} from '../../core/light/suggest.js';
import type {Point} from '../../core/light/space.js';
import type {Exposure} from '../../core/exposure/stops.js';
import type {Shot} from '../../core/shot/shot.js';
import {UNSEEN, type DarkerMaterial, type LampOff, type Reading} from './reading.js';
import {nameOf, placeWords, stopsOf} from './speech.js';
import {facingAngles} from './things.js';
import type {ShadeWords} from './words/en.js';

/** What a button does, and what that costs. */
export type Way = readonly [what: string, cost: string];

/** Angles of a card that nobody could tell from upright, or from flat, degrees. */
const [UPRIGHT, FLAT] = [6, 84];

export function moveTitle(words: ShadeWords, move: SetMove, shot: Shot): string {
  const {say} = words;
  if (move.thing === 'new-flag') {
    const card = move.set.flags.at(-1);
    if (!card) return '';
    const size = (mm: number): string => say.length(Math.round(mm), shot.unit);
    return words.standCard(size(card.width), size(card.height), nameOf(words, `lamp${move.index}`, shot));
  }
  const by = say.length(move.distance, shot.unit);
  return move.thing === 'backdrop' ? words.backdropBack(by) : words.moveThing(nameOf(words, `${move.thing}${move.index}`, shot), by, wayWords(words, move));
}

/** How a card is stood up with a ruler on the table: where its lower edge begins and ends, how high, and how it leans. */
export function poseWords(words: ShadeWords, card: Flag, shot: Shot): string {
  const {say} = words;
  const [, lean] = facingAngles(card.facing);
  const corners = flagCorners(card);
  const least = Math.min(...corners.map(([, , z]) => z));
  const height = say.length(Math.round(Math.max(0, least)), shot.unit);
  const onTable = ([x, y]: Point): string => placeWords(words, [Math.round(x), Math.round(y), 0], shot);
  if (Math.abs(lean) > FLAT) return words.lyingFlat(height, onTable(card.position));
  const [a, b] = [...corners].sort((one, other) => one[2] - other[2]).slice(0, 2).sort((one, other) => one[0] - other[0]) as [Point, Point];
  const stands = Math.abs(lean) < UPRIGHT ? words.upright : words.leaning(`${Math.abs(Math.round(lean))}°`, lean > 0);
  return `${words.lowerEdge(height, onTable(a), onTable(b))}; ${stands}`;
}

function wayWords({ways}: ShadeWords, {from, to}: SetMove): string {
  const way = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
  const big = way.map(Math.abs).filter((size) => size > 0.5).length;
  if (big > 1) return Math.hypot(...to) < Math.hypot(...from) ? ways.nearer : ways.away;
  if (Math.abs(way[0]) > 0.5) return way[0] > 0 ? ways.right : ways.left;
  if (Math.abs(way[1]) > 0.5) return way[1] > 0 ? ways.toBackdrop : ways.toCamera;
  return way[2] > 0 ? ways.up : ways.down;
}

export function moveCost(words: ShadeWords, move: SetMove, shot: Shot, restored: Exposure | null): string {
  const card = move.thing === 'new-flag' ? move.set.flags.at(-1) : undefined;
  return [
    card ? poseWords(words, card, shot) : '',
    words.reaches(stopsOf(words, move.belowGray), move.belowGray < shot.backdropWish - UNSEEN),
    move.keepsLight ? words.keepsLight : words.standsInLight,
    paidWords(words, move.stops, restored),
  ].filter(Boolean).join('; ');
}

const paidWords = (words: ShadeWords, stops: number, restored: Exposure | null): string =>
  (restored ? words.paid(`${stops < 0 ? '−' : '+'}${stopsOf(words, stops)}`, words.say.shutter(restored.shutter)) : '');

export const offWords = (words: ShadeWords, {lamp, belowGray, stops}: LampOff, {shot}: Reading, restored: Exposure | null): Way =>
  [words.doWithout(nameOf(words, `lamp${lamp}`, shot)), [words.reaches(stopsOf(words, belowGray), false), paidWords(words, stops, restored)].filter(Boolean).join('; ')];

/** A darker backdrop as a way out. */
export const swapWords = (words: ShadeWords, {material, code}: DarkerMaterial, {brightest}: Reading): Way =>
  [words.swap(words.inText[material]), words.swapCost(words.say.number(code), words.say.number(brightest.code))];

export const restoreWords = (words: ShadeWords, pending: number, shutter: number): Way =>
  [words.set(words.say.shutter(shutter)), words.restores(stopsOf(words, pending), pending > 0)];

export const noneWords = (words: ShadeWords, kind: 'flag' | 'moves'): string => (kind === 'flag' ? words.noFlag : words.noMove);
