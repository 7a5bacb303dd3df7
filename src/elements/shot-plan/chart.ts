import {nothing, svg, type SVGTemplateResult} from 'lit';
import type {PlanWay} from '../../core/optics/plan-way.js';
import type {Curve, CurvePoint} from './curve.js';
import {bestText} from './more-speech.js';
import type {UnfoldedWords} from './book.js';

const LEFT_PX = 42;
const RIGHT_PX = 14;
const TOP_PX = 22;
const CHART_PX = 112;

/** Contrast below this is drawn on the floor: the detail is lost there all the same. */
const FLOOR = 0;

/** Where a chart's points go, CSS px. */
export interface ChartSheet {
  readonly width: number;
  readonly floor: number;
  readonly x: (aperture: number) => number;
  readonly y: (contrast: number) => number;
}

/** Equal stops are equally far apart; contrast runs from 0 to 1. */
export function chartSheet(width: number, {points}: Curve): ChartSheet {
  const [least, most] = [Math.min(...points.map(({aperture}) => aperture)), Math.max(...points.map(({aperture}) => aperture))];
  const span = Math.log(most / least) || 1;
  const inner = width - LEFT_PX - RIGHT_PX;
  const floor = TOP_PX + CHART_PX;
  return {
    width, floor,
    x: (aperture) => LEFT_PX + (most > least ? Math.log(aperture / least) / span : 0.5) * inner,
    y: (contrast) => floor - Math.min(1, Math.max(FLOOR, contrast)) * CHART_PX,
  };
}

/** Clicks whose number is printed: every whole stop that stands clear of its neighbour. */
export function printed(points: readonly CurvePoint[], sheet: ChartSheet): readonly CurvePoint[] {
  const whole = points.filter(({aperture}) => Math.abs(2 * Math.log2(aperture) - Math.round(2 * Math.log2(aperture))) < 1e-6);
  let last = -Infinity;
  return (whole.length ? whole : points).filter(({aperture}) => {
    const clear = sheet.x(aperture) - last >= 30;
    if (clear) last = sheet.x(aperture);
    return clear;
  });
}

/** Worst contrast over the f-numbers: the line, what defocus and diffraction take, the best click and the way's own. */
export function chart(words: UnfoldedWords, curve: Curve, way: PlanWay, wished: number, width: number): SVGTemplateResult {
  const sheet = chartSheet(width, curve);
  const {x, y, floor} = sheet;
  const {points, best} = curve;
  const line = (value: (point: CurvePoint) => number): string => points.map((point) => `${x(point.aperture).toFixed(1)},${y(value(point)).toFixed(1)}`).join(' ');
  const single = points.every(({inFocus}) => inFocus !== undefined);
  const ceiling = (point: CurvePoint): number => point.inFocus ?? point.worst;
  const back = [...points].reverse().map((point) => `${x(point.aperture).toFixed(1)},${y(point.worst).toFixed(1)}`).join(' ');
  const own = points.find(({aperture}) => aperture === way.lens.aperture);
  const bestX = x(best.aperture);
  const end = bestX > width - 90;
  const first = points[0];
  return svg`
    <path class="fine" d="M${LEFT_PX} ${TOP_PX}V${floor}H${width - RIGHT_PX + 6}"></path>
    ${[0, 0.5, 1].map((value) => svg`<path class="fine" d="M${LEFT_PX - 4} ${y(value)}h4"></path>
      <text class="quiet" x=${LEFT_PX - 7} y=${y(value) + 4} text-anchor="end">${words.say.percent(value)}</text>`)}
    ${points.map(({aperture}) => svg`<path class="fine" d="M${x(aperture).toFixed(1)} ${floor}v4"></path>`)}
    ${printed(points, sheet).map(({aperture}) => svg`<path class="fine" d="M${x(aperture).toFixed(1)} ${floor}v8"></path>
      <text class="quiet" x=${x(aperture)} y=${floor + 20} text-anchor="middle">${words.say.aperture(aperture)}</text>`)}
    ${single ? svg`<polygon class="lost" points="${line(ceiling)} ${back}"></polygon><polyline class="fine" points=${line(ceiling)}></polyline>
      ${first && ceiling(first) - first.worst > 0.45 ? svg`<text x=${LEFT_PX + 10} y=${y((ceiling(first) + Math.max(0, first.worst)) / 2) + 4} class="on-paper">${words.defocus}</text>` : nothing}
      <text class="quiet" x=${width - RIGHT_PX} y=${TOP_PX - 8} text-anchor="end">${words.diffraction}</text>
      <path class="fine" d="M${width - RIGHT_PX + 3} ${TOP_PX - 4}V${y(ceiling(points.at(-1) ?? best)) - 3}m-3 -5l3 5l3 -5"></path>` : nothing}
    <path class="wished" d="M${LEFT_PX} ${y(wished)}H${width - RIGHT_PX}"></path>
    <polyline class="curve" points=${line(({worst}) => worst)}></polyline>
    ${own ? svg`<path class="own" d="M${x(own.aperture)} ${floor}V${y(own.worst)}"></path><circle class="own-dot" cx=${x(own.aperture)} cy=${y(own.worst)} r="4"></circle>` : nothing}
    <circle class="best" cx=${bestX} cy=${y(best.worst)} r="7"></circle>
    <text class="strong on-paper" x=${bestX - (end ? 9 : 0)} y=${y(best.worst) - 13} text-anchor=${end ? 'end' : 'middle'}>${bestText(words, curve, way)}</text>`;
}

export const CHART_HEIGHT = TOP_PX + CHART_PX + 26;
