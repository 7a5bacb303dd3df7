import {Problem} from '../problem.js';
import {readNumber} from '../units.js';
import {outside, type Field, type ShotFields} from './field.js';
import {choice, count} from './field-kinds.js';
import type {CropShare} from './shot.js';

type PictureKey = 'crop' | 'pictureWidth' | 'pictureHeight' | 'margin' | 'intent' | 'unit' | 'note';

/** Fields of the finished picture and of how the shot is spoken of. */
export const PICTURE_FIELDS: ShotFields<PictureKey> = /* @__PURE__ */ fields();

function fields(): ShotFields<PictureKey> {
  return {
    crop: {read: readCrop, write: writeCrop, refuse: refuseCrop},
    pictureWidth: count('pictureWidth'),
    pictureHeight: count('pictureHeight'),
    margin: margin(),
    intent: choice('intent', ['dark-backdrop', 'even']),
    unit: choice('unit', ['mm', 'cm', 'in']),
    note: {
      read: (text) => text, write: (value) => value,
      refuse: (value) => (typeof value === 'string' ? undefined : new Problem('note', value, 'text')),
    },
  };
}

/** `8%`, `8` and `0.08` are the same margin. */
function margin(): Field<number> {
  const wanted = 'a share of the picture’s width below 45%, such as 8%';
  const refuse = (value: number) => outside('margin', value, 0, 0.45, wanted);
  return {
    read: (text) => {
      const value = readNumber(text.replace(/\s*%\s*$/, '')) ?? NaN;
      const share = value >= 1 || text.includes('%') ? value / 100 : value;
      return refuse(share) ? new Problem('margin', text, wanted) : share;
    },
    write: (share) => `${+(share * 100).toPrecision(6)}%`,
    refuse,
  };
}

const CROP_WANTED = 'four shares of the frame: left, top, width, height, such as 10% 5% 80% 90%';

/** `10% 5% 80% 90%` or `0.1 0.05 0.8 0.9`. */
function readCrop(text: string): CropShare | Problem {
  const parts = text.trim().split(/[\s;]+/);
  const [left, top, width, height] = parts.map((part) => {
    const value = readNumber(part.replace(/%$/, ''));
    return value === undefined ? NaN : part.endsWith('%') ? value / 100 : value;
  });
  if (parts.length !== 4) return new Problem('crop', text, CROP_WANTED);
  const crop = {left, top, width, height} as CropShare;
  return refuseCrop(crop) ? new Problem('crop', text, CROP_WANTED) : crop;
}

function writeCrop({left, top, width, height}: CropShare): string {
  return [left, top, width, height].map((share) => `${+(share * 100).toFixed(2)}%`).join(' ');
}

/** Room for the rounding of shares that were worked out from pixels. */
const SHARE_SLACK = 1e-9;

function refuseCrop(crop: CropShare): Problem | undefined {
  // A script may give anything, null too.
  const {left, top, width, height} = (crop ?? {});
  const inside = [left, top, width, height].every(Number.isFinite) && left >= 0 && top >= 0 && width > 0 && height > 0
    && left + width <= 1 + SHARE_SLACK && top + height <= 1 + SHARE_SLACK;
  return inside ? undefined : new Problem('crop', crop, CROP_WANTED);
}
