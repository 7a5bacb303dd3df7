import {html, nothing, type CSSResult, type TemplateResult} from 'lit';
import type {Shot} from '../../core/shot/shot.js';
import type {SaidDetail} from './detail.js';
import type {EntryHost} from './entries.js';
import type {FoldHost, FoldName} from './folds/host.js';
import type {RulerPhoto} from './folds/ruler-photo.js';
import type {CameraFold} from './folds/set-up.js';
import type {StackOffer} from './folds/stack.js';
import type {FoldWords} from './folds/words/en.js';
import {needsStack, type Reading} from './reading.js';
import type {RulerNotes, ShownPhoto} from './ruler-notes.js';
import type {Done} from './ways-view.js';

const loadSetUp = () => import('./folds/set-up.js');
const loadMeasuring = () => import('./folds/measuring.js');
export const loadFinest = () => import('./folds/finest.js');

/** What the folds need of their element before anything of them is fetched. */
export interface FoldingHost {
  readonly later: <M>(load: () => Promise<M>) => M | undefined | null;
  readonly entryHost: () => EntryHost;
  /** Fetches them, too. */
  readonly foldWords: () => FoldWords | undefined;
  readonly press: (place: FoldName, what: () => string, changes: Partial<Shot>) => void;
  readonly done: (place: FoldName) => Done | undefined;
  readonly redraw: () => void;
  /** Puts on styles that only a fetched part needs. */
  readonly wear: (styles: CSSResult) => void;
  /** What was marked and read on rulers, and the photo that a linked element has open. */
  readonly notes: () => RulerNotes;
  readonly putNotes: (notes: RulerNotes) => void;
  readonly photo: () => ShownPhoto | undefined;
  /** Whether nothing is linked that could open a photo. */
  readonly alone: () => boolean;
}

/** What can be unfolded under the bar. Each part is fetched when it is opened, and keeps what was begun in it. */
export class Folding {
  readonly #opened = new Set<FoldName>();
  #camera: CameraFold | undefined;
  #rulerPhoto: RulerPhoto | undefined;
  #offer: StackOffer | undefined;
  #words: FoldWords | undefined;
  /** mm back that are priced. */
  #back = 0;

  constructor(private readonly host: FoldingHost) {}

  /** The words behind the folds; nothing while the first are on their way. */
  words(): FoldWords | undefined {
    return this.#words = this.host.foldWords() ?? this.#words;
  }

  /** Frames of a stack that are to be drawn. @throws {Problem} as the stack does */
  frames(reading: Reading, detail: SaidDetail): StackOffer['frames'] {
    const finest = this.#opened.has('stack') && needsStack(reading) ? this.host.later(loadFinest) : undefined;
    this.#offer = finest?.stackOffer(reading, detail);
    return this.#offer?.frames ?? [];
  }

  /** Draws what stands on canvases. */
  paint(root: ParentNode): void {
    if (this.#opened.has('rulerPhoto')) this.#rulerPhoto?.paint(root);
  }

  view(reading: Reading | undefined): TemplateResult {
    const {notes, putNotes, photo, alone, redraw} = this.host;
    return html`<div class="folds screen-only"><div>
      ${this.#fold('figure', reading, loadSetUp, (host, {figureView}) => figureView(host))}
      ${this.#fold('camera', reading, loadSetUp, (host, {CameraFold: Fold}) => (this.#camera ??= new Fold()).view(host))}
      ${this.#fold('picture', reading, loadSetUp, (host, {pictureView}) => pictureView(host))}
    </div>${reading ? html`<div>
      ${needsStack(reading) ? this.#fold('stack', reading, loadFinest, (host, {stackView}) => stackView(host, this.#offer)) : nothing}
      ${reading.framing.lens.magnification <= 1 ? this.#fold('distance', reading, loadMeasuring, (host, {distanceView}) =>
        distanceView(host, reading, this.#back, (back) => { this.#back = back; redraw(); })) : nothing}
      ${this.#fold('rulerPhoto', reading, loadMeasuring, (host, {RulerPhoto: Photo}) => {
        this.#rulerPhoto ??= new Photo(notes, photo, putNotes, redraw);
        const shown = photo();
        return shown ? this.#rulerPhoto.view(host, shown) : html`<p class="note">${alone() ? host.fold.photoAlone : host.fold.photoLinked}</p>`;
      })}
      ${this.#fold('ownLimit', reading, loadMeasuring, (host, {ownLimitView}) =>
        ownLimitView(host, reading, notes(), (more) => { putNotes({...notes(), ...more}); }))}
    </div>` : nothing}</div>`;
  }

  #fold<M extends object>(
    name: FoldName, reading: Reading | undefined, load: () => Promise<M>, view: (host: FoldHost, part: M) => TemplateResult,
  ): TemplateResult {
    const {later, wear, entryHost, press, done} = this.host;
    const entries = entryHost();
    const {words} = entries;
    const isOpen = this.#opened.has(name);
    const [part, fold] = isOpen ? [later(load), this.words()] : [];
    if (part && 'styles' in part) wear(part.styles as CSSResult);
    return html`<details class=${name} ?open=${isOpen} @toggle=${(event: Event) => { this.#toggle(name, (event.target as HTMLDetailsElement).open); }}>
      <summary>${words.folds[name]}</summary>
      ${part && fold ? html`<div class="group">${view({...entries, fold, reading, press, done}, part)}</div>`
        : part === null ? html`<p class="note">${words.say.family.unreachable}</p>` : nothing}
    </details>`;
  }

  #toggle(name: FoldName, isOpen: boolean): void {
    if (isOpen === this.#opened.has(name)) return;
    if (isOpen) this.#opened.add(name); else this.#opened.delete(name);
    this.host.redraw();
  }
}
