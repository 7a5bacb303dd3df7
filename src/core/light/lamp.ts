import type {Flag} from './flag.js';
import type {Polygon} from './polygon.js';
import type {Point} from './space.js';
import {Problem, requireFinite, requirePositive, requireWithin} from '../problem.js';
import {discPolygon, discSkyShare, smallLamp} from './falloff.js';
import {isHidden, seenPast} from './flag.js';
import {area, skyShare} from './polygon.js';
import {cardCorners, direction, dot, minus} from './space.js';

/** A lamp that shines evenly from a flat face to the front (or, a bulb, the same to all sides). */
export interface Lamp {
  /** `bulb` and `small` have no size; a `disc` is round; a `rectangle` is a soft box, a lit panel, a window. */
  readonly kind: 'bulb' | 'small' | 'disc' | 'rectangle';
  /** Middle of the face, mm. */
  readonly position: Point;
  /** A point it is aimed at, mm, anywhere before it. Of no account to a bulb. */
  readonly aim: Point;
  /** mm, > 0; a disc's diameter. Not read for `bulb` and `small`. */
  readonly width?: number;
  /** mm, > 0. Only read for `rectangle`. */
  readonly height?: number;
  /** Stops against the other lamps: lamps of equal power are equally bright from afar, whatever their size. */
  readonly power: number;
}

/** Light of a lamp of power 0 straight before it, one metre off, is 1: distances are in mm inside. */
const PER_SQUARE_METRE = 1e6;

/**
 * Corners of a lamp's face in the set's frame, in order round it; a disc as a polygon of its own area; one point for
 * a lamp without size.
 * @throws {Problem} naming `lamp-width`, `lamp-height` or `lamp-aim`
 */
export function lampCorners(lamp: Lamp): readonly Point[] {
  const normal = shines(lamp);
  return normal && lamp.kind !== 'small' ? faceOf(lamp, lamp.position, normal) : [lamp.position];
}

function faceOf(lamp: Lamp, centre: Point, normal: Point): Polygon {
  const width = sizeOf('lamp-width', lamp.width);
  return lamp.kind === 'disc'
    ? discPolygon(centre, normal, width / 2)
    : cardCorners(centre, normal, width, sizeOf('lamp-height', lamp.height));
}

function sizeOf(parameter: string, size: number | undefined): number {
  requirePositive(parameter, size ?? NaN);
  return size as number;
}

/** Direction from lamp to aim; a bulb has none that matters. */
function shines(lamp: Lamp): Point | null {
  return lamp.kind === 'bulb' ? null : direction('lamp-aim', minus(lamp.aim, lamp.position));
}

/** Further away, mm, the sides of a lamp are lost in the last digits of its place. */
const FURTHEST = 1e9;

/** From a place to the middle of the lamp. */
function centreFrom(lamp: Lamp, at: Point): Point {
  const centre = minus(lamp.position, at);
  if (dot(centre, centre) > FURTHEST ** 2) throw new Problem('lamp-position', lamp.position, 'a place not so far away');
  return centre;
}

/** Stops either way; past any lamp, and 2 to this power is still a number. */
const MOST_POWER = 100;

/**
 * Illuminance one lamp gives a small surface, direct light only.
 * @param lamp - what shines
 * @param at - the surface's place, mm
 * @param facing - way it faces, any length above 0
 * @param flags - cards that may stand between
 * @returns linear, 0 or above; 1 = a lamp of power 0 straight before the surface at one metre, small against that
 * @throws {Problem} naming `lamp-position`, `lamp-aim`, `lamp-width`, `lamp-height`, `lamp-power` or `facing`
 * Source: inverse square and cosine law, Lambert's polygon formula, view-factor catalogue: cited where they are used.
 */
export function illuminance(lamp: Lamp, at: Point, facing: Point, flags: readonly Flag[] = []): number {
  requireFinite('lamp-power', lamp.power);
  requireWithin('lamp-power', lamp.power, -MOST_POWER, MOST_POWER);
  const centre = centreFrom(lamp, at);
  const way = direction('facing', facing);
  const normal = shines(lamp);
  const strength = PER_SQUARE_METRE * 2 ** lamp.power;
  // Catches a place that is no number, too.
  if (!(dot(centre, centre) > 0)) throw new Problem('lamp-position', lamp.position, 'a place away from what it lights');
  if (normal && dot(normal, centre) >= 0) return 0;
  const face = normal && lamp.kind !== 'small' ? faceOf(lamp, centre, normal) : [];
  // So small, or so far away, that its corners fall together: a point.
  if (!normal || !(area(face) > 0)) {
    return isHidden(lamp.position, flags, at) ? 0 : strength * smallLamp(centre, normal, way);
  }
  const pieces = seenPast(face, flags, at);
  const brightness = strength / area(face);
  const whole = pieces[0] === face && face.every((corner) => dot(corner, way) > 0);
  if (whole && lamp.kind === 'disc') {
    return brightness * Math.max(0, discSkyShare(centre, normal, (lamp.width as number) / 2, way));
  }
  return brightness * Math.max(0, pieces.reduce((sum, piece) => sum + skyShare(piece, way), 0));
}

/**
 * How much of a lamp's face a point sees past the flags, whichever way a surface there faces.
 * @param at - mm
 * @returns share of the face's area, 0 to 1; 1 also when the point is behind the lamp and no flag matters
 * @throws {Problem} as {@link illuminance}
 */
export function visibleShare(lamp: Lamp, at: Point, flags: readonly Flag[]): number {
  const normal = shines(lamp);
  const centre = centreFrom(lamp, at);
  if (normal && dot(normal, centre) >= 0) return 1;
  const face = normal && lamp.kind !== 'small' ? faceOf(lamp, centre, normal) : [];
  if (!(area(face) > 0)) return isHidden(lamp.position, flags, at) ? 0 : 1;
  const pieces = seenPast(face, flags, at);
  if (pieces[0] === face) return 1;
  return Math.min(1, pieces.reduce((sum, piece) => sum + area(piece), 0) / area(face));
}
