import {encode} from 'uqr';

/** A QR code as a square of modules, its quiet zone of four included, and the dark ones as an SVG path. */
export interface QrCode {
  readonly size: number;
  readonly path: string;
}

/**
 * The QR code of a text.
 * @returns `null` when the text is longer than any code can hold
 * Source: ISO/IEC 18004, quiet zone of four modules.
 */
export function qrCode(text: string): QrCode | null {
  try {
    const {size, data} = encode(text, {ecc: 'L', boostEcc: true, border: 4});
    return {size, path: data.flatMap((row, y) => runs(row).map(([from, to]) => `M${from} ${y}h${to - from}v1h${from - to}z`)).join('')};
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return null;
  }
}

/** Stretches of dark modules, the end not included. */
function runs(row: readonly boolean[]): readonly (readonly [from: number, to: number])[] {
  return row.flatMap((dark, x) => {
    if (!dark || row[x - 1]) return [];
    const end = row.indexOf(false, x);
    return [[x, end < 0 ? row.length : end] as const];
  });
}
