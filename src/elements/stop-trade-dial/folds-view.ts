import {html, nothing, type TemplateResult} from 'lit';
import type {ClicksPerStop} from '../../core/exposure/clicks.js';
import {SETTINGS} from '../../core/exposure/stops.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import {choiceField} from '../shared/fields.js';
import type {Balance} from './balance.js';
import {changeLines, exposureWords} from './speech.js';
import type {DialWords} from './words/en.js';

/** Every setting from where to where, and the stops between. */
export function changesView(words: DialWords, balance: Balance): TemplateResult {
  const {start, setting, trade} = balance;
  const arrived = SETTINGS.every((name) => trade.to[name] === setting[name]);
  return html`<dl class="changes">${changeLines(words, balance).map(({name, what, light}) => html`<div>
      <dt>${name}</dt>${what ? html`<dd>${what}</dd>` : nothing}<dd class="light">${light}</dd>
    </div>`)}</dl>
    ${arrived && trade.path.length > 2 ? html`<h3>${words.path}</h3>
      <ol class="path">${trade.path.map((step) => html`<li>${exposureWords(words, step, start.iso !== setting.iso)}</li>`)}</ol>` : nothing}`;
}

/** What lens and body can do. */
export function limitsView(
  words: DialWords, shot: Shot, field: (key: ShotKey, label: string) => TemplateResult, act: (changes: Partial<Shot>) => void,
): TemplateResult {
  return html`<div class="fields">
    ${choiceField<'1' | '2' | '3'>({
      id: 'step', label: words.step, value: `${shot.clicksPerStop}`,
      options: [['3', words.steps[3]], ['2', words.steps[2]], ['1', words.steps[1]]],
      onChoose: (clicks) => { act({clicksPerStop: Number(clicks) as ClicksPerStop}); },
    })}
    ${field('apertureWidest', words.widest)} ${field('apertureSmallest', words.smallest)}
    ${field('shutterFastest', words.fastest)} ${field('shutterSlowest', words.slowest)}
    ${field('isoLowest', words.lowest)} ${field('isoHighest', words.highest)}
  </div>`;
}
