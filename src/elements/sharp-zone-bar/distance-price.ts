import {html, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {stepBackBy, stepBackForPixels, type StepBack} from '../../core/optics/distance.js';
import {sharpZone} from '../../core/optics/zone.js';
import type {Shot} from '../../core/shot/shot.js';
import type {Reading} from './reading.js';
import {moved} from './ways.js';
import {length} from './lengths.js';
import {EXTRAS, distancePrice, pixelsToSpare} from './words.js';

/** What so much distance costs and brings, the picture cropped to what it was. */
export interface DistancePrice {
  readonly step: StepBack;
  readonly pixelsLeft: number;
  /** Length of the sharp zone on the ruler now and then, mm; Infinity without a far limit. */
  readonly zoneNow: number;
  readonly zoneThen: number;
  /** mm back that leave just enough pixels; negative when there are too few already. */
  readonly reach: number;
}

/** @throws {Problem} as stepBackBy; above life size it cannot be said */
export function priceOfDistance({framing: {lens, limit}, pixelsAcross, shot, along}: Reading, by: number): DistancePrice {
  const step = stepBackBy(lens, by);
  const zone = (at: typeof lens, within: number): number => {
    const {near, far} = sharpZone(at, within);
    return (near + far) * along;
  };
  return {
    step, pixelsLeft: pixelsAcross * step.pixelShare,
    zoneNow: zone(lens, limit), zoneThen: zone(step.lens, limit * step.pixelShare),
    reach: stepBackForPixels(lens, pixelsAcross, shot.pictureWidth).by,
  };
}

/** A distance to slide, its price in words, and a button that goes there. */
export function distanceGroup(
  reading: Reading, by: number, onSlide: (by: number) => void, onApply: (changes: Partial<Shot>) => void,
): TemplateResult {
  const {shot, cameraDistance} = reading;
  const most = Math.ceil(cameraDistance * 4 / 50) * 50;
  const price = priceOfDistance(reading, Math.min(by, most));
  return html`<div class="group">
    <label class="slide">${EXTRAS.back}
      <input type="range" id="back" min="0" max=${most} step="10" .value=${live(String(by))} aria-valuetext=${length(by, shot.unit)}
        @input=${(event: Event) => { onSlide(Number((event.target as HTMLInputElement).value)); }}>
      <output for="back">${length(by, shot.unit)}</output></label>
    <p class="note">${distancePrice(price, reading)} ${pixelsToSpare(price, shot)}</p>
    <div><button type="button" ?disabled=${by === 0}
      @click=${() => { onApply(moved(shot, price.step, shot.focus)); }}>${EXTRAS.goBack(by, shot.unit)}</button></div>
  </div>`;
}
