import {codeFromLinear, codeStops, TOP_CODE} from '../../../core/tone/light.js';
import type {Channel, Tally} from '../../../core/tone/tally.js';

/** Stops below white where the scale begins; code 1 lies at −11.7, everything darker is 0. */
export const DEEPEST = -12;

/** Parts of a stop for which the chart counts: four to a third-stop click. */
const PARTS = 12;

/** Where things are in the drawing, CSS px. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Left and right end of the scale, and the line it stands on. */
  readonly left: number;
  readonly right: number;
  readonly base: number;
  /** Top of the tallest column. */
  readonly top: number;
  /** Width of the wells on either side, which hold what is cut off. */
  readonly well: number;
}

/** Room for the dimension lines over the chart. */
const HEADROOM = 44;
/** Room for both rows of figures under it. */
const FOOTROOM = 44;

/**
 * @param width - CSS px the drawing gets
 */
export function layOut(width: number): Layout {
  const well = width < 420 ? 32 : 42;
  const gap = 8;
  const height = Math.round(Math.min(300, Math.max(210, width * 0.5)));
  return {width, height, left: well + gap, right: width - well - gap, base: height - FOOTROOM, top: HEADROOM, well};
}

/** Place of so many stops below white. */
export function placeOf({left, right}: Layout, stops: number): number {
  return round(left + (right - left) * (1 - Math.max(DEEPEST, Math.min(0, stops)) / DEEPEST));
}

/** Place of a code value; 0 stands where the scale begins. */
export function placeOfCode(layout: Layout, code: number): number {
  return placeOf(layout, code > 0 ? codeStops(TOP_CODE, code) : DEEPEST);
}

/**
 * How densely the pixels lie along the scale of light: share of the pixels to a stop, in steps of a twelfth of a stop
 * from {@link DEEPEST} to white. What is at 0 or 255 is in the wells instead. Each code's pixels are spread over the
 * light between its neighbours, so that a code that is a whole stop wide is as low as it is sparse.
 */
export function densities(tally: Tally, channel: Channel): Float64Array {
  const below = new Float64Array(TOP_CODE + 1); // pixels from code 1 up to and without the code
  for (let code = 2; code <= TOP_CODE; code++) below[code] = (below[code - 1] as number) + (tally[channel][code - 1] as number);
  const belowCode = (code: number): number => {
    const at = Math.min(TOP_CODE - 1, Math.max(1, Math.floor(code + 0.5)));
    const part = Math.min(1, Math.max(0, code + 0.5 - at));
    return (below[at] as number) + part * (tally[channel][at] as number);
  };
  let before = 0;
  return Float64Array.from({length: -DEEPEST * PARTS}, (_, step) => {
    const after = belowCode(codeFromLinear(2 ** (DEEPEST + (step + 1) / PARTS)));
    const density = (after - before) / tally.pixels * PARTS;
    before = after;
    return density;
  });
}

/** Height of a share, on a root scale: a hundredth of the pixels is a tenth of the height, so small things show. */
export function rootHeight(share: number, room: number): number {
  return Math.sqrt(Math.min(1, Math.max(0, share))) * room;
}

/**
 * Outline of a chart as an SVG path, steps and all.
 * @param most - density that reaches the top
 * @param closed - whether it returns along the base, to be filled
 */
export function outline(layout: Layout, density: Float64Array, most: number, closed: boolean): string {
  const {left, right, base, top} = layout;
  const step = (right - left) / density.length;
  const first = density.findIndex((value) => value > 0);
  if (first < 0) return '';
  const last = density.findLastIndex((value) => value > 0);
  const parts = [`M${round(left + first * step)} ${base}`];
  for (let at = first; at <= last; at++) {
    const y = round(base - rootHeight((density[at] as number) / most, base - top));
    parts.push(`V${y}H${round(left + (at + 1) * step)}`);
  }
  return `${parts.join('')}V${base}${closed ? 'Z' : ''}`;
}

/** Height of every step of a curve, px. */
const heightsOf = ({base, top}: Layout, density: Float64Array, most: number): number[] =>
  Array.from(density, (value) => rootHeight(value / most, base - top));

/** Where a curve stands highest above the others: the place to write its name, px. */
export function clearPlace(layout: Layout, own: Float64Array, all: readonly Float64Array[], most: number): number {
  const {left, right} = layout;
  const others = all.filter((density) => density !== own).map((density) => heightsOf(layout, density, most));
  const lead = heightsOf(layout, own, most).map((height, at) => height - Math.max(0, ...others.map((other) => other[at] as number)));
  const best = lead.reduce((first, value, at) => (value > (lead[first] as number) ? at : first), 0);
  return left + (right - left) * (best + 0.5) / own.length;
}

/** Height at which nothing of any curve is in the way of a letter so wide, px from the top. */
export function crestOver(layout: Layout, all: readonly Float64Array[], most: number, x: number, wide: number): number {
  const {left, right, base} = layout;
  const crest = Math.max(...all.flatMap((density) => heightsOf(layout, density, most).filter((_, at) =>
    Math.abs(left + (right - left) * (at + 0.5) / density.length - x) <= wide / 2 + 2)));
  return base - crest;
}

/** One mark of the scale. */
export interface ScaleMark {
  readonly x: number;
  /** Length below the base line, px. */
  readonly length: number;
  /** Stops below white, for the marks that bear figures. */
  readonly stops?: number;
  /** The code value there, rounded. */
  readonly code?: number;
}

/** Least room between two figures of the scale, px. */
const FIGURE_ROOM = 30;

/** Whole stops with their figures, thirds between them where there is room. */
export function scaleMarks(layout: Layout): readonly ScaleMark[] {
  const perStop = (layout.right - layout.left) / -DEEPEST;
  const every = Math.ceil(FIGURE_ROOM / perStop);
  const parts = perStop >= 15 ? 3 : 1;
  return Array.from({length: -DEEPEST * parts + 1}, (_, at): ScaleMark => {
    const stops = -at / parts + 0;
    const x = placeOf(layout, stops);
    if (!Number.isInteger(stops)) return {x, length: 3};
    if (stops % every !== 0 || stops === DEEPEST) return {x, length: 6};
    return {x, length: 9, stops, code: Math.round(codeFromLinear(2 ** stops))};
  });
}

/** To a tenth of a pixel, which is as fine as a screen draws. */
export function round(value: number): number {
  return Math.round(value * 10) / 10;
}
