import {html, nothing, svg, type SVGTemplateResult, type TemplateResult} from 'lit';
import {compareSharpness} from '../../../core/tone/sharpness-change.js';
import {round} from '../photo/draw.js';
import {
  blurMarks, cellPaths, judge, judgedStretches, profileLayout, profilePath, roughScale, scaleOf, sharpUpTo, stretchesBy, xOf, yOf, type ProfileLayout,
} from './draw.js';
import type {Heat} from './heat.js';
import type {LineEnd, LineShare} from '../places.js';
import type {LineReading} from './reading.js';
import {changeOf, type Change} from './names.js';
import {curveText, type Places} from './speech.js';
import type {SharpnessWords} from './words/en.js';

/** What the profile is drawn of. */
export interface ProfileView {
  readonly words: SharpnessWords;
  readonly reading: LineReading;
  /** Finished pixels to a pixel of the photo. */
  readonly perPixel: number;
  /** Blur that still looks sharp, finished px. */
  readonly limit: number;
  readonly width: number;
  readonly places: Places;
}

/** Least room between two places written under the line, px. */
const PLACE_ROOM = 84;
/** Height of the strips under the curve, px. */
const STRIP = 9;

/** Blur along the line: sharp is low. Solid ink is sharp, hatching unknown. */
export function profileDrawing({words, reading, perPixel, limit, width, places}: ProfileView): TemplateResult {
  const {points, before, comparison, focus} = reading;
  const known = [...points, ...before ?? []].flatMap(({blur}) => (blur === null ? [] : [blur * perPixel]));
  const own = points.flatMap(({blur}) => (blur === null ? [] : [blur * perPixel]));
  const scale = scaleOf(points.map(({blur}) => blur), limit / perPixel);
  const layout = profileLayout(width, Math.max(4 * limit, ...known), comparison ? 2 * STRIP + 29 : STRIP + 23);
  const {left, right, top, base, height} = layout;
  const stretches = scale ? judgedStretches(points, scale) : [{from: 0, to: 1, sharpness: 'unknown' as const}];
  const changes = comparison && stretchesBy(comparison.points, changeOf);
  const focusX = focus && xOf(layout, focus.along);
  return html`<svg class="profile" part="sharpness" role="img" width=${width} height=${height} viewBox="0 0 ${width} ${height}"
      aria-label=${curveText(words, Math.min(...own), Math.max(...own), points.length, own.length)}>
    ${hatches('profile', 4)}
    ${stretches.filter(({sharpness}) => sharpness === 'unknown').map(({from, to}) => svg`<rect class="not-known" x=${xOf(layout, from)} y=${top}
      width=${round(Math.max(1, xOf(layout, to) - xOf(layout, from)))} height=${base - top}></rect>`)}
    <path class="ruled" d="M${left} ${top}V${base}H${right}"></path>
    ${blurMarks(layout).map((mark) => svg`<path class="hair" d="M${left - 4} ${yOf(layout, mark)}h4"></path>
      <text class="end small faint" x=${left - 7} y=${yOf(layout, mark) + 4}>${words.say.number(mark)}</text>`)}
    <text class="small faint" x="0" y=${top - 8}>px ↑ ${words.softerUp}</text>
    ${scale ? svg`<path class="hair dotted" d="M${left} ${yOf(layout, sharpUpTo(scale) * perPixel)}H${right}"></path>` : nothing}
    ${before ? svg`<path class="line earlier" d=${profilePath(layout, before, perPixel)}></path>` : nothing}
    <path class="line now" d=${profilePath(layout, points, perPixel)}></path>
    ${stretches.filter(({sharpness}) => sharpness === 'sharp').map(({from, to}) => svg`<rect class="kept" x=${xOf(layout, from)} y=${base + 3}
      width=${round(Math.max(2, xOf(layout, to) - xOf(layout, from)))} height=${STRIP}></rect>`)}
    ${changes?.map(({from, to, of}) => changeStrip(layout, from, to, of))}
    ${focus && focusX !== undefined ? svg`<path class="focus" d="M${focusX} ${top}V${base + 3}M${xOf(layout, Math.max(0, focus.along - focus.within))} ${top}H${xOf(layout, Math.min(1, focus.along + focus.within))}"></path>` : nothing}
    ${placesUnder(layout, places, comparison ? STRIP + 6 : 0)}
  </svg>`;
}

function changeStrip(layout: ProfileLayout, from: number, to: number, change: Change): SVGTemplateResult {
  const [x, wide] = [xOf(layout, from), round(Math.max(1, xOf(layout, to) - xOf(layout, from)))];
  const y = layout.base + STRIP + 6;
  return change === 'alike' ? svg`<path class="ruled" d="M${x} ${y + STRIP / 2}h${wide}"></path>`
    : change === 'unknown' ? svg`<path class="dots" d="M${x} ${y + STRIP / 2}h${wide}"></path>`
      : svg`<rect class=${change} x=${x} y=${y} width=${wide} height=${STRIP}></rect>`;
}

/** Places written under the line: both ends, and between them as many as there is room for. */
function placesUnder(layout: ProfileLayout, {write}: Places, down: number): SVGTemplateResult[] {
  const y = layout.base + STRIP + 18 + down;
  const between = Math.max(1, Math.min(4, Math.floor((layout.right - layout.left) / PLACE_ROOM)));
  return Array.from({length: between + 1}, (_, at) => {
    const along = at / between;
    const anchor = at === 0 ? '' : at === between ? 'end ' : 'middle ';
    const letter = at === 0 ? 'A' : at === between ? 'B' : '';
    const text = write(along);
    return svg`<text class=${`${anchor}small`} x=${xOf(layout, along)} y=${y}>${letter && text !== letter ? `${letter} ${text}` : text}</text>`;
  });
}

/** Patterns of a drawing, named for it. Sizes go with what is drawn: CSS px, or pixels of the photo. */
function hatches(drawing: string, size: number): SVGTemplateResult {
  const pattern = (name: string, turn: number, look: string, wide: number) => svg`<pattern id=${`${drawing}-${name}`} width=${wide} height=${wide}
    patternUnits="userSpaceOnUse" patternTransform="rotate(${turn})"><path class=${look} d="M${wide / 2} 0V${wide}" stroke-width=${size * 0.3}></path></pattern>`;
  return svg`<defs>${pattern('unknown', 45, 'ink-hatch', size * 1.5)}${pattern('softer', -45, 'ink-hatch', size)}
    ${pattern('near', 45, 'accent-hatch', size)}${pattern('soft', -45, 'pale-hatch', size * 1.7)}</defs>`;
}

// —— over the photo ——

/** What lies over the photo: the heat in squares, and the line with its two ends. */
export function overPhoto(
  words: SharpnessWords, line: LineShare | undefined, heat: Heat | undefined, change: boolean, limit: number, picture: {readonly width: number; readonly height: number},
): TemplateResult {
  return html`${heat ? heatDrawing(heat, change, limit, picture) : nothing}${line ? lineDrawing(words, line) : nothing}`;
}

function heatDrawing(heat: Heat, change: boolean, limit: number, {width, height}: {readonly width: number; readonly height: number}): TemplateResult {
  const {crop} = heat;
  return html`<svg class="heat" aria-hidden="true" viewBox="0 0 ${width} ${height}">${hatches('heat', heat.cell / 2.5)}
    <clipPath id="heat-crop"><rect x=${crop.x} y=${crop.y} width=${crop.width} height=${crop.height}></rect></clipPath>
    <g clip-path="url(#heat-crop)">${[...cellPaths<string>(heatNames(heat, change, limit), heat, 'unknown')].map(([name, path]) =>
      (name === 'waiting' ? nothing : svg`<path class="cell ${name}" d=${path}></path>`))}</g></svg>`;
}

function heatNames({blur, before}: Heat, change: boolean, limit: number): readonly string[] {
  if (change && before) {
    const points = (of: Heat['blur']) => of.map((value) => ({along: 0, x: 0, y: 0, blur: value ?? null}));
    return compareSharpness(points(before), points(blur)).points.map((point, at) =>
      (blur[at] === undefined || before[at] === undefined ? 'waiting' : changeOf(point)));
  }
  const scale = scaleOf(blur.map((value) => value ?? null), limit);
  return blur.map((value) => (value === undefined ? 'waiting' : scale ? judge(value, roughScale(scale)) : 'unknown'));
}

function lineDrawing(words: SharpnessWords, {a, b}: LineShare): TemplateResult {
  const per = (share: number) => `${round(share * 1000) / 10}%`;
  const middle = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] as const;
  const at = (x: number, y: number, inside: SVGTemplateResult) => svg`<svg x=${per(x)} y=${per(y)} width="1" height="1" overflow="visible">${inside}</svg>`;
  const stroke = (look: string) => svg`<line class=${look} x1=${per(a[0])} y1=${per(a[1])} x2=${per(b[0])} y2=${per(b[1])}></line>`;
  const end = (name: LineEnd, [x, y]: LineShare['a']) => at(x, y, svg`<g class="end-of-line" data-end=${name} tabindex="0" role="slider"
    aria-label=${words.line[name]} aria-describedby="line-keys" aria-valuemin="0" aria-valuemax="100" aria-valuenow=${Math.round(x * 100)}
    aria-valuetext=${words.endAt(words.say.percent(x), words.say.percent(y))}><circle class="hit" r="20"></circle><circle class="grip" r="9"></circle>
    <text class="letter" y="4">${name === 'a' ? 'A' : 'B'}</text></g>`);
  return html`<svg class="over-line">${stroke('line-edge')}${stroke('line-core')}
    ${at(middle[0], middle[1], svg`<path class="line-edge" d="M-6 0H6M0 -6V6"></path><path class="line-core" d="M-6 0H6M0 -6V6"></path>`)}
    ${end('a', a)}${end('b', b)}</svg>`;
}

/** What the squares over the photo mean. */
export function heatLegend(words: SharpnessWords, change: boolean): TemplateResult {
  const names: readonly (readonly [string, string])[] = Object.entries(change ? words.changeNames : words.heatNames);
  return html`<ul class="legend">${names.map(([name, text], at) => html`<li><svg class="swatch" viewBox="0 0 20 20" aria-hidden="true">
    ${at === 0 ? hatches('legend', 6) : nothing}
    <rect class="ground" width="20" height="20"></rect>${name === 'unknown' ? svg`<circle class="cell unknown" cx="10" cy="10" r="2.2"></circle>`
    : svg`<rect class="cell ${name}" width="20" height="20"></rect>`}</svg>${text}</li>`)}</ul>`;
}
