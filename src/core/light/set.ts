import type {Flag} from './flag.js';
import type {Lamp} from './lamp.js';
import type {Point} from './space.js';
import {illuminance, visibleShare} from './lamp.js';
import {skyShare} from './polygon.js';
import {minus} from './space.js';

/** What stands on the table, as far as light is concerned. */
export interface TableSet {
  readonly lamps: readonly Lamp[];
  readonly flags: readonly Flag[];
  readonly figure: FigureSpace;
  readonly backdrop: Backdrop;
  /** Table top that throws light back; leave out for direct light only. */
  readonly table?: TableTop;
  /** Front of the lens, mm; when known, a suggested flag keeps out of the picture. */
  readonly camera?: Point;
}

/** The room the figure takes, and the gray card that stands for it. */
export interface FigureSpace {
  /** Middle of the gray card, mm. */
  readonly card: Point;
  /** Way the card faces: [0, −1, 0] is square to a level camera. */
  readonly facing: Point;
  /** Left, front, lower corner of the figure's box, mm. */
  readonly least: Point;
  /** Right, rear, upper corner, mm. */
  readonly most: Point;
}

/** An upright backdrop that faces the camera. */
export interface Backdrop {
  /** From the middle of the figure's base to its face, mm. */
  readonly distance: number;
  /** Share of the light it throws back, over 0, to 1. */
  readonly reflectance: number;
}

/** The part of the table top (z = 0) that throws light back. */
export interface TableTop {
  readonly left: number;
  readonly right: number;
  readonly front: number;
  readonly back: number;
  /** Share of the light it throws back, 0 to 1. */
  readonly reflectance: number;
}

/** A piece of the table top, as bright as the lamps make it. */
export interface GlowPatch {
  readonly corners: readonly Point[];
  /** Brightness from each lamp, in the order of the set. */
  readonly byLamp: readonly number[];
}

/** Light on a small surface, split by lamp in the order of the set; unit as `illuminance`. */
export interface SplitLight {
  readonly direct: readonly number[];
  /** What each lamp sends by way of the table top. */
  readonly bounced: readonly number[];
  readonly total: number;
}

/**
 * Pieces a side of the table top is cut into. Found by comparing with 64 a side: within 0.03 stop from 30 mm above a
 * table of up to two metres, and within 0.05 stop lower down.
 */
const PIECES = 8;

/**
 * The table top as a lamp: one bounce, evenly to all sides, in pieces, each as bright as its middle. Light that
 * bounces twice, and light off the figure, the walls and the backdrop, is left out, and so is the figure's shadow.
 * @returns no pieces when the set has no table top
 * @throws {Problem} as {@link illuminance}
 * Source: a matt surface's exitance is its reflectance times its illuminance (Lambert).
 */
export function tableGlow(set: TableSet): readonly GlowPatch[] {
  const {table} = set;
  if (!table) return [];
  const wide = (table.right - table.left) / PIECES;
  const deep = (table.back - table.front) / PIECES;
  return Array.from({length: PIECES ** 2}, (_, piece) => {
    const x = table.left + wide * (piece % PIECES);
    const y = table.front + deep * Math.floor(piece / PIECES);
    const middle: Point = [x + wide / 2, y + deep / 2, 0];
    return {
      corners: [[x, y, 0], [x + wide, y, 0], [x + wide, y + deep, 0], [x, y + deep, 0]],
      byLamp: set.lamps.map((lamp) =>
        table.reflectance / Math.PI * illuminance(lamp, middle, [0, 0, 1], set.flags)),
    };
  });
}

/**
 * Light on a small surface anywhere in the set, past the flags, all lamps added in linear light. Flags are not held
 * against light off the table, which they hardly ever stand in.
 * @param at - mm
 * @param facing - way the surface faces, any length above 0
 * @param glow - from {@link tableGlow}; pass it in when many points are asked about
 * @throws {Problem} as {@link illuminance}
 */
export function lightAt(set: TableSet, at: Point, facing: Point, glow = tableGlow(set)): SplitLight {
  const direct = set.lamps.map((lamp) => illuminance(lamp, at, facing, set.flags));
  const bounced = set.lamps.map(() => 0);
  for (const patch of glow) {
    const share = skyShare(patch.corners.map((corner) => minus(corner, at)), facing);
    patch.byLamp.forEach((brightness, lamp) => {
      bounced[lamp] = (bounced[lamp] as number) + share * brightness;
    });
  }
  return {direct, bounced, total: [...direct, ...bounced].reduce((sum, light) => sum + light, 0)};
}

/**
 * How much of each lamp the figure keeps: the least share of the lamp's face seen from any corner of its box.
 * @returns one share a lamp, 0 to 1, in the order of the set; 1 = no flag takes anything from the figure
 * @throws {Problem} as {@link illuminance}
 */
export function figureShares(set: TableSet): readonly number[] {
  const corners = boxCorners(set.figure);
  return set.lamps.map((lamp) =>
    corners.reduce((least, corner) => Math.min(least, visibleShare(lamp, corner, set.flags)), 1));
}

/** The eight corners of the figure's box. */
export function boxCorners({least, most}: FigureSpace): readonly Point[] {
  return Array.from({length: 8}, (_, corner) => [
    (corner & 1 ? most : least)[0], (corner & 2 ? most : least)[1], (corner & 4 ? most : least)[2],
  ]);
}
