import {html, nothing, type TemplateResult} from 'lit';
import {choiceField} from '../shared/fields.js';
import {thingFields} from './entries.js';
import {nameOf} from './speech.js';
import {ADDED, lampOf, thingsOf, type Added, type Thing} from './things.js';
import type {EntryHost} from './wish-view.js';

interface ThingsHost {
  readonly choose: (thing: Thing) => void;
  readonly add: (what: Added) => void;
  readonly takeAway: (thing: Thing) => void;
}

/** What stands in the set, chosen by name; the sizes and places of the chosen one; and more of it or less. */
export function thingsView(host: EntryHost, chosen: Thing, {choose, add, takeAway}: ThingsHost): TemplateResult {
  const {words, shot} = host;
  const removable = chosen.startsWith('flag') || (lampOf(chosen, shot) && shot.lights.lamps.length > 1);
  return html`<div class="unfolded">
    <div class="pair screen-only">${thingsOf(shot).filter((thing) => thing !== 'backdrop').map((thing) => html`<button type="button"
      aria-pressed=${thing === chosen ? 'true' : 'false'} @click=${() => { choose(thing); }}>${nameOf(words, thing, shot)}</button>`)}</div>
    <div class="fields" id="thing">${thingFields(chosen, host)}</div>
    <div class="pair screen-only" role="group" aria-label=${words.add}>
      ${ADDED.map((what) => html`<button type="button" @click=${() => { add(what); }}>+ ${words.adding[what]}</button>`)}
      ${removable ? html`<button type="button" @click=${() => { takeAway(chosen); }}>− ${words.takeAway(nameOf(words, chosen, shot))}</button>` : nothing}
    </div>
  </div>`;
}

/** Figure, camera, the share of light that backdrop and table throw back, and the whole set as text. */
export function setUpView(host: EntryHost, chosen: Thing): TemplateResult {
  const {words, shot, act} = host;
  const share = (value: number): string => words.say.percent(value, 1).replaceAll('\u00a0', ' ');
  const table = String(shot.lights.table);
  const tables = Object.entries(words.tables);
  return html`<div class="fields">
    ${chosen === 'figure' ? nothing : thingFields('figure', host)}${chosen === 'camera' ? nothing : thingFields('camera', host)}
    ${host.field('backdropReflectance', words.reflects, {write: () => share(shot.backdropReflectance)})}
    ${choiceField({
      id: 'table', label: words.table, value: table,
      options: [...tables, ...(tables.some(([value]) => value === table) ? [] : [[table, share(shot.lights.table)] as const])],
      onChoose: (value) => { act({lights: {...shot.lights, table: Number(value)}}); },
    })}
    <div class="wide">${host.field('lights', words.text)}</div>
  </div>`;
}
