import {requirePositive} from '../problem.js';

/** A sensor size under the name the trade gives it. */
export interface SensorFormat {
  /** Short and stable, for links and attributes */
  readonly id: string;
  readonly name: string;
  /** mm, the longer side */
  readonly width: number;
  /** mm, the shorter side */
  readonly height: number;
}

const format = (id: string, name: string, width: number, height: number): SensorFormat => ({id, name, width, height});

/**
 * The usual formats, largest first. Sizes vary by a few tenths from body to body.
 * Source: published format tables for all but the 1.3-inch type and the 2.55-inch type, which are from memory.
 */
export const SENSOR_FORMATS: readonly SensorFormat[] = /* @__PURE__ */ [
  /* @__PURE__ */ format('54x40', 'medium format 54 × 40', 53.7, 40.4),
  /* @__PURE__ */ format('44x33', 'medium format 44 × 33', 43.8, 32.9),
  /* @__PURE__ */ format('full-frame', 'full frame', 36, 24),
  /* @__PURE__ */ format('aps-h', 'APS-H', 27.9, 18.6),
  /* @__PURE__ */ format('aps-c', 'APS-C', 23.6, 15.7),
  /* @__PURE__ */ format('aps-c-small', 'APS-C, smaller', 22.3, 14.9),
  /* @__PURE__ */ format('1.5-inch', '1.5″', 18.7, 14),
  /* @__PURE__ */ format('four-thirds', 'Four Thirds', 17.3, 13),
  /* @__PURE__ */ format('1-inch', '1″', 13.2, 8.8),
  /* @__PURE__ */ format('1/1.3-inch', '1/1.3″, phone', 9.8, 7.3),
  /* @__PURE__ */ format('2/3-inch', '2/3″', 8.8, 6.6),
  /* @__PURE__ */ format('1/1.7-inch', '1/1.7″', 7.6, 5.7),
  /* @__PURE__ */ format('1/2-inch', '1/2″', 6.4, 4.8),
  /* @__PURE__ */ format('1/2.3-inch', '1/2.3″', 6.17, 4.55),
  /* @__PURE__ */ format('1/2.55-inch', '1/2.55″, phone', 5.6, 4.2),
];

/** Diagonal of the 36 × 24 frame, mm, that crop factors compare with. */
const FULL_FRAME_DIAGONAL_MM = /* @__PURE__ */ Math.hypot(36, 24);

/**
 * @param width - mm, > 0
 * @param height - mm, > 0
 * @returns mm from corner to corner
 * @throws {Problem} `sensor-width` or `sensor-height`
 * Source: Pythagoras.
 */
export function sensorDiagonal(width: number, height: number): number {
  requirePositive('sensor-width', width);
  requirePositive('sensor-height', height);
  return Math.hypot(width, height);
}

/**
 * How many times smaller than a 36 × 24 mm frame.
 * @param width - mm, > 0
 * @param height - mm, > 0
 * @returns ratio of the diagonals, above 1 for smaller sensors
 * @throws {Problem} `sensor-width` or `sensor-height`
 * Source: common practice in format tables, by the diagonal.
 */
export function cropFactor(width: number, height: number): number {
  return FULL_FRAME_DIAGONAL_MM / sensorDiagonal(width, height);
}

/**
 * The blur limit for a print of the whole frame looked at as a whole. For a crop or a screen it means nothing.
 * @param width - mm, > 0, of the frame
 * @param height - mm, > 0, of the frame
 * @param divisor - part of the diagonal, > 0; conventions run from 1000 to 1730
 * @returns mm on the sensor
 * @throws {Problem} `sensor-width`, `sensor-height` or `divisor`
 * Source: the 1/1500 rule, published coc tables.
 */
export function printBlurLimit(width: number, height: number, divisor = 1500): number {
  requirePositive('divisor', divisor);
  return sensorDiagonal(width, height) / divisor;
}

/**
 * The usual format closest to a size, upright or not.
 * @param width - mm, > 0
 * @param height - mm, > 0
 * @returns the format, and how far the size is off it: the larger of the two sides' differences as a share, 0 = exact
 * @throws {Problem} `sensor-width` or `sensor-height`
 */
export function nearestFormat(width: number, height: number): {readonly format: SensorFormat; readonly off: number} {
  requirePositive('sensor-width', width);
  requirePositive('sensor-height', height);
  const [long, short] = width < height ? [height, width] : [width, height];
  return SENSOR_FORMATS
    .map((each) => ({format: each, off: Math.max(difference(long, each.width), difference(short, each.height))}))
    .reduce((best, next) => (next.off < best.off ? next : best));
}

const difference = (a: number, b: number): number => Math.max(a / b, b / a) - 1;
