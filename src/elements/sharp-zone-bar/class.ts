import {html, nothing, type PropertyValues, type TemplateResult} from 'lit';
import type {ClicksPerStop} from '../../core/exposure/clicks.js';
import {fieldWidth, magnificationFromDistance, markedFromWorking} from '../../core/optics/lens.js';
import {readAperture} from '../../core/exposure/read.js';
import {Problem} from '../../core/problem.js';
import type {ApertureShown, CropShare, ShotKey} from '../../core/shot/shot.js';
import {readLength, type LengthUnit} from '../../core/units.js';
import {ShotProblemEvent} from '../shared/events.js';
import {textField} from '../shared/fields.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {detailContrast, readDetail, type DetailContrast, type SaidDetail} from './detail.js';
import {sheetFor, type Sheet} from './draw.js';
import {everyday, setUp, type EntryHost} from './entries.js';
import {extras, type ExtrasState} from './extras.js';
import {FocusSlider} from './focus-slider.js';
import {focusHandle, picture} from './picture.js';
import {readShot, type Reading} from './reading.js';
import {RulerPhoto, type ShownPhoto} from './ruler-photo.js';
import {NO_NOTES, type RulerNotes} from './ruler-scale.js';
import {needsStack, stackOffer, type StackOffer} from './stack.js';
import {zoneStyles} from './styles.js';
import type {Way} from './ways.js';
import {
  EXTRAS, MARKS, aperture, contrastWords, dead, diffraction, ends, impossible, place, reason, tilted, verdict, wayLines, wayTitle,
} from './words.js';

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
export class SharpZoneBar extends ShotElement {
  static override readonly shotKeys = [
    'aperture', 'shutter', 'iso', 'clicksPerStop', 'apertureWidest', 'apertureSmallest', 'shutterFastest', 'shutterSlowest',
    'isoLowest', 'isoHighest', 'focalLength', 'pupilRatio', 'sensorWidth', 'sensorHeight', 'fieldWidth', 'frameWidth',
    'crop', 'pictureWidth', 'blurLimit', 'apertureShown', 'baseDepth', 'overhangFront', 'overhangFrontHeight', 'overhangBack',
    'overhangBackHeight', 'figureHeight', 'tilt', 'focus', 'unit',
  ] as const satisfies readonly ShotKey[];

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
  /** Unit lengths are shown in. @attr unit */
  declare unit: LengthUnit;

  /** Width of the finest line that is to be seen, as written: `1 px`, `0.2 mm` on the figure. @attr detail */
  declare detail: string;

  #reading: Reading | undefined;
  #detail: SaidDetail = {pixels: 1};
  #detailProblem: Problem | undefined;
  #contrast: DetailContrast | undefined;
  #offer: StackOffer | undefined;
  #curve: 'blur' | 'contrast' = 'blur';
  #state: ExtrasState = {back: 0, stackOpen: false, photoOpen: false};
  #sheet: Sheet | undefined;
  #trouble: Problem | undefined;
  #width = 600;
  #distance: {readonly text: string; readonly problem?: Problem; readonly fieldWidth?: number} | undefined;
  #shownText: {readonly text: string; readonly problem?: Problem; readonly aperture?: number; readonly fieldWidth?: number} | undefined;
  readonly #slider = new FocusSlider(
    () => this.#sheet, () => this.shot, (focus) => { this.act({focus}); }, () => { this.requestUpdate(); });
  readonly #rulerPhoto = new RulerPhoto(
    () => this.#notes, () => this.#photo, (notes) => { this.putThing('ruler', notes); }, () => { this.requestUpdate(); });
  #sizes: ResizeObserver | undefined;

  constructor() {
    super();
    this.detail = '1 px';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watchWidth();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes?.disconnect();
    this.#slider.release();
  }

  /** Draws for the width there is. A frame later, so that a height that follows does not answer back. */
  #watchWidth(): void {
    this.#width = this.clientWidth || this.#width;
    this.#sizes ??= new ResizeObserver(() => {
      requestAnimationFrame(() => {
        const width = this.clientWidth;
        if (!width || width === this.#width) return;
        this.#width = width;
        this.requestUpdate();
      });
    });
    this.#sizes.observe(this);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    this.#takeDetail(changed.has('detail'));
    try {
      const reading = readShot(this.shot);
      this.#sheet = this.#slider.sheet
        ?? sheetFor(this.#width, reading.framing.outline, [reading.front, reading.back], this.shot.focus);
      this.#contrast = this.#curve === 'contrast' ? detailContrast(reading, this.#detail) : undefined;
      this.#offer = this.#state.stackOpen && needsStack(reading) ? stackOffer(reading, this.#detail) : undefined;
      this.#reading = reading;
      this.#trouble = undefined;
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      this.#trouble = error;
    }
  }

  /** A detail that cannot be read leaves the last one in use. */
  #takeDetail(fresh: boolean): void {
    const detail = readDetail(this.detail, this.shot.unit);
    this.#detailProblem = detail instanceof Problem ? detail : undefined;
    if (!(detail instanceof Problem)) this.#detail = detail;
    else if (fresh) this.dispatchEvent(new ShotProblemEvent(detail));
  }

  protected override verdictText(): string {
    return this.#trouble ? impossible(this.#trouble) : this.#reading ? verdict(this.#reading) : '';
  }

  protected override render(): TemplateResult {
    const reading = this.#reading;
    return html`<section class="plate" part="plate">
      ${this.#trouble ? html`<p class="problem">${impossible(this.#trouble)}</p>` : nothing}
      ${reading ? this.#renderReading(reading) : html`<slot></slot>`}
      <div class="fields">${everyday(this.#host)}</div>
      <div class="set-up screen-only">${setUp(this.#host, reading)}${reading ? this.#renderExtras(reading) : nothing}</div>
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderReading(reading: Reading): TemplateResult {
    const soft = diffraction(reading);
    const lean = tilted(reading);
    return html`
      <p class="verdict" part="verdict">${verdict(reading)}</p>
      <p class="reason">${reason(reading)} ${ends(reading)}</p>
      ${soft ? html`<p class="problem">${soft}</p>` : nothing}
      ${this.#renderDrawing(reading)}
      ${this.#renderCurves(reading)}
      ${lean ? html`<p class="note">${lean}</p>` : nothing}
      ${this.#renderWays(reading)}`;
  }

  #renderDrawing(reading: Reading): TemplateResult {
    const sheet = this.#sheet;
    if (!sheet) return html``;
    const {focus, unit} = reading.shot;
    const slider = this.#slider;
    return html`<div class="drawing">
      <svg role="group" aria-label=${MARKS.drawing} width=${sheet.width}
        height=${sheet.height} viewBox="0 0 ${sheet.width} ${sheet.height}">
        ${picture(sheet, reading, this.#contrast, this.#offer?.frames ?? [])}
        <g class="handle" role="slider" tabindex="0" aria-label=${MARKS.handle}
          aria-valuemin=${Math.round(sheet.left)} aria-valuemax=${Math.round(sheet.right)} aria-valuenow=${+focus.toFixed(1)}
          aria-valuetext=${place(focus, unit)} @keydown=${slider.key} @pointerdown=${slider.grip}
          @pointermove=${slider.drag} @pointerup=${slider.release} @pointercancel=${slider.release}>
          ${focusHandle(sheet, reading)}
        </g>
      </svg>
    </div>`;
  }

  #renderWays(reading: Reading): TemplateResult | typeof nothing {
    const {ways: {ways, nearest}, shot} = reading;
    const all = nearest ? [nearest] : ways;
    const why = dead(reading);
    if (!all.length && !why.length) return nothing;
    return html`<div class="out">
      ${why.map((sentence) => html`<p class="note">${sentence}</p>`)}
      <ul class="ways">${all.map((way) => html`<li><button type="button" @click=${() => { this.#apply(way); }}>
        <strong>${wayTitle(way, shot)}</strong>
        ${wayLines(way, shot).map(({label, text}) => html`<span class="line-of-way"><i>${label}</i> <span>${text}</span></span> `)}
      </button></li>`)}</ul>
    </div>`;
  }

  /** Which curve is drawn, and of what. */
  #renderCurves(reading: Reading): TemplateResult {
    const pressed = (curve: 'blur' | 'contrast'): TemplateResult => html`<button type="button" aria-pressed=${this.#curve === curve}
      @click=${() => { this.#curve = curve; this.requestUpdate(); }}>${EXTRAS[curve]}</button>`;
    const contrast = this.#contrast;
    return html`<div class="curves screen-only">
        <div class="pair" role="group" aria-label=${EXTRAS.curve}>${pressed('blur')}${pressed('contrast')}</div>
        ${contrast ? textField({
          id: 'detail', label: EXTRAS.detail, hint: EXTRAS.detailHint, text: this.detail, problem: this.#detailProblem,
          onType: (text) => { this.detail = text; },
        }) : nothing}
      </div>
      ${contrast ? html`<p class="note">${contrastWords(contrast, this.#detail, reading)}</p>` : nothing}`;
  }

  /** What was marked and read on rulers. */
  get #notes(): RulerNotes { return this.thing<RulerNotes>('ruler') ?? NO_NOTES; }

  /** The photo that another element has open on this bench. */
  get #photo(): ShownPhoto | undefined {
    const photo = this.thing<ShownPhoto>('photo');
    return photo && photo.preview.width > 0 ? photo : undefined;
  }

  /** Frames of a stack, price of distance, what rulers say. */
  #renderExtras(reading: Reading): TemplateResult {
    return extras(reading, this.#offer, {
      state: this.#state, onChange: (more) => { this.#state = {...this.#state, ...more}; this.requestUpdate(); },
      onApply: (changes) => { this.act(changes); },
      notes: this.#notes, onNote: (more) => { this.putThing('ruler', {...this.#notes, ...more}); },
      photo: this.#photo, rulerPhoto: this.#rulerPhoto,
    });
  }

  protected override updated(): void {
    super.updated();
    if (this.#state.photoOpen) this.#rulerPhoto.paint(this.renderRoot);
  }

  #apply({changes}: Way): void { this.act(changes); }

  // —— entries ——

  get #host(): EntryHost {
    const {shot} = this;
    const typed = this.#distance;
    return {
      shot,
      field: (key, label, more) => this.shotField(key, label, more),
      act: (changes) => { this.act(changes); },
      type: (key, text) => { this.type(key, text); },
      // Once the field is framed anew, what was typed is no longer true.
      distance: typed && (typed.problem || typed.fieldWidth === shot.fieldWidth) ? typed : undefined,
      typeDistance: (text) => { this.#typeDistance(text); },
      shown: this.#shown,
      typeShown: (text) => { this.#typeShown(text); },
    };
  }

  /** What the field of a body says that counts close-up in: as typed while that holds, or what could not be used. */
  get #shown(): {readonly text: string; readonly problem?: Problem | undefined} {
    const {shot, state: {texts, problems}} = this;
    const typed = this.#shownText;
    if (typed?.problem || (typed?.aperture === shot.aperture && typed.fieldWidth === shot.fieldWidth)) return typed;
    return problems.aperture ? {text: texts.aperture ?? '', problem: problems.aperture} : {text: aperture(shot.aperture, shot)};
  }

  /** The shot keeps the f-number as marked. */
  #typeShown(text: string): void {
    const {sensorWidth, fieldWidth: field, pupilRatio, clicksPerStop} = this.shot;
    const reading = readAperture(text, clicksPerStop);
    if (reading instanceof Problem) {
      const problem = new Problem('aperture', text, reading.wanted);
      this.#shownText = {text, problem};
      this.dispatchEvent(new ShotProblemEvent(problem));
      this.requestUpdate();
      return;
    }
    const marked = markedFromWorking(reading.value, sensorWidth / field, pupilRatio);
    this.#shownText = {text, aperture: marked, fieldWidth: field};
    this.act({aperture: marked});
  }

  /** A distance says how wide the field is; the text stays as typed while that holds. */
  #typeDistance(text: string): void {
    const {focalLength, sensorWidth, unit} = this.shot;
    try {
      const distance = readLength('camera-distance', text, unit);
      if (distance instanceof Problem) throw distance;
      const width = fieldWidth(sensorWidth, magnificationFromDistance(distance, focalLength));
      this.#distance = {text, fieldWidth: width};
      this.act({fieldWidth: width});
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      const problem = new Problem(error.parameter, text, error.wanted);
      this.#distance = {text, problem};
      this.dispatchEvent(new ShotProblemEvent(problem));
      this.requestUpdate();
    }
  }
}
