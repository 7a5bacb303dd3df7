import {html, isServer, nothing, type PropertyValues, type TemplateResult} from 'lit';
import {EXPOSURE_FIELDS} from '../../core/shot/exposure-fields.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {Photo} from '../../photo/open.js';
import {ShotProblemEvent} from '../shared/events.js';
import {isClosed, type OpenedBy} from '../shared/photo/opener.js';
import {PhotoElement} from '../shared/photo/photo-element.js';
import {photoStyles} from '../shared/photo/photo-styles.js';
import {familyStyles} from '../shared/styles.js';
import {cardBook} from './book.js';
import {CARD_SHOT, GRAY_CARD, type CardShot, type GrayCard} from './reading.js';
import {sheetBook} from './sheet/book.js';
import type {SheetHost} from './sheet/host.js';
import type {CardSheet} from './sheet/sheet.js';
import type {SheetWords} from './sheet/words/en.js';
import type {CardWords} from './words/en.js';

/** What shows a card shot is fetched with the first of them, and so are its words. */
const loadSheet = () => import('./sheet/sheet.js');

/** A photo that opened, until the sheet is there to lay it out. */
interface Arrived {
  readonly photo: Photo;
  readonly by: OpenedBy;
}

/**
 * @summary A shot of the gray card: whether it can be trusted, the gains that make gray neutral, how far the exposure is
 *   off, and whether all that still holds for another photo. The shot is read on the device and goes nowhere.
 * @slot - Fallback: shown before the script runs, and while the card shot of `src` is not there
 * @attr {string} src - Address of a card shot of the page's own, on the same origin or one that allows it
 * @attr {string} bench - Name of the shot shared with other elements; when its lamps or flags change after the card shot, the gains no longer hold
 * @attr {string} aperture - f-number of the next shot, `f/11`
 * @attr {string} shutter - Time of the next shot, `0.6 s`, `1/60`
 * @attr {string} iso - ISO of the next shot
 * @attr {string} metered-aperture - f-number the card was shot with, where its file does not say
 * @attr {string} metered-shutter - The same for the time
 * @attr {string} metered-iso - The same for the ISO speed
 * @attr {string} pay - Setting that puts the exposure right: `shutter` (default), `aperture` or `iso`
 * @attr {string} clicks-per-stop - `full`, `half` or `third` (default)
 * @attr {string} aperture-widest - f-number fully open
 * @attr {string} aperture-smallest - f-number fully closed
 * @attr {string} shutter-fastest - Shortest time
 * @attr {string} shutter-slowest - Longest time
 * @attr {string} iso-lowest - Base ISO
 * @attr {string} iso-highest - Highest ISO that would be used
 * @attr {string} correction - Stops by which the next shot should be brighter than the card shot; taking the way out sets it
 * @fires {ShotChangeEvent} shot-change - After a reader took the setting that puts the exposure right, or took that back; after a card shot brought its exposure along
 * @fires {ShotProblemEvent} shot-problem - When text or a value could not be used
 * @csspart plate - The whole
 * @csspart verdict - Whether the card can be trusted
 * @csspart photo - The card shot
 * @csspart frames - The three frames over it
 * @csspart patches - The table of the patches
 * @csspart preview - The picture before and after
 * @csspart field - A label with its control
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved, and where a way out leads
 * @cssprop [--lampblack-line] - Ruled lines
 * @cssprop [--lampblack-quiet] - Labels and notes
 * @cssprop [--lampblack-paper=transparent] - Ground
 */
export class GrayCardCheck extends PhotoElement<CardWords> {
  static override readonly shotKeys = [
    'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'pay', 'clicksPerStop', 'apertureWidest',
    'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'isoLowest', 'isoHighest', 'correction',
  ] as const satisfies readonly ShotKey[];

  static override readonly fields = EXPOSURE_FIELDS;
  static override readonly book = cardBook;
  static override readonly styles = [familyStyles, photoStyles];
  protected static override readonly pastesLast = true;

  /** f-number of the next shot. @attr aperture */
  declare aperture: number;
  /** Time of the next shot, s. @attr shutter */
  declare shutter: number;
  /** ISO speed of the next shot. @attr iso */
  declare iso: number;
  /** f-number of the card shot, where its file does not say. @attr metered-aperture */
  declare meteredAperture: number;
  /** Time of the card shot, s, where its file does not say. @attr metered-shutter */
  declare meteredShutter: number;
  /** ISO speed of the card shot, where its file does not say. @attr metered-iso */
  declare meteredIso: number;
  /** Setting that puts the exposure right. @attr pay */
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
  /** Stops by which the next shot should be brighter than the card shot. @attr correction */
  declare correction: number;
  #sheet: CardSheet | undefined;
  #sheetWords: SheetWords | undefined;
  #arrived: Arrived | undefined;
  /** The shot as it lay here before the element was taken out of the page. */
  #before: CardShot | undefined;

  // —— the card shot on the bench ——

  private get cardShot(): CardShot | undefined { return this.thing<CardShot>(CARD_SHOT); }

  /** The photo in the tonal chart that is linked, while it is another than the card shot. */
  private get linked(): Photo | undefined {
    const photo = this.thing<Photo>('photo');
    return photo && !isClosed(photo) && photo.file !== this.cardShot?.photo.file ? photo : undefined;
  }

  /** The shot that lay there is closed, unless it is the same one with other marks. */
  #lay(shot: CardShot | undefined): void {
    const gone = this.cardShot;
    this.putThing(CARD_SHOT, shot);
    if (gone?.photo !== shot?.photo) gone?.close();
  }

  protected override took(photo: Photo, by: OpenedBy): void {
    this.#arrived?.photo.close();
    this.#arrived = {photo, by};
    this.requestUpdate();
  }

  protected override isOpen(): boolean {
    if (this.cardShot && isClosed(this.cardShot.photo)) this.putThing(CARD_SHOT, undefined);
    return this.cardShot !== undefined || this.#arrived !== undefined;
  }

  protected override letGo(forGood: boolean): void {
    this.#arrived?.photo.close();
    this.#arrived = undefined;
    this.#before = forGood ? undefined : this.cardShot ?? this.#before; // moved and then taken out, it is let go twice
    this.#lay(undefined);
    if (forGood) this.putThing(GRAY_CARD, undefined);
  }

  // —— the sheet it is laid out on ——

  readonly #host: SheetHost = {
    words: () => this.#sheetWords as SheetWords, // there is no sheet before its words
    shot: () => this.shot,
    stated: () => this.state.values,
    cardShot: () => this.cardShot,
    card: () => this.thing<GrayCard>(GRAY_CARD),
    linked: () => this.linked,
    isOpening: () => this.opener.busy,
    setBefore: () => this.setBefore,
    changed: () => { this.requestUpdate(); },
    lay: (shot) => { this.#lay(shot); },
    judge: (card) => { this.putThing(GRAY_CARD, card); },
    act: (changes) => { this.act(changes); },
    fill: (changes) => { Object.assign(this, changes); },
    takeWay: this.takeWay,
    tell: (problem) => { this.dispatchEvent(new ShotProblemEvent(problem)); },
    ways: () => this.#renderWays(this.words.chooseOther),
    later: (load) => this.later(load),
    wear: (styles) => { this.wear(styles); },
  };

  /** Whether there is something for a sheet, or soon will be. */
  get #isSheetWanted(): boolean {
    return !isServer && (this.opener.busy || this.#arrived !== undefined || this.cardShot !== undefined);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (this.#isSheetWanted) this.#fetchSheet();
    this.#sheet?.follow();
  }

  #fetchSheet(): void {
    this.#sheetWords = this.wordsOf(sheetBook) ?? this.#sheetWords;
    const part = this.later(loadSheet);
    if (part && this.#sheetWords) this.#sheet ??= new part.CardSheet(this.#host);
  }

  protected override verdictText(): string {
    return this.troubleText || (this.#open?.verdict ?? '');
  }

  /** The sheet, while it shows a card shot. */
  get #open(): CardSheet | undefined {
    return this.cardShot ? this.#sheet : undefined;
  }

  // —— rendering ——

  protected override render(): TemplateResult {
    const sheet = this.#open;
    return html`<section class="plate" part="plate" aria-label=${this.words.element} lang=${this.spokenLanguage}>
      ${sheet?.renderVerdict() ?? nothing}
      ${this.complaints.map((text) => html`<p class="problem">${text}</p>`)}
      ${sheet?.render() ?? this.#renderBlank()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  protected override get complaints(): readonly string[] {
    const isMissing = this.#isSheetWanted && this.later(loadSheet) === null;
    return [...super.complaints, ...(isMissing ? [this.words.say.family.unreachable] : [])];
  }

  #renderBlank(): TemplateResult {
    const {words} = this;
    return html`${this.src ? html`<slot></slot>` : nothing}
      <div class="blank"><p>${this.#isSheetWanted ? words.opening : words.invite}</p>
        ${this.#renderWays(words.choose)}<p class="note">${words.staysHere}</p></div>`;
  }

  /** Ways to a card shot: a file, or the photo in the tonal chart. */
  #renderWays(label: string): TemplateResult {
    const {linked} = this;
    return html`<div class="tools">${this.renderPick(label)}${linked
      ? html`<button type="button" @click=${() => { void this.open(linked.file); }}>${this.words.useLinked}</button>` : nothing}</div>`;
  }

  protected override updated(): void {
    super.updated();
    if (this.#sheet && this.#arrived) {
      const {photo, by} = this.#arrived;
      this.#arrived = undefined;
      this.#sheet.begin(photo, by, this.#before);
    }
    this.#open?.updated(this.renderRoot);
  }
}
