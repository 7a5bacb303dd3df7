import {requirePositive} from '../problem.js';
import {measureDetail, SCALE_VARIANCES, spotDetail} from './detail.js';
import type {SpotDetail} from './detail.js';
import {cropOnto} from './pixels.js';
import type {Crop, Pixels} from './pixels.js';

/** Standard deviation of the window a reading looks through, px: wide enough for a printed figure or an edge. */
export const SPOT_RADIUS = 12;
/** Pixels around a spot that its coarsest scale can see. */
const MARGIN = 96;

/**
 * How fast steepness falls when detail is smoothed: energy goes with (blur² + smoothing²) to the power −1/2 for a lone
 * edge and −3/2 for a thin line. Painted and printed detail lies between. With this value a line's blur reads a tenth too
 * narrow and a lone clean edge's up to twice too wide; readings of the same detail can be compared whatever it is.
 */
const FALL = -1.25;
/** Scales up to this many times the blur are looked at: beyond, neighbouring detail gets in. */
const SCALES_PER_BLUR = 1.5;
/** Standard deviation of smoothing, px, that is always looked at: with less, grain and detail cannot be told apart. */
const LEAST_SCALE = 2.6;

/** Detail has to be this many times as strong as grain at its own scale. Found on the rendered pictures. */
const LEAST_OVER_GRAIN = 15;
/** A second best fit rivals the best when it misses by less than this many times as much … */
const RIVAL = 1.5;
/** … at a blur that differs by more than this factor. */
const UNLIKE = 1.5;
/** Least contrast of detail, as a share of the light there: rounding to codes and file compression make as much. */
const LEAST_CONTRAST = 0.015;
/** Light below which contrast is judged as if it were there: about code 10. */
const DARK = 0.003;

/** A blur disc spread evenly has a standard deviation of a quarter of its diameter. Exact for a disc. */
const DIAMETER_PER_DEVIATION = 4;

/** One standard deviation of blur to be tried, with what it makes of detail at every scale. */
interface Trial {
  readonly deviation: number;
  readonly shape: readonly number[];
  readonly weights: readonly number[];
}

/** Grain that differs from pixel to pixel, as steepness at each scale. At the finest no bell curve fits; its sum is exact. */
function grainShape(): readonly number[] {
  return SCALE_VARIANCES.map((variance, scale) => (scale === 0 ? 1 : 1 / (4 * Math.PI * variance ** 2)));
}

let table: {readonly trials: readonly Trial[]; readonly grain: readonly number[]} | undefined;

function trialTable(): NonNullable<typeof table> {
  const deviations = [0, ...Array.from({length: 72}, (_, step) => 0.3 * 1.06 ** step)];
  return table ??= {
    grain: grainShape(),
    trials: deviations.map((deviation) => {
      const limit = Math.max(SCALES_PER_BLUR * deviation, LEAST_SCALE);
      return {
        deviation,
        shape: SCALE_VARIANCES.map((variance) => (deviation ** 2 + variance) ** FALL),
        // Fades from 1 at the limit to 0 half as far again.
        weights: SCALE_VARIANCES.map((variance) => Math.min(1, Math.max(0, 3 - 2 * Math.sqrt(variance) / limit))),
      };
    }),
  };
}

/**
 * Blur at a spot from how its steepness falls when it is smoothed. Contrast cancels, and grain is told apart because it
 * falls faster than any detail.
 * @returns diameter of the blur disc, px, with the detail's own width in it; `null` where there is too little
 *   detail to tell: a plain surface, grain only, or blur so wide that nothing in the window is left of what was there
 * Source: least squares on two known shapes; energy of a blurred edge or line under Gaussian smoothing, standard calculus.
 */
export function blurFromDetail({energies, light}: SpotDetail, radius: number): number | null {
  if (!((energies[0] as number) > 0)) return null;
  const {trials, grain} = trialTable();
  const fits = trials.map((trial) => fitTrial(trial, grain, energies));
  const at = fits.reduce((least, fit, index) => (fit.misfit < (fits[least] as Fit).misfit ? index : least), 0);
  const best = fits[at] as Fit;
  if (!(best.deviation < radius) || hasRival(fits, at)) return null;
  // Judged where the detail is strongest against grain: smoothed by as much as it is blurred.
  const own = Math.max(best.deviation, 1);
  const signal = best.detail * (2 * own ** 2) ** FALL;
  if (signal < LEAST_OVER_GRAIN * best.grain / (4 * Math.PI * own ** 4)) return null;
  if (Math.sqrt(signal) * own < LEAST_CONTRAST * Math.max(light, DARK)) return null;
  return DIAMETER_PER_DEVIATION * between(fits[at - 1], best, fits[at + 1]);
}

/**
 * Whether a quite different blur fits nearly as well: fine detail that is left over a coarse shadow, say. Then neither is
 * to be believed.
 */
function hasRival(fits: readonly Fit[], at: number): boolean {
  const best = fits[at] as Fit;
  return fits.some(({misfit, deviation}, index) => misfit < RIVAL * best.misfit
    && Math.max(deviation / best.deviation, best.deviation / deviation) > UNLIKE
    && misfit <= Math.min(fits[index - 1]?.misfit ?? Infinity, fits[index + 1]?.misfit ?? Infinity));
}

/** Deviation at the foot of the parabola through the best fit and its neighbours, so that readings do not come in steps. */
function between(before: Fit | undefined, best: Fit, after: Fit | undefined): number {
  if (!before || !after || before.deviation === 0) return best.deviation;
  const curve = before.misfit - 2 * best.misfit + after.misfit;
  const shift = curve > 0 ? (before.misfit - after.misfit) / (2 * curve) : 0;
  return best.deviation * (after.deviation / best.deviation) ** Math.max(-0.5, Math.min(0.5, shift));
}

interface Fit {
  readonly deviation: number;
  /** Mean square share by which the energies are missed. */
  readonly misfit: number;
  readonly detail: number;
  readonly grain: number;
}

/** Amounts of detail and grain, neither below 0, that come nearest to the energies in shares of them. */
function fitTrial({deviation, shape, weights}: Trial, grain: readonly number[], energies: readonly number[]): Fit {
  let [aa, ab, bb, a1, b1, count] = [0, 0, 0, 0, 0, 0];
  for (let scale = 0; scale < energies.length; scale++) {
    const weight = weights[scale] as number;
    if (weight === 0) break; // and so are all coarser ones
    const energy = energies[scale] as number;
    const a = (shape[scale] as number) / energy;
    const b = (grain[scale] as number) / energy;
    aa += weight * a * a; ab += weight * a * b; bb += weight * b * b;
    a1 += weight * a; b1 += weight * b; count += weight;
  }
  const both = aa * bb - ab * ab;
  let ofDetail = (a1 * bb - b1 * ab) / both;
  let ofGrain = (b1 * aa - a1 * ab) / both;
  if (!(ofGrain >= 0)) [ofDetail, ofGrain] = [a1 / aa, 0];
  if (!(ofDetail >= 0)) [ofDetail, ofGrain] = [0, b1 / bb];
  // Sum of weight × (detail·a + grain·b − 1)², multiplied out.
  const missed = ofDetail ** 2 * aa + 2 * ofDetail * ofGrain * ab + ofGrain ** 2 * bb
    - 2 * (ofDetail * a1 + ofGrain * b1) + count;
  // Two amounts were fitted; the small constant lets the finer of two perfect fits win.
  return {deviation, misfit: (Math.max(0, missed) + 1e-4) / (count - SPENT), detail: ofDetail, grain: ofGrain};
}

/** Readings the fit uses up: two amounts, which four scales and more are shared among. */
const SPENT = 1.5;

/** A straight line across a picture, px. */
export interface Line {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/** Sharpness at one point of a line. */
export interface SharpnessPoint {
  /** Way along the line, 0 to 1. */
  readonly along: number;
  readonly x: number;
  readonly y: number;
  /** Diameter of the blur disc, px; `null` where there is no detail to judge by. */
  readonly blur: number | null;
}

/**
 * Local sharpness along a line: the ruler, or the figure from front to back.
 * @param line - both ends inside the picture
 * @param step - px from one reading to the next, above 0
 * @param radius - standard deviation of the window, px, above 0
 * @returns readings from end to end, both ends included
 * @throws {Problem} `step` or `radius` not above 0; `crop` when the line lies off the picture
 */
export function sharpnessAlong(
  pixels: Pixels, line: Line, step: number = SPOT_RADIUS / 3, radius: number = SPOT_RADIUS,
): SharpnessPoint[] {
  requirePositive('step', step);
  requirePositive('radius', radius);
  const [fromX, fromY] = line.from;
  const [toX, toY] = line.to;
  const length = Math.hypot(toX - fromX, toY - fromY);
  const steps = Math.max(1, Math.round(length / step));
  const perPiece = Math.max(1, Math.floor(PIECE * steps / Math.max(length, 1)));
  const points: SharpnessPoint[] = [];
  for (let start = 0; start <= steps; start += perPiece) {
    const places = Array.from({length: Math.min(perPiece, steps - start + 1)}, (_, at) => {
      const along = (start + at) / steps;
      return {along, x: fromX + along * (toX - fromX), y: fromY + along * (toY - fromY)};
    });
    const [first, last] = [places[0], places.at(-1)] as [Place, Place];
    const detail = measureDetail(pixels, cropOnto(around(first, last), pixels.width, pixels.height));
    for (const place of places) points.push({...place, blur: blurFromDetail(spotDetail(detail, place.x, place.y, radius), radius)});
  }
  return points;
}

type Place = Omit<SharpnessPoint, 'blur'>;

/** What the readings from one place to another can see. */
function around(one: Place, other: Place): Crop {
  return {
    x: Math.min(one.x, other.x) - MARGIN, y: Math.min(one.y, other.y) - MARGIN,
    width: Math.abs(other.x - one.x) + 2 * MARGIN, height: Math.abs(other.y - one.y) + 2 * MARGIN,
  };
}

/** Sharpness over a whole area, in square cells. */
export interface SharpnessGrid {
  /** Side of a cell, px. */
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly crop: Crop;
  /** Blur disc of each cell, row by row, px; `null` where there is no detail to judge by. */
  readonly blur: readonly (number | null)[];
}

/** Pixels a side that are measured in one piece; keeps memory small on large pictures. */
const PIECE = 640;
/** Cells are no smaller than this when nothing is said, px … */
const LEAST_CELL = 16;
/** … and no more than this many stand side by side: as many as an overlay can show. */
const MOST_CELLS = 160;

/**
 * Local sharpness over an area, for a heat overlay. Cells at the right and lower border may be cut off.
 * @param crop - area, cut to the picture
 * @param cell - side of a cell, px, above 0; when left out, 16 or what makes 160 cells across the wider side
 * @throws {Problem} `cell` not above 0; `crop` off the picture
 */
export function sharpnessGrid(pixels: Pixels, crop: Crop, cell: number = defaultCell(crop)): SharpnessGrid {
  requirePositive('cell', cell);
  const inside = cropOnto(crop, pixels.width, pixels.height);
  const piece = Math.ceil(PIECE / cell);
  const columns = Math.ceil(inside.width / cell);
  const rows = Math.ceil(inside.height / cell);
  const blur = new Array<number | null>(columns * rows).fill(null);
  for (let top = 0; top < rows; top += piece) {
    for (let left = 0; left < columns; left += piece) {
      const side = piece * cell + 2 * MARGIN;
      const area = {x: inside.x + left * cell - MARGIN, y: inside.y + top * cell - MARGIN, width: side, height: side};
      const detail = measureDetail(pixels, cropOnto(area, pixels.width, pixels.height));
      for (let row = top; row < Math.min(rows, top + piece); row++) {
        for (let column = left; column < Math.min(columns, left + piece); column++) {
          const x = Math.min(inside.x + inside.width - 1, inside.x + (column + 0.5) * cell);
          const y = Math.min(inside.y + inside.height - 1, inside.y + (row + 0.5) * cell);
          blur[row * columns + column] = blurFromDetail(spotDetail(detail, x, y, SPOT_RADIUS), SPOT_RADIUS);
        }
      }
    }
  }
  return {cell, columns, rows, crop: inside, blur};
}

function defaultCell({width, height}: Crop): number {
  return Math.max(LEAST_CELL, Math.ceil(Math.max(width, height) / MOST_CELLS));
}
