import type {PropertyDeclarations, PropertyValues} from 'lit';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import {withValuesOf} from '../../core/shot/state.js';
import type {Photo} from '../../photo/open.js';
import {troubleText} from '../shared/photo/file-speech.js';
import {Opener, isClosed, type OpenedBy} from '../shared/photo/opener.js';
import {PhotoElement} from '../shared/photo/photo-element.js';
import {PHOTO_PLACE, PhotoPlace} from '../shared/photo/place.js';
import {shotFrom} from '../shared/photo/settings.js';
import type {PhotoWords} from '../shared/photo/words/en.js';
import type {ShotElement} from '../shared/shot-element.js';
import type {Words} from '../shared/spoken-element.js';

/** Names under which the two photos lie on the bench. */
type Place = 'photo' | 'earlier';

/** An element with a photo, and an earlier one to compare it with. Whoever replaces one closes it. */
export abstract class TwoPhotos<W extends Words & PhotoWords> extends PhotoElement<W> {
  static override properties: PropertyDeclarations = {
    earlierSrc: {type: String, attribute: 'earlier-src'},
    earlierFile: {attribute: false},
  };

  /** Address of an earlier shot to compare with. @attr earlier-src */
  declare earlierSrc: string | null;
  /** File of an earlier shot to compare with; `null` takes it away. */
  declare earlierFile: Blob | null;

  /** Values that came from a photo, which the next photo of the page may replace. */
  #fromPhoto: Partial<Shot> = {};
  /** The earlier file that is open, so that it is not opened again when it is found in {@link earlierFile}. */
  #given: Blob | null = null;

  protected readonly openerEarlier = new Opener((photo, file) => {
    this.#given = this.earlierFile = file;
    this.#lay('earlier', photo);
  }, () => { this.requestUpdate(); });

  constructor() {
    super();
    this.earlierSrc = null;
    this.earlierFile = null;
  }

  /** The photo that is open. */
  protected get photo(): Photo | undefined { return this.thing<Photo>('photo'); }

  /** The earlier shot, while it is another than the one that is open. */
  protected get earlier(): Photo | undefined {
    const earlier = this.thing<Photo>('earlier');
    return earlier === this.photo ? undefined : earlier;
  }

  /** Whether the open photo is kept, to compare the next one with. */
  protected get isKept(): boolean { return this.photo !== undefined && this.thing('earlier') === this.photo; }

  /** Keeps the open photo, to compare the next one with. */
  protected keep(): void {
    this.#given = this.earlierFile = this.file;
    this.#lay('earlier', this.photo);
  }

  protected override isOpen(): boolean {
    // What was let go of while the element stood nowhere is opened again.
    for (const place of ['photo', 'earlier'] as const) {
      const lying = this.thing<Photo>(place);
      if (lying && isClosed(lying)) this.putThing(place, undefined);
    }
    return this.photo !== undefined;
  }

  /** Where the photo was taken from, and what is kept of it. */
  protected get place(): PhotoPlace | undefined { return this.thing<PhotoPlace>(PHOTO_PLACE); }

  protected override benchChanged(): void {
    this.place?.follow(this.state.values);
  }

  protected override letGo(forGood: boolean): void {
    this.#lay('photo', undefined);
    this.putThing(PHOTO_PLACE, undefined);
    if (forGood) return;
    this.openerEarlier.stop();
    this.#lay('earlier', undefined);
  }

  protected override took(photo: Photo, by: OpenedBy): void {
    this.putThing(PHOTO_PLACE, new PhotoPlace(this.state.values));
    this.#lay('photo', photo);
    this.#describe(photo, by);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (!this.hasUpdated || this.thing('earlier')) return;
    if (this.earlierFile) void this.openerEarlier.open(this.earlierFile, 'page');
    else if (this.earlierSrc) void this.openerEarlier.load(this.earlierSrc, this.baseURI);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('earlierSrc') && this.earlierSrc) this.loadFrom(this.earlierSrc, this.openerEarlier);
    if (changed.has('earlierFile') && this.earlierFile !== this.#given) this.#take(this.earlierFile);
  }

  /** Takes a file that a script set. */
  #take(file: Blob | null): void {
    this.#given = file;
    if (file) {
      void this.openerEarlier.open(file, 'script');
    } else {
      this.openerEarlier.stop();
      this.#lay('earlier', undefined);
    }
  }

  /** Lays a photo on the bench and closes the one it replaces, unless it is still needed as the other of the two. */
  #lay(place: Place, photo: Photo | undefined): void {
    const gone = this.thing<Photo>(place);
    if (gone === photo) return;
    this.putThing(place, photo);
    if (gone && gone !== this.thing('photo') && gone !== this.thing('earlier')) gone.close();
  }

  /** Tells the bench what the photo knows. A photo of the page's own fills in only what nobody has stated. */
  #describe(photo: Photo, by: OpenedBy): void {
    const {shot, state: {values}} = this;
    const isFree = (key: ShotKey) => by !== 'page' || values[key] === undefined || values[key] === this.#fromPhoto[key];
    const told: Partial<Shot> = Object.fromEntries(Object.entries(shotFrom(photo, shot, values.frameWidth)).filter(([key]) => isFree(key as ShotKey)));
    const isPlaced = (values.fieldWidth ?? values.meteredMagnification) !== undefined;
    // The light is metered from where the photo was taken, which is where the camera stands as it is opened.
    this.#fromPhoto = told.meteredAperture && isPlaced && isFree('meteredMagnification')
      ? {...told, meteredMagnification: (told.sensorWidth ?? shot.sensorWidth) / shot.fieldWidth} : told;
    if (by === 'reader') this.act(this.#fromPhoto);
    else this.replace(withValuesOf(this.state, this.#fromPhoto, (this.constructor as typeof ShotElement).fields), false);
  }

  protected override get troubleText(): string {
    const {trouble} = this.openerEarlier;
    return [super.troubleText, trouble ? troubleText(this.words, trouble) : ''].filter(Boolean).join(' ');
  }
}
