import {html, nothing, svg, type SVGTemplateResult, type TemplateResult} from 'lit';
import {nearestClick} from '../../core/exposure/clicks.js';
import type {Setting} from '../../core/exposure/stops.js';
import {writeAperture, writeShutter} from '../../core/exposure/write.js';
import type {Shot} from '../../core/shot/shot.js';
import {drivenBy, limitsOf, settingOf} from './balance.js';
import {RADII, SIDE, place, windowPath, type Dial, type Mark} from './draw.js';
import {exposureWords} from './speech.js';
import type {DialWords} from './words/en.js';

/** What hands do to the dial. */
export interface DialHands {
  readonly grab: (event: PointerEvent) => void;
  readonly drag: (event: PointerEvent) => void;
  readonly release: () => void;
  readonly key: (event: KeyboardEvent) => void;
}

const MIDDLE = SIDE / 2;

/** The rings, the window over the pair in use, and in the middle what that pair is. */
export function dialView(words: DialWords, dial: Dial, shot: Shot, held: boolean, hands: DialHands): TemplateResult {
  const {say} = words;
  const setting = settingOf(shot);
  return html`<svg part="dial" class="dial ${held ? 'held' : ''}" viewBox="0 0 ${SIDE} ${SIDE}" direction="ltr"
      @pointerdown=${hands.grab} @pointermove=${hands.drag} @pointerup=${hands.release} @pointercancel=${hands.release}>
    <circle class="face" cx=${MIDDLE} cy=${MIDDLE} r=${RADII.joint}></circle>
    <circle class="joint" cx=${MIDDLE} cy=${MIDDLE} r=${RADII.joint}></circle>
    <circle class="rim" cx=${MIDDLE} cy=${MIDDLE} r=${RADII.rim}></circle>
    ${dial.shutter.map((mark) => tick(mark, mark.whole ? RADII.outerTick : RADII.outerTick - 5, RADII.outerLabel))}
    ${dial.aperture.map((mark) => tick(mark, mark.whole ? RADII.innerTick : RADII.innerTick + 5, RADII.innerLabel))}
    ${facing(dial.hand, RADII.outerLabel, engraved('shutter', setting.shutter))} ${facing(dial.hand, RADII.innerLabel, engraved('aperture', setting.aperture))}
    ${hand(words, dial, shot, hands)}
    <text class="ring-name" x=${MIDDLE} y=${MIDDLE - 39}>${words.isoHeld(say.iso(setting.iso))}</text>
    <text class="now" x=${MIDDLE} y=${MIDDLE - 10}>${say.aperture(setting.aperture)}</text>
    <text class="now" x=${MIDDLE} y=${MIDDLE + 20}>${say.shutter(setting.shutter)}</text>
    <text class="now-small" x=${MIDDLE} y=${MIDDLE + 44}>${words.bodyShows(writeShutter(setting.shutter, 'body'))}</text>
  </svg>`;
}

function hand(words: DialWords, {hand: angle}: Dial, shot: Shot, {key}: DialHands): SVGTemplateResult {
  const driven = drivenBy(shot.pay);
  const range = limitsOf(shot)[driven];
  const at = (value: number) => nearestClick(driven, value, shot.clicksPerStop, range).index;
  const [least, most] = range ?? [1, 1];
  const tip = place(angle, RADII.rim);
  return svg`<g class="hand-group" role="slider" tabindex="0" aria-label=${words.hand} aria-valuemin=${at(least)} aria-valuemax=${at(most)}
      aria-valuenow=${at(shot[driven])} aria-valuetext=${exposureWords(words, settingOf(shot), false)} @keydown=${key}>
    <circle class="ring-focus" cx=${MIDDLE} cy=${MIDDLE} r=${RADII.hub - 3}></circle>
    <path class="window" d=${windowPath(angle)}></path>
    <circle class="grip" cx=${tip.x} cy=${tip.y} r="8"></circle>
  </g>`;
}

function tick({angle, label, whole, faced}: Mark, to: number, labelAt: number): SVGTemplateResult {
  const [a, b, at] = [place(angle, RADII.joint), place(angle, to), place(angle, labelAt)];
  return svg`<g class=${faced ? '' : 'unfaced'}>
    <line class="tick ${whole ? 'whole' : ''}" x1=${a.x} y1=${a.y} x2=${b.x} y2=${b.y}></line>
    ${label ? svg`<text x=${at.x} y=${at.y}>${label}</text>` : nothing}
  </g>`;
}

/** What stands on the rings under the window, on a click or between two. */
function facing(angle: number, radius: number, label: string): SVGTemplateResult {
  const {x, y} = place(angle, radius);
  return svg`<text class="facing" x=${x} y=${y}>${label}</text>`;
}

/** As lenses and dials are engraved, with a point in every language. */
function engraved(setting: Exclude<Setting, 'iso'>, value: number): string {
  return setting === 'aperture' ? writeAperture(value).slice(2) : writeShutter(value, 'prose').replace(/ s$/, '');
}
