import {nothing, svg, type SVGTemplateResult} from 'lit';
import {across, clearOf, curve, inPanel, leavesAt, onSheet, panelTop, pointList, wordWidth, type Sheet} from './draw.js';
import type {Reading} from './reading.js';
import type {ZoneWords} from './words/en.js';

/** What a curve comes to at one end of the figure, and whether that will do. */
export interface PanelEnd {
  readonly value: number;
  readonly label: string;
  readonly good: boolean;
}

/** A curve along the ruler, thick where it is sharp, and what it comes to at both ends of the figure. */
export interface Panel {
  readonly most: number;
  readonly value: (mark: number) => number;
  /** Value of the dashed line, and what it is called. */
  readonly line: number;
  readonly lineLabel: string;
  readonly caption: string;
  readonly ends: readonly [PanelEnd, PanelEnd];
  /** Curves that fall towards the focus plane leave room for words above them on that side. */
  readonly falls: boolean;
  /** What the upper edge stands for, where that is worth a mark. */
  readonly topLabel?: string;
}

/** Blur in finished pixels against the limit. */
export function blurPanel(words: ZoneWords, {shot: {blurLimit}, blurFront, blurBack, blurAt}: Reading): Panel {
  const end = (blur: number): PanelEnd => ({value: blur, label: words.say.pixels(blur), good: blur <= blurLimit});
  return {
    most: panelTop(blurLimit, [blurFront, blurBack]), value: blurAt, line: blurLimit, lineLabel: words.limit(words.say.pixels(blurLimit)),
    caption: words.blurCaption, ends: [end(blurFront), end(blurBack)], falls: true,
  };
}

/** The curve of a panel with its line and both ends; upright lines go on from the ruler where nothing is written. */
export function drawPanel(sheet: Sheet, {from, to, nearest, front, back, shot: {focus}}: Reading, panel: Panel): SVGTemplateResult {
  const {floor, width, panel: upper} = sheet;
  const {most, value, line, ends} = panel;
  const points = (start: number, end: number): string => pointList(curve(sheet, Math.max(start, nearest), end, most, value));
  const lineY = inPanel(sheet, line, most);
  const apart = across(sheet, back) - across(sheet, front);
  const crowded = apart < wordWidth(ends[0].label) + wordWidth(ends[1].label) + 24;
  // The label stands at the left unless the curve runs there; then where the curve is certain to be below the line.
  const runs = panel.falls && inPanel(sheet, value(Math.max(sheet.left, nearest)), most) > lineY - 34;
  const labelAt = runs ? onSheet(sheet, from) + 6 : 0;
  const within = Math.min(back, Math.max(front, focus));
  const inTheWay = !panel.falls && wordWidth(panel.lineLabel) + wordWidth(ends[0].label) + 16 > across(sheet, front);
  return svg`<line class="line fine" x1="0" y1=${floor} x2=${width} y2=${floor}></line>
    <line class="limit" x1="0" y1=${lineY} x2=${width} y2=${lineY}></line>
    ${inTheWay ? nothing : svg`<text x=${labelAt} y=${lineY - 5}>${panel.lineLabel}</text>`}
    ${[from, to].map((mark) => (across(sheet, mark) > 0 && across(sheet, mark) < width
      ? svg`<line class="bound" x1=${across(sheet, mark)} y1=${upper - 6} x2=${across(sheet, mark)} y2=${floor}></line>` : nothing))}
    <g clip-path="url(#panel)">
      <polyline class="curve" points=${points(-Infinity, from)}></polyline>
      <polyline class="curve sharp" points=${points(from, to)}></polyline>
      <polyline class="curve" points=${points(to, Infinity)}></polyline>
    </g>
    ${([front, back] as const).map((mark, at) => endDot(
      sheet, mark, leavesAt(within, mark, most, value), panel, ends[at] as PanelEnd, (at === 0) !== (crowded || !panel.falls)))}
    ${panel.topLabel ? svg`<text x=${width} y=${upper + 4} text-anchor="end" class="quiet">${panel.topLabel}</text>
      <line class="line fine" x1=${width - 56} y1=${upper} x2=${width - 46} y2=${upper}></line>` : nothing}
    <text x="0" y=${floor + 15} class="quiet">${panel.caption}</text>`;
}

/** @param leaves - mark at which the curve goes out at the top before it comes to that end */
function endDot(sheet: Sheet, mark: number, leaves: number, {most, line}: Panel, {value, label, good}: PanelEnd, rightwards: boolean): SVGTemplateResult {
  const [x, out] = [across(sheet, mark), across(sheet, leaves)];
  const above = value > most;
  const y = above ? sheet.panel + 6 : inPanel(sheet, value, most);
  // A curve that has left at the top comes back on the inner side.
  const wanted = above ? mark > sheet.left + (sheet.right - sheet.left) / 2 : rightwards;
  const right = wanted ? x + 7 + wordWidth(label) <= sheet.width || x < sheet.width / 2 : x - 7 - wordWidth(label) < 0;
  return svg`<line class="leader" x1=${x} y1=${sheet.panel - 6} x2=${x} y2=${sheet.floor}></line>
    ${above ? svg`<path class="dot" d="M${out} ${y - 6}l5 8h-10Z"></path>` : svg`<circle class="dot ${good ? 'sharp' : ''}" cx=${x} cy=${y} r="4"></circle>`}
    <text x=${x + (right ? 7 : -7)} y=${above ? y + 3 : clearOf(y - 6, inPanel(sheet, line, most))} text-anchor=${right ? 'start' : 'end'}>${label}</text>`;
}
