import {edgesOf} from './clipping.js';
import type {ChannelEdges, Edges} from './clipping.js';
import {codeFromLinear, codeStops} from './light.js';
import {lostBelow, lostAbove} from './lost.js';
import {GRAY_LIGHT} from './level.js';
import {percentileCode} from './percentiles.js';
import {COLOUR_CHANNELS} from './tally.js';
import type {Channel, Tally} from './tally.js';

/**
 * What the picture is meant to look like. `dark-backdrop`: a lit figure before black, where a chart that leans left is
 * right. `even`: as much light as dark, with the middle of the chart at middle gray.
 */
export type Intent = 'dark-backdrop' | 'even';

/** Why an advice is given. */
export type AdviceReason =
  /** A colour is cut off at white. */
  | 'white-lost'
  /** The shadows are cut off at black and there is room to lift them. */
  | 'black-lost'
  /** Both edges are cut off: no exposure holds this light. It takes a softer lamp, a fill or a reflector. */
  | 'both-lost'
  /** The highlights (dark backdrop) or the middle (even) lie lower than they need to. */
  | 'too-dark'
  /** The middle lies higher than it needs to; only with `even`. */
  | 'too-bright'
  | 'fits';

/** How far to move the exposure, and why. */
export interface Advice {
  readonly intent: Intent;
  readonly reason: AdviceReason;
  /** Whole thirds of a stop; positive = brighter, 0 = leave it. */
  readonly thirds: number;
  /** The same in stops before it was rounded to thirds, always towards the safe side. */
  readonly wanted: number;
  /** Whether `wanted` is an estimate because what was cut off is not in the file: shoot again and look. */
  readonly estimated: boolean;
  /** The channel that decides. */
  readonly channel: Channel;
  /** Share of the pixels cut off at the edge in question, 0 to 1. */
  readonly share: number;
  /** Stops of light left at that edge as shot. */
  readonly room: number;
  /** Stops left there once the advice is followed; negative never happens. */
  readonly roomAfter: number;
}

/** Highlights of a lit figure may lie this far below white before it is worth another shot, stops. Common practice, no source. */
const MOST_HIGHLIGHT_ROOM = 4 / 3;
/** Where they are then brought to: two clicks below white. Common practice, no source. */
const AIMED_HIGHLIGHT_ROOM = 2 / 3;
/** How far the middle of an even chart may lie from middle gray, stops. Common practice, no source. */
const MIDDLE_SLACK = 1 / 2;

/**
 * Advice for the next shot from the chart of this one.
 *
 * At white the worst of red, green and blue decides, since one lost colour is a lost colour. At black brightness decides:
 * a saturated red has no blue to begin with, and more light would not bring any.
 * @param tally - the crop that will be kept, at least one pixel
 * @param intent - what the picture is meant to look like
 * @throws {Problem} `pixels` when nothing was counted
 */
export function exposureAdvice(tally: Tally, intent: Intent): Advice {
  const edges = edgesOf(tally);
  const top = highestColour(edges);
  const bottom = edges.brightness;
  if (top.whiteLost && bottom.blackLost) return advice(intent, 'both-lost', 0, top, 'above');
  if (top.whiteLost) return advice(intent, 'white-lost', -lostAbove(tally, top.channel), top, 'above');
  if (bottom.blackLost) {
    const lift = Math.min(lostBelow(tally, 'brightness'), top.roomAbove);
    return advice(intent, 'black-lost', lift, bottom, 'below');
  }
  return intent === 'even' ? towardsMiddle(tally, top, bottom) : towardsHighlights(top);
}

function highestColour(edges: Edges): ChannelEdges {
  return COLOUR_CHANNELS.map((channel) => edges[channel]).reduce((highest, channel) =>
    channel.atWhite > highest.atWhite || (channel.atWhite === highest.atWhite && channel.brightest > highest.brightest)
      ? channel : highest);
}

function towardsHighlights(top: ChannelEdges): Advice {
  const lift = top.roomAbove > MOST_HIGHLIGHT_ROOM ? top.roomAbove - AIMED_HIGHLIGHT_ROOM : 0;
  return advice('dark-backdrop', lift > 0 ? 'too-dark' : 'fits', lift, top, 'above');
}

function towardsMiddle(tally: Tally, top: ChannelEdges, bottom: ChannelEdges): Advice {
  const over = codeStops(codeFromLinear(GRAY_LIGHT), percentileCode(tally, 'brightness', 0.5));
  if (over < -MIDDLE_SLACK) return advice('even', 'too-dark', Math.min(-over, top.roomAbove), top, 'above');
  if (over > MIDDLE_SLACK) return advice('even', 'too-bright', -Math.min(over, bottom.roomBelow), bottom, 'below');
  return advice('even', 'fits', 0, top, 'above');
}

function advice(
  intent: Intent, reason: AdviceReason, wanted: number, edge: ChannelEdges, side: 'above' | 'below',
): Advice {
  const thirds = safeThirds(reason, wanted);
  const room = side === 'above' ? edge.roomAbove : edge.roomBelow;
  return {
    intent, reason, wanted, thirds,
    estimated: reason === 'white-lost' || reason === 'black-lost',
    channel: edge.channel,
    share: side === 'above' ? edge.atWhite : edge.atBlack,
    room,
    roomAfter: Math.max(0, side === 'above' ? room - thirds / 3 : room + thirds / 3),
  };
}

/** Towards losing nothing: darker is rounded up when white is lost, any other move is rounded down. */
function safeThirds(reason: AdviceReason, wanted: number): number {
  const thirds = 3 * wanted;
  // A hair of floating point must not cost a click.
  const slack = 1e-9;
  const whole = reason === 'white-lost' ? Math.floor(thirds + slack) : Math.trunc(thirds + Math.sign(thirds) * slack);
  return whole === 0 ? 0 : whole;
}
