import type {Say} from '../../shared/say.js';

/** `1.4%`; small shares keep a digit that is not 0, and what is there is never written as nothing. */
export function shareText(say: Say, part: number): string {
  if (part > 0 && part < 0.0001) return `<${say.percent(0.0001, 2)}`;
  if (part > 0.999 && part < 1) return `>${say.percent(0.999, 1)}`;
  return say.percent(part, part < 0.001 ? 2 : part < 0.1 ? 1 : 0);
}

/** Measured stops to a tenth, without sign and unit: nothing finer was measured. */
export function tenths(say: Say, amount: number): string {
  const size = Math.abs(amount);
  return size > 0 && size < 0.05 ? `<${say.number(0.1, 1)}` : say.fixed(size, 1);
}

/** The same with its unit. */
export function measuredStops(say: Say, amount: number): string {
  return say.family.stops(tenths(say, amount), Math.abs(amount)).replaceAll(' ', '\u00a0');
}

/** Whole thirds of a stop, without a sign: `2/3 stop`, `1 1/3 stops`. */
export function thirdsText(say: Say, count: number): string {
  return say.stops(count / 3);
}

/** A pixel value, 0 to 255. */
export function valueText(say: Say, code: number): string {
  return say.number(code);
}
