import type {Flag} from './flag.js';
import type {Lamp} from './lamp.js';
import type {Place} from './reach.js';
import type {FigureSpace, TableSet} from './set.js';
import type {Point} from './space.js';
import {flagClearance, lampRadius} from './clearance.js';
import {flagCorners, seenPast} from './flag.js';
import {minus, norm} from './space.js';

/** What a search may do. All mm. */
export interface MoveRoom {
  /** Farthest a lamp or flag is moved. */
  readonly move: number;
  /** Farthest the backdrop can stand from the base's centre. */
  readonly backdrop: number;
  /** Nearest a card may come to a lamp's face: the lamp maker's distance. */
  readonly clearance: number;
}

/** Room on and round a common table, our choice. The clearance is no safe distance: the lamp maker's counts. */
export const TABLE_ROOM: MoveRoom = {move: 600, backdrop: 3000, clearance: 100};

/**
 * Whether a changed set can stand: nothing below the table or behind the backdrop, no card nearer to a lamp and no lamp
 * nearer to the figure than allowed, and, with the camera known, no card or lamp in the picture. What was wrong before
 * the change is not held against it.
 * @param places - the part of the backdrop that the picture shows
 */
export function isFree(before: TableSet, after: TableSet, places: readonly Place[], room: MoveRoom): boolean {
  if (!isBetween(after) && isBetween(before)) return false;
  const allowed = (was: number): number => Math.min(room.clearance, was) - 1e-9;
  const crowded = after.lamps.some((lamp, index) => {
    const was = before.lamps[index] as Lamp;
    if (toFigure(lamp, after.figure) < allowed(toFigure(was, before.figure))) return true;
    return after.flags.some((flag, card) => {
      const old = before.flags[card];
      return flagClearance(flag, lamp) < allowed(old ? flagClearance(old, was) : Infinity);
    });
  });
  return !crowded && (viewIsClear(after, places) || !viewIsClear(before, places));
}

/** Whether every lamp's middle and all of every card is above the table and before the backdrop. */
function isBetween({lamps, flags, backdrop}: TableSet): boolean {
  const points = [...lamps.map((lamp) => lamp.position), ...flags.flatMap(flagCorners)];
  return points.every(([, y, z]) => z >= 0 && y <= backdrop.distance);
}

/** Gap between a lamp and the figure's box, at least; mm. */
function toFigure(lamp: Lamp, {least, most}: FigureSpace): number {
  const gap = (axis: 0 | 1 | 2): number =>
    Math.max(least[axis] - lamp.position[axis], 0, lamp.position[axis] - most[axis]);
  return norm([gap(0), gap(1), gap(2)]) - lampRadius(lamp);
}

/** Whether the camera sees the figure's front and rear and the backdrop between the places past all cards and lamps. */
function viewIsClear(set: TableSet, places: readonly Place[]): boolean {
  const {camera, figure: {least, most}, backdrop, flags, lamps} = set;
  if (!camera) return true;
  const cards = [...flags, ...lamps.map(cardOf).filter((card) => card !== null)];
  const across = places.map(([x]) => x);
  const up = places.map(([, z]) => z);
  const faces: readonly Point[][] = [
    upright(least[0], most[0], least[1], least[2], most[2]),
    upright(least[0], most[0], most[1], least[2], most[2]),
    upright(Math.min(...across), Math.max(...across), backdrop.distance, Math.min(...up), Math.max(...up)),
  ];
  return faces.every((corners) => {
    const face = corners.map((corner) => minus(corner, camera));
    return seenPast(face, cards, camera)[0] === face;
  });
}

function upright(left: number, right: number, y: number, low: number, high: number): Point[] {
  return [[left, y, low], [right, y, low], [right, y, high], [left, y, high]];
}

/** A lamp as what it takes from the view; one without size takes nothing. */
function cardOf(lamp: Lamp): Flag | null {
  if (lamp.kind !== 'disc' && lamp.kind !== 'rectangle') return null;
  const width = lamp.width as number;
  const height = lamp.kind === 'disc' ? width : lamp.height as number;
  return {position: lamp.position, facing: minus(lamp.aim, lamp.position), width, height};
}
