import {html, nothing, svg, type SVGTemplateResult, type TemplateResult} from 'lit';
import type {CropShare} from '../../core/shot/shot.js';
import {HOLDS, keepsAll, type Hold} from './crop.js';
import {WORDS, frameText} from './words.js';

/** Length of a trim mark and half a hit area, px. */
const TRIM = 13;
const REACH = 20;

/** Handles in the order they are drawn: corners over edges. */
const ORDER = [4, 5, 6, 7, 0, 1, 2, 3];
/** The handle of the spot: its lower right corner. */
const SPOT_HANDLE = 2;

const per = (share: number) => `${+(share * 100).toFixed(3)}%`;

/**
 * The frames over the photo, in shares of it, so that they need no measuring.
 * @param crop - what is kept
 * @param spot - what is measured, while it is
 */
export function frameOver(crop: CropShare, spot: CropShare | undefined): TemplateResult {
  const {left, top, width, height} = crop;
  const [right, bottom] = [left + width, top + height];
  const rest = [[0, 0, 1, top], [0, bottom, 1, 1 - bottom], [0, top, left, height], [right, top, 1 - right, height]];
  return html`<svg class=${keepsAll(crop) ? 'all' : nothing} part="frame">
    <defs><pattern id="outside" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="hatch" d="M0 0V7"></path></pattern></defs>
    ${['veil', 'hatched'].map((look) => rest.map(([x, y, wide, tall]) => svg`<rect class=${look} x=${per(x as number)} y=${per(y as number)}
      width=${per(Math.max(0, wide as number))} height=${per(Math.max(0, tall as number))}></rect>`))}
    ${slider('crop', crop, WORDS.frame, svg`${box('frame-edge', crop)}${box('frame', crop)}`)}
    <g data-frame="crop">${ORDER.map((at) => handle(at, crop))}</g>
    ${spot ? svg`${slider('spot', spot, WORDS.spot, svg`${box('frame-edge', spot)}${box('spot-frame', spot)}`)}
      <g data-frame="spot">${handle(SPOT_HANDLE, spot)}</g>` : nothing}
  </svg>`;
}

function slider(name: string, frame: CropShare, label: string, boxes: SVGTemplateResult): SVGTemplateResult {
  return svg`<g class="keep" data-frame=${name} tabindex="0" role="slider" aria-label=${label} aria-describedby="frame-keys"
    aria-valuemin="0" aria-valuemax="100" aria-valuenow=${Math.round(frame.left * 100)} aria-valuetext=${frameText(frame)}>${boxes}</g>`;
}

function box(look: string, {left, top, width, height}: CropShare): SVGTemplateResult {
  return svg`<rect class=${look} x=${per(left)} y=${per(top)} width=${per(width)} height=${per(height)}></rect>`;
}

function handle(at: number, {left, top, width, height}: CropShare): SVGTemplateResult {
  const {x, y} = HOLDS[at] as Hold;
  const cursor = x === 0 ? 'ns' : y === 0 ? 'ew' : x === y ? 'nwse' : 'nesw';
  return svg`<svg x=${per(left + width * (x + 1) / 2)} y=${per(top + height * (y + 1) / 2)} width="1" height="1" overflow="visible">
    ${x !== 0 && y !== 0
      ? svg`<path class="trim" d="M${x * 4} 0h${x * TRIM}M0 ${y * 4}v${y * TRIM}"></path><rect class="mark" x="-4.5" y="-4.5" width="9" height="9"></rect>`
      : svg`<path class="trim" d=${x === 0 ? 'M0 -5v10' : 'M-5 0h10'}></path>`}
    <rect class="hit ${cursor}" data-hold=${at} x=${-REACH} y=${-REACH} width=${2 * REACH} height=${2 * REACH}></rect>
  </svg>`;
}
