import {html, isServer, nothing, type PropertyValues, type TemplateResult} from 'lit';
import type {ClicksPerStop} from '../../core/exposure/clicks.js';
import {Problem} from '../../core/problem.js';
import {EXPOSURE_FIELDS} from '../../core/shot/exposure-fields.js';
import {OPTICS_FIELDS} from '../../core/shot/optics-fields.js';
import {PICTURE_FIELDS} from '../../core/shot/picture-fields.js';
import type {PlannedFrames} from '../../core/shot/plan-job.js';
import type {ApertureShown, CropShare, Shot, ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';
import type {Way} from '../../core/shot/ways-out.js';
import type {LengthUnit} from '../../core/units.js';
import {ShotProblemEvent} from '../shared/events.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {takenBack} from '../shared/undo.js';
import {zoneBook} from './book.js';
import {readDetail, type SaidDetail} from './detail.js';
import {sheetFor, type Sheet} from './draw.js';
import {ShownAperture, everyday, withUnit, type EntryHost} from './entries.js';
import {FocusSlider} from './focus-slider.js';
import {Folding, loadFinest} from './folding.js';
import {foldBook} from './folds/book.js';
import type {DetailContrast} from './folds/detail-contrast.js';
import type {FoldName} from './folds/host.js';
import {blurPanel} from './panel.js';
import {focusHandle, picture} from './picture.js';
import {readShot, type Reading} from './reading.js';
import {NO_NOTES, type RulerNotes, type ShownPhoto} from './ruler-notes.js';
import {diffractionText, placeText, plannedText, reasonText, troubleText, verdictText} from './speech.js';
import {zoneStyles} from './styles.js';
import {wayTitle} from './ways-speech.js';
import {waysView, type Done} from './ways-view.js';
import type {ZoneWords} from './words/en.js';

/** What was pressed last: where, in words, what it changed, and the state before. */
interface Pressed {
  readonly place: FoldName | 'ways';
  readonly what: () => string;
  readonly changes: Partial<Shot>;
  readonly before: ShotState;
}

/**
 * @summary The sharp zone drawn against a ruler and the figure's base: what falls outside, and the ways out
 * @slot - Fallback: shown before the script runs, and while nothing can be drawn
 * @attr {string} bench - Name of the shot shared with other elements of the page
 * @attr {string} aperture - f-number as marked: `11`, `f/11`, `5,6`
 * @attr {string} shutter - Exposure time: `1/60`, `0"6`, `2 s`
 * @attr {string} iso - ISO speed
 * @attr {string} focal-length - `60 mm`
 * @attr {string} field-width - Width that fills the frame in the focus plane: `180 mm`, `7 in`
 * @attr {string} base-depth - Front edge to back edge of the base
 * @attr {string} overhang-front - How far the figure reaches past the front edge; `overhang-front-height` how high up
 * @attr {string} overhang-back - The same past the back edge; `overhang-back-height`
 * @attr {string} figure-height - Top of the figure above the table
 * @attr {string} tilt - Degrees the camera looks down
 * @attr {string} focus - Focus plane behind the base's front edge; negative = before it
 * @attr {string} sensor-width - mm; `sensor-height`, `frame-width` in pixels
 * @attr {string} crop - Part of the frame that is kept: `10% 5% 80% 90%`
 * @attr {string} picture-width - Pixels across the finished picture
 * @attr {string} blur-limit - Finished pixels of blur that still look sharp
 * @attr {string} room - As far back as the tripod can go, from the sensor mark to the focus plane: `1.5 m`
 * @attr {string} detail - Width of the finest line that is to be seen: `1 px`, or `0.2 mm` on the figure
 * @attr {marked|working} aperture-shown - Which f-number the body shows in close-up
 * @attr {mm|cm|in} unit - Unit lengths are shown in
 * @fires {ShotChangeEvent} shot-change - After a reader changed a value
 * @fires {ShotProblemEvent} shot-problem - When text or a value could not be used
 * @csspart plate - The whole
 * @csspart verdict - The verdict
 * @csspart zone - The sharp zone in the side view
 * @csspart bar - The sharp part of the bar on the ruler
 * @csspart focus - The focus plane
 * @csspart handle - The tab by which it is moved
 * @csspart field - One label with its input
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved
 * @cssprop [--lampblack-paper=transparent] - Background
 */
export class SharpZoneBar extends ShotElement<ZoneWords> {
  static override readonly shotKeys = [
    'aperture', 'shutter', 'iso', 'clicksPerStop', 'apertureWidest', 'apertureSmallest', 'shutterFastest', 'shutterSlowest',
    'isoLowest', 'isoHighest', 'focalLength', 'pupilRatio', 'sensorWidth', 'sensorHeight', 'fieldWidth', 'frameWidth',
    'crop', 'pictureWidth', 'blurLimit', 'apertureShown', 'baseDepth', 'overhangFront', 'overhangFrontHeight', 'overhangBack',
    'overhangBackHeight', 'figureHeight', 'tilt', 'focus', 'room', 'unit',
  ] as const satisfies readonly ShotKey[];

  static override readonly fields = {...EXPOSURE_FIELDS, ...OPTICS_FIELDS, ...PICTURE_FIELDS};
  static override readonly book = zoneBook;
  static override properties = {detail: {converter: (text: string | null) => text ?? '1 px'}};

  static override styles = [familyStyles, zoneStyles];

  /** f-number as marked for infinity. @attr aperture */
  declare aperture: number;
  /** Exposure time, s. @attr shutter */
  declare shutter: number;
  /** ISO speed. @attr iso */
  declare iso: number;
  /** Clicks of the dials to one stop. @attr clicks-per-stop */
  declare clicksPerStop: ClicksPerStop;
  /** f-number fully open. @attr aperture-widest */
  declare apertureWidest: number;
  /** f-number fully closed. @attr aperture-smallest */
  declare apertureSmallest: number;
  /** Shortest time, s. @attr shutter-fastest */
  declare shutterFastest: number;
  /** Longest timed exposure, s. @attr shutter-slowest */
  declare shutterSlowest: number;
  /** Base ISO. @attr iso-lowest */
  declare isoLowest: number;
  /** Highest ISO that would be used. @attr iso-highest */
  declare isoHighest: number;
  /** mm. @attr focal-length */
  declare focalLength: number;
  /** Exit pupil / entrance pupil; 1 when unknown. @attr pupil-ratio */
  declare pupilRatio: number;
  /** mm. @attr sensor-width */
  declare sensorWidth: number;
  /** mm. @attr sensor-height */
  declare sensorHeight: number;
  /** Width that fills the frame in the focus plane, mm. @attr field-width */
  declare fieldWidth: number;
  /** Pixels across the frame. @attr frame-width */
  declare frameWidth: number;
  /** Part of the frame that is kept, as shares. @attr crop */
  declare crop: CropShare;
  /** Pixels across the finished picture. @attr picture-width */
  declare pictureWidth: number;
  /** Finished pixels of blur that still look sharp. @attr blur-limit */
  declare blurLimit: number;
  /** Which f-number the body shows in close-up. @attr aperture-shown */
  declare apertureShown: ApertureShown;
  /** mm. @attr base-depth */
  declare baseDepth: number;
  /** mm past the front edge. @attr overhang-front */
  declare overhangFront: number;
  /** mm above the table. @attr overhang-front-height */
  declare overhangFrontHeight: number;
  /** mm past the back edge. @attr overhang-back */
  declare overhangBack: number;
  /** mm above the table. @attr overhang-back-height */
  declare overhangBackHeight: number;
  /** mm above the table. @attr figure-height */
  declare figureHeight: number;
  /** Degrees the camera looks down. @attr tilt */
  declare tilt: number;
  /** Focus plane, mm behind the base's front edge; the element's own `focus()` keeps its meaning. @attr focus */
  declare focusPlane: number;
  /** As far back as the tripod can go, mm from the sensor mark to the focus plane. @attr room */
  declare room: number;
  /** Unit lengths are shown in. @attr unit */
  declare unit: LengthUnit;

  /** Width of the finest line that is to be seen, as written: `1 px`, `0.2 mm` on the figure. @attr detail */
  declare detail: string;

  #reading: Reading | undefined;
  #trouble: Problem | undefined;
  #sheet: Sheet | undefined;
  /** CSS px; as a server would have it until it is measured. */
  #width = 600;
  #sizes: ResizeObserver | undefined;
  #detail: SaidDetail = {pixels: 1};
  #detailProblem: Problem | undefined;
  #contrast: DetailContrast | undefined;
  /** Marks of the focus planes of several frames. */
  #frames: readonly number[] = [];
  #curve: 'blur' | 'contrast' = 'blur';
  #pressed: Pressed | undefined;
  readonly #shownAperture = new ShownAperture();
  readonly #folding = new Folding({
    later: (load) => this.later(load), entryHost: () => this.#entryHost, foldWords: () => this.wordsOf(foldBook), done: (place) => this.#done(place),
    press: (place, what, changes) => { void this.#press(place, what, changes); }, redraw: () => { this.requestUpdate(); }, wear: (styles) => { this.wear(styles); },
    notes: () => this.thing<RulerNotes>('ruler') ?? NO_NOTES, putNotes: (notes) => { this.putThing('ruler', notes); },
    photo: () => this.#photo, alone: () => this.alone,
  });
  readonly #slider = new FocusSlider(
    () => this.#sheet, () => this.shot, (focus) => { this.act({focus}); }, () => { this.requestUpdate(); });

  constructor() {
    super();
    this.detail = '1 px';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) this.#watchWidth();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes?.disconnect();
    this.#slider.release();
  }

  /** Draws for the width there is: before anything is painted, and from then on a frame later, so that a height that follows does not answer back. */
  #watchWidth(): void {
    this.#sizes ??= new ResizeObserver(() => { requestAnimationFrame(() => { this.#measure(); }); });
    this.#sizes.observe(this);
    this.#measure();
  }

  #measure(): void {
    const width = this.clientWidth;
    if (!width || width === this.#width) return;
    this.#width = width;
    this.requestUpdate();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const {shot} = this;
    if (this.#pressed && Object.entries(this.#pressed.changes).some(([key, value]) => shot[key as ShotKey] !== value)) this.#pressed = undefined;
    this.#takeDetail(changed.has('detail'));
    try {
      const reading = readShot(shot);
      this.#sheet = this.#slider.sheet ?? sheetFor(this.#width, reading.framing.outline, [reading.front, reading.back], shot.focus);
      this.#contrast = this.#curve === 'contrast' ? this.later(loadFinest)?.detailContrast(reading, this.#detail) : undefined;
      const offered = this.#folding.frames(reading, this.#detail);
      this.#frames = offered.length ? offered.map(({focus}) => focus) : this.#planned;
      this.#reading = reading;
      this.#trouble = undefined;
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      this.#trouble = error;
    }
  }

  /** A detail that cannot be read leaves the last one in use. */
  #takeDetail(fresh: boolean): void {
    const detail = readDetail(this.detail, this.shot.unit, this.words.detailWanted);
    this.#detailProblem = detail instanceof Problem ? detail : undefined;
    if (!(detail instanceof Problem)) this.#detail = detail;
    else if (fresh && !isServer) this.dispatchEvent(new ShotProblemEvent(detail));
  }

  protected override updated(): void {
    super.updated();
    if (!this.#sizes) this.#watchWidth();
    this.#folding.paint(this.renderRoot);
  }

  protected override verdictText(): string | undefined {
    return this.#trouble ? troubleText(this.words, this.#trouble) : this.#reading && this.#verdict(this.#reading);
  }

  #verdict(reading: Reading): string {
    const frames = this.#planned.length;
    return frames ? plannedText(this.words, reading, frames) : verdictText(this.words, reading);
  }

  /** Marks of the frames that a linked plan blends, while the shot stands as it set it. */
  get #planned(): readonly number[] {
    const planned = this.thing<PlannedFrames>('frames');
    const {shot} = this;
    return planned && SharpZoneBar.shotKeys.every((key) => key === 'unit' || planned.shot[key] === shot[key]) ? planned.marks : [];
  }

  // —— what a reader can do ——

  /** Sets what a button says, leaves a line there that takes it back, and the hand on it. */
  async #press(place: Pressed['place'], what: () => string, changes: Partial<Shot>): Promise<void> {
    const before = this.state;
    this.act(changes);
    this.#pressed = {place, what, changes, before};
    this.requestUpdate();
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.undo')?.focus({preventScroll: true});
  }

  #pressWay(way: Way): void {
    const {shot} = this;
    void this.#press('ways', () => wayTitle(this.words, way, shot), way.changes);
  }

  #done(place: Pressed['place']): Done | undefined {
    const pressed = this.#pressed;
    if (pressed?.place !== place || !this.#reading) return undefined;
    return {
      text: this.words.done(pressed.what(), this.#verdict(this.#reading)),
      undo: () => {
        this.#pressed = undefined;
        this.replace(takenBack(this.state, pressed.before, Object.keys(pressed.changes) as ShotKey[]), true);
      },
    };
  }

  /** The photo that a linked element has open. */
  get #photo(): ShownPhoto | undefined {
    const photo = this.thing<ShownPhoto>('photo');
    return photo && photo.preview.width > 0 ? photo : undefined;
  }

  // —— rendering ——

  protected override render(): TemplateResult {
    const reading = this.#reading;
    return html`<section class="plate" part="plate" lang=${this.spokenLanguage}>
      ${this.#trouble ? html`<p class="problem">${troubleText(this.words, this.#trouble)}</p>` : nothing}
      ${reading ? this.#renderReading(reading) : html`<slot></slot>`}
      <div class="fields">${everyday(this.#entryHost, this.#shownAperture)}</div>
      ${this.#folding.view(reading)}
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderReading(reading: Reading): TemplateResult {
    const {words} = this;
    const soft = diffractionText(words, reading);
    return html`
      <p class="verdict" part="verdict">${this.#verdict(reading)}</p>
      <p class="reason">${reasonText(words, reading)}</p>
      ${soft ? html`<p class="problem">${soft}</p>` : nothing}
      ${this.#renderDrawing(reading)}
      ${this.#renderCurves(reading)}
      ${reading.shot.tilt ? html`<p class="note">${words.tilted}</p>` : nothing}
      ${waysView(words, reading, (way) => { this.#pressWay(way); }, this.#done('ways'))}`;
  }

  #renderDrawing(reading: Reading): TemplateResult | typeof nothing {
    const [sheet, slider, {words}] = [this.#sheet, this.#slider, this];
    if (!sheet) return nothing;
    const {focus, unit} = reading.shot;
    const [finest, fold] = this.#contrast ? [this.later(loadFinest), this.#folding.words()] : [];
    const panel = this.#contrast && finest && fold ? finest.contrastPanel(fold, this.#contrast, reading) : blurPanel(words, reading);
    return html`<div class="drawing">
      <svg role="group" aria-label=${words.drawing} width=${sheet.width} height=${sheet.height} viewBox="0 0 ${sheet.width} ${sheet.height}">
        ${picture(words, sheet, reading, panel, this.#frames)}
        <g class="handle" role="slider" tabindex="0" aria-label=${words.handle}
          aria-valuemin=${Math.round(sheet.left)} aria-valuemax=${Math.round(sheet.right)} aria-valuenow=${+focus.toFixed(1)}
          aria-valuetext=${placeText(words, focus, unit)} @keydown=${slider.key} @pointerdown=${slider.grip}
          @pointermove=${slider.drag} @pointerup=${slider.release} @pointercancel=${slider.release}>
          ${focusHandle(words, sheet, reading)}
        </g>
      </svg>
    </div>`;
  }

  /** Which curve is drawn, and of what. */
  #renderCurves(reading: Reading): TemplateResult {
    const {words} = this;
    const pressed = (curve: 'blur' | 'contrast'): TemplateResult => html`<button type="button" aria-pressed=${this.#curve === curve}
      @click=${() => { this.#curve = curve; this.requestUpdate(); }}>${words[curve]}</button>`;
    const [finest, fold] = this.#curve === 'contrast' ? [this.later(loadFinest), this.#folding.words()] : [];
    return html`<div class="curves screen-only">
        <div class="pair" role="group" aria-label=${words.curve}>${pressed('blur')}${pressed('contrast')}</div>
        ${finest && fold ? finest.detailField(fold, this.detail, this.#detailProblem, (text) => { this.detail = withUnit(text, 'px'); }) : nothing}
      </div>
      ${finest === null ? html`<p class="note">${words.say.family.unreachable}</p>` : nothing}
      ${finest && fold && this.#contrast ? finest.contrastNote({words, fold}, this.#contrast, this.#detail, reading) : nothing}`;
  }

  get #entryHost(): EntryHost {
    return {
      words: this.words, shot: this.shot, state: this.state,
      field: (key, label, more) => this.shotField(key, label, more),
      act: (changes) => { this.act(changes); },
      type: (key, text) => { this.type(key, text); },
      refused: (problem) => {
        this.dispatchEvent(new ShotProblemEvent(problem));
        this.requestUpdate();
      },
    };
  }
}
