import {html, nothing, type TemplateResult} from 'lit';
import type {GiveUp, GiveUps} from '../../core/optics/give-up.js';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import {wayIsSet} from '../../core/shot/plan-job.js';
import type {Shot} from '../../core/shot/shot.js';
import {priceText, waySetting, wayTitle, wishText} from './speech.js';
import type {PlanWords} from './words/en.js';

/** The ways, cheapest first, each a button that sets it. */
export function waysView(
  words: PlanWords, ways: readonly PlanWay[], job: PlanJob, shot: Shot, here: number | undefined, pick: (way: PlanWay) => void,
): TemplateResult {
  return html`<ul class="ways" aria-label=${words.ways}>${ways.map((way) => {
    const set = wayIsSet(way, shot);
    return html`<li class="way" part="way"><button type="button" class="pick" aria-pressed=${set ? 'true' : 'false'} @click=${() => { pick(way); }}>
      <strong>${wayTitle(words, way, job)}</strong> <span class="setting">${waySetting(words, way, shot)}</span>
      <span class="price">${words.price(priceText(words, way, job, shot.unit, here))}</span> <span class="act">${set ? words.set : words.pick}</span>
    </button></li>`;
  })}</ul>`;
}

/** What to give up: any one of them, or all together. */
export function giveUpsView(words: PlanWords, {giveUp, oneIsEnough}: GiveUps, shot: Shot, take: (wishes: readonly GiveUp[]) => void): TemplateResult {
  const said = giveUp.map((each) => [each, wishText(words, each, shot)] as const);
  if (oneIsEnough) {
    return html`<ul class="ways" aria-label=${words.giveUp}>${said.map(([each, [what, now]]) => html`<li>
      <button type="button" @click=${() => { take([each]); }}><strong>${what}</strong> <span>${now}</span></button></li>`)}</ul>`;
  }
  return html`<ul class="ways" aria-label=${words.giveUp}>
    ${said.map(([, [what, now]]) => html`<li class="wish"><strong>${what}</strong> <span>${now}</span></li>`)}
    ${giveUp.length ? html`<li><button type="button" @click=${() => { take(giveUp); }}><strong>${words.allTogether}</strong></button></li>` : nothing}
  </ul>`;
}
