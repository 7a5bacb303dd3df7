import {html, nothing, svg, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {mendText, type Mend} from '../../core/exposure/mend-trail.js';
import type {TrailLink, TrailStep} from '../../core/exposure/judge-trail.js';
import {SETTINGS} from '../../core/exposure/stops.js';
import {trail, type Trail, type TrailOptions} from '../../core/exposure/trail.js';
import {writeTrail} from '../../core/exposure/write-trail.js';
import {Problem} from '../../core/problem.js';
import type {ShotKey} from '../../core/shot/shot.js';
import {ShotProblemEvent} from '../shared/events.js';
import {choiceField} from '../shared/fields.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {RULE, reachOf, ruleFor} from './draw.js';
import {TrailChangeEvent} from './events.js';
import {trailStyles} from './styles.js';
import {
  WORDS, changeWords, exposureWords, linkWords, mendWords, refusedWords, signedStops, stepNotes, stepProblem, toleranceWords, unreadWords, verdictWords,
} from './words.js';
import {rewritten, writtenIn, type WrittenTrail} from './written.js';

type Expect = NonNullable<TrailOptions['expect']>;

/**
 * A list of settings from a lesson: the stops between the steps, the ones that do not balance, and the slip of
 * reading that would explain it.
 *
 * @summary Whether the settings of a lesson do what the lesson says
 * @slot - The list itself, as plain `<ol><li>` or as text: read by the element, and shown where the script does not run
 * @attr {string} bench - Name of the shot shared with other elements of the page; each step can then be put on the dial
 * @attr {string} steps - The list as text, one setting a line or running; in place of what stands between the tags
 * @attr {string} expect - What is meant where nothing is said of the light: `same-light` or `nothing`
 * @attr {string} clicks-per-stop - Clicks of the dials: `full`, `half` or `third`; half a click counts as nothing
 * @fires {TrailChangeEvent} trail-change - After a reader mended a step, pasted a lesson or chose what is meant
 * @fires {ShotChangeEvent} shot-change - After a reader put a step on the dial
 * @fires {ShotProblemEvent} shot-problem - When a text has no setting in it, or an attribute could not be used
 * @csspart plate - The whole element
 * @csspart verdict - The sentence that sums up
 * @csspart trail - The list
 * @csspart field - A label with its field
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved
 * @cssprop [--lampblack-paper=transparent] - Ground of the element
 * @cssprop [--lampblack-line] - Ruled lines
 * @cssprop [--lampblack-quiet] - Labels and notes
 * @cssprop [--lampblack-gap=1em] - Space between parts
 * @cssprop [--lampblack-radius=0.2em] - Corners of buttons
 */
export class SettingsTrail extends ShotElement {
  static override readonly shotKeys = ['clicksPerStop'] as const satisfies readonly ShotKey[];

  static override styles = [familyStyles, trailStyles];

  static override properties: PropertyDeclarations = {
    steps: {}, expect: {}, written: {state: true}, draft: {state: true}, refused: {state: true}, copying: {state: true},
  };

  /** The list as text, or one item a step; `null` reads what stands between the tags. @attr steps */
  declare steps: WrittenTrail | null;
  /** What is meant where nothing is said of the light. @attr expect */
  declare expect: Expect;
  /** 1, 2 or 3. */
  declare clicksPerStop: 1 | 2 | 3;

  /** The list in use, mends and all. */
  declare protected written: WrittenTrail;
  /** Text in the field while somebody works on it. */
  declare protected draft: string | null;
  declare protected refused: {readonly name: 'steps' | 'expect'; readonly text: string; readonly wanted: string} | null;
  /** `copied`, or the text that could not be copied. */
  declare protected copying: {readonly text: string; readonly done: boolean} | null;

  #trail: Trail = trail('');
  /** Worked out once for each list and what it is held to: a turned dial elsewhere must not wait for it. */
  #judged = this.#trail;
  #trailFrom: readonly unknown[] = [''];
  #expect: Expect = 'same-light';
  /** The list as it was before any mend. */
  #original: WrittenTrail = '';
  /** What was written where a mend now stands, by step and setting. */
  #mended = new Map<string, string>();
  /** The field stays open once a reader needed it. */
  #pasting = false;
  #watch: MutationObserver | undefined;

  constructor() {
    super();
    this.steps = null;
    this.expect = 'same-light';
    this.written = '';
    this.draft = null;
    this.refused = null;
    this.copying = null;
  }

  override connectedCallback(): void {
    // A property set before the element was defined hides the accessor until it is set again.
    for (const name of ['steps', 'expect'] as const) {
      if (!Object.hasOwn(this, name)) continue;
      const early: unknown = this[name];
      delete (this as Partial<Record<typeof name, unknown>>)[name];
      Object.assign(this, {[name]: early});
    }
    super.connectedCallback();
    this.#watch = new MutationObserver(() => { if (this.steps === null) this.#startFromPage(); });
    this.#watch.observe(this, {childList: true, characterData: true, subtree: true});
    if (this.steps === null && !this.#mended.size && this.draft === null) this.#startFromPage();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch?.disconnect();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('steps') && (this.steps !== null || changed.get('steps') !== undefined)) {
      if (this.steps === null) this.#startFromPage();
      else this.#start(this.steps);
    }
    if (changed.has('expect')) {
      if (Object.hasOwn(WORDS.expects, this.expect ?? 'same-light')) {
        this.#expect = this.expect ?? 'same-light';
        if (this.refused?.name === 'expect') this.refused = null;
      } else this.#refuse('expect', this.expect, WORDS.expectWanted);
    }
    this.#trail = this.trail;
    this.#pasting ||= this.refused !== null;
  }

  /** What was pressed may be gone; the keyboard goes on where the next thing can be done. */
  async #focus(...selectors: readonly string[]): Promise<void> {
    await this.updateComplete;
    for (const selector of selectors) {
      const found = this.renderRoot.querySelector<HTMLElement>(selector);
      if (found) { found.focus(); return; }
    }
  }

  protected override verdictText(): string {
    return verdictWords(this.#trail);
  }

  /** The list in use as the core sees it. */
  get trail(): Trail {
    const {written, shot: {clicksPerStop}} = this;
    const from = [written, this.#expect, clicksPerStop];
    if (from.some((part, at) => part !== this.#trailFrom[at])) {
      this.#trailFrom = from;
      this.#judged = trail(written, {expect: this.#expect, clicksPerStop});
    }
    return this.#judged;
  }

  // —— what is read ——

  /** Begins with a new list. One without any setting is refused while there is another. */
  #start(written: WrittenTrail): boolean {
    const text = typeof written === 'string' ? written : written.join('\n');
    if (text.trim() && !hasSetting(written)) {
      this.#refuse('steps', text.trim(), WORDS.wanted);
      return false;
    }
    this.#original = this.written = written;
    this.#mended.clear();
    this.draft = this.refused = this.copying = null;
    return true;
  }

  /** Begins with what stands between the tags. While a page is still being read there may be nothing in it yet. */
  #startFromPage(): void {
    const written = writtenIn(this);
    if (this.#trail.steps.length || hasSetting(written)) this.#start(written);
  }

  #refuse(name: 'steps' | 'expect', text: string, wanted: string): void {
    this.refused = {name, text, wanted};
    if (name === 'steps') this.draft = text;
    this.dispatchEvent(new ShotProblemEvent(new Problem(name, text, wanted)));
  }

  // —— what a reader can do ——

  #changed(): void {
    this.copying = null;
    this.dispatchEvent(new TrailChangeEvent(this.trail));
  }

  #mend(mend: Mend): void {
    const key = `${mend.step} ${mend.setting}`;
    if (!this.#mended.has(key)) this.#mended.set(key, mend.was);
    this.written = rewritten(this.written, mendText(this.#trail.text, mend));
    this.draft = null;
    this.#changed();
    void this.#focus('.ways button', '.back');
  }

  #back(): void {
    this.#start(this.#original);
    this.#changed();
    void this.#focus('.ways button');
  }

  #paste(): void {
    const text = this.draft ?? this.#trail.text;
    this.#pasting = true;
    if (this.#start(text)) this.#changed();
  }

  #putOnDial({exposure, said}: TrailStep): void {
    if (!exposure) return;
    const {aperture, shutter, iso} = exposure;
    const correction = said?.taken === 'next' && typeof said.next === 'number' ? said.next : 0;
    this.act({aperture, shutter, iso, meteredAperture: aperture, meteredShutter: shutter, meteredIso: iso, correction});
  }

  async #copy(): Promise<void> {
    const text = writeTrail(this.#trail);
    // A page without a secure origin, or a reader who said no, gets the text to take by hand.
    const done = await Promise.resolve().then(() => navigator.clipboard.writeText(text)).then(() => true, () => false);
    this.copying = {text, done};
  }

  // —— drawing ——

  protected override render(): TemplateResult {
    const {steps, mends} = this.#trail;
    const reach = reachOf(steps.flatMap(({link}) => link ?? []));
    return html`<section class="plate" part="plate" aria-label=${WORDS.trail}>
      <p class="verdict" part="verdict">${verdictWords(this.#trail)}</p>
      ${mends.length ? html`<ul class="ways">${mends.flatMap((mend) => [this.#renderMend(mend, false), ...mend.others.map((other) => this.#renderMend(other, true))])}</ul>` : nothing}
      ${steps.length ? html`<ol class="trail" part="trail">${steps.map((step, at) => html`<li>
        ${step.link ? renderLink(step.link, at, reach) : nothing}
        ${this.#renderStep(step, at)}
      </li>`)}</ol>
      ${steps.length > 1 ? html`<p class="note">${toleranceWords(this.#trail)}</p>` : nothing}
      ${this.#renderTaking()}` : html`<slot></slot>`}
      ${this.#renderPaste()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderMend(mend: Mend, instead: boolean): TemplateResult {
    const [what, cost] = mendWords(mend, instead);
    return html`<li><button type="button" @click=${() => { this.#mend(mend); }}><strong>${what}</strong><span>${cost}</span></button></li>`;
  }

  #renderStep(step: TrailStep, at: number): TemplateResult {
    const problem = [stepProblem(step), unreadWords(step)].filter(Boolean).join(' ');
    const {steps} = this.#trail;
    const next = at === steps.length - 1 ? 'last' : steps[at + 1]?.link?.holds === false ? 'off' : '';
    return html`<div class="row step">
      <span class="rail ${next}"><span class="count">${at + 1}</span></span>
      <div class="said">
        <p class="taken">${step.exposure ? exposureWords(step.exposure, this.#trail.isoSaid) : '–'}</p>
        <p class="typed wide">${this.#renderTyped(step, at)}</p>
        ${problem ? html`<p class="problem wide">${problem}</p>` : nothing}
        ${stepNotes(step, this.#trail.isoSaid).map((note) => html`<p class="note wide">${note}</p>`)}
        ${step.exposure && !this.alone ? html`<button type="button" aria-label=${WORDS.dialOf(at + 1)}
          @click=${() => { this.#putOnDial(step); }}>${WORDS.dial}</button>` : nothing}
      </div>
    </div>`;
  }

  /** The step as it was written, its settings marked, and what a mend wrote over struck through. */
  #renderTyped({text, start, ...step}: TrailStep, at: number): unknown[] {
    const found = [
      ...SETTINGS.flatMap((setting) => (step[setting] ? [{setting, ...step[setting]}] : [])),
      ...step.unread.map((word) => ({setting: 'unread', ...word})),
    ].sort((one, two) => one.start - two.start);
    let last = 0;
    const parts: unknown[] = found.flatMap((place) => {
      const [from, to] = [place.start - start, place.end - start];
      const before = text.slice(last, from);
      last = to;
      const was = this.#mended.get(`${at} ${place.setting}`);
      const slip = this.#trail.mends.some((mend) => mend.step === at && mend.setting === place.setting && mend.was);
      return [before, was === undefined ? html`<b class=${slip ? 'slip' : place.setting}>${place.text}</b>`
        : html`${was ? html`<del>${was}</del> ` : nothing}<ins>${place.text}</ins>`];
    });
    return [...parts, text.slice(last)];
  }

  #renderTaking(): TemplateResult {
    const {copying} = this;
    return html`<div class="pair screen-only">
      <button type="button" @click=${() => { void this.#copy(); }}>${WORDS.copy}</button>
      ${this.#mended.size ? html`<button type="button" class="back" @click=${() => { this.#back(); }}>${WORDS.back}</button>` : nothing}
      <span role="status">${copying?.done ? WORDS.copied : nothing}</span>
    </div>
    ${copying && !copying.done ? html`<div class="field"><label for="copy">${WORDS.copyHere}</label>
      <textarea id="copy" readonly .value=${copying.text} @focus=${(event: Event) => { (event.target as HTMLTextAreaElement).select(); }}></textarea>
    </div>` : nothing}`;
  }

  #renderPaste(): TemplateResult {
    const {refused} = this;
    const problem = refused && refusedWords(refused.text, refused.wanted, this.#trail.steps.length > 0);
    const wrong = refused?.name === 'steps';
    return html`<details class="screen-only" ?open=${this.#pasting || !this.#trail.steps.length}>
      <summary>${WORDS.paste}</summary>
      <div class="paste">
        <div class="field" part="field">
          <label for="lesson">${WORDS.pasteLabel}</label>
          <textarea id="lesson" spellcheck="false" .value=${live(this.draft ?? this.#trail.text)}
            aria-invalid=${wrong ? 'true' : nothing} aria-describedby=${wrong ? 'lesson-problem' : nothing}
            @input=${(event: Event) => { this.draft = (event.target as HTMLTextAreaElement).value; }}></textarea>
          ${wrong ? html`<p class="problem" id="lesson-problem">${problem}</p>` : nothing}
        </div>
        <button type="button" @click=${() => { this.#paste(); }}>${WORDS.read}</button>
        ${choiceField<Expect>({
          id: 'expect', label: WORDS.expect, value: this.#expect,
          options: [['same-light', WORDS.expects['same-light']], ['nothing', WORDS.expects.nothing]],
          onChoose: (expect) => { this.#expect = this.expect = expect; this.#changed(); },
        })}
        ${problem && !wrong ? html`<p class="problem">${problem}</p>` : nothing}
      </div>
    </details>`;
  }
}

function hasSetting(written: WrittenTrail): boolean {
  return trail(written).steps.some((step) => SETTINGS.some((setting) => step[setting]));
}

function renderLink(link: TrailLink, at: number, reach: number): TemplateResult {
  const wish = typeof link.meant?.wish === 'number' ? link.meant.wish : null;
  const off = link.holds === false ? 'off' : '';
  return html`<div class="row">
    <span class="rail between-rail ${off}" aria-hidden="true">${WORDS.signs[`${link.holds}`]}</span>
    <div class="between">
      <dl class="rules">${renderRule(WORDS.light, link.light, wish, reach)}${renderRule(WORDS.depth, link.depth, null, reach)}</dl>
      <div><p class="outcome ${off}">${linkWords(link, at)}</p><p class="note">${changeWords(link)}</p></div>
    </div>
  </div>`;
}

function renderRule(name: 'light' | 'depth', stops: number, wish: number | null, reach: number): TemplateResult {
  const {ticks, zero, bar, meant, beyond} = ruleFor(stops, wish, reach);
  return html`<dt>${name}</dt>
    <dd><svg viewBox="0 0 ${RULE.width} ${RULE.height}" preserveAspectRatio="none" aria-hidden="true">
      <line class="base" x1="0" x2=${RULE.width} y1="7" y2="7"></line>
      ${ticks.map((x) => svg`<line class="tick" x1=${x} x2=${x} y1="4" y2="10"></line>`)}
      <line class="zero" x1=${zero} x2=${zero} y1="0" y2="14"></line>
      <rect class="bar ${name}" x=${bar.x} y="4" width=${bar.width} height="6"></rect>
      ${meant === null ? nothing : svg`<line class="meant" x1=${meant} x2=${meant} y1="0" y2="14"></line>`}
    </svg></dd>
    <dd>${beyond ? '⟶ ' : ''}${signedStops(stops)}</dd>`;
}
