import {html, nothing, svg, type SVGTemplateResult, type TemplateResult} from 'lit';
import type {PhotoPoint} from '../../../core/optics/ruler.js';
import {Problem} from '../../../core/problem.js';
import {textField} from '../../shared/fields.js';
import {withUnit} from '../entries.js';
import type {RulerNotes, ShownPhoto} from '../ruler-notes.js';
import {doneView} from '../ways-view.js';
import type {FoldHost} from './host.js';
import {fieldText} from './measuring-speech.js';
import {fieldFromNotes, isSet, looksCropped} from './ruler-scale.js';
import type {FoldWords} from './words/en.js';

/** Share of the photo's width that the loupe shows. */
const LOUPE_SHARE = 1 / 20;

/** Half the side of what can be taken hold of, CSS px. */
const REACH = 22;

const inside = (share: number): number => Math.min(1, Math.max(0, share));
const per = (share: number): string => `${+(share * 100).toFixed(3)}%`;

/** Two points on a photo, moved by pointer and keys, with a loupe over the one that is being moved. */
export class RulerPhoto {
  #active: 0 | 1 | undefined;
  #drag: {readonly at: 0 | 1; readonly x: number; readonly y: number; readonly from: PhotoPoint} | undefined;

  constructor(
    private readonly notes: () => RulerNotes, private readonly photo: () => ShownPhoto | undefined,
    private readonly onMark: (notes: RulerNotes) => void, private readonly onLook: () => void,
  ) {}

  /** The photo with its points, the length between them, and what comes of it. */
  view(host: FoldHost, photo: ShownPhoto): TemplateResult {
    const {fold, shot} = host;
    const {say} = fold;
    const notes = this.notes();
    const [one, other] = notes.points;
    const found = fieldFromNotes(notes, photo, shot);
    const field = found instanceof Problem ? undefined : found;
    const active = this.#active === undefined ? undefined : notes.points[this.#active];
    const useText = (width: number): string => fold.useField(say.length(width, shot.unit));
    return html`<p class="note">${fold.rulerHow}</p>
      ${looksCropped(photo, shot) ? html`<p class="problem">${fold.cropped}</p>` : nothing}
      <div class="ruler-photo" @focusin=${this.#look} @focusout=${this.#lookAway}>
        <canvas class="preview" width=${photo.preview.width} height=${photo.preview.height}></canvas>
        <svg role="group" aria-label=${fold.photo}>
          <line class="under" x1=${per(one.x)} y1=${per(one.y)} x2=${per(other.x)} y2=${per(other.y)}></line>
          <line class="between" x1=${per(one.x)} y1=${per(one.y)} x2=${per(other.x)} y2=${per(other.y)}></line>
          ${this.#point(fold, 0, one, photo)}${this.#point(fold, 1, other, photo)}
        </svg>
        <div class="loupe ${active && active.x < 0.5 ? 'end' : ''}" ?hidden=${!active} aria-hidden="true"><canvas width="240" height="240"></canvas></div>
      </div>
      <div class="fields">${textField({
        id: 'ruler-length', say, label: fold.apart, hint: fold.apartHint, text: notes.apart,
        problem: found instanceof Problem && found.parameter === 'ruler-length' ? found : undefined,
        onType: (apart) => { this.onMark({...this.notes(), apart: withUnit(apart, shot.unit)}); },
      })}</div>
      ${found instanceof Problem && found.parameter !== 'ruler-length' ? html`<p class="problem">${fold.together}</p>` : nothing}
      ${doneView(host.words, host.done('rulerPhoto'))}
      ${field ? html`<p class="note">${fieldText(fold, field, shot)}</p>
        <div><button type="button" ?disabled=${isSet(field, shot)}
          @click=${() => { host.press('rulerPhoto', () => useText(field.fieldWidth), {fieldWidth: field.fieldWidth}); }}>${useText(field.fieldWidth)}</button></div>` : nothing}`;
  }

  #point(fold: FoldWords, at: 0 | 1, {x, y}: PhotoPoint, photo: ShownPhoto): SVGTemplateResult {
    return svg`<svg x=${per(x)} y=${per(y)} width="1" height="1" overflow="visible">
      <g class="point" role="slider" tabindex="0" data-point=${at} aria-label=${fold.points[at]} aria-valuemin="0" aria-valuemax=${photo.width}
        aria-valuenow=${Math.round(x * photo.width)} aria-valuetext=${fold.at(fold.say.number(x * photo.width), fold.say.number(y * photo.height))}
        @keydown=${this.#key} @pointerdown=${this.#grip} @pointermove=${this.#move} @pointerup=${this.#release} @pointercancel=${this.#release}>
        <rect class="hit" x=${-REACH} y=${-REACH} width=${2 * REACH} height=${2 * REACH}></rect>
        <path class="under" d="M-13 0h9M4 0h9M0 -13v9M0 4v9"></path><path class="cross" d="M-13 0h9M4 0h9M0 -13v9M0 4v9"></path>
        <circle class="cross" r="7"></circle>
      </g></svg>`;
  }

  /** Draws photo and loupe once their canvases stand. */
  paint(root: ParentNode): void {
    const photo = this.photo();
    const sheet = root.querySelector<HTMLCanvasElement>('.preview');
    // A photo that was closed meanwhile has no pixels left.
    if (!photo || !sheet || photo.preview.width === 0) return;
    sheet.getContext('2d')?.drawImage(photo.preview, 0, 0);
    const pane = root.querySelector<HTMLCanvasElement>('.loupe canvas');
    const point = this.#active === undefined ? undefined : this.notes().points[this.#active];
    const glass = pane?.getContext('2d');
    if (!pane || !glass || !point) return;
    const {width, height} = photo.preview;
    const side = width * LOUPE_SHARE;
    glass.clearRect(0, 0, pane.width, pane.height);
    glass.imageSmoothingEnabled = false;
    glass.drawImage(photo.preview, point.x * width - side / 2, point.y * height - side / 2, side, side, 0, 0, pane.width, pane.height);
  }

  #to(at: 0 | 1, x: number, y: number): void {
    const notes = this.notes();
    const moved = {x: inside(x), y: inside(y)};
    this.onMark({...notes, points: at === 0 ? [moved, notes.points[1]] : [notes.points[0], moved]});
  }

  readonly #look = (event: Event): void => {
    const point = (event.target as Element).closest('[data-point]');
    this.#active = point ? pointOf(point) : undefined;
    this.onLook();
  };

  readonly #lookAway = (): void => {
    this.#active = undefined;
    this.onLook();
  };

  readonly #key = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const photo = this.photo();
    const at = pointOf(event.currentTarget as Element);
    const {x, y} = this.notes().points[at];
    if (!photo) return;
    const grain = event.shiftKey ? 10 : 1;
    const [dx, dy] = [grain / photo.preview.width, grain / photo.preview.height];
    const moves: Readonly<Record<string, readonly [number, number]>> = {
      ArrowRight: [x + dx, y], ArrowLeft: [x - dx, y], ArrowDown: [x, y + dy], ArrowUp: [x, y - dy],
      PageUp: [x + 0.05, y], PageDown: [x - 0.05, y], Home: [0, y], End: [1, y],
    };
    const next = moves[event.key];
    if (!next) return;
    event.preventDefault();
    this.#to(at, ...next);
  };

  readonly #grip = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const handle = event.currentTarget as SVGGElement;
    const at = pointOf(handle);
    handle.setPointerCapture(event.pointerId);
    handle.focus({preventScroll: true});
    this.#drag = {at, x: event.clientX, y: event.clientY, from: this.notes().points[at]};
    event.preventDefault();
  };

  readonly #move = (event: PointerEvent): void => {
    if (!this.#drag) return;
    const {at, x, y, from} = this.#drag;
    const stage = (event.currentTarget as Element).closest('.ruler-photo')?.getBoundingClientRect();
    if (stage) this.#to(at, from.x + (event.clientX - x) / stage.width, from.y + (event.clientY - y) / stage.height);
  };

  readonly #release = (): void => { this.#drag = undefined; };
}

const pointOf = (element: Element): 0 | 1 => (element.getAttribute('data-point') === '1' ? 1 : 0);
