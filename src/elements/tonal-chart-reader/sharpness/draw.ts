import type {SharpnessPoint} from '../../../core/tone/sharpness.js';
import {round} from '../photo/draw.js';
import type {Sharpness} from './names.js';

/** What blur is measured against: in pixels of the photo. */
export interface SharpnessScale {
  /** Reading of the sharpest detail: its own width is in every reading. */
  readonly finest: number;
  /** Blur added to that which still looks sharp. */
  readonly limit: number;
}

/** Share of the readings taken as the sharpest, so that a stray one does not set the scale. */
const FINEST = 0.1;

/**
 * @param limit - blur that still looks sharp, px of the photo
 * @returns `undefined` when nothing is known
 */
export function scaleOf(blur: readonly (number | null)[], limit: number): SharpnessScale | undefined {
  const known = blur.filter((value) => value !== null).sort((one, other) => one - other);
  const finest = known[Math.floor(known.length * FINEST)];
  return finest === undefined ? undefined : {finest, limit};
}

/** Reading up to which a place is sharp: the limit's blur added to the finest, as discs add. */
export function sharpUpTo({finest, limit}: SharpnessScale, times = 1): number {
  return Math.hypot(finest, times * limit);
}

/** Detail that is sharp may be so much broader than the finest of the picture. Found on the rendered pictures. */
const BROADER = 1.5;

/** The scale for squares, which see detail of every kind, where a line sees one kind. */
export function roughScale(scale: SharpnessScale): SharpnessScale {
  return {finest: BROADER * scale.finest, limit: Math.max(scale.limit, scale.finest)};
}

export function judge(blur: number | null, scale: SharpnessScale): Sharpness {
  if (blur === null) return 'unknown';
  return blur <= sharpUpTo(scale) ? 'sharp' : blur <= sharpUpTo(scale, 2) ? 'near' : 'soft';
}

/** A piece of the line over which the judgement stays the same. */
export interface JudgedStretch {
  readonly from: number;
  readonly to: number;
  readonly sharpness: Sharpness;
}

/** Pieces of the line from A to B; neighbours meet half-way between their readings. */
export function judgedStretches(points: readonly SharpnessPoint[], scale: SharpnessScale): JudgedStretch[] {
  return stretchesBy(points, ({blur}) => judge(blur, scale)).map(({from, to, of}) => ({from, to, sharpness: of}));
}

/** Runs of points that have something in common, without gaps between them. */
export function stretchesBy<P extends {readonly along: number}, T>(
  points: readonly P[], name: (point: P) => T,
): {readonly from: number; readonly to: number; readonly of: T}[] {
  const runs: {from: number; to: number; of: T}[] = [];
  points.forEach((point, at) => {
    const of = name(point);
    const next = points[at + 1];
    const to = next ? (point.along + next.along) / 2 : point.along;
    const last = runs.at(-1);
    if (last && last.of === of) last.to = to;
    else runs.push({from: last?.to ?? point.along, to, of});
  });
  return runs;
}

/** Where things are in the drawing of a profile, CSS px. */
export interface ProfileLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly base: number;
  /** Blur at the top, finished px. */
  readonly most: number;
}

/**
 * @param most - largest blur to be shown, finished px
 * @param under - room under the curve for its strips and places, px
 */
export function profileLayout(width: number, most: number, under: number): ProfileLayout {
  const base = Math.round(Math.min(200, Math.max(136, width * 0.36)));
  return {width, height: base + under, left: 30, right: width - 8, top: 22, base, most: Math.max(2, Math.ceil(most))};
}

export function xOf({left, right}: ProfileLayout, along: number): number {
  return round(left + (right - left) * along);
}

export function yOf({top, base, most}: ProfileLayout, blur: number): number {
  return round(base - (base - top) * Math.min(1, blur / most));
}

/** The curve, broken where nothing is known. A lone reading is a short dash. */
export function profilePath(layout: ProfileLayout, points: readonly {readonly along: number; readonly blur: number | null}[], perPixel: number): string {
  let path = '';
  let open = false;
  points.forEach(({along, blur}, at) => {
    if (blur === null) {
      open = false;
      return;
    }
    const [x, y] = [xOf(layout, along), yOf(layout, blur * perPixel)];
    const alone = !open && (points[at + 1]?.blur ?? null) === null;
    path += alone ? `M${round(x - 1)} ${y}h2` : `${open ? 'L' : 'M'}${x} ${y}`;
    open = true;
  });
  return path;
}

/** Steps of the blur scale: 1, 2 or 5 px and their tens, some three to the drawing. */
export function blurMarks({most}: ProfileLayout): number[] {
  const rough = most / 3;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = Math.max(1, ten * (rough / ten >= 5 ? 5 : rough / ten >= 2 ? 2 : 1));
  return Array.from({length: Math.floor(most / step)}, (_, at) => (at + 1) * step);
}

/** Squares of a grid that have the same name, as one path each. Unknown ones are wanted as dots. */
export function cellPaths<T>(
  names: readonly T[], grid: {readonly cell: number; readonly columns: number; readonly crop: {readonly x: number; readonly y: number}}, dotted: T,
): Map<T, string> {
  const paths = new Map<T, string>();
  const {cell, columns, crop} = grid;
  const dot = round(cell * 0.09);
  names.forEach((name, at) => {
    const x = crop.x + (at % columns) * cell;
    const y = crop.y + Math.floor(at / columns) * cell;
    const piece = name === dotted
      ? `M${round(x + cell / 2 - dot)} ${round(y + cell / 2)}a${dot} ${dot} 0 1 0 ${2 * dot} 0a${dot} ${dot} 0 1 0 ${-2 * dot} 0`
      : `M${x} ${y}h${cell}v${cell}h${-cell}z`;
    paths.set(name, (paths.get(name) ?? '') + piece);
  });
  return paths;
}
