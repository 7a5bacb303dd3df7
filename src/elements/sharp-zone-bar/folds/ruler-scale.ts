import {rulerScale, type PhotoPoint, type RulerScale} from '../../../core/optics/ruler.js';
import {Problem} from '../../../core/problem.js';
import type {Shot} from '../../../core/shot/shot.js';
import {readLength} from '../../../core/units.js';
import type {RulerNotes} from '../ruler-notes.js';

/** Pixels of a photo, the right way up. */
export interface PhotoSize {
  readonly width: number;
  readonly height: number;
}

/** Whether a photo has the sensor's shape within this share; beyond, somebody cropped it. */
const SAME_SHAPE = 0.03;

/** Two points can be set that well and no better: half a per cent. */
const SET_AS_WELL = 0.005;

/** Whether the field is framed as the points say. */
export const isSet = ({fieldWidth}: RulerScale, shot: Shot): boolean => Math.abs(fieldWidth / shot.fieldWidth - 1) < SET_AS_WELL;

/** Length of the longer side over the shorter: it does not matter how the camera is held. */
const shape = (width: number, height: number): number => Math.max(width, height) / Math.min(width, height);

/** Whether the photo is no longer the whole frame, as far as its shape tells. */
export const looksCropped = (photo: PhotoSize, {sensorWidth, sensorHeight}: Shot): boolean =>
  Math.abs(shape(photo.width, photo.height) / shape(sensorWidth, sensorHeight) - 1) > SAME_SHAPE;

/**
 * What the marked points say of the field; `undefined` until a length is typed, a problem when it cannot be. The field is
 * the one along the sensor's width, whichever way up the photo was taken.
 */
export function fieldFromNotes({points, apart}: RulerNotes, photo: PhotoSize, shot: Shot): RulerScale | Problem | undefined {
  if (!apart.trim()) return undefined;
  const length = readLength('ruler-length', apart, shot.unit);
  if (length instanceof Problem) return length;
  const [one, other] = points.map(({x, y}) => ({x: x * photo.width, y: y * photo.height})) as [PhotoPoint, PhotoPoint];
  const sameWay = (photo.width >= photo.height) === (shot.sensorWidth >= shot.sensorHeight);
  try {
    return rulerScale(one, other, length, sameWay ? photo.width : photo.height, shot.sensorWidth);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return error.parameter === 'ruler-length' ? new Problem(error.parameter, apart, error.wanted) : error;
  }
}
