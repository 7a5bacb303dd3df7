import {html, nothing, svg, type SVGTemplateResult, type TemplateResult} from 'lit';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import {outlineOf} from '../../core/shot/framing.js';
import type {Shot} from '../../core/shot/shot.js';
import type {CameraView, Sheet} from './draw.js';
import {FREE, GRIPS, gripAt, leastOf, valueOf, type Grip} from './handles.js';
import {picture} from './picture.js';
import {drawnText, gripText, gripTitle} from './speech.js';
import type {PlanWords} from './words/en.js';

/** A sheet and the camera on it. */
export interface View {
  readonly sheet: Sheet;
  readonly camera: CameraView;
}

/** What hands do to a handle. */
export interface GripHands {
  readonly key: (grip: Grip, event: KeyboardEvent) => void;
  readonly grab: (grip: Grip, event: PointerEvent) => void;
  readonly drag: (event: PointerEvent) => void;
  readonly release: () => void;
}

/** The figure from the side with what can be taken hold of; the way's camera, and what is drawn, once there is a plan. */
export function drawingView(
  words: PlanWords, {sheet, camera}: View, shot: Shot, way: PlanWay | undefined, job: PlanJob | undefined, hands: GripHands,
): TemplateResult {
  return html`<div class="drawing">
    <svg part="drawing" role="group" aria-label=${words.drawing} width=${sheet.width} height=${sheet.height} viewBox="0 0 ${sheet.width} ${sheet.height}">
      ${picture(words, sheet, camera, outlineOf(shot), way, shot)}
      ${GRIPS.map((grip) => handle(words, grip, sheet, camera, shot, hands))}
    </svg>
    ${way && job ? html`<p class="note">${drawnText(words, way, job, camera.broken !== undefined, shot)}</p>` : nothing}
  </div>`;
}

/** The edges of a narrow base reach outwards, so that each can be taken hold of. px */
const ASIDE: Readonly<Partial<Record<Grip, number>>> = {'base-front': -12, 'base-back': 12};

function handle(words: PlanWords, grip: Grip, sheet: Sheet, camera: CameraView, shot: Shot, {key, grab, drag, release}: GripHands): SVGTemplateResult {
  const [x, y] = gripAt(grip, shot, sheet, camera);
  const aside = ASIDE[grip];
  return svg`<g class="handle ${FREE[grip]}" part="handle" role="slider" tabindex="0" data-grip=${grip} aria-label=${words.grips[grip]}
      aria-valuemin=${leastOf(grip)} aria-valuemax=${grip === 'tilt' ? 80 : 5000} aria-valuenow=${+valueOf(grip, shot).toFixed(2)}
      aria-valuetext=${gripText(words, grip, shot)} aria-orientation=${FREE[grip] === 'up' ? 'vertical' : 'horizontal'}
      @keydown=${(event: KeyboardEvent) => { key(grip, event); }} @pointerdown=${(event: PointerEvent) => { grab(grip, event); }}
      @pointermove=${drag} @pointerup=${release} @pointercancel=${release}>
    <title .textContent=${gripTitle(words, grip, shot)}></title>
    <rect class="hit" x=${x - 21 + (aside ?? 0)} y=${y - 21} width="42" height="42"></rect>
    ${aside ? svg`<path class="knob" d="M${x} ${y - 8}l7 8v8h-14v-8Z"></path>` : svg`<circle class="knob" cx=${x} cy=${y} r="6"></circle>`}
  </g>`;
}
