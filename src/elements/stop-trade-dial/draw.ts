import {clicks, type ClicksPerStop, type Range} from '../../core/exposure/clicks.js';
import {lightStops, type Exposure} from '../../core/exposure/stops.js';

/** The drawing's own units: a square of this side, the dial's middle in its middle. */
export const SIDE = 352;
const MIDDLE = SIDE / 2;

/** Where the two scales meet, and how far they reach from there. */
export const RADII = {outerLabel: 146, outerTick: 122, joint: 112, innerTick: 102, innerLabel: 87, hub: 69, rim: 171} as const;

/** Degrees a stop takes on the rings when there is room for it. */
const STOP_DEGREES = 20;

/** Widest sweep of the shutter ring, so that its ends never touch. */
const SWEEP = 340;

/** Half the width of the window over the pair in use. Its sides point at the middle. */
export const WINDOW_DEGREES = 9.5;

/** Size of the largest letters on the rings, where the dial is narrowest. */
const LETTER = 15.2;

/** Widths of what is printed on the rings, in letter sizes, as wide as common type has them; digits where not said. */
const WIDTHS: Readonly<Record<string, number>> = {'.': 0.28, '/': 0.34, '"': 0.4};
const DIGIT = 0.58;

/** One mark of a ring, in degrees clockwise from the top. */
export interface Mark {
  readonly angle: number;
  /** Printed for whole stops that stand clear of the window; empty elsewhere. */
  readonly label: string;
  readonly whole: boolean;
  /** Whether a click of the other ring faces it. */
  readonly faced: boolean;
}

export interface Dial {
  readonly shutter: readonly Mark[];
  readonly aperture: readonly Mark[];
  /** Where the hand points. */
  readonly hand: number;
  /** Degrees of one stop. */
  readonly perStop: number;
}

/**
 * Both rings and the hand. The shutter ring stands still, slow times clockwise; the aperture ring is laid against it
 * so that every facing pair gives the light of `setting` at its ISO.
 */
export function layOut(setting: Exposure, clicksPerStop: ClicksPerStop, apertures: Range, shutters: Range): Dial {
  const shutterClicks = clicks('shutter', clicksPerStop, shutters);
  const apertureClicks = clicks('aperture', clicksPerStop, apertures);
  const fastest = shutterClicks[0]?.value ?? setting.shutter;
  const slowest = shutterClicks.at(-1)?.value ?? setting.shutter;
  const perStop = Math.min(STOP_DEGREES, SWEEP / Math.max(1, Math.log2(slowest / fastest)));
  const shutterAngle = (time: number) => (Math.log2(time / fastest) - Math.log2(slowest / fastest) / 2) * perStop;
  // A stop of light lost at the aperture faces a stop more time.
  const facing = (aperture: number) => setting.shutter * 2 ** -lightStops('aperture', setting.aperture, aperture);
  const slack = 2 ** (0.5 / clicksPerStop);
  const [widest, smallest] = [apertureClicks[0]?.value ?? setting.aperture, apertureClicks.at(-1)?.value ?? setting.aperture];
  const hand = shutterAngle(setting.shutter);
  return {
    perStop,
    hand,
    shutter: shutterClicks.map(({index, value, label}) => mark(
      shutterAngle(value), clearOf(hand, shutterAngle(value), RADII.outerLabel, label) ? label : '', index % clicksPerStop === 0,
      value * slack >= facing(widest) && value <= facing(smallest) * slack,
    )),
    aperture: apertureClicks.map(({index, value, label}) => mark(
      shutterAngle(facing(value)), clearOf(hand, shutterAngle(facing(value)), RADII.innerLabel, label) ? label : '', index % clicksPerStop === 0,
      facing(value) * slack >= fastest && facing(value) <= slowest * slack,
    )).filter(({angle}) => Math.abs(angle) <= 180),
  };
}

/** Whether all of an upright label stands on one side of the window, a little apart from it. */
function clearOf(hand: number, angle: number, radius: number, label: string): boolean {
  const {x, y} = place(angle, radius);
  const [wide, high] = [[...label].reduce((sum, sign) => sum + (WIDTHS[sign] ?? DIGIT), 0) * LETTER / 2, LETTER * 0.36];
  const turns = [[-wide, -high], [wide, -high], [-wide, high], [wide, high]].map(([dx = 0, dy = 0]) => turnBetween(hand, angleOf(x + dx, y + dy)));
  const apart = WINDOW_DEGREES + 1;
  // Straight opposite the window the corners lie on either side of it, and far away.
  return [(turn: number) => turn > apart, (turn: number) => turn < -apart, (turn: number) => Math.abs(turn) > 90]
    .some((aside) => turns.every(aside));
}

/** SVG path of the window when the hand points at `hand`. */
export function windowPath(hand: number): string {
  const [from, to] = [hand - WINDOW_DEGREES, hand + WINDOW_DEGREES];
  const [one, two, three, four] = [place(from, RADII.rim), place(to, RADII.rim), place(to, RADII.hub), place(from, RADII.hub)];
  return `M${one.x} ${one.y}A${RADII.rim} ${RADII.rim} 0 0 1 ${two.x} ${two.y}L${three.x} ${three.y}A${RADII.hub} ${RADII.hub} 0 0 0 ${four.x} ${four.y}Z`;
}

function mark(angle: number, label: string, whole: boolean, faced: boolean): Mark {
  return {angle, label: whole ? label : '', whole, faced};
}

/** Point at `radius` from the middle, `angle` degrees clockwise from the top. */
export function place(angle: number, radius: number): {readonly x: number; readonly y: number} {
  const turn = angle * Math.PI / 180;
  return {x: round(MIDDLE + radius * Math.sin(turn)), y: round(MIDDLE - radius * Math.cos(turn))};
}

/** Angle of a point of the drawing, degrees clockwise from the top, −180 to 180. */
export function angleOf(x: number, y: number): number {
  return Math.atan2(x - MIDDLE, MIDDLE - y) * 180 / Math.PI;
}

/** The shorter way from one angle to another, −180 to 180. */
export function turnBetween(from: number, to: number): number {
  return ((to - from + 540) % 360) - 180;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
