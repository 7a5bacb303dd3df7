import type {PhotoPoint} from '../../core/optics/ruler.js';

/** What was marked and read on rulers. It lies on the bench, so that linked elements and later visits find it. */
export interface RulerNotes {
  /** Two points of the photo, as shares of its width and height. */
  readonly points: readonly [PhotoPoint, PhotoPoint];
  /** Length between them, as typed. */
  readonly apart: string;
  /** Graduations as typed: at the base's front edge, the nearest and the farthest that still look sharp. */
  readonly zero: string;
  readonly nearest: string;
  readonly farthest: string;
}

/** Nothing marked yet: two points that lie where a ruler in front of the figure would. */
export const NO_NOTES: RulerNotes = {points: [{x: 0.25, y: 0.6}, {x: 0.75, y: 0.6}], apart: '', zero: '', nearest: '', farthest: ''};

/** What of an open photo is shown here. */
export interface ShownPhoto {
  readonly width: number;
  readonly height: number;
  readonly preview: ImageBitmap;
}
