import {html, type TemplateResult} from 'lit';
import {GRAY_CARD, REFLECTANCES} from '../../core/light/reflectances.js';
import type {Problem} from '../../core/problem.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import {codeFromLinear} from '../../core/tone/light.js';
import {readNumber} from '../../core/units.js';
import {choiceField, type TextField} from '../shared/fields.js';
import {looks} from './speech.js';
import type {ShadeWords} from './words/en.js';

/** What the entries need of their element. */
export interface EntryHost {
  readonly shot: Shot;
  readonly words: ShadeWords;
  readonly field: (key: ShotKey, label: string, more?: Partial<TextField> & {readonly write?: () => string}) => TemplateResult;
  readonly act: (changes: Partial<Shot>) => void;
  readonly type: (key: ShotKey, text: string) => void;
  /** Texts of the chosen thing that could not be used, by field. */
  readonly wrong: ReadonlyMap<string, Problem>;
  /** Keeps a text that cannot be used, or forgets it. */
  readonly refuse: (id: string, problem: Problem | undefined) => void;
}

type LengthKey = 'backdropDistance' | 'figureWidth' | 'figureHeight' | 'baseDepth' | 'fieldWidth' | 'focalLength';

/** A length of the shot; a bare number means the unit that is shown. */
export function lengthOfShot({shot, words, field, type}: EntryHost, key: LengthKey, label: string): TemplateResult {
  return field(key, label, {
    write: () => words.say.fieldLength(shot[key], shot.unit),
    onType: (text) => { type(key, shot.unit !== 'mm' && readNumber(text) !== undefined ? `${text.trim()} ${shot.unit}` : text); },
  });
}

/** How dark the backdrop should be, where it hangs and what it is of. */
export function wishFields(host: EntryHost): TemplateResult {
  const {shot, words, act} = host;
  const {say} = words;
  const material = materialOf(shot);
  const wished = codeFromLinear(GRAY_CARD * 2 ** -shot.backdropWish);
  return html`<div class="fields wished">
    <div class="wide">${host.field('backdropWish', words.wishField, {
      hint: words.wishHint(say.number(wished), looks(words, wished)), inputmode: 'decimal', write: () => say.number(shot.backdropWish, 2),
    })}</div>
    ${lengthOfShot(host, 'backdropDistance', words.distance)}
    ${choiceField({
      id: 'material', label: words.material, value: material,
      options: [...Object.entries(words.materials), ...(material === 'own' ? [['own', words.ownMaterial] as const] : [])],
      onChoose: (name) => { if (name in REFLECTANCES) act({backdropReflectance: REFLECTANCES[name as keyof typeof REFLECTANCES]}); },
    })}
  </div>`;
}

const materialOf = ({backdropReflectance}: Shot): string =>
  Object.entries(REFLECTANCES).find(([, share]) => share === backdropReflectance)?.[0] ?? 'own';
