import {html, nothing, type TemplateResult} from 'lit';
import type {Exposure} from '../../core/exposure/stops.js';
import {REFLECTANCES} from '../../core/light/reflectances.js';
import type {TableSet} from '../../core/light/set.js';
import type {SetMove} from '../../core/light/suggest.js';
import type {Shot} from '../../core/shot/shot.js';
import {UNSEEN, bestOff, type Reading} from './reading.js';
import {restored} from './restore.js';
import type {Thing} from './things.js';
import {moveCost, moveTitle, noneWords, offWords, restoreWords, swapWords, type Way} from './ways-speech.js';
import type {ShadeWords} from './words/en.js';

/** What a search found, for the set it was asked about. */
export interface Found {
  readonly kind: 'flag' | 'moves';
  readonly about: string;
  /** `null` while it is still looking. */
  readonly moves: readonly SetMove[] | null;
}

interface WaysHost {
  readonly look: (kind: Found['kind']) => void;
  /** Takes a set over that gives the figure so many stops more. */
  readonly take: (what: string, set: TableSet, stops: number, chosen?: Thing) => void;
  readonly act: (what: string, changes: Partial<Shot>) => void;
}

/**
 * What can be looked for, and what was found.
 * @param pending - stops more on the figure than when it was metered
 */
export function waysView(words: ShadeWords, reading: Reading, found: Found | undefined, pending: number, {look, take, act}: WaysHost): TemplateResult {
  const {shot, set} = reading;
  const mend = restored(pending, shot);
  const done = found?.moves;
  const off = done ? bestOff(reading) : undefined;
  const swap = done && reading.short > UNSEEN ? reading.darker : undefined;
  const paid = (stops: number): Exposure | null => {
    const {shutter} = restored(stops + pending, shot);
    return shutter === undefined || Math.abs(stops) < UNSEEN ? null : {...shot, shutter};
  };
  const way = ([what, cost]: Way, press: (what: string) => void): TemplateResult =>
    html`<li><button type="button" @click=${() => { press(what); }}><strong>${what}</strong> <span>${cost}</span></button></li>`;
  return html`<div class="part">
    <div class="pair screen-only">
      <button type="button" id="find" @click=${() => { look('flag'); }}>${words.find}</button>
      <button type="button" id="move" @click=${() => { look('moves'); }}>${words.move}</button>
    </div>
    ${!found ? nothing : !done ? html`<p class="note">${words.looking}</p>`
      : done.length ? nothing : html`<p class="note">${found.kind === 'moves' && reading.short <= 0 ? words.enough : noneWords(words, found.kind)}</p>`}
    <ul class="ways">
      ${(done ?? []).map((move) => way([moveTitle(words, move, shot), moveCost(words, move, shot, paid(move.stops))], (what) => {
        take(what, move.set, move.stops, move.thing === 'new-flag' ? `flag${set.flags.length}` : undefined);
      }))}
      ${off ? way(offWords(words, off, reading, paid(off.stops)), (what) => { take(what, off.set, off.stops); }) : nothing}
      ${swap ? way(swapWords(words, swap, reading), (what) => { act(what, {backdropReflectance: REFLECTANCES[swap.material]}); }) : nothing}
      ${mend.shutter === undefined ? nothing : way(restoreWords(words, pending, mend.shutter), (what) => { act(what, mend); })}
    </ul>
  </div>`;
}
