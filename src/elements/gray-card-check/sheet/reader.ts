import {SETTINGS} from '../../../core/exposure/stops.js';
import type {Shot} from '../../../core/shot/shot.js';
import {wholeOf} from '../../../core/tone/pixels.js';
import type {CardReading} from '../../../core/white/card.js';
import type {CardPatches} from '../../../core/white/patches.js';
import type {Photo} from '../../../photo/open.js';
import {Latest} from '../../shared/photo/latest.js';
import {isClosed, type OpenedBy} from '../../shared/photo/opener.js';
import {PhotoPlace} from '../../shared/photo/place.js';
import {exposureOf, saysExposure} from '../../shared/photo/settings.js';
import type {CardShot} from '../reading.js';
import type {SheetHost} from './host.js';
import {PATCHES, grayCardOf} from './judge.js';
import {firstMarks} from './marks.js';

/** Looks for the card in a shot, and reads its patches wherever they are. */
export class CardReader {
  /** Where the card shot was taken from. */
  place: PhotoPlace | undefined;
  /** What the last answer was about. */
  #asked: CardPatches | undefined;
  /** Settings that came from a card shot, which the next one may replace. */
  #fromShot: Partial<Shot> = {};
  readonly #reading: Latest<{readonly shot: CardShot; readonly reading: CardReading}>;

  constructor(private readonly host: SheetHost) {
    this.#reading = new Latest(({shot, reading}) => {
      if (host.cardShot()?.photo === shot.photo) host.judge(grayCardOf(reading, shot, exposureOf(shot.photo, host.shot())));
    });
  }

  /**
   * Lays a shot that opened on the bench.
   * @param before - the shot that lay there earlier; of the same file its marks are kept
   */
  begin(photo: Photo, by: OpenedBy, before: CardShot | undefined): void {
    const kept = before?.photo.file === photo.file ? before : undefined;
    this.place = new PhotoPlace(this.host.stated());
    this.#asked = undefined; // what was asked of a photo that was closed meanwhile was never answered
    this.host.lay({
      photo, lights: kept?.lights ?? this.host.shot().lights, patches: kept?.patches ?? firstMarks(photo),
      how: kept?.how ?? 'looking', placed: kept?.placed ?? [], close: () => { photo.close(); },
    });
    if (!kept || kept.how === 'looking') void this.look();
    this.#describe(photo, by);
  }

  /** Fills in the exposure of the card shot where nobody has stated one: the next shot starts from it. */
  #describe(photo: Photo, by: OpenedBy): void {
    if (!saysExposure(photo)) return;
    const stated = this.host.stated();
    const isFree = SETTINGS.every((name) => stated[name] === undefined || stated[name] === this.#fromShot[name]);
    if (!isFree) return;
    const exposure = exposureOf(photo, this.host.shot());
    const {aperture, shutter, iso} = exposure;
    this.#fromShot = {...exposure, meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso};
    if (by === 'reader') this.host.act(this.#fromShot);
    else this.host.fill(this.#fromShot);
  }

  /** Lays new marks on the bench. */
  mark(patches: CardPatches, how: CardShot['how'], placed: CardShot['placed'] = PATCHES): void {
    const shot = this.host.cardShot();
    if (shot) this.host.lay({...shot, patches, how, placed});
  }

  /** Looks for the card, wherever the frames are. */
  async look(): Promise<void> {
    const shot = this.host.cardShot();
    if (!shot) return;
    const {photo, patches} = shot;
    this.mark(patches, 'looking', []);
    const found = await photo.ask('findCard', wholeOf(photo)).catch(() => undefined);
    const now = this.host.cardShot();
    if (now?.photo !== photo || now.how !== 'looking') return;
    if (!found) this.host.judge(undefined);
    this.mark(found ?? firstMarks(photo), found ? 'found' : 'none', found ? PATCHES : []);
  }

  /** Reads the patches where they are now, unless that was done. */
  follow(): void {
    this.place?.follow(this.host.stated());
    const shot = this.host.cardShot();
    if (!shot || shot.placed.length < PATCHES.length || isClosed(shot.photo)) return;
    if (shot.patches === this.host.card()?.patches || shot.patches === this.#asked) return;
    this.#asked = shot.patches;
    this.#reading.want(async () => ({shot, reading: await shot.photo.ask('readCard', shot.patches)}));
  }
}
