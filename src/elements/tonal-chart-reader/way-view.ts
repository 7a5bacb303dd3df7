import {html, type TemplateResult} from 'lit';
import type {Trade} from '../../core/exposure/trade.js';
import type {Shot} from '../../core/shot/shot.js';
import {isSet} from './settings.js';
import {WORDS, wayCost, wayOut} from './words.js';

/** The setting an advice leads to, as a button; once the bench is set to it, as a sentence. */
export function wayTo(way: Trade, thirds: number, shot: Shot, take: () => void): TemplateResult {
  return isSet(shot, way)
    ? html`<p class="way-done">${WORDS.done} <strong>${wayOut(way.to, way.to, shot.pay)}</strong></p>`
    : html`<ul class="ways"><li><button type="button" @click=${take}>
        <strong>${wayOut(shot, way.to, shot.pay)}</strong><span>${wayCost(thirds, way)}</span></button></li></ul>`;
}
