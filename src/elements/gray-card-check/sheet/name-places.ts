import type {Patch} from '../../../core/white/card.js';

/** A frame in shares of what is shown. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where the name of a frame stands: a point in shares of what is shown, and CSS px from there to the text's foot. */
export interface NamePlace {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly right: number;
  readonly down: number;
}

/** Nearer than this to the upper or lower edge a name has no room there, share of what is shown. */
const NEAR_EDGE = 0.14;
/** Nearer than this to an edge at the side a name has no room between, share of what is shown. */
const NEAR_SIDE = 0.2;
/** Closer together than this, names of frames in a row would run into each other, share of what is shown. */
const CLOSE = 0.14;
/** From a frame to the foot of a name above it and under it, and from name to name in a staircase, CSS px. */
const ABOVE = -7;
const UNDER = 18;
const STAIR = 18;
/** From a frame to a name beside it; on the right there is the handle. */
const BESIDE = 8;
const PAST_HANDLE = 16;
/** From the middle of a line of text to its foot. */
const TO_FOOT = 4;

/**
 * Places for the names of the three frames that keep apart however small the card is. On a card that lies across, the
 * outer two lean outwards and the middle one stands on the other side; where there is no room for that they are a
 * staircase, the outermost the highest. On a card that stands, all are beside it.
 */
export function namePlaces(boxes: Readonly<Record<Patch, Box>>): Readonly<Record<Patch, NamePlace>> {
  const {white, gray, black} = boxes;
  const [across, down] = [middle(black).x - middle(white).x, middle(black).y - middle(white).y];
  if (Math.abs(down) > Math.abs(across)) return {white: beside(white), gray: beside(gray), black: beside(black)};
  const isUnder = Math.min(white.y, black.y) < NEAR_EDGE;
  const [left, right] = across > 0 ? [white, black] : [black, white];
  const hasRoom = {left: left.x + left.width > NEAR_SIDE, right: right.x < 1 - NEAR_SIDE, across: !isUnder && gray.y + gray.height < 1 - NEAR_EDGE};
  const isClose = Math.abs(across) / 2 < CLOSE;
  if (!hasRoom.left || !hasRoom.right || (isClose && !hasRoom.across)) {
    const [anchor, ...order] = hasRoom.right || !hasRoom.left ? ['start', right, gray, left] as const : ['end', left, gray, right] as const;
    const stair = (box: Box): NamePlace => leaning(box, isUnder, anchor, order.indexOf(box));
    return {white: stair(white), gray: stair(gray), black: stair(black)};
  }
  const outer = (box: Box): NamePlace => leaning(box, isUnder, box === left ? 'end' : 'start', 0);
  return {
    white: outer(white), black: outer(black),
    gray: {...edge(gray, isUnder || hasRoom.across, 0), x: middle(gray).x, anchor: 'middle', right: 0},
  };
}

const middle = ({x, y, width, height}: Box): {readonly x: number; readonly y: number} => ({x: x + width / 2, y: y + height / 2});

const edge = ({y, height}: Box, isUnder: boolean, row: number): {readonly y: number; readonly down: number} => (
  isUnder ? {y: y + height, down: UNDER + row * STAIR} : {y, down: ABOVE - row * STAIR});

/** Above or under a frame, from one of its corners on outwards. */
function leaning(box: Box, isUnder: boolean, anchor: 'start' | 'end', row: number): NamePlace {
  return {...edge(box, isUnder, row), x: anchor === 'start' ? box.x : box.x + box.width, anchor, right: 0};
}

function beside(box: Box): NamePlace {
  const {y} = middle(box);
  return box.x < NEAR_SIDE ? {x: box.x + box.width, y, anchor: 'start', right: PAST_HANDLE, down: TO_FOOT}
    : {x: box.x, y, anchor: 'end', right: -BESIDE, down: TO_FOOT};
}
