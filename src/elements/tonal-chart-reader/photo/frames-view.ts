import {html, nothing, svg, type SVGTemplateResult, type TemplateResult} from 'lit';
import type {CropShare} from '../../../core/shot/shot.js';
import {HOLDS, keepsAll, type Hold} from './crop.js';
import type {SheetWords} from './words/en.js';

/** Length of a trim mark, of a square and of a side of a hit area, px. */
const TRIM = 17;
const MARK = 9;
const REACH = 40;
/** Nearer to the photo's border than this, share of it, a hit area lies inside the frame instead of about its handle. */
const NEAR_BORDER = 0.04;

/** Handles in the order they are drawn: corners over edges. */
const ORDER = [4, 5, 6, 7, 0, 1, 2, 3];
/** The handle of the spot: its lower right corner. */
const SPOT_HANDLE = 2;

const per = (share: number) => `${+(share * 100).toFixed(3)}%`;

/**
 * The frames over the photo, in shares of it, so that they need no measuring. Nothing of them is drawn outside the photo.
 * @param crop - what is kept
 * @param spot - what is measured, while it is
 */
export function framesOver(words: SheetWords, crop: CropShare, spot: CropShare | null): TemplateResult {
  const {left, top, width, height} = crop;
  const [right, bottom] = [left + width, top + height];
  const rest = [[0, 0, 1, top], [0, bottom, 1, 1 - bottom], [0, top, left, height], [right, top, 1 - right, height]];
  return html`<svg class=${keepsAll(crop) ? 'all' : nothing} part="frame">
    <defs><pattern id="outside" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="hatch" d="M0 0V7"></path></pattern></defs>
    ${['veil', 'hatched'].map((look) => rest.map(([x, y, wide, tall]) => svg`<rect class=${look} x=${per(x as number)} y=${per(y as number)}
      width=${per(Math.max(0, wide as number))} height=${per(Math.max(0, tall as number))}></rect>`))}
    ${slider(words, 'crop', crop, words.frame, svg`${box('frame-edge', crop)}${box('frame', crop)}`)}
    <g data-frame="crop">${ORDER.map((at) => handle(at, crop))}</g>
    ${spot ? svg`${slider(words, 'spot', spot, words.spotFrame, svg`${box('frame-edge', spot)}${box('spot-frame', spot)}`)}
      <g data-frame="spot">${handle(SPOT_HANDLE, spot)}</g>` : nothing}
  </svg>`;
}

function slider(words: SheetWords, name: string, frame: CropShare, label: string, boxes: SVGTemplateResult): SVGTemplateResult {
  const {left, top, width, height} = frame;
  const [wide, tall, across, down] = [width, height, left, top].map((share) => words.say.percent(share)) as [string, string, string, string];
  return svg`<g class="keep" data-frame=${name} tabindex="0" role="slider" aria-label=${label} aria-describedby="frame-keys"
    aria-valuemin="0" aria-valuemax="100" aria-valuenow=${Math.round(left * 100)} aria-valuetext=${words.frameAt(wide, tall, across, down)}>${boxes}</g>`;
}

function box(look: string, {left, top, width, height}: CropShare): SVGTemplateResult {
  return svg`<rect class=${look} x=${per(left)} y=${per(top)} width=${per(width)} height=${per(height)}></rect>`;
}

/** A handle: marks inside the frame, and an area about it, or inside the frame where the photo ends, that can be pressed. */
function handle(at: number, {left, top, width, height}: CropShare): SVGTemplateResult {
  const {x, y} = HOLDS[at] as Hold;
  const [across, down] = [left + width * (x + 1) / 2, top + height * (y + 1) / 2];
  const cursor = x === 0 ? 'ns' : y === 0 ? 'ew' : x === y ? 'nwse' : 'nesw';
  const isCorner = x !== 0 && y !== 0;
  return svg`<svg x=${per(across)} y=${per(down)} width="1" height="1" overflow="visible">
    ${isCorner ? svg`<path class="trim" d="M${-x * TRIM} 0H0V${-y * TRIM}"></path>
        <rect class="mark" x=${Math.min(0, -x * MARK)} y=${Math.min(0, -y * MARK)} width=${MARK} height=${MARK}></rect>`
      : svg`<path class="trim" d=${x === 0 ? `M0 0V${-y * MARK}` : `M0 0H${-x * MARK}`}></path>`}
    <rect class="hit ${cursor}" data-hold=${at} x=${reachFrom(x, across)} y=${reachFrom(y, down)} width=${REACH} height=${REACH}></rect>
  </svg>`;
}

/** Where a hit area begins, px from its handle. */
function reachFrom(end: Hold['x'], share: number): number {
  if (end < 0 && share < NEAR_BORDER) return 0;
  return end > 0 && share > 1 - NEAR_BORDER ? -REACH : -REACH / 2;
}
