import {html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {shotDifference} from '../../core/shot/difference.js';
import {shotKeys} from '../../core/shot/given.js';
import {readLink, writeLink, type LinkNotice} from '../../core/shot/link.js';
import {recordOf, stateOf, type Measured, type ShotRecord} from '../../core/shot/record.js';
import {EMPTY_STATE, type ShotState} from '../../core/shot/state.js';
import {SHOT_FIELDS} from '../../core/shot/fields.js';
import {measuredDifferenceIn} from '../../core/shot/measured-lines.js';
import {settingsIn, sheetIn} from '../../core/shot/sheet-lines.js';
import type {CropShare} from '../../core/shot/shot.js';
import type {Level} from '../../core/tone/level.js';
import type {Photo} from '../../photo/open.js';
import type {GrayCard} from '../gray-card-check/reading.js';
import {textField} from '../shared/fields.js';
import {languageOf} from '../shared/languages.js';
import {PHOTO_PLACE, photoCrop, type PhotoPlace} from '../shared/photo/place.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import type {Along} from './along.js';
import {alongBook} from './along/book.js';
import {benchFacts} from './bench-facts.js';
import {sheetBook} from './book.js';
import {ShotsChangeEvent} from './events.js';
import {moved, without} from './kept.js';
import {forget, memoryKey, recall, remember} from './memory.js';
import {drawKept, drawSmall, smallPicture} from './picture.js';
import {missingView, sheetGroups} from './sheet-view.js';
import {sheetStyles} from './styles.js';
import {changeWords, languageOfSheet, madeWords, measuredWords, missingWords, noticeWords, settingsTight, shotNamed, verdictWords} from './speech.js';
import type {SheetElementWords} from './words/en.js';

/** What takes shots along is fetched when somebody looks for it. */
const loadAlong = () => import('./along.js');

/** A sentence that is said in the language there is when it is shown. */
type Saying = (words: SheetElementWords) => string;

/** A button in the row of a kept shot. */
const rowOf = (at: number, button: string): string => `.kept > li:nth-child(${at + 1}) ${button}`;

/** Quiet time after which a photo is measured, ms: a crop may be on the move. */
const STILL_MS = 300;

/** Steps that can be undone. */
const MOST_UNDO = 30;

/** How things stood before a reader's act. */
interface Before {
  readonly what: Saying;
  readonly shots: readonly ShotRecord[];
  readonly state: ShotState;
  /** What was pressed, or stands where it stood, once that is taken back. */
  readonly pressed: string;
}

/**
 * The record of the bench's shot: everything set and measured, a note and a small picture. Shots can be kept in order,
 * and taken along as link, text, card, file and on paper. Nothing leaves the device.
 *
 * @summary The record of a shot, to be kept, carried on and repeated
 * @slot - Fallback: shown where the script does not run
 * @attr {string} bench - Name of the shot shared with other elements of the page
 * @attr {boolean} follow-link - Takes the shot out of the page's address, and follows when it changes
 * @attr {string} page - Address that links and frames lead to; this page when it is not said
 * @attr {string} scripts - Where the scripts of snippets lie: `lampblack/` when it is not said
 * @attr {string} note - Note on the shot; every other value of a shot is an attribute here too: `aperture`, `base-depth` …
 * @fires {ShotsChangeEvent} shots-change - After a reader kept, moved, removed or imported shots
 * @fires {ShotChangeEvent} shot-change - After a reader wrote a note or put a kept shot on the bench
 * @fires {ShotProblemEvent} shot-problem - When text or a value could not be used
 * @csspart plate - The whole element
 * @csspart verdict - The sentence that sums up
 * @csspart sheet - The record of the shot
 * @csspart kept - The list of kept shots
 * @csspart field - A label with its field
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved
 * @cssprop [--lampblack-paper=transparent] - Ground of the element
 * @cssprop [--lampblack-line] - Ruled lines
 * @cssprop [--lampblack-quiet] - Labels and notes
 * @cssprop [--lampblack-gap=1em] - Space between parts
 * @cssprop [--lampblack-radius=0.2em] - Corners of buttons
 */
export class ShotSheet extends ShotElement<SheetElementWords> {
  static override readonly shotKeys = shotKeys();
  static override readonly fields = SHOT_FIELDS;
  static override readonly book = sheetBook;

  static override styles = [familyStyles, sheetStyles];

  static override properties: PropertyDeclarations = {
    followLink: {type: Boolean, attribute: 'follow-link'}, page: {}, scripts: {}, shots: {attribute: false},
    name: {state: true}, message: {state: true}, notices: {state: true}, measured: {state: true}, remembering: {state: true}, opened: {state: true},
  };

  /** Whether the shot of the page's address is taken. @attr follow-link */
  declare followLink: boolean;
  /** Address that links lead to. @attr page */
  declare page: string | null;
  /** Where the scripts of snippets lie. @attr scripts */
  declare scripts: string;
  /** The shots that are kept, in order. */
  declare shots: readonly ShotRecord[];
  /** Note on the shot. */
  declare note: string;

  /** What the shot will be called once it is kept. */
  declare protected name: string;
  /** What was done, or why not. */
  declare protected message: Saying | null;
  declare protected notices: readonly LinkNotice[];
  declare protected measured: Measured;
  declare protected remembering: boolean;
  declare protected opened: boolean;

  #along: Along | undefined;
  #kept: readonly string[] = [];
  #undo: readonly Before[] = [];
  #measuredOf: {readonly photo: Photo | undefined; readonly crop: string} = {photo: undefined, crop: ''};
  #small: {readonly photo: Photo | undefined; readonly crop: string; readonly picture?: string} = {photo: undefined, crop: ''};
  #still: ReturnType<typeof setTimeout> | undefined;
  readonly #drawn = new WeakMap<HTMLCanvasElement, unknown>();

  constructor() {
    super();
    this.followLink = false;
    this.page = null;
    this.scripts = 'lampblack/';
    this.shots = [];
    this.name = '';
    this.message = null;
    this.notices = [];
    this.measured = {};
    this.remembering = false;
    this.opened = false;
  }

  override connectedCallback(): void {
    // A property set before the element was defined hides the accessor until it is set again.
    for (const name of ['followLink', 'page', 'scripts', 'shots'] as const) {
      if (!Object.hasOwn(this, name)) continue;
      const early: unknown = this[name];
      delete (this as Partial<Record<typeof name, unknown>>)[name];
      Object.assign(this, {[name]: early});
    }
    const first = !this.hasUpdated;
    super.connectedCallback();
    window.addEventListener('hashchange', this.#hashChanged);
    window.addEventListener('storage', this.#stored);
    if (first && this.followLink) this.#follow();
    const recalled = recall(memoryKey(this.bench));
    if (typeof recalled === 'object' && recalled.text !== null && !this.remembering) void this.#recall(recalled.text);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('hashchange', this.#hashChanged);
    window.removeEventListener('storage', this.#stored);
    clearTimeout(this.#still);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.get('followLink') === false && this.followLink && this.hasUpdated) this.#follow();
    this.#measure();
  }

  protected override updated(): void {
    super.updated();
    for (const canvas of this.renderRoot.querySelectorAll('canvas')) this.#draw(canvas);
  }

  protected override verdictText(): string {
    const last = this.shots.at(-1);
    const {values} = this.state;
    return verdictWords(this.words, settingsIn(languageOfSheet(this.words), values), last ? {count: this.shots.length, title: last.title, changes: shotDifference(last.values, values)} : null, this.shot.unit);
  }

  // —— the record ——

  /** The record of the shot as it stands now. */
  get record(): ShotRecord {
    const photo = this.thing<Photo>('photo');
    const crop = JSON.stringify(this.photoCrop);
    if (this.#small.photo !== photo || this.#small.crop !== crop) {
      const picture = photo && photo.preview.width > 0 ? smallPicture(photo.preview, this.photoCrop) : undefined;
      this.#small = {photo, crop, ...(picture && {picture})};
    }
    const {picture} = this.#small;
    return recordOf(this.state, {
      title: this.name.trim().slice(0, 200), made: new Date().toISOString(), measured: this.allMeasured, ...(picture && {picture}),
    });
  }

  /** The part of the photo that is kept, which is not the next shot's once that is taken from elsewhere. */
  private get photoCrop(): CropShare {
    return photoCrop(this.thing<PhotoPlace>(PHOTO_PLACE), this.shot);
  }

  /** What was measured on the photo, and what the gray card and the measured spot on the bench say. */
  protected get allMeasured(): Measured {
    return {...this.measured, ...benchFacts(this.thing<GrayCard>('grayCard'), this.thing<Level>('level'))};
  }

  /** Address of a page with this shot in it. */
  get link(): string {
    const base = (this.page ? new URL(this.page, this.baseURI).href : location.href).replace(/#.*$/s, '');
    return `${base}#${writeLink(this.state, this.#kept)}`;
  }

  /** Measures the photo of the bench once its crop is still. */
  #measure(): void {
    const lying = this.thing<Photo>('photo');
    const photo = lying && lying.preview.width > 0 ? lying : undefined;
    const crop = JSON.stringify(this.photoCrop);
    const before = this.#measuredOf;
    if (photo === before.photo && (crop === before.crop || !photo)) return;
    this.#measuredOf = {photo, crop};
    clearTimeout(this.#still);
    if (!photo) this.measured = {};
    else this.#still = setTimeout(() => { void this.#measureNow(photo, crop); }, STILL_MS);
  }

  async #measureNow(photo: Photo, crop: string): Promise<void> {
    const {fileFacts, measureCrop} = await import('./measure.js');
    const measured = {...fileFacts(photo), ...await measureCrop(photo, this.photoCrop)};
    if (this.#measuredOf.photo === photo && this.#measuredOf.crop === crop) this.measured = measured;
  }

  #draw(canvas: HTMLCanvasElement): void {
    const at = canvas.dataset.at;
    const picture = at === undefined ? undefined : this.shots[Number(at)]?.picture;
    const preview = this.thing<Photo>('photo')?.preview;
    const wanted = at === undefined ? `${JSON.stringify(this.photoCrop)} ${preview?.width}` : picture;
    if (this.#drawn.get(canvas) === wanted && at !== undefined) return;
    this.#drawn.set(canvas, wanted);
    if (at === undefined && preview && preview.width > 0) drawSmall(canvas, preview, this.photoCrop);
    else if (picture) void drawKept(canvas, picture).then((drawn) => { canvas.hidden = !drawn; });
  }

  // —— links ——

  readonly #hashChanged = (): void => { if (this.followLink) this.#follow(); };

  #follow(): void {
    const reading = readLink(location.hash);
    if (!reading) return;
    if (this.state !== EMPTY_STATE && this.hasUpdated) this.#before(({acts}) => acts.link);
    this.#kept = reading.kept;
    this.notices = reading.notices;
    this.replace(reading.state, false);
    this.message = ({linkTaken}) => linkTaken;
  }

  // —— keeping ——

  #before(what: Saying, pressed = '.keep'): void {
    this.#undo = [...this.#undo, {what, shots: this.shots, state: this.state, pressed}].slice(-MOST_UNDO);
    this.notices = [];
  }

  /** Takes a list that a reader made, keeps it on the device where that was asked for, and tells the page. */
  #take(shots: readonly ShotRecord[], message: Saying | null): void {
    this.shots = shots;
    this.message = message;
    void this.#store();
    this.dispatchEvent(new ShotsChangeEvent(shots));
  }

  #keep(): void {
    const count = this.shots.length + 1;
    this.#before(({acts}) => acts.keep(count));
    const {record} = this;
    this.name = '';
    this.#take([...this.shots, {...record, title: record.title || this.words.numbered(count)}], (words) => words.kept(shotNamed(words, count, record.title)));
  }

  #remove(at: number): void {
    this.#before(({acts}) => acts.remove(at + 1), rowOf(at, '.remove'));
    this.#take(without(this.shots, at), null);
    void this.updateComplete.then(() => { this.renderRoot.querySelector<HTMLElement>('.undo')?.focus(); });
  }

  #move(at: number, to: number): void {
    const way = to < at ? '.up' : '.down';
    this.#before(({acts}) => acts.move(at + 1), rowOf(at, way));
    this.#take(moved(this.shots, at, to), null);
    void this.updateComplete.then(() => {
      const row = this.renderRoot.querySelectorAll('.kept > li')[to];
      (row?.querySelector<HTMLElement>(`${way}:not(:disabled)`) ?? row?.querySelector<HTMLElement>('button:not(:disabled)'))?.focus();
    });
  }

  #putBack(at: number): void {
    const shot = this.shots[at];
    if (!shot) return;
    this.#before(({acts}) => acts.putBack(at + 1), rowOf(at, '.back'));
    this.replace(stateOf(shot), true);
    this.message = (words) => words.isBack(shotNamed(words, at + 1, shot.title));
  }

  #undoLast(): void {
    const last = this.#undo.at(-1);
    if (!last) return;
    this.#undo = this.#undo.slice(0, -1);
    if (last.state !== this.state) this.replace(last.state, true);
    if (last.shots !== this.shots) this.#take(last.shots, null);
    else this.message = null;
    this.notices = [];
    void this.updateComplete.then(() => { this.renderRoot.querySelector<HTMLElement>(last.pressed)?.focus(); });
  }

  /** Adds shots that came from a file, after those that are there. */
  addShots(shots: readonly ShotRecord[]): void {
    this.#before(({acts}) => acts.import, '.add');
    this.#take([...this.shots, ...shots], ({added}) => added(shots.length));
  }

  // —— this device ——

  /** Shots from an earlier visit. What cannot be read is left where it is. */
  async #recall(text: string): Promise<void> {
    const {isFault, readDocument} = await import('../../core/shot/document.js');
    const read = readDocument(text);
    if (isFault(read)) {
      const language = languageOf(this);
      const [{faultWords}] = await Promise.all([import('./along-speech.js'), alongBook.load(language)]);
      const words = alongBook.inLanguage(language);
      const said = words && faultWords(words, read, words.onDevice);
      this.message = said ? () => said : null;
      return;
    }
    // The page may have brought shots of its own that were kept with the others before.
    this.shots = [...read, ...this.shots.filter(({made, title}) => !read.some((shot) => shot.made === made && shot.title === title))];
    this.remembering = true;
  }

  async #store(): Promise<void> {
    if (!this.remembering) return;
    const {writeDocument} = await import('../../core/shot/document.js');
    const why = remember(memoryKey(this.bench), writeDocument(this.shots));
    if (!why) return;
    this.message = (words) => words[why];
    this.remembering = false;
  }

  async #toggleMemory(): Promise<void> {
    this.remembering = !this.remembering;
    const {remembering} = this;
    this.message = ({remembered, forgotten}) => (remembering ? remembered : forgotten);
    if (this.remembering) await this.#store();
    else forget(memoryKey(this.bench));
  }

  /** Another window of this page changed what is kept. */
  readonly #stored = (event: StorageEvent): void => {
    if (event.key !== memoryKey(this.bench) || !this.remembering || event.newValue === null) return;
    this.#before(({acts}) => acts.otherPage);
    this.shots = [];
    void this.#recall(event.newValue);
  };

  // —— drawing ——

  protected override render(): TemplateResult {
    const {words, state, allMeasured} = this;
    const sheet = sheetIn(languageOfSheet(words), {title: this.name, values: state.values, texts: state.texts, measured: allMeasured});
    const photo = this.thing<Photo>('photo');
    const pictured = photo !== undefined && photo.preview.width > 0;
    return html`<section class="plate" part="plate" aria-label=${words.sheet} lang=${this.spokenLanguage}>
      <p class="verdict" part="verdict">${this.verdictText()}</p>
      ${this.notices.map((notice) => html`<p class="problem">${noticeWords(words, notice)}</p>`)}
      ${textField({id: 'name', say: words.say, label: words.name, text: this.name, hint: words.nameHint, onType: (text) => { this.name = text; }})}
      <div class="sheet ${pictured ? 'pictured' : ''}" part="sheet">
        ${pictured ? html`<canvas role="img" aria-label=${words.picture(this.name || words.thisShot)}></canvas>` : nothing}
        <div class="stated">${sheet.groups.length
          ? html`${sheetGroups(sheet.groups)}${missingView(words.missing, missingWords(words, state.values, allMeasured))}`
          : html`<p class="note">${words.nothing}</p>`}</div>
      </div>
      <div class="field" part="field"><label for="note">${words.note}</label>
        <textarea id="note" .value=${live(this.shot.note)} @change=${(event: Event) => { this.type('note', (event.target as HTMLTextAreaElement).value); }}></textarea></div>
      ${this.#renderActs()}
      ${this.shots.length ? html`<p class="head" id="kept">${words.keptHead}</p>
        <ol class="kept" part="kept" aria-labelledby="kept">${this.shots.map((shot, at) => this.#renderKept(shot, at))}</ol>` : nothing}
      <div class="folds screen-only">
        ${this.#renderFold(words.along, (along) => along.renderAlong())}
        ${this.#renderFold(words.page, (along) => along.renderPage())}
      </div>
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderActs(): TemplateResult {
    const {words} = this;
    const undo = this.#undo.at(-1);
    return html`<div class="row screen-only">
      <button type="button" class="keep" @click=${() => { this.#keep(); }}>${words.keep}</button>
      <button type="button" aria-pressed=${this.remembering ? 'true' : 'false'} @click=${() => { void this.#toggleMemory(); }}>${words.remember}</button>
      ${undo ? html`<button type="button" class="undo" @click=${() => { this.#undoLast(); }}>${words.undo(undo.what(words))}</button>` : nothing}
      <p class="note message" role="status">${this.message?.(words) ?? ''}</p>
    </div>`;
  }

  #renderKept(shot: ShotRecord, at: number): TemplateResult {
    const {words} = this;
    const language = languageOfSheet(words);
    const before = this.shots[at - 1];
    const changes = before ? shotDifference(before.values, shot.values) : [];
    const unit = shot.values.unit ?? 'mm';
    const told = [
      ...changes.map((change) => changeWords(words, change, unit)),
      ...(before ? measuredDifferenceIn(language, before.measured, shot.measured).map((change) => measuredWords(words, change)) : []),
    ];
    return html`<li>
      <span class="count">${at + 1}</span>
      <div class="told">
        <p class="called">${shot.title}</p>
        <p class="taken">${settingsTight(settingsIn(language, shot.values), language)}</p>
        <p class="note"><time datetime=${shot.made}>${madeWords(words, shot.made)}</time></p>
        ${shot.values.note ? html`<p>${shot.values.note}</p>` : nothing}
        ${told.length ? html`<ul class="changes">${told.map((line) => html`<li>${line}</li>`)}</ul>`
          : html`<p class="note">${before ? words.same : words.first}</p>`}
        <div class="row screen-only">
          <button type="button" class="back" aria-label=${words.putBackOf(at + 1)} @click=${() => { this.#putBack(at); }}>${words.putBack}</button>
          <button type="button" class="up" ?disabled=${at === 0} aria-label=${words.upOf(at + 1)} @click=${() => { this.#move(at, at - 1); }}>${words.up}</button>
          <button type="button" class="down" ?disabled=${at === this.shots.length - 1} aria-label=${words.downOf(at + 1)} @click=${() => { this.#move(at, at + 1); }}>${words.down}</button>
          <button type="button" class="remove" aria-label=${words.removeOf(at + 1)} @click=${() => { this.#remove(at); }}>${words.remove}</button>
        </div>
      </div>
      ${shot.picture ? html`<canvas data-at=${at} role="img" aria-label=${words.picture(shot.title)}></canvas>` : nothing}
    </li>`;
  }

  /** What takes shots along is fetched with the first fold that is opened. */
  #renderFold(summary: string, view: (along: Along) => TemplateResult | typeof nothing): TemplateResult {
    const part = this.opened ? this.later(loadAlong) : undefined;
    if (part) this.#along ??= new part.Along(this, {changed: () => { this.requestUpdate(); }, state: () => this.state, sentences: () => this.words, words: () => this.wordsOf(alongBook)});
    return html`<details @toggle=${this.#open}><summary>${summary}</summary>
      ${this.#along ? view(this.#along) : part === null ? html`<p class="note">${this.words.say.family.unreachable}</p>` : nothing}
    </details>`;
  }

  readonly #open = (): void => { this.opened = true; };
}
