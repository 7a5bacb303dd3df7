import {html, isServer, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult} from 'lit';
import {readAperture} from '../../core/exposure/read.js';
import {writeAperture} from '../../core/exposure/write.js';
import type {GiveUp, GiveUps} from '../../core/optics/give-up.js';
import {markedFromWorking, sensorToSubject, workingAperture} from '../../core/optics/lens.js';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import {Problem} from '../../core/problem.js';
import {magnificationNow} from '../../core/shot/close-up.js';
import {EXPOSURE_FIELDS} from '../../core/shot/exposure-fields.js';
import {OPTICS_FIELDS} from '../../core/shot/optics-fields.js';
import {PICTURE_FIELDS} from '../../core/shot/picture-fields.js';
import {planJobOf, wayChanges, wishChanges, type PlannedFrames} from '../../core/shot/plan-job.js';
import type {ApertureShown, Shot, ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';
import type {LengthUnit} from '../../core/units.js';
import {ShotElement} from '../shared/shot-element.js';
import {familyStyles} from '../shared/styles.js';
import {takenBack} from '../shared/undo.js';
import {foldsBook, planBook, type UnfoldedWords} from './book.js';
import {layOut} from './draw.js';
import {drawingView, type GripHands, type View} from './drawing-view.js';
import {everyday, type EntryHost} from './entries.js';
import {FREE, moved, type Grip} from './handles.js';
import type {Planned, Planner} from './planner.js';
import {leastText, reasonText, troubleText, verdictText, waySetting, wishText} from './speech.js';
import {planStyles} from './styles.js';
import {giveUpsView, waysView} from './ways-view.js';
import type {PlanWords} from './words/en.js';
import type {FoldWords} from './words/folds-en.js';

/** What makes the plan: fetched while the figure is already there. */
const loadPlanner = () => import('./planner.js');

/** What stands behind the folds: fetched once one of them is opened. */
const loadMore = () => import('./more-view.js');
const loadSetUp = () => import('./set-up.js');

/** Steps of a length by one arrow key and by a page key, mm. */
const STEPS: Readonly<Record<LengthUnit, readonly [number, number]>> = {mm: [1, 10], cm: [1, 10], in: [25.4 / 16, 25.4 / 2]};

/** Ways shown before anybody asks for more. */
const BEST = 4;

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
 * @attr {string} room - As far back as the tripod can go, from the sensor mark (⌀ on the body) to the focus
 * @attr {string} most-frames - Most frames to blend; 1 for none
 * @attr {mm|cm|in} unit - Unit lengths are shown in
 * @fires {ShotChangeEvent} shot-change - After a reader moved, typed or set something
 * @fires {ShotProblemEvent} shot-problem - When text or a value could not be used
 * @csspart plate - The whole
 * @csspart verdict - The verdict
 * @csspart drawing - The side view
 * @csspart handle - What can be moved in it
 * @csspart way - One way out
 * @csspart chart - What every aperture leaves of the finest line's contrast
 * @csspart field - One label with its input
 * @cssprop [--lampblack-accent=#b26a00] - What can be moved
 * @cssprop [--lampblack-paper=transparent] - Background
 */
export class ShotPlan extends ShotElement<PlanWords> {
  static override readonly shotKeys = [
    'aperture', 'shutter', 'iso', 'meteredAperture', 'meteredShutter', 'meteredIso', 'correction', 'clicksPerStop', 'apertureWidest',
    'apertureSmallest', 'shutterFastest', 'shutterSlowest', 'focalLength', 'focalLengths', 'closestFocus', 'pupilRatio', 'sensorWidth',
    'sensorHeight', 'fieldWidth', 'frameWidth', 'crop', 'pictureWidth', 'pictureHeight', 'margin', 'room', 'mostFrames', 'blurLimit',
    'leastContrast', 'meteredMagnification', 'apertureShown', 'baseDepth', 'overhangFront', 'overhangFrontHeight', 'overhangBack',
    'overhangBackHeight', 'figureHeight', 'figureWidth', 'tilt', 'focus', 'unit',
  ] as const satisfies readonly ShotKey[];

  static override readonly fields = {...EXPOSURE_FIELDS, ...OPTICS_FIELDS, ...PICTURE_FIELDS};
  static override readonly book = planBook;
  static override styles = [familyStyles, planStyles];

  static override properties: PropertyDeclarations = {chosen: {state: true}, further: {state: true}, shownText: {state: true}};

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

  declare protected chosen: string | null;
  declare protected further: boolean;
  declare protected shownText: {readonly text: string; readonly problem?: Problem; readonly value?: number} | null;

  #planner: Planner | undefined;
  #jobTrouble: Problem | undefined;
  #unreachable = false;
  #width = 600;
  #view: View | undefined;
  #drag: {readonly grip: Grip; readonly x: number; readonly y: number; readonly from: Shot; readonly view: View} | undefined;
  #done: {readonly changes: Partial<Shot>; readonly before: ShotState; readonly chosen: string | null; readonly say: () => string} | undefined;
  #foldWords: FoldWords | undefined;
  readonly #opened = new Set<() => Promise<unknown>>();
  #sizes: ResizeObserver | undefined;

  constructor() {
    super();
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
    this.#planner?.rest();
    this.#drag = undefined;
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    this.#jobTrouble = undefined;
    const {shot} = this;
    const done = this.#done?.changes ?? {};
    if (Object.keys(done).some((key) => shot[key as ShotKey] !== done[key as ShotKey])) this.#done = undefined;
    try {
      const job = planJobOf(shot);
      this.#plan(job);
      this.#view = this.#heldView() ?? layOut(this.#width, job.outline, job.tilt, this.#way, job.pictureHeight / job.pictureWidth);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      this.#jobTrouble = error;
    }
  }

  /** A server does not wait for a plan. */
  #plan(job: PlanJob): void {
    const part = isServer ? undefined : this.later(loadPlanner);
    if (part) this.#planner ??= new part.Planner(() => { this.requestUpdate(); });
    this.#planner?.plan(job);
    this.#unreachable = part === null;
  }

  /** Why there is no plan, in words; empty while one stands or is on its way. */
  #troubleText(): string {
    const trouble = this.#jobTrouble ?? this.#planner?.trouble;
    if (trouble) return troubleText(this.words, trouble);
    return this.#unreachable ? this.words.say.family.unreachable : '';
  }

  /** The way that is drawn: the one picked last, else the best. */
  get #way(): PlanWay | undefined {
    const ways = this.#planner?.planned?.plan.ways ?? [];
    return ways.find((way) => keyOf(way) === this.chosen) ?? ways[0];
  }

  /** Where the camera stands, mm from the sensor mark to the focus plane; only where somebody said it. */
  get #here(): number | undefined {
    const {shot} = this;
    return 'fieldWidth' in this.state.values ? sensorToSubject(magnificationNow(shot), shot.focalLength) : undefined;
  }

  protected override verdictText(): string | undefined {
    const planned = this.#planner?.planned;
    return planned && (this.#troubleText() || verdictText(this.words, planned.plan, this.#way, planned.job, this.shot));
  }

  // —— what a reader can do ——

  #pick = (way: PlanWay): void => {
    this.#take(wayChanges(way, this.shot), () => waySetting(this.words, way, this.shot));
    this.chosen = keyOf(way);
    this.putThing('frames', way.frames.length > 1 ? {marks: way.frames, shot: this.shot} satisfies PlannedFrames : undefined);
  };

  #giveUp = async (wishes: readonly GiveUp[]): Promise<void> => {
    const {shot} = this;
    const changes = Object.assign({}, ...wishes.map((each) => wishChanges(each, shot))) as Partial<Shot>;
    this.#take(changes, () => this.words.say.list(wishes.map((each) => wishText(this.words, each, shot)[0])));
    // What was pressed goes with the next plan.
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.undo')?.focus({preventScroll: true});
  };

  /** @param say - what was done, in the words of the day */
  #take(changes: Partial<Shot>, say: () => string): void {
    const before = this.state;
    this.act(changes);
    this.#done = {changes, before, chosen: this.chosen, say};
    this.requestUpdate();
  }

  #undo = (): void => {
    const done = this.#done;
    this.#done = undefined;
    if (!done) return;
    this.chosen = done.chosen;
    this.replace(takenBack(this.state, done.before, Object.keys(done.changes) as ShotKey[]), true);
  };

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
      words: this.words, shot, field: (key, label, more) => this.shotField(key, label, more), act: (changes) => { this.act(changes); },
      type: (key, text) => { this.type(key, text); },
      shown: asTyped ?? {text: this.words.say.typed(writeAperture(workingAperture(meteredAperture, meteredMagnification, pupilRatio)))},
      typeShown: (text) => { this.#typeShown(text); },
    };
  }

  // —— the handles ——

  /** While something is dragged the sheet keeps still; when it is the front edge, the back edge does. */
  #heldView(): View | undefined {
    if (!this.#drag || this.#drag.grip === 'tilt') return undefined;
    const {view, grip, from} = this.#drag;
    if (grip !== 'base-front') return view;
    return {...view, sheet: {...view.sheet, left: view.sheet.left + (from.baseDepth - this.shot.baseDepth) * view.sheet.scale}};
  }

  #move(grip: Grip, from: Shot, along: number, up: number): void {
    const changes = moved(grip, from, along, up, STEPS[this.shot.unit][0] / 2);
    if (Object.entries(changes).some(([key, value]) => this.shot[key as ShotKey] !== value)) this.act(changes);
  }

  readonly #hands: GripHands = {
    key: (grip, event) => {
      if (event.altKey || event.ctrlKey || event.metaKey) return;
      const [along, up] = stepsOf(grip, event.key, this.shot.unit);
      if (!along && !up) return;
      event.preventDefault();
      this.#move(grip, this.shot, grip === 'base-front' ? -along : along, up);
    },
    grab: (grip, event) => {
      if (event.button !== 0 || !this.#view) return;
      const handle = event.currentTarget as SVGGElement;
      handle.setPointerCapture(event.pointerId);
      handle.focus({preventScroll: true});
      this.#drag = {grip, x: event.clientX, y: event.clientY, from: this.shot, view: this.#view};
      event.preventDefault();
    },
    drag: (event) => {
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
    },
    release: () => {
      this.#drag = undefined;
      this.requestUpdate();
    },
  };

  // —— drawing ——

  protected override render(): TemplateResult {
    const {words, shot} = this;
    const [planned, trouble, way] = [this.#planner?.planned, this.#troubleText(), this.#way];
    const busy = this.#planner ? this.#planner.busy : !trouble;
    return html`<section class="plate" part="plate" aria-label=${words.plan} aria-busy=${busy ? 'true' : 'false'} lang=${this.spokenLanguage}>
      ${trouble ? html`<p class="problem">${trouble}</p>` : nothing}
      ${planned ? html`<p class="verdict" part="verdict">${verdictText(words, planned.plan, way, planned.job, shot)}</p>
        <p class="reason">${reasonText(words, planned.job, shot)}</p>` : html`<slot></slot>`}
      ${this.#view ? drawingView(words, this.#view, shot, way, planned?.job, this.#hands) : nothing}
      ${planned ? this.#renderWays(planned) : nothing}
      <div class="fields wishes screen-only">${everyday(this.#host)}</div>
      ${this.#renderSetUp()}
      ${this.renderAnnouncement()}
    </section>`;
  }

  #renderWays({plan, job, single}: Planned): TemplateResult {
    const {ways} = plan;
    const {shot, words} = this;
    const done = this.#done;
    return html`<div class="ways-part">
      ${ways.length ? html`<h3>${words.ways}</h3><p class="note">${words.weighs(leastText(words, job))}</p>
          ${waysView(words, this.further ? ways : ways.slice(0, BEST), job, shot, this.#here, this.#pick)}`
        : giveUpsView(words, plan, shot, (wishes) => { void this.#giveUp(wishes); })}
      ${done ? html`<p class="done"><span>${words.done(done.say())}</span><button type="button" class="undo" @click=${this.#undo}>${words.undo}</button></p>` : nothing}
      ${ways.length > BEST ? html`<div class="screen-only"><button type="button" aria-expanded=${this.further ? 'true' : 'false'}
        @click=${() => { this.further = !this.further; }}>${this.further ? words.fewer : words.further}</button></div>` : nothing}
    </div>
    ${ways.length ? this.#renderFolds(ways, job, single) : nothing}`;
  }

  /** What goes further than the ways themselves. */
  #renderFolds(ways: readonly PlanWay[], job: PlanJob, single: GiveUps | undefined): TemplateResult {
    const {shot, words} = this;
    const way = this.#way;
    return html`<div class="folds">
      ${this.#renderFold('side-by-side', words.compare, loadMore, (more, said) => more.comparison(said, ways, job, shot, this.#here))}
      ${this.#renderFold('every-aperture', words.curve, loadMore, (more, said) => (way ? more.curveView(said, way, job, this.#width) : nothing))}
      ${this.#renderFold('rates-part', words.rates, loadMore, (more, said) => more.ratesView(said, shot.unit))}
      ${single?.giveUp.length ? html`<details class="single screen-only"><summary>${words.single}</summary>
        <p class="note">${single.oneIsEnough ? words.singleAny : words.singleAll}</p>
        ${giveUpsView(words, single, shot, (wishes) => { void this.#giveUp(wishes); })}</details>` : nothing}
    </div>`;
  }

  /** Everything that is set up once. */
  #renderSetUp(): TemplateResult {
    const {words} = this;
    return html`<div class="folds set-up screen-only">
      ${this.#renderFold('figure', words.figure, loadSetUp, (setUp, said) => setUp.figureFields({...this.#host, words: said}))}
      ${this.#renderFold('camera', words.cameraAndLens, loadSetUp, (setUp, said) => setUp.cameraFields({...this.#host, words: said}))}
      ${this.#renderFold('sharp', words.sharp, loadSetUp, (setUp, said) => setUp.sharpFields({...this.#host, words: said}))}
    </div>`;
  }

  /** Something that is fetched when the fold is opened. */
  #renderFold<M>(name: string, summary: string, load: () => Promise<M>, view: (part: M, words: UnfoldedWords) => TemplateResult | typeof nothing): TemplateResult {
    const part = this.#opened.has(load) ? this.later(load) : undefined;
    if (part) this.#foldWords = this.wordsOf(foldsBook) ?? this.#foldWords;
    return html`<details class=${name} @toggle=${() => { this.#open(load); }}>
      <summary>${summary}</summary>
      ${part && this.#foldWords ? view(part, {...this.words, ...this.#foldWords}) : part === null ? html`<p class="note">${this.words.say.family.unreachable}</p>` : nothing}
    </details>`;
  }

  #open(load: () => Promise<unknown>): void {
    this.#opened.add(load);
    this.requestUpdate();
  }
}

/** A way of the same lens and kind goes on being the chosen one when wishes change. */
const keyOf = ({kind, lens}: PlanWay): string => `${kind} ${lens.focalLength}`;

/** How far a key moves a handle, mm or degrees. */
function stepsOf(grip: Grip, key: string, unit: LengthUnit): readonly [along: number, up: number] {
  const [step, page] = grip === 'tilt' ? [1, 5] : STEPS[unit];
  const free = FREE[grip];
  // Reaching further out at the front is a step towards the camera; with a single direction any arrow works.
  const out = grip === 'overhang-front' ? -1 : 1;
  const sideways: Readonly<Record<string, number>> = {ArrowRight: step, ArrowLeft: -step, PageUp: out * page, PageDown: -out * page, Home: -out * 1e4, End: out * 1e4};
  const upward: Readonly<Record<string, number>> = {ArrowUp: step, ArrowDown: -step};
  const turn = free === 'up' ? {...upward, ArrowRight: step, ArrowLeft: -step, PageUp: page, PageDown: -page, Home: -1e4, End: 1e4} : upward;
  const alone = free === 'along' ? {...sideways, ArrowUp: step, ArrowDown: -step} : sideways;
  return [free === 'up' ? 0 : alone[key] ?? 0, free === 'along' ? 0 : turn[key] ?? 0];
}
