import {axialToRuler, outlinePoints, type Outline} from '../../core/optics/outline.js';

/** Left of the figure: the camera's place, CSS px. */
const CAMERA_PX = 54;
const EDGE_PX = 12;
const PANEL_PX = 92;

/** Where everything goes, CSS px; marks are mm on the ruler, zero at the base's front edge. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** px to one mm, along and up alike: the side view is to scale. */
  readonly scale: number;
  /** Marks at the left and right edge. */
  readonly left: number;
  readonly right: number;
  /** Top of what is drawn of the figure, mm above the table. */
  readonly top: number;
  readonly ceiling: number;
  readonly table: number;
  /** Line on which the base's edges are named, and below it the tab of the focus. */
  readonly edges: number;
  readonly tab: number;
  readonly panel: number;
  readonly floor: number;
}

/**
 * The sheet for a width: the figure in the middle with room at both ends, never taller than a screen bears. The focus
 * plane belongs on it too, unless it is far off.
 * @param width - CSS px, > 0
 * @param outline - figure, as the optics take it
 * @param ends - marks of the foremost and the rearmost point
 * @param focus - mark
 */
export function sheetFor(width: number, outline: Outline, ends: readonly [number, number], focus: number): Sheet {
  const points = outlinePoints(outline);
  const ys = [...points.map(({y}) => y), ...ends];
  const [first, last] = [Math.min(...ys), Math.max(...ys)];
  const far = 2 * (last - first);
  const low = focus > first - far ? Math.min(first, focus) : first;
  const high = focus < last + far ? Math.max(last, focus) : last;
  const top = Math.max(...points.map(({z}) => z), (last - first) / 8);
  const room = Math.max(40, width - CAMERA_PX - EDGE_PX);
  const tallest = Math.min(330, Math.max(170, width * 0.36));
  const scale = Math.min(room / ((high - low) * 1.5), tallest / top);
  const left = (low + high) / 2 - (CAMERA_PX + room / 2) / scale;
  const ceiling = 10;
  const table = Math.round(ceiling + 8 + top * scale) + 0.5;
  const edges = table + 49;
  const tab = table + 55;
  const panel = tab + 36;
  const floor = panel + PANEL_PX;
  return {
    width, scale, left, right: left + width / scale, top: top + 8 / scale,
    ceiling, table, edges, tab, panel, floor, height: floor + 20,
  };
}

/** px from the left of a mark. */
export const across = ({left, scale}: Sheet, mark: number): number => (mark - left) * scale;

/** px from the top of a height above the table. */
export const up = ({table, scale}: Sheet, z: number): number => table - z * scale;

/** Mark under a px from the left. */
export const markAt = ({left, scale}: Sheet, x: number): number => left + x / scale;

/** px kept between 0 and the sheet's right edge, so that Infinity can be drawn. */
export const onSheet = (sheet: Sheet, mark: number): number => Math.min(sheet.width, Math.max(0, across(sheet, mark)));

/** Points as an SVG attribute takes them, to a tenth of a px. */
export const pointList = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/**
 * Where a plane of equal depth that meets the table at `mark` stands at a height: it leans with the camera.
 * @returns mark above which it is at `z`
 */
export const leaning = (mark: number, z: number, tilt: number): number =>
  mark + z * Math.sin(tilt * Math.PI / 180) * axialToRuler(1, tilt);

/** A plane of equal depth from the table to the top of the view. */
export function planeLine(sheet: Sheet, mark: number, tilt: number): readonly [number, number, number, number] {
  return [across(sheet, mark), sheet.table, across(sheet, leaning(mark, sheet.top, tilt)), up(sheet, sheet.top)];
}

/** Corners of the slab between two planes; an end without limit goes past the sheet. */
export function slab(sheet: Sheet, from: number, to: number, tilt: number): readonly (readonly [number, number])[] {
  const beyond = 4 * (sheet.right - sheet.left);
  const [one, other] = [Math.max(from, sheet.left - beyond), Math.min(to, sheet.right + beyond)];
  const [x1, y1, x2, y2] = planeLine(sheet, one, tilt);
  const [x3, y3, x4, y4] = planeLine(sheet, other, tilt);
  return [[x1, y1], [x2, y2], [x4, y4], [x3, y3]];
}

/** How a word beside a line is anchored, and where. */
export interface Word {
  readonly x: number;
  readonly anchor: 'start' | 'end';
}

/** px that a word of the drawing is wide, at most, about. */
export const wordWidth = (text: string): number => text.length * 7.4;

/**
 * Where a word stands beside a place so that it stays on the sheet and off a line.
 * @param x - px of the place
 * @param gap - px between the place and the word
 * @param anchor - side on which it stands where both are free: `end` is left of the place
 * @param off - px of a line that is not to run through it
 */
export function beside({width}: Sheet, text: string, x: number, gap: number, anchor: Word['anchor'], off?: number): Word {
  const long = wordWidth(text);
  const at = (side: Word['anchor']): Word => ({x: side === 'end' ? x - gap : x + gap, anchor: side});
  const fits = ({x: from, anchor: side}: Word): boolean => {
    const [left, right] = side === 'end' ? [from - long, from] : [from, from + long];
    return left >= 0 && right <= width && !(off !== undefined && off > left - 4 && off < right + 4);
  };
  return [at(anchor), at(anchor === 'end' ? 'start' : 'end')].find(fits) ?? at(anchor);
}

/** Figure on its base as one path: feet, tips exactly where they are, a head; drawn to scale. */
export function silhouette(sheet: Sheet, outline: Outline): {readonly body: string; readonly base: string} {
  const {baseDepth, height = 0, overhangFront = 0, overhangFrontHeight = 0, overhangBack = 0, overhangBackHeight = 0} = outline;
  const plinth = Math.min(4, baseDepth * 0.07);
  const middle = baseDepth / 2;
  const at = (y: number, z: number): string => `${across(sheet, y).toFixed(1)} ${up(sheet, z).toFixed(1)}`;
  const bevel = plinth * 0.4;
  const base = `M${at(0, 0)}L${at(bevel, plinth)}L${at(baseDepth - bevel, plinth)}L${at(baseDepth, 0)}Z`;
  const tall = Math.max(height, overhangFrontHeight * 0.8, overhangBackHeight * 0.8, plinth);
  const head = Math.min(tall * 0.075, baseDepth * 0.1);
  const points: (readonly [number, number])[] = [[middle - baseDepth * 0.24, plinth]];
  if (overhangFront > 0) points.push([-overhangFront, overhangFrontHeight]);
  if (height > 3 * plinth) {
    for (const side of [-1, 1]) {
      const shoulder = [middle + side * head * 1.7, tall - head * 3.4] as const;
      const neck = [middle + side * head * 0.5, tall - head * 1.7] as const;
      points.push(...(side < 0 ? [shoulder, neck] : [neck, shoulder]));
    }
  }
  if (overhangBack > 0) points.push([baseDepth + overhangBack, overhangBackHeight]);
  points.push([middle + baseDepth * 0.24, plinth]);
  let body = '';
  points.forEach(([y, z], index) => {
    const last = points[index - 1];
    if (!last) body = `M${at(y, z)}`;
    // Every edge is drawn in towards the middle, so that tips stay tips.
    else body += `Q${at(middle + ((y + last[0]) / 2 - middle) * 0.45, (z + last[1]) / 2)} ${at(y, z)}`;
  });
  body += 'Z';
  if (height > 3 * plinth) {
    const r = (head * sheet.scale).toFixed(1);
    body += `M${at(middle - head, tall - head)}a${r} ${r} 0 1 1 ${(2 * head * sheet.scale).toFixed(1)} 0a${r} ${r} 0 1 1 ${
      (-2 * head * sheet.scale).toFixed(1)} 0Z`;
  }
  return {body, base};
}

/** Largest blur the panel shows, finished pixels: both ends if they can be, and the limit never squeezed flat. */
export function panelTop(limit: number, ends: readonly [number, number]): number {
  return Math.min(Math.max(Math.max(...ends) * 1.25, limit * 2.5), limit * 7);
}

/** px from the top of a value in the panel whose upper edge is `most`. */
export const inPanel = ({floor}: Sheet, value: number, most: number): number => floor - Math.min(value / most, 3) * PANEL_PX;

/** Letters of the drawing, px above and below the line they stand on, with a little air. */
const LETTERS = [12, 5] as const;

/** Where a word stands, px from the top, that a level line is not to run through: as near as can be to `y`. */
export function clearOf(y: number, line: number): number {
  if (line < y - LETTERS[0] || line > y + LETTERS[1]) return y;
  const [over, under] = [line - LETTERS[1], line + LETTERS[0]];
  return under - y < y - over ? under : over;
}

/** Mark between `from` and an end of the figure at which a rising curve goes past `most`; the end where it never or always is. */
export function leavesAt(from: number, end: number, most: number, value: (mark: number) => number): number {
  if (!(value(end) > most) || value(from) > most) return end;
  let [inside, outside] = [from, end];
  for (let halving = 0; halving < 20; halving++) {
    const middle = (inside + outside) / 2;
    if (value(middle) > most) outside = middle; else inside = middle;
  }
  return inside;
}

/** A curve of `value` over the marks from one to another, a point every 3 px and at both ends. */
export function curve(
  sheet: Sheet, from: number, to: number, most: number, value: (mark: number) => number,
): readonly (readonly [number, number])[] {
  const [one, other] = [Math.max(from, sheet.left), Math.min(to, sheet.right)];
  if (!(other > one)) return [];
  const count = Math.max(2, Math.ceil((other - one) * sheet.scale / 3));
  return Array.from({length: count + 1}, (_, at) => {
    const mark = one + (other - one) * at / count;
    return [across(sheet, mark), inPanel(sheet, value(mark), most)] as const;
  });
}
