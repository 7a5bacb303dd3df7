import {html, nothing, svg, type PropertyDeclarations, type PropertyValues, type SVGTemplateResult, type TemplateResult} from 'lit';
import {Problem} from '../../core/problem.js';
import {nearestClick, type ClicksPerStop} from '../../core/exposure/clicks.js';
import {likelyMisreadings} from '../../core/exposure/misread.js';
import {readExposure} from '../../core/exposure/read-exposure.js';
import {readAperture, readIso} from '../../core/exposure/read.js';
import {readShutter} from '../../core/exposure/read-shutter.js';
import type {Reading} from '../../core/exposure/reading.js';
import {afterStops, SETTINGS, lightStops, type Setting} from '../../core/exposure/stops.js';
import {writeAperture, writeShutter} from '../../core/exposure/write.js';
import {EXPOSURE_FIELDS} from '../../core/shot/exposure-fields.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import {choiceField, textField} from '../shared/fields.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {afterSetting, balanceOf, limitsOf, payerFor, settingOf, startOf, type Balance} from './balance.js';
import {dialBook} from './book.js';
import {RADII, SIDE, angleOf, layOut, place, turnBetween, type Dial, type Mark} from './draw.js';
import {dialStyles} from './styles.js';
import {
  balanceWords, exposureText, exposureWords, misreadWords, priceWords, roundingWords, steadyWords, takeOtherWords, takenWords, verdictWords,
  wayOutWords, type Way,
} from './speech.js';
import type {DialWords} from './words/en.js';

const READERS = {aperture: readAperture, shutter: readShutter, iso: readIso} as const;

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
 * @attr {string} pay - What answers a change: `aperture`, `shutter` or `iso`
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

  static override properties: PropertyDeclarations = {holding: {state: true}, startTyped: {state: true}};

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
  /** What answers a change of another setting. */
  declare pay: Setting;
  /** 1, 2 or 3. */
  declare clicksPerStop: ClicksPerStop;

  declare protected holding: boolean;
  declare protected startTyped: {readonly text: string; readonly problem?: Problem} | null;

  #balance: Balance | undefined;
  #dial: Dial | undefined;
  #grip: {readonly pointer: number; angle: number; turned: number; readonly from: Shot} | undefined;

  constructor() {
    super();
    this.holding = false;
    this.startTyped = null;
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const {shot} = this;
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
    return {meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso};
  }

  #typeSetting(setting: Setting, text: string): void {
    const reading = READERS[setting](text, this.shot.clicksPerStop);
    if (reading instanceof Problem) this.type(setting, text);
    else this.#set(setting, reading.value, {[setting]: text});
  }

  #typeStart(text: string): void {
    const {shot} = this;
    const found = readExposure(text, shot.clicksPerStop);
    if (!found.aperture && !found.shutter) {
      this.startTyped = {text, problem: new Problem('start', text, this.words.startWanted)};
      return;
    }
    this.startTyped = {text};
    const start = {
      aperture: found.aperture?.value ?? shot.meteredAperture,
      shutter: found.shutter?.value ?? shot.meteredShutter,
      iso: found.iso?.value ?? shot.meteredIso,
    };
    this.#startFrom(start, found.correction?.value ?? 0);
  }

  /** Begins a new trade; the correction is paid at once. */
  #startFrom({aperture, shutter, iso}: ReturnType<typeof settingOf>, correction: number): void {
    const start = {meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso};
    this.#correct(correction, {...this.shot, ...start, aperture, shutter, iso}, {});
  }

  /** Asks for so many stops more; the payer answers. */
  #correct(correction: number, from: Shot = this.shot, texts: Partial<Record<ShotKey, string>> = {}): void {
    const balance = balanceOf({...from, correction});
    this.act({...settingOf(from), ...this.#startChanges(from), correction, [balance.pay]: balance.trade.to[balance.pay]}, texts);
  }

  #typeCorrection(text: string): void {
    this.type('correction', text);
    if (!this.state.problems.correction) this.#correct(this.shot.correction, this.shot, {correction: text});
  }

  #stepCorrection(clicks: number): void {
    const {correction, clicksPerStop} = this.shot;
    this.#correct((Math.round(correction * clicksPerStop) + clicks) / clicksPerStop);
  }

  /** Turns the hand by whole clicks, clockwise positive: a smaller aperture and a longer time. */
  #turn(clicks: number, from: Shot = this.shot): void {
    const driven: Setting = from.pay === 'aperture' ? 'shutter' : 'aperture';
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

  #onGrab = (event: PointerEvent): void => {
    if (event.button !== 0 || !this.#dial) return;
    const angle = this.#angleAt(event);
    (event.currentTarget as SVGSVGElement).setPointerCapture(event.pointerId);
    this.holding = true;
    // A press away from the hand brings the hand there; a press on it takes hold of it where it is.
    const away = turnBetween(this.#dial.hand, angle);
    this.#grip = {pointer: event.pointerId, angle, turned: Math.abs(away) > 12 ? away : 0, from: this.shot};
    if (this.#grip.turned) this.#follow();
    this.renderRoot.querySelector<SVGGElement>('.hand-group')?.focus({preventScroll: true});
    event.preventDefault();
  };

  #onDrag = (event: PointerEvent): void => {
    if (!this.#grip || event.pointerId !== this.#grip.pointer) return;
    const angle = this.#angleAt(event);
    this.#grip.turned += turnBetween(this.#grip.angle, angle);
    this.#grip.angle = angle;
    this.#follow();
  };

  #onRelease = (): void => {
    this.#grip = undefined;
    this.holding = false;
  };

  #follow(): void {
    if (!this.#grip || !this.#dial) return;
    const {from, turned} = this.#grip;
    const clicks = Math.round(turned / this.#dial.perStop * from.clicksPerStop);
    this.#turn(clicks, from);
  }

  #onKey = (event: KeyboardEvent): void => {
    const {clicksPerStop} = this.shot;
    const steps: Readonly<Record<string, number>> = {
      ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1,
      PageUp: clicksPerStop, PageDown: -clicksPerStop, Home: -100, End: 100,
    };
    const clicks = steps[event.key];
    if (clicks === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    this.#turn(clicks);
  };

  // —— drawing ——

  protected override render(): TemplateResult {
    const [balance, dial] = [this.#balance, this.#dial];
    if (!balance || !dial) return html`<slot></slot>`;
    const [rounding, price, steady] = [roundingWords(this.words, balance), priceWords(this.words, balance), steadyWords(this.words, balance.setting.shutter)];
    return html`<section class="plate" part="plate" aria-label=${this.words.dial} lang=${this.spokenLanguage}>
      <p class="verdict" part="verdict">${verdictWords(this.words, balance)}</p>
      ${rounding || price ? html`<p class="reason">${rounding} ${price}</p>` : nothing}
      <div class="body">
        ${this.#renderDial(dial, balance)}
        <div class="plate-part">
          ${this.#renderFields()}
          ${this.#renderMending(balance)}
        </div>
      </div>
      ${this.#renderChanges(balance)}
      ${steady ? html`<p class="note">${steady}</p>` : nothing}
      ${this.#renderLimits()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderDial(dial: Dial, {setting}: Balance): TemplateResult {
    const range = limitsOf(this.shot);
    const driven: Setting = this.shot.pay === 'aperture' ? 'shutter' : 'aperture';
    const at = (value: number) => nearestClick(driven, value, this.shot.clicksPerStop, range[driven]).index;
    const [least, most] = range[driven] ?? [1, 1];
    const tip = place(dial.hand, RADII.rim);
    return html`<svg part="dial" class="dial ${this.holding ? 'held' : ''}" viewBox="0 0 ${SIDE} ${SIDE}" direction="ltr"
        @pointerdown=${this.#onGrab} @pointermove=${this.#onDrag} @pointerup=${this.#onRelease} @pointercancel=${this.#onRelease}>
      <circle class="face" cx=${SIDE / 2} cy=${SIDE / 2} r=${RADII.joint}></circle>
      <circle class="joint" cx=${SIDE / 2} cy=${SIDE / 2} r=${RADII.joint}></circle>
      <circle class="rim" cx=${SIDE / 2} cy=${SIDE / 2} r=${RADII.rim}></circle>
      ${dial.shutter.map((mark) => tick(mark, RADII.joint, mark.whole ? RADII.outerTick : RADII.outerTick - 5, RADII.outerLabel))}
      ${dial.aperture.map((mark) => tick(mark, RADII.joint, mark.whole ? RADII.innerTick : RADII.innerTick + 5, RADII.innerLabel))}
      ${facing(dial.hand, RADII.outerLabel, printed('shutter', setting.shutter))} ${facing(dial.hand, RADII.innerLabel, printed('aperture', setting.aperture))}
      <g class="hand-group" role="slider" tabindex="0" aria-label=${this.words.hand} aria-valuemin=${at(least)} aria-valuemax=${at(most)}
          aria-valuenow=${at(setting[driven])} aria-valuetext=${exposureWords(this.words, setting, false)} @keydown=${this.#onKey}>
        <circle class="ring-focus" cx=${SIDE / 2} cy=${SIDE / 2} r=${RADII.hub - 3}></circle>
        <rect class="window" x=${SIDE / 2 - 20} y=${SIDE / 2 - RADII.rim} width="40" height=${RADII.rim - RADII.hub - 6} rx="6"
          transform="rotate(${dial.hand} ${SIDE / 2} ${SIDE / 2})"></rect>
        <circle class="grip" cx=${tip.x} cy=${tip.y} r="8"></circle>
      </g>
      <text class="ring-name" x=${SIDE / 2} y=${SIDE / 2 - 40}>${this.words.isoHeld(this.words.say.iso(setting.iso))}</text>
      <text class="now" x=${SIDE / 2} y=${SIDE / 2 - 10}>${this.words.say.aperture(setting.aperture)}</text>
      <text class="now" x=${SIDE / 2} y=${SIDE / 2 + 22}>${this.words.say.shutter(setting.shutter)}</text>
      <text class="now-small" x=${SIDE / 2} y=${SIDE / 2 + 47}>${this.words.bodyShows(writeShutter(setting.shutter, 'body'))}</text>
    </svg>`;
  }

  #renderFields(): TemplateResult {
    const {shot} = this;
    const setting = (name: Setting) => this.shotField(name, this.words.say.settingName(name), {
      write: () => this.words.say.setting(name, shot[name]), onType: (text) => { this.#typeSetting(name, text); },
    });
    return html`<div class="fields">
      <div class="wide">${textField({
        id: 'start', say: this.words.say, label: this.words.start, text: this.startTyped?.text ?? exposureText(this.words, startOf(shot)), problem: this.startTyped?.problem,
        hint: this.words.startHint, onType: (text) => { this.#typeStart(text); },
      })}</div>
      <div class="wide stepper">
        <button type="button" aria-label=${this.words.darker} @click=${() => { this.#stepCorrection(-1); }}>−</button>
        ${this.shotField('correction', this.words.correction, {
          write: () => this.words.say.signedStops(shot.correction), onType: (text) => { this.#typeCorrection(text); },
        })}
        <button type="button" aria-label=${this.words.brighter} @click=${() => { this.#stepCorrection(1); }}>+</button>
      </div>
      <p class="wide note">${this.words.correctionHint}</p>
      <h3 class="wide">${this.words.now}</h3>
      ${setting('aperture')} ${setting('shutter')} ${setting('iso')}
      ${choiceField<Setting>({
        id: 'pay', label: this.words.pay, value: shot.pay,
        options: [['shutter', this.words.say.settingName('shutter')], ['aperture', this.words.say.settingName('aperture')], ['iso', this.words.say.settingName('iso')]],
        onChoose: (pay) => { this.act({pay}); },
      })}
    </div>`;
  }

  /** What mends an exposure that is off, and digits that may have been taken the wrong way. */
  #renderMending(balance: Balance): TemplateResult | typeof nothing {
    const ways: TemplateResult[] = [];
    const {trade, even, pay} = balance;
    if (!even && trade.to[pay] !== balance.setting[pay]) {
      ways.push(way(balanceWords(this.words, pay, trade.to[pay]), () => { this.act({...this.#startChanges(this.shot), [pay]: trade.to[pay]}); }));
    }
    if (!even && trade.limit) {
      for (const out of trade.limit.waysOut) {
        const {setting} = out;
        ways.push(setting === 'light'
          ? html`<li class="note">${wayOutWords(this.words, out).join(': ')}</li>`
          : way(wayOutWords(this.words, out), () => { this.act({...this.#startChanges(this.shot), [setting]: out.value, [pay]: trade.to[pay]}); }));
      }
    }
    const notes: TemplateResult[] = [];
    for (const setting of SETTINGS) {
      const reading = this.#readingOf(setting);
      if (reading?.how !== 'bare' || !reading.others[0]) continue;
      const [other] = reading.others;
      notes.push(html`<p class="note">${takenWords(this.words, setting, reading)}</p>`);
      ways.push(way(takeOtherWords(this.words, setting, other), () => { this.#set(setting, other.value); }));
    }
    for (const time of new Set([balance.start.shutter, balance.setting.shutter])) {
      const [slip] = likelyMisreadings(time);
      if (slip && time < 1 && writeShutter(time, 'body').includes('"')) notes.push(html`<p class="note">${misreadWords(this.words, time, slip)}</p>`);
    }
    if (!ways.length && !notes.length) return nothing;
    return html`<div class="mending">${notes}${ways.length ? html`<ul class="ways">${ways}</ul>` : nothing}</div>`;
  }

  /** How the digits of a typed setting were taken, while they still stand in the field. */
  #readingOf(setting: Setting): Reading | undefined {
    const text = this.state.texts[setting];
    if (text === undefined || this.state.problems[setting]) return undefined;
    const reading = READERS[setting](text, this.shot.clicksPerStop);
    return reading instanceof Problem ? undefined : reading;
  }

  #renderChanges({start, setting, trade}: Balance): TemplateResult | typeof nothing {
    const moved = SETTINGS.some((name) => start[name] !== setting[name]);
    if (!moved) return nothing;
    const arrived = SETTINGS.every((name) => trade.to[name] === setting[name]);
    return html`<div>
      <table>
        <caption><h3>${this.words.table}</h3></caption>
        <thead><tr><td></td><th scope="col">${this.words.from}</th><th scope="col">${this.words.to}</th><th scope="col">${this.words.light}</th></tr></thead>
        <tbody>${SETTINGS.map((name) => html`<tr>
          <th scope="row">${this.words.say.settingName(name)}</th>
          <td>${this.words.say.setting(name, start[name])}</td>
          <td class=${start[name] === setting[name] ? '' : 'changed'}>${start[name] === setting[name] ? this.words.held : this.words.say.setting(name, setting[name])}</td>
          <td>${this.words.say.signedStops(lightStops(name, start[name], setting[name]))}</td>
        </tr>`)}</tbody>
      </table>
    </div>
    ${arrived && trade.path.length > 2 ? html`<div>
      <h3>${this.words.path}</h3>
      <ol class="path">${trade.path.map((step) => html`<li>${exposureWords(this.words, step, start.iso !== setting.iso)}</li>`)}</ol>
    </div>` : nothing}
    <div class="pair screen-only">
      <button type="button" @click=${() => { this.startTyped = null; this.#startFrom(setting, 0); }}>${this.words.startHere}</button>
      <button type="button" @click=${() => { this.act({...start, ...this.#startChanges(this.shot), correction: 0}); }}>${this.words.back}</button>
    </div>`;
  }

  #renderLimits(): TemplateResult {
    return html`<details>
      <summary>${this.words.limits}</summary>
      <div class="fields">
        ${choiceField<'1' | '2' | '3'>({
          id: 'step', label: this.words.step, value: `${this.shot.clicksPerStop}`,
          options: [['3', this.words.steps[3]], ['2', this.words.steps[2]], ['1', this.words.steps[1]]],
          onChoose: (clicks) => { this.act({clicksPerStop: Number(clicks) as ClicksPerStop}); },
        })}
        ${this.shotField('apertureWidest', this.words.widest)} ${this.shotField('apertureSmallest', this.words.smallest)}
        ${this.shotField('shutterFastest', this.words.fastest)} ${this.shotField('shutterSlowest', this.words.slowest)}
        ${this.shotField('isoLowest', this.words.lowest)} ${this.shotField('isoHighest', this.words.highest)}
      </div>
    </details>`;
  }
}

function tick({angle, label, whole, faced}: Mark, from: number, to: number, labelAt: number): SVGTemplateResult {
  const [a, b, at] = [place(angle, from), place(angle, to), place(angle, labelAt)];
  return svg`<g class=${faced ? '' : 'unfaced'}>
    <line class="tick ${whole ? 'whole' : ''}" x1=${a.x} y1=${a.y} x2=${b.x} y2=${b.y}></line>
    ${label ? svg`<text x=${at.x} y=${at.y}>${label}</text>` : nothing}
  </g>`;
}

/** What stands on the rings under the window, on a click or between two. */
function facing(angle: number, radius: number, label: string): SVGTemplateResult {
  const {x, y} = place(angle, radius);
  return svg`<text class="facing" x=${x} y=${y}>${label}</text>`;
}

function printed(setting: 'aperture' | 'shutter', value: number): string {
  return setting === 'aperture' ? writeAperture(value).slice(2) : writeShutter(value, 'prose').replace(/ s$/, '');
}

function way([what, cost]: Way, act: () => void): TemplateResult {
  return html`<li><button type="button" @click=${act}><strong>${what}</strong><span>${cost}</span></button></li>`;
}
