import {readFileSync} from 'node:fs';
import type {Lamp} from '../../../src/core/light/lamp.js';
import type {TableSet} from '../../../src/core/light/set.js';

type Triple = readonly [number, number, number];

interface RenderedShot {
  readonly file: string;
  readonly lights: Readonly<Record<string, {readonly gain: number}>>;
  readonly lamps: Readonly<Record<string, {
    readonly position_mm: Triple; readonly aimed_at_mm: Triple; readonly size_mm: readonly [number, number];
    readonly render_watt: number;
  }>>;
  readonly flag_box_mm?: {readonly lo: Triple; readonly hi: Triple};
  readonly camera: {readonly lens_position_mm: Triple};
  readonly scene: {
    readonly figure: {readonly min_xyz: Triple; readonly max_xyz: Triple};
    readonly backdrop: {
      readonly upright_face_y: number; readonly reflectance_linear: number; readonly probe_centre_mm: Triple;
    };
  };
  readonly measured: {readonly backdrop_probe: {
    readonly mean_linear: Triple; readonly by_lamp: Readonly<Record<string, Triple>>;
  }};
}

/** Ground truth of one rendered picture (invented, CC0 1.0): tests/reference/README.md. */
export interface Rendered {
  readonly set: TableSet;
  readonly lampNames: readonly string[];
  /** x and z of the middle of the probe on the backdrop, mm. */
  readonly probe: readonly [number, number];
  /** Green mean of the linear picture there: all lamps, and each alone. */
  readonly measured: number;
  readonly measuredByLamp: Readonly<Record<string, number>>;
}

/** The set of `backdrop-NAME.jpg`, from its geometry and its lamps' watts alone. */
export function rendered(name: string): Rendered {
  const all = JSON.parse(readFileSync(new URL('../../reference/shots/shots.json', import.meta.url), 'utf8')) as
    {readonly shots: readonly RenderedShot[]};
  const shot = all.shots.find(({file}) => file === `backdrop-${name}.jpg`);
  if (!shot) throw new Error(`no rendered shot backdrop-${name}.jpg`);
  const {figure, backdrop} = shot.scene;
  const lampNames = Object.keys(shot.lights);
  const probe = backdrop.probe_centre_mm;
  const seen = shot.measured.backdrop_probe;
  return {
    lampNames,
    set: {
      lamps: lampNames.map((lamp) => lampOf(shot, lamp)),
      flags: shot.flag_box_mm ? [flagOf(shot.flag_box_mm)] : [],
      // The truth gives lamp distances to the point the lamps are aimed at, for a surface that faces −y.
      figure: {card: [0, 0, 45], facing: [0, -1, 0], least: figure.min_xyz, most: figure.max_xyz},
      backdrop: {distance: backdrop.upright_face_y, reflectance: backdrop.reflectance_linear},
      camera: shot.camera.lens_position_mm,
    },
    probe: [probe[0], probe[2]],
    measured: seen.mean_linear[1],
    measuredByLamp: Object.fromEntries(Object.entries(seen.by_lamp).map(([lamp, mean]) => [lamp, mean[1]])),
  };
}

function lampOf(shot: RenderedShot, name: string): Lamp {
  const lamp = shot.lamps[name];
  const gain = shot.lights[name]?.gain;
  if (!lamp || gain === undefined) throw new Error(`no lamp ${name} in ${shot.file}`);
  return {
    kind: 'rectangle', position: lamp.position_mm, aim: lamp.aimed_at_mm,
    width: lamp.size_mm[0], height: lamp.size_mm[1], power: Math.log2(lamp.render_watt * gain),
  };
}

function flagOf({lo, hi}: {readonly lo: Triple; readonly hi: Triple}): TableSet['flags'][number] {
  return {
    position: [(lo[0] + hi[0]) / 2, (lo[1] + hi[1]) / 2, (lo[2] + hi[2]) / 2],
    facing: [0, 1, 0], width: hi[0] - lo[0], height: hi[2] - lo[2],
  };
}
