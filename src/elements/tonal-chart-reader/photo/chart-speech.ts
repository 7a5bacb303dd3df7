import type {ChannelEdges} from '../../../core/tone/clipping.js';
import {measuredStops, shareText, tenths} from './shares.js';
import type {SheetWords} from './words/en.js';

/** Room to an edge in stops, without the unit where a table says it above. */
export function roomText(words: SheetWords, amount: number, write: typeof tenths = tenths): string {
  // Black all over has no light that an exposure could multiply.
  return amount === 0 ? words.none : Number.isFinite(amount) ? write(words.say, amount) : words.noLight;
}

/** The chart in sentences, for those who do not see it. */
export function chartText(words: SheetWords, edges: readonly ChannelEdges[]): string {
  const {say} = words;
  return edges.map(({channel, atBlack, atWhite, roomAbove, roomBelow}) => words.channelEdges(
    words.channels[channel], shareText(say, atBlack), shareText(say, atWhite),
    roomText(words, roomBelow, measuredStops), roomText(words, roomAbove, measuredStops),
  )).join(' ');
}

/** How the drawing is to be read. */
export function scaleText(words: SheetWords, moved: boolean, before: boolean): string {
  return [words.scaleNote, moved ? words.dashed : '', before ? words.thin : ''].filter(Boolean).join(' ');
}
