import type {CropShare} from '../../../core/shot/shot.js';
import type {Tally} from '../../../core/tone/tally.js';
import type {Photo} from '../../../photo/open.js';
import {cropPixels} from './crop.js';
import {Latest} from '../../shared/photo/latest.js';

/**
 * Tallies of a photo: all of it, and the crop as it is dragged. What was counted last stays until both are there of
 * another photo.
 */
export class Counts {
  whole: Tally | undefined;
  inside: Tally | undefined;
  #photo: Photo | undefined;
  #crop: CropShare | undefined;
  #nextWhole: Tally | undefined;
  #nextInside: Tally | undefined;
  readonly #latest: Latest<readonly [Photo, Tally]>;

  /**
   * @param changed - called when there is something new to show
   */
  constructor(private readonly changed: () => void) {
    this.#latest = new Latest(([photo, tally]) => {
      if (photo !== this.#photo) return;
      this.#nextInside = tally;
      this.#show();
    });
  }

  /** Counts what is not counted yet. */
  follow(photo: Photo | undefined, crop: CropShare): void {
    if (photo !== this.#photo) this.#adopt(photo);
    if (!photo || crop === this.#crop) return;
    this.#crop = crop;
    this.#latest.want(async () => [photo, await photo.tally(cropPixels(crop, photo))]);
  }

  #adopt(photo: Photo | undefined): void {
    this.#photo = photo;
    this.#crop = this.#nextWhole = this.#nextInside = undefined;
    this.#latest.stop();
    if (!photo) {
      this.whole = this.inside = undefined;
      return;
    }
    new Latest<Tally>((tally) => {
      if (photo !== this.#photo) return;
      this.#nextWhole = tally;
      this.#show();
    }).want(() => photo.tally());
  }

  #show(): void {
    if (!this.#nextWhole || !this.#nextInside) return;
    this.whole = this.#nextWhole;
    this.inside = this.#nextInside;
    this.changed();
  }
}
