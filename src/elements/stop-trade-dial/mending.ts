import {html, nothing, type TemplateResult} from 'lit';
import {likelyMisreadings} from '../../core/exposure/misread.js';
import type {Reading} from '../../core/exposure/reading.js';
import {SETTINGS, type Exposure, type Setting} from '../../core/exposure/stops.js';
import {writeShutter} from '../../core/exposure/write.js';
import type {Balance} from './balance.js';
import {balanceWords, misreadWords, takeOtherWords, takenWords, wayOutWords, type Way} from './speech.js';
import type {DialWords} from './words/en.js';

/** Something to set that mends an exposure or a misreading. */
export interface Mending {
  readonly says: Way;
  /** Settings it changes. None where it is for the lamps, which no button moves. */
  readonly changes?: Partial<Exposure>;
  /** The setting that was read otherwise; the trade follows it. */
  readonly meant?: readonly [setting: Setting, value: number];
}

/** How the digits of each typed setting were taken, while they still stand in the field. */
export type Readings = Readonly<Partial<Record<Setting, Reading>>>;

/** What brings back the light that was asked for, then other ways to read what was typed. */
export function mendingsOf(words: DialWords, {trade, even, pay, setting}: Balance, readings: Readings): readonly Mending[] {
  const found: Mending[] = [];
  if (!even && trade.to[pay] !== setting[pay]) found.push({says: balanceWords(words, pay, trade.to[pay]), changes: {[pay]: trade.to[pay]}});
  for (const out of even ? [] : trade.limit?.waysOut ?? []) {
    found.push({says: wayOutWords(words, out), ...(out.setting !== 'light' && {changes: {[out.setting]: out.value, [pay]: trade.to[pay]}})});
  }
  for (const name of SETTINGS) {
    const other = bareOf(readings, name)?.others[0];
    if (other) found.push({says: takeOtherWords(words, name, other), meant: [name, other.value]});
  }
  return found;
}

/** Digits typed without any mark, where they can be read in two ways. */
function bareOf(readings: Readings, setting: Setting): Reading | undefined {
  const reading = readings[setting];
  return reading?.how === 'bare' && reading.others.length ? reading : undefined;
}

/** Which way bare digits were taken, and times that are easily taken for others. */
function notesOf(words: DialWords, {start, setting}: Balance, readings: Readings): readonly string[] {
  const taken = SETTINGS.flatMap((name) => {
    const reading = bareOf(readings, name);
    return reading ? [takenWords(words, name, reading)] : [];
  });
  const slips = [...new Set([start.shutter, setting.shutter])].flatMap((time) => {
    const [slip] = likelyMisreadings(time);
    return slip && time < 1 && writeShutter(time, 'body').includes('"') ? [misreadWords(words, time, slip)] : [];
  });
  return [...taken, ...slips];
}

/**
 * Notes, the ways out, and after one was pressed a line that says so and takes it back.
 * @param done - what was done last, in words, and how to take it back
 */
export function mendingView(
  words: DialWords, balance: Balance, readings: Readings, press: (mending: Mending) => void,
  done: {readonly what: string; readonly undo: () => void} | undefined,
): TemplateResult | typeof nothing {
  const [notes, mendings] = [notesOf(words, balance, readings), mendingsOf(words, balance, readings)];
  if (!notes.length && !mendings.length && !done) return nothing;
  return html`<div class="mending">
    ${done ? html`<p class="done"><span>${words.done(done.what)}</span><button type="button" class="undo" @click=${done.undo}>${words.undo}</button></p>` : nothing}
    ${notes.map((note) => html`<p class="note">${note}</p>`)}
    ${mendings.length ? html`<ul class="ways">${mendings.map((mending) => way(mending, press))}</ul>` : nothing}
  </div>`;
}

function way(mending: Mending, press: (mending: Mending) => void): TemplateResult {
  const {says: [what, cost], changes, meant} = mending;
  return changes || meant
    ? html`<li><button type="button" @click=${() => { press(mending); }}><strong>${what}</strong> <span>${cost}</span></button></li>`
    : html`<li class="note">${what}: ${cost}</li>`;
}
