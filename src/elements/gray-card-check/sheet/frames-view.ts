import {html, svg, type SVGTemplateResult, type TemplateResult} from 'lit';
import type {Crop} from '../../../core/tone/pixels.js';
import type {Patch} from '../../../core/white/card.js';
import type {CardPatches} from '../../../core/white/patches.js';
import {frameText} from './card-speech.js';
import {PATCHES} from './judge.js';
import {namePlaces, type Box, type NamePlace} from './name-places.js';
import type {SheetWords} from './words/en.js';

/** Half a hit area, CSS px; the handle's lies outwards from its corner, so that a small frame can still be moved. */
const REACH = 20;
const OUTWARDS = 10;

const per = (share: number): string => `${+(share * 100).toFixed(3)}%`;

/**
 * The three frames over the shot, in shares of what is shown, so that they need no measuring.
 * @param area - part of the shot that is shown, px
 * @param placed - patches whose frame has its place
 */
export function framesOver(words: SheetWords, patches: CardPatches, area: Crop, placed: readonly Patch[]): TemplateResult {
  const boxes = {white: boxOf(patches.white, area), gray: boxOf(patches.gray, area), black: boxOf(patches.black, area)};
  const names = namePlaces(boxes);
  return html`<svg part="frames">
    ${PATCHES.map((patch) => frame(words, patch, boxes[patch], patches[patch], placed.includes(patch), names[patch]))}
    ${PATCHES.map((patch) => handle(patch, boxes[patch]))}
  </svg>`;
}

function boxOf({x, y, width, height}: Crop, area: Crop): Box {
  return {
    x: (x - area.x) / area.width, y: (y - area.y) / area.height, width: width / area.width, height: height / area.height,
  };
}

function frame(words: SheetWords, patch: Patch, box: Box, at: Crop, isPlaced: boolean, name: NamePlace): SVGTemplateResult {
  const {x, y, width, height} = box;
  return svg`<g class="mark ${isPlaced ? '' : 'waiting'}" data-patch=${patch} tabindex="0" role="slider" aria-label=${words.frames[patch]}
      aria-describedby="frame-keys" aria-valuemin="0" aria-valuemax="100" aria-valuenow=${Math.min(100, Math.max(0, Math.round(x * 100)))}
      aria-valuetext=${frameText(words, patch, at, isPlaced)}>
    ${rect('edge', box)}${rect(`line ${patch}`, box)}
    <svg class="at" x=${per(x + width / 2)} y=${per(y + height / 2)}><rect class="hit" x=${-REACH} y=${-REACH} width=${2 * REACH} height=${2 * REACH}></rect></svg>
    <svg class="at" x=${per(name.x)} y=${per(name.y)}><text class="name" text-anchor=${name.anchor} x=${name.right} y=${name.down}>${words.patches[patch]}</text></svg>
  </g>`;
}

function rect(look: string, {x, y, width, height}: Box): SVGTemplateResult {
  return svg`<rect class=${look} x=${per(x)} y=${per(y)} width=${per(width)} height=${per(height)}></rect>`;
}

function handle(patch: Patch, {x, y, width, height}: Box): SVGTemplateResult {
  return svg`<svg class="at" data-patch=${patch} x=${per(x + width)} y=${per(y + height)}>
    <rect class="knob" x="-4" y="-4" width="8" height="8"></rect>
    <rect class="hit size" x=${OUTWARDS - REACH} y=${OUTWARDS - REACH} width=${2 * REACH} height=${2 * REACH}></rect></svg>`;
}

/** How a frame's line is drawn, beside its name in the table. */
export function lineSample(patch: Patch): TemplateResult {
  return html`<svg class="sample" viewBox="0 0 24 8" aria-hidden="true"><path class="line ${patch}" d="M0 4H24"></path></svg>`;
}
