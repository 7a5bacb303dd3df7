import {blurLimit, onePixel, type FinishedPicture} from '../optics/blur.js';
import type {Framing} from '../optics/fit.js';
import {airyDiameter, magnificationFromField, workingAperture} from '../optics/lens.js';
import type {Outline} from '../optics/outline.js';
import type {Shot} from './shot.js';

/** What of a shot the optics ask for: figure, lens, focus and limit, and what becomes of the frame. */
export interface ShotFraming {
  readonly framing: Framing;
  readonly picture: FinishedPicture;
  /** Pixels of the sensor across the kept picture. */
  readonly pixelsAcross: number;
}

/** The figure as the optics take it. */
export const outlineOf = (shot: Shot): Outline => ({
  baseDepth: shot.baseDepth, height: shot.figureHeight,
  overhangFront: shot.overhangFront, overhangFrontHeight: shot.overhangFrontHeight,
  overhangBack: shot.overhangBack, overhangBackHeight: shot.overhangBackHeight,
});

/**
 * A shot as the functions of the optics take it.
 * @throws {Problem} `sensor-width`, `field-width`, `picture-width`, `blur-limit`
 * Source: definitions; the kept width is the crop's share of the sensor.
 */
export function framingOf(shot: Shot): ShotFraming {
  const picture = {keptWidth: shot.sensorWidth * shot.crop.width, pictureWidth: shot.pictureWidth};
  return {
    picture,
    pixelsAcross: shot.frameWidth * shot.crop.width,
    framing: {
      outline: outlineOf(shot),
      tilt: shot.tilt,
      lens: {
        focalLength: shot.focalLength, aperture: shot.aperture, pupilRatio: shot.pupilRatio,
        magnification: magnificationFromField(shot.sensorWidth, shot.fieldWidth),
      },
      focus: shot.focus,
      limit: blurLimit(shot.blurLimit, picture),
    },
  };
}

/**
 * Width to which diffraction draws a point, whatever is in focus.
 * @returns pixels of the finished picture, > 0
 * @throws {Problem} as {@link framingOf}; `aperture`, `pupil-ratio`
 * Source: Airy disc at the working f-number, as `airyDiameter`.
 */
export function diffractionInPixels(shot: Shot): number {
  const {framing: {lens}, picture} = framingOf(shot);
  return airyDiameter(workingAperture(lens.aperture, lens.magnification, lens.pupilRatio)) / onePixel(picture);
}
