import type {PropertyValues} from 'lit';
import {SETTINGS, type Exposure} from '../../core/exposure/stops.js';
import type {Shot} from '../../core/shot/shot.js';
import {wholeOf} from '../../core/tone/pixels.js';
import type {CardReading} from '../../core/white/card.js';
import type {CardPatches} from '../../core/white/patches.js';
import type {Photo} from '../../photo/open.js';
import type {Words} from '../shared/shot-element.js';
import {Latest} from '../shared/photo/latest.js';
import {isClosed, type OpenedBy} from '../shared/photo/opener.js';
import {PhotoElement} from '../shared/photo/photo-element.js';
import {exposureOf, saysExposure} from '../shared/photo/settings.js';
import type {PhotoWords} from '../shared/photo/words/en.js';
import {firstMarks} from './marks.js';
import {CARD_SHOT, GRAY_CARD, PATCHES, grayCardOf, type CardShot, type GrayCard} from './reading.js';

/**
 * An element with a shot of the gray card: picked, dropped, pasted, of the page's own or the bench's photo opened once
 * more. The shot, where its patches are and what they say lie on the bench; whoever replaces the shot closes it.
 */
export abstract class CardPhotoElement<W extends Words & PhotoWords = Words & PhotoWords> extends PhotoElement<W> {
  protected static override readonly pastesLast = true;

  /** The shot as it lay here before the element was taken out of the page. */
  #before: CardShot | undefined;
  /** What the last answer was about. */
  #asked: CardPatches | undefined;

  /** Settings that came from a card shot, which the next one may replace. */
  #fromShot: Partial<Shot> = {};

  protected override took(photo: Photo, by: OpenedBy): void {
    this.#begin(photo, photo.file);
    this.#describe(photo, by);
  }

  readonly #reading = new Latest<{readonly shot: CardShot; readonly reading: CardReading}>(({shot, reading}) => {
    if (this.cardShot?.photo !== shot.photo) return;
    this.putThing(GRAY_CARD, grayCardOf(reading, shot, this.exposureAt(shot.photo)));
  });

  /** The card shot that is open. */
  protected get cardShot(): CardShot | undefined { return this.thing<CardShot>(CARD_SHOT); }

  /** What it says, as far as it was read. */
  protected get card(): GrayCard | undefined { return this.thing<GrayCard>(GRAY_CARD); }

  /** How the card was exposed. */
  protected exposureAt(photo: Photo): Exposure { return exposureOf(photo, this.shot); }

  /** Lays new marks on the bench. */
  protected mark(patches: CardPatches, how: CardShot['how'], placed: CardShot['placed'] = PATCHES): void {
    const shot = this.cardShot;
    if (shot) this.putThing(CARD_SHOT, {...shot, patches, how, placed} satisfies CardShot);
  }

  /** Looks for the card once more, wherever the frames are. */
  protected async look(): Promise<void> {
    const shot = this.cardShot;
    if (!shot) return;
    const {photo, patches} = shot;
    this.mark(patches, 'looking', []);
    const found = await photo.ask('findCard', wholeOf(photo)).catch(() => undefined);
    if (this.cardShot?.photo !== photo || this.cardShot.how !== 'looking') return;
    if (!found) this.putThing(GRAY_CARD, undefined);
    this.mark(found ?? firstMarks(photo), found ? 'found' : 'none', found ? PATCHES : []);
  }

  #begin(photo: Photo, file: Blob): void {
    const kept = this.#before?.photo.file === file ? this.#before : undefined;
    this.#lay({
      photo, lights: kept?.lights ?? this.shot.lights, patches: kept?.patches ?? firstMarks(photo),
      how: kept?.how ?? 'looking', placed: kept?.placed ?? [], close: () => { photo.close(); },
    });
    if (!kept || kept.how === 'looking') void this.look();
  }

  /** Fills in the exposure of the card shot where nobody has stated one: the next shot starts from it. */
  #describe(photo: Photo, by: OpenedBy): void {
    if (!saysExposure(photo)) return;
    const exposure = this.exposureAt(photo);
    const {values} = this.state;
    const isFree = SETTINGS.every((name) => values[name] === undefined || values[name] === this.#fromShot[name]);
    if (!isFree) return;
    const {aperture, shutter, iso} = exposure;
    this.#fromShot = {...exposure, meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso};
    if (by === 'reader') this.act(this.#fromShot);
    else Object.assign(this, this.#fromShot);
  }

  #lay(shot: CardShot | undefined): void {
    const gone = this.cardShot;
    this.putThing(CARD_SHOT, shot);
    gone?.close();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    this.#read();
  }

  /** Reads the patches where they are now, unless that was done. */
  #read(): void {
    const shot = this.cardShot;
    if (!shot || shot.placed.length < PATCHES.length || isClosed(shot.photo)) return;
    if (shot.patches === this.card?.patches || shot.patches === this.#asked) return;
    this.#asked = shot.patches;
    this.#reading.want(async () => ({shot, reading: await shot.photo.ask('readCard', shot.patches)}));
  }

  // —— coming and going ——

  protected override isOpen(): boolean {
    if (this.cardShot && isClosed(this.cardShot.photo)) this.putThing(CARD_SHOT, undefined);
    return this.cardShot !== undefined;
  }

  protected override letGo(forGood: boolean): void {
    this.#before = forGood ? undefined : this.cardShot;
    this.#lay(undefined);
    if (forGood) this.putThing(GRAY_CARD, undefined);
  }
}
