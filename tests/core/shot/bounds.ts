import {refusalOf} from '../../../src/core/shot/given.js';
import {DEFAULT_SHOT, type ShotKey} from '../../../src/core/shot/shot.js';

/** What a number of a shot may be, found out by asking its field. `undefined`: no limit. */
export interface Bounds {
  readonly least: number | undefined;
  readonly most: number | undefined;
  readonly whole: boolean;
}

/** Numbers between which a limit is looked for. */
const FAR = Number.MAX_VALUE;

/** The limits of a number of a shot, to the last bit. */
export function boundsOf(key: ShotKey): Bounds {
  const inside = DEFAULT_SHOT[key] as number;
  const fits = (value: number) => !refusalOf(key, value);
  const whole = !fits(inside + 0.37) && !fits(inside - 0.37);
  const edge = (to: number): number | undefined => {
    if (fits(to)) return undefined;
    let [good, bad] = [inside, to];
    for (let turn = 0; turn < 4400; turn++) {
      const middle = whole ? Math.trunc(good / 2 + bad / 2) : good / 2 + bad / 2;
      if (middle === good || middle === bad) break;
      if (fits(middle)) good = middle; else bad = middle;
    }
    return good;
  };
  return {least: edge(-FAR), most: edge(FAR), whole};
}

/** The words a choice offers; `undefined` for free text. */
export function optionsOf(key: ShotKey): readonly string[] | undefined {
  return refusalOf(key, 'no such choice')?.wanted.split(' or ');
}
