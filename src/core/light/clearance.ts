import type {Flag} from './flag.js';
import type {Lamp} from './lamp.js';
import {along, cardAxes, direction, dot, minus, norm} from './space.js';

/**
 * Least distance a card keeps from a lamp's face, told on the safe side: from the middle of the face to the nearest
 * point of the card, less half the face's diagonal. The true gap is this or more.
 * @returns mm; negative = the card may be touching
 * @throws {Problem} naming `flag-facing`
 */
export function flagClearance(flag: Flag, lamp: Lamp): number {
  const [width, height] = cardAxes(direction('flag-facing', flag.facing));
  const to = minus(lamp.position, flag.position);
  const onCard = along(along([0, 0, 0], width, within(dot(to, width), flag.width / 2)),
    height, within(dot(to, height), flag.height / 2));
  return norm(minus(to, onCard)) - lampRadius(lamp);
}

const within = (offset: number, half: number): number => Math.max(-half, Math.min(half, offset));

/** Radius of the circle round a lamp's face, mm; 0 for a lamp without size. */
export function lampRadius({kind, width = 0, height = 0}: Lamp): number {
  if (kind === 'rectangle') return Math.hypot(width, height) / 2;
  return kind === 'disc' ? width / 2 : 0;
}
