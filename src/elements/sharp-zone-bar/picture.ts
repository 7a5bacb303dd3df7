import {nothing, svg, type SVGTemplateResult} from 'lit';
import {across, curve, inPanel, leaning, onSheet, panelTop, planeLine, pointList, silhouette, slab, ticks, up, type Sheet} from './draw.js';
import type {Reading} from './reading.js';
import {length, pixels} from './words.js';

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
  <text x=${across(sheet, 0) - 6} y=${sheet.table - 6} text-anchor="end">front</text>
  <text x=${across(sheet, outline.baseDepth) + 6} y=${sheet.table - 6}>back</text>`;
}

/** Which side the camera is on, and how far it looks down. */
function camera(sheet: Sheet, tilt: number): SVGTemplateResult {
  const y = Math.max(sheet.ceiling + 16, sheet.table - sheet.top * sheet.scale * 0.55);
  return svg`<g transform="translate(18 ${y}) rotate(${tilt})">
    <path class="line" d="M-13 -8H3V8H-13ZM3 -6H12V6H3M-10 -8L-8.5 -12H-2L-0.5 -8M9 -6V6"></path>
    <path class="line" d="M18 0H34M30 -3L34 0L30 3"></path>
  </g>
  <text x="3" y=${y + 27}>camera</text>`;
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

/** Blur in finished pixels along the ruler against the limit. */
function blurPanel(sheet: Sheet, reading: Reading): SVGTemplateResult {
  const {shot: {blurLimit}, blurFront, blurBack, blurAt, from, to, nearest} = reading;
  const {floor, width, table} = sheet;
  const most = panelTop(blurLimit, [blurFront, blurBack]);
  const line = (start: number, end: number): string => pointList(curve(sheet, Math.max(start, nearest), end, most, blurAt));
  const crowded = across(sheet, reading.back) - across(sheet, reading.front) < 96;
  const limitY = inPanel(sheet, blurLimit, most);
  return svg`<line class="line fine" x1="0" y1=${floor} x2=${width} y2=${floor}></line>
    <line class="limit" x1="0" y1=${limitY} x2=${width} y2=${limitY}></line>
    <text x="0" y=${limitY - 5}>limit ${pixels(blurLimit)}</text>
    ${[from, to].map((mark) => (across(sheet, mark) > 0 && across(sheet, mark) < width
      ? svg`<line class="bound" x1=${across(sheet, mark)} y1=${table + 9} x2=${across(sheet, mark)} y2=${floor}></line>` : nothing))}
    <g clip-path="url(#panel)">
      <polyline class="curve" points=${line(-Infinity, from)}></polyline>
      <polyline class="curve sharp" points=${line(from, to)}></polyline>
      <polyline class="curve" points=${line(to, Infinity)}></polyline>
    </g>
    ${endDot(sheet, reading.front, blurFront, most, blurLimit, true, crowded)}
    ${endDot(sheet, reading.back, blurBack, most, blurLimit, false, crowded)}
    <text x="0" y=${floor + 15} class="quiet">blur, in pixels of the finished picture</text>`;
}

function endDot(sheet: Sheet, mark: number, blur: number, most: number, limit: number, front: boolean, crowded: boolean): SVGTemplateResult {
  const x = across(sheet, mark);
  const above = blur > most;
  const y = above ? sheet.panel + 6 : inPanel(sheet, blur, most);
  // The curve falls towards the focus plane: above it on that side nothing is in the way, unless both ends are close.
  const inside = front !== crowded;
  return svg`<line class="leader" x1=${x} y1=${sheet.table} x2=${x} y2=${sheet.floor}></line>
    ${above ? svg`<path class="dot" d="M${x} ${y - 6}l5 8h-10Z"></path>` : svg`<circle class="dot ${blur > limit ? '' : 'sharp'}" cx=${x} cy=${y} r="4"></circle>`}
    <text x=${x + (inside ? 7 : -7)} y=${y - 6} text-anchor=${inside ? 'start' : 'end'}>${pixels(blur)}</text>`;
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
    <text x=${x + (end ? -15 : 15)} y=${y + 18} text-anchor=${end ? 'end' : 'start'} class="moves">focus ${focus < 0 ? '−' : ''}${length(focus, unit)}</text>`;
}

/** All of it but the handle. */
export function picture(sheet: Sheet, reading: Reading): SVGTemplateResult {
  return svg`${definitions(sheet, reading)}
    <g aria-hidden="true">
      ${sideView(sheet, reading)}${camera(sheet, reading.shot.tilt)}
      ${ruler(sheet, reading)}${blurPanel(sheet, reading)}${focusPlane(sheet, reading)}
    </g>`;
}
