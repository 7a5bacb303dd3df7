import {MM_PER_INCH, type LengthUnit} from '../../core/units.js';
import {across, type Sheet} from './draw.js';

/** One line of the engraved scale. */
export interface Tick {
  readonly x: number;
  readonly long: 0 | 1 | 2;
  readonly label: string;
}

const DECIMAL = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
const BINARY = [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 5, 10, 20, 50, 100, 200];

/**
 * The scale as a ruler would have it: lines no closer than 4 px, numbers no closer than 40.
 * @param number - writes what is no fraction of an inch
 */
export function ticks(sheet: Sheet, unit: LengthUnit, number: (value: number) => string): readonly Tick[] {
  const per = unit === 'in' ? MM_PER_INCH : 1;
  const steps = unit === 'in' ? BINARY : DECIMAL;
  const widest = steps[steps.length - 1] as number;
  const apart = steps.find((step) => step * per * sheet.scale >= 40) ?? widest;
  const line = steps.find((step) => step * per * sheet.scale >= 4 && Number.isInteger(apart / step)) ?? apart;
  const numbered = Math.round(apart / line);
  const first = Math.ceil(sheet.left / per / line);
  const count = Math.max(0, Math.floor(sheet.right / per / line) - first + 1);
  return Array.from({length: count}, (_, at): Tick => {
    const index = first + at;
    const value = index * line;
    const full = index % numbered === 0;
    return {
      x: across(sheet, value * per),
      long: full ? 2 : (2 * index) % numbered === 0 ? 1 : 0,
      label: full ? fraction(unit === 'cm' ? value / 10 : value, number) : '',
    };
  });
}

function fraction(value: number, number: (value: number) => string): string {
  const size = Math.abs(value);
  const over = Math.floor(size);
  const part = {0.25: '¼', 0.5: '½', 0.75: '¾'}[size - over];
  return part && size !== 0 ? `${value < 0 ? '−' : ''}${over || ''}${part}` : number(value);
}
