import type {Lamp} from './lamp.js';
import type {TableSet} from './set.js';
import type {Point} from './space.js';
import {Problem, requireFinite, requirePositive} from '../problem.js';
import {backdropLevels, figureLight} from './backdrop.js';
import {illuminance} from './lamp.js';
import {along, direction, minus, norm} from './space.js';

/** Steps a search looks at before it closes in, and halvings by which it then does. */
const STEPS = 40;
const HALVINGS = 30;

/**
 * The first place on a way where something is reached.
 * @param gap - how far above (0 or more = reached) or below the wish, at a place
 * @param from - where the way starts
 * @param to - where it ends; may be less than `from`
 * @returns the place, to one part in 10¹⁰ of the way; `null` when nothing on it reaches. A stretch that reaches and
 * is shorter than a fortieth of the way can be missed.
 */
export function firstReach(gap: (place: number) => number, from: number, to: number): number | null {
  if (gap(from) >= 0) return from;
  let short = from;
  for (let step = 1; step <= STEPS; step++) {
    let good = from + (to - from) * step / STEPS;
    if (gap(good) >= 0) {
      for (let halving = 0; halving < HALVINGS; halving++) {
        const middle = (short + good) / 2;
        if (gap(middle) >= 0) good = middle; else short = middle;
      }
      return good;
    }
    short = good;
  }
  return null;
}

/** A place on the backdrop: x and z, mm. */
export type Place = readonly [x: number, z: number];

/**
 * Level of the brightest of some places, stops below the gray card.
 * @throws {Problem} as {@link backdropLevels}, and naming `places` when there are none
 */
export function brightestBelowGray(set: TableSet, places: readonly Place[]): number {
  if (places.length === 0) throw new Problem('places', places, 'at least one place on the backdrop');
  return Math.min(...backdropLevels(set, places).map((level) => level.belowGray));
}

/**
 * How far back the backdrop must stand for its brightest place to be so many stops below the gray card.
 * @param belowGray - stops, the wish
 * @param room - farthest it can stand from the base's centre, mm
 * @returns distance from the base's centre, mm; where it stands now when that will do
 * @throws {Problem} naming `backdrop-distance` when the room is too short for it
 */
export function backdropDistanceFor(
  set: TableSet, places: readonly Place[], belowGray: number, room: number,
): number {
  requireFinite('backdrop-distance', set.backdrop.distance);
  const level = (distance: number): number =>
    brightestBelowGray({...set, backdrop: {...set.backdrop, distance}}, places);
  const found = firstReach((distance) => level(distance) - belowGray, set.backdrop.distance, room);
  if (found === null) throw new Problem('backdrop-distance', room, 'more room behind the figure, or a darker card');
  return found;
}

/**
 * How near a lamp must come for so many stops more on a small surface, or how far it may go for fewer. It moves on
 * the straight line through the surface and keeps its aim.
 * @param at - the surface's place, mm
 * @param facing - way it faces
 * @param stops - change in this lamp's own light there; positive = brighter
 * @param nearest - nearest it may come, mm, > 0
 * @param farthest - farthest it may go, mm
 * @returns distance from `at` to the middle of the lamp's face, mm
 * @throws {Problem} naming `lamp-distance` when no distance between them does; a large lamp's light stops growing
 */
export function lampDistanceFor(
  lamp: Lamp, at: Point, facing: Point, stops: number, nearest: number, farthest: number,
): number {
  requirePositive('lamp-distance', nearest);
  const away = minus(lamp.position, at);
  const way = direction('lamp-position', away);
  const light = (distance: number): number => illuminance({...lamp, position: along(at, way, distance)}, at, facing);
  const wanted = illuminance(lamp, at, facing) * 2 ** stops;
  const now = norm(away);
  const found = stops < 0
    ? firstReach((distance) => wanted - light(distance), now, farthest)
    : firstReach((distance) => light(distance) - wanted, now, nearest);
  if (found === null || !(wanted > 0)) {
    throw new Problem('lamp-distance', stops < 0 ? farthest : nearest, 'a distance that gives that light');
  }
  return found;
}

/** What a change of the set costs at the figure. */
export interface LightTrade {
  /** Change of light on the gray card, stops; positive = brighter. */
  readonly stops: number;
  /** Factor on the shutter time that restores the exposure. */
  readonly shutterFactor: number;
}

/**
 * What moving lamps or flags does to the figure's exposure.
 * @throws {Problem} as {@link figureLight}, for either set
 */
export function lightTrade(before: TableSet, after: TableSet): LightTrade {
  const factor = figureLight(after) / figureLight(before);
  return {stops: Math.log2(factor), shutterFactor: 1 / factor};
}
