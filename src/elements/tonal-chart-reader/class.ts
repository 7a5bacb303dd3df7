import {html, nothing, type PropertyValues, type TemplateResult} from 'lit';
import {Problem} from '../../core/problem.js';
import {trade, type Trade} from '../../core/exposure/trade.js';
import {SETTINGS} from '../../core/exposure/stops.js';
import {attributeOf} from '../../core/shot/fields.js';
import type {CropShare, Intent, Shot, ShotKey} from '../../core/shot/shot.js';
import {cropChange, type CropChange} from '../../core/tone/cropped.js';
import type {Tally} from '../../core/tone/tally.js';
import {openPhoto, type Photo} from '../../photo/open.js';
import {isPhotoProblem} from '../../photo/problem.js';
import {choiceField, textField} from '../shared/fields.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {chartChoice, chartDrawing, edgesTable, emptyScale, type Shown} from './chart-view.js';
import {Counter} from './counter.js';
import {cropPixels, readSide, withSide, WHOLE, type CropSide} from './crop.js';
import {cropAfterKey, cropOfDrag, frameOver, keepsAll, startDrag, type Drag} from './photo-view.js';
import {exposureOf, saysExposure, shotFrom} from './settings.js';
import {styles} from './styles.js';
import {NO_ANSWER, notLoaded, settingsSentence, trouble} from './words-file.js';
import {WORDS, cropSentence, cropText, reasonFor, refused, sidePixels, sideText, verdict, wayCost, wayOut} from './words.js';

/** Stops by which the bench may miss an advice and still be taken to follow it: half a third-stop click. */
const FOLLOWED = 1 / 6;

/** Whose photo it is: a reader's act is told to the page, a script's is not, and the page's own only fills in. */
type OpenedBy = 'reader' | 'script' | 'page';

const SIDES: readonly CropSide[] = ['left', 'top', 'width', 'height'];

/**
 * @summary A photo's tonal chart inside the crop that will be kept: what is cut off, the room left, and the advice in
 *   thirds of a stop with the setting it leads to. The photo is read on the device and goes nowhere.
 * @slot - Fallback: shown before the script runs, and while the photo of `src` is not there
 * @attr {string} src - Address of a photo of the page's own, on the same origin or one that allows it
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
 * @csspart edges - The table of both edges
 * @csspart field - A label with its control
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved, and where the advice leads
 * @cssprop [--lampblack-line] - Ruled lines
 * @cssprop [--lampblack-quiet] - Labels and notes
 * @cssprop [--lampblack-paper=transparent] - Ground
 */
export class TonalChartReader extends ShotElement {
  static override readonly shotKeys = [
    'crop', 'intent', 'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'pay', 'clicksPerStop',
    'apertureWidest', 'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'isoLowest', 'isoHighest', 'correction',
    'focalLength', 'sensorWidth', 'sensorHeight', 'frameWidth',
  ] as const satisfies readonly ShotKey[];

  static override readonly styles = [familyStyles, styles];

  static override properties = {
    src: {type: String, reflect: true},
    file: {attribute: false},
    shown: {type: String},
    chartWidth: {state: true},
    dropping: {type: Boolean, reflect: true},
    opening: {state: true},
    message: {state: true},
    sides: {state: true},
  };

  /** Address of a photo of the page's own. @attr src */
  declare src: string | null;
  /**
   * The photo's file. Set by script it is opened and its settings go to the bench without an event; what a reader opens
   * is here too. `null` takes the photo away.
   */
  declare file: Blob | null;
  /** Which chart is drawn. @attr shown */
  declare shown: Shown;
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

  protected declare chartWidth: number;
  protected declare dropping: boolean;
  protected declare opening: boolean;
  /** What is wrong with the last file or address. */
  protected declare message: string;
  /** Text of a typed side that could not be used. */
  protected declare sides: Readonly<Partial<Record<CropSide, Problem>>>;

  #photo: Photo | undefined;
  #whole: Tally | undefined;
  #inside: Tally | undefined;
  #change: CropChange | undefined;
  #trade: Trade | undefined;
  #transparent = false;
  #drawn: Photo | undefined;
  #countedCrop: CropShare | undefined;
  #turn = 0;
  #openedFile: Blob | null = null;
  /** Values that came from a photo, which the next photo of the page may replace. */
  #fromPhoto: Partial<Shot> = {};
  #drag: Drag | undefined;
  /** What the chart's width is measured of: without height, so that a taller chart measures nothing anew. */
  #room: Element | null = null;
  readonly #counter = new Counter((photo, tally) => {
    if (photo !== this.#photo) return;
    this.#inside = tally;
    this.requestUpdate();
  });
  readonly #width = globalThis.ResizeObserver && new ResizeObserver(([entry]) => {
    if (entry?.contentRect.width) this.chartWidth = Math.round(entry.contentRect.width);
  });

  constructor() {
    super();
    this.src = null;
    this.file = null;
    this.shown = 'colours';
    this.chartWidth = 320;
    this.dropping = false;
    this.opening = false;
    this.message = '';
    this.sides = {};
    this.addEventListener('dragover', (event) => { this.#offer(event); });
    this.addEventListener('dragleave', (event) => { if (!this.contains(event.relatedTarget as Node | null)) this.dropping = false; });
    this.addEventListener('drop', (event) => { this.#dropped(event); });
  }

  // —— coming and going ——

  override connectedCallback(): void {
    super.connectedCallback();
    this.ownerDocument.addEventListener('paste', this.#pasted);
    // What was let go of while the element stood nowhere is opened again.
    const lying = this.thing<Photo>('photo');
    if (lying && isClosed(lying)) this.putThing('photo', undefined);
    if (this.hasUpdated && !this.thing('photo')) this.#reopen();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.ownerDocument.removeEventListener('paste', this.#pasted);
    this.#width?.disconnect();
    this.#room = null;
    // A task later an element that was only moved is back in the page.
    setTimeout(() => { if (!this.isConnected && this.alone) this.#letGo(); });
  }

  #letGo(): void {
    this.#turn++;
    this.#openedFile = null;
    this.opening = false;
    this.thing<Photo>('photo')?.close();
    this.putThing('photo', undefined);
  }

  #reopen(): void {
    if (this.file) void this.#openFile(this.file, 'page');
    else if (this.src) void this.#load(this.src);
  }

  // —— opening ——

  /**
   * Opens a photo as if the reader had chosen it: its settings go to the bench and `shot-change` fires.
   * @returns whether it opened; when not, what was on screen stays and the reason is shown
   */
  open(file: Blob): Promise<boolean> {
    return this.#openFile(file, 'reader');
  }

  async #openFile(file: Blob, by: OpenedBy): Promise<boolean> {
    const turn = ++this.#turn;
    this.opening = true;
    const opened = await openPhoto(file);
    if (turn !== this.#turn) {
      if (!isPhotoProblem(opened)) opened.close();
      return false;
    }
    this.opening = false;
    if (isPhotoProblem(opened)) {
      this.message = trouble(opened);
      return false;
    }
    this.message = '';
    this.#openedFile = this.file = file;
    const before = this.thing<Photo>('photo');
    this.putThing('photo', opened);
    before?.close();
    this.#describe(opened, by);
    return true;
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

  async #load(src: string): Promise<void> {
    const turn = ++this.#turn;
    this.opening = true;
    let why = '';
    try {
      const answer = await fetch(new URL(src, this.baseURI));
      if (answer.ok) {
        const file = await answer.blob();
        if (turn === this.#turn) await this.#openFile(new File([file], nameIn(src), {type: file.type}), 'page');
        return;
      }
      why = String(answer.status);
    } catch (error) {
      if (!(error instanceof TypeError)) throw error;
      why = NO_ANSWER;
    }
    if (turn !== this.#turn) return;
    this.opening = false;
    this.message = notLoaded(src, why);
  }

  #offer(event: DragEvent): void {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = 'copy';
    this.dropping = true;
  }

  #dropped(event: DragEvent): void {
    this.dropping = false;
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void this.open(file);
  }

  /** A paste is for the reader that the pointer or the focus is on, or for the only one of the page. */
  readonly #pasted = (event: ClipboardEvent): void => {
    const file = event.clipboardData?.files[0];
    if (!file || event.defaultPrevented) return;
    const only = this.ownerDocument.querySelectorAll(this.localName).length === 1;
    if (!only && !this.matches(':hover, :focus-within')) return;
    event.preventDefault();
    void this.open(file);
  };

  // —— computing ——

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('src') && this.src) void this.#load(this.src);
    if (changed.has('file') && this.file !== this.#openedFile) {
      if (this.file) void this.#openFile(this.file, 'script');
      else this.#letGo();
    }
    const photo = this.thing<Photo>('photo');
    if (photo !== this.#photo) this.#adopt(photo);
    const {crop} = this.shot;
    if (photo && crop !== this.#countedCrop) {
      this.#countedCrop = crop;
      this.#counter.want(photo, cropPixels(crop, photo));
    }
    this.#read();
  }

  /** Takes a photo that lies on the bench now, whoever put it there. What is on screen stays until it is counted. */
  #adopt(photo: Photo | undefined): void {
    this.#photo = photo;
    this.#countedCrop = undefined;
    this.#inside = this.#whole = undefined;
    if (!photo) {
      this.#change = this.#trade = undefined;
      this.#counter.stop();
      return;
    }
    photo.tally().then((whole) => {
      if (photo !== this.#photo) return;
      this.#whole = whole;
      this.requestUpdate();
    }, (error: unknown) => { if (!(error instanceof Problem)) throw error; });
  }

  #read(): void {
    if (!this.#inside || !this.#whole || !this.#photo) return;
    const {intent} = this.shot;
    this.#transparent = this.#inside.pixels === 0;
    if (!this.#transparent) this.#change = cropChange(this.#inside, this.#whole, intent);
    this.#trade = this.#change && this.#tradeFor(this.#photo, this.#change);
  }

  /** From the photo's exposure to what its chart asks for, the other settings as the bench has them. */
  #tradeFor(photo: Photo, {adviceInside}: CropChange): Trade | undefined {
    const {shot} = this;
    const {pay, clicksPerStop} = shot;
    const change = Object.fromEntries(SETTINGS.filter((name) => name !== pay).map((name) => [name, shot[name]]));
    try {
      return trade({
        from: exposureOf(photo, shot), correction: adviceInside.thirds / 3, change, pay, clicksPerStop,
        limits: {
          aperture: [Math.min(shot.apertureWidest, shot.aperture), Math.max(shot.apertureSmallest, shot.aperture)],
          shutter: [shot.shutterFastest, shot.shutterSlowest],
          iso: [Math.min(shot.isoLowest, shot.iso), Math.max(shot.isoHighest, shot.iso)],
        },
      });
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return undefined;
    }
  }

  protected override verdictText(): string {
    return this.message || (this.#change ? verdict(this.#change.adviceInside, this.#change.inside) : '');
  }

  // —— rendering ——

  protected override render(): TemplateResult {
    const photo = this.#photo;
    return html`<section class="plate" part="plate" aria-label=${WORDS.element}>
      ${this.#change ? html`<p class="verdict" part="verdict">${verdict(this.#change.adviceInside, this.#change.inside)}</p>
        <p class="reason">${reasonFor(this.#change.adviceInside, this.#change.inside)}</p>` : nothing}
      ${this.renderMessages()}
      ${photo ? html`<div class="sheet">
          <div class="side of-photo">${this.renderPhoto(photo)}</div>
          <div class="side of-chart">${this.renderChart()}</div>
          <div class="side of-advice">${this.renderWayOut()}${this.renderIntent()}${this.renderSides(photo)}</div>
        </div>
        ${this.renderFoot(photo)}`
      : this.renderBlank()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  private renderMessages(): TemplateResult {
    const {problems} = this.state;
    return html`${this.message ? html`<p class="problem">${this.message}</p>` : nothing}
      ${this.#transparent ? html`<p class="problem">${WORDS.transparent}</p>` : nothing}
      ${TonalChartReader.shotKeys.map((key) => {
        const problem = problems[key];
        return problem && html`<p class="problem" id="${attributeOf(key)}-problem">${refused(attributeOf(key), problem)}</p>`;
      })}`;
  }

  private renderBlank(): TemplateResult {
    return html`${this.src ? html`<slot></slot>` : nothing}
      <div class="blank"><p>${this.opening ? WORDS.opening : WORDS.invite}</p>
        <div class="tools">${this.renderPick(WORDS.open)}<p class="note">${WORDS.stays}</p></div>
        <div><div class="gauge"></div>${emptyScale(this.chartWidth)}</div></div>`;
  }

  private renderPick(label: string): TemplateResult {
    return html`<label class="pick">${label}<input type="file" accept="image/*" @change=${(event: Event) => {
      const input = event.target as HTMLInputElement;
      const file = input.files?.[0];
      // Emptied, so that the same file can be chosen again after it was changed.
      input.value = '';
      if (file) void this.open(file);
    }}></label>`;
  }

  private renderPhoto(photo: Photo): TemplateResult {
    const {crop} = this.shot;
    return html`<div class="stage" @pointerdown=${this.#pressed} @pointermove=${this.#dragged} @pointerup=${this.#released}
        @pointercancel=${this.#released} @keydown=${this.#keyed}>
        <canvas part="photo" role="img" aria-label=${photo.name || WORDS.picture}></canvas>${frameOver(crop)}
      </div>
      <div class="tools"><p class="note">${cropText(cropPixels(crop, photo), photo)}</p>
        ${keepsAll(crop) ? nothing : html`<button type="button" @click=${() => { this.act({crop: WHOLE}); }}>${WORDS.whole}</button>`}
        <p class="spoken" id="frame-keys">${WORDS.frameKeys}</p></div>`;
  }

  private renderChart(): TemplateResult {
    const change = this.#change;
    const tally = this.#inside?.pixels ? this.#inside : undefined;
    return html`${chartChoice(this.shown, (shown) => { this.shown = shown; })}
      <div><div class="gauge"></div>${change && tally ? chartDrawing({
        tally, edges: change.inside, advice: change.adviceInside, shown: this.shown, width: this.chartWidth,
      }) : nothing}</div>
      ${change ? edgesTable(change.inside) : nothing}
      ${change ? html`<p class="note">${cropSentence(change)}</p>` : nothing}`;
  }

  private renderWayOut(): TemplateResult | typeof nothing {
    const [change, way] = [this.#change, this.#trade];
    if (!change || !way || change.adviceInside.thirds === 0) return nothing;
    const {shot} = this;
    const {thirds} = change.adviceInside;
    const missing = Math.abs(Math.log2(way.to[shot.pay] / shot[shot.pay])) * (shot.pay === 'aperture' ? 2 : 1);
    if (missing < FOLLOWED) return html`<p class="way-done">${WORDS.done} <strong>${wayOut(way.to, way.to, shot.pay)}</strong></p>`;
    return html`<ul class="ways"><li><button type="button" @click=${() => { this.#take(way, thirds); }}>
      <strong>${wayOut(shot, way.to, shot.pay)}</strong><span>${wayCost(thirds, way)}</span></button></li></ul>`;
  }

  #take({from, to}: Trade, thirds: number): void {
    const {pay} = this.shot;
    this.act({
      [pay]: to[pay], correction: thirds / 3,
      meteredAperture: from.aperture, meteredShutter: from.shutter, meteredIso: from.iso,
    });
  }

  private renderIntent(): TemplateResult {
    return choiceField({
      id: 'intent', label: WORDS.intent, value: this.shot.intent, onChoose: (intent: Intent) => { this.act({intent}); },
      options: [['dark-backdrop', WORDS.intents['dark-backdrop']], ['even', WORDS.intents.even]],
    });
  }

  private renderSides(photo: Photo): TemplateResult {
    return html`<details><summary>${WORDS.byNumbers}</summary>
      <div class="fields">${SIDES.map((side) => this.renderSide(side, photo))}</div></details>`;
  }

  private renderFoot(photo: Photo): TemplateResult {
    const taken = saysExposure(photo) ? exposureOf(photo, this.shot) : undefined;
    return html`<div class="tools">${this.renderPick(WORDS.openOther)}
      <p class="note">${this.opening ? WORDS.opening : settingsSentence(photo, taken)}</p></div>`;
  }

  private renderSide(side: CropSide, photo: Photo): TemplateResult {
    const {crop} = this.shot;
    const problem = this.sides[side];
    const pixels = side === 'left' || side === 'width' ? photo.width : photo.height;
    return textField({
      id: `crop-${side}`, label: WORDS.sides[side], text: problem ? String(problem.value) : sideText(crop[side]), problem,
      hint: sidePixels(crop[side], pixels),
      onType: (text) => {
        const read = readSide(side, text, pixels);
        this.sides = {...this.sides, [side]: read instanceof Problem ? read : undefined};
        if (!(read instanceof Problem)) this.act({crop: withSide(crop, side, read)});
      },
    });
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
    const photo = this.#photo;
    if (!photo || !canvas || isClosed(photo) || (this.#drawn === photo && canvas.width === photo.preview.width)) return;
    this.#drawn = photo;
    canvas.width = photo.preview.width;
    canvas.height = photo.preview.height;
    canvas.getContext('2d')?.drawImage(photo.preview, 0, 0);
    canvas.parentElement?.style.setProperty('--ratio', String(photo.width / photo.height));
  }

  // —— the frame ——

  readonly #pressed = (event: PointerEvent): void => {
    if (event.button !== 0 || this.#drag) return;
    const stage = event.currentTarget as HTMLElement;
    this.#drag = startDrag(event, stage, this.shot.crop);
    stage.setPointerCapture(event.pointerId);
    this.renderRoot.querySelector<SVGElement>('.keep')?.focus({preventScroll: true});
    event.preventDefault();
  };

  readonly #dragged = (event: PointerEvent): void => {
    if (this.#drag?.pointer !== event.pointerId) return;
    const crop = cropOfDrag(this.#drag, event);
    if (crop) this.act({crop});
  };

  readonly #released = (event: PointerEvent): void => {
    if (this.#drag?.pointer === event.pointerId) this.#drag = undefined;
  };

  readonly #keyed = (event: KeyboardEvent): void => {
    const crop = cropAfterKey(this.shot.crop, event.key, event.shiftKey);
    if (!crop || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    this.act({crop});
  };
}

/** A closed bitmap has no size. */
function isClosed({preview}: Photo): boolean {
  return preview.width === 0;
}

function nameIn(src: string): string {
  return src.replace(/[?#].*$/, '').split('/').at(-1) ?? '';
}
