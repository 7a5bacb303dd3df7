import {html, nothing, type TemplateResult} from 'lit';
import {Problem} from '../../../core/problem.js';
import {wholeOf, type Crop} from '../../../core/tone/pixels.js';
import type {Patch} from '../../../core/white/card.js';
import {textField} from '../../shared/fields.js';
import {isClosed} from '../../shared/photo/opener.js';
import type {CardShot} from '../reading.js';
import {nextMark} from './card-speech.js';
import {framesOver} from './frames-view.js';
import type {SheetHost} from './host.js';
import {PATCHES} from './judge.js';
import {MarkDrag} from './mark-drag.js';
import {centredOn, closeUp, isInside, readMark, writeMark} from './marks.js';
import type {CardReader} from './reader.js';

/** The shot with its three frames, which are found, pressed, dragged or typed into their places. */
export class Stage {
  #isWhole = false;
  /** Part of the card shot that is shown, px, and what it was chosen for. */
  #area: Crop | undefined;
  #areaOf: readonly unknown[] = [];
  #drawn: readonly unknown[] = [];
  /** Typed frames that could not be used. */
  #problems: Readonly<Partial<Record<Patch, Problem | undefined>>> = {};
  readonly #marks = new MarkDrag(() => this.#onStage(), {
    moved: (patch, to) => { this.#move(patch, to); },
    settled: () => { this.#settle(); },
    pressed: (x, y, on) => { this.#press(x, y, on); },
  });

  constructor(private readonly host: SheetHost, private readonly reader: CardReader) {}

  /** Chooses the part that is shown anew when the shot, the search or the choice changed, not while a frame is moved. */
  follow(): void {
    const shot = this.host.cardShot();
    if (!shot) {
      this.#area = undefined;
      return;
    }
    const {photo, how, placed, patches} = shot;
    const isClose = !this.#isWhole && placed.length === PATCHES.length;
    const isNew = [photo, isClose, how === 'found'].some((part, at) => part !== this.#areaOf[at]);
    if (this.#area && !isNew) return;
    this.#areaOf = [photo, isClose, how === 'found'];
    this.#area = isClose ? closeUp(patches, photo) : wholeOf(photo);
  }

  // —— marking ——

  #onStage() {
    const shot = this.host.cardShot();
    return shot && this.#area && {patches: shot.patches, area: this.#area, picture: shot.photo};
  }

  #move(patch: Patch, to: Crop): void {
    const shot = this.host.cardShot();
    if (!shot) return;
    this.#problems = {...this.#problems, [patch]: undefined};
    this.reader.mark({...shot.patches, [patch]: to}, 'marked', PATCHES.filter((one) => one === patch || shot.placed.includes(one)));
  }

  /** After a move the close-up follows a frame that left it. */
  #settle(): void {
    const area = this.#area;
    const shot = this.host.cardShot();
    if (!area || !shot || PATCHES.every((patch) => isInside(shot.patches[patch], area))) return;
    this.#area = undefined;
    this.host.changed();
  }

  /** A press places the next frame that has no place yet; on one of those that wait it only takes hold of it. */
  #press(x: number, y: number, on: Patch | undefined): void {
    const shot = this.host.cardShot();
    if (!shot || (on && !shot.placed.includes(on))) return;
    const next = PATCHES.find((patch) => !shot.placed.includes(patch));
    if (next) this.#move(next, centredOn(shot.patches[next], x, y, shot.photo));
  }

  #type(patch: Patch, text: string, {photo}: CardShot): void {
    const {markWanted, say} = this.host.words();
    const read = readMark(`${patch}-frame`, text, photo, markWanted(say.number(photo.width), say.number(photo.height)));
    if (read instanceof Problem) {
      this.#problems = {...this.#problems, [patch]: read};
      this.host.tell(read);
      this.host.changed();
    } else {
      this.#move(patch, read);
      this.#settle();
    }
  }

  // —— drawing ——

  render(shot: CardShot): TemplateResult {
    const words = this.host.words();
    const {pressed, dragged, released, taken, keyed} = this.#marks;
    const {photo, patches, placed} = shot;
    const isPlaced = placed.length === PATCHES.length;
    const next = nextMark(words, shot);
    return html`<div class="stage" @pointerdown=${pressed} @pointermove=${dragged} @pointerup=${released} @pointercancel=${taken} @keydown=${keyed}>
        <canvas class="shot" part="photo" role="img" aria-label=${photo.name || words.picture}></canvas>
        ${this.#area ? framesOver(words, patches, this.#area, placed) : nothing}</div>
      ${next ? html`<p class="next">${next}</p>` : nothing}
      <p class="spoken" id="frame-keys">${words.frameKeys}</p>
      <div class="tools">
        ${isPlaced ? html`<button type="button" @click=${() => { this.#isWhole = !this.#isWhole; this.host.changed(); }}>
          ${this.#isWhole ? words.closer : words.whole}</button>` : nothing}
        ${shot.how === 'marked' ? html`<button type="button" @click=${() => { void this.reader.look(); }}>${words.again}</button>` : nothing}</div>
      <details><summary>${words.byNumbers}</summary><div class="fields of-marks">${PATCHES.map((patch) => {
        const problem = this.#problems[patch];
        return textField({
          id: `${patch}-frame`, label: words.markField[patch], say: words.say, text: problem ? String(problem.value) : writeMark(patches[patch]), problem,
          onType: (text) => { this.#type(patch, text, shot); },
        });
      })}</div></details>`;
  }

  paint(root: ParentNode): void {
    const canvas = root.querySelector<HTMLCanvasElement>('canvas.shot');
    const shot = this.host.cardShot();
    const area = this.#area;
    if (!canvas || !shot || !area || isClosed(shot.photo)) return;
    const {photo} = shot;
    if ([area, canvas, photo].every((part, at) => part === this.#drawn[at])) return;
    const scale = photo.preview.width / photo.width;
    // A close-up is drawn with as many pixels as the preview has there, but not so few that the frames' place is blurred.
    canvas.width = Math.round(Math.max(area.width * scale, Math.min(900, area.width)));
    canvas.height = Math.max(1, Math.round(canvas.width * area.height / area.width));
    canvas.getContext('2d')?.drawImage(photo.preview,
      area.x * scale, area.y * scale, area.width * scale, area.height * scale, 0, 0, canvas.width, canvas.height);
    canvas.parentElement?.style.setProperty('--ratio', String(area.width / area.height));
    this.#drawn = [area, canvas, photo];
  }
}
