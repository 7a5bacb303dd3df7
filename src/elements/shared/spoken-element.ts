import {LitElement, adoptStyles, nothing, type CSSResult, type PropertyValues} from 'lit';
import {languageOf, onLanguageChange, type WordBook} from './languages.js';
import type {Say} from './say.js';

/** Whether the page loaded what takes over elements that a server rendered. */
const canHydrate = (): boolean => 'litElementHydrateSupport' in globalThis;

/** Words of an element: its sentences, and how its language writes numbers. */
export interface Words { readonly say: Say }

/**
 * An element that speaks the language of the page and fetches what it needs when it needs it. Until the words of that
 * language have arrived it shows what stands between its tags, or what a server rendered.
 */
export abstract class SpokenElement<W extends Words = Words> extends LitElement {
  /** Words in every language it speaks. `offer` adds one. */
  static readonly book: WordBook<Words>;

  #language: string | undefined;
  #deafen: (() => void) | undefined;
  #placeholder: readonly ChildNode[] = [];
  readonly #parts = new Map<() => Promise<unknown>, unknown>();
  readonly #arriving = new Set<Promise<void>>();
  readonly #worn = new Set<CSSResult>();

  override connectedCallback(): void {
    super.connectedCallback();
    this.#listenToLanguage();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#deafen?.();
    this.#deafen = undefined;
  }

  // —— language ——

  /** Sentences and numbers in the language of the page. Only while there is something to show. */
  protected get words(): W {
    const words = this.#wordsNow();
    if (!words) throw new Error(`<${this.localName}> is asked to speak before its words have arrived`);
    return words;
  }

  get #book(): WordBook<W> {
    return (this.constructor as typeof SpokenElement).book as unknown as WordBook<W>;
  }

  #wordsNow(): W | undefined {
    return this.#book.inLanguage(this.#language ??= languageOf(this));
  }

  /** For `lang` on the plate where the page speaks a language that is not at hand, so that it is read out right. */
  protected get spokenLanguage(): string | typeof nothing {
    const spoken = this.#book.spoken(this.#language ??= languageOf(this));
    return spoken === this.#language ? nothing : spoken;
  }

  #listenToLanguage(): void {
    const listen = () => {
      const language = languageOf(this);
      if (language === this.#language) return;
      this.#language = language;
      this.requestUpdate();
    };
    listen();
    this.#deafen ??= onLanguageChange(listen);
  }

  // —— parts that are fetched when they are first shown ——

  /**
   * A module that is fetched once somebody wants what it shows; the element is drawn again when it is there.
   * @param load - the same function each time: `const loadMore = () => import('./more.js')`
   * @returns `undefined` until it has arrived, `null` when it could not be had
   */
  protected later<M>(load: () => Promise<M>): M | undefined | null {
    if (!this.#parts.has(load)) {
      this.#parts.set(load, undefined);
      const arriving: Promise<void> = load().then(
        (part) => { this.#parts.set(load, part); },
        () => { this.#parts.set(load, null); },
      ).then(() => {
        this.#arriving.delete(arriving);
        this.requestUpdate();
      });
      this.#arriving.add(arriving);
    }
    return this.#parts.get(load) as M | undefined | null;
  }

  /** Words of such a part, fetched with it. @returns `undefined` until they have arrived */
  protected wordsOf<V>(book: WordBook<V>): V | undefined {
    const language = this.#language ??= languageOf(this);
    const words = book.inLanguage(language);
    if (!words) this.later(book.asker(language));
    return words;
  }

  /** Puts on the styles of such a part, for good. */
  protected wear(styles: CSSResult): void {
    if (this.#worn.has(styles)) return;
    this.#worn.add(styles);
    adoptStyles(this.renderRoot as ShadowRoot, [...(this.constructor as typeof SpokenElement).elementStyles, ...this.#worn]);
  }

  // —— updating ——

  /** Whether more may be known here than a server knew that rendered the element. */
  protected get knowsMore(): boolean { return false; }

  /**
   * Until the first render there is something to see: what stands between the tags, or what a server rendered. The latter
   * is taken over node by node where hydration was loaded and the server knew all that is known here.
   */
  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const rendered = this.shadowRoot;
    if (rendered?.firstChild && (this.knowsMore || !canHydrate())) {
      this.#placeholder = [...rendered.childNodes];
      this.renderOptions.renderBefore ??= rendered.firstChild;
      adoptStyles(rendered, (this.constructor as typeof SpokenElement).elementStyles);
      return rendered;
    }
    const root = super.createRenderRoot();
    if (!root.firstChild && !this.#wordsNow()) {
      const slot = document.createElement('slot');
      this.#placeholder = [slot];
      root.append(slot);
    }
    return root;
  }

  protected override scheduleUpdate(): void | Promise<unknown> {
    if (this.#wordsNow()) return super.scheduleUpdate();
    return this.#book.load(this.#language ?? '').catch(() => undefined).then(() => super.scheduleUpdate());
  }

  /** Without words nothing is drawn, and what stands between the tags stays. */
  protected override shouldUpdate(): boolean {
    return this.#wordsNow() !== undefined;
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    let complete = await super.getUpdateComplete();
    while (this.#arriving.size) {
      await Promise.all(this.#arriving);
      complete = await super.getUpdateComplete();
    }
    return complete;
  }

  /** What a server rendered from other data than are known here cannot be taken over: it is drawn anew. */
  protected override update(changed: PropertyValues): void {
    try {
      super.update(changed);
    } catch (error) {
      if (this.hasUpdated || !this.renderRoot.firstChild) throw error;
      this.renderRoot.replaceChildren();
      super.update(changed);
    }
  }

  protected override updated(): void {
    for (const node of this.#placeholder) node.remove();
    this.#placeholder = [];
  }
}
