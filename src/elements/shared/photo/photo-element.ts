import {isServer, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import type {Photo} from '../../../photo/open.js';
import type {Shot} from '../../../core/shot/shot.js';
import {attributeOf} from '../../../core/shot/field.js';
import {ShotElement} from '../shot-element.js';
import type {Words} from '../spoken-element.js';
import {troubleText} from './file-speech.js';
import {Opener, type OpenedBy} from './opener.js';
import {takePastes} from './paste.js';
import {pick} from './pick.js';
import type {PhotoWords} from './words/en.js';

/**
 * An element with a photo: picked, dropped, pasted or of the page's own. What is open lies on the bench, where whoever
 * replaces it closes it; which photo that is and what is read from it is the business of those who extend this.
 */
export abstract class PhotoElement<W extends Words & PhotoWords = Words & PhotoWords> extends ShotElement<W> {
  /** Whether a pasted photo goes to other elements of the page first. */
  protected static readonly pastesLast: boolean = false;

  static override properties: PropertyDeclarations = {
    src: {type: String, reflect: true},
    file: {attribute: false},
    dropping: {type: Boolean, reflect: true},
    setBefore: {state: true},
  };

  /** Address of a photo of the page's own. @attr src */
  declare src: string | null;
  /**
   * The photo's file. Set by script it is opened without an event; what a reader opens is here too. `null` takes the
   * photo away.
   */
  declare file: Blob | null;
  /** Whether something that could be a photo is held over the element. */
  protected declare dropping: boolean;
  /** What the shot was before a way out was taken. */
  protected declare setBefore: Partial<Shot> | undefined;

  /** The file that is open, so that it is not opened again when it is found in {@link file}. */
  #given: Blob | null = null;
  #unpaste: (() => void) | undefined;

  protected readonly opener = new Opener((photo, file, by) => {
    this.#given = this.file = file;
    this.setBefore = undefined;
    this.took(photo, by);
  }, () => { this.requestUpdate(); });

  constructor() {
    super();
    this.src = null;
    this.file = null;
    this.dropping = false;
    this.setBefore = undefined;
    this.addEventListener('dragover', this.#offered);
    this.addEventListener('dragleave', (event) => { if (!this.contains(event.relatedTarget as Node | null)) this.dropping = false; });
    this.addEventListener('drop', this.#dropped);
  }

  /** Lays a photo that opened on the bench, and closes the one it replaces. */
  protected abstract took(photo: Photo, by: OpenedBy): void;

  /**
   * Takes what is open from the bench and closes it.
   * @param forGood - a script took the file away; otherwise the element only left the page and may come back
   */
  protected abstract letGo(forGood: boolean): void;

  /** Whether something is open; what was closed behind the element's back is taken from the bench first. */
  protected abstract isOpen(): boolean;

  /**
   * Opens a photo as if the reader had chosen it: `shot-change` fires.
   * @returns whether it opened; when not, what was on screen stays and the reason is shown
   */
  open(file: Blob): Promise<boolean> {
    return this.opener.open(file, 'reader');
  }

  // —— coming and going ——

  override connectedCallback(): void {
    super.connectedCallback();
    this.#unpaste = takePastes(this, (this.constructor as typeof PhotoElement).pastesLast);
    const isOpen = this.isOpen();
    if (!this.hasUpdated || isOpen) return;
    if (this.file) void this.opener.open(this.file, 'page');
    else if (this.src) void this.opener.load(this.src, this.baseURI);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#unpaste?.();
    // A task later an element that was only moved is back in the page.
    setTimeout(() => {
      if (this.isConnected || !this.alone) return;
      this.opener.stop();
      this.letGo(false);
    });
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const isFile = changed.has('file') && this.file !== this.#given;
    if (changed.has('src') && this.src && !(isFile && this.file)) this.loadFrom(this.src, this.opener);
    if (isFile) this.#take(this.file);
  }

  /** Opens what lies at an address, after the first drawing: that one is as a server drew it, where nothing is opened. */
  protected loadFrom(src: string, opener: Opener): void {
    const load = () => { void opener.load(src, this.baseURI); };
    if (this.hasUpdated) load();
    else if (!isServer) queueMicrotask(load);
  }

  /** Takes a file that a script set. */
  #take(file: Blob | null): void {
    this.#given = file;
    if (file) {
      void this.opener.open(file, 'script');
    } else {
      this.opener.stop();
      this.letGo(true);
    }
  }

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

  // —— what is shown alike ——

  /** Takes a way out, or takes it back. */
  protected readonly takeWay = (changes: Partial<Shot>, before: Partial<Shot> | undefined): void => {
    this.act(changes);
    this.setBefore = before;
  };

  /** What was wrong with the last photo. */
  protected get troubleText(): string {
    const {trouble} = this.opener;
    return trouble ? troubleText(this.words, trouble) : '';
  }

  /** What was wrong with the last photo, and which attributes cannot be used. */
  protected get complaints(): readonly string[] {
    const {problems} = this.state;
    const {words} = this;
    return [this.troubleText, ...(this.constructor as typeof PhotoElement).shotKeys.map((key) => {
      const problem = problems[key];
      return problem ? words.attribute(attributeOf(key), words.say.problem(problem)) : '';
    })].filter(Boolean);
  }

  /** Asks for a photo's file. */
  protected renderPick(label: string): TemplateResult {
    return pick(label, (file) => { void this.open(file); });
  }
}
