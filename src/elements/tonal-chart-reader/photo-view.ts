import {html, nothing, svg, type TemplateResult} from 'lit';
import type {CropShare} from '../../core/shot/shot.js';
import {HOLDS, LEAST, WHOLE, dragged, scaled, type Hold} from './crop.js';
import {WORDS, frameText} from './words.js';

/** Length of a trim mark and half a hit area, px. */
const TRIM = 13;
const REACH = 20;

/** Shorter than this, a drag beside the frame is a slip of the finger, px. */
const SLIP = 8;

/** What an arrow key moves, share of the picture. */
const KEY_STEP = 0.01;
/** What Page Up and Page Down scale by. */
const PAGE_SCALE = 1.1;

const ARROWS: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1],
};

const MOVE: Hold = {x: 0, y: 0};
const SIZE: Hold = {x: 1, y: 1};

/** The crop after a key on the frame; `undefined` for keys that mean nothing there. */
export function cropAfterKey(crop: CropShare, key: string, shift: boolean): CropShare | undefined {
  const arrow = ARROWS[key];
  if (arrow) return dragged(crop, shift ? SIZE : MOVE, arrow[0] * KEY_STEP, arrow[1] * KEY_STEP);
  switch (key) {
    case 'PageUp': return scaled(crop, PAGE_SCALE);
    case 'PageDown': return scaled(crop, 1 / PAGE_SCALE);
    case 'Home': return WHOLE;
    default: return undefined;
  }
}

export function keepsAll({width, height}: CropShare): boolean {
  return width > 1 - 1e-6 && height > 1 - 1e-6;
}

/** A drag on the picture that is under way. */
export interface Drag {
  readonly pointer: number;
  readonly hold: Hold;
  readonly crop: CropShare;
  readonly x: number;
  readonly y: number;
  /** Size of the picture on screen, CSS px. */
  readonly width: number;
  readonly height: number;
}

/** The drag that begins with a press: of a handle, of the frame, or beside it, where a new frame is drawn. */
export function startDrag(event: PointerEvent, stage: Element, crop: CropShare): Drag {
  const {left, top, width, height} = stage.getBoundingClientRect();
  const held = (event.target as Element).getAttribute('data-hold');
  const common = {pointer: event.pointerId, x: event.clientX, y: event.clientY, width, height};
  const handle = held === null ? undefined : HOLDS[Number(held)];
  if (handle) return {...common, hold: handle, crop};
  if ((event.target as Element).closest('.keep') && !keepsAll(crop)) return {...common, hold: MOVE, crop};
  const across = Math.min(1 - LEAST, Math.max(LEAST, (event.clientX - left) / width));
  const down = Math.min(1 - LEAST, Math.max(LEAST, (event.clientY - top) / height));
  return {...common, hold: SIZE, crop: {left: across, top: down, width: 0, height: 0}};
}

/**
 * The crop where a drag has got to. A new frame may be drawn towards any corner; until it is more than a slip of the
 * finger it is `undefined`.
 */
export function cropOfDrag({hold, crop, x, y, width, height}: Drag, event: PointerEvent): CropShare | undefined {
  const across = (event.clientX - x) / width;
  const down = (event.clientY - y) / height;
  if (crop.width > 0) return dragged(crop, hold, across, down);
  if (Math.hypot(event.clientX - x, event.clientY - y) < SLIP) return undefined;
  const corner: Hold = {x: across < 0 ? -1 : 1, y: down < 0 ? -1 : 1};
  return dragged(crop, corner, across, down);
}

/** The frame over the photo, in shares of it, so that it needs no measuring. */
export function frameOver(crop: CropShare): TemplateResult {
  const per = (share: number) => `${+(share * 100).toFixed(3)}%`;
  const {left, top, width, height} = crop;
  const [right, bottom] = [left + width, top + height];
  const rest = [[0, 0, 1, top], [0, bottom, 1, 1 - bottom], [0, top, left, height], [right, top, 1 - right, height]];
  return html`<svg class=${keepsAll(crop) ? 'all' : nothing} part="frame">
    <defs><pattern id="outside" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="hatch" d="M0 0V7"></path></pattern></defs>
    ${['veil', 'hatched'].map((look) => rest.map(([x, y, wide, tall]) => svg`<rect class=${look} x=${per(x as number)} y=${per(y as number)}
      width=${per(Math.max(0, wide as number))} height=${per(Math.max(0, tall as number))}></rect>`))}
    <g class="keep" tabindex="0" role="slider" aria-label=${WORDS.frame} aria-describedby="frame-keys"
      aria-valuemin="0" aria-valuemax="100" aria-valuenow=${Math.round(left * 100)} aria-valuetext=${frameText(crop)}>
      <rect class="frame-edge" x=${per(left)} y=${per(top)} width=${per(width)} height=${per(height)}></rect>
      <rect class="frame" x=${per(left)} y=${per(top)} width=${per(width)} height=${per(height)}></rect>
    </g>
    ${[4, 5, 6, 7, 0, 1, 2, 3].map((at) => handle(at, crop, per))}
  </svg>`;
}

function handle(at: number, {left, top, width, height}: CropShare, per: (share: number) => string) {
  const {x, y} = HOLDS[at] as Hold;
  const cursor = x === 0 ? 'ns' : y === 0 ? 'ew' : x === y ? 'nwse' : 'nesw';
  return svg`<svg x=${per(left + width * (x + 1) / 2)} y=${per(top + height * (y + 1) / 2)} width="1" height="1" overflow="visible">
    ${x !== 0 && y !== 0
      ? svg`<path class="trim" d="M${x * 4} 0h${x * TRIM}M0 ${y * 4}v${y * TRIM}"></path><rect class="mark" x="-4.5" y="-4.5" width="9" height="9"></rect>`
      : svg`<path class="trim" d=${x === 0 ? `M0 -5v10` : `M-5 0h10`}></path>`}
    <rect class="hit ${cursor}" data-hold=${at} x=${-REACH} y=${-REACH} width=${2 * REACH} height=${2 * REACH}></rect>
  </svg>`;
}
