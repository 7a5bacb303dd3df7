import {html, nothing, svg, type SVGTemplateResult, type TemplateResult} from 'lit';
import type {Advice} from '../../../core/tone/advice.js';
import type {ChannelEdges, Edges} from '../../../core/tone/clipping.js';
import {CHANNELS, COLOUR_CHANNELS, type Channel, type Tally} from '../../../core/tone/tally.js';
import {GRAY_LIGHT} from '../../../core/tone/level.js';
import {codeFromLinear} from '../../../core/tone/light.js';
import {DEEPEST, clearPlace, crestOver, densities, layOut, outline, placeOfCode, rootHeight, round, scaleMarks, type Layout} from './draw.js';
import {chartText, roomText, scaleText} from './chart-speech.js';
import {shareText, tenths, valueText} from './shares.js';
import type {SheetWords} from './words/en.js';

/** Which chart is drawn. */
export type Shown = 'colours' | Channel;

/** What the drawing shows. */
export interface ChartView {
  readonly tally: Tally;
  readonly edges: Edges;
  readonly advice: Advice;
  readonly shown: Shown;
  /** The same crop of the earlier shot, drawn thin behind. */
  readonly earlier: Tally | undefined;
  /** CSS px the drawing gets. */
  readonly width: number;
}

/** Room a letter takes, px. */
const LETTER_ROOM = 12;
/** Share of the pixels that fills a well. */
const WELL_MOST = 0.25;
/** Less room than this is too narrow to draw a measure of, px. */
const MEASURE_ROOM = 8;
/** Lines over the chart: the measures of the room left, and the figures of the wells. */
const MEASURE_LINE = 19;
const FIGURE_LINE = 38;

/** The chart on a scale of light, with what is cut off in wells at its ends. */
export function chartDrawing(words: SheetWords, view: ChartView): TemplateResult {
  const {tally, edges, shown, earlier, width} = view;
  const channels = shown === 'colours' ? COLOUR_CHANNELS : [shown];
  const layout = layOut(width);
  const curves = channels.map((channel) => ({channel, density: densities(tally, channel)}));
  const thin = earlier ? channels.map((channel) => ({channel, density: densities(earlier, channel)})) : [];
  const most = Math.max(...[...curves, ...thin].map(({density}) => Math.max(...density))) || 1;
  return html`<svg class="chart" part="chart" role="img" aria-label=${chartText(words, channels.map((channel) => edges[channel]))}
    viewBox="0 0 ${layout.width} ${layout.height}">
    <defs><pattern id="gone" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="gone-line" d="M0 0V5"></path></pattern></defs>
    ${scale(words, layout)}
    ${shown === 'colours'
      ? curves.map(({channel, density}) => svg`<path class="line ${channel}" d=${outline(layout, density, most, false)}></path>`)
      : svg`<path class="soot" d=${outline(layout, (curves[0] as Curve).density, most, true)}></path>`}
    ${thin.map(({channel, density}) => svg`<path class="line earlier ${channel}" d=${outline(layout, density, most, false)}></path>`)}
    ${shown === 'colours' ? letters(words, layout, curves, most) : nothing}
    ${shown === 'colours' ? nothing : moved(layout, curves, most, view.advice)}
    ${well(words, layout, channels.map((channel) => edges[channel]), 'atBlack')}
    ${well(words, layout, channels.map((channel) => edges[channel]), 'atWhite')}
    ${measures(words, layout, channels.map((channel) => edges[channel]))}
  </svg>
  <p class="note">${scaleText(words, shown !== 'colours' && view.advice.thirds !== 0, earlier !== undefined)}</p>`;
}

interface Curve {
  readonly channel: Channel;
  readonly density: Float64Array;
}

function scale(words: SheetWords, layout: Layout): SVGTemplateResult {
  const {say} = words;
  const {left, right, base, top, well: wide, width} = layout;
  const gray = placeOfCode(layout, codeFromLinear(GRAY_LIGHT));
  return svg`
    <path class="ruled" d="M${left} ${base}H${right}${scaleMarks(layout).map(({x, length}) => `M${x} ${base}v${length}`).join('')}"></path>
    ${scaleMarks(layout).map(({x, stops: below, code}) => below === undefined || below === 0 ? nothing : svg`
      <text class="middle" x=${x} y=${base + 21}>${say.number(below)}</text>
      <text class="middle faint" x=${x} y=${base + 35}>${code === undefined ? nothing : valueText(say, code)}</text>`)}
    <text class="middle faint" x=${wide / 2} y=${base + 35}>0</text>
    <text class="middle faint" x=${width - wide / 2} y=${base + 35}>255</text>
    <text x="0" y=${base + 21}>${words.black}</text>
    <text class="end" x=${width} y=${base + 21}>${words.white}</text>
    <path class="hair dotted" d="M${gray} ${top}V${base}"></path>
    <text class="middle faint" x=${gray} y=${FIGURE_LINE}>${words.gray}</text>`;
}

/** A letter over each curve, where it stands clearest of the others; curves that are one get theirs side by side. */
function letters(words: SheetWords, layout: Layout, curves: readonly Curve[], most: number): SVGTemplateResult[] {
  const all = curves.map(({density}) => density);
  const taken: {x: number; y: number}[] = [];
  return curves.map(({channel, density}) => {
    let x = clearPlace(layout, density, all, most);
    const y = crestOver(layout, all, most, x, LETTER_ROOM) - 4;
    while (taken.some((other) => Math.abs(other.x - x) < LETTER_ROOM && Math.abs(other.y - y) < LETTER_ROOM)) x += LETTER_ROOM;
    taken.push({x, y});
    return svg`<text class="middle strong" x=${round(x)} y=${round(y)}>${words.letters[channel]}</text>`;
  });
}

/** Where the chart will stand once the advice is followed: on a scale of light an exposure only shifts it. */
function moved(layout: Layout, curves: readonly Curve[], most: number, {thirds, channel}: Advice): SVGTemplateResult | typeof nothing {
  const curve = curves.find((one) => one.channel === channel) ?? curves[0];
  if (thirds === 0 || !curve) return nothing;
  const {left, right, base, top} = layout;
  const by = round((right - left) / -DEEPEST * thirds / 3);
  return svg`<clipPath id="plot"><rect x=${left} y=${top - 2} width=${right - left} height=${base - top + 2}></rect></clipPath>
    <g clip-path="url(#plot)"><path class="moved" transform="translate(${by} 0)" d=${outline(layout, curve.density, most, false)}></path></g>`;
}

/** What lies at one edge: no part of the scale, since nobody knows how far beyond it reaches. */
function well(words: SheetWords, {width, base, top, well: wide}: Layout, edges: readonly ChannelEdges[], at: 'atBlack' | 'atWhite'): SVGTemplateResult {
  const start = at === 'atBlack' ? 0 : width - wide;
  const each = wide / edges.length;
  const most = Math.max(...edges.map((edge) => edge[at]));
  const lost = edges.some((edge) => edge[at === 'atBlack' ? 'blackLost' : 'whiteLost']);
  return svg`
    <path class=${lost ? 'ruled' : 'hair'} d="M${start} ${top}V${base}H${start + wide}V${top}"></path>
    ${edges.map((edge, place) => {
      const height = rootHeight(edge[at] / WELL_MOST, base - top);
      return height === 0 ? nothing
        : svg`<rect class="gone" x=${round(start + place * each + 0.5)} y=${round(base - height)} width=${round(each - 1)} height=${round(height)}></rect>
          ${edges.length > 1 ? svg`<text class="middle" x=${round(start + (place + 0.5) * each)} y=${round(base - height - 3)}>${words.letters[edge.channel]}</text>` : nothing}`;
    })}
    <text class=${`${at === 'atBlack' ? '' : 'end '}${lost ? 'strong' : ''}`} x=${at === 'atBlack' ? 0 : width} y=${FIGURE_LINE}>${shareText(words.say, most)}</text>`;
}

/** Measures of the room between the chart's ends and the edges, as on a drawing for a workshop. */
function measures(words: SheetWords, layout: Layout, edges: readonly ChannelEdges[]): SVGTemplateResult {
  const high = edges.reduce((most, one) => (one.brightest > most.brightest ? one : most));
  const low = edges.reduce((most, one) => (one.darkest < most.darkest ? one : most));
  const {width, right} = layout;
  return svg`
    ${measure(placeOfCode(layout, high.brightest), right, high.roomAbove, svg`<text class="end" x=${width} y=${MEASURE_LINE - 7}>${
      words.toWhite(tenths(words.say, high.roomAbove))}</text>`)}
    ${measure(placeOfCode(layout, 1), placeOfCode(layout, Math.max(1, low.darkest)), low.roomBelow, svg`<text x="0" y=${MEASURE_LINE - 7}>${
      words.toBlack(tenths(words.say, low.roomBelow))}</text>`)}`;
}

function measure(from: number, to: number, amount: number, name: SVGTemplateResult): SVGTemplateResult | typeof nothing {
  if (to - from < MEASURE_ROOM || !Number.isFinite(amount)) return nothing;
  return svg`<path class="ruled" d="M${from} ${MEASURE_LINE - 4}v8M${to} ${MEASURE_LINE - 4}v8M${from} ${MEASURE_LINE}H${to}"></path>${name}`;
}

/** The radio group that chooses the chart. */
export function chartChoice(words: SheetWords, shown: Shown, choose: (shown: Shown) => void): TemplateResult {
  const options: readonly Shown[] = ['colours', 'brightness', ...COLOUR_CHANNELS];
  return html`<fieldset class="choices"><legend>${words.chart}</legend>
    ${options.map((option) => html`<label><input type="radio" name="shown" value=${option} .checked=${option === shown}
      @change=${() => { choose(option); }}>${words.shown[option]}</label>`)}
  </fieldset>`;
}

/** Both edges of every channel in figures; the lines of the drawing are explained on the way. */
export function edgesTable(words: SheetWords, edges: Edges): TemplateResult {
  const {say, columns} = words;
  const cell = (of: string, text: string, lost = false) => html`<td data-of=${of}><span class=${lost ? 'lost' : nothing}>${text}</span>${lost ? html`<span class="spoken"> ${words.lost}</span>` : nothing}</td>`;
  const least = (room: 'roomBelow' | 'roomAbove') => roomText(words, Math.min(...COLOUR_CHANNELS.map((channel) => edges[channel][room])));
  return html`<table part="edges"><caption>${words.table}</caption>
    <thead><tr><th scope="col">${columns.channel}</th><th scope="col">${columns.black}</th><th scope="col">${columns.below}</th>
      <th scope="col">${columns.white}</th><th scope="col">${columns.above}</th></tr></thead>
    <tbody>${CHANNELS.map((channel) => {
      const {atBlack, atWhite, blackLost, whiteLost, roomBelow, roomAbove} = edges[channel];
      return html`<tr><th scope="row">${sample(words, channel)}<span class="name"> ${words.channels[channel]}</span></th>
        ${cell(columns.black, shareText(say, atBlack), blackLost)}${cell(columns.below, roomText(words, roomBelow))}
        ${cell(columns.white, shareText(say, atWhite), whiteLost)}${cell(columns.above, roomText(words, roomAbove))}</tr>`;
    })}<tr><th scope="row">${words.anyColour}</th>${cell(columns.black, shareText(say, edges.anyAtBlack))}${cell(columns.below, least('roomBelow'))}
        ${cell(columns.white, shareText(say, edges.anyAtWhite))}${cell(columns.above, least('roomAbove'))}</tr></tbody></table>`;
}

function sample(words: SheetWords, channel: Channel): TemplateResult {
  return html`<strong>${words.letters[channel]}</strong>${channel === 'brightness' ? nothing
    : html`<svg class="sample" viewBox="0 0 22 8" aria-hidden="true"><path class="line ${channel}" d="M0 4H22"></path></svg>`}`;
}
