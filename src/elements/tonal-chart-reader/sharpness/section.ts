import {html, nothing, type TemplateResult} from 'lit';
import {diffractionInPixels} from '../../../core/shot/framing.js';
import type {Shot} from '../../../core/shot/shot.js';
import type {Photo} from '../../../photo/open.js';
import {textField} from '../../shared/fields.js';
import {cropPixels} from '../photo/crop.js';
import {hasLength, type LineShare} from '../places.js';
import {Latest} from '../../shared/photo/latest.js';
import {LineDrag} from './line-drag.js';
import {NO_READINGS, focusReading, rulerAt, rulerOnLine, withReading, type FocusReading, type RulerField, type RulerOnLine} from './ruler-readings.js';
import {judgedStretches, scaleOf, sharpUpTo} from './draw.js';
import {clearestLine} from './front-line.js';
import {HeatReader} from './heat.js';
import {acrossCrop, frontToBack} from './line.js';
import {readAlong, type LineReading} from './reading.js';
import {heatLegend, overPhoto, profileDrawing} from './profile-view.js';
import {changeOf, type Change} from './names.js';
import {diffractionText, focusText, placeOnWay, rulerText, sharpText, worthText, type Places} from './speech.js';
import type {SharpnessWords} from './words/en.js';

export {sharpnessStyles} from './styles.js';

/** What the section is about, as the element has it now. */
export interface SharpnessSubject {
  readonly words: SharpnessWords;
  readonly photo: Photo;
  readonly earlier: Photo | undefined;
  /** Whether the earlier shot shows the same set from the same place; `undefined` while nobody has looked. */
  readonly sameSet: boolean | undefined;
  readonly shot: Shot;
  /** f-numbers of both shots. */
  readonly aperture: number;
  readonly apertureEarlier: number;
  /** Line that was drawn or given by the page; without one it lies where the focus shows, or beside what the crop shows. */
  readonly line: LineShare | undefined;
  /** CSS px the curve gets. */
  readonly width: number;
}

/** What the section asks of its element. */
export interface SharpnessHost {
  readonly changed: () => void;
  /** Without a line: from front to back, as of itself. */
  readonly draw: (line: LineShare | undefined) => void;
  readonly focus: (behindFront: number) => void;
}

/** Focus of the bench and a reading nearer than this are the same, mm. */
const SAME_FOCUS = 0.5;

/** "Where is it sharp?": a line across the photo with its curve, the squares over it, and what they come to. */
export class SharpnessSection {
  #subject: SharpnessSubject | undefined;
  #reading: LineReading | undefined;
  #readings = NO_READINGS;
  /** Focus as it was before a reading was taken over, mm behind the front edge. */
  #focusBefore: number | undefined;
  #showsHeat = false;
  #showsChange = true;
  #asked: readonly unknown[] = [];
  /** Line from front to back that was looked for in a photo, where there is one. */
  #front: {readonly of: Photo; readonly line: LineShare | undefined} | undefined;

  readonly #heat: HeatReader;
  readonly #along = new Latest<LineReading | undefined>((reading) => {
    if (reading && (reading.photo !== this.#subject?.photo || !this.#line)) return;
    this.#reading = reading;
    this.host.changed();
  });
  readonly #drag = new LineDrag(() => this.#line ?? frontToBack(this.#now.shot.crop), (line) => { if (hasLength(line)) this.host.draw(line); });

  constructor(private readonly host: SharpnessHost) {
    this.#heat = new HeatReader(host.changed);
  }

  /** Asks what is not known yet. Called before every drawing. */
  follow(subject: SharpnessSubject): void {
    this.#subject = subject;
    const {photo, aperture, apertureEarlier, shot: {crop}} = subject;
    const [earlier, line, scaleAtB] = [this.#earlier, this.#line, this.#ruler?.scaleAtB ?? 1];
    const asked = [photo, earlier, aperture, apertureEarlier, scaleAtB, ...line?.a ?? [NaN], ...line?.b ?? []];
    if (asked.some((value, at) => !Object.is(value, this.#asked[at]))) {
      if (photo !== this.#asked[0] || !line) this.#reading = undefined;
      this.#asked = asked;
      this.#along.want(() => (line ? readAlong({photo, earlier, aperture, apertureEarlier, line, scaleAtB}) : this.#lookForFront(photo)));
    }
    if (this.#showsHeat) this.#heat.follow(photo, earlier, cropPixels(crop, photo));
  }

  /** Looks no further: the section was closed or the photo taken away. */
  stop(): void {
    this.#along.stop();
    this.#heat.stop();
    this.#subject = this.#reading = undefined;
    this.#asked = [];
  }

  /** The earlier shot, where its pixels can be set beside this one's. */
  get #earlier(): Photo | undefined {
    const {photo, earlier, sameSet} = this.#now;
    return earlier && sameSet && earlier.width === photo.width && earlier.height === photo.height ? earlier : undefined;
  }

  /** The line there is; `undefined` while it is looked for. */
  get #line(): LineShare | undefined {
    const {line, photo, shot} = this.#now;
    return line ?? (this.#front?.of === photo ? this.#front.line ?? frontToBack(shot.crop) : undefined);
  }

  async #lookForFront(photo: Photo): Promise<undefined> {
    this.#front = {of: photo, line: await clearestLine(photo)};
  }

  get #ruler(): RulerOnLine | undefined {
    return rulerOnLine(this.#readings, this.#now.shot);
  }

  get #places(): Places {
    const ruler = this.#ruler;
    const {words, shot: {unit}} = this.#now;
    return {write: ruler ? (along) => rulerText(words, rulerAt(ruler, along), unit) : (along) => placeOnWay(words, along), onRuler: ruler !== undefined};
  }

  get #now(): SharpnessSubject {
    return this.#subject as SharpnessSubject;
  }

  /** Finished pixels to a pixel of the photo. */
  get #perPixel(): number {
    const {photo, shot} = this.#now;
    return shot.pictureWidth / cropPixels(shot.crop, photo).width;
  }

  // —— what it says ——

  /** The answer in one or two sentences; '' while there is none. */
  get verdict(): string {
    const {comparison} = this.#reading ?? {};
    if (!this.#reading) return '';
    return [comparison ? this.#worth(this.#reading) : this.#sharp(this.#reading), this.#focusText(this.#reading)].filter(Boolean).join(' ');
  }

  #sharp({points}: LineReading): string {
    const {words, shot: {blurLimit}} = this.#now;
    const scale = scaleOf(points.map(({blur}) => blur), blurLimit / this.#perPixel);
    const sharp = scale ? judgedStretches(points, scale).filter(({sharpness}) => sharpness === 'sharp') : [];
    return sharpText(words, sharp, scale !== undefined, this.#places);
  }

  #worth({comparison, aperture, apertureEarlier}: LineReading): string {
    if (!comparison) return '';
    const {points} = comparison;
    const part = (change: Change) => points.filter((point) => changeOf(point) === change).length / (points.length || 1);
    const added = points.map(({added: blur, sharper}) => (blur === null || sharper === 'neither' ? 0 : blur * this.#perPixel));
    const gained = -Math.min(0, ...added);
    return worthText(this.#now.words, {
      now: aperture, before: apertureEarlier, sharper: part('sharper'), softer: part('softer'), alike: part('alike'), unknown: part('unknown'),
      gained, lost: Math.max(0, ...added), best: points[added.indexOf(-gained)]?.along ?? 0,
    }, this.#places);
  }

  #focusText({focus}: LineReading): string {
    const {words, shot: {unit}} = this.#now;
    return focusText(words, focus?.along, this.#focusReading, this.#places, unit);
  }

  get #focusReading(): FocusReading | undefined {
    const [focus, ruler] = [this.#reading?.focus, this.#ruler];
    return focus && ruler && focusReading(focus, ruler, this.#readings.values.atFront);
  }

  // —— drawing ——

  /** The line and the squares, to be laid over the photo. */
  overlay(): TemplateResult | typeof nothing {
    if (!this.#subject) return nothing;
    const {photo, shot} = this.#subject;
    const {pressed, dragged, released, keyed} = this.#drag;
    return html`<div class="over" @pointerdown=${pressed} @pointermove=${dragged} @pointerup=${released} @pointercancel=${released} @keydown=${keyed}>
      ${overPhoto(this.#now.words, this.#line, this.#showsHeat ? this.#heat.heat : undefined, this.#change, shot.blurLimit / this.#perPixel, photo)}</div>`;
  }

  get #change(): boolean { return this.#showsChange && this.#earlier !== undefined; }

  section(): TemplateResult | typeof nothing {
    if (!this.#subject) return nothing;
    const {words, shot, width, earlier, sameSet} = this.#subject;
    const reading = this.#reading;
    return html`<div class="side">
      <p class="finding">${reading ? this.verdict : words.looking}</p>
      ${earlier && sameSet !== undefined && !this.#earlier ? html`<p class="note">${words.otherSize}</p>` : nothing}
      ${reading ? this.#renderNotes(reading) : nothing}
      <div class="pair">
        <div class="side">${reading ? profileDrawing({words, reading, perPixel: this.#perPixel, limit: shot.blurLimit, width, places: this.#places}) : nothing}
          ${this.#renderScaleNote()}</div>
        <div class="side">${this.#renderLine()}${this.#renderRuler()}${this.#renderUse()}${this.#renderHeat()}</div>
      </div></div>`;
  }

  #renderNotes(reading: LineReading): TemplateResult {
    const {words, shot, aperture} = this.#now;
    const disc = diffractionInPixels({...shot, aperture});
    return html`<p class="note">${reading.focus ? reading.fromBoth ? words.bothShots : words.oneShot : nothing}
      ${reading.comparison ? diffractionText(words, aperture, disc, shot.blurLimit) : nothing}</p>`;
  }

  #renderScaleNote(): TemplateResult | typeof nothing {
    const {words, shot: {blurLimit}} = this.#now;
    const {say} = words;
    const scale = this.#reading && scaleOf(this.#reading.points.map(({blur}) => blur), blurLimit / this.#perPixel);
    return scale ? html`<p class="note">${words.curveNote(say.pixels(blurLimit), say.pixels(sharpUpTo(scale) * this.#perPixel))}</p>` : nothing;
  }

  #renderLine(): TemplateResult {
    const {words} = this.#now;
    return html`<div class="tools" role="group" aria-label=${words.lay}>
      <button type="button" @click=${() => { this.host.draw(undefined); }}>${words.frontToBack}</button>
      <button type="button" @click=${() => { this.host.draw(acrossCrop(this.#now.shot.crop)); }}>${words.across}</button>
      <p class="spoken" id="line-keys">${words.keys}</p></div>`;
  }

  #renderRuler(): TemplateResult {
    const {words, shot: {unit}} = this.#now;
    const field = (name: RulerField, hint?: string) => textField({
      id: `ruler-${name}`, say: words.say, label: words.rulerAt[name], text: this.#readings.texts[name] ?? '', problem: this.#readings.problems[name], hint,
      onType: (text) => {
        this.#readings = withReading(this.#readings, name, text, unit);
        this.host.changed();
      },
    });
    const {values: {atA, atB, atMiddle}} = this.#readings;
    const ruler = this.#ruler;
    return html`<fieldset class="by-ruler"><legend>${words.ruler}</legend>
      <div class="fields">${field('atA')}${field('atMiddle', words.middleHint)}${field('atB')}${field('atFront')}</div></fieldset>
      ${ruler ? nothing : html`<p class="note">${words.layOnRuler}</p>`}
      ${ruler && !ruler.measured ? html`<p class="note">${words.reckoned}</p>` : nothing}
      ${!ruler && atA !== undefined && atB !== undefined && atMiddle !== undefined ? html`<p class="problem">${words.wrongMiddle}</p>` : nothing}`;
  }

  #renderUse(): TemplateResult | typeof nothing {
    const behind = this.#focusReading?.behindFront;
    const {words, shot: {focus, unit}} = this.#now;
    if (behind === undefined) return nothing;
    const before = this.#focusBefore;
    const set = (to: number, was: number | undefined) => () => {
      this.#focusBefore = was;
      this.host.focus(to);
    };
    if (Math.abs(behind - focus) < SAME_FOCUS) {
      return before === undefined ? nothing : html`<div class="way-done"><p>${words.focusDone(rulerText(words, Math.abs(focus), unit), focus < 0)}</p>
        <button type="button" @click=${set(before, undefined)}>${words.undo}</button></div>`;
    }
    return html`<ul class="ways"><li><button type="button" @click=${set(behind, focus)}>
      <strong>${words.setFocus(rulerText(words, Math.abs(behind), unit), behind < 0)}</strong> <span>${words.setFocusFrom(rulerText(words, focus, unit))}</span></button></li></ul>`;
  }

  #renderHeat(): TemplateResult {
    const toggle = () => {
      this.#showsHeat = !this.#showsHeat;
      if (!this.#showsHeat) this.#heat.stop();
      this.host.changed();
    };
    const choose = (change: boolean) => () => {
      this.#showsChange = change;
      this.host.changed();
    };
    const {words} = this.#now;
    const {heat} = this.#heat;
    return html`<div class="side"><div class="tools"><button type="button" aria-pressed=${this.#showsHeat ? 'true' : 'false'} @click=${toggle}>${words.heat}</button>
        ${this.#showsHeat && this.#earlier ? [true, false].map((change) => html`<button type="button" aria-pressed=${this.#showsChange === change ? 'true' : 'false'}
          @click=${choose(change)}>${change ? words.heatChange : words.heatSharp}</button>`) : nothing}
        ${this.#showsHeat && (heat?.done ?? 0) < 1 ? html`<p class="note">${words.lookingSoFar(words.say.percent(heat?.done ?? 0))}</p>` : nothing}</div>
      ${this.#showsHeat ? html`${heatLegend(words, this.#change)}${this.#change ? nothing : html`<p class="note">${words.legendNote}</p>`}` : nothing}</div>`;
  }
}
