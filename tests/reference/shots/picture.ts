import {existsSync, readFileSync} from 'node:fs';
import sharp from 'sharp';
import type {Sharp} from 'sharp';
import type {CodeShift} from '../../../src/core/tone/level.js';
import type {Crop, Pixels} from '../../../src/core/tone/pixels.js';
import {readCellMeans} from '../../../src/photo/jpeg-cells.js';
import {roundedOff} from '../../../src/photo/rounded-off.js';

/** Ground truth of one rendered picture of the figure, as far as tests of its pixels ask for it. */
export interface ShotTruth {
  readonly file: string;
  readonly tags: readonly string[];
  readonly exposure: {readonly ev_offset: number};
  readonly lights: Readonly<Record<string, {readonly gain: number; readonly linear_rgb: readonly [number, number, number]}>>;
  readonly camera: {readonly aperture_diameter_mm: number; readonly focus_distance_lens_mm: number;
    readonly magnification: number; readonly pixel_pitch_mm: number;};
  readonly scene: {
    readonly ruler: {readonly mark_mm_of: {readonly focus_plane: number}};
    readonly backdrop: {readonly probe_rect_px?: Rectangle};
  };
  readonly card?: {readonly patches_px: Readonly<Record<'white' | 'gray' | 'black', PatchTruth>>};
  readonly ruler_marks_px: readonly RulerMark[];
  readonly figure_bbox_px: Rectangle;
  readonly measured: {
    readonly frame: {readonly clipped_fraction_any_channel: number};
    readonly backdrop_probe: {readonly mean_linear: readonly [number, number, number]} | null;
  };
}

export interface RulerMark {
  readonly mark_mm: number;
  readonly edge_px: readonly [number, number];
  readonly tick_inner_px: readonly [number, number];
  readonly depth_from_lens_mm: number;
}

export interface PatchTruth {
  readonly corners: readonly (readonly [number, number])[];
  readonly rect: Rectangle;
  readonly mean_linear: readonly [number, number, number];
}

/** x, y, width, height, px. */
export type Rectangle = readonly [number, number, number, number];

export interface ChartTruth {
  readonly file: string;
  readonly strips: readonly {readonly render: string; readonly strip_rect_px: Rectangle;
    readonly dots: readonly {readonly depth_mm: number; readonly centre_px: readonly [number, number];
      readonly measured_blur_px: number;}[];}[];
}

const all = JSON.parse(readFileSync(new URL('shots.json', import.meta.url), 'utf8')).shots as readonly (ShotTruth | ChartTruth)[];

/** Every rendered picture of the figure, in the order of the file. */
export const shots: readonly ShotTruth[] = all.filter((shot): shot is ShotTruth => 'camera' in shot);

/** The depth chart. */
export const chart = all.find((shot): shot is ChartTruth => 'strips' in shot) as ChartTruth;

/** Truth of the picture `name`, without its ending. */
export function truthOf(name: string): ShotTruth {
  const found = shots.find(({file}) => file === `${name}.jpg`);
  if (!found) throw new Error(`no rendered shot ${name}`);
  return found;
}

const loaded = new Map<string, Promise<Pixels>>();

/** Pixels of the picture `name`, decoded by sharp. */
export function picture(name: string): Promise<Pixels> {
  let pixels = loaded.get(name);
  if (!pixels) loaded.set(name, pixels = decode(name));
  return pixels;
}

async function decode(name: string): Promise<Pixels> {
  return pixelsOf(sharp(fileOf(name)));
}

/** Bytes of the picture `name`. The demo's copies are used where it has them. */
export function fileOf(name: string): Uint8Array<ArrayBuffer> {
  const places = [`${name}.jpg`, `../../../demo/shots/${name}.jpg`].map((path) => new URL(path, import.meta.url));
  const found = places.find((place) => existsSync(place));
  if (!found) throw new Error(`no picture ${name}`);
  return new Uint8Array(readFileSync(found));
}

/** What decoding the picture `name` rounded off a region. */
export async function shiftsIn(name: string): Promise<(region: Crop) => CodeShift> {
  const [pixels, cells] = [await picture(name), await readCellMeans(fileOf(name), () => undefined)];
  if (!cells) throw new Error(`no cells in ${name}`);
  return (region) => roundedOff(cells, pixels, region, 1);
}

/** Pixels of anything sharp can make. */
export async function pixelsOf(image: Sharp): Promise<Pixels> {
  const {data, info} = await image.ensureAlpha().raw().toBuffer({resolveWithObject: true});
  return {data: new Uint8ClampedArray(data.buffer, data.byteOffset, data.length), width: info.width, height: info.height};
}

/** sharp's view of a picture in memory. */
export function sharpOf({data, width, height}: Pixels): Sharp {
  return sharp(data, {raw: {width, height, channels: 4}});
}

/** A rectangle of the truth as a crop. */
export function cropOf([x, y, width, height]: Rectangle): Crop {
  return {x, y, width, height};
}
