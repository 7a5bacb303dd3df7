import type {CropShare} from '../../../core/shot/shot.js';
import {HOLDS, LEAST, WHOLE, dragged, keepsAll, scaled, type Hold} from './crop.js';

/** Shorter than this, a drag beside the frame is a slip of the finger, px. */
const SLIP = 8;
/** What an arrow key moves, share of the picture. */
const KEY_STEP = 0.01;
/** What Page Up and Page Down scale by. */
const PAGE_SCALE = 1.1;

const ARROWS: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1],
};

const MOVE: Hold = {x: 0, y: 0};
const SIZE: Hold = {x: 1, y: 1};

/** Frames that lie on a photo: what is kept, and the spot that is measured. */
export type FrameName = 'crop' | 'spot';

/** A drag that is under way. */
interface Drag {
  readonly pointer: number;
  readonly frame: FrameName;
  readonly hold: Hold;
  readonly start: CropShare;
  readonly x: number;
  readonly y: number;
  /** Size of the picture on screen, CSS px. */
  readonly width: number;
  readonly height: number;
}

/** Moves and sizes the frames on a photo by pointer and by keys. Listens on the element that holds photo and frames. */
export class FrameDrag {
  #drag: Drag | undefined;

  /**
   * @param at - where a frame lies now
   * @param moved - called with where it goes
   */
  constructor(
    private readonly at: (frame: FrameName) => CropShare, private readonly moved: (frame: FrameName, to: CropShare) => void,
  ) {}

  readonly pressed = (event: PointerEvent): void => {
    if (event.button !== 0 || this.#drag) return;
    const stage = event.currentTarget as HTMLElement;
    this.#drag = this.#start(event, stage);
    stage.setPointerCapture(event.pointerId);
    stage.querySelector<SVGElement>(`[data-frame=${this.#drag.frame}][tabindex]`)?.focus({preventScroll: true});
    event.preventDefault();
  };

  readonly dragged = (event: PointerEvent): void => {
    const drag = this.#drag;
    if (drag?.pointer !== event.pointerId) return;
    const to = frameOf(drag, event.clientX - drag.x, event.clientY - drag.y);
    if (to) this.moved(drag.frame, to);
  };

  readonly released = (event: PointerEvent): void => {
    if (this.#drag?.pointer === event.pointerId) this.#drag = undefined;
  };

  readonly keyed = (event: KeyboardEvent): void => {
    const frame = (event.target as Element).getAttribute('data-frame') as FrameName | null;
    if (!frame || event.ctrlKey || event.altKey || event.metaKey) return;
    const to = frameAfterKey(this.at(frame), frame, event.key, event.shiftKey);
    if (!to) return;
    event.preventDefault();
    this.moved(frame, to);
  };

  /** A press of a handle, of a frame, or beside it, where a new crop is drawn. */
  #start(event: PointerEvent, stage: Element): Drag {
    const {left, top, width, height} = stage.getBoundingClientRect();
    const pressed = event.target as Element;
    const frame = (pressed.closest('[data-frame]')?.getAttribute('data-frame') ?? 'crop') as FrameName;
    const common = {pointer: event.pointerId, frame, x: event.clientX, y: event.clientY, width, height};
    const held = pressed.getAttribute('data-hold');
    const handle = held === null ? undefined : HOLDS[Number(held)];
    const start = this.at(frame);
    if (handle) return {...common, hold: handle, start};
    if (pressed.closest('[data-frame]') && !(frame === 'crop' && keepsAll(start))) return {...common, hold: MOVE, start};
    const across = Math.min(1 - LEAST, Math.max(LEAST, (event.clientX - left) / width));
    const down = Math.min(1 - LEAST, Math.max(LEAST, (event.clientY - top) / height));
    return {...common, hold: SIZE, start: {left: across, top: down, width: 0, height: 0}};
  }
}

/**
 * Where a drag has taken its frame. A new one may be drawn towards any corner; until it is more than a slip of the finger
 * it is `undefined`.
 * @param x - px from where the drag began
 * @param y - px from where the drag began
 */
function frameOf({hold, start, width, height}: Drag, x: number, y: number): CropShare | undefined {
  if (start.width > 0) return dragged(start, hold, x / width, y / height);
  if (Math.hypot(x, y) < SLIP) return undefined;
  return dragged(start, {x: x < 0 ? -1 : 1, y: y < 0 ? -1 : 1}, x / width, y / height);
}

/** A frame after a key; `undefined` for keys that mean nothing there. */
function frameAfterKey(at: CropShare, frame: FrameName, key: string, shift: boolean): CropShare | undefined {
  const arrow = ARROWS[key];
  if (arrow) return dragged(at, shift ? SIZE : MOVE, arrow[0] * KEY_STEP, arrow[1] * KEY_STEP);
  switch (key) {
    case 'PageUp': return scaled(at, PAGE_SCALE);
    case 'PageDown': return scaled(at, 1 / PAGE_SCALE);
    case 'Home': return frame === 'crop' ? WHOLE : undefined;
    default: return undefined;
  }
}
