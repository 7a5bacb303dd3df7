import {readFileSync} from 'node:fs';

/** Camera of a rendered picture. The pictures follow a thin lens: distances from the lens are those of the pupil. */
export interface RenderedCamera {
  readonly sensor_mm: readonly [number, number];
  readonly resolution_px: readonly [number, number];
  readonly focal_length_mm: number;
  readonly f_number: number;
  readonly focus_distance_lens_mm: number;
  readonly tilt_down_deg: number;
  readonly magnification: number;
  readonly sensor_to_focus_plane_mm: number;
  readonly aperture_diameter_mm: number;
  readonly field_width_at_focus_mm: number;
  readonly pixel_pitch_mm: number;
}

export interface RenderedShot {
  readonly file: string;
  readonly camera: RenderedCamera;
  readonly scene: {
    readonly base: {readonly depth_y: number; readonly front_y: number; readonly back_y: number};
    readonly ruler: {readonly mark_mm_of: {readonly base_front: number; readonly base_back: number;
      readonly focus_plane: number;};};
  };
  readonly depths_from_lens_mm: {readonly base_front_table: number; readonly base_back_table: number;
    readonly focus_plane: number;};
  readonly ruler_marks_px: readonly {readonly mark_mm: number; readonly depth_from_lens_mm: number}[];
  readonly equivalent_crop_px?: readonly [number, number, number, number];
}

export interface ChartStrip {
  readonly render: string;
  readonly camera: RenderedCamera;
  readonly dots: readonly {readonly depth_mm: number; readonly distance_mm: number; readonly measured_blur_mm: number;
    readonly measured_blur_px: number; readonly pinhole_blur_mm: number;}[];
}

interface Truth {
  readonly shots: readonly (RenderedShot | {readonly file: string; readonly strips: readonly ChartStrip[]})[];
}

const truth = (): Truth =>
  JSON.parse(readFileSync(new URL('../../reference/shots/shots.json', import.meta.url), 'utf8')) as Truth;

/** Every rendered picture of the figure: ground truth of tests/reference/shots/shots.json, invented by the project. */
export function renderedShots(): RenderedShot[] {
  return truth().shots.filter((shot): shot is RenderedShot => 'camera' in shot);
}

/** The strips of dots at known depths, each measured in the linear render. */
export function chartStrips(): readonly ChartStrip[] {
  return truth().shots.flatMap((shot) => ('strips' in shot ? shot.strips : []));
}
