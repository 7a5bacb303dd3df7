import {judgeShift, type Comparison, type EdgeChange, type PerChannel} from '../../../core/tone/compare.js';
import {shareText, thirdsText} from './shares.js';
import type {SheetWords} from './words/en.js';

/** Stops of colour between two shots that compression alone can make, see the comparison. Found on rendered pictures. */
const SAME_COLOUR = 0.1;
/** Below this much agreement it is worth saying that something moved. */
const ALL_AGREE = 0.85;
/** Stops that show as none. */
const UNSEEN = 0.005;

/** Hundredths of a stop, without a sign. */
function hundredths({say}: SheetWords, stops: number): string {
  const size = Math.abs(stops);
  return say.family.stops(say.fixed(size, 2), size).replaceAll(' ', '\u00a0');
}

const clicks = (words: SheetWords, thirds: number): string => (Math.abs(thirds) === 1 ? words.oneClick : thirdsText(words.say, thirds));

/**
 * How the shot differs from the earlier one, against what was meant.
 * @param meant - stops by which the settings of both files say it should be brighter
 */
export function shiftText(words: SheetWords, comparison: Comparison, meant: number | undefined): string {
  const {shift} = comparison;
  if (shift === undefined) return whyNot(words, comparison.because);
  const judged = judgeShift(shift, meant);
  const measured = Math.abs(shift) < UNSEEN ? words.sameAs : words.shiftedBy(hundredths(words, shift), shift > 0);
  if (meant === undefined) return judged.thirds === 0 ? words.shiftSmall(measured) : words.shiftNear(measured, clicks(words, judged.thirds));
  const thirds = Math.round(meant * 3);
  return judged.asMeant ? words.shiftMeant(measured, thirds === 0 ? undefined : clicks(words, thirds))
    : words.shiftOff(measured, thirds === 0 ? undefined : thirdsText(words.say, thirds), meant > 0);
}

function whyNot(words: SheetWords, because: Comparison['because']): string {
  switch (because) {
    case 'shape': return words.otherShape;
    case 'other-set': return words.otherSet;
    case 'nothing-in-common':
    case undefined: return words.nothingInCommon;
  }
}

/** How far to trust it, what moved, and whether the colour of the light did. */
export function shiftNote(words: SheetWords, {spread, agreeing, colour}: Comparison): string {
  const most = colour && (Math.abs(colour.red) >= Math.abs(colour.blue) ? 'red' : 'blue');
  return [
    words.shiftSpread(hundredths(words, Math.max(0.01, spread))),
    agreeing < ALL_AGREE ? words.shiftMoved(shareText(words.say, 1 - agreeing)) : '',
    colour && most && Math.abs(colour[most]) > SAME_COLOUR ? words.shiftColour(most, hundredths(words, colour[most]), colour[most] > 0) : '',
  ].filter(Boolean).join(' ');
}

/** What a shift did to one edge. */
export function edgeText({say}: SheetWords, edges: PerChannel<EdgeChange>, channel: keyof PerChannel<EdgeChange>): string {
  const [before, after] = [shareText(say, edges[channel].before), shareText(say, edges[channel].after)];
  return before === after ? after : `${before} → ${after}`;
}
