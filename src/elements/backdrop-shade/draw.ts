import {flagCorners, type Flag} from '../../core/light/flag.js';
import {lampCorners, visibleShare, type Lamp} from '../../core/light/lamp.js';
import {clip, type Polygon} from '../../core/light/polygon.js';
import {along, direction, minus, type Point} from '../../core/light/space.js';
import type {Reading} from './reading.js';

/** From above, or from the right of the camera. In both the camera is at the left and the backdrop at the right. */
export type View = 'plan' | 'side';

/** A place on the drawing, CSS px. */
export type Spot = readonly [x: number, y: number];

/** Where everything goes. Both views are to the same scale and share one line of depth. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** CSS px to a mm. */
  readonly scale: number;
  /** px of the middle of the figure's base: along, and down in the plan. */
  readonly middle: Spot;
  /** px of the table top in the side view. */
  readonly floor: number;
  /** px where the side view begins. */
  readonly divide: number;
}

/** Room for labels round the drawing, and most height of the drawn part, CSS px. */
const PAD = {side: 24, top: 26, between: 44, bottom: 30};
const TALLEST = 620;

/** The drawing for a width in CSS px. */
export function sheetFor(width: number, {set, seen, shot}: Reading): Sheet {
  const camera = set.camera as Point;
  const corners = [
    camera, set.figure.least, set.figure.most, [seen.left, shot.backdropDistance, seen.high], [seen.right, shot.backdropDistance, 0],
    ...set.lamps.flatMap((lamp) => lampCorners(lamp)), ...set.flags.flatMap((flag) => flagCorners(flag)),
  ] as readonly Point[];
  const [xs, ys, zs] = ([0, 1, 2] as const).map((axis) => corners.map((corner) => corner[axis])) as [number[], number[], number[]];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [front, back] = [Math.min(...ys), Math.max(...ys)];
  const top = Math.max(...zs, shot.figureHeight);
  const scale = Math.max(0.01, Math.min((width - 2 * PAD.side) / (back - front), TALLEST / (right - left + top)));
  const indent = (width - (back - front) * scale) / 2;
  const middle: Spot = [indent - front * scale, PAD.top - left * scale];
  const divide = middle[1] + right * scale + PAD.between / 2;
  const floor = divide + PAD.between / 2 + top * scale;
  return {width, scale, middle, divide, floor, height: Math.ceil(floor + PAD.bottom)};
}

/** Where a point of the set is drawn. In the plan the camera's right is down. */
export function spotOf({scale, middle, floor}: Sheet, view: View, [x, y, z]: Point): Spot {
  return [middle[0] + y * scale, view === 'plan' ? middle[1] + x * scale : floor - z * scale];
}

/** The move of a thing for a move on the drawing, mm. */
export function moveFor({scale}: Sheet, view: View, right: number, down: number): Point {
  return view === 'plan' ? [down / scale, right / scale, 0] : [0, right / scale, -down / scale];
}

/** Outline of what some points cast on a view, in order round it. */
export function outline(sheet: Sheet, view: View, points: readonly Point[]): readonly Spot[] {
  return hull(points.map((point) => spotOf(sheet, view, point)));
}

/** Smallest convex outline round some spots. Source: Andrew's monotone chain. */
export function hull(spots: readonly Spot[]): readonly Spot[] {
  const sorted = [...spots].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (list: readonly Spot[]): Spot[] => {
    const kept: Spot[] = [];
    for (const spot of list) {
      while (kept.length > 1 && !leftTurn(kept.at(-2) as Spot, kept.at(-1) as Spot, spot)) kept.pop();
      kept.push(spot);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.reverse())];
}

const leftTurn = (a: Spot, b: Spot, c: Spot): boolean => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0;

/** `12.3,45.6 …` for an SVG polygon. */
export const written = (spots: readonly Spot[]): string => spots.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** A flag's shadow of one lamp: where some of the lamp is hidden, and where all of it is. */
export interface Shadow {
  readonly soft: readonly Spot[];
  readonly full: readonly Spot[];
}

/** As far as a shadow is followed, mm. */
const FARTHEST = 2000;

/** Where the light from one point past a corner of a card ends: seen from above on the table at the latest. */
function endOf(from: Point, corner: Point, view: View): Point {
  const way = direction('lamp-position', minus(corner, from));
  return along(corner, way, view === 'plan' && way[2] < -1e-9 ? Math.min(FARTHEST, Math.max(0, -corner[2] / way[2])) : FARTHEST);
}

/**
 * The shadow of a card in one view, as drawn on paper: outlines of the shadows of the lamp's corners, all of them together
 * for the soft one, what they share for the full one. Cut off at backdrop and table.
 * @param distance - of the backdrop from the base's middle, mm
 */
export function shadowOf(sheet: Sheet, view: View, flag: Flag, lamp: Lamp, distance: number): Shadow {
  const card = flagCorners(flag);
  const cast = lampCorners(lamp).filter((_, at, all) => all.length < 8 || at % 6 === 0)
    .map((from) => [...card, ...card.map((corner) => endOf(from, corner, view))]);
  const [wall, floor] = [spotOf(sheet, view, [0, distance, 0])[0], sheet.floor];
  const inside = (spots: readonly Spot[]): readonly Spot[] => {
    const walled = clip(spots.map(([x, y]): Point => [x, y, 0]), [-1, 0, 0], -wall);
    return (view === 'plan' ? walled : clip(walled, [0, -1, 0], -floor)).map(([x, y]): Spot => [x, y]);
  };
  const each = cast.map((points) => outline(sheet, view, points));
  return {soft: inside(outline(sheet, view, cast.flat())), full: inside(each.reduce(shared))};
}

/** What two convex outlines share. */
function shared(one: readonly Spot[], two: readonly Spot[]): readonly Spot[] {
  let rest: Polygon = one.map(([x, y]): Point => [x, y, 0]);
  two.forEach(([x, y], at) => {
    const [ax, ay] = two[(at + 1) % two.length] as Spot;
    const inward: Point = [y - ay, ax - x, 0];
    if (rest.length) rest = clip(rest, inward, inward[0] * x + inward[1] * y - 1e-6);
  });
  return rest.map(([x, y]): Spot => [x, y]);
}

/** The lamp a flag keeps most of from the backdrop, or -1 when it keeps nothing away. */
export function shadedLamp({set, places}: Reading, flag: Flag): number {
  const shares = set.lamps.map((lamp) => places.reduce((sum, [x, z]) => sum + visibleShare(lamp, [x, set.backdrop.distance, z], [flag]), 0));
  const least = Math.min(...shares);
  return least < places.length - 1e-6 ? shares.indexOf(least) : -1;
}

/** The strip, CSS px. */
export interface StripSheet {
  readonly width: number;
  readonly height: number;
  /** px of each cell's left end; one more than there are cells. */
  readonly edges: readonly number[];
  /** Foot of the cells, and top and foot of the curve's field. */
  readonly cells: number;
  readonly top: number;
  readonly foot: number;
  /** px down of so many stops under the gray card. */
  readonly downOf: (stops: number) => number;
  /** Whole stops that are ruled. */
  readonly stops: readonly number[];
  /** Cells that bear their code. */
  readonly named: readonly number[];
}

const CARD_PX = 44;

/** Ruled stops stand at least so far apart that their numbers do not touch, CSS px. */
const RULED_APART = 15;

/** The strip of `count` cells for a width, with a field for the curve that reaches to `deepest` stops. */
export function stripFor(width: number, count: number, shallowest: number, deepest: number): StripSheet {
  const [cells, top, foot] = [48, 74, 74 + 84];
  const least = Math.floor(Math.min(0, shallowest));
  const most = Math.ceil(Math.max(least + 2, Math.min(deepest, 12)) + 0.2);
  const from = CARD_PX + 10;
  const every = width < 460 ? 6 : 3;
  return {
    width, height: foot + 6, cells, top, foot,
    edges: Array.from({length: count + 1}, (_, at) => from + (width - from) * at / count),
    downOf: (stops) => top + (foot - top) * (Math.max(least, Math.min(most, stops)) - least) / (most - least),
    stops: Array.from({length: most - least + 1}, (_, at) => least + at).filter((stop) => stop % Math.ceil((most - least) * RULED_APART / (foot - top)) === 0),
    named: Array.from({length: count}, (_, at) => at).filter((at) => at % every === 0),
  };
}
