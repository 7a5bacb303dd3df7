import {completeShot, type CropShare, type Shot} from '../../../core/shot/shot.js';

/** Name under which it lies on the bench, beside the photo. */
export const PHOTO_PLACE = 'photoPlace';

/**
 * Where a photo was taken from, and what is kept of it. Its crop is the shot's, until a way out or a plan moves the camera
 * and draws in the crop with it, in one step: that crop is for the next shot, and the photo goes on with the one it had, until
 * the camera is back.
 */
export class PhotoPlace {
  /** The photo's own crop, while the shot's is meant for another place. */
  crop: CropShare | undefined;
  /** Width that filled its frame, mm; while nobody has stated one, the first to do so speaks of the photo too. */
  fieldWidth: number | undefined;
  #sensorWidth: number;
  /** Field width of the shot when it moved away. */
  #left: number | undefined;
  #seen: Partial<Shot>;

  /** @param stated - what is stated of the shot as the photo opens */
  constructor(stated: Partial<Shot>) {
    this.#seen = stated;
    this.fieldWidth = stated.fieldWidth;
    this.#sensorWidth = completeShot(stated).sensorWidth;
  }

  /** Magnification of the photo, once a width was stated. */
  get magnification(): number | undefined {
    return this.fieldWidth && this.#sensorWidth / this.fieldWidth;
  }

  /** Takes note of what is stated of the shot now. To be told of every change by itself. */
  follow(stated: Partial<Shot>): void {
    if (stated === this.#seen) return;
    const [before, now] = [completeShot(this.#seen), completeShot(stated)];
    this.#seen = stated;
    if (now.fieldWidth === this.#left) {
      this.crop = this.#left = undefined;
    } else if (this.#left === undefined && before.fieldWidth !== now.fieldWidth && before.crop !== now.crop) {
      this.fieldWidth ??= before.fieldWidth;
      this.#left = before.fieldWidth;
      this.crop = before.crop;
    }
    this.fieldWidth ??= stated.fieldWidth;
    // Put right by itself the sensor is the photo's too; with the field the camera was turned.
    if (this.#left === undefined && before.fieldWidth === now.fieldWidth) this.#sensorWidth = now.sensorWidth;
  }
}

/** Part of the open photo that is kept. */
export function photoCrop(place: PhotoPlace | undefined, shot: Shot): CropShare {
  return place?.crop ?? shot.crop;
}

/** The shot as the open photo shows it, for whoever reads the photo. */
export function shotOfPhoto(place: PhotoPlace | undefined, shot: Shot): Shot {
  return place?.crop ? {...shot, crop: place.crop, fieldWidth: place.fieldWidth ?? shot.fieldWidth} : shot;
}
