import type {Polygon} from './polygon.js';
import type {Point} from './space.js';
import {requireFinite, requirePositive} from '../problem.js';
import {along, cardAxes, dot, norm} from './space.js';

/**
 * Light lost between two distances from a lamp that is small against both.
 * @param from - mm, > 0
 * @param to - mm, > 0
 * @returns stops, positive = brighter at `to` (so twice the distance gives −2)
 * @throws {Problem} when either is not a finite number above 0
 * Source: inverse square law, IES definition 9.1.1.
 */
export function distanceStops(from: number, to: number): number {
  requirePositive('lamp-distance', from);
  requirePositive('lamp-distance', to);
  return 2 * Math.log2(from / to);
}

/**
 * By how much the inverse square overstates the light of an evenly bright round lamp, straight before its middle.
 * @param diameter - of the lamp, mm, 0 or above
 * @param distance - from its face, mm, > 0
 * @returns share of the true light: 0.01 at five times the diameter
 * Source: IES definition 9.1.1, note; exact for a disc.
 */
export function inverseSquareError(diameter: number, distance: number): number {
  requireFinite('lamp-width', diameter);
  requirePositive('lamp-distance', distance);
  return (diameter / 2 / distance) ** 2;
}

/**
 * Light a whole evenly bright disc throws on a small surface at 0, 0, 0, as a multiple of the disc's brightness.
 * Holds when the whole disc is above the surface's horizon; the caller sees to that.
 * @param centre - of the disc, seen from the surface, mm
 * @param normal - way the disc shines, one unit long, towards the surface's side
 * @param radius - mm, > 0
 * @param facing - way the surface faces, one unit long
 * @returns 0 to π; straight before the disc π·R²/(R² + d²)
 * Source: J. R. Howell, A Catalog of Radiation Heat Transfer Configuration Factors, section B: element to disc,
 * parallel and at right angles; the two add as parts of one vector (from memory).
 */
export function discSkyShare(centre: Point, normal: Point, radius: number, facing: Point): number {
  const height = -dot(centre, normal);
  const sideways = along(centre, normal, height);
  const offSquared = dot(sideways, sideways);
  const all = height ** 2 + offSquared + radius ** 2;
  const root = Math.sqrt(all ** 2 - 4 * offSquared * radius ** 2);
  const forward = Math.PI / 2 * (1 - (all - 2 * radius ** 2) / root);
  // Written without 1/offset, which is 0 straight before the disc.
  const inward = 2 * Math.PI * height * radius ** 2 / (root * (all + root));
  return -forward * dot(normal, facing) + inward * dot(sideways, facing);
}

/** Sides of the polygon that stands for a disc which a flag or a horizon cuts. */
const DISC_SIDES = 48;

/**
 * A polygon with the disc's own area, for a disc that something cuts. Its light is within 0.0001 of the disc's.
 * @param normal - way it shines, one unit long
 */
export function discPolygon(centre: Point, normal: Point, radius: number): Polygon {
  const [width, height] = cardAxes(normal);
  const turn = 2 * Math.PI / DISC_SIDES;
  const reach = radius * Math.sqrt(turn / Math.sin(turn));
  return Array.from({length: DISC_SIDES}, (_, side) =>
    along(along(centre, width, reach * Math.cos(side * turn)), height, reach * Math.sin(side * turn)));
}

/**
 * Light of a lamp too small to have a size, per unit of its intensity straight ahead.
 * @param lamp - its place seen from the surface, mm
 * @param normal - way it shines, one unit long; `null` for a bare bulb that shines the same to all sides
 * @param facing - way the surface faces, one unit long
 * @returns cosines over distance squared, 1/mm²; 0 behind the lamp or below the horizon
 * Source: inverse square law with the cosine at both ends, IES definition 9.1.1; Lambert's cosine law.
 */
export function smallLamp(lamp: Point, normal: Point | null, facing: Point): number {
  const distance = norm(lamp);
  const atSurface = dot(lamp, facing) / distance;
  const atLamp = normal ? -dot(lamp, normal) / distance : 1;
  return Math.max(0, atSurface) * Math.max(0, atLamp) / distance ** 2;
}
