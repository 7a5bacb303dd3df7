import type {Point} from './space.js';
import {along, cross, dot, minus, norm} from './space.js';

/** Corners of a flat convex face in order, seen from the point that is asked about (that point is 0, 0, 0). */
export type Polygon = readonly Point[];

/**
 * The part of a convex face in front of a plane: where `normal`·p ≥ `offset`.
 * @returns the face itself when nothing is cut, an empty list when nothing (or only an edge) is left
 * Source: I. Sutherland and G. Hodgman, "Reentrant polygon clipping", 1974 (from memory).
 */
export function clip(face: Polygon, normal: Point, offset: number): Polygon {
  const heights = face.map((corner) => dot(normal, corner) - offset);
  if (heights.every((height) => height >= 0)) return face;
  const kept: Point[] = [];
  face.forEach((corner, at) => {
    const next = (at + 1) % face.length;
    const here = heights[at] as number;
    const there = heights[next] as number;
    if (here >= 0) kept.push(corner);
    if (here * there < 0) {
      kept.push(along(corner, minus(face[next] as Point, corner), here / (here - there)));
    }
  });
  return kept.length < 3 ? [] : kept;
}

/**
 * Light an evenly bright face throws on a small surface at 0, 0, 0, as a multiple of the face's brightness: the solid
 * angle weighted with the cosine at the surface (π when the face fills the whole sky). What lies below the
 * surface's own horizon is cut off first.
 * @param facing - way the surface faces, one unit long
 * @returns 0 to π
 * Source: J. H. Lambert, Photometria, 1760, the polygon formula; in the view-factor catalogues as a sum over edges.
 */
export function skyShare(face: Polygon, facing: Point): number {
  const above = clip(face, facing, 0);
  let sum = 0;
  above.forEach((corner, at) => {
    const next = above[(at + 1) % above.length] as Point;
    const across = cross(corner, next);
    const length = norm(across);
    // Two corners in one line with the point see each other at no angle, and have no plane.
    if (length > 0) sum += Math.atan2(length, dot(corner, next)) * dot(facing, across) / length;
  });
  return Math.abs(sum) / 2;
}

/** Area of a flat convex face, mm². */
export function area(face: Polygon): number {
  let sum: Point = [0, 0, 0];
  face.forEach((corner, at) => {
    sum = along(sum, cross(corner, face[(at + 1) % face.length] as Point), 0.5);
  });
  return norm(sum);
}
