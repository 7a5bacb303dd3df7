import {requireFinite} from '../problem.js';
import type {LensSetup} from './lens.js';
import {depthToCover, rulerToAxial} from './outline.js';
import type {DepthToCover, Outline} from './outline.js';
import {sharpZone} from './zone.js';
import type {SharpZone} from './zone.js';

/** A figure, a lens and a focus point: what has to be sharp, and how it is taken. */
export interface Framing {
  readonly outline: Outline;
  /** Degrees the camera looks down */
  readonly tilt: number;
  readonly lens: LensSetup;
  /** mm behind the base's front edge where a flat ruler on the table is sharpest */
  readonly focus: number;
  /** Blur accepted on the sensor, mm, > 0 */
  readonly limit: number;
}

/** How a sharp zone lies against a figure. Lengths are mm along the optical axis. */
export interface ZoneFit {
  /** Which end fails; `null` when the whole figure is sharp */
  readonly end: 'front' | 'back' | 'both' | null;
  /** By how much the foremost point lies before the zone; negative = room to spare */
  readonly outsideFront: number;
  /** By how much the rearmost point lies behind the zone; negative = room to spare, −Infinity without a far limit */
  readonly outsideBack: number;
  /** Share of the figure's depth that lies in the zone, 0 to 1 */
  readonly covered: number;
  readonly zone: SharpZone;
  readonly depth: DepthToCover;
  /** Axial depth of the focus plane, on the scale of `depth` */
  readonly focusDepth: number;
}

/** A nanometre: what rounding may leave between an end and the zone's edge when they are meant to meet. */
const MEETING_MM = 1e-6;

/**
 * Whether the sharp zone takes in the whole outline, and if not what is left out at which end.
 * @throws {Problem} as for an outline, a lens and a zone; `focus`
 * Source: comparison of {@link depthToCover} with {@link sharpZone}.
 */
export function zoneFit({outline, tilt, lens, focus, limit}: Framing): ZoneFit {
  requireFinite('focus', focus);
  const depth = depthToCover(outline, tilt);
  const focusDepth = rulerToAxial(focus, tilt);
  const zone = sharpZone(lens, limit);
  const outsideFront = focusDepth - zone.near - depth.front;
  const outsideBack = depth.back - focusDepth - zone.far;
  const front = outsideFront > MEETING_MM;
  const back = outsideBack > MEETING_MM;
  return {
    end: front ? (back ? 'both' : 'front') : back ? 'back' : null,
    outsideFront, outsideBack, covered: coveredShare(depth, outsideFront, outsideBack),
    zone, depth, focusDepth,
  };
}

function coveredShare({spread}: DepthToCover, outsideFront: number, outsideBack: number): number {
  const out = Math.max(0, outsideFront) + Math.max(0, outsideBack);
  return out <= MEETING_MM ? 1 : Math.max(0, 1 - out / spread);
}
