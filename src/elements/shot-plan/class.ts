import {html, nothing, svg, type PropertyDeclarations, type PropertyValues, type SVGTemplateResult, type TemplateResult} from 'lit';
import {readAperture} from '../../core/exposure/read.js';
import {writeAperture} from '../../core/exposure/write.js';
import {markedFromWorking, workingAperture} from '../../core/optics/lens.js';
import {depthToCover} from '../../core/optics/outline.js';
import {singleFrameSteps, type GiveUp, type GiveUps} from '../../core/optics/give-up.js';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import {planSteps, type Plan} from '../../core/optics/plan.js';
import {Problem} from '../../core/problem.js';
import type {ApertureShown, Shot, ShotKey} from '../../core/shot/shot.js';
import type {LengthUnit} from '../../core/units.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {CHART_HEIGHT, chart} from './chart.js';
import {comparison} from './comparison.js';
import {curveOf, type Curve} from './curve.js';
import {layOut, type CameraView, type Sheet} from './draw.js';
import {everyday, setUp, type EntryHost} from './entries.js';
import {FREE, GRIPS, gripAt, moved, valueOf, type Grip} from './handles.js';
import {outlineOf} from '../../core/shot/framing.js';
import {planJobOf, wayChanges, wishChanges} from '../../core/shot/plan-job.js';
import {picture} from './picture.js';
import {runInSlices} from './planning.js';
import {planStyles} from './styles.js';
import {GRIP_NAMES, WORDS, curveWords, drawn, gripHint, gripText, reason, trouble, verdict, wish} from './words.js';

/** Steps of a length by one arrow key and by a page key, mm. */
const STEPS: Readonly<Record<LengthUnit, readonly [number, number]>> = {mm: [1, 10], cm: [1, 10], in: [25.4 / 16, 25.4 / 2]};

/** Quiet time after a change before planning starts anew, ms: a drag goes on while the last good plan stands. */
const QUIET_MS = 120;

/** Ways shown before anybody asks for more. */
const BEST = 4;

/** A plan and what it was made from. */
interface Planned {
  readonly plan: Plan;
  readonly job: PlanJob;
  /** What one frame would take, once that is known; only where all ways are stacks */
  readonly single?: GiveUps;
}

/**
 * @summary The figure from the side with its outline to drag, and the ways to get all of it sharp, priced and ranked
 * @slot - Fallback: shown before the script runs, and until the first plan is made
 * @attr {string} bench - Name of the shot shared with other elements of the page
 * @attr {string} base-depth - Front edge to back edge of the base: `60 mm`, `2 1/4 in`
 * @attr {string} overhang-front - How far the figure reaches past the front edge; `overhang-front-height` how high up
 * @attr {string} overhang-back - The same past the back edge; `overhang-back-height`
 * @attr {string} figure-height - Top of the figure above the table
 * @attr {string} figure-width - Figure from side to side; as wide as its base is deep when left out
 * @attr {string} tilt - Degrees the camera looks down
 * @attr {string} focal-lengths - Lenses at hand, the mounted one first: `60, 100 mm`
 * @attr {string} closest-focus - Nearest focus of each, from the sensor mark: `25, 40 cm`
 * @attr {string} pupil-ratio - Exit over entrance pupil; 1 when unknown
 * @attr {string} sensor-width - mm as the camera is held; `sensor-height`, `frame-width` in pixels
 * @attr {string} aperture-widest - Limits: `aperture-smallest`, `shutter-fastest`, `shutter-slowest`, `clicks-per-stop`
 * @attr {string} metered-aperture - A setting that exposes right: `metered-shutter`, `metered-iso`, `correction`
 * @attr {string} metered-magnification - Magnification it was metered at; 0 for a hand-held meter
 * @attr {marked|working} aperture-shown - Which f-number the body shows in close-up
 * @attr {string} picture-width - Pixels across the finished picture; `picture-height`
 * @attr {string} margin - Free around the figure, of the picture's width: `8%`
 * @attr {string} blur-limit - Finished pixels of blur that still look sharp; `least-contrast` of the finest line
 * @attr {string} room - As far back as the tripod can go, from the sensor mark
 * @attr {string} most-frames - Most frames to blend; 1 for none
 * @attr {mm|cm|in} unit - Unit lengths are shown in
 * @fires {ShotChangeEvent} shot-change - After a reader moved, typed or set something
 * @fires {ShotProblemEvent} shot-problem - When text or a value could not be used
 * @csspart plate - The whole
 * @csspart verdict - The verdict
 * @csspart drawing - The side view
 * @csspart handle - What can be moved in it
 * @csspart way - One way out
 * @csspart chart - Worst contrast over the apertures
 * @csspart field - One label with its input
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved
 * @cssprop [--lampblack-paper=transparent] - Background
 */
export class ShotPlan extends ShotElement {
  static override readonly shotKeys = [
    'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'correction', 'clicksPerStop', 'apertureWidest',
    'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'focalLength', 'focalLengths', 'closestFocus', 'pupilRatio', 'sensorWidth',
    'sensorHeight', 'fieldWidth', 'frameWidth', 'crop', 'pictureWidth', 'pictureHeight', 'margin', 'room', 'mostFrames', 'blurLimit',
    'leastContrast', 'meteredMagnification', 'apertureShown', 'baseDepth', 'overhangFront', 'overhangFrontHeight', 'overhangBack',
    'overhangBackHeight', 'figureHeight', 'figureWidth', 'tilt', 'focus', 'unit',
  ] as const satisfies readonly ShotKey[];

  static override styles = [familyStyles, planStyles];

  static override properties: PropertyDeclarations = {planning: {state: true}, chosen: {state: true}, further: {state: true}, shownText: {state: true}};

  /** mm. @attr base-depth */
  declare baseDepth: number;
  /** mm past the front edge. @attr overhang-front */
  declare overhangFront: number;
  /** mm past the back edge. @attr overhang-back */
  declare overhangBack: number;
  /** mm above the table. @attr figure-height */
  declare figureHeight: number;
  /** Degrees the camera looks down. @attr tilt */
  declare tilt: number;
  /** Lenses at hand, mm. @attr focal-lengths */
  declare focalLengths: readonly number[];
  /** mm from the sensor mark. @attr room */
  declare room: number;
  /** Share of the picture's width. @attr margin */
  declare margin: number;
  /** Pixels. @attr picture-width */
  declare pictureWidth: number;
  /** Pixels. @attr picture-height */
  declare pictureHeight: number;
  /** Most frames to blend. @attr most-frames */
  declare mostFrames: number;
  /** Which f-number the body shows. @attr aperture-shown */
  declare apertureShown: ApertureShown;
  /** f-number set now, as marked. @attr aperture */
  declare aperture: number;
  /** s. @attr shutter */
  declare shutter: number;
  /** mm. @attr focal-length */
  declare focalLength: number;
  /** mm. @attr field-width */
  declare fieldWidth: number;
  /** Unit lengths are shown in. @attr unit */
  declare unit: LengthUnit;

  declare protected planning: boolean;
  declare protected chosen: string | null;
  declare protected further: boolean;
  declare protected shownText: {readonly text: string; readonly problem?: Problem; readonly value?: number} | null;

  #planned: Planned | undefined;
  #wanted = '';
  #jobTrouble: Problem | undefined;
  #planTrouble: Problem | undefined;
  #curve: {readonly way: PlanWay; readonly curve: Curve} | undefined;
  #stop: (() => void) | undefined;
  #quiet: ReturnType<typeof setTimeout> | undefined;
  #width = 600;
  #view: {readonly sheet: Sheet; readonly camera: CameraView} | undefined;
  #drag: {readonly grip: Grip; readonly x: number; readonly y: number; readonly from: Shot; readonly view: {readonly sheet: Sheet; readonly camera: CameraView}} | undefined;
  #sizes: ResizeObserver | undefined;

  constructor() {
    super();
    this.planning = false;
    this.chosen = null;
    this.further = false;
    this.shownText = null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#sizes ??= new ResizeObserver(([entry]) => {
      const width = Math.round(entry?.contentRect.width ?? 0);
      if (width < 1 || width === this.#width) return;
      this.#width = width;
      // In the next picture: the new height is none of this round's business.
      requestAnimationFrame(() => { this.requestUpdate(); });
    });
    this.#sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes?.disconnect();
    this.#giveUpPlanning();
    this.#wanted = '';
    this.#drag = undefined;
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    this.#jobTrouble = undefined;
    try {
      const job = planJobOf(this.shot);
      this.#plan(job);
      const way = this.#way;
      this.#view = this.#heldView() ?? layOut(this.#width, job.outline, job.tilt, way, job.pictureHeight / job.pictureWidth);
      if (way && this.#planned && this.#curve?.way !== way) this.#curve = {way, curve: curveOf(way, this.#planned.job)};
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      this.#jobTrouble = error;
    }
  }

  /** The first plan is nothing to be read out; what changes it is. */
  protected override updated(): void { if (this.#planned) super.updated(); }

  // —— planning ——

  get #trouble(): Problem | undefined { return this.#jobTrouble ?? this.#planTrouble; }

  /** Starts planning when the wishes changed: at once for the first, after a quiet moment for others. */
  #plan(job: PlanJob): void {
    const wanted = JSON.stringify(job);
    if (wanted === this.#wanted) return;
    this.#wanted = wanted;
    this.#giveUpPlanning();
    this.planning = true;
    const failed = (error: unknown): void => {
      if (!(error instanceof Problem)) throw error;
      this.#settle(undefined, error);
    };
    const settled = (plan: Plan): void => {
      this.#settle({plan, job});
      if (!plan.ways.length || plan.ways.some(({kind}) => kind !== 'stack')) return;
      this.#stop = runInSlices(singleFrameSteps(job), (single) => { this.#settle({plan, job, single}); }, failed);
    };
    const start = (): void => { this.#stop = runInSlices(planSteps(job), settled, failed); };
    this.#quiet = setTimeout(start, this.#planned ? QUIET_MS : 0);
  }

  #giveUpPlanning(): void {
    clearTimeout(this.#quiet);
    this.#stop?.();
    this.#stop = undefined;
  }

  #settle(planned: Planned | undefined, problem?: Problem): void {
    if (planned) this.#planned = planned;
    this.#planTrouble = problem;
    this.planning = false;
    this.requestUpdate();
  }

  /** The way that is drawn: the one picked last, else the best. */
  get #way(): PlanWay | undefined {
    const ways = this.#planned?.plan.ways ?? [];
    return ways.find((way) => keyOf(way) === this.chosen) ?? ways[0];
  }

  protected override verdictText(): string {
    if (this.#trouble) return trouble(this.#trouble);
    return this.#planned ? verdict(this.#planned.plan, this.#planned.job, this.shot) : '';
  }

  // —— what a reader can do ——

  #pick = (way: PlanWay): void => {
    this.chosen = keyOf(way);
    this.act(wayChanges(way, this.shot));
  };

  #giveUp(wishes: readonly GiveUp[]): void {
    const {shot} = this;
    this.act(Object.assign({}, ...wishes.map((each) => wishChanges(each, shot))) as Partial<Shot>);
  }

  /** The metered f-number as a body shows it that counts close-up in; the shot keeps the marked one. */
  #typeShown(text: string): void {
    const {meteredMagnification, pupilRatio, clicksPerStop} = this.shot;
    const reading = readAperture(text, clicksPerStop);
    if (reading instanceof Problem) {
      this.shownText = {text, problem: new Problem('metered-aperture', text, reading.wanted)};
      return;
    }
    const value = markedFromWorking(reading.value, meteredMagnification, pupilRatio);
    this.shownText = {text, value};
    this.act({meteredAperture: value});
  }

  get #host(): EntryHost {
    const {shot, shownText} = this;
    const {meteredAperture, meteredMagnification, pupilRatio} = shot;
    const asTyped = shownText && (shownText.problem || shownText.value === meteredAperture) ? shownText : undefined;
    return {
      shot, field: (key, label, more) => this.shotField(key, label, more), act: (changes) => { this.act(changes); },
      type: (key, text) => { this.type(key, text); },
      shown: asTyped ?? {text: writeAperture(workingAperture(meteredAperture, meteredMagnification, pupilRatio))},
      typeShown: (text) => { this.#typeShown(text); },
    };
  }

  // —— the handles ——

  /** While something is dragged the sheet keeps still; when it is the front edge, the back edge does. */
  #heldView(): {readonly sheet: Sheet; readonly camera: CameraView} | undefined {
    if (!this.#drag || this.#drag.grip === 'tilt') return undefined;
    const {view, grip, from} = this.#drag;
    if (grip !== 'base-front') return view;
    return {...view, sheet: {...view.sheet, left: view.sheet.left + (from.baseDepth - this.shot.baseDepth) * view.sheet.scale}};
  }

  #move(grip: Grip, from: Shot, along: number, up: number): void {
    const changes = moved(grip, from, along, up, STEPS[this.shot.unit][0] / 2);
    if (Object.entries(changes).some(([key, value]) => this.shot[key as ShotKey] !== value)) this.act(changes);
  }

  #onKey(grip: Grip, event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const {unit} = this.shot;
    const [step, page] = grip === 'tilt' ? [1, 5] : STEPS[unit];
    const free = FREE[grip];
    // Reaching further out at the front is a step towards the camera; with a single direction any arrow works.
    const out = grip === 'overhang-front' ? -1 : 1;
    const sideways: Readonly<Record<string, number>> = {ArrowRight: step, ArrowLeft: -step, PageUp: out * page, PageDown: -out * page, Home: -out * 1e4};
    const upward: Readonly<Record<string, number>> = {ArrowUp: step, ArrowDown: -step};
    const turn = free === 'up' ? {...upward, ArrowRight: step, ArrowLeft: -step, PageUp: page, PageDown: -page, Home: -1e4, End: 160} : upward;
    const alone = free === 'along' ? {...sideways, ArrowUp: step, ArrowDown: -step} : sideways;
    const along = free === 'up' ? 0 : alone[event.key] ?? 0;
    const up = free === 'along' ? 0 : turn[event.key] ?? 0;
    if (!along && !up) return;
    event.preventDefault();
    this.#move(grip, this.shot, grip === 'base-front' ? -along : along, up);
  }

  #onGrab(grip: Grip, event: PointerEvent): void {
    if (event.button !== 0 || !this.#view) return;
    const handle = event.currentTarget as SVGGElement;
    handle.setPointerCapture(event.pointerId);
    handle.focus({preventScroll: true});
    this.#drag = {grip, x: event.clientX, y: event.clientY, from: this.shot, view: this.#view};
    event.preventDefault();
  }

  #onDrag(event: PointerEvent): void {
    if (!this.#drag) return;
    const {grip, from, x, y, view: {sheet, camera}} = this.#drag;
    const box = this.renderRoot.querySelector('svg')?.getBoundingClientRect();
    const zoom = box ? sheet.width / box.width : 1;
    const [dx, dy] = [(event.clientX - x) * zoom, (event.clientY - y) * zoom];
    if (grip !== 'tilt') {
      const free = FREE[grip];
      this.#move(grip, from, free === 'up' ? 0 : dx / sheet.scale, free === 'along' ? 0 : -dy / sheet.scale);
      return;
    }
    const [ax, ay] = camera.aim;
    const [mx, my] = camera.mark;
    const angle = (px: number, py: number): number => Math.atan2(ay - py, Math.max(10, ax - px)) * 180 / Math.PI;
    this.#move(grip, from, 0, angle(mx + dx, my + dy) - angle(mx, my));
  }

  #onRelease(): void {
    this.#drag = undefined;
    this.requestUpdate();
  }

  // —— drawing ——

  protected override render(): TemplateResult {
    const planned = this.#planned;
    return html`<section class="plate" part="plate" aria-busy=${this.planning ? 'true' : 'false'}>
      ${this.#trouble ? html`<p class="problem">${trouble(this.#trouble)}</p>` : nothing}
      ${planned ? this.#renderVerdict(planned) : html`<slot></slot>`}
      ${this.#renderDrawing()}
      ${planned ? this.#renderWays(planned) : nothing}
      <div class="fields wishes screen-only">${everyday(this.#host)}</div>
      ${planned ? this.#renderCurve(planned) : nothing}
      ${setUp(this.#host)}
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderVerdict({plan, job}: Planned): TemplateResult {
    return html`<p class="verdict" part="verdict">${verdict(plan, job, this.shot)}</p>
      <p class="reason">${reason(depthToCover(job.outline, job.tilt).spread, job, this.shot)}</p>`;
  }

  #renderDrawing(): TemplateResult | typeof nothing {
    if (!this.#view) return nothing;
    const {sheet, camera} = this.#view;
    const {shot} = this;
    const [way, planned] = [this.#way, this.#planned];
    return html`<div class="drawing">
      <svg part="drawing" role="group" aria-label=${WORDS.drawing} width=${sheet.width} height=${sheet.height} viewBox="0 0 ${sheet.width} ${sheet.height}">
        ${picture(sheet, camera, outlineOf(shot), way, shot)}
        ${GRIPS.map((grip) => this.#renderHandle(grip, sheet, camera, shot))}
      </svg>
      ${way && planned ? html`<p class="note">${drawn(way, planned.job, camera.broken !== undefined, shot)}</p>` : nothing}
    </div>`;
  }

  #renderHandle(grip: Grip, sheet: Sheet, camera: CameraView, shot: Shot): SVGTemplateResult {
    const [x, y] = gripAt(grip, shot, sheet, camera);
    const base = grip === 'base-front' || grip === 'base-back';
    // The edges of a narrow base reach outwards, so that each can be taken hold of.
    const aside = grip === 'base-front' ? -12 : grip === 'base-back' ? 12 : 0;
    return svg`<g class="handle ${FREE[grip]}" part="handle" role="slider" tabindex="0" data-grip=${grip} aria-label=${GRIP_NAMES[grip]}
        aria-valuemin=${grip === 'tilt' ? -80 : 0} aria-valuemax=${grip === 'tilt' ? 80 : 5000} aria-valuenow=${+valueOf(grip, shot).toFixed(2)}
        aria-valuetext=${gripText(grip, shot)} aria-orientation=${FREE[grip] === 'up' ? 'vertical' : 'horizontal'}
        @keydown=${(event: KeyboardEvent) => { this.#onKey(grip, event); }} @pointerdown=${(event: PointerEvent) => { this.#onGrab(grip, event); }}
        @pointermove=${this.#onDrag} @pointerup=${this.#onRelease} @pointercancel=${this.#onRelease}>
      <title>${GRIP_NAMES[grip]}: ${gripText(grip, shot)}. ${gripHint(grip)}.</title>
      <rect class="hit" x=${x - 21 + aside} y=${y - 21} width="42" height="42"></rect>
      ${base ? svg`<path class="knob" d="M${x} ${y - 8}l7 8v8h-14v-8Z"></path>` : svg`<circle class="knob" cx=${x} cy=${y} r="6"></circle>`}
    </g>`;
  }

  #renderGiveUps({giveUp, oneIsEnough}: GiveUps): TemplateResult {
    const {shot} = this;
    return html`<ul class="ways" aria-label=${WORDS.giveUp}>
      ${giveUp.map((each) => html`<li>${oneIsEnough
        ? html`<button type="button" @click=${() => { this.#giveUp([each]); }}>${wishWords(each, shot)}</button>` : html`<p class="wish">${wishWords(each, shot)}</p>`}</li>`)}
      ${!oneIsEnough && giveUp.length ? html`<li><button type="button" @click=${() => { this.#giveUp(giveUp); }}><strong>${WORDS.allTogether}</strong></button></li>` : nothing}
    </ul>`;
  }

  #renderWays({plan, job, single}: Planned): TemplateResult {
    const {ways} = plan;
    const {shot} = this;
    if (!ways.length) return this.#renderGiveUps(plan);
    return html`${comparison(this.further ? ways : ways.slice(0, BEST), job, shot, this.#pick)}
      ${ways.length > BEST ? html`<div class="screen-only"><button type="button" aria-expanded=${this.further ? 'true' : 'false'}
        @click=${() => { this.further = !this.further; }}>${this.further ? WORDS.fewer : WORDS.more}</button></div>` : nothing}
      ${single?.giveUp.length ? html`<details class="single screen-only"><summary>${WORDS.single}</summary>
        <p class="note">${single.oneIsEnough ? WORDS.singleAny : WORDS.singleAll}</p>${this.#renderGiveUps(single)}</details>` : nothing}`;
  }

  #renderCurve({job}: Planned): TemplateResult | typeof nothing {
    const [way, known] = [this.#way, this.#curve];
    if (!way || known?.way !== way || known.curve.points.length < 2) return nothing;
    const width = Math.min(this.#width, 640);
    return html`<div class="curve-part"><div class="curve-box"><svg part="chart" role="img" aria-label="${WORDS.chart}. ${curveWords(known.curve, way, job)}" width=${width}
        height=${CHART_HEIGHT} viewBox="0 0 ${width} ${CHART_HEIGHT}">
        <defs><pattern id="chart-hatch" width="4.5" height="4.5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0.5" y1="0" x2="0.5" y2="4.5" class="hatch"></line></pattern></defs>
        ${chart(known.curve, way, job.leastContrast ?? 0, width)}
      </svg></div>
      <p class="note">${curveWords(known.curve, way, job)}</p></div>`;
  }
}

/** A way of the same lens and kind goes on being the chosen one when wishes change. */
const keyOf = ({kind, lens}: PlanWay): string => `${kind} ${lens.focalLength}`;

function wishWords(each: GiveUp, shot: Shot): TemplateResult {
  const [what, now] = wish(each, shot);
  return html`<strong>${what.charAt(0).toUpperCase()}${what.slice(1)}</strong><span>${now}</span>`;
}
