import {html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import {writeLights, type Lights} from '../../core/light/set-text.js';
import type {TableSet} from '../../core/light/set.js';
import {Problem} from '../../core/problem.js';
import {EXPOSURE_FIELDS} from '../../core/shot/exposure-fields.js';
import {LIGHT_FIELDS} from '../../core/shot/light-fields.js';
import {OPTICS_FIELDS} from '../../core/shot/optics-fields.js';
import {PICTURE_FIELDS} from '../../core/shot/picture-fields.js';
import type {CropShare, Shot, ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';
import type {Level} from '../../core/tone/level.js';
import {readNumber, type LengthUnit} from '../../core/units.js';
import {ShotProblemEvent} from '../shared/events.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {takenBack} from '../shared/undo.js';
import {shadeBook} from './book.js';
import {shadedLamp, sheetFor, type Sheet} from './draw.js';
import type {PhotoCode} from './extras.js';
import {Mover} from './mover.js';
import {picture} from './picture.js';
import {UNSEEN, byLight, changesOf, readSet, type Reading} from './reading.js';
import {restored} from './restore.js';
import {
  closeWords, darkerWords, impossibleWords, keptWords, offsetWords, refusedWords, verdictWords, wishWords,
} from './speech.js';
import {stripPicture, stripSheet} from './strip.js';
import {shadeStyles} from './styles.js';
import {added, thingsOf, without, type Added, type Thing} from './things.js';
import {waysView, type Found} from './ways-view.js';
import {wishFields, type EntryHost} from './wish-view.js';
import {moveTitle, noneWords} from './ways-speech.js';
import type {ShadeWords} from './words/en.js';

/** What stands behind folds. */
const loadExtras = () => import('./extras.js');
const loadThings = () => import('./things-view.js');

/** A way out that was taken, and the shot before it. */
interface Done {
  readonly what: string;
  readonly keys: readonly ShotKey[];
  readonly before: ShotState;
  /** What had been found then. */
  readonly found: Found | undefined;
}

/** Values that have a field of their own; what is refused of the others is said at the end. */
const FIELDED: readonly ShotKey[] = [
  'lights', 'backdropDistance', 'backdropReflectance', 'backdropWish', 'shutter', 'figureWidth', 'figureHeight', 'baseDepth', 'fieldWidth',
  'focalLength', 'tilt',
];

/** Those of them whose field stands behind the last fold, which opens when one was refused. */
const IN_SET_UP: readonly ShotKey[] = ['lights', 'backdropReflectance', 'figureWidth', 'figureHeight', 'baseDepth', 'fieldWidth', 'focalLength', 'tilt'];

/**
 * A plan and a side view to scale with the light on the backdrop: how dark it will be, why, and where a card must stand.
 *
 * @summary How dark the backdrop will be: lamps, distances and a flag, in a plan that can be dragged
 * @slot - Fallback: shown before the script runs, and while nothing can be drawn
 * @attr {string} bench - Name of the shot shared with other elements of the page
 * @attr {string} lights - Lamps and flags, one after another: `key 180x180 at -230,-200,300 aim 0,0,45 power 0; flag 150x180 at 70,200,400`.
 *   Places are right, behind and above the middle of the figure's base, or in words: `230 left 200 front 300 up`. Lamps without a
 *   rectangle are `round 200`, `small` or `bulb`; flags may be `facing camera`, `side`, `up`; `table 18%` lets the table top throw light back
 * @attr {string} backdrop-distance - Middle of the base to the backdrop: `300 mm`, `2 ft`
 * @attr {string} backdrop-reflectance - `black card`, `black velvet`, `dark gray card`, `gray card`, `white card`, or `5%`
 * @attr {string} backdrop-wish - Stops under the gray card that the backdrop should have; 4.5 when left out
 * @attr {50|60} mains - Hz of the mains the lamps hang on; 50 when left out
 * @attr {string} base-depth - Front edge to back edge of the base; so with `figure-width`, `figure-height`, `overhang-front`, `overhang-back`
 * @attr {string} field-width - Width that fills the frame in the focus plane; with `focal-length`, `tilt`, `focus`, `sensor-width`,
 *   `sensor-height` and `crop` it says where the camera stands and what it sees of the backdrop
 * @attr {string} shutter - Exposure time; so with `aperture`, `iso` and the metered ones: `metered-shutter` …
 * @attr {mm|cm|in} unit - Unit lengths are shown in
 * @fires {ShotChangeEvent} shot-change - After a reader changed something; `changes` and the whole `shot` in base units
 * @fires {ShotProblemEvent} shot-problem - When text or a value could not be used
 * @csspart plate - The whole
 * @csspart verdict - How dark the backdrop will be
 * @csspart strip - The backdrop as it will look, and the curve below it
 * @csspart drawing - Plan and side view
 * @csspart cautions - What to mind with lamps; always shown
 * @csspart field - A label with its field
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved, and the wish
 * @cssprop [--lampblack-paper=transparent] - Ground of the element
 */
export class BackdropShade extends ShotElement<ShadeWords> {
  static override readonly shotKeys = [
    'lights', 'backdropDistance', 'backdropReflectance', 'backdropWish', 'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter',
    'meteredIso', 'clicksPerStop', 'shutterFastest', 'shutterSlowest', 'apertureWidest', 'apertureSmallest', 'focalLength',
    'sensorWidth', 'sensorHeight', 'fieldWidth', 'crop', 'baseDepth', 'figureWidth', 'figureHeight', 'overhangFront', 'overhangBack', 'tilt', 'focus', 'unit',
  ] as const satisfies readonly ShotKey[];

  static override readonly fields = {...EXPOSURE_FIELDS, ...OPTICS_FIELDS, ...PICTURE_FIELDS, ...LIGHT_FIELDS};
  static override readonly book = shadeBook;
  static override styles = [familyStyles, shadeStyles];

  static override properties: PropertyDeclarations = {mains: {type: String}};

  /** Lamps, flags and table top. @attr lights */
  declare lights: Lights;
  /** mm. @attr backdrop-distance */
  declare backdropDistance: number;
  /** Share of light, above 0 to 1. @attr backdrop-reflectance */
  declare backdropReflectance: number;
  /** Stops under the gray card. @attr backdrop-wish */
  declare backdropWish: number;
  /** f-number. @attr aperture */
  declare aperture: number;
  /** s. @attr shutter */
  declare shutter: number;
  /** ISO speed. @attr iso */
  declare iso: number;
  /** mm. @attr field-width */
  declare fieldWidth: number;
  /** mm. @attr focal-length */
  declare focalLength: number;
  /** mm. @attr base-depth */
  declare baseDepth: number;
  /** mm. @attr figure-width */
  declare figureWidth: number;
  /** mm. @attr figure-height */
  declare figureHeight: number;
  /** Degrees the camera looks down. @attr tilt */
  declare tilt: number;
  /** Part of the frame that is kept, as shares. @attr crop */
  declare crop: CropShare;
  /** Unit lengths are shown in. @attr unit */
  declare unit: LengthUnit;

  /** Mains frequency, `50` or `60` Hz; anything else is taken for 50. @attr mains */
  declare mains: string;

  #reading: Reading | undefined;
  #trouble: Problem | undefined;
  #sheet: Sheet | undefined;
  /** px of the strip and of the drawing. */
  #widths: readonly [strip: number, drawing: number] = [600, 600];
  #sizes: ResizeObserver | undefined;
  #chosen: Thing = 'lamp0';
  #wrong: ReadonlyMap<string, Problem> = new Map();
  #found: Found | undefined;
  /** Light on the figure when the exposure in use was settled. */
  #metered: {readonly exposure: string; readonly lights: Lights; readonly onCard: number} | undefined;
  #acted = false;
  #photo: PhotoCode = {text: ''};
  #done: Done | undefined;
  readonly #unfolded = new Set<string>();
  readonly #mover = new Mover({
    sheet: () => this.#sheet,
    shot: () => this.shot,
    choose: (thing) => { this.#choose(thing); },
    move: (changes) => { this.#wrong = new Map(); this.act(changes); },
    release: () => { this.requestUpdate(); },
  });

  constructor() {
    super();
    this.mains = '50';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#sizes ??= new ResizeObserver(() => { requestAnimationFrame(() => { this.#measure(); }); });
    this.#sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes?.disconnect();
    this.#mover.release();
  }

  /** Draws for the widths there are. */
  #measure(): void {
    const [strip, drawing] = ['.strip', '.drawing'].map((name) => this.renderRoot.querySelector(name)?.clientWidth ?? 0) as [number, number];
    if (!strip || !drawing || (strip === this.#widths[0] && drawing === this.#widths[1])) return;
    this.#widths = [strip, drawing];
    this.requestUpdate();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const {shot} = this;
    if (!thingsOf(shot).includes(this.#chosen)) this.#choose('lamp0');
    try {
      const reading = readSet(shot);
      this.#sheet = this.#mover.sheet ?? sheetFor(this.#widths[1], reading);
      this.#reading = reading;
      this.#trouble = undefined;
      this.#meter(reading);
    } catch (error) { // the last good picture stays
      if (!(error instanceof Problem)) throw error;
      this.#trouble = error;
    }
    if (this.#found && this.#found.about !== this.#about) this.#found = undefined;
  }

  /**
   * A new exposure is one for the light there is now, and so is a set that was not made here by hand; what the reader then
   * changes of the light is held against it.
   */
  #meter({shot, onCard}: Reading): void {
    const {aperture, shutter, iso, meteredAperture, meteredShutter, meteredIso} = shot;
    const exposure = [aperture, shutter, iso, meteredAperture, meteredShutter, meteredIso].join();
    const before = this.#metered;
    const same = before?.exposure === exposure && (before.lights === shot.lights || this.#acted);
    this.#metered = {exposure, lights: shot.lights, onCard: same ? before.onCard : onCard};
    this.#acted = false;
  }

  /** Stops more on the figure than when it was metered. */
  get #pending(): number {
    return this.#metered && this.#reading ? Math.log2(this.#reading.onCard / this.#metered.onCard) : 0;
  }

  /** What a search depends on. */
  get #about(): string {
    return this.#reading ? JSON.stringify([this.#reading.set, this.#reading.places, this.shot.backdropWish]) : '';
  }

  protected override verdictText(): string {
    const {words} = this;
    if (this.#trouble) return impossibleWords(words, this.#trouble);
    const reading = this.#reading;
    if (!reading) return '';
    const found = this.#found;
    const searched = !found ? '' : found.moves === null ? words.looking
      : found.moves.map((move) => moveTitle(words, move, reading.shot)).join('. ') || noneWords(words, found.kind);
    return [verdictWords(words, reading), wishWords(words, reading), keptWords(words, reading), searched].filter(Boolean).join(' ');
  }

  // —— what a reader can do ——

  protected override act(changes: Partial<Shot>, texts?: ShotState['texts']): void {
    this.#acted = true;
    this.#done = undefined;
    super.act(changes, texts);
  }

  #choose(thing: Thing): void {
    if (thing === this.#chosen) return;
    this.#chosen = thing;
    this.#wrong = new Map();
    this.requestUpdate();
  }

  /** Looks for ways out once the page has said so: a search can take a third of a second. */
  async #look(kind: Found['kind']): Promise<void> {
    const about = this.#about;
    this.#found = {kind, about, moves: null};
    this.requestUpdate();
    await this.updateComplete;
    const [search] = await Promise.all([
      import('../../core/light/suggest.js'), new Promise((done) => { requestAnimationFrame(() => { setTimeout(done); }); }),
    ]);
    const reading = this.#reading;
    if (!reading || this.#about !== about) return;
    try {
      const moves = kind === 'moves' ? search.suggestMoves(reading.set, reading.places, reading.shot.backdropWish)
        : byLight(reading).map((lamp) => search.suggestFlag(reading.set, lamp, reading.places)).filter((move) => move !== null)
          .filter(({belowGray}) => belowGray > reading.brightest.belowGray + 0.1).sort((a, b) => b.belowGray - a.belowGray);
      this.#found = {kind, about, moves: moves.slice(0, 4)};
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      this.#found = {kind, about, moves: []};
    }
    this.requestUpdate();
  }

  /** Takes a found set over, and the shutter that restores the figure's light with it. */
  async #take(what: string, set: TableSet, stops: number, chosen?: Thing): Promise<void> {
    const {shot} = this;
    await this.#doAs(what, {...changesOf(set, shot), ...(Math.abs(stops) < UNSEEN ? {} : restored(stops + this.#pending, shot))}, chosen);
  }

  /** Takes a way out that can be taken back. */
  async #doAs(what: string, changes: Partial<Shot>, chosen?: Thing): Promise<void> {
    const [before, found] = [this.state, this.#found];
    this.act(changes);
    if (chosen) this.#choose(chosen);
    this.#done = {what, keys: Object.keys(changes) as ShotKey[], before, found};
    this.requestUpdate();
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.undo')?.focus({preventScroll: true});
  }

  #undo = (): void => {
    const done = this.#done;
    if (!done) return;
    this.#done = undefined;
    this.#acted = true;
    this.replace(takenBack(this.state, done.before, done.keys), true);
    // What had been found is there again, as long as it is still about the same set.
    this.#found = done.found;
  };

  #add(what: Added): void {
    const {changes, thing} = added(what, what === 'flag' ? '' : this.words.newNames[what], this.shot);
    this.act(changes);
    this.#choose(thing);
  }

  #compare(text: string): void {
    const code = readNumber(text) ?? NaN;
    const problem = text.trim() === '' || (code > 0 && code <= 255) ? undefined : new Problem('backdrop-level', text, this.words.photoWanted);
    this.#photo = problem ? {text, problem, ...(this.#photo.code === undefined ? {} : {code: this.#photo.code})} : text.trim() ? {text, code} : {text: ''};
    if (problem) this.dispatchEvent(new ShotProblemEvent(problem));
    this.requestUpdate();
  }

  // —— saying it ——

  protected override render(): TemplateResult {
    const reading = this.#reading;
    const {words} = this;
    return html`<section class="plate" part="plate" aria-label=${words.plate} lang=${this.spokenLanguage}>
      ${this.#trouble ? html`<p class="problem">${impossibleWords(words, this.#trouble)}</p>` : nothing}
      ${reading ? this.#renderReading(reading) : html`<slot></slot>`}
      ${this.#renderCautions(reading)}
      ${reading ? this.#renderSetUp(reading) : nothing}
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderReading(reading: Reading): TemplateResult {
    const {words} = this;
    const {say} = words;
    const done = this.#done;
    const strip = stripSheet(this.#widths[0], reading);
    return html`
      <p class="verdict" part="verdict">${verdictWords(words, reading)}</p>
      <p class="reason">${wishWords(words, reading)} ${keptWords(words, reading)} ${darkerWords(words, reading)}</p>
      ${wishFields(this.#host)}
      <div class="strip" part="strip"><svg role="img" aria-label=${words.strip(strip.named.map((at) => say.number(reading.strip[at]?.code ?? 0)).join(', '))}
        width=${strip.width} height=${strip.height} viewBox="0 0 ${strip.width} ${strip.height}">${stripPicture(words, strip, reading)}</svg></div>
      <p class="note">${words.under}</p>
      <div class="body">
        <div class="column">
          ${waysView(words, reading, this.#found, this.#pending, {
            look: (kind) => { void this.#look(kind); },
            take: (what, set, stops, chosen) => { void this.#take(what, set, stops, chosen); },
            act: (what, changes) => { void this.#doAs(what, changes); },
          })}
          ${done ? html`<p class="done screen-only"><span>${words.done(done.what)}</span> <button type="button" class="undo" @click=${this.#undo}>${words.undo}</button></p>` : nothing}
        </div>
        ${this.#renderDrawing(reading)}
        <div class="column">
          <p class="note">${words.glossary}</p>
          ${reading.set.flags.some((flag) => shadedLamp(reading, flag) >= 0) ? html`<p class="note">${words.shadows}</p>` : nothing}
          <p class="note screen-only" id="keys">${words.keys}</p>
          <p class="note print-only">${writeLights(reading.shot.lights)}</p>
        </div>
      </div>`;
  }

  #renderDrawing(reading: Reading): TemplateResult {
    const sheet = this.#sheet;
    const mover = this.#mover;
    return sheet ? html`<div class="drawing" part="drawing"><svg role="group" aria-label=${this.words.drawing} width=${sheet.width} height=${sheet.height}
      viewBox="0 0 ${sheet.width} ${sheet.height}" @keydown=${mover.key} @pointerdown=${mover.grip} @pointermove=${mover.drag}
      @pointerup=${mover.release} @pointercancel=${mover.release}>${picture(this.words, sheet, reading, this.#chosen)}</svg></div>` : html``;
  }

  /** Never left out, on the screen and on paper. */
  #renderCautions(reading: Reading | undefined): TemplateResult {
    const {words} = this;
    return html`<aside class="cautions" part="cautions" aria-label=${words.cautionsTitle}>
      <h3>${words.cautionsTitle}</h3>
      ${reading?.close.map((close) => html`<p class="problem">${closeWords(words, close, reading)}</p>`) ?? nothing}
      <ul>${words.cautions.map((sentence) => html`<li>${sentence}</li>`)}</ul>
    </aside>`;
  }

  #renderSetUp(reading: Reading): TemplateResult {
    const {words} = this;
    const {problems} = this.state;
    const host = this.#host;
    const others = (Object.keys(problems) as ShotKey[]).filter((key) => !FIELDED.includes(key)
      && BackdropShade.shotKeys.some((own) => own === key));
    const chosen = this.#chosen;
    const refusedIn = (keys: readonly ShotKey[]) => keys.some((key) => problems[key]);
    return html`<div class="set-up">
      <p class="note">${offsetWords(words, reading)} ${this.shot.lights.table > 0 ? '' : words.direct} ${words.bounced}</p>
      ${others.map((key) => { const problem = problems[key]; return problem ? html`<p class="problem">${refusedWords(words, problem)}</p>` : nothing; })}
      ${this.#renderFold('things', loadThings, words.things, (view) => view.thingsView(host, chosen, {
        choose: (thing) => { this.#choose(thing); }, add: (what) => { this.#add(what); },
        takeAway: (thing) => { this.act(without(thing, this.shot)); },
      }))}
      ${this.#renderFold('photo', loadExtras, words.photo, (view) =>
        view.photoView(words, reading, this.#photo, this.thing<Level>('level')?.luminance.code, (text) => { this.#compare(text); }))}
      ${this.#renderFold('mains', loadExtras, words.mains, (view) => view.mainsView(words, host, this.mains, (mains) => { this.mains = mains; }))}
      ${this.#renderFold('set-up', loadThings, words.setUp, (view) => view.setUpView(host, chosen), refusedIn(IN_SET_UP))}
    </div>`;
  }

  /** A fold whose inside is fetched when it is first opened. @param open - whether something in it wants to be seen */
  #renderFold<M>(name: string, load: () => Promise<M>, summary: string, inside: (view: M) => TemplateResult, open = false): TemplateResult {
    if (open) this.#unfolded.add(name);
    const view = this.#unfolded.has(name) ? this.later(load) : undefined;
    return html`<details id=${`fold-${name}`} ?open=${open} @toggle=${(event: Event) => { if ((event.target as HTMLDetailsElement).open) { this.#unfolded.add(name); this.requestUpdate(); } }}>
      <summary>${summary}</summary>
      ${view ? inside(view) : view === null ? html`<p class="note">${this.words.say.family.unreachable}</p>` : nothing}
    </details>`;
  }

  get #host(): EntryHost {
    return {
      shot: this.shot,
      words: this.words,
      field: (key, label, more) => this.shotField(key, label, more),
      act: (changes) => { this.act(changes); },
      type: (key, text) => { this.type(key, text); },
      wrong: this.#wrong,
      refuse: (id, problem) => {
        const wrong = new Map(this.#wrong);
        if (problem) wrong.set(id, problem); else wrong.delete(id);
        this.#wrong = wrong;
        if (problem) this.dispatchEvent(new ShotProblemEvent(problem));
        this.requestUpdate();
      },
    };
  }
}
