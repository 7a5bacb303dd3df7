import type {Advice} from '../../../core/tone/advice.js';
import type {Edges} from '../../../core/tone/clipping.js';
import type {CropChange} from '../../../core/tone/cropped.js';
import {COLOUR_CHANNELS, type Channel} from '../../../core/tone/tally.js';
import {judge, type Judgement} from './judgement.js';
import {measuredStops, shareText, thirdsText} from './shares.js';
import type {SheetWords} from './words/en.js';

/** What to do with the shot, and the one fact that says so. */
export function verdictText(words: SheetWords, advice: Advice, edges: Edges): string {
  const {say} = words;
  const {because, thirds} = judge(advice, edges);
  const stops = thirdsText(say, thirds);
  const [share, anyWhite] = [shareText(say, advice.share), shareText(say, edges.anyAtWhite)];
  const lost = COLOUR_CHANNELS.filter((colour) => edges[colour].whiteLost);
  switch (because) {
    case 'fits': return words.keepFits(measuredStops(say, roomAbove(edges)));
    case 'glints': return words.yoursGlints(colourList(words, lost), lost.length > 1, anyWhite);
    case 'white-lost': return words.againWhite(stops, colourList(words, lost), lost.length > 1, anyWhite);
    case 'both-lost': return words.relight(anyWhite, shareText(say, edges.brightness.atBlack));
    case 'black-lost': return words.againBlack(stops, share);
    case 'black-backdrop': return words.yoursBlack(share);
    case 'black-held': return words.keepBlack(share);
    case 'too-dark': return words.againDark(stops, advice.intent);
    case 'too-bright': return words.againBright(stops);
    case 'dark-held': return words.keepDark;
    case 'bright-held': return words.keepBright;
    case 'all-black': return words.allBlack;
  }
}

/** Why, and what it rests on. */
export function reasonText(words: SheetWords, {adviceInside: advice, inside: edges, kept}: CropChange): string {
  const judgement = judge(advice, edges);
  const isUncropped = keepsAll(kept) && (judgement.because === 'white-lost' || judgement.because === 'both-lost');
  return [...reasons(words, advice, judgement), isUncropped ? words.cropFirst : '', hiddenText(words, edges)].filter(Boolean).join(' ');
}

/** Whether a crop of that share of the picture trims nothing off. */
const keepsAll = (kept: number): boolean => kept > 0.9995;

/** Where the aims for the figure ask for another exposure than the answer: which goes first, and why they differ. */
export function differText(words: SheetWords, {adviceInside: advice, inside: edges}: CropChange, thirds: number, byCard: boolean): string {
  const judgement = judge(advice, edges);
  return thirds === advice.thirds ? ''
    : words.aimsDiffer(brief(words, judgement), judgement.because === 'fits' ? 'fits' : byCard ? 'card' : 'glints');
}

function reasons(words: SheetWords, {intent, room, roomAfter}: Advice, {because, thirds}: Judgement): string[] {
  const {say} = words;
  const stops = thirdsText(say, thirds);
  const leans = intent === 'dark-backdrop' ? words.leansLeft : '';
  const fill = words.fillLifts;
  const at = (amount: number) => measuredStops(say, amount);
  switch (because) {
    case 'fits': return [leans || words.middleFits];
    case 'glints': return thirds === 0 ? [] : [words.ifNoGlint(stops)];
    case 'white-lost': return [words.beyondWhite];
    case 'both-lost': return [words.softer];
    case 'black-lost': return [words.beyondBlack];
    case 'black-backdrop': return [words.ifFigure(stops), words.beyondBlack];
    case 'black-held': return [fill];
    case 'too-dark': return [words.roomNow(at(room), at(roomAfter)), leans];
    case 'too-bright': return [words.roomBelow(at(room), at(roomAfter))];
    case 'dark-held': return [fill];
    case 'bright-held':
    case 'all-black': return [];
  }
}

function roomAbove(edges: Edges): number {
  return Math.min(...COLOUR_CHANNELS.map((channel) => edges[channel].roomAbove));
}

/** Colours that are lost although brightness is not. */
function hiddenText(words: SheetWords, {hiddenAtWhite, hiddenAtBlack}: Edges): string {
  if (hiddenAtWhite.length > 0) return words.hiddenWhite;
  return hiddenAtBlack.length > 0 ? words.hiddenBlack(colourList(words, hiddenAtBlack, 'disjunction'), hiddenAtBlack.length > 1) : '';
}

function colourList(words: SheetWords, channels: readonly Channel[], type?: 'disjunction'): string {
  return words.say.list(channels.map((channel) => words.channelsInText[channel]), type);
}

/** What the crop did to the reading. */
export function cropText(words: SheetWords, {kept, matters, inside, whole, adviceWithout}: CropChange): string {
  if (keepsAll(kept)) return words.cropAll;
  const {say} = words;
  const edge = Math.abs(inside.anyAtBlack - whole.anyAtBlack) > Math.abs(inside.anyAtWhite - whole.anyAtWhite) ? 'black' : 'white';
  const [now, then] = (edge === 'white' ? [inside.anyAtWhite, whole.anyAtWhite] : [inside.anyAtBlack, whole.anyAtBlack]).map((share) => shareText(say, share));
  const keeps = shareText(say, kept);
  const reading = now === then ? words.cropKeeps(keeps) : words.cropReads(keeps, edge, now ?? '', then ?? '');
  return `${reading} ${matters ? words.cropMatters(brief(words, judge(adviceWithout, whole))) : words.cropNoMatter}`;
}

/** An answer in a few words. */
function brief(words: SheetWords, {answer, thirds}: Judgement): string {
  const name = answer !== 'again' ? answer : thirds < 0 ? 'darker' : 'brighter';
  return words.brief[name](thirdsText(words.say, thirds));
}
