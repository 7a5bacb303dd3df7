import {html, type TemplateResult} from 'lit';
import {Problem} from '../../../core/problem.js';
import type {CropShare} from '../../../core/shot/shot.js';
import {textField} from '../../shared/fields.js';
import {isSize, readSide, withSide, type CropSide} from './crop.js';
import type {SheetWords} from './words/en.js';

const SIDES: readonly CropSide[] = ['left', 'top', 'width', 'height'];

/** Typed sides of the crop that could not be used. */
export type SideProblems = Readonly<Partial<Record<CropSide, Problem | undefined>>>;

/**
 * The crop by numbers.
 * @param typed - called with the sides that could not be used, and the crop when one could
 */
export function cropFields(
  words: SheetWords, crop: CropShare, picture: {readonly width: number; readonly height: number}, problems: SideProblems,
  typed: (problems: SideProblems, crop: CropShare | undefined) => void,
): TemplateResult {
  const {say} = words;
  return html`<div class="fields">${SIDES.map((side) => {
    const problem = problems[side];
    const pixels = side === 'left' || side === 'width' ? picture.width : picture.height;
    const wanted = isSize(side) ? words.sizeWanted(say.number(pixels)) : words.placeWanted(say.number(pixels - 1));
    return textField({
      id: `crop-${side}`, say, label: words.sides[side], text: problem ? String(problem.value) : say.percent(crop[side], 2), problem,
      hint: `${say.number(crop[side] * pixels)}\u00a0px`,
      onType: (text) => {
        const read = readSide(side, text, pixels, wanted);
        if (read instanceof Problem) typed({...problems, [side]: read}, undefined);
        else typed({...problems, [side]: undefined}, withSide(crop, side, read));
      },
    });
  })}</div>`;
}
