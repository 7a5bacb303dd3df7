import {Problem, requireNotNegative, requirePositive} from '../problem.js';
import {axialDepth, outlinePoints} from './outline.js';
import type {Outline} from './outline.js';

/** A figure in a picture: its outline drawn out to its whole width, and how it is to sit in the frame. */
export interface FigureInPicture {
  readonly outline: Outline;
  /** Degrees the camera looks down */
  readonly tilt: number;
  /** mm across, > 0 */
  readonly figureWidth: number;
  /** Finished picture, pixels, each > 0 */
  readonly pictureWidth: number;
  readonly pictureHeight: number;
  /** Left free on all four sides, as a share of the picture's width; 0 up to where nothing is left for the figure */
  readonly margin: number;
}

/** The field a figure takes from one place. */
export interface FigureField {
  /** mm of the focus plane across the finished picture */
  readonly fieldWidth: number;
  /** Where the optical axis meets the focus plane when the figure sits in the middle, as in an outline */
  readonly aim: {readonly y: number; readonly z: number};
}

/**
 * Field that just holds the figure with its margin, in perspective: what stands before the focus plane is drawn larger.
 * @returns for each place of the camera, given as mm from the entrance pupil to the focus plane, and the axial depth
 * of the focus plane (0 at the base's front edge on the table), the field
 * @throws {Problem} `figure-width`, `picture-width`, `picture-height`, `margin`, or as for an outline; the function
 * returned `camera-distance` when a part of the figure lies at or behind the pupil
 * Source: central projection. Of two points at heights v1, v2 over the axis and depths x1, x2, centred, the picture
 * spans (v1 − v2)·u / (u + (x1 + x2)/2) of the focus plane; the pair that spans most decides.
 */
export function figureField(figure: FigureInPicture): (distance: number, focusDepth: number) => FigureField {
  const {outline, tilt, figureWidth, pictureWidth, pictureHeight, margin} = figure;
  requirePositive('figure-width', figureWidth);
  requirePositive('picture-width', pictureWidth);
  requirePositive('picture-height', pictureHeight);
  requireNotNegative('margin', margin);
  const ratio = pictureHeight / pictureWidth;
  const room = Math.min(1, ratio) - 2 * margin;
  if (!(room > 0)) throw new Problem('margin', margin, `a share below ${Math.min(1, ratio) / 2}`);
  const points = outlinePoints(outline).map(({y, z}) => ({depth: axialDepth(y, z, tilt), up: axialDepth(z, -y, tilt)}));
  const foremost = Math.min(...points.map(({depth}) => depth));
  const angle = tilt * Math.PI / 180;
  return (distance, focusDepth) => {
    const nearest = distance + foremost - focusDepth;
    if (!(nearest > 0)) {
      throw new Problem('camera-distance', distance, `more than ${distance - nearest} mm from the pupil`);
    }
    let height = 0;
    let centre = points[0]?.up ?? 0;
    for (const one of points) {
      const far = distance + one.depth - focusDepth;
      for (const other of points) {
        const further = distance + other.depth - focusDepth;
        const span = 2 * (one.up - other.up) * distance / (far + further);
        if (span > height) {
          height = span;
          centre = (one.up * further + other.up * far) / (far + further);
        }
      }
    }
    return {
      fieldWidth: Math.max(figureWidth * distance / nearest / (1 - 2 * margin), height / (ratio - 2 * margin)),
      aim: {
        y: focusDepth * Math.cos(angle) + centre * Math.sin(angle),
        z: centre * Math.cos(angle) - focusDepth * Math.sin(angle),
      },
    };
  };
}
