import {html, nothing, type TemplateResult} from 'lit';
import type {Shot} from '../../../core/shot/shot.js';
import type {Say} from '../say.js';
import type {PhotoPlace} from './place.js';
import type {TakenPhoto} from './settings.js';
import {closeUpSince, isSet, tradeFor} from './trade-for.js';
import {settingText, wayCost, wayText} from './way-speech.js';
import type {PhotoWords} from './words/en.js';

/** What the way out is drawn from, and whom it tells. */
export interface WayOut {
  readonly words: PhotoWords & {readonly say: Say};
  readonly photo: TakenPhoto;
  /** Where the photo was taken from. */
  readonly place: PhotoPlace | undefined;
  readonly shot: Shot;
  /** Thirds of a stop by which the next shot should be brighter than the photo. */
  readonly thirds: number;
  /** What the shot was before the way was taken, for those who want it back. */
  readonly before: Partial<Shot> | undefined;
  /** @param before - what {@link WayOut.before} is from now on */
  readonly act: (changes: Partial<Shot>, before: Partial<Shot> | undefined) => void;
}

/** The setting an advice leads to, as a button; once the shot is set to it, as a sentence with the way back. */
export function wayTo({words, photo, place, shot, thirds, before, act}: WayOut): TemplateResult | typeof nothing {
  const closeUp = closeUpSince(place, shot);
  const way = thirds === 0 ? undefined : tradeFor(photo, shot, thirds, closeUp);
  if (!way) return nothing;
  const {pay} = shot;
  if (isSet(shot, way)) {
    return html`<div class="way-done"><p>${words.wayDone(settingText(words, way.to, way.to, pay))}</p>
      ${before ? html`<button type="button" @click=${() => { act(before, undefined); }}>${words.undo}</button>` : nothing}</div>`;
  }
  const changes: Partial<Shot> = {
    [pay]: way.to[pay], correction: thirds / 3,
    meteredAperture: way.from.aperture, meteredShutter: way.from.shutter, meteredIso: way.from.iso,
    ...(place?.magnification && {meteredMagnification: place.magnification}),
  };
  const take = () => { act(changes, Object.fromEntries(Object.keys(changes).map((key) => [key, shot[key as keyof Shot]]))); };
  const facts = {way, shot, thirds, closeUp};
  return html`<ul class="ways"><li><button type="button" @click=${take}>
    <strong>${wayText(words, facts)}</strong> <span>${wayCost(words, facts)}</span></button></li></ul>`;
}
