import type {Shot} from '../../core/shot/shot.js';
import type {LengthUnit} from '../../core/units.js';
import {markAt, type Sheet} from './draw.js';

/** Steps of the focus by one arrow key and by a page key, mm. */
const STEPS: Readonly<Record<LengthUnit, readonly [number, number]>> = {mm: [1, 10], cm: [1, 10], in: [25.4 / 16, 25.4]};

/** Turns keys and pointers on the handle into a focus plane. */
export class FocusSlider {
  /** While the focus is dragged: mm between pointer and plane, on a sheet that keeps still. */
  #held: {readonly grip: number; readonly sheet: Sheet} | undefined;

  constructor(
    private readonly sheetNow: () => Sheet | undefined, private readonly shotNow: () => Shot,
    private readonly onMove: (focus: number) => void, private readonly onRelease: () => void,
  ) {}

  /** The sheet that has to stay as it is, while there is one. */
  get sheet(): Sheet | undefined { return this.#held?.sheet; }

  readonly key = (event: KeyboardEvent): void => {
    const sheet = this.sheetNow();
    if (!sheet || event.altKey || event.ctrlKey || event.metaKey) return;
    const {focus, unit} = this.shotNow();
    const [step, page] = STEPS[unit];
    const moves: Readonly<Record<string, number>> = {
      ArrowRight: focus + step, ArrowUp: focus + step, ArrowLeft: focus - step, ArrowDown: focus - step,
      PageUp: focus + page, PageDown: focus - page, Home: Math.ceil(sheet.left), End: Math.floor(sheet.right),
    };
    const next = moves[event.key];
    if (next === undefined) return;
    event.preventDefault();
    this.#moveTo(next, step);
  };

  readonly grip = (event: PointerEvent): void => {
    const sheet = this.sheetNow();
    if (!sheet || event.button !== 0) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.#held = {sheet, grip: pointedAt(event, sheet) - this.shotNow().focus};
  };

  readonly drag = (event: PointerEvent): void => {
    if (!this.#held) return;
    const {sheet, grip} = this.#held;
    const mark = Math.min(sheet.right, Math.max(sheet.left, pointedAt(event, sheet) - grip));
    this.#moveTo(mark, STEPS[this.shotNow().unit][0] / 2);
  };

  readonly release = (): void => {
    if (!this.#held) return;
    this.#held = undefined;
    this.onRelease();
  };

  /** To the nearest multiple of `grain`. */
  #moveTo(mark: number, grain: number): void {
    const focus = Math.round(mark / grain) * grain + 0;
    if (focus !== this.shotNow().focus) this.onMove(focus);
  }
}

/** Mark under the pointer. */
function pointedAt(event: PointerEvent, sheet: Sheet): number {
  const box = (event.currentTarget as SVGGElement).ownerSVGElement?.getBoundingClientRect();
  return box ? markAt(sheet, (event.clientX - box.left) * sheet.width / box.width) : 0;
}
