import type {Point} from '../../core/light/space.js';
import {along, scaled} from '../../core/light/space.js';
import type {Shot} from '../../core/shot/shot.js';
import {moveFor, type Sheet, type View} from './draw.js';
import {depthsOf, moved, positionOf, stepped, type Thing} from './things.js';

/** A drag comes to rest on whole steps of this; an arrow key goes one of these, or one with Shift. All mm. */
const GRAIN = 5;
const [STEP, LEAP] = [10, 50];

interface MoverHost {
  readonly sheet: () => Sheet | undefined;
  readonly shot: () => Shot;
  readonly choose: (thing: Thing) => void;
  readonly move: (changes: Partial<Shot>) => void;
  readonly release: () => void;
}

/** Turns keys and pointers on the handles of the drawing into moves of what they stand for. */
export class Mover {
  #held: {readonly thing: Thing; readonly view: View; readonly sheet: Sheet; readonly start: Point; readonly x: number; readonly y: number} | undefined;

  constructor(private readonly host: MoverHost) {}

  /** The sheet that has to stay as it is, while something is dragged. */
  get sheet(): Sheet | undefined { return this.#held?.sheet; }

  readonly grip = (event: PointerEvent): void => {
    const on = handleOf(event);
    const sheet = this.host.sheet();
    if (!on || !sheet || event.button !== 0) return;
    on.element.setPointerCapture(event.pointerId);
    on.element.focus({preventScroll: true});
    this.host.choose(on.thing);
    this.#held = {...on, sheet, start: positionOf(on.thing, this.host.shot()), x: event.clientX, y: event.clientY};
    event.preventDefault();
  };

  readonly drag = (event: PointerEvent): void => {
    if (!this.#held) return;
    const {thing, view, sheet, start, x, y} = this.#held;
    const to = along(start, moveFor(sheet, view, event.clientX - x, event.clientY - y), 1);
    // Only what the view shows is changed, and comes to rest on whole steps.
    const rest = to.map((part, axis) => (part === start[axis] ? part : Math.round(part / GRAIN) * GRAIN + 0)) as unknown as Point;
    if (rest.some((part, axis) => part !== positionOf(thing, this.host.shot())[axis])) this.host.move(moved(thing, rest, this.host.shot()));
  };

  readonly release = (): void => {
    if (!this.#held) return;
    this.#held = undefined;
    this.host.release();
  };

  readonly key = (event: KeyboardEvent): void => {
    const on = handleOf(event);
    if (!on || event.altKey || event.ctrlKey || event.metaKey) return;
    const shot = this.host.shot();
    const to = placeAfter(on.thing, on.view, event, shot);
    if (!to && event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    this.host.choose(on.thing);
    if (to) this.host.move(moved(on.thing, to, shot));
  };
}

/** Where a key takes a thing: arrows as the view shows it, pages and ends along the table. `undefined` for other keys. */
function placeAfter(thing: Thing, view: View, {key, shiftKey}: KeyboardEvent, shot: Shot): Point | undefined {
  const [x, , z] = positionOf(thing, shot);
  const [least, most] = depthsOf(thing, shot);
  if (key === 'Home') return [x, least, z];
  if (key === 'End') return [x, most, z];
  const far = shiftKey ? LEAP : STEP;
  // What keeps to the middle line goes along it with any arrow.
  const upwards: Point = thing === 'backdrop' || thing === 'camera' ? [0, far, 0] : view === 'plan' ? [-far, 0, 0] : [0, 0, far];
  const steps: Readonly<Record<string, Point>> = {
    ArrowRight: [0, far, 0], ArrowLeft: [0, -far, 0], ArrowUp: upwards, ArrowDown: scaled(upwards, -1), PageUp: [0, LEAP, 0], PageDown: [0, -LEAP, 0],
  };
  const step = steps[key];
  return step && stepped(thing, step, shot);
}

function handleOf(event: Event): {readonly element: SVGGElement; readonly thing: Thing; readonly view: View} | undefined {
  const element = (event.target as Element).closest<SVGGElement>('[data-thing]');
  const {thing, view} = element?.dataset ?? {};
  return element && thing && view ? {element, thing: thing as Thing, view: view as View} : undefined;
}
