import type {Setting} from '../exposure/stops.js';
import type {ClicksPerStop} from '../exposure/clicks.js';
import type {Intent} from '../tone/advice.js';
import type {LengthUnit} from '../units.js';

export type {Intent};

/** The part of the frame that will be kept, as shares of its width and height; `left` and `top` from the corner. */
export interface CropShare {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/**
 * One shot as it stands on the table: everything set, and the figure it is set for. The keys are the shared
 * vocabulary: in kebab-case they are the attributes of the elements. Lengths mm, times s, angles degrees, light in
 * stops (positive = brighter).
 */
export interface Shot {
  /** f-number as marked for infinity. */
  readonly aperture: number;
  /** Exposure time, s. */
  readonly shutter: number;
  /** ISO speed, arithmetic. */
  readonly iso: number;
  /** The exposure the meter or a trial shot gave, from which a trade starts. Without it the setting itself. */
  readonly meteredAperture: number;
  readonly meteredShutter: number;
  readonly meteredIso: number;
  /** What the next shot should be brighter by, stops; a meter that shows two under asks for +2. */
  readonly correction: number;
  /** Which setting answers a change of another. */
  readonly pay: Setting;
  /** Clicks of the body's dials to one stop. */
  readonly clicksPerStop: ClicksPerStop;
  /** f-number fully open. */
  readonly apertureWidest: number;
  /** f-number fully closed. */
  readonly apertureSmallest: number;
  /** Shortest time of the body, s. */
  readonly shutterFastest: number;
  /** Longest timed exposure of the body, s. */
  readonly shutterSlowest: number;
  /** Base ISO of the body. */
  readonly isoLowest: number;
  /** Highest ISO the photographer would use. */
  readonly isoHighest: number;
  readonly focalLength: number;
  /** Exit pupil / entrance pupil; 1 when unknown. */
  readonly pupilRatio: number;
  readonly sensorWidth: number;
  readonly sensorHeight: number;
  /** Width that fills the frame in the focus plane, mm. */
  readonly fieldWidth: number;
  /** Pixels across the frame as the camera records it. */
  readonly frameWidth: number;
  /** Part of the frame that is kept. */
  readonly crop: CropShare;
  /** Pixels across the finished picture, which shows the crop. */
  readonly pictureWidth: number;
  /** Blur that still looks sharp, in finished pixels. */
  readonly blurLimit: number;
  /** Front edge to back edge of the base, mm. */
  readonly baseDepth: number;
  /** How far the figure reaches past the base's front edge, mm, and how high above the table it does so. */
  readonly overhangFront: number;
  readonly overhangFrontHeight: number;
  /** The same past the back edge. */
  readonly overhangBack: number;
  readonly overhangBackHeight: number;
  /** Top of the figure above the table, mm. */
  readonly figureHeight: number;
  /** How far the camera looks down, degrees. */
  readonly tilt: number;
  /** Focus plane, measured at table height behind the base's front edge, mm; negative = before it. */
  readonly focus: number;
  /** Base centre to the backdrop, mm. */
  readonly backdropDistance: number;
  readonly intent: Intent;
  /** Unit lengths are shown in. */
  readonly unit: LengthUnit;
  readonly note: string;
}

export type ShotKey = keyof Shot;

/**
 * What an element shows of a shot nobody has described yet: an ordinary camera, a figure on a 60 mm base, nothing
 * cropped. Invented, and chosen so that every part of it is plausible together.
 */
export const DEFAULT_SHOT: Shot = {
  aperture: 8, shutter: 0.25, iso: 100, meteredAperture: 8, meteredShutter: 0.25, meteredIso: 100, correction: 0, pay: 'shutter', clicksPerStop: 3,
  apertureWidest: 2.8, apertureSmallest: 22, shutterFastest: 1 / 4000, shutterSlowest: 30, isoLowest: 100, isoHighest: 6400,
  focalLength: 60, pupilRatio: 1, sensorWidth: 36, sensorHeight: 24, fieldWidth: 180, frameWidth: 6000,
  crop: {left: 0, top: 0, width: 1, height: 1}, pictureWidth: 1600, blurLimit: 1.5,
  baseDepth: 60, overhangFront: 0, overhangFrontHeight: 0, overhangBack: 0, overhangBackHeight: 0,
  figureHeight: 75, tilt: 0, focus: 25, backdropDistance: 500, intent: 'dark-backdrop', unit: 'mm', note: '',
};

/** The shot of whatever was stated, with a plausible default for the rest. The metered exposure follows the setting. */
export function completeShot(values: Partial<Shot>): Shot {
  const {aperture, shutter, iso} = {...DEFAULT_SHOT, ...values};
  return {...DEFAULT_SHOT, meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso, ...values};
}
