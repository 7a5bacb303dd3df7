import {nothing, svg, type SVGTemplateResult} from 'lit';
import {axialDepth, outlinePoints, type Outline} from '../../core/optics/outline.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import type {Shot} from '../../core/shot/shot.js';
import {acrossTo, headRadius, plane, silhouette, slab, spots, ticks, upTo, type CameraView, type Sheet, type Spot} from './draw.js';
import {tipHeight} from './handles.js';
import {focusText, tiltText} from './speech.js';
import type {PlanWords} from './words/en.js';

/** Room that a letter takes, px; more than most do. */
const LETTER_PX = 7;

/** Everything of the drawing but what can be taken hold of. */
export function picture(words: PlanWords, sheet: Sheet, camera: CameraView, outline: Outline, way: PlanWay | undefined, shot: Shot): SVGTemplateResult {
  const {width, table} = sheet;
  const top = Math.max(...outlinePoints(outline).map(({z}) => z), 1) + 8 / sheet.scale;
  const {base, body} = silhouette(sheet, outline);
  const zone = way && slab(sheet, way.zone.from, way.zone.to, shot.tilt, top * 1.5);
  const soft = headRadius(outline);
  const onSheet = (spot: Spot | undefined): number => Math.min(width, Math.max(camera.mark[0] + 44, spot?.[0] ?? 0));
  const edge = Math.max(4, acrossTo(sheet, Math.min(0, -shot.overhangFront)) - 34);
  const left = (edge - sheet.left) / sheet.scale;
  return svg`<defs>
      <pattern id="hatch" width="4.5" height="4.5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line x1="0.5" y1="0" x2="0.5" y2="4.5" class="hatch"></line>
      </pattern>
      <clipPath id="above"><rect x="0" y="-200" width=${width} height=${table + 200}></rect></clipPath>
      ${zone ? svg`<clipPath id="zone"><polygon points=${spots(slab(sheet, way.zone.from - soft, way.zone.to + soft, shot.tilt, top * 1.5))}></polygon></clipPath>` : nothing}
    </defs>
    <g aria-hidden="true">
      ${way ? svg`<g clip-path="url(#above)">${camera.cone.map((piece) => cone(piece))}</g>` : nothing}
      <path class="soft" d=${base}></path><path class="soft" d=${body}></path>
      ${way ? svg`<g clip-path="url(#zone)"><path class="solid" d=${base}></path><path class="solid" d=${body}></path></g>
        ${focusPlanes(words, sheet, way, shot, top)}` : nothing}
      ${zone ? svg`<path class="sharp" d="M${onSheet(zone[0])} ${table + 2.5}H${onSheet(zone[3])}"></path>` : nothing}
      ${waiting(sheet, shot)}
      <path class="line" d="M${Math.min(edge, camera.mark[0] + 44)} ${table}H${width}"></path>
      ${ticks(sheet, shot.unit, left, (width - sheet.left) / sheet.scale).map(({x, value}) => svg`
        <path class="fine" d="M${x.toFixed(1)} ${table}v${value === undefined ? 8 : 11}"></path>
        ${value !== undefined && x > edge + 6 && x < width - 8
          ? svg`<text class="quiet" x=${x} y=${table + 23} text-anchor="middle">${words.say.number(value, 3)}</text>` : nothing}`)}
      ${camera.broken ? svg`<g clip-path="url(#above)">${breakMark(camera, camera.broken)}</g>` : nothing}
      ${way ? svg`<polyline class="axis" points=${spots([camera.pupil, camera.aim])}></polyline>` : nothing}
      ${cameraBody(words, sheet, camera, way, shot)}
    </g>`;
}

/** A tip that reaches nowhere yet waits over the base's edge. */
function waiting(sheet: Sheet, shot: Shot): readonly SVGTemplateResult[] {
  return (['Front', 'Back'] as const).filter((end) => !shot[`overhang${end}`]).map((end) => {
    const x = acrossTo(sheet, end === 'Front' ? 0 : shot.baseDepth);
    return svg`<path class="leader" d="M${x} ${sheet.table}V${upTo(sheet, tipHeight(shot, end))}"></path>`;
  });
}

function cone(piece: readonly Spot[]): SVGTemplateResult {
  const [one, two, three, four] = piece;
  if (!one || !two || !three || !four) return svg``;
  return svg`<polygon class="view" points=${spots(piece)}></polygon>
    <polyline class="fine" points=${spots([one, two])}></polyline><polyline class="fine" points=${spots([three, four])}></polyline>`;
}

function focusPlanes(words: PlanWords, sheet: Sheet, way: PlanWay, shot: Shot, top: number): SVGTemplateResult {
  const ends = way.frames.map((mark) => plane(sheet, mark, shot.tilt, top));
  const [, head] = plane(sheet, way.focus, shot.tilt, top);
  const label = focusText(words, way, shot);
  const right = head[0] + label.length * LETTER_PX > sheet.width;
  return svg`${ends.map((line) => svg`<polyline class="focus" points=${spots(line)}></polyline>`)}
    <text class="on-paper" x=${right ? sheet.width : head[0] + 2} y=${head[1] - 6} text-anchor=${right ? 'end' : 'start'}>${label}</text>`;
}

/** A stretch is left out: two strokes across the axis and across either edge of the view. */
function breakMark({tilt}: CameraView, {at: [x, y], half}: {readonly at: Spot; readonly half: number}): SVGTemplateResult {
  const strokes = [-half, 0, half].map((aside) => [-3, 3].map((along) => `M${along - 2.5} ${(aside + 7).toFixed(1)}l5 -14`).join('')).join('');
  return svg`<path class="fine" transform="translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${tilt})" d=${strokes}></path>`;
}

function cameraBody(words: PlanWords, sheet: Sheet, {mark: [x, y], pupil, tilt}: CameraView, way: PlanWay | undefined, shot: Shot): SVGTemplateResult {
  const barrel = Math.hypot(pupil[0] - x, pupil[1] - y);
  const floor = Math.max(sheet.table, y + 26);
  const label = Math.min(y - 26, y - 20 - Math.abs(axialDepth(0, 10, tilt)));
  const start = Math.max(2, x - 42);
  return svg`<path class="fine" d="M${x} ${y + 12}V${floor}M${x} ${y + 16}L${x - 14} ${floor}M${x} ${y + 16}L${x + 14} ${floor}"></path>
    <g transform="translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${tilt})">
      <path class="body" d="M-9 -14H10V14H-9ZM-5 -14L-3 -19H6L8 -14M10 -9H${barrel.toFixed(1)}V9H10"></path>
      <path class="fine" d="M0 -11V11"></path>
    </g>
    ${way ? svg`<text class="on-paper" x=${start} y=${label - 16}>${words.camera(words.say.length(way.cameraDistance, shot.unit), tiltText(words, shot.tilt))}</text><text class="quiet on-paper" x=${start} y=${label}>${words.mark}</text>`
      : svg`<text x=${start} y=${label}>${words.noPlace}</text>`}`;
}

