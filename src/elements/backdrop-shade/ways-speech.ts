import type {Exposure} from '../../core/exposure/stops.js';
import type {SetMove} from '../../core/light/suggest.js';
import type {Flag} from '../../core/light/flag.js';
import type {Shot} from '../../core/shot/shot.js';
import {poseOf} from './card-pose.js';
import {UNSEEN, type DarkerMaterial, type LampOff, type Reading} from './reading.js';
import {lampName, levelOf, nameOf, stopsOf} from './speech.js';
import type {ShadeWords} from './words/en.js';

/** What is done, and what it costs. */
export type Way = readonly [what: string, cost: string];

/** Differences that a hand cannot place, mm. Our choice. */
const LEVEL = 3;

/** What a search found. @param restored - exposure that makes up for the change of the figure's light, where one is needed */
export function moveWords(words: ShadeWords, move: SetMove, shot: Shot, restored: Exposure | null): Way {
  const cost = [
    (move.belowGray < shot.backdropWish - UNSEEN ? words.reachesShort : words.reaches)(stopsOf(words.say, move.belowGray)),
    move.keepsLight ? words.keepsAll : words.inLight, costWords(words, move.stops, restored),
  ];
  const card = move.thing === 'new-flag' ? move.set.flags.at(-1) : undefined;
  return [moveTitle(words, move, shot), [card ? poseWords(words, card, shot) : '', ...cost].filter(Boolean).join(' ')];
}

export function moveTitle(words: ShadeWords, move: SetMove, shot: Shot): string {
  const length = (mm: number) => words.say.length(Math.round(mm), shot.unit);
  if (move.thing === 'new-flag') {
    const card = move.set.flags.at(-1);
    if (!card) return '';
    return (poseOf(card).flat ? words.layCard : words.standCard)(length(card.width), length(card.height), lampName(words, shot.lights.lamps[move.index]));
  }
  if (move.thing === 'backdrop') return words.backdropBack(length(move.distance));
  return words.moveBy[wayOf(move)](nameOf(words, `${move.thing}${move.index}`, shot), length(move.distance));
}

/** Where a card goes, in what a ruler on the table can measure. */
function poseWords(words: ShadeWords, card: Flag, {baseDepth, unit}: Shot): string {
  const {flat, height, right, behind, lean, turn} = poseOf(card);
  const length = (mm: number) => words.say.length(Math.round(Math.abs(mm)), unit);
  const half = baseDepth / 2;
  const along = behind > half ? words.behindBase(length(behind - half)) : behind < -half ? words.beforeBase(length(behind + half)) : words.overBase(length(behind + half));
  const place = Math.abs(right) < LEVEL ? along : words.besideMiddle(along, length(right), right > 0);
  const turned = turn === null ? words.edgeOn : Math.abs(turn) < LEVEL ? words.facesCamera : words.turned(length(turn), turn > 0);
  const leaning = flat ? '' : Math.abs(lean) < LEVEL ? words.upright : words.leans(length(lean), lean > 0);
  return [(flat ? words.frontEdge : words.lowerEdge)(length(height), place), leaning, turned].filter(Boolean).join(' ');
}

/** Which way something is moved. */
function wayOf({from, to}: SetMove): keyof ShadeWords['moveBy'] {
  const [x, y, z] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
  if ([x, y, z].filter((size) => Math.abs(size) > 0.5).length > 1) return Math.hypot(...to) < Math.hypot(...from) ? 'nearer' : 'away';
  if (Math.abs(x) > 0.5) return x > 0 ? 'right' : 'left';
  if (Math.abs(y) > 0.5) return y > 0 ? 'back' : 'front';
  return z > 0 ? 'up' : 'down';
}

function costWords(words: ShadeWords, stops: number, restored: Exposure | null): string {
  if (!restored) return '';
  const {say} = words;
  return words.costs(say.family.stops(say.signedStops(stops, 1), Math.abs(stops)), say.shutter(restored.shutter));
}

export function offWords(words: ShadeWords, {lamp, belowGray, stops}: LampOff, {lamps}: Reading, restored: Exposure | null): Way {
  const cost = [words.reaches(stopsOf(words.say, belowGray)), costWords(words, stops, restored)].filter(Boolean).join(' ');
  return [words.off(lampName(words, lamps[lamp])), cost];
}

/** Another backdrop in the same place. */
export function swapWords(words: ShadeWords, {material, code}: DarkerMaterial, {brightest}: Reading): Way {
  return [words.hang[material], words.hangs(levelOf(words.say, code), levelOf(words.say, brightest.code))];
}

export function restoreWords(words: ShadeWords, pending: number, shutter: number): Way {
  return [words.set(words.say.shutter(shutter)), words.metered(stopsOf(words.say, pending), pending > 0)];
}
