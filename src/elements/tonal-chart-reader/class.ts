import {html, isServer, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import {Problem} from '../../core/problem.js';
import {EXPOSURE_FIELDS} from '../../core/shot/exposure-fields.js';
import {OPTICS_FIELDS} from '../../core/shot/optics-fields.js';
import {PICTURE_FIELDS} from '../../core/shot/picture-fields.js';
import type {CropShare, Intent, Shot, ShotKey} from '../../core/shot/shot.js';
import {ShotProblemEvent} from '../shared/events.js';
import {photoStyles} from '../shared/photo/photo-styles.js';
import {PHOTO_PLACE, shotOfPhoto} from '../shared/photo/place.js';
import {familyStyles} from '../shared/styles.js';
import {chartBook} from './book.js';
import {sheetBook} from './photo/book.js';
import type {Shown} from './photo/chart-view.js';
import type {MeasuredGray} from './photo/readings.js';
import type {PhotoSheet, SheetHost} from './photo/sheet.js';
import type {SheetWords} from './photo/words/en.js';
import {lineFrom, spotFrom, spotProblem, type LineShare} from './places.js';
import {TwoPhotos} from './two-photos.js';
import type {ChartWords} from './words/en.js';

/** What shows an open photo is fetched with the first one. */
const loadSheet = () => import('./photo/sheet.js');

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
export class TonalChartReader extends TwoPhotos<ChartWords> {
  static override readonly shotKeys = [
    'crop', 'intent', 'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'pay', 'clicksPerStop',
    'apertureWidest', 'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'isoLowest', 'isoHighest', 'correction',
    'focalLength', 'sensorWidth', 'sensorHeight', 'frameWidth', 'pictureWidth', 'blurLimit',
  ] as const satisfies readonly ShotKey[];

  static override readonly fields = {...PICTURE_FIELDS, ...EXPOSURE_FIELDS, ...OPTICS_FIELDS};
  static override readonly book = chartBook;
  static override readonly styles = [familyStyles, photoStyles];

  static override properties: PropertyDeclarations = {
    shown: {type: String},
    spot: {converter: {fromAttribute: spotFrom}},
    line: {converter: {fromAttribute: lineFrom}},
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

  /**
   * Line across the photo along which sharpness is read, places in shares of the frame; of itself it runs from front to back
   * where the focus shows most clearly, as along a ruler, or else beside what the crop shows. @attr line
   */
  declare line: LineShare | null | undefined;

  #sheet: PhotoSheet | undefined;
  #sheetWords: SheetWords | undefined;
  #spotProblem: Problem | undefined;
  #lineProblem: Problem | undefined;

  readonly #host: SheetHost = {
    changed: () => { this.requestUpdate(); },
    act: (changes) => { this.act(changes); },
    keepPart: (crop) => { this.#keepPart(crop); },
    takeWay: this.takeWay,
    show: (shown) => { this.shown = shown; },
    measure: (spot) => { this.spot = spot; },
    drawLine: (line) => { this.line = line; },
    layLevel: (level) => { this.putThing('level', level); },
    pick: () => this.renderPick(this.words.chooseOther),
    keep: () => { this.keep(); },
    openEarlier: (file) => { void this.openerEarlier.open(file, 'reader'); },
    dropEarlier: () => { this.earlierFile = null; },
    later: (load) => this.later(load),
    wordsOf: (book) => this.wordsOf(book),
    wear: (styles) => { this.wear(styles); },
  };

  constructor() {
    super();
    this.spot = null;
    this.line = null;
    this.shown = 'colours';
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sheet?.rest();
  }

  /** The crop is the shot's, but for a photo that was taken from elsewhere. */
  #keepPart(crop: CropShare): void {
    const {place} = this;
    if (!place?.crop) {
      this.act({crop});
      return;
    }
    place.crop = crop;
    this.putThing(PHOTO_PLACE, place);
  }

  // —— computing ——

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('spot')) this.#spotProblem = this.#lastGood('spot', changed);
    if (changed.has('line')) this.#lineProblem = this.#lastGood('line', changed);
    if (!isServer && (this.photo || this.opener.busy)) this.#fetchSheet();
    this.#follow();
  }

  /** A spot or a line that is none is explained, and the last good one stays. */
  #lastGood(name: 'spot' | 'line', changed: PropertyValues): Problem | undefined {
    const given = this[name] as CropShare | LineShare | Problem | null | undefined;
    const problem = name === 'spot' ? spotProblem(this.spot) : given instanceof Problem ? given : undefined;
    if (!problem) return undefined;
    this[name] = (changed.get(name) ?? null) as null;
    this.dispatchEvent(new ShotProblemEvent(problem));
    return problem;
  }

  #fetchSheet(): void {
    // Until the words of another language have arrived, those that are there stay.
    this.#sheetWords = this.wordsOf(sheetBook) ?? this.#sheetWords;
    const part = this.later(loadSheet);
    if (part) this.#sheet ??= new part.PhotoSheet(this.#host);
  }

  /** Tells the sheet what there is to show. */
  #follow(): void {
    const words = this.#sheetWords;
    if (!this.#sheet || !words) return;
    const {photo, earlier, isKept, shot: next, place, spot, line, shown, setBefore, opener: {busy}} = this;
    this.#sheet.follow(photo && {
      photo, earlier, isKept, next, place, spot, line: line ?? undefined, shown, setBefore, busy, words,
      shot: shotOfPhoto(place, next), card: this.thing<MeasuredGray>('grayCard'),
    });
  }

  protected override verdictText(): string {
    return this.troubleText || (this.#open?.verdict ?? '');
  }

  /** The sheet, while it shows a photo. */
  get #open(): PhotoSheet | undefined {
    return this.photo && this.#sheetWords ? this.#sheet : undefined;
  }

  // —— rendering ——

  protected override render(): TemplateResult {
    const sheet = this.#open;
    return html`<section class="plate" part="plate" aria-label=${this.words.element} lang=${this.spokenLanguage}>
      ${sheet?.renderVerdict() ?? nothing}
      ${[...this.complaints, ...sheet?.complaints ?? []].map((text) => html`<p class="problem">${text}</p>`)}
      ${sheet?.render() ?? this.#renderBlank()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  protected override get complaints(): readonly string[] {
    const {words} = this;
    const [spot, line] = [this.#spotProblem, this.#lineProblem];
    const own = [
      ...(spot ? [words.attribute('spot', words.say.problem(spot))] : []),
      ...(line ? [words.attribute('line', words.say.family.problem(String(line.value), words.lineWanted))] : []),
    ];
    const isMissing = (this.photo || this.opener.busy) && !isServer && this.later(loadSheet) === null;
    return [...super.complaints, ...own, ...(isMissing ? [words.say.family.unreachable] : [])];
  }

  #renderBlank(): TemplateResult {
    const {words} = this;
    const isComing = this.opener.busy || this.photo !== undefined;
    return html`${this.src ? html`<slot></slot>` : nothing}
      <div class="blank"><p>${isComing ? words.opening : words.invite}</p>
        <div class="tools">${this.renderPick(words.choose)}<p class="note">${words.staysHere}</p></div></div>`;
  }

  protected override updated(): void {
    super.updated();
    if (this.#open) this.#sheet?.updated(this.renderRoot);
  }
}
