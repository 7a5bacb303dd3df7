import type {LineEnd, LineShare, Place} from '../places.js';
import {withEnd} from './line.js';

/** What an arrow key moves an end by, share of the picture; with Shift it is finer. */
const KEY_STEP = 0.01;
const FINE_STEP = 0.001;

const ARROWS: Readonly<Record<string, Place>> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1], PageUp: [0, -10], PageDown: [0, 10],
};

/** Moves the ends of a line on the photo by pointer and by keys. Listens on the drawing that holds them. */
export class LineDrag {
  #held: {readonly pointer: number; readonly end: LineEnd; readonly off: Place} | undefined;

  /**
   * @param at - where the line lies now
   * @param moved - called with where it goes
   */
  constructor(private readonly at: () => LineShare, private readonly moved: (to: LineShare) => void) {}

  readonly pressed = (event: PointerEvent): void => {
    const handle = (event.target as Element).closest<SVGElement>('[data-end]');
    if (!handle || event.button !== 0 || this.#held) return;
    const end = handle.dataset['end'] as LineEnd;
    const [x, y] = placeOf(event);
    const [startX, startY] = this.at()[end];
    this.#held = {pointer: event.pointerId, end, off: [startX - x, startY - y]};
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    handle.focus({preventScroll: true});
    // The frame under it is not to be dragged along.
    event.stopPropagation();
    event.preventDefault();
  };

  readonly dragged = (event: PointerEvent): void => {
    if (this.#held?.pointer !== event.pointerId) return;
    event.stopPropagation();
    const {end, off} = this.#held;
    const [x, y] = placeOf(event);
    this.moved(withEnd(this.at(), end, [x + off[0], y + off[1]]));
  };

  readonly released = (event: PointerEvent): void => {
    if (this.#held?.pointer === event.pointerId) this.#held = undefined;
  };

  readonly keyed = (event: KeyboardEvent): void => {
    const end = (event.target as SVGElement).dataset['end'] as LineEnd | undefined;
    const arrow = ARROWS[event.key];
    if (!end || !arrow || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    event.stopPropagation();
    const step = event.shiftKey ? FINE_STEP : KEY_STEP;
    const [x, y] = this.at()[end];
    this.moved(withEnd(this.at(), end, [x + arrow[0] * step, y + arrow[1] * step]));
  };
}

/** Where an event is on the picture. */
function placeOf(event: PointerEvent): Place {
  const {left, top, width, height} = (event.currentTarget as Element).getBoundingClientRect();
  return [(event.clientX - left) / width, (event.clientY - top) / height];
}
