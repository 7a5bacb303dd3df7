import {html, nothing, type TemplateResult} from 'lit';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import type {Shot} from '../../core/shot/shot.js';
import {wayIsSet} from '../../core/shot/plan-job.js';
import {WORDS, lines, title} from './words.js';

/** Ways beside one another in one ruled form; what is left over goes into the next. */
const ABREAST = 4;

/** Ways side by side, a line for each thing to compare; under one another where it is narrow. */
export function comparison(ways: readonly PlanWay[], job: PlanJob, shot: Shot, pick: (way: PlanWay) => void): TemplateResult {
  const rows = Array.from({length: Math.ceil(ways.length / ABREAST)}, (_, at) => ways.slice(at * ABREAST, (at + 1) * ABREAST));
  return html`<div class="compare" role="list" aria-label=${WORDS.compare}>${rows.map((row) => html`<div class="row-of-ways" role="presentation">
    ${labels(row[0], job, shot)}${row.map((way) => column(way, job, shot, pick))}
  </div>`)}</div>`;
}

function labels(way: PlanWay | undefined, job: PlanJob, shot: Shot): TemplateResult | typeof nothing {
  return way ? html`<div class="labels" aria-hidden="true"><span></span>${lines(way, job, shot).map(({label}) => html`<span>${label}</span>`)}</div>` : nothing;
}

function column(way: PlanWay, job: PlanJob, shot: Shot, pick: (way: PlanWay) => void): TemplateResult {
  const set = wayIsSet(way, shot);
  return html`<div class="way" part="way" role="listitem">
    <button type="button" class="pick" aria-pressed=${set ? 'true' : 'false'} @click=${() => { pick(way); }}>
      <strong>${title(way, job)}</strong><span>${set ? WORDS.set : WORDS.pick}</span>
    </button>
    <dl>${lines(way, job, shot).map(({key, label, text}) => html`<div class=${key}><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
  </div>`;
}
