import type {Advice} from '../../../core/tone/advice.js';
import type {Edges} from '../../../core/tone/clipping.js';
import {COLOUR_CHANNELS} from '../../../core/tone/tally.js';

export type AdviceIntent = Advice['intent'];

/** What to do with the shot. `yours`: it depends on what is cut off, which nobody can count. */
export type Answer = 'keep' | 'again' | 'yours' | 'relight';

/** What decides. */
export type Because =
  | 'fits' | 'glints' | 'white-lost' | 'both-lost' | 'black-lost' | 'black-backdrop' | 'black-held'
  | 'too-dark' | 'dark-held' | 'too-bright' | 'bright-held' | 'all-black';

/** Why the aims for the figure ask for another exposure: nothing needs to change, they go by a gray card, or they leave glints out. */
export type AimsWhy = 'fits' | 'card' | 'glints';

export interface Judgement {
  readonly answer: Answer;
  readonly because: Because;
  /** Thirds of a stop that the next shot would change by; 0 when none would help or is needed. */
  readonly thirds: number;
}

/**
 * Up to this share of the crop at white is taken for glints: the mirror image of a lamp on metal, varnish or an eye is
 * white in every good photograph. Common practice, no source; whoever sees the picture decides.
 */
const MOST_GLINTS = 0.01;

/** Highlights this far below white have room for another shot before a dark backdrop, stops. As the advice has it. */
const ROOM_TO_LIFT = 4 / 3;

/** What the advice comes to for somebody who has the picture before them. */
export function judge(advice: Advice, edges: Edges): Judgement {
  const {reason, intent, thirds, share} = advice;
  const before = intent === 'dark-backdrop';
  const as = (answer: Answer, because: Because): Judgement => ({answer, because, thirds});
  switch (reason) {
    case 'fits': return as('keep', 'fits');
    case 'white-lost': return share <= MOST_GLINTS ? as('yours', 'glints') : as('again', 'white-lost');
    case 'both-lost': return before && share <= MOST_GLINTS ? as('yours', 'glints') : as('relight', 'both-lost');
    case 'black-lost':
      if (COLOUR_CHANNELS.every((channel) => edges[channel].brightest === 0)) return as('again', 'all-black');
      if (thirds === 0) return as('keep', 'black-held');
      return before && roomAbove(edges) <= ROOM_TO_LIFT ? as('yours', 'black-backdrop') : as('again', 'black-lost');
    case 'too-dark': return thirds > 0 ? as('again', 'too-dark') : as('keep', 'dark-held');
    case 'too-bright': return thirds < 0 ? as('again', 'too-bright') : as('keep', 'bright-held');
  }
}

function roomAbove(edges: Edges): number {
  return Math.min(...COLOUR_CHANNELS.map((channel) => edges[channel].roomAbove));
}
