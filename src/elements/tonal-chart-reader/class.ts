import {html, nothing, type PropertyValues, type TemplateResult} from 'lit';
import {exposureStops, type Exposure} from '../../core/exposure/stops.js';
import type {Trade} from '../../core/exposure/trade.js';
import {Problem} from '../../core/problem.js';
import {SHOT_FIELDS, attributeOf} from '../../core/shot/fields.js';
import type {CropShare, Intent, Shot, ShotKey} from '../../core/shot/shot.js';
import type {Comparison} from '../../core/tone/compare.js';
import {cropChange, type CropChange} from '../../core/tone/cropped.js';
import type {Level} from '../../core/tone/level.js';
import type {Photo} from '../../photo/open.js';
import {ShotProblemEvent} from '../shared/events.js';
import {choiceField} from '../shared/fields.js';
import {familyStyles} from '../shared/styles.js';
import {aimsResult} from './aims-view.js';
import {FIRST_AIMS, exposureForFigure, withAim, type Aims} from './aims.js';
import {besideResult, shiftText} from './beside-view.js';
import {chartChoice, chartDrawing, edgesTable, emptyScale, type Shown} from './chart-view.js';
import {Counts} from './counts.js';
import {cropFields, type SideProblems} from './crop-fields.js';
import {cropPixels, keepsAll, WHOLE} from './crop.js';
import {FrameDrag} from './frame-drag.js';
import {Latest} from '../shared/photo/latest.js';
import {isClosed} from '../shared/photo/opener.js';
import {frameOver} from './photo-view.js';
import {exposureOf, meantShift, saysExposure, tradeFor} from '../shared/photo/settings.js';
import {SharpnessElement} from './sharpness-element.js';
import {styles} from './styles.js';
import {wayTo} from '../shared/photo/way-view.js';
import {BESIDE} from './words-beside.js';
import {settingsSentence} from './words-taken.js';
import {SPOT, levelNote, levelSentence} from './words-spot.js';
import {WORDS, cropSentence, cropText, reasonFor, refused, verdict} from './words.js';

/** A comparison is asked for once the crop has been still for so long, ms: it takes longer than a count. */
const STILL_MS = 250;

/** A gray card that was measured: its linear light, and the exposure it was measured at. */
interface MeasuredGray {
  readonly grayLinear: number;
  readonly exposure: Exposure;
  /** Whether the card can be believed; said of those that lie on the bench. */
  readonly trusted?: boolean;
}

/** Where the spot begins: in the backdrop, more often than not. */
const FIRST_SPOT: CropShare = {left: 0.06, top: 0.08, width: 0.1, height: 0.1};

/**
 * @summary A photo's tonal chart inside the crop that will be kept: what is cut off, the room left, and the advice in
 *   thirds of a stop with the setting it leads to. The photo is read on the device and goes nowhere.
 * @slot - Fallback: shown before the script runs, and while the photo of `src` is not there
 * @attr {string} src - Address of a photo of the page's own, on the same origin or one that allows it
 * @attr {string} earlier-src - Address of an earlier shot to compare with
 * @attr {string} spot - Spot whose level is measured, written like `crop`
 * @attr {string} line - Line along which sharpness is read, from A to B in shares of the frame: `76% 96% 68% 68%`; opens that part
 * @attr {string} picture-width - Pixels across the finished picture, in which blur is counted
 * @attr {string} blur-limit - Blur that still looks sharp, finished pixels
 * @attr {string} bench - Name of the shot shared with other elements
 * @attr {string} crop - Part that is kept, shares of the frame: left, top, width, height: `20% 2% 60% 81%`
 * @attr {string} intent - `dark-backdrop` (default) or `even`
 * @attr {string} shown - Which chart: `colours` (default), `brightness`, `red`, `green` or `blue`
 * @attr {string} aperture - f-number of the next shot, `f/11`
 * @attr {string} shutter - Time of the next shot, `0.6 s`, `1/60`
 * @attr {string} iso - ISO of the next shot
 * @attr {string} metered-aperture - f-number the photo was taken with, where its file does not say
 * @attr {string} metered-shutter - The same for the time
 * @attr {string} metered-iso - The same for the ISO speed
 * @attr {string} pay - Setting that an advice changes: `shutter` (default), `aperture` or `iso`
 * @attr {string} clicks-per-stop - `full`, `half` or `third` (default)
 * @attr {string} aperture-widest - f-number fully open
 * @attr {string} aperture-smallest - f-number fully closed
 * @attr {string} shutter-fastest - Shortest time
 * @attr {string} shutter-slowest - Longest time
 * @attr {string} iso-lowest - Base ISO
 * @attr {string} iso-highest - Highest ISO that would be used
 * @attr {string} correction - Stops by which the next shot should be brighter than the photo; an advice taken sets it
 * @attr {string} focal-length - Lens, `60 mm`; the photo's file fills in this and the next three where nobody says it
 * @attr {string} sensor-width - Across the frame
 * @attr {string} sensor-height - Down the frame
 * @attr {string} frame-width - Pixels across the frame
 * @fires {ShotChangeEvent} shot-change - After a reader opened a photo, moved the crop, chose the intent or took the advice
 * @fires {ShotProblemEvent} shot-problem - When text or a value could not be used
 * @csspart plate - The whole
 * @csspart verdict - What to do with the exposure
 * @csspart photo - The photo
 * @csspart frame - The frame over it
 * @csspart chart - The drawing of the chart
 * @csspart sharpness - The curve of sharpness along the line
 * @csspart edges - The table of both edges
 * @csspart field - A label with its control
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved, and where the advice leads
 * @cssprop [--lampblack-line] - Ruled lines
 * @cssprop [--lampblack-quiet] - Labels and notes
 * @cssprop [--lampblack-paper=transparent] - Ground
 */
export class TonalChartReader extends SharpnessElement {
  static override readonly shotKeys = [
    'crop', 'intent', 'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'pay', 'clicksPerStop',
    'apertureWidest', 'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'isoLowest', 'isoHighest', 'correction',
    'focalLength', 'sensorWidth', 'sensorHeight', 'frameWidth', 'pictureWidth', 'blurLimit',
  ] as const satisfies readonly ShotKey[];

  static override readonly styles = [familyStyles, styles];

  static override properties = {
    shown: {type: String},
    spot: {converter: {fromAttribute: (text: string | null) => (text === null ? null : SHOT_FIELDS.crop.read(text))}},
    chartWidth: {state: true},
    sides: {state: true},
    aims: {state: true},
  };

  /** Which chart is drawn. @attr shown */
  declare shown: Shown;
  /** Spot whose level is measured, shares of the frame; `null` while none is. @attr spot */
  declare spot: CropShare | null;
  /** Part that is kept, shares of the frame. @attr crop */
  declare crop: CropShare;
  /** What the picture is meant as. @attr intent */
  declare intent: Intent;
  /** f-number of the next shot. @attr aperture */
  declare aperture: number;
  /** Time of the next shot, s. @attr shutter */
  declare shutter: number;
  /** ISO speed of the next shot. @attr iso */
  declare iso: number;
  /** f-number of the photo, where its file does not say. @attr metered-aperture */
  declare meteredAperture: number;
  /** Time of the photo, s, where its file does not say. @attr metered-shutter */
  declare meteredShutter: number;
  /** ISO speed of the photo, where its file does not say. @attr metered-iso */
  declare meteredIso: number;
  /** Setting that an advice changes. @attr pay */
  declare pay: Shot['pay'];
  /** Clicks of the dials to a stop. @attr clicks-per-stop */
  declare clicksPerStop: Shot['clicksPerStop'];
  /** f-number fully open. @attr aperture-widest */
  declare apertureWidest: number;
  /** f-number fully closed. @attr aperture-smallest */
  declare apertureSmallest: number;
  /** Shortest time, s. @attr shutter-fastest */
  declare shutterFastest: number;
  /** Longest time, s. @attr shutter-slowest */
  declare shutterSlowest: number;
  /** Base ISO. @attr iso-lowest */
  declare isoLowest: number;
  /** Highest ISO that would be used. @attr iso-highest */
  declare isoHighest: number;
  /** Stops by which the next shot should be brighter than the photo. @attr correction */
  declare correction: number;
  /** mm. @attr focal-length */
  declare focalLength: number;
  /** mm across the frame. @attr sensor-width */
  declare sensorWidth: number;
  /** mm down the frame. @attr sensor-height */
  declare sensorHeight: number;
  /** Pixels across the frame. @attr frame-width */
  declare frameWidth: number;
  /** Pixels across the finished picture. @attr picture-width */
  declare pictureWidth: number;
  /** Blur that still looks sharp, finished pixels. @attr blur-limit */
  declare blurLimit: number;

  protected declare chartWidth: number;
  /** Typed sides of the crop that could not be used. */
  protected declare sides: SideProblems;
  protected declare aims: Aims;

  #change: CropChange | undefined;
  #comparison: Comparison | undefined;
  #level: Level | undefined;
  /** A gray card that was measured with the spot. */
  #gray: MeasuredGray | undefined;
  #transparent = false;
  #spotProblem: Problem | undefined;
  #drawn: Photo | undefined;
  /** What the chart's width is measured of: without height, so that a taller chart measures nothing anew. */
  #room: Element | null = null;
  #asked: readonly unknown[] = [];

  readonly #redraw = () => { this.requestUpdate(); };
  readonly #counts = new Counts(this.#redraw);
  readonly #countsEarlier = new Counts(this.#redraw);
  readonly #comparing = new Latest<readonly [Photo, Photo, Comparison]>(([photo, earlier, comparison]) => {
    if (photo !== this.photo || earlier !== this.earlier) return;
    this.#comparison = comparison;
    this.requestUpdate();
  });
  readonly #measuring = new Latest<readonly [Photo, Level]>(([photo, level]) => {
    if (photo === this.photo && this.spot) this.#setLevel(level);
  });
  readonly #frames = new FrameDrag(
    (frame) => (frame === 'crop' ? this.shot.crop : this.spot ?? FIRST_SPOT),
    (frame, to) => { if (frame === 'crop') this.act({crop: to}); else this.spot = to; });
  readonly #width = globalThis.ResizeObserver && new ResizeObserver(([entry]) => {
    const width = Math.round(entry?.contentRect.width ?? 0);
    // A frame later, since a taller chart may bring a scroll bar, which would change the width within the same frame.
    if (width > 0) requestAnimationFrame(() => { this.chartWidth = width; });
  });

  constructor() {
    super();
    this.spot = null;
    this.shown = 'colours';
    this.chartWidth = 320;
    this.sides = {};
    this.aims = FIRST_AIMS;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#width?.disconnect();
    this.#room = null;
  }

  // —— computing ——

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('spot')) this.#readSpot(changed.get('spot') as CropShare | null | undefined);
    const {crop, intent} = this.shot;
    const {photo, earlier} = this;
    this.#counts.follow(photo, crop);
    this.#countsEarlier.follow(earlier, crop);
    this.#ask(photo, earlier);
    this.followSharpness(photo, earlier);
    const {inside, whole} = this.#counts;
    this.#transparent = inside?.pixels === 0;
    if (!inside || !whole) this.#change = undefined;
    else if (!this.#transparent) this.#change = cropChange(inside, whole, intent);
  }

  /** A spot that is none is explained, and the last good one stays. */
  #readSpot(last: CropShare | null | undefined): void {
    const spot = this.spot as CropShare | Problem | null;
    const problem = spot instanceof Problem ? spot : spot ? SHOT_FIELDS.crop.refuse(spot) : undefined;
    this.#spotProblem = problem && new Problem('spot', problem.value, problem.wanted);
    if (!this.#spotProblem) return;
    this.spot = last ?? null;
    this.dispatchEvent(new ShotProblemEvent(this.#spotProblem));
  }

  /** Puts the questions beside the counts, when what they depend on has changed. */
  #ask(photo: Photo | undefined, earlier: Photo | undefined): void {
    const {spot, shot: {crop}} = this;
    const gray = photo && this.#grayIn(photo);
    const asked = [photo, earlier, crop, spot, gray];
    const isNew = (...at: number[]) => at.some((place) => asked[place] !== this.#asked[place]);
    if (isNew(0, 1)) {
      this.#comparison = undefined;
      this.#comparing.stop();
    }
    if (photo && earlier && isNew(0, 1, 2)) {
      this.#comparing.want(async () => [photo, earlier, await photo.ask('compare', cropPixels(crop, earlier), earlier)],
        this.#comparison ? STILL_MS : 0);
    }
    if (!photo || !spot) {
      this.#setLevel(undefined);
    } else if (isNew(0, 3, 4)) {
      const region = cropPixels(spot, photo);
      this.#measuring.want(async () => [photo, await photo.ask('level', {region, ...(gray !== undefined && {gray})})]);
    }
    this.#asked = asked;
  }

  /** Shows a level and lays it on the bench, where the backdrop's is wanted. */
  #setLevel(level: Level | undefined): void {
    if (level === this.#level) return;
    this.#level = level;
    this.putThing('level', level);
  }

  /** The gray card that was measured, here or by the element that reads one. */
  get #card(): MeasuredGray | undefined {
    const lying = this.thing<MeasuredGray>('grayCard');
    return this.#gray ?? (lying?.trusted ? lying : undefined);
  }

  /** Light of the measured gray card at the exposure of this photo. */
  #grayIn(photo: Photo): number | undefined {
    const card = this.#card;
    return card && card.grayLinear * 2 ** exposureStops(card.exposure, exposureOf(photo, this.shot));
  }

  protected override get sameSet(): boolean | undefined {
    const because = this.#comparison?.because;
    return this.#comparison && because !== 'shape' && because !== 'other-set';
  }

  #meant(earlier: Photo): number | undefined {
    return this.photo && meantShift(earlier, this.photo, this.shot);
  }

  protected override verdictText(): string {
    const message = this.opener.message || this.openerEarlier.message;
    const change = this.#change;
    const {earlier} = this;
    return message || [
      ...(change ? [verdict(change.adviceInside, change.inside)] : []),
      ...(earlier && this.#comparison ? [shiftText(this.#comparison, this.#meant(earlier))] : []),
      ...(this.#level ? [levelSentence(this.#level, this.#card !== undefined)] : []),
      this.sharpnessText,
    ].filter(Boolean).join(' ');
  }

  // —— rendering ——

  protected override render(): TemplateResult {
    const {photo} = this;
    const change = this.#change;
    return html`<section class="plate" part="plate" aria-label=${WORDS.element}>
      ${change ? html`<p class="verdict" part="verdict">${verdict(change.adviceInside, change.inside)}</p>
        <p class="reason">${reasonFor(change.adviceInside, change.inside)}</p>` : nothing}
      ${this.renderMessages()}
      ${photo ? html`<div class="sheet">
          <div class="side of-photo">${this.renderPhoto(photo)}</div>
          <div class="side of-chart">${this.renderChart()}</div>
          <div class="side of-advice">${this.renderAdvice(photo)}${this.renderSides(photo)}${this.renderAims(photo)}</div>
        </div>
        ${this.renderBeside()}${this.renderSharpness()}${this.renderFoot(photo)}`
      : this.renderBlank()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  private renderMessages(): TemplateResult {
    const {problems} = this.state;
    const said = [this.opener.message, this.openerEarlier.message, this.#transparent ? WORDS.transparent : '',
      this.#spotProblem ? refused('spot', this.#spotProblem) : '',
      ...TonalChartReader.shotKeys.map((key) => (problems[key] ? refused(attributeOf(key), problems[key]) : ''))];
    return html`${said.filter(Boolean).map((text) => html`<p class="problem">${text}</p>`)}`;
  }

  private renderBlank(): TemplateResult {
    return html`${this.src ? html`<slot></slot>` : nothing}
      <div class="blank"><p>${this.opener.busy ? WORDS.opening : WORDS.invite}</p>
        <div class="tools">${this.renderPick(WORDS.open, (file) => { void this.open(file); })}<p class="note">${WORDS.stays}</p></div>
        <div><div class="gauge"></div>${emptyScale(this.chartWidth)}</div></div>`;
  }

  private renderPick(label: string, picked: (file: File) => void): TemplateResult {
    return html`<label class="pick">${label}<input type="file" accept="image/*" @change=${(event: Event) => {
      const input = event.target as HTMLInputElement;
      const file = input.files?.[0];
      // Emptied, so that the same file can be chosen again after it was changed.
      input.value = '';
      if (file) picked(file);
    }}></label>`;
  }

  private renderPhoto(photo: Photo): TemplateResult {
    const {crop} = this.shot;
    const {pressed, dragged, released, keyed} = this.#frames;
    return html`<div class="stage" @pointerdown=${pressed} @pointermove=${dragged} @pointerup=${released} @pointercancel=${released} @keydown=${keyed}>
        <canvas part="photo" role="img" aria-label=${photo.name || WORDS.picture}></canvas>${frameOver(crop, this.spot ?? undefined)}${this.renderOverPhoto()}
      </div>
      <p class="note">${cropText(cropPixels(crop, photo), photo)}</p>
      ${this.#level ? html`<p class="finding">${levelSentence(this.#level, this.#card !== undefined)}</p><p class="note">${levelNote(this.#level)}</p>` : nothing}
      <div class="tools">
        ${keepsAll(crop) ? nothing : html`<button type="button" @click=${() => { this.act({crop: WHOLE}); }}>${WORDS.whole}</button>`}
        <button type="button" aria-pressed=${this.spot ? 'true' : 'false'}
          @click=${() => { this.spot = this.spot ? null : FIRST_SPOT; }}>${SPOT.measure}</button>
        ${this.#level ? html`<button type="button" @click=${() => { this.#markCard(photo); }}>${SPOT.isCard}</button>` : nothing}
        ${this.#gray ? html`<button type="button" @click=${() => { this.#gray = undefined; this.requestUpdate(); }}>${SPOT.noCard}</button>` : nothing}
        <p class="spoken" id="frame-keys">${WORDS.frameKeys}</p></div>`;
  }

  #markCard(photo: Photo): void {
    const grayLinear = this.#level?.luminance.mean;
    if (grayLinear) this.#gray = {grayLinear, exposure: exposureOf(photo, this.shot)};
    this.requestUpdate();
  }

  private renderChart(): TemplateResult {
    const change = this.#change;
    const {inside} = this.#counts;
    const {inside: earlier} = this.#countsEarlier;
    return html`${chartChoice(this.shown, (shown) => { this.shown = shown; })}
      <div><div class="gauge"></div>${change && inside?.pixels ? chartDrawing({
        tally: inside, edges: change.inside, advice: change.adviceInside, shown: this.shown, width: this.chartWidth,
        earlier: earlier?.pixels ? earlier : undefined,
      }) : nothing}</div>
      ${change ? html`${edgesTable(change.inside)}<p class="note">${cropSentence(change)}</p>` : nothing}`;
  }

  private renderAdvice(photo: Photo): TemplateResult {
    const thirds = this.#change?.adviceInside.thirds ?? 0;
    return html`${this.renderWay(photo, thirds)}${choiceField({
      id: 'intent', label: WORDS.intent, value: this.shot.intent, onChoose: (intent: Intent) => { this.act({intent}); },
      options: [['dark-backdrop', WORDS.intents['dark-backdrop']], ['even', WORDS.intents.even]],
    })}`;
  }

  private renderWay(photo: Photo, thirds: number): TemplateResult | typeof nothing {
    const way = thirds === 0 ? undefined : tradeFor(photo, this.shot, thirds);
    return way ? wayTo(way, thirds, this.shot, () => { this.#take(way, thirds); }) : nothing;
  }

  #take({from, to}: Trade, thirds: number): void {
    const {pay} = this.shot;
    this.act({
      [pay]: to[pay], correction: thirds / 3,
      meteredAperture: from.aperture, meteredShutter: from.shutter, meteredIso: from.iso,
    });
  }

  private renderSides(photo: Photo): TemplateResult {
    return cropFields(this.shot.crop, photo, this.sides, (problems, crop) => {
      this.sides = problems;
      if (crop) this.act({crop});
    });
  }

  private renderAims(photo: Photo): TemplateResult | typeof nothing {
    const {inside} = this.#counts;
    if (!inside?.pixels || this.shot.intent !== 'dark-backdrop') return nothing;
    const gray = this.#grayIn(photo);
    const exposure = exposureForFigure(inside, this.aims, gray);
    return html`<details><summary>${SPOT.aims}</summary>
      <div class="side">${aimsResult(this.aims, exposure, gray !== undefined, (field, text) => { this.aims = withAim(this.aims, field, text); })}
        ${exposure && !exposure.estimated ? this.renderWay(photo, exposure.thirds) : nothing}</div></details>`;
  }

  private renderBeside(): TemplateResult {
    const {earlier, isKept} = this;
    return html`<details ?open=${earlier !== undefined}><summary>${BESIDE.title}</summary><div class="side">
      ${earlier && this.#comparison ? html`<div class="pair">${besideResult(this.#comparison, this.#meant(earlier))}</div>` : nothing}
      ${isKept ? html`<p class="note">${BESIDE.kept}</p>` : nothing}
      <div class="tools">${earlier || isKept ? html`<button type="button" @click=${() => { this.earlierFile = null; }}>${BESIDE.away}</button>`
        : html`<button type="button" @click=${() => { this.keep(); }}>${BESIDE.keep}</button>`}
        ${this.renderPick(BESIDE.open, (file) => { void this.openerEarlier.open(file, 'reader'); })}</div></div></details>`;
  }

  private renderFoot(photo: Photo): TemplateResult {
    const taken = saysExposure(photo) ? exposureOf(photo, this.shot) : undefined;
    return html`<div class="tools">${this.renderPick(WORDS.openOther, (file) => { void this.open(file); })}
      <p class="note">${this.opener.busy ? WORDS.opening : settingsSentence(photo, taken)}</p></div>`;
  }

  protected override updated(): void {
    super.updated();
    const room = this.renderRoot.querySelector('.gauge');
    if (room !== this.#room) {
      this.#width?.disconnect();
      if (room) this.#width?.observe(room);
      this.#room = room;
    }
    this.#paint();
  }

  #paint(): void {
    const canvas = this.renderRoot.querySelector('canvas');
    const {photo} = this;
    if (!photo || !canvas || isClosed(photo) || (this.#drawn === photo && canvas.width === photo.preview.width)) return;
    this.#drawn = photo;
    canvas.width = photo.preview.width;
    canvas.height = photo.preview.height;
    // Frames later: the sheet is laid out in the first, the chart drawn anew in the second, and each is enough for one.
    requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => { void this.#handOver(photo, canvas); })));
    canvas.parentElement?.style.setProperty('--ratio', String(photo.width / photo.height));
  }

  /** Shows a copy, since the preview itself is shared on the bench; it is handed over, not drawn, which takes no time. */
  async #handOver(photo: Photo, canvas: HTMLCanvasElement): Promise<void> {
    if (this.#drawn !== photo || isClosed(photo)) return;
    const copy = await createImageBitmap(photo.preview);
    if (this.#drawn === photo) canvas.getContext('bitmaprenderer')?.transferFromImageBitmap(copy);
  }
}
