import type {Crop} from '../../../core/tone/pixels.js';
import type {Patch} from '../../../core/white/card.js';
import {movedBy, sizedBy, type Size} from './marks.js';

/** Farther than this, a press beside the frames is a drag of the page, CSS px. */
const SLIP = 8;
/** The same on a frame, where every pixel counts. */
const TREMBLE = 3;
/** What an arrow key moves, share of what is shown. */
const KEY_STEP = 0.005;
/** What Page Up and Page Down size by, share of the frame. */
const PAGE_STEP = 0.2;

const ARROWS: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1],
};

/** What is on the stage. */
export interface OnStage {
  readonly patches: Readonly<Record<Patch, Crop>>;
  /** The part of the picture that is shown, px. */
  readonly area: Crop;
  readonly picture: Size;
}

/** What becomes of a press, drag or key. */
export interface Moves {
  /** A frame goes elsewhere. */
  readonly moved: (patch: Patch, to: Crop) => void;
  /** The finger or key is lifted. */
  readonly settled: () => void;
  /** A press without a drag, px of the picture; `on` a frame or beside them. */
  readonly pressed: (x: number, y: number, on: Patch | undefined) => void;
}

interface Drag {
  readonly pointer: number;
  /** `undefined` beside the frames. */
  readonly patch: Patch | undefined;
  readonly sizing: boolean;
  readonly start: OnStage;
  readonly x: number;
  readonly y: number;
  /** Pixels of the picture to a CSS px. */
  readonly scale: number;
  readonly place: readonly [x: number, y: number];
}

/** Moves and sizes the frames by pointer and by keys. Listens on the element that holds photo and frames. */
export class MarkDrag {
  #drag: Drag | undefined;

  constructor(private readonly stage: () => OnStage | undefined, private readonly moves: Moves) {}

  readonly pressed = (event: PointerEvent): void => {
    const start = this.stage();
    if (event.button !== 0 || this.#drag || !start) return;
    const holder = event.currentTarget as HTMLElement;
    const {left, top, width} = holder.getBoundingClientRect();
    const target = event.target as Element;
    const patch = target.closest('[data-patch]')?.getAttribute('data-patch') as Patch | undefined;
    const scale = start.area.width / width;
    this.#drag = {
      pointer: event.pointerId, patch, sizing: target.classList.contains('size'), start, x: event.clientX, y: event.clientY, scale,
      place: [start.area.x + (event.clientX - left) * scale, start.area.y + (event.clientY - top) * scale],
    };
    holder.setPointerCapture(event.pointerId);
    if (!patch) return;
    holder.querySelector<SVGElement>(`[data-patch=${patch}][tabindex]`)?.focus({preventScroll: true});
    event.preventDefault();
  };

  readonly dragged = (event: PointerEvent): void => {
    const drag = this.#drag;
    if (drag?.pointer !== event.pointerId || !drag.patch) return;
    const {start: {patches, picture}, scale} = drag;
    const by = drag.sizing ? sizedBy : movedBy;
    this.moves.moved(drag.patch, by(patches[drag.patch], (event.clientX - drag.x) * scale, (event.clientY - drag.y) * scale, picture));
  };

  readonly released = (event: PointerEvent): void => {
    const drag = this.#drag;
    if (drag?.pointer !== event.pointerId) return;
    this.#drag = undefined;
    if (drag.patch) this.moves.settled();
    const way = Math.hypot(event.clientX - drag.x, event.clientY - drag.y);
    if (way < (drag.patch ? TREMBLE : SLIP)) this.moves.pressed(...drag.place, drag.patch);
  };

  /** The page took the finger over to scroll. */
  readonly taken = (event: PointerEvent): void => {
    if (this.#drag?.pointer !== event.pointerId) return;
    this.#drag = undefined;
    this.moves.settled();
  };

  readonly keyed = (event: KeyboardEvent): void => {
    const patch = (event.target as Element).getAttribute('data-patch') as Patch | null;
    const stage = this.stage();
    if (!patch || !stage || event.ctrlKey || event.altKey || event.metaKey) return;
    const to = afterKey(stage, patch, event.key, event.shiftKey);
    if (!to) return;
    event.preventDefault();
    this.moves.moved(patch, to);
    this.moves.settled();
  };
}

/** A frame after a key; `undefined` for keys that mean nothing there. */
function afterKey({patches, area, picture}: OnStage, patch: Patch, key: string, shift: boolean): Crop | undefined {
  const frame = patches[patch];
  const arrow = ARROWS[key];
  const step = Math.max(1, Math.round(area.width * KEY_STEP));
  if (arrow) return (shift ? sizedBy : movedBy)(frame, arrow[0] * step, arrow[1] * step, picture);
  if (key !== 'PageUp' && key !== 'PageDown') return undefined;
  const grow = (key === 'PageUp' ? 1 : -1) * Math.max(1, Math.round(frame.width * PAGE_STEP / 2));
  return sizedBy(movedBy(frame, -grow, -grow, picture), 2 * grow, 2 * grow, picture);
}
