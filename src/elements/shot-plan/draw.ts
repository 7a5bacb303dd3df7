import type {PlanWay} from '../../core/optics/plan-way.js';
import {axialDepth, axialToRuler, outlinePoints, type Outline} from '../../core/optics/outline.js';
import {pupilToSubject} from '../../core/optics/lens.js';
import {MM_PER_INCH, type LengthUnit} from '../../core/units.js';

export type Spot = readonly [x: number, y: number];

/** Room round the drawing, CSS px: for the camera's body, what is written over it, and what can be taken hold of. */
const EDGE_PX = 40;
const LABEL_PX = 37;
const STRIP_PX = 50;
/** Half of what is left open at the break. */
const GAP_PX = 3;
const FAR_END_PX = 30;

/** Where everything goes, CSS px. y runs along the table from the base's front edge, z up from the table, mm. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** px to one mm, along and up alike. */
  readonly scale: number;
  /** The base's front edge on the table. */
  readonly left: number;
  readonly table: number;
}

/** The camera on its sheet. The view is to scale from the figure to the break, and drawn in from there to the lens. */
export interface CameraView {
  readonly tilt: number;
  /** Where the axis meets the focus plane. */
  readonly aim: Spot;
  /** Sensor mark and entrance pupil. */
  readonly mark: Spot;
  readonly pupil: Spot;
  /** Middle of the break and how wide the view is there, from the axis to its edge; none when all is to scale. */
  readonly broken: {readonly at: Spot; readonly half: number} | undefined;
  /** Outlines of the view cone, one piece or two. */
  readonly cone: readonly (readonly Spot[])[];
}

export const acrossTo = ({left, scale}: Sheet, y: number): number => left + y * scale;
export const upTo = ({table, scale}: Sheet, z: number): number => table - z * scale;
export const spotAt = (sheet: Sheet, y: number, z: number): Spot => [acrossTo(sheet, y), upTo(sheet, z)];

/** The figure's sheet in a width, and the way's camera on it as far off as there is room. */
export function layOut(
  width: number, outline: Outline, tilt: number, way: PlanWay | undefined, pictureRatio: number,
): {readonly sheet: Sheet; readonly camera: CameraView} {
  const points = outlinePoints(outline);
  const [front, back] = [Math.min(...points.map(({y}) => y)), Math.max(...points.map(({y}) => y))];
  const top = Math.max(...points.map(({z}) => z), (back - front) / 6);
  const scale = Math.min(Math.max(90, width * 0.42) / (back - front), Math.min(230, Math.max(120, width * 0.3)) / top);
  const left = width - FAR_END_PX - back * scale;
  const raw: Sheet = {width, height: 0, scale, left, table: 0};
  const camera = place(raw, tilt, way ?? undefined, way ? [way.aim.y, way.aim.z] : [(front + back) / 2, top / 2], pictureRatio);
  const spots = [...camera.cone.flat(), spotAt(raw, 0, top)];
  const ceiling = Math.min(...spots.map(([, y]) => y - 20), camera.mark[1] - 22 - LABEL_PX);
  // What of the view lies under the table is not drawn.
  const floor = Math.max(STRIP_PX, camera.mark[1] + 30);
  const shift = -Math.floor(ceiling);
  return {
    sheet: {...raw, table: shift + 0.5, height: Math.ceil(floor) + shift},
    camera: lowered(camera, shift + 0.5),
  };
}

function lowered(view: CameraView, by: number): CameraView {
  const move = ([x, y]: Spot): Spot => [x, y + by];
  const {aim, mark, pupil, broken, cone} = view;
  return {
    ...view, aim: move(aim), mark: move(mark), pupil: move(pupil), cone: cone.map((piece) => piece.map(move)),
    broken: broken && {...broken, at: move(broken.at)},
  };
}

function place(sheet: Sheet, tilt: number, way: PlanWay | undefined, aimAt: readonly [number, number], ratio: number): CameraView {
  const angle = tilt * Math.PI / 180;
  const aim = spotAt(sheet, ...aimAt);
  // Towards the camera on the sheet, and up across the axis.
  const away: Spot = [-Math.cos(angle), -Math.sin(angle)];
  const across: Spot = [Math.sin(angle), -Math.cos(angle)];
  const on = (along: number, aside = 0): Spot => [aim[0] + along * away[0] + aside * across[0], aim[1] + along * away[1] + aside * across[1]];
  const tallest = Math.min(300, sheet.width * 0.6);
  const most = Math.max(60, Math.min((aim[0] - EDGE_PX) / Math.max(0.05, Math.cos(angle)), tallest / Math.max(0.05, Math.abs(Math.sin(angle)))));
  if (!way) return {tilt, aim, mark: on(most), pupil: on(most - 22), broken: undefined, cone: []};
  const toPupil = pupilToSubject(way.lens) * sheet.scale;
  const toMark = way.cameraDistance * sheet.scale;
  const barrel = Math.min(60, Math.max(20, toMark - toPupil));
  const fits = toMark <= most;
  const mark = fits ? toMark : most;
  const pupil = fits ? Math.min(toPupil, mark - 16) : most - barrel;
  const half = way.keptField * ratio / 2 * sheet.scale;
  const wide = (along: number): number => half * (toPupil - along) / toPupil;
  const behind = -sheet.scale * Math.max(0, axialDepth(way.zone.to === Infinity ? 0 : way.zone.to - way.focus, 0, tilt)) - 22;
  const piece = (from: number, to: number, width: (along: number) => number): Spot[] =>
    [on(from, width(from)), on(to, width(to)), on(to, -width(to)), on(from, -width(from))];
  if (fits) return {tilt, aim, mark: on(mark), pupil: on(pupil), broken: undefined, cone: [piece(behind, toPupil, wide)]};
  const cut = pupil * 0.6;
  const drawnIn = (along: number): number => wide(cut) * (pupil - along) / (pupil - cut);
  return {
    tilt, aim, mark: on(mark), pupil: on(pupil), broken: {at: on(cut), half: wide(cut)},
    cone: [piece(behind, cut - GAP_PX, wide), piece(cut + GAP_PX, pupil, drawnIn)],
  };
}

/** How far the drawn head reaches past the point that counts, mm. */
export const headRadius = ({height = 0, baseDepth}: Outline): number => Math.min(height * 0.08, baseDepth * 0.11);

/** Points as an SVG attribute takes them. */
export const spots = (list: readonly Spot[]): string => list.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** A plane of equal depth through a mark on the table, from below the table to well above the figure. */
export function plane(sheet: Sheet, mark: number, tilt: number, top: number): readonly [Spot, Spot] {
  const lean = Math.sin(tilt * Math.PI / 180) * axialToRuler(1, tilt);
  return [spotAt(sheet, mark, 0), spotAt(sheet, mark + top * lean, top)];
}

/** Corners of what lies between two planes; an end without limit goes past the sheet. */
export function slab(sheet: Sheet, from: number, to: number, tilt: number, top: number): readonly Spot[] {
  const beyond = 3 * sheet.width / sheet.scale;
  const [near, far] = [plane(sheet, Math.max(from, -beyond), tilt, top), plane(sheet, Math.min(to, beyond), tilt, top)];
  return [near[0], near[1], far[1], far[0]];
}

/** Base and figure as two paths: every tip where it is, the edges drawn in between. */
export function silhouette(sheet: Sheet, outline: Outline): {readonly base: string; readonly body: string} {
  const {baseDepth, height = 0, overhangFront = 0, overhangFrontHeight = 0, overhangBack = 0, overhangBackHeight = 0} = outline;
  const at = (y: number, z: number): string => spotAt(sheet, y, z).map((px) => px.toFixed(1)).join(' ');
  const plinth = Math.min(5, baseDepth * 0.07);
  const base = `M${at(0, 0)}V${upTo(sheet, plinth * 0.5).toFixed(1)}L${at(plinth * 0.5, plinth)}H${acrossTo(sheet, baseDepth - plinth * 0.5).toFixed(1)
  }L${at(baseDepth, plinth * 0.5)}V${sheet.table}Z`;
  const middle = baseDepth / 2;
  const tall = Math.max(height, overhangFrontHeight * 0.8, overhangBackHeight * 0.8);
  const standing = height > 2.5 * plinth;
  const head = headRadius({baseDepth, height: tall});
  const tips: (readonly [number, number])[] = [[middle - baseDepth * 0.25, plinth]];
  if (overhangFront > 0) tips.push([-overhangFront, overhangFrontHeight]);
  // The head ends where the figure does.
  const shoulder = height - 3.1 * head;
  if (standing) tips.push([middle - 1.8 * head, shoulder], [middle - 0.45 * head, height - 1.8 * head], [middle + 0.45 * head, height - 1.8 * head], [middle + 1.8 * head, shoulder]);
  if (overhangBack > 0) tips.push([baseDepth + overhangBack, overhangBackHeight]);
  tips.push([middle + baseDepth * 0.25, plinth]);
  const edge = tips.map(([y, z], index) => {
    const last = tips[index - 1];
    return last ? `Q${at(middle + ((y + last[0]) / 2 - middle) * 0.5, (z + last[1]) / 2)} ${at(y, z)}` : `M${at(y, z)}`;
  }).join('');
  const r = (head * sheet.scale).toFixed(1);
  const round = standing ? `M${at(middle - head, height - head)}a${r} ${r} 0 1 1 ${(2 * head * sheet.scale).toFixed(1)} 0a${r} ${r} 0 1 1 ${(-2 * head * sheet.scale).toFixed(1)} 0Z` : '';
  return {base, body: `${edge}Z${round}`};
}

/** One line of the scale under the table. */
export interface Tick {
  readonly x: number;
  /** Number printed under it, in the unit of the scale; none under the lines between. */
  readonly value?: number;
}

/** A scale over a stretch of the table: lines no closer than 5 px, numbers no closer than 44. */
export function ticks(sheet: Sheet, unit: LengthUnit, from: number, to: number): readonly Tick[] {
  const per = unit === 'in' ? MM_PER_INCH : unit === 'cm' ? 10 : 1;
  const steps = unit === 'in' ? [1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 8, 16] : [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].map((mm) => mm / per);
  const step = (px: number): number => steps.find((each) => each * per * sheet.scale >= px) ?? 1000 / per;
  const line = step(5);
  const number = steps.find((each) => each * per * sheet.scale >= 44 && Number.isInteger(+(each / line).toFixed(6))) ?? line;
  const [first, last] = [Math.ceil(from / per / line), Math.floor(to / per / line)];
  return Array.from({length: Math.max(0, last - first + 1)}, (_, at) => {
    const value = (first + at) * line;
    const whole = Number.isInteger(+(value / number).toFixed(6));
    return {x: acrossTo(sheet, value * per), ...(whole && {value})};
  });
}
