import type {PropertyDeclarations, PropertyValues} from 'lit';
import {SETTINGS, type Exposure} from '../../core/exposure/stops.js';
import type {Shot} from '../../core/shot/shot.js';
import {wholeOf} from '../../core/tone/pixels.js';
import type {CardReading} from '../../core/white/card.js';
import type {CardPatches} from '../../core/white/patches.js';
import type {Photo} from '../../photo/open.js';
import {ShotElement} from '../shared/shot-element.js';
import {Latest} from '../tonal-chart-reader/latest.js';
import {Opener, isClosed, type OpenedBy} from '../tonal-chart-reader/opener.js';
import {exposureOf, saysExposure} from '../tonal-chart-reader/settings.js';
import {firstMarks} from './marks.js';
import {CARD_SHOT, GRAY_CARD, PATCHES, grayCardOf, type CardShot, type GrayCard} from './reading.js';

/**
 * An element with a shot of the gray card: picked, dropped, pasted, of the page's own or the bench's photo opened once
 * more. The shot, where its patches are and what they say lie on the bench; whoever replaces the shot closes it.
 */
export abstract class CardPhotoElement extends ShotElement {
  static override properties: PropertyDeclarations = {
    src: {type: String, reflect: true},
    file: {attribute: false},
    dropping: {type: Boolean, reflect: true},
  };

  /** Address of a card shot of the page's own. @attr src */
  declare src: string | null;
  /** The card shot's file, set by script or opened by a reader; `null` takes it away. */
  declare file: Blob | null;
  /** Whether something that could be a photo is held over the element. */
  protected declare dropping: boolean;

  /** The file that is open, so that it is not opened again when it is found in {@link file}. */
  #given: Blob | null = null;
  /** The shot as it lay here before the element was taken out of the page. */
  #before: CardShot | undefined;
  /** What the last answer was about. */
  #asked: CardPatches | undefined;

  /** Settings that came from a card shot, which the next one may replace. */
  #fromShot: Partial<Shot> = {};

  protected readonly opener = new Opener((photo, file, by) => {
    this.#given = this.file = file;
    this.#begin(photo, file);
    this.#describe(photo, by);
  }, () => { this.requestUpdate(); });

  readonly #reading = new Latest<{readonly shot: CardShot; readonly reading: CardReading}>(({shot, reading}) => {
    if (this.cardShot?.photo !== shot.photo) return;
    this.putThing(GRAY_CARD, grayCardOf(reading, shot, this.exposureAt(shot.photo)));
  });

  constructor() {
    super();
    this.src = null;
    this.file = null;
    this.dropping = false;
    this.addEventListener('dragover', this.#offered);
    this.addEventListener('dragleave', (event) => { if (!this.contains(event.relatedTarget as Node | null)) this.dropping = false; });
    this.addEventListener('drop', this.#dropped);
  }

  /** The card shot that is open. */
  protected get cardShot(): CardShot | undefined { return this.thing<CardShot>(CARD_SHOT); }

  /** What it says, as far as it was read. */
  protected get card(): GrayCard | undefined { return this.thing<GrayCard>(GRAY_CARD); }

  /** How the card was exposed. */
  protected exposureAt(photo: Photo): Exposure { return exposureOf(photo, this.shot); }

  /**
   * Opens a card shot as if the reader had chosen it.
   * @returns whether it opened; when not, what was on screen stays and the reason is shown
   */
  open(file: Blob): Promise<boolean> {
    return this.opener.open(file, 'reader');
  }

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
    if (changed.has('src') && this.src) void this.opener.load(this.src, this.baseURI);
    if (changed.has('file') && this.file !== this.#given) this.#take(this.file);
    this.#read();
  }

  /** Takes a file that a script set. */
  #take(file: Blob | null): void {
    this.#given = file;
    if (file) {
      void this.opener.open(file, 'script');
      return;
    }
    this.opener.stop();
    this.#lay(undefined);
    this.putThing(GRAY_CARD, undefined);
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

  override connectedCallback(): void {
    super.connectedCallback();
    // Before those who take any paste on the page.
    this.ownerDocument.addEventListener('paste', this.#pasted, true);
    const lying = this.cardShot;
    if (lying && isClosed(lying.photo)) this.putThing(CARD_SHOT, undefined);
    if (!this.hasUpdated || this.cardShot) return;
    if (this.file) void this.opener.open(this.file, 'page');
    else if (this.src) void this.opener.load(this.src, this.baseURI);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.ownerDocument.removeEventListener('paste', this.#pasted, true);
    // A task later an element that was only moved is back in the page.
    setTimeout(() => {
      if (this.isConnected || !this.alone) return;
      this.opener.stop();
      this.#before = this.cardShot;
      this.#lay(undefined);
    });
  }

  // —— dropped and pasted ——

  readonly #offered = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = 'copy';
    this.dropping = true;
  };

  readonly #dropped = (event: DragEvent): void => {
    this.dropping = false;
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void this.open(file);
  };

  /** A paste is for the element that the pointer or the focus is on, or for the only one of the page that takes photos. */
  readonly #pasted = (event: ClipboardEvent): void => {
    const file = event.clipboardData?.files[0];
    if (!file || event.defaultPrevented) return;
    const only = this.ownerDocument.querySelectorAll(`${this.localName}, tonal-chart-reader`).length === 1;
    if (!only && !this.matches(':hover, :focus-within')) return;
    event.preventDefault();
    void this.open(file);
  };
}
