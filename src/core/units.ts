import {Problem} from './problem.js';

/** Exact by definition (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

/** Units a length can be typed and shown in. Inside, every length is in mm. */
export type LengthUnit = 'mm' | 'cm' | 'in';

const MM_PER: Readonly<Record<string, number>> = {
  mm: 1, millimetre: 1, millimetres: 1, millimeter: 1, millimeters: 1,
  cm: 10, centimetre: 10, centimetres: 10, centimeter: 10, centimeters: 10,
  m: 1000, metre: 1000, metres: 1000, meter: 1000, meters: 1000,
  in: MM_PER_INCH, inch: MM_PER_INCH, inches: MM_PER_INCH, '"': MM_PER_INCH, '″': MM_PER_INCH, '”': MM_PER_INCH,
  zoll: MM_PER_INCH, po: MM_PER_INCH, pouce: MM_PER_INCH, pouces: MM_PER_INCH, pulgada: MM_PER_INCH, pulgadas: MM_PER_INCH,
  cal: MM_PER_INCH, cala: MM_PER_INCH, cale: MM_PER_INCH, cali: MM_PER_INCH,
  ft: 12 * MM_PER_INCH, foot: 12 * MM_PER_INCH, feet: 12 * MM_PER_INCH, "'": 12 * MM_PER_INCH, '′': 12 * MM_PER_INCH,
};

/** Single-character fractions that keyboards and word processors make. */
const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2', '⅓': '1/3', '⅔': '2/3', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
};

/**
 * The number written in `text`: `35`, `3.5`, `3,5`, `1/2`, `1 1/2`, `½`, `-4`. A comma is a decimal comma.
 * @returns the number, never -0, or `undefined` when the text is anything else (units, words, nothing)
 */
export function readNumber(text: string): number | undefined {
  const plain = text.trim().replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`).replace(/[−–]/g, '-').trim();
  const parts = /^([+-]?)\s*(?:(\d+)\s+)?(\d+)\s*[/⁄]\s*(\d+)$/.exec(plain);
  if (parts) {
    const value = Number(parts[2] ?? 0) + Number(parts[3]) / Number(parts[4]);
    if (!Number.isFinite(value)) return undefined;
    return (parts[1] === '-' ? -value : value) + 0;
  }
  if (!/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(plain)) return undefined;
  const value = Number(plain.replace(',', '.')) + 0;
  return Number.isFinite(value) ? value : undefined;
}

/**
 * A length as a person writes it: `60`, `60 mm`, `6,5cm`, `3 1/2"`, `0.6 m`, `2 ft 3 in`.
 * @param parameter - name for the problem: `base-depth`
 * @param text - as typed
 * @param unit - meant when none is written
 * @returns mm; may be 0 or negative, which the caller judges. A {@link Problem} when it cannot be read.
 */
export function readLength(parameter: string, text: string, unit: LengthUnit = 'mm'): number | Problem {
  const wanted = `a length such as ${EXAMPLE[unit]}`;
  const pieces = text.trim().toLowerCase().replace(/\.$/, '').match(/[^a-z"″”'′]+|[a-z]+|["″”'′]/g);
  if (!pieces) return new Problem(parameter, text, wanted);
  let mm = 0;
  for (let at = 0; at < pieces.length; at += 2) {
    const number = readNumber(pieces[at] ?? '');
    const per = MM_PER[(pieces[at + 1] ?? unit).trim()];
    if (number === undefined || per === undefined) return new Problem(parameter, text, wanted);
    mm += (mm < 0 ? -1 : 1) * number * per;
  }
  return Number.isFinite(mm) ? mm : new Problem(parameter, text, wanted);
}

const EXAMPLE: Readonly<Record<LengthUnit, string>> = {mm: '60 mm', cm: '6 cm', in: '2 3/8 in'};

/**
 * Millimetres in another unit, not rounded.
 * @param mm - any finite length
 */
export function lengthIn(mm: number, unit: LengthUnit): number {
  return mm / (MM_PER[unit] as number);
}
