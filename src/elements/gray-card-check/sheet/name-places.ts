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
/** Nearer than this to the left edge a name has no room to the left. */
const NEAR_LEFT = 0.2;
/** From a frame to the foot of a name above it, under it, and under another name that stands there, CSS px. */
const ABOVE = -7;
const UNDER = 18;
const SECOND_ROW = 34;
/** From a frame to a name beside it; on the right there is the handle. */
const BESIDE = 8;
const PAST_HANDLE = 16;
/** From the middle of a line of text to its foot. */
const TO_FOOT = 4;

/**
 * Places for the names of the three frames that keep apart however small the card is: on a card that lies across, the
 * outer two lean outwards and the middle one stands on the other side; on one that stands, they all stand beside it.
 */
export function namePlaces(boxes: Readonly<Record<Patch, Box>>): Readonly<Record<Patch, NamePlace>> {
  const {white, gray, black} = boxes;
  const [across, down] = [middle(black).x - middle(white).x, middle(black).y - middle(white).y];
  if (Math.abs(down) > Math.abs(across)) return {white: beside(white), gray: beside(gray), black: beside(black)};
  const isUnder = Math.min(white.y, black.y) < NEAR_EDGE;
  const hasRoomUnder = gray.y + gray.height < 1 - NEAR_EDGE;
  const leftwards = (box: Box): NamePlace => ({...edge(box, isUnder, UNDER), x: box.x + box.width, anchor: 'end', right: 0});
  const rightwards = (box: Box): NamePlace => ({...edge(box, isUnder, UNDER), x: box.x, anchor: 'start', right: 0});
  return {
    white: (across > 0 ? leftwards : rightwards)(white),
    gray: {...edge(gray, isUnder || hasRoomUnder, isUnder ? SECOND_ROW : UNDER), x: middle(gray).x, anchor: 'middle', right: 0},
    black: (across > 0 ? rightwards : leftwards)(black),
  };
}

const middle = ({x, y, width, height}: Box): {readonly x: number; readonly y: number} => ({x: x + width / 2, y: y + height / 2});

const edge = ({y, height}: Box, isUnder: boolean, under: number): {readonly y: number; readonly down: number} => (
  isUnder ? {y: y + height, down: under} : {y, down: ABOVE});

function beside(box: Box): NamePlace {
  const {y} = middle(box);
  return box.x < NEAR_LEFT ? {x: box.x + box.width, y, anchor: 'start', right: PAST_HANDLE, down: TO_FOOT}
    : {x: box.x, y, anchor: 'end', right: -BESIDE, down: TO_FOOT};
}
