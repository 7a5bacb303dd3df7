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
  const value = (from: Float32Array, at: number): number => from[at] as number;
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const at = row + x;
      const left = x > 0 ? at - 1 : at;
      const right = x < width - 1 ? at + 1 : at;
      across[at] = (value(light, x > 1 ? at - 2 : row) + value(light, x < width - 2 ? at + 2 : row + width - 1)
        + 4 * (value(light, left) + value(light, right)) + 6 * value(light, at)) / 16;
    }
  }
  for (let y = 0; y < height; y++) {
    const [above2, above, row, below, below2] = [y - 2, y - 1, y, y + 1, y + 2]
      .map((line) => Math.min(height - 1, Math.max(0, line)) * width) as [number, number, number, number, number];
    for (let x = 0; x < width; x++) {
      out[row + x] = (value(across, above2 + x) + value(across, below2 + x)
        + 4 * (value(across, above + x) + value(across, below + x)) + 6 * value(across, row + x)) / 16;
    }
  }
  return {light: out, width, height};
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
  const reach = Math.max(1, WINDOW_REACH * radius);
  const weigh = (centre: number, size: number): readonly [number, number[]] => {
    const from = Math.min(size - 1 - border, Math.max(border, Math.ceil(centre - reach)));
    const to = Math.max(from, Math.min(size - 1 - border, Math.floor(centre + reach)));
    return [from, Array.from({length: to - from + 1}, (_, at) => Math.exp(-((from + at - centre) ** 2) / (2 * radius ** 2)))];
  };
  const [fromX, across] = weigh(x, width);
  const [fromY, down] = weigh(y, height);
  let sum = 0;
  for (let line = 0; line < down.length; line++) {
    const row = (fromY + line) * width + fromX;
    let inRow = 0;
    for (let at = 0; at < across.length; at++) inRow += (values[row + at] as number) * (across[at] as number);
    sum += inRow * (down[line] as number);
  }
  const total = across.reduce((all, weight) => all + weight, 0) * down.reduce((all, weight) => all + weight, 0);
  return total > 0 ? sum / total : 0;
}
