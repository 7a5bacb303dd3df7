import {html, nothing, type TemplateResult} from 'lit';
import type {Exposure} from '../../core/exposure/stops.js';
import {REFLECTANCES} from '../../core/light/reflectances.js';
import type {TableSet} from '../../core/light/set.js';
import type {SetMove} from '../../core/light/suggest.js';
import type {Shot} from '../../core/shot/shot.js';
import {UNSEEN, bestOff, type Reading} from './reading.js';
import {restored} from './restore.js';
import type {Thing} from './things.js';
import {WORDS, moveCost, moveTitle, noneWords, offWords, restoreWords, swapWords} from './words.js';

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
  readonly take: (set: TableSet, stops: number, chosen?: Thing) => void;
  readonly act: (changes: Partial<Shot>) => void;
}

/**
 * What can be looked for, and what was found.
 * @param pending - stops more on the figure than when it was metered
 */
export function waysView(reading: Reading, found: Found | undefined, pending: number, {look, take, act}: WaysHost): TemplateResult {
  const {shot, set} = reading;
  const mend = restored(pending, shot);
  const done = found?.moves;
  const off = done ? bestOff(reading) : undefined;
  const swap = done && reading.short > UNSEEN ? reading.darker : undefined;
  const paid = (stops: number): Exposure | null => {
    const {shutter} = restored(stops + pending, shot);
    return shutter === undefined || Math.abs(stops) < UNSEEN ? null : {...shot, shutter};
  };
  const way = (words: readonly [string, string], onClick: () => void): TemplateResult =>
    html`<li><button type="button" @click=${onClick}><strong>${words[0]}</strong> <span>${words[1]}</span></button></li>`;
  return html`<div class="part">
    <div class="pair screen-only">
      <button type="button" id="find" @click=${() => { look('flag'); }}>${WORDS.find}</button>
      <button type="button" id="move" @click=${() => { look('moves'); }}>${WORDS.move}</button>
    </div>
    ${!found ? nothing : !done ? html`<p class="note">${WORDS.looking}</p>`
      : done.length ? nothing : html`<p class="note">${found.kind === 'moves' && reading.short <= 0 ? WORDS.enough : noneWords(found.kind)}</p>`}
    <ul class="ways">
      ${(done ?? []).map((move) => way([moveTitle(move, shot), moveCost(move, shot, paid(move.stops))], () => {
        take(move.set, move.stops, move.thing === 'new-flag' ? `flag${set.flags.length}` : undefined);
      }))}
      ${off ? way(offWords(off, reading, paid(off.stops)), () => { take(off.set, off.stops); }) : nothing}
      ${swap ? way(swapWords(swap, reading), () => { act({backdropReflectance: REFLECTANCES[swap.material]}); }) : nothing}
      ${mend.shutter === undefined ? nothing : way(restoreWords(pending, mend.shutter), () => { act(mend); })}
    </ul>
  </div>`;
}
