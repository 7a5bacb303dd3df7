import {fieldWidth as widthAt} from '../../core/optics/lens.js';
import type {Flag} from '../../core/light/flag.js';
import {cleanName, type Lights, type NamedLamp} from '../../core/light/set-text.js';
import {along, type Point} from '../../core/light/space.js';
import type {Shot} from '../../core/shot/shot.js';
import {principalToSubject} from '../../core/optics/lens.js';
import {cameraOf} from './reading.js';

/** What stands in the set: `lamp0`, `flag1`, and the three there is one of. */
export type Thing = `lamp${number}` | `flag${number}` | 'figure' | 'backdrop' | 'camera';

/** Every thing of a shot, in the order they are drawn and tabbed. */
export function thingsOf({lights}: Shot): readonly Thing[] {
  return [
    ...lights.lamps.map((_, at): Thing => `lamp${at}`), ...lights.flags.map((_, at): Thing => `flag${at}`), 'backdrop', 'camera', 'figure',
  ];
}

/** Number of a lamp or flag. */
export const numberOf = (thing: Thing): number => Number(/\d+$/.exec(thing)?.[0] ?? -1);

export const lampOf = (thing: Thing, {lights}: Shot): NamedLamp | undefined =>
  thing.startsWith('lamp') ? lights.lamps[numberOf(thing)] : undefined;

export const flagOf = (thing: Thing, {lights}: Shot): Flag | undefined =>
  thing.startsWith('flag') ? lights.flags[numberOf(thing)] : undefined;

/** Where a thing stands: the middle of its face. */
export function positionOf(thing: Thing, shot: Shot): Point {
  if (thing === 'backdrop') return [0, shot.backdropDistance, 0];
  if (thing === 'camera') return cameraOf(shot);
  return lampOf(thing, shot)?.position ?? flagOf(thing, shot)?.position ?? [0, 0, 0];
}

/** The shot with a lamp changed. */
export function withLamp(thing: Thing, change: Partial<NamedLamp>, {lights}: Shot): Partial<Shot> {
  const lamp = lights.lamps[numberOf(thing)];
  return lamp ? {lights: {...lights, lamps: lights.lamps.with(numberOf(thing), {...lamp, ...change})}} : {};
}

/** The shot with a flag changed. */
export function withFlag(thing: Thing, change: Partial<Flag>, {lights}: Shot): Partial<Shot> {
  const flag = lights.flags[numberOf(thing)];
  return flag ? {lights: {...lights, flags: lights.flags.with(numberOf(thing), {...flag, ...change})}} : {};
}

/** Nearest the backdrop stands to the middle of the base, and as far from it as keys take a thing at once, mm. */
const [NEAREST, REACH] = [10, 2000];

/** Nearest the camera comes, in focal lengths. */
const CLOSEST = 1.5;

/**
 * The shot with a thing put elsewhere. Nothing goes below the table; the backdrop and the camera keep to the middle line,
 * and the camera that moves back sees a wider field. The figure stays: every distance is counted from it.
 */
export function moved(thing: Thing, to: Point, shot: Shot): Partial<Shot> {
  const place: Point = [to[0], to[1], Math.max(0, to[2])];
  if (thing === 'backdrop') return {backdropDistance: Math.max(NEAREST, to[1])};
  if (thing === 'camera') {
    const {focalLength, sensorWidth} = shot;
    const away = awayOf(shot) + (cameraOf(shot)[1] - to[1]) / Math.cos(shot.tilt * Math.PI / 180);
    return away > focalLength * CLOSEST ? {fieldWidth: widthAt(sensorWidth, focalLength / (away - focalLength))} : {};
  }
  return lampOf(thing, shot) ? withLamp(thing, {position: place}, shot) : withFlag(thing, {position: place}, shot);
}

/** The camera's distance along the line it looks, mm. */
const awayOf = ({sensorWidth, fieldWidth, focalLength}: Shot): number => principalToSubject(sensorWidth / fieldWidth, focalLength);

/** How far in front of the base (negative) and behind it a thing goes by keys, mm; one that stands beyond stays there. */
export function depthsOf(thing: Thing, shot: Shot): readonly [least: number, most: number] {
  const [, now] = positionOf(thing, shot);
  if (thing === 'camera') {
    // A millimetre short of where it cannot go.
    const closest = now + (awayOf(shot) - shot.focalLength * CLOSEST - 1) * Math.cos(shot.tilt * Math.PI / 180);
    return [Math.min(-REACH, now), Math.max(closest, now)];
  }
  return [thing === 'backdrop' ? NEAREST : Math.min(-REACH, now), Math.max(REACH, now)];
}

/** The shot with a lamp or flag less. The last lamp stays. */
export function without(thing: Thing, {lights}: Shot): Partial<Shot> {
  const at = numberOf(thing);
  if (thing.startsWith('flag')) return {lights: {...lights, flags: lights.flags.filter((_, index) => index !== at)}};
  return lights.lamps.length > 1 ? {lights: {...lights, lamps: lights.lamps.filter((_, index) => index !== at)}} : {};
}

/** What can be added. */
export const ADDED = ['lamp', 'window', 'ceiling', 'flag'] as const;
export type Added = typeof ADDED[number];

/** Sizes, places and powers that are usual. Invented: move them to where yours are. */
const PRESETS: Readonly<Record<Exclude<Added, 'flag'>, Omit<NamedLamp, 'name'>>> = {
  lamp: {kind: 'rectangle', width: 150, height: 150, position: [300, 100, 300], aim: [0, 0, 45], power: -1},
  window: {kind: 'rectangle', width: 600, height: 800, position: [-900, 100, 500], aim: [0, 100, 500], power: 1},
  ceiling: {kind: 'rectangle', width: 130, height: 130, position: [70, 170, 620], aim: [40, 230, 0], power: 2.5},
};

/** The shot with one thing more, and what it is. `name` is the reader's word for a new lamp. */
export function added(what: Added, name: string, shot: Shot): {readonly changes: Partial<Shot>; readonly thing: Thing} {
  const {lights, backdropDistance} = shot;
  if (what === 'flag') {
    const flag: Flag = {position: [0, Math.round(backdropDistance * 0.6), 300], facing: [0, 1, 0], width: 200, height: 200};
    return {changes: {lights: {...lights, flags: [...lights.flags, flag]}}, thing: `flag${lights.flags.length}`};
  }
  const taken = lights.lamps.filter((lamp) => lamp.name.startsWith(name)).length;
  const lamp = {...PRESETS[what], name: cleanName(taken ? `${name} ${taken + 1}` : name)};
  const next: Lights = {...lights, lamps: [...lights.lamps, lamp]};
  return {changes: {lights: next}, thing: `lamp${lights.lamps.length}`};
}

/** Turn from facing the camera, to the right positive, and lean upwards of a card; degrees. */
export function facingAngles([x, y, z]: Point): readonly [turn: number, lean: number] {
  const degrees = 180 / Math.PI;
  // A card looks the same from behind: the face towards the backdrop is described.
  const [a, b, c] = y < 0 || (y === 0 && x < 0) ? [-x, -y, -z] : [x, y, z];
  return [Math.hypot(a, b) < 1e-9 ? 0 : Math.atan2(a, b) * degrees, Math.atan2(c, Math.hypot(a, b)) * degrees];
}

/** Facing of a card turned and leaning so; degrees. */
export function facingFrom(turn: number, lean: number): Point {
  const [t, l] = [turn * Math.PI / 180, lean * Math.PI / 180];
  const clean = (part: number): number => +part.toFixed(6) + 0;
  return [clean(Math.sin(t) * Math.cos(l)), clean(Math.cos(t) * Math.cos(l)), clean(Math.sin(l))];
}

/** A step of a thing, mm. */
export const stepped = (thing: Thing, step: Point, shot: Shot): Point => along(positionOf(thing, shot), step, 1);
