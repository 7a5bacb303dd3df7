import {html, nothing, type CSSResult, type TemplateResult} from 'lit';
import type {Shot} from '../../../core/shot/shot.js';
import type {Photo} from '../../../photo/open.js';
import type {WordBook} from '../../shared/languages.js';
import {exposureOf} from '../../shared/photo/settings.js';
import type {LineShare} from '../places.js';
import {sharpnessBook} from '../sharpness/book.js';
import type {SharpnessSection} from '../sharpness/section.js';
import type {SheetWords} from './words/en.js';

/** What answers is fetched when the fold is first opened. */
const loadSection = () => import('../sharpness/section.js');

export interface FoldSubject {
  readonly words: SheetWords;
  readonly photo: Photo;
  readonly earlier: Photo | undefined;
  /** Whether the earlier shot shows the same set from the same place; `undefined` while nobody has looked. */
  readonly sameSet: boolean | undefined;
  readonly shot: Shot;
  readonly line: LineShare | undefined;
  /** CSS px a drawing gets. */
  readonly width: number;
}

export interface FoldHost {
  readonly changed: () => void;
  readonly act: (changes: Partial<Shot>) => void;
  readonly drawLine: (line: LineShare | undefined) => void;
  readonly later: <M>(load: () => Promise<M>) => M | undefined | null;
  readonly wordsOf: <V>(book: WordBook<V>) => V | undefined;
  readonly wear: (styles: CSSResult) => void;
}

/** The fold in which a photo can be asked where it is sharp. */
export class SharpnessFold {
  isOpen = false;
  #subject: FoldSubject | undefined;
  #section: SharpnessSection | undefined;
  #isMissing = false;

  constructor(private readonly host: FoldHost) {}

  follow(subject: FoldSubject | undefined): void {
    this.#subject = subject;
    if (!subject || !this.isOpen) {
      this.#section?.stop();
      return;
    }
    const {photo, earlier, shot} = subject;
    const words = this.host.wordsOf(sharpnessBook);
    const part = this.host.later(loadSection);
    this.#isMissing = part === null;
    if (!part || !words) return;
    if (!this.#section) {
      this.host.wear(part.sharpnessStyles);
      this.#section = new part.SharpnessSection({
        changed: this.host.changed, draw: this.host.drawLine, focus: (focus) => { this.host.act({focus}); },
      });
    }
    this.#section.follow({
      ...subject, words, aperture: exposureOf(photo, shot).aperture,
      apertureEarlier: earlier ? exposureOf(earlier, shot).aperture : NaN,
    });
  }

  /** The answer in words; '' while there is none. */
  get verdict(): string { return this.#section?.verdict ?? ''; }

  /** What lies over the photo while the fold is open. */
  overlay(): TemplateResult | typeof nothing {
    return this.#section?.overlay() ?? nothing;
  }

  render(): TemplateResult | typeof nothing {
    if (!this.#subject) return nothing;
    const {words} = this.#subject;
    const toggled = (event: Event) => {
      this.isOpen = (event.target as HTMLDetailsElement).open;
      this.host.changed();
    };
    return html`<details ?open=${this.isOpen} @toggle=${toggled}><summary>${words.sharpness}</summary>
      ${!this.isOpen ? nothing : this.#section?.section() ?? html`<p class="note">${this.#isMissing ? words.say.family.unreachable : words.looking}</p>`}</details>`;
  }
}
