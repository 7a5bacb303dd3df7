import {html, nothing, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {Photo} from '../../../photo/open.js';
import {choiceField} from '../../shared/fields.js';
import {isClosed} from '../../shared/photo/opener.js';
import type {SheetHost} from './host.js';
import {thirdsToRight} from './judge.js';
import {Wipe} from './wipe.js';

/** Whose picture is wiped. */
type Wiped = 'card' | 'photo';

/** The picture before and after, with the line between that can be dragged in the picture or by the slider under it. */
export class Preview {
  /** Where the line stands, whole per cent from the left. */
  #share = 50;
  #wiped: Wiped = 'photo';
  #isExposed = false;
  readonly #wipe = new Wipe();

  constructor(private readonly host: SheetHost) {}

  #wipeTo(share: number): void {
    this.#share = share;
    this.host.changed();
  }

  readonly #pressed = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    this.#dragged(event);
  };

  readonly #dragged = (event: PointerEvent): void => {
    const holder = event.currentTarget as HTMLElement;
    if (!holder.hasPointerCapture(event.pointerId)) return;
    const {left, width} = holder.getBoundingClientRect();
    this.#wipeTo(Math.round(Math.min(1, Math.max(0, (event.clientX - left) / width)) * 100));
  };

  get #photo(): Photo | undefined {
    return (this.#wiped === 'photo' ? this.host.linked() : undefined) ?? this.host.cardShot()?.photo;
  }

  render(): TemplateResult {
    const share = this.#share;
    const words = this.host.words();
    const name = this.#photo?.name;
    return html`<div class="wiped" @pointerdown=${this.#pressed} @pointermove=${this.#dragged}>
        <canvas class="wipe" part="preview" role="img"
          aria-label=${name ? words.previewOf(name, words.say.percent(share / 100)) : words.preview(words.say.percent(share / 100))}></canvas>
        <svg aria-hidden="true">
          <line class="edge" x1="${share}%" x2="${share}%" y1="0" y2="100%"></line><line class="cut" x1="${share}%" x2="${share}%" y1="0" y2="100%"></line>
          <svg class="at" x="${share}%" y="100%"><rect class="knob" x="-5" y="-24" width="10" height="10"></rect></svg></svg>
      </div>
      <div class="ends"><span>${words.before}</span>
        <input type="range" min="0" max="100" aria-label=${words.wipe} .value=${live(String(share))}
          aria-valuetext=${words.wipeAt(words.say.percent(share / 100), words.say.percent(1 - share / 100))}
          @input=${(event: Event) => { this.#wipeTo((event.target as HTMLInputElement).valueAsNumber); }}>
        <span>${words.after}</span></div>
      ${this.#renderChoices()}`;
  }

  #renderChoices(): TemplateResult | typeof nothing {
    const words = this.host.words();
    const isLinked = this.host.linked() !== undefined;
    const card = this.host.card();
    // Whether the exposure is off far enough for the eye.
    const isOff = card?.trusted && thirdsToRight(card.exposureError) !== 0;
    if (!isLinked && !isOff) return nothing;
    return html`<div class="choices">${isLinked ? choiceField({
      id: 'shown', label: words.shown, value: this.#wiped, options: [['photo', words.ofPhoto], ['card', words.ofCard]],
      onChoose: (wiped: Wiped) => { this.#wiped = wiped; this.host.changed(); },
    }) : nothing}
    ${isOff ? html`<label class="check"><input type="checkbox" .checked=${live(this.#isExposed)} @change=${(event: Event) => {
      this.#isExposed = (event.target as HTMLInputElement).checked;
      this.host.changed();
    }}>${words.withExposure}</label>` : nothing}</div>`;
  }

  paint(root: ParentNode): void {
    const canvas = root.querySelector<HTMLCanvasElement>('canvas.wipe');
    const card = this.host.card();
    const photo = this.#photo;
    if (!canvas || !card?.gains || !photo || isClosed(photo)) return;
    this.#wipe.draw(canvas, photo.preview, card.gains, this.#isExposed && card.trusted ? -card.exposureError : 0, this.#share / 100);
    canvas.parentElement?.style.setProperty('--ratio', String(photo.width / photo.height));
  }
}
