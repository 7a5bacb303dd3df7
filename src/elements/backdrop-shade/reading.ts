import {backdropStrip, figureLight, type BackdropLevel} from '../../core/light/backdrop.js';
import {flagClearance} from '../../core/light/clearance.js';
import {brightestBelowGray, lightTrade, type Place} from '../../core/light/reach.js';
import {REFLECTANCES} from '../../core/light/reflectances.js';
import {TABLE_ROOM} from '../../core/light/room.js';
import {figureShares, type TableSet} from '../../core/light/set.js';
import type {Lights, NamedLamp} from '../../core/light/set-text.js';
import type {Point} from '../../core/light/space.js';
import {principalToSubject} from '../../core/optics/lens.js';
import {Problem} from '../../core/problem.js';
import {exposureOff} from '../../core/shot/close-up.js';
import type {Shot} from '../../core/shot/shot.js';
import {codeFromLinear} from '../../core/tone/light.js';

/** The part of the backdrop that the kept picture shows, mm: x from left to right, z from low to high. */
export interface Seen {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** A card nearer to a lamp's face than a hand's breadth: the gap, mm, and which. */
export interface CloseCard {
  readonly flag: number;
  readonly lamp: number;
  readonly gap: number;
}

/** A backdrop that would show darker in the same place. */
export interface DarkerMaterial {
  readonly material: keyof typeof REFLECTANCES;
  readonly code: number;
}

/** Everything the element says, for one shot. */
export interface Reading {
  readonly shot: Shot;
  readonly set: TableSet;
  readonly lamps: readonly NamedLamp[];
  /** Stops by which the picture comes out brighter than exposed for the gray card, light lost to close-up counted. */
  readonly offset: number;
  readonly seen: Seen;
  /** Where the backdrop is held to the wish. */
  readonly places: readonly Place[];
  /** The backdrop at its highest, in the middle and at its lowest, from left to right. */
  readonly rows: readonly (readonly BackdropLevel[])[];
  /** The brightest of each column. */
  readonly strip: readonly BackdropLevel[];
  /** Brightest and darkest of all. */
  readonly brightest: BackdropLevel;
  readonly darkest: BackdropLevel;
  /** Stops by which the brightest place misses the wish; 0 or less = reached. */
  readonly short: number;
  /** Least share of each lamp that the figure sees past the flags. */
  readonly shares: readonly number[];
  readonly close: readonly CloseCard[];
  readonly darker: DarkerMaterial | undefined;
  /** Light on the gray card, to be compared after a change. */
  readonly onCard: number;
}

/** Columns of the strip; odd, so that the middle is one. */
export const CELLS = 25;

/** How far the table top reaches from the figure to either side and to the front, mm. Our choice. */
const TABLE_REACH = 400;

/** Lowest place that is looked at, mm above the table: below it the table's own edge shows. */
const LOWEST = 20;

/** Misses of the wish that nobody sees, stops. */
export const UNSEEN = 0.05;

/** Front of the lens: the camera looks at half of the figure's height, focused where the shot says. */
export function cameraOf({focalLength, sensorWidth, fieldWidth, tilt, baseDepth, focus, figureHeight}: Shot): Point {
  const away = principalToSubject(sensorWidth / fieldWidth, focalLength);
  const down = tilt * Math.PI / 180;
  return [0, focus - baseDepth / 2 - away * Math.cos(down), figureHeight / 2 + away * Math.sin(down)];
}

/** What the kept picture shows of the backdrop. */
export function seenOf(shot: Shot): Seen {
  const {crop, tilt, backdropDistance, fieldWidth, focalLength, sensorWidth, sensorHeight, figureHeight} = shot;
  const [, front, above] = cameraOf(shot);
  const down = tilt * Math.PI / 180;
  const along = (backdropDistance - front) / Math.cos(down);
  const width = fieldWidth * along / principalToSubject(sensorWidth / fieldWidth, focalLength);
  const tall = width * sensorHeight / sensorWidth / Math.cos(down);
  const middle = above - (backdropDistance - front) * Math.tan(down);
  const high = Math.max(middle + tall * (0.5 - crop.top), figureHeight, 2 * LOWEST);
  const left = width * (crop.left - 0.5);
  return {left, right: left + width * crop.width, low: Math.max(LOWEST, middle + tall * (0.5 - crop.top - crop.height)), high};
}

/** The set of a shot in the words of the core. */
export function setOf(shot: Shot): TableSet {
  const {lights, figureWidth, baseDepth, overhangFront, overhangBack, backdropDistance} = shot;
  const tall = Math.max(1, shot.figureHeight);
  const set: TableSet = {
    lamps: lights.lamps, flags: lights.flags, camera: cameraOf(shot),
    figure: {
      card: [0, 0, tall / 2], facing: [0, -1, 0],
      least: [-figureWidth / 2, -baseDepth / 2 - overhangFront, 0], most: [figureWidth / 2, baseDepth / 2 + overhangBack, tall],
    },
    backdrop: {distance: backdropDistance, reflectance: shot.backdropReflectance},
  };
  if (!(lights.table > 0)) return set;
  const table = {left: -TABLE_REACH, right: TABLE_REACH, front: -TABLE_REACH, back: backdropDistance, reflectance: lights.table};
  return {...set, table};
}

/** What a set that a search hands over says of the shot. */
export function changesOf(set: TableSet, shot: Shot): Partial<Shot> {
  const lights: Lights = {...shot.lights, lamps: set.lamps as readonly NamedLamp[], flags: set.flags};
  return {lights, backdropDistance: set.backdrop.distance};
}

/** @throws {Problem} as the light does, naming the value that cannot be */
export function readSet(shot: Shot): Reading {
  const set = setOf(shot);
  const seen = seenOf(shot);
  const {left, right, low, high} = seen;
  const offset = exposureOff(shot);
  const places = [left, (left + right) / 2, right].flatMap((x) => [low, (low + high) / 2, high].map((z): Place => [x, z]));
  const rows = [high, (low + high) / 2, low].map((z) => backdropStrip(set, left, right, z, CELLS, offset));
  const brighter = (a: BackdropLevel, b: BackdropLevel): BackdropLevel => (b.belowGray < a.belowGray ? b : a);
  const strip = (rows[0] ?? []).map((_, at) => rows.map((row) => row[at] as BackdropLevel).reduce(brighter));
  const brightest = strip.reduce(brighter);
  const darkest = rows.flat().reduce((a, b) => (b.belowGray > a.belowGray ? b : a));
  const close = set.flags.flatMap((flag, index) => set.lamps.map((lamp, at) => ({flag: index, lamp: at, gap: flagClearance(flag, lamp)})))
    .filter(({gap}) => gap < TABLE_ROOM.clearance - 1e-6);
  return {
    shot, set, lamps: shot.lights.lamps, offset, seen, places, rows, strip, brightest, darkest,
    short: shot.backdropWish - brightest.belowGray, shares: figureShares(set), close,
    darker: darkerThan(shot.backdropReflectance, brightest), onCard: figureLight(set),
  };
}

/** The next darker of the two blacks, in the place of what hangs there. */
function darkerThan(reflectance: number, {linear}: BackdropLevel): DarkerMaterial | undefined {
  const material = (['black-card', 'black-velvet'] as const).find((name) => REFLECTANCES[name] < reflectance * 0.99);
  return material && {material, code: codeFromLinear(linear * REFLECTANCES[material] / reflectance)};
}

/** The set without one lamp. */
export interface LampOff {
  readonly lamp: number;
  readonly set: TableSet;
  /** Brightest place then, stops under the gray card; change of light on the card, stops. */
  readonly belowGray: number;
  readonly stops: number;
}

/** The lamp whose switch darkens the backdrop most against the figure; none when that is under a tenth of a stop. */
export function bestOff({set, places, brightest}: Reading): LampOff | undefined {
  const off = set.lamps.flatMap((_, lamp): LampOff[] => {
    const after = {...set, lamps: set.lamps.filter((_lamp, at) => at !== lamp)};
    try {
      return [{lamp, set: after, belowGray: brightestBelowGray(after, places), stops: lightTrade(set, after).stops}];
    } catch (error) { // the only one that lights the figure
      if (!(error instanceof Problem)) throw error;
      return [];
    }
  });
  return off.filter(({belowGray}) => belowGray > brightest.belowGray + 0.1).sort((a, b) => b.belowGray - a.belowGray)[0];
}

/** Lamps by what they give the brightest place, most first. */
export function byLight({brightest: {direct, bounced}}: Reading): readonly number[] {
  const given = direct.map((part, lamp) => part + (bounced[lamp] ?? 0));
  return given.map((_, lamp) => lamp).sort((a, b) => (given[b] as number) - (given[a] as number));
}
