import {html, type TemplateResult} from 'lit';
import {Problem} from '../../core/problem.js';
import type {CropShare} from '../../core/shot/shot.js';
import {textField} from '../shared/fields.js';
import {readSide, withSide, type CropSide} from './crop.js';
import {WORDS, sidePixels, sideText} from './words.js';

const SIDES: readonly CropSide[] = ['left', 'top', 'width', 'height'];

/** Typed sides of the crop that could not be used. */
export type SideProblems = Readonly<Partial<Record<CropSide, Problem | undefined>>>;

/**
 * The crop by numbers.
 * @param typed - called with the sides that could not be used, and the crop when one could
 */
export function cropFields(
  crop: CropShare, picture: {readonly width: number; readonly height: number}, problems: SideProblems,
  typed: (problems: SideProblems, crop: CropShare | undefined) => void,
): TemplateResult {
  return html`<details><summary>${WORDS.byNumbers}</summary><div class="fields">${SIDES.map((side) => {
    const problem = problems[side];
    const pixels = side === 'left' || side === 'width' ? picture.width : picture.height;
    return textField({
      id: `crop-${side}`, label: WORDS.sides[side], text: problem ? String(problem.value) : sideText(crop[side]), problem,
      hint: sidePixels(crop[side], pixels),
      onType: (text) => {
        const read = readSide(side, text, pixels);
        if (read instanceof Problem) typed({...problems, [side]: read}, undefined);
        else typed({...problems, [side]: undefined}, withSide(crop, side, read));
      },
    });
  })}</div></details>`;
}
