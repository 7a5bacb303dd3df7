import {linearTable, LUMINANCE_WEIGHTS} from './light.js';
import type {Crop, Pixels} from './pixels.js';

/** Halvings of the picture. The coarsest scale then sees blur of some 20 px (standard deviation). */
const LEVELS = 5;
/** What the central difference itself smooths, px² of its own level: a box two pixels wide. */
const DIFFERENCE_VARIANCE = 1 / 3;
/** What the filter 1 4 6 4 1 smooths, px² of its own level. */
const FILTER_VARIANCE = 1;

/** How steep a picture is at one coarseness. */
interface Scale {
  /** Squared steepness of linear light per pixel of this level. */
  readonly energy: Float32Array;
  readonly width: number;
  readonly height: number;
  /** Pixels of the picture per pixel of this level. */
  readonly step: number;
}

/** Steepness of part of a picture at ten scales, fine to coarse. */
export interface Detail {
  readonly scales: readonly Scale[];
  /** Luminance in linear light, for the mean. */
  readonly light: Float32Array;
  /** The part of the picture that was measured. */
  readonly crop: Crop;
}

/** Smoothing of each scale as the variance of a bell curve, px². Two scales a level: before its filter and after. */
export const SCALE_VARIANCES: readonly number[] = /* @__PURE__ */ scaleVariances();

function scaleVariances(): number[] {
  const variances: number[] = [];
  for (let level = 0, before = 0; level < LEVELS; level++, before = (before + FILTER_VARIANCE) / 4) {
    for (const filter of [0, FILTER_VARIANCE]) variances.push((before + filter + DIFFERENCE_VARIANCE) * 4 ** level);
  }
  return variances;
}

interface Plane {
  readonly light: Float32Array;
  readonly width: number;
  readonly height: number;
}

/**
 * Measures steepness of luminance in linear light, where blur adds up.
 * @param crop - whole pixels, inside the picture
 */
export function measureDetail(pixels: Pixels, crop: Crop): Detail {
  let plane: Plane = luminancePlane(pixels, crop);
  const {light} = plane;
  const scales: Scale[] = [];
  for (let level = 0; level < LEVELS; level++) {
    const smooth = smoothed(plane);
    scales.push(steepness(plane, 2 ** level), steepness(smooth, 2 ** level));
    plane = halved(smooth);
  }
  return {scales, light, crop};
}

function luminancePlane(pixels: Pixels, crop: Crop): Plane {
  const table = linearTable();
  const [red, green, blue] = LUMINANCE_WEIGHTS.map((weight) => table.map((light) => light * weight)) as
    [Float64Array, Float64Array, Float64Array];
  const light = new Float32Array(crop.width * crop.height);
  for (let row = 0, to = 0; row < crop.height; row++) {
    for (let at = ((crop.y + row) * pixels.width + crop.x) * 4, end = at + crop.width * 4; at < end; at += 4) {
      light[to++] = (red[pixels.data[at] as number] as number)
        + (green[pixels.data[at + 1] as number] as number) + (blue[pixels.data[at + 2] as number] as number);
    }
  }
  return {light, width: crop.width, height: crop.height};
}

/** Smoothed by 1 4 6 4 1 both ways; what lies outside is taken as its nearest pixel. */
function smoothed({light, width, height}: Plane): Plane {
  const across = new Float32Array(light.length);
  const out = new Float32Array(light.length);
  for (let y = 0; y < height; y++) smoothLine(light, across, y * width, 1, width);
  for (let x = 0; x < width; x++) smoothLine(across, out, x, width, height);
  return {light: out, width, height};
}

/** One row or column: `count` pixels from `start`, `step` apart. */
function smoothLine(from: Float32Array, to: Float32Array, start: number, step: number, count: number): void {
  const end = start + (count - 1) * step;
  let two = from[start] as number;
  let one = two;
  let here = two;
  let next = from[Math.min(end, start + step)] as number;
  for (let at = start; at <= end; at += step) {
    const after = from[Math.min(end, at + 2 * step)] as number;
    to[at] = (two + after + 4 * (one + next) + 6 * here) / 16;
    two = one; one = here; here = next; next = after;
  }
}

function halved({light, width, height}: Plane): Plane {
  const half = {width: Math.ceil(width / 2), height: Math.ceil(height / 2)};
  const out = new Float32Array(half.width * half.height);
  for (let y = 0; y < half.height; y++) {
    for (let x = 0; x < half.width; x++) out[y * half.width + x] = light[2 * (y * width + x)] as number;
  }
  return {light: out, ...half};
}

function steepness({light, width, height}: Plane, step: number): Scale {
  const energy = new Float32Array(light.length);
  for (let y = 1; y < height - 1; y++) {
    for (let at = y * width + 1, end = at + width - 2; at < end; at++) {
      const across = (light[at + 1] as number) - (light[at - 1] as number);
      const down = (light[at + width] as number) - (light[at - width] as number);
      energy[at] = (across * across + down * down) / 4;
    }
  }
  return {energy, width, height, step};
}

/** What a spot of the picture shows. */
export interface SpotDetail {
  /** Mean squared steepness per picture pixel at each scale, in the order of {@link SCALE_VARIANCES}. */
  readonly energies: readonly number[];
  /** Mean linear light. */
  readonly light: number;
}

/**
 * Averages detail around a spot under a bell-shaped window.
 * @param x - picture pixel, inside the measured crop
 * @param radius - standard deviation of the window, px, above 0
 */
export function spotDetail({scales, light, crop}: Detail, x: number, y: number, radius: number): SpotDetail {
  const [left, top] = [x - crop.x, y - crop.y];
  return {
    energies: scales.map(({energy, width, height, step}) =>
      windowMean(energy, width, height, left / step, top / step, radius / step, 1) / step ** 2),
    light: windowMean(light, crop.width, crop.height, left, top, radius, 0),
  };
}

/** Standard deviations at which the window ends. */
const WINDOW_REACH = 2.2;

function windowMean(
  values: Float32Array, width: number, height: number, x: number, y: number, radius: number, border: number,
): number {
  const across = bell(x, width, radius, border);
  const down = bell(y, height, radius, border);
  let sum = 0;
  for (let line = 0; line < down.weights.length; line++) {
    const row = (down.from + line) * width + across.from;
    let inRow = 0;
    for (let at = 0; at < across.weights.length; at++) inRow += (values[row + at] as number) * (across.weights[at] as number);
    sum += inRow * (down.weights[line] as number);
  }
  return sum / (across.total * down.total);
}

/** Weights of a bell curve along one side of the window, on the pixels that lie inside; at least one. */
function bell(centre: number, size: number, radius: number, border: number):
  {readonly from: number; readonly weights: Float64Array; readonly total: number} {
  const reach = Math.max(1, WINDOW_REACH * radius);
  const from = Math.max(0, Math.min(size - 1 - border, Math.max(border, Math.ceil(centre - reach))));
  const to = Math.max(from, Math.min(size - 1 - border, Math.floor(centre + reach)));
  const weights = new Float64Array(to - from + 1);
  let total = 0;
  for (let at = from; at <= to; at++) total += weights[at - from] = Math.exp(-((at - centre) ** 2) / (2 * radius ** 2));
  return {from, weights, total};
}
