import {nothing, svg, type SVGTemplateResult} from 'lit';
import {across, beside, leaning, onSheet, planeLine, pointList, silhouette, slab, up, type Sheet} from './draw.js';
import {drawPanel, type Panel} from './panel.js';
import type {Reading} from './reading.js';
import {markText} from './speech.js';
import {ticks} from './ticks.js';
import type {ZoneWords} from './words/en.js';

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
  </g>`;
}

/** Which side the camera is on, and how far it looks down. */
function camera(words: ZoneWords, sheet: Sheet, tilt: number): SVGTemplateResult {
  const y = Math.max(sheet.ceiling + 16, sheet.table - sheet.top * sheet.scale * 0.55);
  return svg`<g transform="translate(18 ${y}) rotate(${tilt})">
    <path class="line" d="M-13 -8H3V8H-13ZM3 -6H12V6H3M-10 -8L-8.5 -12H-2L-0.5 -8M9 -6V6"></path>
    <path class="line" d="M18 0H34M30 -3L34 0L30 3"></path>
  </g>
  ${y + 30 < sheet.table ? svg`<text x="3" y=${y + 27}>${words.camera}</text>` : nothing}`;
}

/** The engraved scale under the table line: above it a bar, solid where it is sharp and hatched where it is soft. */
function ruler({say}: ZoneWords, sheet: Sheet, {from, to, shot: {unit}}: Reading): SVGTemplateResult {
  const {table, width} = sheet;
  const [x1, x2] = [onSheet(sheet, from), onSheet(sheet, to)];
  const marks = ticks(sheet, unit, (value) => say.number(value, 2));
  return svg`<rect class="soft bare" x="0" y=${table} width=${width} height="9"></rect>
    <rect class="solid" part="bar" x=${x1} y=${table} width=${Math.max(0, x2 - x1)} height="9"></rect>
    <line class="line" x1="0" y1=${table} x2=${width} y2=${table}></line>
    <line class="line" x1="0" y1=${table + 9} x2=${width} y2=${table + 9}></line>
    <path class="line fine" d=${marks.map(({x, long}) => `M${x.toFixed(1)} ${table + 9}v${[4, 6.5, 9][long]}`).join('')}></path>
    ${marks.map(({x, label}) => (label && x > 20 && x < width - 42 ? svg`<text x=${x} y=${table + 31} text-anchor="middle">${label}</text>` : nothing))}
    <text x=${width} y=${table + 31} text-anchor="end" class="quiet">${unit}</text>`;
}

/** Which numbers of the ruler the base stands between. */
function edges(words: ZoneWords, sheet: Sheet, {shot: {baseDepth, focus}}: Reading): SVGTemplateResult {
  const off = across(sheet, focus);
  return svg`${([[words.front, 0, 'end'], [words.back, baseDepth, 'start']] as const).map(([text, mark, side]) => {
    const {x, anchor} = beside(sheet, text, across(sheet, mark), 0, side, off);
    return svg`<text x=${x} y=${sheet.edges} text-anchor=${anchor} class="quiet">${text}</text>`;
  })}`;
}

/** Focus planes of the frames of a stack, at their marks. */
function stackPlanes(sheet: Sheet, frames: readonly number[], {shot: {tilt}}: Reading): SVGTemplateResult {
  return svg`<g clip-path="url(#view)">${frames.map((focus) => {
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
export function focusHandle(words: ZoneWords, sheet: Sheet, {shot: {focus, unit}}: Reading): SVGTemplateResult {
  const x = Math.min(sheet.width - 10, Math.max(10, across(sheet, focus)));
  const {table, tab, panel} = sheet;
  const text = words.focusMark(markText(words, focus, unit));
  const word = beside(sheet, text, x, 17, x > sheet.width / 2 ? 'end' : 'start');
  return svg`<rect class="hit" x=${x - 22} y=${table - 4} width="44" height=${panel - table + 8}></rect>
    <rect class="ring" x=${x - 13} y=${tab - 4} width="26" height="32" rx="3"></rect>
    <path class="tab" part="handle" d="M${x} ${tab}l9 10v12h-18v-12Z"></path>
    <text x=${word.x} y=${tab + 19} text-anchor=${word.anchor} class="moves">${text}</text>`;
}

/** All of it but the handle: a curve under the ruler, and a stack's frames. */
export function picture(words: ZoneWords, sheet: Sheet, reading: Reading, panel: Panel, frames: readonly number[]): SVGTemplateResult {
  return svg`${definitions(sheet, reading)}
    <g aria-hidden="true">
      ${sideView(sheet, reading)}${stackPlanes(sheet, frames, reading)}${camera(words, sheet, reading.shot.tilt)}
      ${ruler(words, sheet, reading)}${edges(words, sheet, reading)}${drawPanel(sheet, reading, panel)}
      ${focusPlane(sheet, reading)}
    </g>`;
}
