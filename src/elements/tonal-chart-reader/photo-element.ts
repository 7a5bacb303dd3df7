import type {PropertyDeclarations, PropertyValues} from 'lit';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {Photo} from '../../photo/open.js';
import {ShotElement} from '../shared/shot-element.js';
import {Opener, isClosed, type OpenedBy} from '../shared/photo/opener.js';
import {shotFrom} from '../shared/photo/settings.js';

/** Names under which the two photos lie on the bench. */
type Place = 'photo' | 'earlier';

/**
 * An element with a photo, and an earlier one beside it: picked, dropped, pasted or of the page's own. They lie on the
 * bench, where whoever replaces one closes it.
 */
export abstract class PhotoElement extends ShotElement {
  static override properties: PropertyDeclarations = {
    src: {type: String, reflect: true},
    file: {attribute: false},
    earlierSrc: {type: String, attribute: 'earlier-src'},
    earlierFile: {attribute: false},
    dropping: {type: Boolean, reflect: true},
  };

  /** Address of a photo of the page's own. @attr src */
  declare src: string | null;
  /**
   * The photo's file. Set by script it is opened and its settings go to the bench without an event; what a reader opens
   * is here too. `null` takes the photo away.
   */
  declare file: Blob | null;
  /** Address of an earlier shot to compare with. @attr earlier-src */
  declare earlierSrc: string | null;
  /** File of an earlier shot to compare with; `null` takes it away. */
  declare earlierFile: Blob | null;
  /** Whether something that could be a photo is held over the element. */
  protected declare dropping: boolean;

  /** Values that came from a photo, which the next photo of the page may replace. */
  #fromPhoto: Partial<Shot> = {};
  /** The files the openers were given, so that a file found open is not opened again. */
  readonly #given: Record<Place, Blob | null> = {photo: null, earlier: null};

  protected readonly opener = new Opener((photo, file, by) => {
    this.#given.photo = this.file = file;
    this.#lay('photo', photo);
    this.#describe(photo, by);
  }, () => { this.requestUpdate(); });

  protected readonly openerEarlier = new Opener((photo, file) => {
    this.#given.earlier = this.earlierFile = file;
    this.#lay('earlier', photo);
  }, () => { this.requestUpdate(); });

  constructor() {
    super();
    this.src = this.earlierSrc = null;
    this.file = this.earlierFile = null;
    this.dropping = false;
    this.addEventListener('dragover', this.#offered);
    this.addEventListener('dragleave', (event) => { if (!this.contains(event.relatedTarget as Node | null)) this.dropping = false; });
    this.addEventListener('drop', this.#dropped);
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

  /**
   * Opens a photo as if the reader had chosen it: its settings go to the bench and `shot-change` fires.
   * @returns whether it opened; when not, what was on screen stays and the reason is shown
   */
  open(file: Blob): Promise<boolean> {
    return this.opener.open(file, 'reader');
  }

  /** Keeps the open photo, to compare the next one with. */
  protected keep(): void {
    this.#given.earlier = this.earlierFile = this.file;
    this.#lay('earlier', this.photo);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.ownerDocument.addEventListener('paste', this.#pasted);
    // What was let go of while the element stood nowhere is opened again.
    for (const place of ['photo', 'earlier'] as const) {
      const lying = this.thing<Photo>(place);
      if (lying && isClosed(lying)) this.putThing(place, undefined);
    }
    if (!this.hasUpdated) return;
    if (!this.thing('photo')) this.#open(this.opener, this.file, this.src, 'page');
    if (!this.thing('earlier')) this.#open(this.openerEarlier, this.earlierFile, this.earlierSrc, 'page');
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.ownerDocument.removeEventListener('paste', this.#pasted);
    // A task later an element that was only moved is back in the page.
    setTimeout(() => {
      if (this.isConnected || !this.alone) return;
      this.opener.stop();
      this.openerEarlier.stop();
      this.#lay('photo', undefined);
      this.#lay('earlier', undefined);
    });
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('src') && this.src) this.#open(this.opener, null, this.src, 'page');
    if (changed.has('earlierSrc') && this.earlierSrc) this.#open(this.openerEarlier, null, this.earlierSrc, 'page');
    if (changed.has('file')) this.#take('photo', this.file, this.opener);
    if (changed.has('earlierFile')) this.#take('earlier', this.earlierFile, this.openerEarlier);
  }

  /** Takes a file that a script set. */
  #take(place: Place, file: Blob | null, opener: Opener): void {
    if (file === this.#given[place]) return;
    this.#given[place] = file;
    if (file) {
      void opener.open(file, 'script');
    } else {
      opener.stop();
      this.#lay(place, undefined);
    }
  }

  #open(opener: Opener, file: Blob | null, src: string | null, by: OpenedBy): void {
    if (file) void opener.open(file, by);
    else if (src) void opener.load(src, this.baseURI);
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
    const told = shotFrom(photo, this.shot);
    const {values} = this.state;
    const free = Object.entries(told).filter(([key]) => {
      const stated = values[key as ShotKey];
      return by === 'script' || stated === undefined || stated === this.#fromPhoto[key as ShotKey];
    });
    if (by === 'reader') this.act(told);
    else Object.assign(this, Object.fromEntries(free));
    this.#fromPhoto = told;
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

  /** A paste is for the reader that the pointer or the focus is on, or for the only one of the page. */
  readonly #pasted = (event: ClipboardEvent): void => {
    const file = event.clipboardData?.files[0];
    if (!file || event.defaultPrevented) return;
    const only = this.ownerDocument.querySelectorAll(this.localName).length === 1;
    if (!only && !this.matches(':hover, :focus-within')) return;
    event.preventDefault();
    void this.open(file);
  };
}
