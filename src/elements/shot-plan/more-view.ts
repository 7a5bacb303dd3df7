import {html, nothing, type TemplateResult} from 'lit';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import {Problem} from '../../core/problem.js';
import type {LengthUnit} from '../../core/units.js';
import {CHART_HEIGHT, chart} from './chart.js';
import {curveOf, type Curve} from './curve.js';
import {curveText, rateLines} from './more-speech.js';
import type {UnfoldedWords} from './book.js';

export {comparison} from './comparison.js';

/** Widest that the chart is drawn, CSS px. */
const WIDEST_PX = 640;

/** A way's curve takes a while to work out, and is asked for with every picture. */
const curves = /* @__PURE__ */ new WeakMap<PlanWay, Curve | undefined>();

function knownCurve(way: PlanWay, job: PlanJob): Curve | undefined {
  if (!curves.has(way)) {
    try {
      curves.set(way, curveOf(way, job));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      curves.set(way, undefined);
    }
  }
  return curves.get(way);
}

/** What every aperture leaves of the finest line, from where a way has the camera. */
export function curveView(words: UnfoldedWords, way: PlanWay, job: PlanJob, room: number): TemplateResult | typeof nothing {
  const curve = knownCurve(way, job);
  if (!curve || curve.points.length < 2) return nothing;
  const width = Math.min(room, WIDEST_PX);
  return html`<div class="curve-part"><div class="curve-box"><svg part="chart" role="img" aria-label=${curveText(words, curve, way, job)} width=${width}
      height=${CHART_HEIGHT} viewBox="0 0 ${width} ${CHART_HEIGHT}">
      <defs><pattern id="chart-hatch" width="4.5" height="4.5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line x1="0.5" y1="0" x2="0.5" y2="4.5" class="hatch"></line></pattern></defs>
      ${chart(words, curve, way, job.leastContrast ?? 0, width)}
    </svg></div>
    <p class="note">${curveText(words, curve, way, job)}</p></div>`;
}

/** What a second, a click, a step back, a frame and a lens count for. */
export function ratesView(words: UnfoldedWords, unit: LengthUnit): TemplateResult {
  return html`<p class="note">${words.ratesText}</p>
    <dl class="rates">${rateLines(words, unit).map(([what, counts]) => html`<div><dt>${what}</dt><dd>${counts}</dd></div>`)}</dl>`;
}
