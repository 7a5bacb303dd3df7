import {flagCorners, type Flag} from '../../core/light/flag.js';
import type {Point} from '../../core/light/space.js';

/**
 * How a card stands, in what a ruler on the table can measure. Lengths mm. Told of its lower edge; of the edge towards the
 * camera where the card lies flat.
 */
export interface CardPose {
  readonly flat: boolean;
  /** Middle of that edge above the table, right of the middle of the base, and behind it. */
  readonly height: number;
  readonly right: number;
  readonly behind: number;
  /** How much nearer the backdrop the upper edge is; negative = nearer the camera. */
  readonly lean: number;
  /** How much nearer the backdrop the right end of the edge is; `null` where the edge runs from the camera to the backdrop. */
  readonly turn: number | null;
}

/** Differences that a hand cannot place, mm. Our choice. */
const LEVEL = 3;

const middleOf = (points: readonly Point[]): Point =>
  [0, 1, 2].map((axis) => points.reduce((sum, point) => sum + (point[axis] ?? 0), 0) / points.length) as unknown as Point;

/** @throws {Problem} as {@link flagCorners} */
export function poseOf(flag: Flag): CardPose {
  const corners = [...flagCorners(flag)];
  const heights = corners.map(([, , z]) => z);
  const flat = Math.max(...heights) - Math.min(...heights) < LEVEL;
  const axis = flat ? 1 : 2;
  corners.sort((a, b) => a[axis] - b[axis]);
  const edge = corners.slice(0, 2).sort((a, b) => a[0] - b[0]);
  const [right, behind, height] = middleOf(edge);
  const [left, end] = edge as [Point, Point];
  return {
    flat, right, behind, height, lean: flat ? 0 : middleOf(corners.slice(2))[1] - behind,
    turn: end[0] - left[0] < LEVEL ? null : end[1] - left[1],
  };
}
