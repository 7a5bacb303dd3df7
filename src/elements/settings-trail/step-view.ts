import {html, nothing, svg, type TemplateResult} from 'lit';
import type {TrailLink, TrailStep} from '../../core/exposure/judge-trail.js';
import {SETTINGS} from '../../core/exposure/stops.js';
import type {Trail} from '../../core/exposure/trail.js';
import {RULE, ruleFor} from './draw.js';
import {changeWords, exposureWords, linkWords, signedStops, stepNotes, stepProblem} from './speech.js';
import type {TrailWords} from './words/en.js';

/** What was written where a mend now stands, by step and setting: `2 shutter`. */
export type Mended = ReadonlyMap<string, string>;

/** One step. `act` is what can be done with it. */
export function stepView(words: TrailWords, trail: Trail, at: number, mended: Mended, act: unknown): TemplateResult | typeof nothing {
  const {steps, isoSaid} = trail;
  const step = steps[at];
  if (!step) return nothing;
  const problem = stepProblem(words, step);
  const next = at === steps.length - 1 ? 'last' : steps[at + 1]?.link?.holds === false ? 'off' : '';
  return html`<div class="row step">
    <span class="rail ${next}"><span class="count">${at + 1}</span></span>
    <div class="said">
      <p class="taken">${step.exposure ? exposureWords(words, step.exposure, isoSaid) : '–'}</p>
      <p class="typed wide">${typed(trail, step, at, mended)}</p>
      ${problem ? html`<p class="problem wide">${problem}</p>` : nothing}
      ${stepNotes(words, step, isoSaid).map((note) => html`<p class="note wide">${note}</p>`)}
      ${act}
    </div>
  </div>`;
}

/** The step as it was written, its settings marked, and what a mend wrote over struck through. */
function typed({mends}: Trail, {text, start, ...step}: TrailStep, at: number, mended: Mended): unknown[] {
  const found = [
    ...SETTINGS.flatMap((setting) => (step[setting] ? [{setting, ...step[setting]}] : [])),
    ...step.unread.map((word) => ({setting: 'unread', ...word})),
  ].sort((one, two) => one.start - two.start);
  let last = 0;
  const parts: unknown[] = found.flatMap((place) => {
    const [from, to] = [place.start - start, place.end - start];
    const before = text.slice(last, from);
    last = to;
    const was = mended.get(`${at} ${place.setting}`);
    const slip = mends.some((mend) => mend.step === at && mend.setting === place.setting && mend.was);
    return [before, was === undefined ? html`<b class=${slip ? 'slip' : place.setting}>${place.text}</b>`
      : html`${was ? html`<del>${was}</del> ` : nothing}<ins>${place.text}</ins>`];
  });
  return [...parts, text.slice(last)];
}

/** What lies between a step and the one before. */
export function linkView(words: TrailWords, link: TrailLink, at: number, reach: number): TemplateResult {
  const wish = typeof link.meant?.wish === 'number' ? link.meant.wish : null;
  const off = link.holds === false ? 'off' : '';
  return html`<div class="row">
    <span class="rail between-rail ${off}" aria-hidden="true">${words.signs[`${link.holds}`]}</span>
    <div class="between">
      <dl class="rules">${ruleView(words, 'light', link.light, wish, reach)}${ruleView(words, 'depth', link.depth, null, reach)}</dl>
      <div><p class="outcome ${off}">${linkWords(words, link, at)}</p><p class="note">${changeWords(words, link)}</p></div>
    </div>
  </div>`;
}

function ruleView(words: TrailWords, name: 'light' | 'depth', stops: number, wish: number | null, reach: number): TemplateResult {
  const {ticks, zero, bar, meant, beyond} = ruleFor(stops, wish, reach);
  return html`<dt>${words[name]}</dt>
    <dd><svg viewBox="0 0 ${RULE.width} ${RULE.height}" preserveAspectRatio="none" aria-hidden="true">
      <line class="base" x1="0" x2=${RULE.width} y1="7" y2="7"></line>
      ${ticks.map((x) => svg`<line class="tick" x1=${x} x2=${x} y1="4" y2="10"></line>`)}
      <line class="zero" x1=${zero} x2=${zero} y1="0" y2="14"></line>
      <rect class="bar ${name}" x=${bar.x} y="4" width=${bar.width} height="6"></rect>
      ${meant === null ? nothing : svg`<line class="meant" x1=${meant} x2=${meant} y1="0" y2="14"></line>`}
    </svg></dd>
    <dd>${beyond ? '⟶ ' : ''}${signedStops(words, stops)}</dd>`;
}
