import {adoptStyles, html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import {Problem} from '../../core/problem.js';
import type {Photo} from '../../photo/open.js';
import {ShotProblemEvent} from '../shared/events.js';
import {PhotoElement} from './photo-element.js';
import {exposureOf} from '../shared/photo/settings.js';
import {readLineShare, type LineShare} from './sharpness-line.js';
import type {SharpnessSection} from './sharpness-section.js';
import {SHARPNESS, lineRefused} from './words-sharpness.js';

/** An element with a photo that can be asked where it is sharp. What answers is loaded when it is first opened. */
export abstract class SharpnessElement extends PhotoElement {
  static override properties: PropertyDeclarations = {
    line: {converter: {fromAttribute: readLineShare}},
    asksSharpness: {state: true},
  };

  /**
   * Line across the photo along which sharpness is read, places in shares of the frame; of itself it runs from the front
   * to the back of the crop. @attr line
   */
  declare line: LineShare | null | undefined;
  /** Whether the section is open. */
  protected declare asksSharpness: boolean;

  /** CSS px a drawing gets. */
  protected abstract chartWidth: number;
  /** Whether the earlier shot shows the same set from the same place; `undefined` while nobody has looked. */
  protected abstract get sameSet(): boolean | undefined;

  #section: SharpnessSection | undefined;
  #loading: Promise<void> | undefined;
  #failed = false;
  #lineProblem: Problem | undefined;

  constructor() {
    super();
    this.line = null;
    this.asksSharpness = false;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#section?.stop();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('line')) this.#takeLine(changed.get('line') as LineShare | null | undefined);
  }

  /** A line that is none is explained, and the last good one stays. A line of the page's own opens the section. */
  #takeLine(last: LineShare | null | undefined): void {
    const line = this.line as LineShare | Problem | null | undefined;
    this.#lineProblem = line instanceof Problem ? line : undefined;
    if (this.#lineProblem) {
      this.line = last;
      this.dispatchEvent(new ShotProblemEvent(this.#lineProblem));
    }
    if (line) this.asksSharpness = true;
  }

  /** Puts what is not answered yet; to be called once the element knows its photos. */
  protected followSharpness(photo: Photo | undefined, earlier: Photo | undefined): void {
    if (!this.asksSharpness || !photo) {
      this.#section?.stop();
      return;
    }
    this.#loading ??= this.#load();
    const {shot, line, sameSet} = this;
    this.#section?.follow({
      photo, earlier, sameSet, shot, line: line ?? undefined, width: this.chartWidth,
      aperture: exposureOf(photo, shot).aperture,
      apertureEarlier: earlier ? exposureOf(earlier, shot).aperture : NaN,
    });
  }

  async #load(): Promise<void> {
    try {
      const {SharpnessSection, sharpnessStyles} = await import('./sharpness-section.js');
      const {elementStyles} = this.constructor as typeof SharpnessElement;
      adoptStyles(this.renderRoot as ShadowRoot, [...elementStyles, sharpnessStyles]);
      this.#section = new SharpnessSection({
        changed: () => { this.requestUpdate(); },
        draw: (to) => { this.line = to; },
        focus: (focus) => { this.act({focus}); },
      });
    } catch (error) {
      // A part that did not come over the line; anything else is ours.
      if (!(error instanceof TypeError)) throw error;
      this.#failed = true;
    }
    this.requestUpdate();
  }

  /** The answer in words; '' while there is none. */
  protected get sharpnessText(): string { return this.#section?.verdict ?? ''; }

  /** What lies over the photo while the section is open. */
  protected renderOverPhoto(): TemplateResult | typeof nothing {
    return this.#section?.overlay() ?? nothing;
  }

  protected renderSharpness(): TemplateResult {
    const toggled = (event: Event) => {
      this.asksSharpness = (event.target as HTMLDetailsElement).open;
      if (!this.#failed || this.asksSharpness) return;
      this.#failed = false;
      this.#loading = undefined;
    };
    return html`<details ?open=${this.asksSharpness} @toggle=${toggled}><summary>${SHARPNESS.title}</summary>
      ${this.#lineProblem ? html`<p class="problem">${lineRefused(this.#lineProblem)}</p>` : nothing}
      ${!this.asksSharpness ? nothing : this.#section ? this.#section.section()
        : html`<p class="note">${this.#failed ? SHARPNESS.notLoaded : SHARPNESS.looking}</p>`}</details>`;
  }
}
