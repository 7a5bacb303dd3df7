import {exposureStops, type Exposure} from '../../../core/exposure/stops.js';
import type {CropShare, Shot} from '../../../core/shot/shot.js';
import type {Comparison} from '../../../core/tone/compare.js';
import {cropChange, type CropChange} from '../../../core/tone/cropped.js';
import type {Level} from '../../../core/tone/level.js';
import type {Tally} from '../../../core/tone/tally.js';
import type {Photo} from '../../../photo/open.js';
import {Latest} from '../../shared/photo/latest.js';
import {exposureOf} from '../../shared/photo/settings.js';
import {Counts} from './counts.js';
import {cropPixels} from './crop.js';

/** A comparison is asked for once the crop has been still for so long, ms: it takes longer than a count. */
const STILL_MS = 250;

/** A gray card that was measured: its linear light, and the exposure it was measured at. */
export interface MeasuredGray {
  readonly grayLinear: number;
  readonly exposure: Exposure;
  /** Whether the card can be believed; said of those that lie on the bench. */
  readonly trusted?: boolean;
}

/** What is read of. */
export interface ReadingSubject {
  readonly photo: Photo;
  readonly earlier: Photo | undefined;
  readonly shot: Shot;
  readonly spot: CropShare | null;
  /** The gray card that lies on the bench. */
  readonly card: MeasuredGray | undefined;
}

/** What is asked of the photo's pixels, and the last answers: counts in the crop, a comparison, the level of a spot. */
export class Readings {
  change: CropChange | undefined;
  comparison: Comparison | undefined;
  level: Level | undefined;
  /** A gray card that was measured with the spot. */
  gray: MeasuredGray | undefined;
  /** Whether the crop has nothing to count. */
  isTransparent = false;
  #subject: ReadingSubject | undefined;
  #asked: readonly unknown[] = [];
  readonly #counts: Counts;
  readonly #countsEarlier: Counts;

  /**
   * @param changed - called when there is something new to show
   * @param leveled - called with the level of the spot, or that there is none
   */
  constructor(private readonly changed: () => void, private readonly leveled: (level: Level | undefined) => void) {
    this.#counts = new Counts(changed);
    this.#countsEarlier = new Counts(changed);
  }

  get inside(): Tally | undefined { return this.#counts.inside; }

  get insideEarlier(): Tally | undefined { return this.#countsEarlier.inside; }

  readonly #comparing = new Latest<readonly [Photo, Photo, Comparison]>(([photo, earlier, comparison]) => {
    if (photo !== this.#subject?.photo || earlier !== this.#subject.earlier) return;
    this.comparison = comparison;
    this.changed();
  });

  readonly #measuring = new Latest<readonly [Photo, Level]>(([photo, level]) => {
    if (photo === this.#subject?.photo && this.#subject.spot) this.#setLevel(level);
  });

  /** Asks what is not known yet. */
  follow(subject: ReadingSubject | undefined): void {
    this.#subject = subject;
    const crop = subject?.shot.crop ?? {left: 0, top: 0, width: 1, height: 1};
    this.#counts.follow(subject?.photo, crop);
    this.#countsEarlier.follow(subject?.earlier, crop);
    this.#ask(subject);
    const {inside, whole} = this.#counts;
    this.isTransparent = inside?.pixels === 0;
    if (!inside || !whole || !subject) this.change = undefined;
    else if (!this.isTransparent) this.change = cropChange(inside, whole, subject.shot.intent);
  }

  /** Puts the questions beside the counts, when what they depend on has changed. */
  #ask(subject: ReadingSubject | undefined): void {
    const {photo, earlier, spot, shot} = subject ?? {};
    const gray = this.grayIn();
    const asked = [photo, earlier, shot?.crop, spot, gray];
    const isNew = (...at: number[]) => at.some((place) => asked[place] !== this.#asked[place]);
    if (isNew(0, 1)) {
      this.comparison = undefined;
      this.#comparing.stop();
    }
    if (photo && earlier && shot && isNew(0, 1, 2)) {
      this.#comparing.want(async () => [photo, earlier, await photo.ask('compare', cropPixels(shot.crop, earlier), earlier)],
        this.comparison ? STILL_MS : 0);
    }
    if (!photo || !spot) {
      this.#setLevel(undefined);
    } else if (isNew(0, 3, 4)) {
      const region = cropPixels(spot, photo);
      this.#measuring.want(async () => [photo, await photo.ask('level', {region, ...(gray !== undefined && {gray})})]);
    }
    this.#asked = asked;
  }

  #setLevel(level: Level | undefined): void {
    if (level === this.level) return;
    this.level = level;
    this.leveled(level);
  }

  /** The gray card that was measured, here or by the element that reads one. */
  get card(): MeasuredGray | undefined {
    const lying = this.#subject?.card;
    return this.gray ?? (lying?.trusted ? lying : undefined);
  }

  /** Light of the measured gray card at the exposure of this photo. */
  grayIn(): number | undefined {
    const {card} = this;
    const subject = this.#subject;
    return card && subject && card.grayLinear * 2 ** exposureStops(card.exposure, exposureOf(subject.photo, subject.shot));
  }

  /** Takes the spot for the gray card. */
  markCard(): void {
    const grayLinear = this.level?.luminance.mean;
    const subject = this.#subject;
    if (grayLinear && subject) this.gray = {grayLinear, exposure: exposureOf(subject.photo, subject.shot)};
    this.changed();
  }

  forgetCard(): void {
    this.gray = undefined;
    this.changed();
  }
}
