import {html, nothing, type TemplateResult} from 'lit';
import type {Gains} from '../../../core/white/gains.js';
import type {Photo} from '../../../photo/open.js';
import {pixelSize} from '../../shared/photo/file-speech.js';
import type {OpenedBy} from '../../shared/photo/opener.js';
import {exposureOf, saysExposure} from '../../shared/photo/settings.js';
import {exposureText} from '../../shared/photo/way-speech.js';
import {wayTo} from '../../shared/photo/way-view.js';
import type {CardShot, GrayCard} from '../reading.js';
import {markingText, nextMark, verdict} from './card-speech.js';
import {gainsView, type Copied} from './gains-view.js';
import type {SheetHost} from './host.js';
import {thirdsToRight} from './judge.js';
import {castText, changeText, holdsText, temperatureText} from './light-speech.js';
import type {Preview} from './preview.js';
import {findingsList, patchesTable} from './reading-view.js';
import {CardReader} from './reader.js';
import {Stage} from './stage.js';
import {StillHolds} from './still-holds.js';
import {sheetStyles} from './styles.js';

/** There is a picture before and after once there are gains. */
const loadPreview = () => import('./preview.js');

/** An open card shot, laid out: the shot with its frames, what was read, what it is worth for another photo. */
export class CardSheet {
  #copied: Copied | undefined;
  #copiedOf: Gains | undefined;
  #preview: Preview | undefined;
  readonly #reader: CardReader;
  readonly #stage: Stage;
  readonly #light: StillHolds;

  constructor(private readonly host: SheetHost) {
    host.wear(sheetStyles);
    this.#reader = new CardReader(host);
    this.#stage = new Stage(host, this.#reader);
    this.#light = new StillHolds(host);
  }

  /** @param before - the shot that lay there earlier; of the same file its marks are kept */
  begin(photo: Photo, by: OpenedBy, before: CardShot | undefined): void {
    this.#reader.begin(photo, by, before);
  }

  /** Asks what is not known yet of what lies there now. */
  follow(): void {
    this.#reader.follow();
    this.#stage.follow();
    this.#light.follow();
    if (this.host.card()?.gains !== this.#copiedOf) this.#copied = undefined;
  }

  /** What is read out. */
  get verdict(): string {
    const [shot, card, words] = [this.host.cardShot(), this.host.card(), this.host.words()];
    const marking = shot && [markingText(words, shot), nextMark(words, shot)].filter(Boolean).join(' ');
    return marking || (card ? [verdict(words, card), this.#doubt(card)].filter(Boolean).join(' ') : '');
  }

  /** That the gains may no longer hold, beside the verdict; why stands above the picture before and after. */
  #doubt({gains, trusted}: GrayCard): string {
    const words = this.host.words();
    if (!gains || !trusted || this.#light.holds !== 'changed') return '';
    return this.host.linked() ? words.doubtLinked : words.doubtNext;
  }

  // —— drawing ——

  renderVerdict(): TemplateResult | typeof nothing {
    const [shot, card, words] = [this.host.cardShot(), this.host.card(), this.host.words()];
    const marking = shot && markingText(words, shot);
    if (marking) return html`<p class="verdict" part="verdict">${marking}</p>`;
    if (!card) return nothing;
    const doubt = this.#doubt(card);
    return html`<p class="verdict" part="verdict">${verdict(words, card)}</p>${doubt ? html`<p class="problem">${doubt}</p>` : nothing}`;
  }

  render(): TemplateResult | typeof nothing {
    const [shot, card] = [this.host.cardShot(), this.host.card()];
    if (!shot) return nothing;
    const isAlone = shot.how !== 'looking' && markingText(this.host.words(), shot) !== undefined;
    return html`<div class="sheet ${isAlone ? 'alone' : ''}"><div class="side">${this.#stage.render(shot)}</div>
        ${card ? html`<div class="side">${this.#renderReading(card, shot)}</div>` : nothing}</div>
      ${card ? html`<div class="sheet"><div class="side">${this.#renderBeforeAfter(card, shot)}</div><div class="side">${this.#renderLight(card)}</div></div>` : nothing}
      ${this.#renderFoot(shot)}`;
  }

  #renderReading(card: GrayCard, {photo}: CardShot): TemplateResult {
    const words = this.host.words();
    const thirds = card.trusted ? thirdsToRight(card.exposureError) : 0;
    return html`${patchesTable(words, card.reading)}${findingsList(words, card)}
      ${wayTo({words, photo, place: this.#reader.place, shot: this.host.shot(), thirds, before: this.host.setBefore(), act: this.host.takeWay})}`;
  }

  #renderBeforeAfter(card: GrayCard, shot: CardShot): TemplateResult {
    const words = this.host.words();
    if (!card.gains) return html`<p class="note">${words.noGains}</p>`;
    const part = this.host.later(loadPreview);
    if (part) this.#preview ??= new part.Preview(this.host);
    return html`<h3>${words.beforeAfter}</h3>${this.#renderHolds(shot)}
      ${this.#preview?.render() ?? (part === null ? html`<p class="problem">${words.say.family.unreachable}</p>` : nothing)}`;
  }

  /** Whether the gains hold for the linked photo, or for the next one, and what speaks against it. */
  #renderHolds({lights}: CardShot): TemplateResult | typeof nothing {
    const words = this.host.words();
    const {holds, changes} = this.#light;
    if (!holds) return nothing;
    return html`<div class="holds"><p class=${holds === 'changed' ? 'problem' : 'note'} id="holds">${holdsText(words, holds, this.host.linked() !== undefined)}</p>
      ${changes.length ? html`<ul>${changes.map((change) => html`<li class="note">${changeText(words, change, lights, this.host.shot().unit)}</li>`)}</ul>` : nothing}</div>`;
  }

  #renderLight({cast, trusted, gains}: GrayCard): TemplateResult {
    const words = this.host.words();
    const temperature = cast && trusted ? temperatureText(words, cast) : undefined;
    return html`${cast && temperature ? html`<h3>${words.light}</h3><p class="said">${castText(words, cast)} ${temperature.text}</p>
      ${temperature.note ? html`<p class="note">${temperature.note}</p>` : nothing}` : nothing}
      ${gains ? html`<h3>${words.gains}</h3>${trusted ? nothing : html`<p class="problem">${words.doubtful}</p>`}<p class="note">${words.gainsAre}</p>
        ${gainsView(words, gains, this.#copied, (copied) => {
          this.#copiedOf = gains;
          this.#copied = copied;
          this.host.changed();
        })}` : nothing}`;
  }

  #renderFoot({photo}: CardShot): TemplateResult {
    const words = this.host.words();
    const taken = saysExposure(photo) ? exposureText(words, exposureOf(photo, this.host.shot())) : '';
    return html`<div class="foot">${this.host.ways()}
      <p class="note">${this.host.isOpening() ? words.opening : [photo.name, pixelSize(words, photo), taken].filter(Boolean).join(', ')}</p></div>`;
  }

  /** Paints what was drawn. */
  updated(root: ParentNode): void {
    this.#stage.paint(root);
    this.#preview?.paint(root);
  }
}
