import {blurInPixels} from '../../core/optics/blur.js';
import {zoneFit, type ZoneFit} from '../../core/optics/fit.js';
import {pupilToSubject, sensorToSubject} from '../../core/optics/lens.js';
import {axialToRuler} from '../../core/optics/outline.js';
import type {Shot} from '../../core/shot/shot.js';
import {diffractionInPixels, framingOf, type ShotFraming} from '../../core/shot/framing.js';
import {waysOfShot, type Ways} from '../../core/shot/ways-out.js';

/**
 * Everything the element says of one shot. Marks are mm on a flat ruler on the table, zero at the base's front edge,
 * growing away from the camera; with the camera tilted they are where a slanting plane of equal depth meets the table.
 */
export interface Reading extends ShotFraming {
  readonly shot: Shot;
  readonly fit: ZoneFit;
  /** Where the sharp zone begins and ends; `to` may be Infinity. */
  readonly from: number;
  readonly to: number;
  /** mm on the ruler to one mm along the line of sight. */
  readonly along: number;
  /** Marks of the foremost and the rearmost point. */
  readonly front: number;
  readonly back: number;
  /** Finished pixels of blur at those points, at any mark, and of diffraction. */
  readonly blurFront: number;
  readonly blurBack: number;
  readonly blurAt: (mark: number) => number;
  /** Mark just before the lens; nothing nearer can be drawn. */
  readonly nearest: number;
  readonly airy: number;
  /** mm from the mark of the sensor on the body to the focus plane. */
  readonly cameraDistance: number;
  readonly ways: Ways;
}

/** @throws {Problem} as the optics do, naming the value that cannot be */
export function readShot(shot: Shot): Reading {
  const framed = framingOf(shot);
  const {framing, picture} = framed;
  const {lens, tilt} = framing;
  const fit = zoneFit(framing);
  const along = axialToRuler(1, tilt);
  const blurAtDepth = (depth: number): number => blurInPixels(lens, depth - fit.focusDepth, picture);
  return {
    ...framed, shot, fit, along,
    from: (fit.focusDepth - fit.zone.near) * along,
    to: (fit.focusDepth + fit.zone.far) * along,
    front: fit.depth.front * along,
    back: fit.depth.back * along,
    blurFront: blurAtDepth(fit.depth.front),
    blurBack: blurAtDepth(fit.depth.back),
    blurAt: (mark) => blurAtDepth(mark / along),
    nearest: (fit.focusDepth - pupilToSubject(lens) * 0.98) * along,
    airy: diffractionInPixels(shot),
    cameraDistance: sensorToSubject(lens.magnification, lens.focalLength),
    ways: waysOfShot(shot, framed),
  };
}

/** Whether one frame will not do, wherever the focus is. */
export const needsStack = ({fit, ways}: Reading): boolean => fit.end !== null && !ways.ways.some(({kind}) => kind === 'refocus');
