import {SETTLE_SECONDS} from '../../../core/optics/stack.js';
import type {Shot} from '../../../core/shot/shot.js';
import type {SaidDetail} from '../detail.js';
import type {Reading} from '../reading.js';
import {apertureText, markText} from '../speech.js';
import type {DetailContrast} from './detail-contrast.js';
import type {BothWords} from './host.js';
import {SAME_APERTURE, type StackOffer} from './stack.js';

/** What becomes of a detail. */
export function contrastText(
  {words, fold}: BothWords, {inFocus, front, back}: DetailContrast, detail: SaidDetail, {fit: {depth}, shot: {unit}}: Reading,
): string {
  const {say} = words;
  const wide = 'pixels' in detail ? say.pixels(detail.pixels) : say.length(detail.onFigure, unit, true);
  const keeps = (contrast: number | null): string => (contrast === null ? fold.none : say.percent(contrast));
  return inFocus === null ? fold.tooFine(wide) : fold.keeps(
    wide, say.percent(inFocus), words.parts[depth.foremost.part], keeps(front), words.parts[depth.rearmost.part], keeps(back));
}

/** Where each frame is focused at the aperture that is set, and the aperture at which a stack is best. */
export function stackText({words, fold}: BothWords, {best, frames}: StackOffer, shot: Shot): string {
  const {say} = words;
  const set = apertureText(words, shot.aperture, shot);
  // Decimal commas would run into commas between numbers.
  const places = frames.map(({focus}) => markText(words, focus, shot.unit)).join('; ');
  const isBest = frames.length > 0 && Math.abs(best.aperture / shot.aperture - 1) < SAME_APERTURE;
  return [
    frames.length ? fold.frames(set, frames.length, places) : fold.tooManyAt(set),
    isBest ? fold.bestNow : fold.best(apertureText(words, best.aperture, shot), best.frames),
    fold.stackTakes(`${say.number(SETTLE_SECONDS)}\u00a0s`, say.shutter(Math.max(1, Math.round(best.seconds))), say.percent(Math.max(0, best.worst))),
  ].join(' ');
}

export function setStackText({words, fold}: BothWords, {best, changes}: StackOffer, shot: Shot): string {
  return fold.setStack(apertureText(words, best.aperture, shot), words.say.shutter(changes.shutter ?? shot.shutter));
}
