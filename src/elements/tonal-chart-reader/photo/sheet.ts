import {html, nothing, type CSSResult, type TemplateResult} from 'lit';
import type {CropShare, Intent, Shot} from '../../../core/shot/shot.js';
import type {Level} from '../../../core/tone/level.js';
import type {Photo} from '../../../photo/open.js';
import {choiceField} from '../../shared/fields.js';
import type {WordBook} from '../../shared/languages.js';
import {pixelSize} from '../../shared/photo/file-speech.js';
import {pick} from '../../shared/photo/pick.js';
import type {PhotoPlace} from '../../shared/photo/place.js';
import {exposureOf, meantShift, saysExposure} from '../../shared/photo/settings.js';
import {wayTo} from '../../shared/photo/way-view.js';
import type {LineShare} from '../places.js';
import {aimsView} from './aims-view.js';
import {FIRST_AIMS, exposureForFigure, withAim} from './aims.js';
import {shiftText} from './beside-speech.js';
import {besideView} from './beside-view.js';
import {chartChoice, chartDrawing, edgesTable, type Shown} from './chart-view.js';
import {cropFields, type SideProblems} from './crop-fields.js';
import {cropPixels, keepsAll, WHOLE} from './crop.js';
import {FrameDrag} from './frame-drag.js';
import {framesOver} from './frames-view.js';
import {Painter} from './paint.js';
import {Readings, type MeasuredGray} from './readings.js';
import {SharpnessFold} from './sharpness-fold.js';
import {levelNote, levelText} from './spot-speech.js';
import {sheetStyles} from './styles.js';
import {takenText} from './taken-speech.js';
import {cropText, differText, reasonText, verdictText} from './verdict-speech.js';
import type {SheetWords} from './words/en.js';

/** What the sheet shows, as the element has it now. */
export interface SheetSubject {
  readonly words: SheetWords;
  readonly photo: Photo;
  readonly earlier: Photo | undefined;
  /** Whether the photo is kept, to compare the next one with. */
  readonly isKept: boolean;
  /** The shot as the photo shows it. */
  readonly shot: Shot;
  /** The next shot, which may be taken from elsewhere with a crop of its own. */
  readonly next: Shot;
  /** Where the photo was taken from. */
  readonly place: PhotoPlace | undefined;
  readonly spot: CropShare | null;
  readonly line: LineShare | undefined;
  readonly shown: Shown;
  /** The gray card that lies on the bench. */
  readonly card: MeasuredGray | undefined;
  /** What the shot was before a way out was taken. */
  readonly setBefore: Partial<Shot> | undefined;
  /** Whether another photo is on its way. */
  readonly busy: boolean;
}

/** What the sheet asks of its element. */
export interface SheetHost {
  readonly changed: () => void;
  readonly act: (changes: Partial<Shot>) => void;
  /** Crops the photo. */
  readonly keepPart: (crop: CropShare) => void;
  readonly takeWay: (changes: Partial<Shot>, before: Partial<Shot> | undefined) => void;
  readonly show: (shown: Shown) => void;
  readonly measure: (spot: CropShare | null) => void;
  readonly drawLine: (line: LineShare | undefined) => void;
  readonly layLevel: (level: Level | undefined) => void;
  readonly pick: () => TemplateResult;
  readonly keep: () => void;
  readonly openEarlier: (file: File) => void;
  readonly dropEarlier: () => void;
  readonly later: <M>(load: () => Promise<M>) => M | undefined | null;
  readonly wordsOf: <V>(book: WordBook<V>) => V | undefined;
  readonly wear: (styles: CSSResult) => void;
}

/** Where the spot begins: in the backdrop, more often than not. */
const FIRST_SPOT: CropShare = {left: 0.06, top: 0.08, width: 0.1, height: 0.1};

/** An open photo, laid out: the photo with its frames, the chart, the advice and what else can be asked of it. */
export class PhotoSheet {
  #subject: SheetSubject | undefined;
  #sides: SideProblems = {};
  #aims = FIRST_AIMS;
  #width = 320;
  /** What the chart's width is measured of: without height, so that a taller chart measures nothing anew. */
  #gauge: Element | null = null;
  readonly #painter = new Painter();
  readonly #readings: Readings;
  readonly #sharpness: SharpnessFold;
  readonly #frames = new FrameDrag(
    (frame) => (frame === 'crop' ? this.#now.shot.crop : this.#now.spot ?? FIRST_SPOT),
    (frame, to) => { if (frame === 'crop') this.host.keepPart(to); else this.host.measure(to); });
  readonly #room = globalThis.ResizeObserver && new ResizeObserver(([entry]) => {
    const width = Math.round(entry?.contentRect.width ?? 0);
    if (width === 0 || width === this.#width) return;
    this.#width = width;
    // A frame later, since a taller chart may bring a scroll bar, which would change the width within the same frame.
    requestAnimationFrame(() => { this.host.changed(); });
  });

  constructor(private readonly host: SheetHost) {
    host.wear(sheetStyles);
    this.#readings = new Readings(host.changed, host.layLevel);
    this.#sharpness = new SharpnessFold(host);
  }

  /** Takes what there is to show, and asks what is not known of it yet. */
  follow(subject: SheetSubject | undefined): void {
    const isLine = subject?.line !== undefined && subject.line !== this.#subject?.line;
    this.#subject = subject;
    this.#readings.follow(subject);
    if (isLine) this.#sharpness.isOpen = true;
    const because = this.#readings.comparison?.because;
    this.#sharpness.follow(subject && {
      ...subject, width: this.#width,
      sameSet: this.#readings.comparison && because !== 'shape' && because !== 'other-set',
    });
  }

  /** Measures and asks no more: the element left the page. */
  rest(): void {
    this.#room?.disconnect();
    this.#gauge = null;
    this.#sharpness.follow(undefined);
  }

  get #now(): SheetSubject {
    if (!this.#subject) throw new Error('a sheet without a photo');
    return this.#subject;
  }

  #meant(): number | undefined {
    const {earlier, photo, shot} = this.#now;
    return earlier && meantShift(earlier, photo, shot);
  }

  /** What is read out. */
  get verdict(): string {
    if (!this.#subject) return '';
    const {words} = this.#subject;
    const {change, comparison, level, card} = this.#readings;
    return [
      change ? verdictText(words, change.adviceInside, change.inside) : '',
      comparison ? shiftText(words, comparison, this.#meant()) : '',
      level ? levelText(words, level, card !== undefined) : '',
      this.#sharpness.verdict,
    ].filter(Boolean).join(' ');
  }

  /** What is wrong with the crop. */
  get complaints(): readonly string[] {
    return this.#subject && this.#readings.isTransparent ? [this.#subject.words.transparent] : [];
  }

  // —— drawing ——

  renderVerdict(): TemplateResult | typeof nothing {
    const {change} = this.#readings;
    if (!change || !this.#subject) return nothing;
    const {words} = this.#subject;
    return html`<p class="verdict" part="verdict">${verdictText(words, change.adviceInside, change.inside)}</p>
      <p class="reason">${reasonText(words, change)}</p>`;
  }

  render(): TemplateResult {
    return html`<div class="sheet">
        <div class="side">${this.#renderPhoto()}${this.#renderAdvice()}</div>
        <div class="side">${this.#renderChart()}</div>
      </div>
      <div class="folds">${this.#sharpness.render()}${this.#renderBeside()}${this.#renderAims()}${this.#renderSides()}</div>`;
  }

  #renderPhoto(): TemplateResult {
    const {words, photo, shot, spot, busy} = this.#now;
    const {level, card, gray} = this.#readings;
    const {pressed, dragged, released, keyed} = this.#frames;
    const taken = saysExposure(photo) ? exposureOf(photo, shot) : undefined;
    return html`<div class="stage" @pointerdown=${pressed} @pointermove=${dragged} @pointerup=${released} @pointercancel=${released} @keydown=${keyed}>
        <canvas part="photo" role="img" aria-label=${photo.name || words.picture}></canvas>${framesOver(words, shot.crop, spot)}${this.#sharpness.overlay()}
      </div>
      <p class="note">${this.#cropSize()} ${busy ? words.opening : takenText(words, photo, taken)}</p>
      <div class="tools">${this.host.pick()}
        ${keepsAll(shot.crop) ? nothing : html`<button type="button" @click=${() => { this.host.keepPart(WHOLE); }}>${words.keepAll}</button>`}
        <button type="button" aria-pressed=${spot ? 'true' : 'false'} @click=${() => { this.host.measure(spot ? null : FIRST_SPOT); }}>${words.measure}</button>
        ${level ? html`<button type="button" @click=${() => { this.#readings.markCard(); }}>${words.isCard}</button>` : nothing}
        ${gray ? html`<button type="button" @click=${() => { this.#readings.forgetCard(); }}>${words.noCard}</button>` : nothing}
        <p class="spoken" id="frame-keys">${words.frameKeys}</p></div>
      ${level ? html`<p class="finding">${levelText(words, level, card !== undefined)}</p><p class="note">${levelNote(words, level)}</p>` : nothing}`;
  }

  #cropSize(): string {
    const {words, photo, shot, place} = this.#now;
    const crop = cropPixels(shot.crop, photo);
    const size = pixelSize(words, crop);
    const kept = crop.width === photo.width && crop.height === photo.height ? words.cropWhole(size) : words.cropSize(size, pixelSize(words, photo));
    return place?.crop ? `${kept} ${words.ownCrop}` : kept;
  }

  #renderChart(): TemplateResult {
    const {words, shown} = this.#now;
    const {change, inside, insideEarlier} = this.#readings;
    return html`${chartChoice(words, shown, this.host.show)}
      <div><div class="gauge"></div>${change && inside?.pixels ? chartDrawing(words, {
        tally: inside, edges: change.inside, advice: change.adviceInside, shown, width: this.#width,
        earlier: insideEarlier?.pixels ? insideEarlier : undefined,
      }) : nothing}</div>
      ${change ? html`${edgesTable(words, change.inside)}<p class="note">${cropText(words, change)}</p>` : nothing}`;
  }

  #renderAdvice(): TemplateResult {
    const {words, shot} = this.#now;
    return html`${this.#renderWay(this.#readings.change?.adviceInside.thirds ?? 0)}${choiceField({
      id: 'intent', label: words.intent, value: shot.intent, onChoose: (intent: Intent) => { this.host.act({intent}); },
      options: [['dark-backdrop', words.intents['dark-backdrop']], ['even', words.intents.even]],
    })}`;
  }

  #renderWay(thirds: number): TemplateResult | typeof nothing {
    const {words, photo, place, next, setBefore} = this.#now;
    return wayTo({words, photo, place, shot: next, thirds, before: setBefore, act: this.host.takeWay});
  }

  // —— what stands in folds ——

  #renderSides(): TemplateResult {
    const {words, shot, photo} = this.#now;
    return html`<details><summary>${words.byNumbers}</summary>${cropFields(words, shot.crop, photo, this.#sides, (problems, crop) => {
      this.#sides = problems;
      if (crop) this.host.keepPart(crop);
      this.host.changed();
    })}</details>`;
  }

  #renderAims(): TemplateResult | typeof nothing {
    const {words, shot} = this.#now;
    const {inside, change} = this.#readings;
    if (!inside?.pixels || !change || shot.intent !== 'dark-backdrop') return nothing;
    const gray = this.#readings.grayIn();
    const byCard = gray !== undefined;
    const exposure = exposureForFigure(inside, this.#aims, gray);
    return html`<details><summary>${words.aims}</summary><div class="side">
      ${aimsView(words, this.#aims, exposure, exposure && !exposure.estimated ? differText(words, change, exposure.thirds, byCard) : '', byCard, (field, text) => {
        this.#aims = withAim(words, this.#aims, field, text);
        this.host.changed();
      })}
      ${exposure && !exposure.estimated ? this.#renderWay(exposure.thirds) : nothing}</div></details>`;
  }

  #renderBeside(): TemplateResult {
    const {words, earlier, isKept} = this.#now;
    const {comparison} = this.#readings;
    const hasOther = earlier !== undefined || isKept;
    return html`<details ?open=${earlier !== undefined}><summary>${words.beside}</summary><div class="side">
      ${earlier && comparison ? html`<div class="pair">${besideView(words, comparison, this.#meant())}</div>` : nothing}
      ${isKept ? html`<p class="note">${words.kept}</p>` : nothing}
      <div class="tools"><button type="button" @click=${hasOther ? this.host.dropEarlier : this.host.keep}>${hasOther ? words.away : words.keepShot}</button>
        ${pick(words.openEarlier, this.host.openEarlier)}</div></div></details>`;
  }

  /** Measures and paints what was drawn. */
  updated(root: ParentNode): void {
    const gauge = root.querySelector('.gauge');
    if (gauge !== this.#gauge) {
      this.#room?.disconnect();
      if (gauge) this.#room?.observe(gauge);
      this.#gauge = gauge;
    }
    const canvas = root.querySelector<HTMLCanvasElement>('.stage canvas');
    if (canvas && this.#subject) this.#painter.paint(this.#subject.photo, canvas);
  }
}
