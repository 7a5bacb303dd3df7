import {html, isServer, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import type {TrailStep} from '../../core/exposure/judge-trail.js';
import {mendText, type Mend} from '../../core/exposure/mend-trail.js';
import {SETTINGS, type Exposure} from '../../core/exposure/stops.js';
import {trail, type Trail} from '../../core/exposure/trail.js';
import {writeTrail} from '../../core/exposure/write-trail.js';
import {Problem} from '../../core/problem.js';
import {EXPOSURE_FIELDS} from '../../core/shot/exposure-fields.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';
import {ShotProblemEvent} from '../shared/events.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {takenBack} from '../shared/undo.js';
import {trailBook} from './book.js';
import {dialChanges, stands} from './dialling.js';
import {reachOf} from './draw.js';
import {TrailChangeEvent} from './events.js';
import {pasteView, type Expect, type Refused} from './paste-view.js';
import {dialWillWords, dialledWords, mendWords, mendedWords, verdictWords} from './speech.js';
import {linkView, stepView} from './step-view.js';
import {trailStyles} from './styles.js';
import type {TrailWords} from './words/en.js';
import {rewritten, writtenIn, type WrittenTrail} from './written.js';

/** Where an attribute says nothing else. */
const EXPECTS: readonly Expect[] = ['same-light', 'nothing'];

/** What a reader last did, for as long as it can be taken back. */
interface Mending {
  readonly mend: Mend;
  readonly before: WrittenTrail;
  readonly mended: ReadonlyMap<string, string>;
}

/** A step on the dial: what was written there, and all as it was before. */
interface Dialled {
  readonly at: number;
  readonly changes: ReturnType<typeof dialChanges>;
  readonly before: ShotState;
}

/**
 * A list of settings from a lesson: the stops between the steps, the ones that do not balance, and the slip of
 * reading that would explain it.
 *
 * @summary Whether the settings of a lesson do what the lesson says
 * @slot - The list itself, as plain `<ol><li>` or as text: read by the element, and shown where the script does not run
 * @attr {string} bench - Name of the shot shared with other elements of the page; each step can then be put on the dial, and taken off it again
 * @attr {string} steps - The list as text, one setting a line or running; in place of what stands between the tags
 * @attr {boolean} example - The page's list is but an example: it is called one, and a list of one's own is asked for
 * @attr {string} expect - What is meant where nothing is said of the light: `same-light` or `nothing`
 * @attr {string} clicks-per-stop - Clicks of the dials: `full`, `half` or `third`; half a click counts as nothing
 * @fires {TrailChangeEvent} trail-change - After a reader mended a step or took that back, pasted a lesson or chose what is meant
 * @fires {ShotChangeEvent} shot-change - After a reader put a step on the dial or took it off again
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
export class SettingsTrail extends ShotElement<TrailWords> {
  static override readonly shotKeys = ['clicksPerStop'] as const satisfies readonly ShotKey[];

  static override readonly fields = EXPOSURE_FIELDS;
  static override readonly book = trailBook;
  static override styles = [familyStyles, trailStyles];

  static override properties: PropertyDeclarations = {
    steps: {}, expect: {}, example: {type: Boolean}, written: {state: true}, draft: {state: true}, refused: {state: true}, copying: {state: true},
    pasting: {state: true}, mending: {state: true}, dialled: {state: true},
  };

  /** The list as text, or one item a step; `null` reads what stands between the tags. @attr steps */
  declare steps: WrittenTrail | null;
  /** What is meant where nothing is said of the light. @attr expect */
  declare expect: Expect;
  /** Whether the page's list is but an example. @attr example */
  declare example: boolean;
  /** 1, 2 or 3. */
  declare clicksPerStop: 1 | 2 | 3;

  /** The list in use, mends and all. */
  declare protected written: WrittenTrail;
  /** Text in the field while somebody works on it. */
  declare protected draft: string | null;
  declare protected refused: Refused | null;
  /** `copied`, or the text that could not be copied. */
  declare protected copying: {readonly text: string; readonly done: boolean} | null;
  /** Whether a reader opened the field or closed it; `null` while none did. */
  declare protected pasting: boolean | null;
  declare protected mending: Mending | null;
  declare protected dialled: Dialled | null;

  #trail: Trail = trail('');
  /** Worked out once for each list and what it is held to: a turned dial elsewhere must not wait for it. */
  #judged = this.#trail;
  #trailFrom: readonly unknown[] = [''];
  #expect: Expect = 'same-light';
  /** The list as it was before any mend. */
  #original: WrittenTrail = '';
  /** Whether the list is a reader's own. */
  #own = false;
  #mended: ReadonlyMap<string, string> = new Map<string, string>();
  #watch: MutationObserver | undefined;

  constructor() {
    super();
    this.steps = null;
    this.expect = 'same-light';
    this.example = false;
    this.written = '';
    this.draft = null;
    this.refused = null;
    this.copying = null;
    this.pasting = null;
    this.mending = null;
    this.dialled = null;
  }

  override connectedCallback(): void {
    // A property set before the element was defined hides the accessor until it is set again.
    for (const name of ['steps', 'expect', 'example'] as const) {
      if (!Object.hasOwn(this, name)) continue;
      const early: unknown = this[name];
      delete (this as Partial<Record<typeof name, unknown>>)[name];
      Object.assign(this, {[name]: early});
    }
    super.connectedCallback();
    this.#watch = new MutationObserver(() => { if (this.steps === null) this.#startFromPage(); });
    this.#watch.observe(this, {childList: true, characterData: true, subtree: true});
    if (this.steps === null && !this.#mended.size && this.draft === null && !this.#own) this.#startFromPage();
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
      const expect = this.expect ?? 'same-light';
      if (EXPECTS.includes(expect)) {
        this.#expect = expect;
        if (this.refused?.name === 'expect') this.refused = null;
      } else this.#refuse('expect', expect, this.words.expectWanted);
    }
    this.#trail = this.trail;
    if (this.dialled && !stands(this.state, this.dialled.changes)) this.dialled = null;
    if (this.refused) this.pasting = true;
  }

  /** What was pressed may be gone; the keyboard goes on where the next thing can be done. */
  async #focus(...selectors: readonly string[]): Promise<void> {
    await this.updateComplete;
    for (const selector of selectors) {
      const found = this.renderRoot.querySelector<HTMLElement>(selector);
      if (found) { found.focus({preventScroll: true}); return; }
    }
  }

  protected override verdictText(): string {
    return verdictWords(this.words, this.#trail);
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
  #start(written: WrittenTrail, own = false): boolean {
    const text = typeof written === 'string' ? written : written.join('\n');
    if (text.trim() && !hasSetting(written)) {
      this.#refuse('steps', text.trim(), this.words.wanted);
      return false;
    }
    this.#original = this.written = written;
    this.#own = own;
    this.#mended = new Map();
    this.draft = this.refused = this.copying = this.mending = this.dialled = null;
    return true;
  }

  /** Begins with what stands between the tags. While a page is still being read there may be nothing in it yet. */
  #startFromPage(): void {
    const written = writtenIn(this);
    if (this.#trail.steps.length || hasSetting(written)) this.#start(written);
  }

  #refuse(name: Refused['name'], text: string, wanted: string): void {
    this.refused = {name, text};
    if (name === 'steps') this.draft = text;
    this.dispatchEvent(new ShotProblemEvent(new Problem(name, text, wanted)));
  }

  // —— what a reader can do ——

  #changed(): void {
    this.copying = null;
    this.dispatchEvent(new TrailChangeEvent(this.trail));
  }

  #rewrite(written: WrittenTrail, mended: ReadonlyMap<string, string>, mending: Mending | null): void {
    this.written = written;
    this.#mended = mended;
    this.mending = mending;
    this.draft = null;
    this.#changed();
  }

  #mend(mend: Mend): void {
    const {written: before} = this;
    const mended = this.#mended;
    const key = `${mend.step} ${mend.setting}`;
    this.#rewrite(rewritten(before, mendText(this.#trail.text, mend)), new Map([[key, mend.was], ...mended]), {mend, before, mended});
    void this.#focus('.ways button', '.undo-mend');
  }

  #unmend({before, mended}: Mending): void {
    this.#rewrite(before, mended, null);
  }

  #back(): void {
    this.#rewrite(this.#original, new Map(), null);
    void this.#focus('.ways button');
  }

  #pasteOwn(): void {
    this.pasting = true;
    void this.#focus('#lesson').then(() => {
      const field = this.renderRoot.querySelector<HTMLTextAreaElement>('#lesson');
      field?.select(); // what is pasted takes the place of the example
      field?.scrollIntoView({block: 'nearest'});
    });
  }

  #read(): void {
    const text = this.draft ?? this.#trail.text;
    this.pasting = true;
    if (this.#start(text, true)) this.#changed();
  }

  #putOnDial(exposure: Exposure, {said}: TrailStep, at: number): void {
    const before = this.state;
    const changes = dialChanges(exposure, said);
    this.act(changes);
    this.dialled = {at, changes, before};
    void this.#focus('.undo-dial');
  }

  #takeOffDial({at, changes, before}: Dialled): void {
    this.replace(takenBack(this.state, before, Object.keys(changes) as (keyof Shot)[]), true);
    this.dialled = null;
    void this.#focus(`#dial-${at}`);
  }

  async #copy(): Promise<void> {
    const text = writeTrail(this.#trail);
    // A page without a secure origin, or a reader who said no, gets the text to take by hand.
    const done = await Promise.resolve().then(() => navigator.clipboard.writeText(text)).then(() => true, () => false);
    this.copying = {text, done};
  }

  // —— drawing ——

  protected override render(): TemplateResult {
    // A server cannot look between the tags: what stands there is shown as it is.
    if (isServer && this.steps === null) return html`<slot></slot>`;
    const {words} = this;
    const {steps} = this.#trail;
    const reach = reachOf(steps.flatMap(({link}) => link ?? []));
    return html`<section class="plate" part="plate" aria-label=${words.trail} lang=${this.spokenLanguage}>
      ${this.example && !this.#own && steps.length ? html`<p class="example">
        <strong>${words.example}</strong> <button type="button" @click=${() => { this.#pasteOwn(); }}>${words.pasteOwn}</button>
      </p>` : nothing}
      <p class="verdict" part="verdict">${verdictWords(words, this.#trail)}</p>
      ${this.#renderMending()}
      ${steps.length ? html`${this.alone ? nothing : this.#renderDialling()}
      <ol class="trail" part="trail">${steps.map((step, at) => html`<li>
        ${step.link ? linkView(words, step.link, at, reach) : nothing}
        ${stepView(words, this.#trail, at, this.#mended, this.alone ? nothing : this.#renderDial(step, at))}
      </li>`)}</ol>
      ${steps.length > 1 ? html`<p class="note">${words.tolerance[this.shot.clicksPerStop]} ${words.depthIs}</p>` : nothing}
      ${this.#renderTaking()}` : html`<slot></slot>`}
      ${this.#renderPaste()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  /** What was mended last, and what can be mended. */
  #renderMending(): TemplateResult {
    const {words, mending} = this;
    const {mends} = this.#trail;
    const way = (mend: Mend, instead: boolean): TemplateResult => {
      const [what, cost] = mendWords(words, mend, instead);
      return html`<li><button type="button" @click=${() => { this.#mend(mend); }}><strong>${what}</strong> <span>${cost}</span></button></li>`;
    };
    return html`${mending ? html`<p class="done"><span id="mended">${mendedWords(words, mending.mend)}</span>
        <button type="button" class="undo undo-mend" aria-describedby="mended" @click=${() => { this.#unmend(mending); }}>${words.undo}</button></p>` : nothing}
      ${mends.length ? html`<ul class="ways">
        ${mends.flatMap((mend) => [way(mend, false), ...mend.others.map((other) => way(other, true))])}
      </ul>` : nothing}`;
  }

  /** What putting a step on the dial will do, before it is done. */
  #renderDialling(): TemplateResult {
    const {words, shot} = this;
    const start = {aperture: shot.meteredAperture, shutter: shot.meteredShutter, iso: shot.meteredIso};
    const withIso = this.#trail.isoSaid || start.iso !== shot.iso;
    return html`<p class="note screen-only" id="dial-will">${dialWillWords(words, start, shot, withIso)}</p>`;
  }

  #renderDial(step: TrailStep, at: number): TemplateResult | typeof nothing {
    const {words, dialled} = this;
    const {exposure} = step;
    if (!exposure) return nothing;
    if (dialled?.at !== at) {
      return html`<button type="button" id="dial-${at}" aria-label=${words.dialOf(at + 1)} aria-describedby="dial-will"
        @click=${() => { this.#putOnDial(exposure, step, at); }}>${words.dial}</button>`;
    }
    return html`<p class="done"><span id="dialled">${dialledWords(words, exposure, dialled.changes.correction, this.#trail.isoSaid)}</span>
      <button type="button" class="undo undo-dial" aria-describedby="dialled" @click=${() => { this.#takeOffDial(dialled); }}>${words.undo}</button></p>`;
  }

  #renderTaking(): TemplateResult {
    const {copying, words} = this;
    return html`<div class="pair screen-only">
      <button type="button" @click=${() => { void this.#copy(); }}>${words.copy}</button>
      ${this.#mended.size ? html`<button type="button" @click=${() => { this.#back(); }}>${words.back}</button>` : nothing}
      <span role="status">${copying?.done ? words.copied : nothing}</span>
    </div>
    ${copying && !copying.done ? html`<div class="field"><label for="copy">${words.copyHere}</label>
      <textarea id="copy" readonly .value=${copying.text} @focus=${(event: Event) => { (event.target as HTMLTextAreaElement).select(); }}></textarea>
    </div>` : nothing}`;
  }

  #renderPaste(): TemplateResult {
    const {words} = this;
    const {steps, text} = this.#trail;
    const open = this.pasting ?? !steps.length;
    return html`<details class="screen-only" ?open=${open} @toggle=${(event: Event) => {
      const {open: now} = event.currentTarget as HTMLDetailsElement;
      if (now !== (this.pasting ?? !this.#trail.steps.length)) this.pasting = now;
    }}>
      <summary>${words.paste}</summary>
      ${pasteView(words, {
        text: this.draft ?? text, refused: this.refused, kept: steps.length > 0, expect: this.#expect,
        onInput: (draft) => { this.draft = draft; },
        onRead: () => { this.#read(); },
        onExpect: (expect) => { this.#expect = this.expect = expect; this.#changed(); },
      })}
    </details>`;
  }
}

function hasSetting(written: WrittenTrail): boolean {
  return trail(written).steps.some((step) => SETTINGS.some((setting) => step[setting]));
}
