import {MM_PER_INCH, lengthIn, type LengthUnit} from '../../core/units.js';

/** Holds a number and its unit together. */
export const NBSP = '\u00a0';

/** Digits after the point, without zeros that say nothing, never −0. */
export const plain = (value: number, digits: number): string => String(+value.toFixed(digits) + 0).replace('-', '−');

/** Text whose blanks do not break. */
export const tight = (text: string): string => text.replaceAll(' ', NBSP);

/** `2 900`, thousands set apart by a thin space that does not break. */
export const whole = (value: number): string => String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, '\u202f');

/**
 * Size of a length, sign left out, as finely as anybody can point: 9.4 mm, 41 mm, 1.2 cm, 2 3/8 in.
 * @param fine - hundredths, where two lengths would otherwise read alike
 */
export function length(mm: number, unit: LengthUnit, fine = false): string {
  const size = Math.abs(mm);
  if (fine) return `${plain(lengthIn(size, unit), 2)}${NBSP}${unit}`;
  if (unit === 'in') return `${inches(size / MM_PER_INCH)}${NBSP}in`;
  const text = unit === 'cm' ? plain(size / 10, size < 9.95 ? 2 : 1) : plain(size, size < 9.95 ? 1 : 0);
  return `${size >= 1000 && unit === 'mm' ? whole(size) : text}${NBSP}${unit}`;
}

function inches(size: number): string {
  const per = size < 12 ? 16 : 4;
  const parts = Math.round(size * per);
  if (parts === 0) return plain(size, 2);
  let [over, under] = [parts % per, per];
  while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
  return [Math.floor(parts / per) || '', over ? `${over}/${under}` : ''].filter(Boolean).join(NBSP);
}

/** A length to go into a field: exact enough to be taken back. */
export function fieldLength(mm: number, unit: LengthUnit): string {
  const sixteenths = mm / MM_PER_INCH * 16;
  if (unit === 'in') {
    return Math.abs(sixteenths - Math.round(sixteenths)) < 0.001 && sixteenths > 0
      ? `${inches(mm / MM_PER_INCH)} in` : `${plain(mm / MM_PER_INCH, 3)} in`;
  }
  return unit === 'cm' ? `${plain(mm / 10, 2)} cm` : `${plain(mm, 1)} mm`;
}

/** `3.4 px`. */
export const pixels = (value: number): string => `${value < 9.95 ? plain(value, 1) : whole(value)}${NBSP}px`;

/** `36 %`. */
export const percent = (share: number): string => `${plain(share * 100, 0)}${NBSP}%`;
