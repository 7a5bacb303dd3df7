import {html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import {Problem} from '../../core/problem.js';
import {nearestClick, type ClicksPerStop} from '../../core/exposure/clicks.js';
import {readAperture, readIso} from '../../core/exposure/read.js';
import type {ExposureReading} from '../../core/exposure/read-exposure.js';
import {readShutter} from '../../core/exposure/read-shutter.js';
import {afterStops, SETTINGS, type Exposure, type Setting} from '../../core/exposure/stops.js';
import {magnificationNow} from '../../core/shot/close-up.js';
import {EXPOSURE_FIELDS} from '../../core/shot/exposure-fields.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';
import {choiceField, textField} from '../shared/fields.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {takenBack} from '../shared/undo.js';
import {afterSetting, balanceOf, drivenBy, limitsOf, payerFor, settingOf, startOf, type Balance} from './balance.js';
import {dialBook} from './book.js';
import {dialView, type DialHands} from './dial-view.js';
import {SIDE, angleOf, layOut, turnBetween, type Dial} from './draw.js';
import {mendingView, type Mending, type Readings} from './mending.js';
import {dialStyles} from './styles.js';
import {closeUpWords, exposureText, exposureWords, keptWords, priceWords, roundingWords, steadyWords, verdictWords} from './speech.js';
import type {DialWords} from './words/en.js';

const READERS = {aperture: readAperture, shutter: readShutter, iso: readIso} as const;

/** What stands behind the folds, and what reads a start: fetched once they are wanted. */
const loadFolds = () => import('./folds-view.js');
const loadStartReader = () => import('../../core/exposure/read-exposure.js');

/** What was typed for a start. */
interface StartTyped {
  /** As typed; none where not all of a start was said, so that all of it is shown. */
  readonly text?: string;
  readonly problem?: Problem;
  /** What it was read as. */
  readonly start?: Exposure;
  /** What was not typed, and stays as it was. */
  readonly kept?: readonly Setting[];
}

/** Everything a trade changes. */
const TRADED = ['aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'meteredMagnification', 'correction'] as const;

/** A setting as it stands in a field whose label says ISO already. */
const bare = (text: string): string => text.replace(/^ISO\s/, '');

/** Degrees beside the hand within which a press takes hold of it. */
const ON_THE_HAND = 12;

/**
 * Two facing rings, shutter and aperture: every pair that faces gives the same light at the ISO held.
 *
 * @summary The same light with another setting, what it costs and the way there
 * @slot - Fallback: shown where the script does not run
 * @attr {string} bench - Name of the shot shared with other elements of the page
 * @attr {string} aperture - f-number as a person writes it: `f/8`, `11`, `5,6`
 * @attr {string} shutter - Time as a person writes it: `1/25`, `0"6`, `0,6 s`
 * @attr {string} iso - ISO speed: `100`
 * @attr {string} metered-aperture - Where the trade starts; the setting itself when left out. So with `metered-shutter`, `metered-iso`
 * @attr {string} correction - Stops the picture should become brighter by: `+2`, `-1/3`
 * @attr {string} pay - What keeps the light when another is changed: `aperture`, `shutter` or `iso`
 * @attr {string} clicks-per-stop - Clicks of the dials: `full`, `half` or `third`
 * @attr {string} aperture-widest - f-number fully open. So with `aperture-smallest`, `shutter-fastest`, `shutter-slowest`, `iso-lowest`, `iso-highest`
 * @fires {ShotChangeEvent} shot-change - After a reader changed something; `changes` and the whole `shot` in base units
 * @fires {ShotProblemEvent} shot-problem - When text or a value could not be used
 * @csspart plate - The whole element
 * @csspart verdict - The sentence that sums up
 * @csspart dial - The drawing
 * @csspart field - A label with its field
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved
 * @cssprop [--lampblack-paper=transparent] - Ground of the element
 * @cssprop [--lampblack-line] - Ruled lines
 * @cssprop [--lampblack-quiet] - Labels and notes
 * @cssprop [--lampblack-gap=1em] - Space between parts
 * @cssprop [--lampblack-radius=0.2em] - Corners of buttons
 */
export class StopTradeDial extends ShotElement<DialWords> {
  static override readonly shotKeys = [
    'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'correction', 'pay', 'clicksPerStop',
    'apertureWidest', 'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'isoLowest', 'isoHighest',
  ] as const satisfies readonly ShotKey[];

  static override readonly fields = EXPOSURE_FIELDS;
  static override readonly book = dialBook;
  static override styles = [familyStyles, dialStyles];

  static override properties: PropertyDeclarations = {holding: {state: true}, startTyped: {state: true}, opened: {state: true}};

  /** f-number set now, exact. */
  declare aperture: number;
  /** Exposure time set now, s. */
  declare shutter: number;
  /** ISO speed set now. */
  declare iso: number;
  /** f-number of the start. */
  declare meteredAperture: number;
  /** Exposure time of the start, s. */
  declare meteredShutter: number;
  /** ISO speed of the start. */
  declare meteredIso: number;
  /** Stops brighter that are asked for. */
  declare correction: number;
  /** What keeps the light when another setting is changed. */
  declare pay: Setting;
  /** 1, 2 or 3. */
  declare clicksPerStop: ClicksPerStop;

  declare protected holding: boolean;
  declare protected startTyped: StartTyped | null;
  declare protected opened: boolean;

  #balance: Balance | undefined;
  #dial: Dial | undefined;
  #grip: {readonly pointer: number; angle: number; turned: number; readonly from: Shot} | undefined;
  #done: {readonly setting: Exposure; readonly before: ShotState} | undefined;

  constructor() {
    super();
    this.holding = false;
    this.startTyped = null;
    this.opened = false;
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const {shot} = this;
    if (SETTINGS.some((name) => this.#done && this.#done.setting[name] !== shot[name])) this.#done = undefined;
    const read = this.startTyped?.start;
    if (read && SETTINGS.some((name) => read[name] !== startOf(shot)[name])) this.startTyped = null; // another start since
    try {
      const {aperture, shutter} = limitsOf(shot);
      this.#balance = balanceOf(shot);
      this.#dial = layOut(settingOf(shot), shot.clicksPerStop, aperture ?? [1, 32], shutter ?? [1 / 4000, 30]);
    } catch (error) { // the last good picture stays
      if (!(error instanceof Problem)) throw error;
    }
  }

  protected override verdictText(): string {
    return this.#balance ? `${verdictWords(this.words, this.#balance)} ${roundingWords(this.words, this.#balance)}`.trim() : '';
  }

  // —— what a reader can do ——

  /** One setting takes a value, another pays; the start is kept from now on. */
  #set(driven: Setting, value: number, texts: Partial<Record<ShotKey, string>> = {}, from: Shot = this.shot): void {
    const pay = payerFor(driven, from.pay);
    try {
      this.act({...this.#startChanges(from), ...afterSetting(from, driven, value, pay)}, texts);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      const name = SETTINGS.find((setting) => setting === error.parameter) ?? driven;
      this.refuse(driven, texts[driven] ?? this.words.say.setting(driven, value), new Problem(name, texts[driven] ?? value, this.#within(name)));
    }
  }

  #within(setting: Setting): string {
    const [least, most] = limitsOf(this.shot)[setting] ?? [0, 0];
    return this.words.within(this.words.say.setting(setting, least), this.words.say.setting(setting, most));
  }

  #startChanges(from: Shot): Partial<Shot> {
    const {aperture, shutter, iso} = startOf(from);
    return {meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso, meteredMagnification: from.meteredMagnification};
  }

  #typeSetting(setting: Setting, text: string): void {
    const reading = READERS[setting](text, this.shot.clicksPerStop);
    if (!text.trim()) this.act({[setting]: this.shot[setting]}); // emptied: it shows again what is set
    else if (reading instanceof Problem) this.type(setting, text);
    else this.#set(setting, reading.value, {[setting]: text});
  }

  async #typeStart(text: string): Promise<void> {
    this.startTyped = text.trim() ? {text} : null; // emptied: it shows again what it is
    this.requestUpdate();
    if (!this.startTyped) return;
    const found = await loadStartReader().then(({readExposure}) => readExposure(text, this.shot.clicksPerStop), () => undefined);
    if (this.startTyped?.text !== text) return; // something else was typed meanwhile
    if (found?.aperture || found?.shutter) this.#startAsRead(text, found);
    else this.startTyped = {text, problem: new Problem('start', text, found ? this.words.startWanted : this.words.say.family.unreachable)};
  }

  #startAsRead(text: string, found: ExposureReading): void {
    const {aperture, shutter, iso, correction} = found;
    const {meteredAperture, meteredShutter, meteredIso, meteredMagnification} = this.shot;
    const start = {
      aperture: aperture?.value ?? meteredAperture, shutter: shutter?.value ?? meteredShutter, iso: iso?.value ?? meteredIso,
    };
    const kept = SETTINGS.filter((name) => !found[name]);
    this.startTyped = kept.length ? {start, kept} : {text, start};
    // Metered behind the lens it was metered from here.
    this.#startFrom(start, correction?.value ?? 0, meteredMagnification && magnificationNow(this.shot));
  }

  /** Begins a new trade; the correction is paid at once. */
  #startFrom({aperture, shutter, iso}: Exposure, correction: number, meteredMagnification = magnificationNow(this.shot)): void {
    const start = {meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso, meteredMagnification};
    this.#correct(correction, {...this.shot, ...start, aperture, shutter, iso}, {});
  }

  /** Asks for so many stops more; the payer answers. */
  #correct(correction: number, from: Shot = this.shot, texts: Partial<Record<ShotKey, string>> = {}): void {
    const balance = balanceOf({...from, correction});
    this.act({...settingOf(from), ...this.#startChanges(from), correction, [balance.pay]: balance.trade.to[balance.pay]}, texts);
  }

  #typeCorrection(text: string): void {
    this.type('correction', text.trim() || '0');
    if (!this.state.problems.correction) this.#correct(this.shot.correction, this.shot, text.trim() ? {correction: text} : {});
  }

  #stepCorrection(clicks: number): void {
    const {correction, clicksPerStop} = this.shot;
    this.#correct((Math.round(correction * clicksPerStop) + clicks) / clicksPerStop);
  }

  /** Takes a way out, says so where it stood, and leaves the hand on what takes it back. */
  #press = async ({changes, meant}: Mending): Promise<void> => {
    const before = this.state;
    if (meant) this.#set(...meant);
    else this.act({...this.#startChanges(this.shot), ...changes});
    this.#done = {setting: settingOf(this.shot), before};
    this.requestUpdate();
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.undo')?.focus({preventScroll: true});
  };

  /** Turns the hand by whole clicks, clockwise positive: a smaller aperture and a longer time. */
  #turn(clicks: number, from: Shot = this.shot): void {
    const driven = drivenBy(from.pay);
    const range = limitsOf(from)[driven];
    const here = nearestClick(driven, from[driven], from.clicksPerStop, range).value;
    const stops = (driven === 'aperture' ? -clicks : clicks) / from.clicksPerStop;
    const {value} = nearestClick(driven, afterStops(driven, here, stops), from.clicksPerStop, range);
    // On the dial the ISO is held, whatever pays elsewhere.
    const pay: Setting = driven === 'aperture' ? 'shutter' : 'aperture';
    this.#set(driven, value, {}, {...from, pay});
  }

  // —— pointer and keys on the dial ——

  #angleAt(event: PointerEvent): number {
    const box = (event.currentTarget as SVGSVGElement).getBoundingClientRect();
    return angleOf((event.clientX - box.left) * SIDE / box.width, (event.clientY - box.top) * SIDE / box.height);
  }

  readonly #hands: DialHands = {
    grab: (event) => {
      if (event.button !== 0 || !this.#dial) return;
      const angle = this.#angleAt(event);
      (event.currentTarget as SVGSVGElement).setPointerCapture(event.pointerId);
      this.holding = true;
      // A press away from the hand brings the hand there; a press on it takes hold of it where it is.
      const away = turnBetween(this.#dial.hand, angle);
      this.#grip = {pointer: event.pointerId, angle, turned: Math.abs(away) > ON_THE_HAND ? away : 0, from: this.shot};
      if (this.#grip.turned) this.#follow();
      this.renderRoot.querySelector<SVGGElement>('.hand-group')?.focus({preventScroll: true});
      event.preventDefault();
    },
    drag: (event) => {
      if (!this.#grip || event.pointerId !== this.#grip.pointer) return;
      const angle = this.#angleAt(event);
      this.#grip.turned += turnBetween(this.#grip.angle, angle);
      this.#grip.angle = angle;
      this.#follow();
    },
    release: () => {
      this.#grip = undefined;
      this.holding = false;
    },
    key: (event) => {
      const {clicksPerStop} = this.shot;
      const steps: Readonly<Record<string, number>> = {
        ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1,
        PageUp: clicksPerStop, PageDown: -clicksPerStop, Home: -100, End: 100,
      };
      const clicks = steps[event.key];
      if (clicks === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
      event.preventDefault();
      this.#turn(clicks);
    },
  };

  #follow(): void {
    if (!this.#grip || !this.#dial) return;
    const {from, turned} = this.#grip;
    this.#turn(Math.round(turned / this.#dial.perStop * from.clicksPerStop), from);
  }

  // —— drawing ——

  protected override render(): TemplateResult {
    const [balance, dial, {words}] = [this.#balance, this.#dial, this];
    if (!balance || !dial) return html`<slot></slot>`;
    const reasons = [closeUpWords(words, balance), roundingWords(words, balance), priceWords(words, balance)].filter(Boolean).join(' ');
    const steady = steadyWords(words, balance.setting.shutter);
    return html`<section class="plate" part="plate" aria-label=${words.dial} lang=${this.spokenLanguage}>
      <p class="verdict" part="verdict">${verdictWords(words, balance)}</p>
      ${reasons ? html`<p class="reason">${reasons}</p>` : nothing}
      <div class="body">
        ${dialView(words, dial, this.shot, this.holding, this.#hands)}
        <div class="plate-part">
          ${this.#renderFields()}
          ${this.#renderMending(balance)}
        </div>
      </div>
      ${steady ? html`<p class="note">${steady}</p>` : nothing}
      ${this.#renderMoved(balance)}
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderFields(): TemplateResult {
    const {shot, words} = this;
    const {say} = words;
    const setting = (name: Setting) => this.shotField(name, say.settingName(name), {
      write: () => bare(say.setting(name, shot[name])), onType: (text) => { this.#typeSetting(name, text); },
    });
    return html`<div class="fields">
      <div class="wide">${textField({
        id: 'start', say, label: words.start, text: this.startTyped?.text ?? exposureText(words, startOf(shot)), problem: this.startTyped?.problem,
        hint: keptWords(words, startOf(shot), this.startTyped?.kept ?? []) || words.startHint, onType: (text) => { void this.#typeStart(text); },
      })}</div>
      <div class="wide stepper">
        <button type="button" aria-label=${words.darker} @click=${() => { this.#stepCorrection(-1); }}>−</button>
        ${this.shotField('correction', words.correction, {
          write: () => say.signedStops(shot.correction), onType: (text) => { this.#typeCorrection(text); },
        })}
        <button type="button" aria-label=${words.brighter} @click=${() => { this.#stepCorrection(1); }}>+</button>
      </div>
      <p class="wide note">${words.correctionHint}</p>
      <h3 class="wide">${words.now}</h3>
      ${setting('aperture')} ${setting('shutter')} ${setting('iso')}
      <div class="wide">${choiceField<Setting>({
        id: 'pay', label: words.pay, value: shot.pay, hint: words.payHint,
        options: (['shutter', 'aperture', 'iso'] as const).map((name) => [name, say.settingName(name)]), onChoose: (pay) => { this.act({pay}); },
      })}</div>
    </div>`;
  }

  #renderMending(balance: Balance): TemplateResult | typeof nothing {
    const done = this.#done;
    return mendingView(this.words, balance, this.#readings(), (mending) => { void this.#press(mending); }, done && {
      what: exposureWords(this.words, done.setting), undo: () => {
        this.#done = undefined;
        this.replace(takenBack(this.state, done.before, TRADED), true);
      },
    });
  }

  /** How the digits of a typed setting were taken, while they still stand in the field. */
  #readings(): Readings {
    const {texts, problems} = this.state;
    return Object.fromEntries(SETTINGS.flatMap((setting) => {
      const text = texts[setting];
      const reading = text === undefined || problems[setting] ? undefined : READERS[setting](text, this.shot.clicksPerStop);
      return reading && !(reading instanceof Problem) ? [[setting, reading]] : [];
    }));
  }

  /** Where the setting has left the start: from here on, or back; then what is fetched when it is unfolded. */
  #renderMoved(balance: Balance): TemplateResult {
    const {shot, words} = this;
    const {start, setting} = balance;
    const moved = SETTINGS.some((name) => start[name] !== setting[name]);
    return html`${moved ? html`<div class="pair screen-only">
        <button type="button" @click=${() => { this.startTyped = null; this.#startFrom(setting, 0); }}>${words.startHere}</button>
        <button type="button" @click=${() => { this.act({...start, ...this.#startChanges(shot), correction: 0}); }}>${words.back}</button>
      </div>` : nothing}
      <div class="folds">
        ${moved ? this.#renderFold('changed', words.changes, (folds) => folds.changesView(words, balance)) : nothing}
        ${this.#renderFold('limits', words.limits, (folds) => folds.limitsView(
          words, shot, (key, label) => this.shotField(key, label, key === 'isoLowest' || key === 'isoHighest' ? {write: () => bare(words.say.iso(shot[key]))} : {}), (changes) => { this.act(changes); }))}
      </div>`;
  }

  /** Something that is fetched with the first fold that is opened. */
  #renderFold(name: string, summary: string, view: (folds: Awaited<ReturnType<typeof loadFolds>>) => TemplateResult): TemplateResult {
    const folds = this.opened ? this.later(loadFolds) : undefined;
    return html`<details class=${name} @toggle=${this.#open}>
      <summary>${summary}</summary>
      ${folds ? view(folds) : folds === null ? html`<p class="note">${this.words.say.family.unreachable}</p>` : nothing}
    </details>`;
  }

  #open = (): void => { this.opened = true; };
}
