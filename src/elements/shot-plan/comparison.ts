import {html, nothing, type TemplateResult} from 'lit';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import type {Shot} from '../../core/shot/shot.js';
import {wayLines} from './more-speech.js';
import {wayTitle} from './speech.js';
import type {UnfoldedWords} from './book.js';

/** Ways beside one another in one ruled form; what is left over goes into the next. */
const ABREAST = 4;

/** Ways side by side, a line for each thing to compare; under one another where it is narrow. */
export function comparison(words: UnfoldedWords, ways: readonly PlanWay[], job: PlanJob, shot: Shot, here: number | undefined): TemplateResult {
  const rows = Array.from({length: Math.ceil(ways.length / ABREAST)}, (_, at) => ways.slice(at * ABREAST, (at + 1) * ABREAST));
  return html`<div class="compare" role="list" aria-label=${words.compare}>${rows.map((row) => html`<div class="row-of-ways" role="presentation">
    ${labels(words, row[0], job, shot, here)}${row.map((way) => column(words, way, job, shot, here))}
  </div>`)}</div>`;
}

function labels(words: UnfoldedWords, way: PlanWay | undefined, job: PlanJob, shot: Shot, here: number | undefined): TemplateResult | typeof nothing {
  return way ? html`<div class="labels" aria-hidden="true"><span></span>${wayLines(words, way, job, shot, here).map(({label}) => html`<span>${label}</span>`)}</div>` : nothing;
}

function column(words: UnfoldedWords, way: PlanWay, job: PlanJob, shot: Shot, here: number | undefined): TemplateResult {
  return html`<div class="column" role="listitem">
    <strong>${wayTitle(words, way, job)}</strong>
    <dl>${wayLines(words, way, job, shot, here).map(({key, label, text}) => html`<div class=${key}><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
  </div>`;
}
