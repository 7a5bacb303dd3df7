import {svg, type SVGTemplateResult} from 'lit';
import {codeFromLinear} from '../../core/tone/light.js';
import {GRAY_CARD} from '../../core/light/reflectances.js';
import {stripFor, type StripSheet} from './draw.js';
import {CELLS, type Reading} from './reading.js';
import type {ShadeWords} from './words/en.js';

export function stripSheet(width: number, {strip, brightest, darkest, shot}: Reading): StripSheet {
  const deepest = Number.isFinite(darkest.belowGray) ? darkest.belowGray : 8;
  return stripFor(width, strip.length || CELLS, Math.min(brightest.belowGray, 0), Math.max(deepest, shot.backdropWish));
}

/** The backdrop as it will look, high, middle and low, beside the gray card, over the curve of stops under that card. */
export function stripPicture(words: ShadeWords, sheet: StripSheet, {rows, strip, offset, shot}: Reading): SVGTemplateResult {
  const {width, edges, cells, top, foot, downOf, named} = sheet;
  const gray = (code: number): string => `rgb(${[code, code, code].map(Math.round).join(' ')})`;
  const card = codeFromLinear(GRAY_CARD * 2 ** offset);
  const middle = (at: number): number => ((edges[at] as number) + (edges[at + 1] as number)) / 2;
  const wish = downOf(shot.backdropWish);
  const from = edges[0] as number;
  const curve = strip.map(({belowGray}, at) => `${at ? 'L' : 'M'}${middle(at).toFixed(1)} ${downOf(belowGray).toFixed(1)}`).join('');
  return svg`
    <rect class="cell" x="0" y="0" width="44" height=${cells} fill=${gray(card)}></rect>
    <text x="0" y=${cells + 14}>${Math.round(card)}</text>
    ${rows.map((row, down) => row.map(({code}, at) => svg`<rect class="cell" x=${(edges[at] as number).toFixed(1)} y=${cells / rows.length * down}
      width=${((edges[at + 1] as number) - (edges[at] as number) + (at < row.length - 1 ? 0.6 : 0)).toFixed(1)} height=${cells / rows.length} fill=${gray(code)}></rect>`))}
    <rect class="bound" x=${from} y="0" width=${width - from} height=${cells}></rect>
    <rect class="bound" x="0" y="0" width="44" height=${cells}></rect>
    ${named.map((at) => svg`<text class="code" x=${at === 0 ? from : at === strip.length - 1 ? width : middle(at)} y=${cells + 14}
      text-anchor=${at === 0 ? 'start' : at === strip.length - 1 ? 'end' : 'middle'}>${Math.round(strip[at]?.code ?? 0)}</text>`)}
    ${sheet.stops.map((stop) => svg`<line class="ruled" x1=${from - 6} x2=${width} y1=${downOf(stop)} y2=${downOf(stop)}></line>
      <text class="quiet" x=${from - 9} y=${downOf(stop) + 4} text-anchor="end">${String(stop).replace('-', '−')}</text>`)}
    <path class="curve" d=${curve}></path>
    <line class="wish" x1=${from - 6} x2=${width} y1=${wish} y2=${wish}></line>
    <text class="wish-name" x=${width} y=${wish - 4} text-anchor="end">${words.wish}</text>
    <line class="ruled" x1=${from} x2=${from} y1=${top} y2=${foot}></line>`;
}
