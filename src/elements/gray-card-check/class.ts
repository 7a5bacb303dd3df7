import {html, nothing, type PropertyValues, type TemplateResult} from 'lit';
import {Problem} from '../../core/problem.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {Comparison} from '../../core/tone/compare.js';
import {wholeOf, type Crop} from '../../core/tone/pixels.js';
import type {Patch} from '../../core/white/card.js';
import type {Gains} from '../../core/white/gains.js';
import {colourChange, setupChanges, type SetupChange} from '../../core/white/holds.js';
import type {Photo} from '../../photo/open.js';
import {ShotProblemEvent} from '../shared/events.js';
import {textField} from '../shared/fields.js';
import {familyStyles} from '../shared/styles.js';
import {Latest} from '../shared/photo/latest.js';
import {isClosed} from '../shared/photo/opener.js';
import {saysExposure} from '../shared/photo/settings.js';
import {exposureText} from '../shared/photo/way-speech.js';
import {wayTo} from '../shared/photo/way-view.js';
import {CardPhotoElement} from './card-photo.js';
import {gainsView, type Copied} from './gains-view.js';
import {MarkDrag} from './mark-drag.js';
import {centredOn, closeUp, isInside, readMark, writeMark} from './marks.js';
import {previewView, type Wiped} from './preview-view.js';
import {PATCHES, thirdsToRight, type CardShot, type GrayCard} from './reading.js';
import {findingsList, patchesTable} from './reading-view.js';
import {framesOver} from './stage-view.js';
import {styles} from './styles.js';
import {Wipe} from './wipe.js';
import {SET_CHANGED, castSentence, changeSentence, holdsSentence, temperatureSentence} from './words-light.js';
import {WORDS, markingText, nextMark, shotText, verdict} from './words.js';

/** Typed frames that could not be used. */
type MarkProblems = Readonly<Partial<Record<Patch, Problem | undefined>>>;

/**
 * @summary A shot of the gray card: whether it can be trusted, the gains that make gray neutral, how far the exposure is
 *   off, and whether all that still holds for another photo. The shot is read on the device and goes nowhere.
 * @slot - Fallback: shown before the script runs, and while the card shot of `src` is not there
 * @attr {string} src - Address of a card shot of the page's own, on the same origin or one that allows it
 * @attr {string} bench - Name of the shot shared with other elements
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
 * @attr {string} lights - Lamps and flags; when they change after the card shot, its gains no longer hold
 * @fires {ShotChangeEvent} shot-change - After a reader took the setting that puts the exposure right
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
export class GrayCardCheck extends CardPhotoElement {
  static override readonly shotKeys = [
    'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'pay', 'clicksPerStop', 'apertureWidest',
    'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'isoLowest', 'isoHighest', 'correction', 'lights',
  ] as const satisfies readonly ShotKey[];

  static override readonly styles = [familyStyles, styles];

  static override properties = {
    wholeShown: {state: true}, share: {state: true}, wiped: {state: true}, withExposure: {state: true}, copied: {state: true},
    markProblems: {state: true},
  };

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
  /** Lamps and flags. @attr lights */
  declare lights: Shot['lights'];

  protected declare wholeShown: boolean;
  /** Where the line between before and after stands, per cent. */
  protected declare share: number;
  protected declare wiped: Wiped;
  protected declare withExposure: boolean;
  protected declare copied: Copied | undefined;
  protected declare markProblems: MarkProblems;

  /** Part of the card shot that is shown, px, and what it was chosen for. */
  #area: Crop | undefined;
  #areaOf: readonly unknown[] = [];
  #drawn: readonly unknown[] = [];
  #comparison: Comparison | undefined;
  #compared: readonly unknown[] = [];
  #changes: readonly SetupChange[] = [];
  #copiedOf: Gains | undefined;
  readonly #wipe = new Wipe();
  readonly #comparing = new Latest<Comparison>((comparison) => { this.#comparison = comparison; this.requestUpdate(); });
  readonly #marks = new MarkDrag(() => this.#onStage(), {
    moved: (patch, to) => { this.#move(patch, to); },
    settled: () => { this.#settle(); },
    pressed: (x, y, on) => { this.#press(x, y, on); },
  });

  constructor() {
    super();
    this.wholeShown = false;
    this.share = 50;
    this.wiped = 'photo';
    this.withExposure = false;
    this.copied = undefined;
    this.markProblems = {};
  }

  // —— computing ——

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const {cardShot, other} = this;
    if (!cardShot) {
      this.#area = undefined;
      this.#comparison = undefined;
      return;
    }
    this.#show(cardShot);
    this.#compare(cardShot.photo, other);
    const colours = other && this.#comparison ? colourChange(this.#comparison) : undefined;
    this.#changes = [...setupChanges(cardShot.lights, this.shot.lights), ...(colours ?? [])];
    if (this.card?.gains !== this.#copiedOf) this.copied = undefined;
  }

  /** Chooses the part that is shown anew when the shot, the search or the choice changed, not while a frame is moved. */
  #show({photo, how, placed, patches}: CardShot): void {
    const close = !this.wholeShown && placed.length === PATCHES.length;
    const isNew = [photo, close, how === 'found'].some((part, at) => part !== this.#areaOf[at]);
    if (this.#area && !isNew) return;
    this.#areaOf = [photo, close, how === 'found'];
    this.#area = close ? closeUp(patches, photo) : wholeOf(photo);
  }

  /** Compares the card shot with the photo on the bench, when there is another. */
  #compare(card: Photo, other: Photo | undefined): void {
    if (card === this.#compared[0] && other === this.#compared[1]) return;
    this.#compared = [card, other];
    this.#comparison = undefined;
    this.#comparing.stop();
    if (other && !isClosed(card)) this.#comparing.want(() => other.ask('compare', wholeOf(card), card));
  }

  /** The photo on the bench, while it is another than the card shot. */
  private get other(): Photo | undefined {
    const photo = this.thing<Photo>('photo');
    return photo && !isClosed(photo) && photo.file !== this.cardShot?.photo.file ? photo : undefined;
  }

  protected override verdictText(): string {
    const {cardShot, card} = this;
    if (this.troubleText) return this.troubleText;
    const marking = cardShot && [markingText(cardShot), nextMark(cardShot)].filter(Boolean).join(' ');
    return marking || (card ? verdict(card) : '');
  }

  // —— marking ——

  #onStage() {
    const {cardShot} = this;
    return cardShot && this.#area && {patches: cardShot.patches, area: this.#area, picture: cardShot.photo};
  }

  #move(patch: Patch, to: Crop): void {
    const shot = this.cardShot;
    if (!shot) return;
    this.markProblems = {...this.markProblems, [patch]: undefined};
    this.mark({...shot.patches, [patch]: to}, 'marked', PATCHES.filter((one) => one === patch || shot.placed.includes(one)));
  }

  /** After a move the close-up follows a frame that left it. */
  #settle(): void {
    const area = this.#area;
    const shot = this.cardShot;
    if (!area || !shot || PATCHES.every((patch) => isInside(shot.patches[patch], area))) return;
    this.#area = undefined;
    this.requestUpdate();
  }

  /** A press places the next frame that has no place yet; on one of those that wait it only takes hold of it. */
  #press(x: number, y: number, on: Patch | undefined): void {
    const shot = this.cardShot;
    if (!shot || (on && !shot.placed.includes(on))) return;
    const next = PATCHES.find((patch) => !shot.placed.includes(patch));
    if (next) this.#move(next, centredOn(shot.patches[next], x, y, shot.photo));
  }

  #type(patch: Patch, text: string, {photo}: CardShot): void {
    const read = readMark(`${patch}-frame`, text, photo);
    if (read instanceof Problem) {
      this.markProblems = {...this.markProblems, [patch]: read};
      this.dispatchEvent(new ShotProblemEvent(read));
    } else {
      this.#move(patch, read);
      this.#settle();
    }
  }

  // —— rendering ——

  protected override render(): TemplateResult {
    const {cardShot, card} = this;
    const marking = cardShot && markingText(cardShot);
    return html`<section class="plate" part="plate" aria-label=${WORDS.element}>
      ${marking ? html`<p class="verdict" part="verdict">${marking}</p>` : card ? html`<p class="verdict" part="verdict">${verdict(card)}</p>` : nothing}
      ${this.renderMessages()}
      ${cardShot ? html`<div class="sheet ${cardShot.how === 'looking' || marking === undefined ? '' : 'alone'}"><div class="side">${this.renderStage(cardShot)}</div>
          ${card ? html`<div class="side">${this.renderReading(card, cardShot)}</div>` : nothing}</div>
          ${card ? this.renderUse(card, cardShot) : nothing}${this.renderFoot(cardShot)}`
      : this.renderBlank()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  private renderMessages(): TemplateResult {
    return html`${this.complaints.map((text) => html`<p class="problem">${text}</p>`)}`;
  }

  private renderBlank(): TemplateResult {
    return html`${this.src ? html`<slot></slot>` : nothing}
      <div class="blank"><p>${this.opener.busy ? WORDS.opening : WORDS.invite}</p>
        ${this.renderOpen(WORDS.open)}<p class="note">${WORDS.stays}</p></div>`;
  }

  /** Ways to a card shot: a file, or the photo that lies on the bench. */
  private renderOpen(label: string): TemplateResult {
    const {other} = this;
    return html`<div class="tools">${this.renderPick(label)}${other ? html`<button type="button" @click=${() => { void this.open(other.file); }}>${WORDS.useBench}</button>` : nothing}</div>`;
  }

  private renderStage(shot: CardShot): TemplateResult {
    const {pressed, dragged, released, taken, keyed} = this.#marks;
    const {photo, patches, placed} = shot;
    const isPlaced = placed.length === PATCHES.length;
    const next = nextMark(shot);
    return html`<div class="stage" @pointerdown=${pressed} @pointermove=${dragged} @pointerup=${released} @pointercancel=${taken} @keydown=${keyed}>
        <canvas class="shot" part="photo" role="img" aria-label=${photo.name || WORDS.picture}></canvas>
        ${this.#area ? framesOver(patches, this.#area, placed) : nothing}</div>
      ${next ? html`<p class="next">${next}</p>` : nothing}
      <p class="spoken" id="frame-keys">${WORDS.frameKeys}</p>
      <div class="tools">
        ${isPlaced ? html`<button type="button" @click=${() => { this.wholeShown = !this.wholeShown; }}>${this.wholeShown ? WORDS.closer : WORDS.whole}</button>` : nothing}
        ${shot.how === 'marked' ? html`<button type="button" @click=${() => { void this.look(); }}>${WORDS.again}</button>` : nothing}</div>
      <details><summary>${WORDS.byNumbers}</summary><div class="fields of-marks">${PATCHES.map((patch) => {
        const problem = this.markProblems[patch];
        return textField({
          id: `${patch}-frame`, label: WORDS.markField[patch], say: this.words.say, text: problem ? String(problem.value) : writeMark(patches[patch]), problem,
          onType: (text) => { this.#type(patch, text, shot); },
        });
      })}</div></details>`;
  }

  private renderReading(card: GrayCard, {photo}: CardShot): TemplateResult {
    const thirds = card.trusted ? thirdsToRight(card.exposureError) : 0;
    return html`${patchesTable(card.reading)}${findingsList(card)}
      ${wayTo({words: this.words, photo, shot: this.shot, thirds, before: this.setBefore, act: this.takeWay})}`;
  }

  private renderUse(card: GrayCard, shot: CardShot): TemplateResult {
    return html`<div class="sheet"><div class="side">${this.renderPreview(card, shot)}</div>
      <div class="side">${card.cast && card.trusted ? html`<h3>${WORDS.light}</h3>
        <p class="said">${castSentence(card.cast)} ${temperatureSentence(card.cast)}</p>` : nothing}
      ${card.gains ? html`<h3>${WORDS.gains}</h3>${card.trusted ? nothing : html`<p class="problem">${WORDS.doubtful}</p>`}
        ${gainsView(card.gains, this.copied, (copied) => { this.#copiedOf = card.gains; this.copied = copied; })}${this.renderHolds(shot)}` : nothing}</div></div>`;
  }

  private renderPreview(card: GrayCard, {photo}: CardShot): TemplateResult {
    const {other} = this;
    if (!card.gains) return html`<p class="note">${WORDS.noGains}</p>`;
    const of = other ? this.wiped : 'card';
    return html`<h3>${WORDS.preview}</h3>${previewView({
      name: (of === 'card' ? photo : other ?? photo).name, of, choice: other !== undefined, share: this.share, withExposure: this.withExposure,
      exposureOff: card.trusted && thirdsToRight(card.exposureError) !== 0,
      onWipe: (share) => { this.share = share; },
      onChoose: (wiped) => { this.wiped = wiped; },
      onExposure: (on) => { this.withExposure = on; },
    })}`;
  }

  /** Whether the gains hold for the photo on the bench, or for the next one. */
  private renderHolds({lights}: CardShot): TemplateResult | typeof nothing {
    const {other} = this;
    const changes = this.#changes;
    if (!other && changes.length === 0) return nothing;
    if (other && !this.#comparison && changes.length === 0) return nothing;
    const says = other ? holdsSentence(changes.length, this.#comparison?.colour !== undefined) : SET_CHANGED;
    return html`<p class=${changes.length ? 'problem' : 'note'} id="holds">${says}</p>
      ${changes.length ? html`<ul>${changes.map((change) => html`<li class="note">${changeSentence(change, lights)}</li>`)}</ul>` : nothing}`;
  }

  private renderFoot({photo}: CardShot): TemplateResult {
    const taken = saysExposure(photo) ? exposureText(this.words, this.exposureAt(photo)) : undefined;
    return html`<div class="foot">${this.renderOpen(WORDS.openOther)}
      <p class="note">${this.opener.busy ? WORDS.opening : shotText(photo.name, photo, taken)}</p></div>`;
  }

  // —— drawing ——

  protected override updated(): void {
    super.updated();
    this.#paintShot();
    this.#paintWipe();
  }

  #paintShot(): void {
    const canvas = this.renderRoot.querySelector<HTMLCanvasElement>('canvas.shot');
    const {cardShot} = this;
    const area = this.#area;
    if (!canvas || !cardShot || !area || isClosed(cardShot.photo)) return;
    if (this.#drawn[0] === area && this.#drawn[1] === canvas && this.#drawn[2] === cardShot.photo) return;
    const {photo} = cardShot;
    const scale = photo.preview.width / photo.width;
    // A close-up is drawn with as many pixels as the preview has there, but not so few that the frames' place is blurred.
    canvas.width = Math.round(Math.max(area.width * scale, Math.min(900, area.width)));
    canvas.height = Math.max(1, Math.round(canvas.width * area.height / area.width));
    canvas.getContext('2d')?.drawImage(photo.preview,
      area.x * scale, area.y * scale, area.width * scale, area.height * scale, 0, 0, canvas.width, canvas.height);
    canvas.parentElement?.style.setProperty('--ratio', String(area.width / area.height));
    this.#drawn = [area, canvas, photo];
  }

  #paintWipe(): void {
    const canvas = this.renderRoot.querySelector<HTMLCanvasElement>('canvas.wipe');
    const {cardShot, card, other} = this;
    const photo = other && this.wiped === 'photo' ? other : cardShot?.photo;
    if (!canvas || !card?.gains || !photo || isClosed(photo)) return;
    this.#wipe.draw(canvas, photo.preview, card.gains, this.withExposure && card.trusted ? -card.exposureError : 0, this.share / 100);
    canvas.parentElement?.style.setProperty('--ratio', String(photo.width / photo.height));
  }
}
