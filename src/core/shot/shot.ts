import type {Lights} from '../light/set-text.js';
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
  /** Share of the light the backdrop throws back, above 0 up to 1. */
  readonly backdropReflectance: number;
  /** Stops below the gray card that the backdrop should have; positive = darker. */
  readonly backdropWish: number;
  /** Lamps and flags. */
  readonly lights: Lights;
  readonly intent: Intent;
  /** Unit lengths are shown in. */
  readonly unit: LengthUnit;
  /** Lenses at hand, mm, the one that is mounted first. Without it the one in use. */
  readonly focalLengths: readonly number[];
  /** Nearest focus of each of them, mm from the sensor mark; where nothing is said, as near as wanted. */
  readonly closestFocus: readonly number[];
  /** Magnification at which the light was metered behind the lens; 0 = by a hand-held meter. Without it the one in use. */
  readonly meteredMagnification: number;
  /** Which f-number the body shows in close-up. The f-numbers of a shot are the marked ones all the same. */
  readonly apertureShown: ApertureShown;
  /** Figure from side to side, mm. Without it as wide as its base is deep. */
  readonly figureWidth: number;
  /** Pixels down the finished picture. Without it what the crop makes of the width. */
  readonly pictureHeight: number;
  /** Left free around the figure, as a share of the picture's width. */
  readonly margin: number;
  /** As far back as the tripod can go, mm from the sensor mark to the focus plane. */
  readonly room: number;
  /** Most frames to take and blend; 1 = no stack. */
  readonly mostFrames: number;
  /** Contrast the finest line has to keep, above 0 up to 1. */
  readonly leastContrast: number;
  readonly note: string;
}

/** The f-number as engraved for infinity, or with the light that close-up takes counted in. */
export type ApertureShown = 'marked' | 'working';

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
  focalLengths: [60], closestFocus: [], meteredMagnification: 0.2, apertureShown: 'marked', figureWidth: 60, pictureHeight: 1067,
  margin: 0.08, room: 1500, mostFrames: 12, leastContrast: 0.3, backdropReflectance: 0.04, backdropWish: 4.5,
  lights: {
    lamps: [
      {name: 'key', kind: 'rectangle', width: 180, height: 180, position: [-230, -200, 300], aim: [0, 0, 45], power: 0},
      {name: 'fill', kind: 'rectangle', width: 420, height: 420, position: [360, -330, 180], aim: [0, 0, 45], power: -1.5},
    ],
    flags: [], table: 0,
  },
};

/**
 * The shot of whatever was stated, with a plausible default for the rest. What was metered follows the setting, the lens
 * at hand the one in use, and a figure or picture of which one side is known takes the other from it.
 */
export function completeShot(values: Partial<Shot>): Shot {
  const shot = {...DEFAULT_SHOT, ...values};
  const {aperture, shutter, iso, focalLength, sensorWidth, sensorHeight, crop, pictureWidth} = shot;
  return {
    ...shot, meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso,
    meteredMagnification: sensorWidth / shot.fieldWidth, focalLengths: [focalLength], figureWidth: shot.baseDepth,
    pictureHeight: Math.max(1, Math.round(pictureWidth * sensorHeight * crop.height / (sensorWidth * crop.width))),
    ...values,
  };
}
