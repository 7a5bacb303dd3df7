import {html, isServer, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import type {Problem} from '../../core/problem.js';
import {attributeOf, type Field, type ShotFields} from '../../core/shot/field.js';
import {completeShot, type Shot, type ShotKey} from '../../core/shot/shot.js';
import {filledFrom, withTextOf, withValueOf, withValuesOf, withoutKey, type ShotState} from '../../core/shot/state.js';
import {Bench, benchNamed, clearDesertedBench, onOnePage} from './bench.js';
import {ShotChangeEvent, ShotProblemEvent} from './events.js';
import {textField, type TextField} from './fields.js';
import {keepFocus} from './keep-focus.js';
import {SpokenElement, type Words} from './spoken-element.js';
import {inTurn} from './turns.js';

/** Quiet time after which a changed verdict is read out, ms: longer than the pause between two moves of a drag. */
const SETTLED_MS = 700;

/** Property of a key: its name, but for `focus`, which is a method of every element. @returns `focusPlane` for it */
const propertyOf = (key: ShotKey): string => (key === 'focus' ? 'focusPlane' : key);

/**
 * What every element of the family shares: a shot of its own or one shared by name, attributes a person can write,
 * properties in base units, text that is never lost, and one verdict that is read out once it has settled.
 */
export abstract class ShotElement<W extends Words = Words> extends SpokenElement<W> {
  /** Which values of a shot the element takes as attributes and properties. */
  static readonly shotKeys: readonly ShotKey[] = [];

  /** How those values are read, written and judged, and all others that a reader can type here. */
  static readonly fields: Partial<ShotFields> = {};

  static override properties: PropertyDeclarations = {
    bench: {type: String, reflect: true},
    announced: {state: true},
  };

  /** Name of the shot shared with other elements of the page; alone without it. @attr bench */
  declare bench: string | null;

  /** Sentence in the live region. */
  declare announced: string;

  #bench = new Bench();
  #benchName: string | null = null;
  #forget: (() => void) | undefined;
  #lastVerdict: string | undefined;
  #internals: ElementInternals | undefined;
  #settling: ReturnType<typeof setTimeout> | undefined;
  /** Whether somebody else on the bench changed what is to be drawn. */
  #follows = false;

  constructor() {
    super();
    keepFocus(this);
    this.bench = null;
    this.announced = '';
  }

  // —— attributes and properties of the shot ——

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, ...this.shotKeys.map(attributeOf)];
  }

  protected static override finalize(): void {
    super.finalize();
    for (const key of this.shotKeys) {
      const property = propertyOf(key);
      if (Object.hasOwn(this.prototype, property)) continue;
      Object.defineProperty(this.prototype, property, {
        configurable: true,
        enumerable: true,
        get(this: ShotElement) { return this.shot[key]; },
        set(this: ShotElement, value: Shot[typeof key] | null | undefined) { this.#setKey(key, value); },
      });
    }
  }

  override attributeChangedCallback(name: string, old: string | null, text: string | null): void {
    const key = this.#keys.find((candidate) => attributeOf(candidate) === name);
    if (!key) super.attributeChangedCallback(name, old, text);
    else if (text === null) this.#take(withoutKey(this.#bench.state, key));
    else if (text !== old) this.#take(withTextOf(this.#bench.state, key, text, this.#field(key)), key);
  }

  /** On a server attributes are set and nobody is told, and nobody is connected to anything. */
  #readAttributes(): void {
    if (this.bench && onOnePage()) this.#bench = benchNamed(this.bench);
    for (const key of this.#keys) {
      const text = this.getAttribute(attributeOf(key));
      if (text !== null) this.#bench.change(withTextOf(this.#bench.state, key, text, this.#field(key)), this);
    }
  }

  get #keys(): readonly ShotKey[] {
    return (this.constructor as typeof ShotElement).shotKeys;
  }

  #field<K extends ShotKey>(key: K): Field<Shot[K]> {
    const field: Field<Shot[K]> | undefined = (this.constructor as typeof ShotElement).fields[key];
    if (!field) throw new Error(`<${this.localName}> has no field for ${key}`);
    return field;
  }

  #setKey<K extends ShotKey>(key: K, value: Shot[K] | null | undefined): void {
    const {state} = this.#bench;
    this.#take(value === undefined || value === null ? withoutKey(state, key) : withValueOf(state, key, value, this.#field(key)), key);
  }

  /** Takes a state that came by attribute or property, and reports what was refused. */
  #take(next: ShotState, key?: ShotKey): void {
    this.#bench.change(next, this);
    const problem = key && next.problems[key];
    if (problem) this.dispatchEvent(new ShotProblemEvent(problem));
  }

  // —— the shot ——

  /** The shot in use: what was stated, and a plausible default for what was not. Base units. */
  get shot(): Shot {
    return completeShot(this.#bench.state.values);
  }

  /** What was stated, typed and refused so far. */
  protected get state(): ShotState { return this.#bench.state; }

  /** Something that lies on the bench beside the shot. */
  protected thing<T>(name: string): T | undefined {
    return this.#bench.things[name] as T | undefined;
  }

  /** Lays something on the bench beside the shot, or takes it away. */
  protected putThing(name: string, value: unknown): void {
    this.#bench.put({[name]: value}, this);
  }

  /** Whether nobody but this element would miss what lies on the bench. */
  protected get alone(): boolean { return this.bench === null; }

  /**
   * A reader changed values by hand. Linked elements follow, then the event tells the page.
   * @param texts - what was typed for some of the values, to be kept as typed
   */
  protected act(changes: Partial<Shot>, texts: ShotState['texts'] = {}): void {
    const next = withValuesOf(this.#bench.state, changes, (this.constructor as typeof ShotElement).fields);
    this.#take({...next, texts: {...next.texts, ...texts}});
    this.dispatchEvent(new ShotChangeEvent(changes, this.shot));
  }

  /**
   * Takes a whole shot, as a link or a record has it; what it does not say is said no more. The event tells the page
   * when a reader did it.
   */
  protected replace(next: ShotState, byReader: boolean): void {
    this.#take(next);
    if (byReader) this.dispatchEvent(new ShotChangeEvent(next.values, this.shot));
  }

  /** Text that reads well but cannot be set here: it stays in its field, with the reason beside it. */
  protected refuse(key: ShotKey, text: string, problem: Problem): void {
    const {state} = this.#bench;
    this.#take({...state, texts: {...state.texts, [key]: text}, problems: {...state.problems, [key]: problem}}, key);
  }

  /** A reader typed text for one value. */
  protected type(key: ShotKey, text: string): void {
    const next = withTextOf(this.#bench.state, key, text, this.#field(key));
    this.#take(next, key);
    if (!next.problems[key]) this.dispatchEvent(new ShotChangeEvent({[key]: next.values[key]}, this.shot));
  }

  /** A typed field for one value of the shot. `write` shows the value while nobody has typed over it. */
  protected shotField(key: ShotKey, label: string, more: Partial<TextField> & {readonly write?: () => string} = {}): TemplateResult {
    const {write, ...rest} = more;
    const {say} = this.words;
    const written = () => say.typed((this.#field(key).write as (value: unknown) => string)(this.shot[key]));
    return textField({
      id: attributeOf(key),
      label,
      say,
      text: this.state.texts[key] ?? (write ?? written)(),
      problem: this.state.problems[key],
      onType: (text) => { this.type(key, text); },
      ...rest,
    });
  }

  // —— linking ——

  override connectedCallback(): void {
    super.connectedCallback();
    this.#adoptEarlyProperties();
    this.#sit();
    this.#standAsBlock();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#leave();
    clearTimeout(this.#settling);
  }

  /** A page whose styles reset everything makes it a piece of a line, where nothing could be laid out or measured. */
  #standAsBlock(): void {
    if (!globalThis.getComputedStyle) return;
    this.#internals ??= this.attachInternals?.();
    const states = this.#internals?.states;
    if (states && !states.has('inline') && getComputedStyle(this).display === 'inline') states.add('inline');
  }

  /** Properties that a page set before the element was defined hide the accessors until they are set again. */
  #adoptEarlyProperties(): void {
    for (const key of this.#keys) {
      const property = propertyOf(key);
      if (!Object.hasOwn(this, property)) continue;
      const early = (this as unknown as Record<string, Shot[typeof key]>)[property];
      delete (this as unknown as Record<string, unknown>)[property];
      this.#setKey(key, early);
    }
  }

  /** Sits down at the bench of its name. What the bench already knows stands; what it does not, this one fills in. */
  #sit(): void {
    const name = this.bench || null;
    if (name !== this.#benchName || name !== null) {
      const own = this.#bench.state;
      const next = name === null ? new Bench() : benchNamed(name);
      if (next !== this.#bench) {
        next.change(filledFrom(next.state, own), this);
        next.put({...this.#bench.things, ...next.things}, this);
        this.#bench = next;
      }
      this.#benchName = name;
    }
    this.#forget?.();
    this.#forget = this.#bench.listen((origin) => {
      this.#follows = origin !== this;
      this.requestUpdate();
      this.benchChanged();
    });
    this.requestUpdate();
  }

  #leave(): void {
    this.#forget?.();
    this.#forget = undefined;
    if (this.#benchName !== null) clearDesertedBench(this.#benchName);
  }

  /** Called when the shot or something beside it changed, before the next update. */
  protected benchChanged(): void { /* for those who listen */ }

  // —— updating ——

  /** Somebody else on the bench may by now have said what a server did not know. */
  protected override get knowsMore(): boolean { return Boolean(this.bench); }

  /** Who follows another draws in its turn. */
  protected override scheduleUpdate(): void | Promise<unknown> {
    if (!this.#follows || !this.hasUpdated) return super.scheduleUpdate();
    this.#follows = false;
    return inTurn(() => super.scheduleUpdate());
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (isServer) this.#readAttributes();
    if (changed.has('bench') && this.isConnected && (this.bench || null) !== this.#benchName) {
      this.#leave();
      this.#sit();
    }
  }

  protected override updated(): void {
    super.updated();
    const verdict = this.verdictText();
    if (verdict === undefined || verdict === this.#lastVerdict) return;
    const first = this.#lastVerdict === undefined;
    this.#lastVerdict = verdict;
    clearTimeout(this.#settling);
    if (!first) this.#settling = setTimeout(() => { this.announced = verdict; }, SETTLED_MS);
  }

  /** The verdict in one or two sentences, as it should be read out; `undefined` while there is none yet. The first is nothing to be read out. */
  protected abstract verdictText(): string | undefined;

  /** The live region: empty until the first change, then the verdict once it has settled. */
  protected renderAnnouncement(): TemplateResult {
    return html`<p class="spoken" role="status">${this.announced || nothing}</p>`;
  }
}
