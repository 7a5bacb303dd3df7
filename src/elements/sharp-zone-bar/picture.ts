import {nothing, svg, type SVGTemplateResult} from 'lit';
import {across, curve, inPanel, leaning, onSheet, panelTop, planeLine, pointList, silhouette, slab, ticks, up, type Sheet} from './draw.js';
import type {Reading} from './reading.js';
import type {Stack} from '../../core/optics/stack.js';
import type {DetailContrast} from './detail.js';
import {percent, pixels} from './lengths.js';
import {MARKS, PANELS} from './words.js';

/** Patterns and windows that the drawing refers to. */
function definitions(sheet: Sheet, reading: Reading): SVGTemplateResult {
  const {width, panel, floor, table} = sheet;
  return svg`<defs>
    <pattern id="hatch" width="4.5" height="4.5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line x1="0.5" y1="0" x2="0.5" y2="4.5" class="hatch"></line>
    </pattern>
    <clipPath id="view"><rect x="0" y="0" width=${width} height=${table}></rect></clipPath>
    <clipPath id="panel"><rect x="0" y=${panel} width=${width} height=${floor - panel + 1}></rect></clipPath>
    <clipPath id="zone"><polygon points=${pointList(slab(sheet, reading.from, reading.to, reading.shot.tilt))}></polygon></clipPath>
  </defs>`;
}

/** From the side: what is sharp is solid, what is soft is hatched. */
function sideView(sheet: Sheet, reading: Reading): SVGTemplateResult {
  const {framing: {outline}, shot: {tilt}, fit: {depth: {foremost, rearmost}}} = reading;
  const {body, base} = silhouette(sheet, outline);
  const zone = slab(sheet, reading.from, reading.to, tilt);
  const [fx1, fy1, fx2, fy2] = planeLine(sheet, reading.from, tilt);
  const [tx1, ty1, tx2, ty2] = planeLine(sheet, Math.min(reading.to, sheet.right * 9 + 9e3), tilt);
  return svg`<g clip-path="url(#view)">
    <polygon class="wash" part="zone" points=${pointList(zone)}></polygon>
    <line class="bound" x1=${fx1} y1=${fy1} x2=${fx2} y2=${fy2}></line>
    <line class="bound" x1=${tx1} y1=${ty1} x2=${tx2} y2=${ty2}></line>
    <path class="soft" d=${base}></path>
    <path class="soft" d=${body}></path>
    <g clip-path="url(#zone)"><path class="solid" d=${base}></path><path class="solid" d=${body}></path></g>
    ${[[foremost, reading.front] as const, [rearmost, reading.back] as const].map(([{y, z}, mark]) => z > 0
      ? svg`<line class="leader" x1=${across(sheet, y)} y1=${up(sheet, z)} x2=${across(sheet, mark)} y2=${sheet.table}></line>` : nothing)}
  </g>
  <text x=${across(sheet, 0) - 6} y=${sheet.table - 6} text-anchor="end">${MARKS.front}</text>
  <text x=${across(sheet, outline.baseDepth) + 6} y=${sheet.table - 6}>${MARKS.back}</text>`;
}

/** Which side the camera is on, and how far it looks down. */
function camera(sheet: Sheet, tilt: number): SVGTemplateResult {
  const y = Math.max(sheet.ceiling + 16, sheet.table - sheet.top * sheet.scale * 0.55);
  return svg`<g transform="translate(18 ${y}) rotate(${tilt})">
    <path class="line" d="M-13 -8H3V8H-13ZM3 -6H12V6H3M-10 -8L-8.5 -12H-2L-0.5 -8M9 -6V6"></path>
    <path class="line" d="M18 0H34M30 -3L34 0L30 3"></path>
  </g>
  <text x="3" y=${y + 27}>${MARKS.camera}</text>`;
}

/** The engraved scale under the table line: above it a bar, solid where it is sharp and hatched where it is soft. */
function ruler(sheet: Sheet, {from, to, shot: {unit}}: Reading): SVGTemplateResult {
  const {table, width} = sheet;
  const [x1, x2] = [onSheet(sheet, from), onSheet(sheet, to)];
  const marks = ticks(sheet, unit);
  return svg`<rect class="soft bare" x="0" y=${table} width=${width} height="9"></rect>
    <rect class="solid" part="bar" x=${x1} y=${table} width=${Math.max(0, x2 - x1)} height="9"></rect>
    <line class="line" x1="0" y1=${table} x2=${width} y2=${table}></line>
    <line class="line" x1="0" y1=${table + 9} x2=${width} y2=${table + 9}></line>
    <path class="line fine" d=${marks.map(({x, long}) => `M${x.toFixed(1)} ${table + 9}v${[4, 6.5, 9][long]}`).join('')}></path>
    ${marks.map(({x, label}) => (label && x > 8 && x < width - 26 ? svg`<text x=${x} y=${table + 30} text-anchor="middle">${label}</text>` : nothing))}
    <text x=${width} y=${table + 30} text-anchor="end" class="quiet">${unit}</text>`;
}

/** What a curve comes to at one end of the figure, and whether that will do. */
interface PanelEnd {
  readonly value: number;
  readonly label: string;
  readonly good: boolean;
}

/** A curve along the ruler, thick where it is sharp, and what it comes to at both ends of the figure. */
interface Panel {
  readonly most: number;
  readonly value: (mark: number) => number;
  /** Value of the dashed line, and what it is called. */
  readonly line: number;
  readonly lineLabel: string;
  readonly caption: string;
  readonly ends: readonly [PanelEnd, PanelEnd];
  /** Curves that fall towards the focus plane leave room for words above them on that side. */
  readonly falls: boolean;
}

/** Blur in finished pixels against the limit. */
function blurPanel({shot: {blurLimit}, blurFront, blurBack, blurAt}: Reading): Panel {
  const end = (blur: number): PanelEnd => ({value: blur, label: pixels(blur), good: blur <= blurLimit});
  return {
    most: panelTop(blurLimit, [blurFront, blurBack]), value: blurAt, line: blurLimit, lineLabel: PANELS.limit(blurLimit),
    caption: PANELS.blur, ends: [end(blurFront), end(blurBack)], falls: true,
  };
}

/** Room below zero, where light and dark change places. */
const BELOW = 0.16;

/** Contrast of a detail, from a little below nothing to all of it. */
function contrastPanel({at, front, back}: DetailContrast, reading: Reading): Panel {
  const end = (kept: number | null, mark: number): PanelEnd => ({
    value: at(mark) + BELOW, label: kept === null ? PANELS.lostAt : percent(kept), good: kept !== null,
  });
  return {
    most: 1 + BELOW, value: (mark) => at(mark) + BELOW, line: BELOW, lineLabel: PANELS.lost, caption: PANELS.contrast,
    ends: [end(front, reading.front), end(back, reading.back)], falls: false,
  };
}

function drawPanel(sheet: Sheet, {from, to, nearest, front, back}: Reading, panel: Panel): SVGTemplateResult {
  const {floor, width, table} = sheet;
  const {most, value, line, ends} = panel;
  const points = (start: number, end: number): string => pointList(curve(sheet, Math.max(start, nearest), end, most, value));
  const lineY = inPanel(sheet, line, most);
  const crowded = across(sheet, back) - across(sheet, front) < 96;
  // The label stands at the left unless the curve runs there; then where the curve is certain to be below the line.
  const runs = panel.falls && inPanel(sheet, value(Math.max(sheet.left, nearest)), most) > lineY - 34;
  return svg`<line class="line fine" x1="0" y1=${floor} x2=${width} y2=${floor}></line>
    <line class="limit" x1="0" y1=${lineY} x2=${width} y2=${lineY}></line>
    <text x=${runs ? onSheet(sheet, from) + 6 : 0} y=${lineY - 5}>${panel.lineLabel}</text>
    ${[from, to].map((mark) => (across(sheet, mark) > 0 && across(sheet, mark) < width
      ? svg`<line class="bound" x1=${across(sheet, mark)} y1=${table + 9} x2=${across(sheet, mark)} y2=${floor}></line>` : nothing))}
    <g clip-path="url(#panel)">
      <polyline class="curve" points=${points(-Infinity, from)}></polyline>
      <polyline class="curve sharp" points=${points(from, to)}></polyline>
      <polyline class="curve" points=${points(to, Infinity)}></polyline>
    </g>
    ${([front, back] as const).map((mark, at) => endDot(sheet, mark, most, ends[at] as PanelEnd, (at === 0) !== (crowded || !panel.falls)))}
    ${panel.falls ? nothing : svg`<text x=${width} y=${sheet.panel + 4} text-anchor="end" class="quiet">${percent(1)}</text>
      <line class="line fine" x1=${width - 46} y1=${sheet.panel} x2=${width - 36} y2=${sheet.panel}></line>`}
    <text x="0" y=${floor + 15} class="quiet">${panel.caption}</text>`;
}

function endDot(sheet: Sheet, mark: number, most: number, {value, label, good}: PanelEnd, rightwards: boolean): SVGTemplateResult {
  const x = across(sheet, mark);
  const above = value > most;
  const y = above ? sheet.panel + 6 : inPanel(sheet, value, most);
  return svg`<line class="leader" x1=${x} y1=${sheet.table} x2=${x} y2=${sheet.floor}></line>
    ${above ? svg`<path class="dot" d="M${x} ${y - 6}l5 8h-10Z"></path>` : svg`<circle class="dot ${good ? 'sharp' : ''}" cx=${x} cy=${y} r="4"></circle>`}
    <text x=${x + (rightwards ? 7 : -7)} y=${y - 6} text-anchor=${rightwards ? 'start' : 'end'}>${label}</text>`;
}

/** Focus planes of the frames of a stack. */
function stackPlanes(sheet: Sheet, frames: Stack['frames'], {shot: {tilt}}: Reading): SVGTemplateResult {
  return svg`<g clip-path="url(#view)">${frames.map(({focus}) => {
    const [x1, y1, x2, y2] = planeLine(sheet, focus, tilt);
    return svg`<line class="frame" x1=${x1} y1=${y1} x2=${x2} y2=${y2}></line>`;
  })}</g>`;
}

/** The focus plane through the whole sheet; the handle itself is drawn by {@link focusHandle}. */
function focusPlane(sheet: Sheet, {shot: {tilt, focus}}: Reading): SVGTemplateResult {
  const [x, y, x2, y2] = [onSheet(sheet, focus), sheet.floor, onSheet(sheet, leaning(focus, sheet.top, tilt)), up(sheet, sheet.top)];
  return svg`<path class="focus" part="focus" d="M${x} ${y}V${sheet.table}L${x2} ${y2}"></path>`;
}

/** Tab under the ruler that can be taken hold of. */
export function focusHandle(sheet: Sheet, {shot: {focus, unit}}: Reading): SVGTemplateResult {
  const x = Math.min(sheet.width - 10, Math.max(10, across(sheet, focus)));
  const y = sheet.rulerEnd;
  const end = x > sheet.width / 2;
  return svg`<rect class="hit" x=${x - 22} y=${sheet.table - 4} width="44" height=${sheet.panel - sheet.table + 8}></rect>
    <path class="tab" part="handle" d="M${x} ${y - 2}l9 10v12h-18v-12Z"></path>
    <text x=${x + (end ? -15 : 15)} y=${y + 18} text-anchor=${end ? 'end' : 'start'} class="moves">${MARKS.focus(focus, unit)}</text>`;
}

/** All of it but the handle: with the contrast of a detail in place of the blur when it is given, and a stack's frames. */
export function picture(
  sheet: Sheet, reading: Reading, contrast: DetailContrast | undefined, frames: Stack['frames'],
): SVGTemplateResult {
  return svg`${definitions(sheet, reading)}
    <g aria-hidden="true">
      ${sideView(sheet, reading)}${stackPlanes(sheet, frames, reading)}${camera(sheet, reading.shot.tilt)}
      ${ruler(sheet, reading)}${drawPanel(sheet, reading, contrast ? contrastPanel(contrast, reading) : blurPanel(reading))}
      ${focusPlane(sheet, reading)}
    </g>`;
}
