import {Problem} from '../../core/problem.js';
import type {Measured} from '../../core/shot/record.js';
import type {CropShare} from '../../core/shot/shot.js';
import {edgesOf} from '../../core/tone/clipping.js';
import type {Photo} from '../../photo/open.js';

/** What the photo's crop does at the edges of the tonal chart; nothing when the photo was closed meanwhile. */
export async function measureCrop(photo: Photo, {left, top, width, height}: CropShare): Promise<Measured> {
  const [x, y] = [Math.floor(left * photo.width), Math.floor(top * photo.height)];
  const crop = {
    x, y, width: Math.max(1, Math.min(photo.width - x, Math.round(width * photo.width))),
    height: Math.max(1, Math.min(photo.height - y, Math.round(height * photo.height))),
  };
  try {
    const {anyAtBlack, anyAtWhite, red, green, blue} = edgesOf(await photo.tally(crop));
    const colours = [red, green, blue];
    return {
      atBlack: anyAtBlack, atWhite: anyAtWhite,
      roomBelow: Math.min(...colours.map(({roomBelow}) => roomBelow)), roomAbove: Math.min(...colours.map(({roomAbove}) => roomAbove)),
    };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return {};
  }
}

/** What the photo's file says. */
export function fileFacts({name, width, height, settings}: Photo): Measured {
  const {takenAt, aperture, shutter, iso} = settings;
  return {
    ...(name && {photo: name.slice(0, 200)}), ...(takenAt && {taken: takenAt}), width, height,
    ...(aperture && {aperture}), ...(shutter && {shutter}), ...(iso && {iso}),
  };
}
