import type {RulerScale} from '../../../core/optics/ruler.js';
import type {Shot} from '../../../core/shot/shot.js';
import type {LengthUnit} from '../../../core/units.js';
import {acrossText, placeText} from '../speech.js';
import type {DistancePrice} from './distance-price.js';
import type {BothWords} from './host.js';
import type {OwnLimit} from './own-limit.js';
import {isSet} from './ruler-scale.js';
import type {FoldWords} from './words/en.js';

/** What a step back brings and costs, and how far pixels and room reach. */
export function priceText(fold: FoldWords, {step, pixelsLeft, zoneNow, zoneThen, reach, roomReach}: DistancePrice, shot: Shot): string {
  const {say} = fold;
  const length = (mm: number): string => say.length(mm, shot.unit);
  const stops = say.stops(Math.round(step.stops * 10) / 10);
  return [
    ...step.by === 0 ? [fold.slide] : [
      Number.isFinite(zoneThen) ? fold.worth(stops, length(zoneNow), length(zoneThen)) : fold.worthWithoutEnd(stops),
      fold.costs(say.percent(1 - step.pixelShare), acrossText(fold, pixelsLeft), acrossText(fold, shot.pictureWidth)),
    ],
    reach > 0 ? fold.reach(length(reach)) : fold.noReach,
    roomReach > 0 ? fold.roomReach(length(roomReach)) : fold.noRoom,
  ].join(' ');
}

export const goBackText = (fold: FoldWords, by: number, unit: LengthUnit): string =>
  (by ? fold.goBack(fold.say.length(by, unit)) : fold.goBackNowhere);

/** Offs below a tenth are said to a tenth of a per cent. */
const FINE_OFF = 0.1;

/** What two points on a ruler say of the field. */
export function fieldText(fold: FoldWords, scale: RulerScale, shot: Shot): string {
  const {say} = fold;
  const off = Math.abs(scale.fieldWidth / shot.fieldWidth - 1);
  return [
    fold.takesIn(say.length(scale.fieldWidth, shot.unit), say.number(scale.magnification, 3)),
    isSet(scale, shot) ? fold.isSet
      : fold.setNow(say.length(shot.fieldWidth, shot.unit), say.percent(off, off < FINE_OFF ? 1 : 0), scale.fieldWidth > shot.fieldWidth),
  ].join(' ');
}

/** What a ruler shot says of its reader. */
export function ownLimitText({words, fold}: BothWords, {blurLimit, focus}: OwnLimit, shot: Shot): string {
  const {say} = words;
  const off = focus - shot.focus;
  const place = placeText(words, focus, shot.unit);
  return [
    fold.ownLimit(`${say.number(blurLimit, 2)}\u00a0px`),
    Math.abs(off) < 0.5 ? fold.focusWas(place) : fold.focusWasOff(place, say.length(off, shot.unit), off > 0),
  ].join(' ');
}
