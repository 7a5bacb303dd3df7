import {html, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {stepBackBy, stepBackForPixels, type StepBack} from '../../../core/optics/distance.js';
import {sharpZone} from '../../../core/optics/zone.js';
import {movedBack} from '../../../core/shot/ways-out.js';
import type {Reading} from '../reading.js';
import {doneView} from '../ways-view.js';
import type {FoldHost} from './host.js';
import {goBackText, priceText} from './measuring-speech.js';

/** What so much distance costs and brings, the picture cropped to what it was. */
export interface DistancePrice {
  readonly step: StepBack;
  readonly pixelsLeft: number;
  /** Length of the sharp zone on the ruler now and then, mm; Infinity without a far limit. */
  readonly zoneNow: number;
  readonly zoneThen: number;
  /** mm back that leave just enough pixels; negative when there are too few already. */
  readonly reach: number;
  /** mm back until the room ends; negative when the camera stands beyond it. */
  readonly roomReach: number;
}

/** @throws {Problem} as stepBackBy; above life size it cannot be said */
export function priceOfDistance({framing: {lens, limit}, pixelsAcross, shot, along, cameraDistance}: Reading, by: number): DistancePrice {
  const step = stepBackBy(lens, by);
  const zone = (at: typeof lens, within: number): number => {
    const {near, far} = sharpZone(at, within);
    return (near + far) * along;
  };
  return {
    step, pixelsLeft: pixelsAcross * step.pixelShare,
    zoneNow: zone(lens, limit), zoneThen: zone(step.lens, limit * step.pixelShare),
    reach: stepBackForPixels(lens, pixelsAcross, shot.pictureWidth).by,
    roomReach: shot.room - cameraDistance,
  };
}

/** A distance to slide, its price in words, and a button that goes there. */
export function distanceView(host: FoldHost, reading: Reading, by: number, onSlide: (by: number) => void): TemplateResult {
  const {fold, words} = host;
  const {shot, cameraDistance} = reading;
  const most = Math.ceil(cameraDistance * 4 / 50) * 50;
  const price = priceOfDistance(reading, Math.min(by, most));
  const length = fold.say.length(by, shot.unit);
  return html`<label class="slide">${fold.back}
      <input type="range" id="back" min="0" max=${most} step="10" .value=${live(String(by))} aria-valuetext=${length}
        @input=${(event: Event) => { onSlide(Number((event.target as HTMLInputElement).value)); }}>
      <output for="back">${length}</output></label>
    <p class="note">${priceText(fold, price, shot)}</p>
    ${doneView(words, host.done('distance'))}
    <div><button type="button" ?disabled=${by === 0} @click=${() => {
      onSlide(0);
      host.press('distance', () => goBackText(fold, by, shot.unit), movedBack(shot, price.step, shot.focus).changes);
    }}>${goBackText(fold, by, shot.unit)}</button></div>`;
}
