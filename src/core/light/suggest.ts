import type {Flag} from './flag.js';
import type {Place} from './reach.js';
import type {MoveRoom} from './room.js';
import type {TableSet} from './set.js';
import type {Point} from './space.js';
import {Problem} from '../problem.js';
import {TABLE_ROOM, isFree} from './room.js';
import {lampCorners} from './lamp.js';
import {brightestBelowGray, firstReach, lightTrade} from './reach.js';
import {figureShares} from './set.js';
import {along, cardAxes, direction, dot, minus, scaled} from './space.js';

/** One thing moved, and what that does. */
export interface SetMove {
  readonly thing: 'flag' | 'lamp' | 'backdrop' | 'new-flag';
  /** Which one, in the order of the set; 0 for the backdrop; for a new flag the lamp it shades. */
  readonly index: number;
  readonly from: Point;
  readonly to: Point;
  /** How far, mm; 0 for a new flag. */
  readonly distance: number;
  /** The set afterwards, to be taken over as it is. */
  readonly set: TableSet;
  /** Brightest place afterwards, stops below the gray card, exposed anew for the card. */
  readonly belowGray: number;
  /** Whether the figure sees as much of every lamp as before. */
  readonly keepsLight: boolean;
  /** Change of light on the gray card, stops; positive = brighter. */
  readonly stops: number;
  /** Factor on the shutter time that restores the figure's exposure. */
  readonly shutterFactor: number;
}

const WAYS: readonly Point[] = [[1, 0, 0], [-1, 0, 0], [0, 1, 0], [0, -1, 0], [0, 0, 1], [0, 0, -1]];

/**
 * The smallest straight moves that make the backdrop dark enough: one for each flag, lamp and the backdrop, along the
 * table's own directions, a lamp also towards its aim and away. Lamps keep their aim. Nothing goes where
 * {@link isFree} says it cannot.
 * Takes some hundred evaluations of the set a thing: for a click, not for every pointer move.
 * @param places - where the backdrop is looked at, at least one; keep them few
 * @param belowGray - stops below the gray card that the brightest of them should have
 * @returns those that leave the figure its light first, then by distance; empty when it is dark enough already, or when
 * no single move does it
 * @throws {Problem} as {@link brightestBelowGray}
 */
export function suggestMoves(
  set: TableSet, places: readonly Place[], belowGray: number, room: MoveRoom = TABLE_ROOM,
): readonly SetMove[] {
  if (brightestBelowGray(set, places) >= belowGray) return [];
  const gap = (changed: TableSet): number => {
    try {
      return isFree(set, changed, places, room) ? brightestBelowGray(changed, places) - belowGray : -Infinity;
    } catch (error) {
      // A lamp moved until nothing lights the figure, or into a surface: not a way out, but no fault of the caller's.
      if (error instanceof Problem) return -Infinity;
      throw error;
    }
  };
  const moves: SetMove[] = [];
  const search = (thing: SetMove['thing'], index: number, from: Point, ways: readonly Point[],
    farthest: number, put: (to: Point) => TableSet): void => {
    const found = ways.map((way) => {
      const distance = firstReach((far) => gap(put(along(from, way, far))), 0, farthest);
      if (distance === null) return null;
      const to = along(from, way, distance);
      return describeMove(set, put(to), places, {thing, index, from, to, distance});
    }).filter((move) => move !== null).sort(byCost)[0];
    if (found) moves.push(found);
  };
  set.flags.forEach((flag, index) => search('flag', index, flag.position, WAYS, room.move,
    (position) => ({...set, flags: set.flags.with(index, {...flag, position})})));
  set.lamps.forEach((lamp, index) => {
    const way = direction('lamp-aim', minus(lamp.kind === 'bulb' ? set.figure.card : lamp.aim, lamp.position));
    search('lamp', index, lamp.position, [...WAYS, way, scaled(way, -1)], room.move,
      (position) => ({...set, lamps: set.lamps.with(index, {...lamp, position})}));
  });
  const {distance} = set.backdrop;
  search('backdrop', 0, [0, distance, 0], [[0, 1, 0]], Math.max(0, room.backdrop - distance),
    (to) => ({...set, backdrop: {...set.backdrop, distance: to[1]}}));
  return moves.sort(byCost);
}

function describeMove(
  before: TableSet, after: TableSet, places: readonly Place[],
  move: Pick<SetMove, 'thing' | 'index' | 'from' | 'to' | 'distance'>,
): SetMove {
  return {
    ...move, set: after, belowGray: brightestBelowGray(after, places), keepsLight: keepsLight(after, figureShares(before)),
    ...lightTrade(before, after),
  };
}

/** @param kept - shares of the lamps that the figure sees before */
function keepsLight(after: TableSet, kept: readonly number[]): boolean {
  return figureShares(after).every((share, lamp) => share >= (kept[lamp] as number) - 1e-9);
}

function byCost(a: SetMove, b: SetMove): number {
  return Number(b.keepsLight) - Number(a.keepsLight) || a.distance - b.distance;
}

/** Shares of the way from lamp to backdrop at which a new flag is tried. */
const TRIES = Array.from({length: 16}, (_, at) => (at + 2) / 20);

/** Shares of its width or height by which a card that stands in the way is cut back, the least that frees it first. */
const CUTS = Array.from({length: 12}, (_, at) => (at + 1) / 20);

/**
 * The smallest new card that hides one lamp wholly from some places on the backdrop, takes nothing from the figure
 * and stands where {@link isFree} lets it. Tried are cards square to the light, upright and level ones, at
 * sixteen distances. Where none of them can stand, one of their sides is cut back until it can, and of such cards the
 * one that leaves the backdrop darkest is taken.
 * @param lamp - which one, in the order of the set
 * @param places - on the backdrop, at least one
 * @returns the move, with the card as the last flag of its set; `null` when no such card makes the backdrop darker
 * @throws {Problem} naming `lamp` when there is no such lamp, or as {@link brightestBelowGray}
 */
export function suggestFlag(
  set: TableSet, lamp: number, places: readonly Place[], room: MoveRoom = TABLE_ROOM,
): SetMove | null {
  const source = set.lamps[lamp];
  if (!source) throw new Problem('lamp', lamp, 'one of the lamps of the set');
  const points = places.map(([x, z]): Point => [x, set.backdrop.distance, z]);
  const middle = scaled(points.reduce((sum, point) => along(sum, point, 1)), 1 / points.length);
  const way = minus(middle, source.position);
  const kept = figureShares(set);
  const fits = (flag: Flag): boolean => {
    const after = {...set, flags: [...set.flags, flag]};
    return isFree(set, after, places, room) && keepsLight(after, kept);
  };
  const cards = [way, FACING_CAMERA, FACING_UP].flatMap((facing) =>
    TRIES.map((share) => cardAcross(lampCorners(source), points, facing, along(source.position, way, share)))).filter((flag) => flag !== null);
  const moveTo = (flag: Flag): SetMove => describeMove(set, {...set, flags: [...set.flags, flag]}, places,
    {thing: 'new-flag', index: lamp, from: flag.position, to: flag.position, distance: 0});
  const [smallest] = cards.filter(fits).sort((a, b) => a.width * a.height - b.width * b.height);
  if (smallest) return moveTo(smallest);
  const now = brightestBelowGray(set, places);
  const cut = cards.flatMap((card) => SIDES.flatMap((side) => cutsOf(card, side).find(fits) ?? []));
  return cut.map(moveTo).filter(({belowGray}) => belowGray > now).sort((a, b) => b.belowGray - a.belowGray)[0] ?? null;
}

const FACING_CAMERA: Point = [0, -1, 0];
const FACING_UP: Point = [0, 0, 1];

/** A card's two directions, either way. */
const SIDES = [['width', 1], ['width', -1], ['height', 1], ['height', -1]] as const;

/** A card with less and less of it on one side; the other edge stays where it is. */
function cutsOf(card: Flag, [size, away]: typeof SIDES[number]): readonly Flag[] {
  const axis = cardAxes(direction('flag-facing', card.facing))[size === 'width' ? 0 : 1];
  return CUTS.map((share) => (
    {...card, [size]: card[size] * (1 - share), position: along(card.position, axis, away * card[size] * share / 2)}));
}

/** More than the bare shadow on every side, mm: a hand's accuracy in placing a card. Our choice. */
const MARGIN = 5;

/**
 * Smallest card of a facing, through a point, that stands across every line from a lamp's corners to the places, and so
 * across every line from the face to anywhere between them; `null` when its plane does not part the two.
 */
function cardAcross(
  corners: readonly Point[], places: readonly Point[], facing: Point, through: Point,
): Flag | null {
  const normal = direction('flag-facing', facing);
  const [width, height] = cardAxes(normal);
  const crossings: Point[] = [];
  for (const corner of corners) {
    for (const place of places) {
      const line = minus(place, corner);
      const share = dot(minus(through, corner), normal) / dot(line, normal);
      if (!(share > 0 && share < 1)) return null;
      crossings.push(minus(along(corner, line, share), through));
    }
  }
  const span = (axis: Point): readonly [middle: number, size: number] => {
    const offsets = crossings.map((crossing) => dot(crossing, axis));
    const [least, most] = [Math.min(...offsets), Math.max(...offsets)];
    return [(least + most) / 2, most - least + 2 * MARGIN];
  };
  const [right, wide] = span(width);
  const [up, high] = span(height);
  return {position: along(along(through, width, right), height, up), facing: normal, width: wide, height: high};
}
