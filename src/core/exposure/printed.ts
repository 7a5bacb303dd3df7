import type {Setting} from './stops.js';

/**
 * What dials, bodies and lenses print on their clicks, from the first index on; index 0 is f/1, 1 s, ISO 100. Times up
 * to a quarter of a second are printed as fractions and listed by their denominators. Full stops are every third
 * of the thirds.
 * Source: full, half and third stop tables of the encyclopedia article “F-number”; the teaching page “Shutter speed
 * chart (whole, half and third stops)”; ISO thirds 320 to 2500 from a published paper, the rest from memory. Beyond f/22, 1/1000 s and
 * ISO 3200: common practice, no source.
 */
interface Printed {
  readonly first: number;
  readonly labels: string;
}

const THIRDS: Readonly<Record<Setting, Printed>> = {
  aperture: {first: -3, labels: '0.7 0.8 0.9 1 1.1 1.2 1.4 1.6 1.8 2 2.2 2.5 2.8 3.2 3.5 4 4.5 5 5.6 6.3 7.1 8 9 10 11 '
    + '13 14 16 18 20 22 25 29 32 36 40 45 51 57 64 72 81 90 102 114 128'},
  shutter: {first: -45, labels: '32000 25600 20000 16000 12800 10000 8000 6400 5000 4000 3200 2500 2000 1600 1250 1000 '
    + '800 640 500 400 320 250 200 160 125 100 80 60 50 40 30 25 20 15 13 10 8 6 5 4 '
    + '0.3 0.4 0.5 0.6 0.8 1 1.3 1.6 2 2.5 3.2 4 5 6 8 10 13 15 20 25 30'},
  iso: {first: -6, labels: '25 32 40 50 64 80 100 125 160 200 250 320 400 500 640 800 1000 1250 1600 2000 2500 3200 '
    + '4000 5000 6400 8000 10000 12800 16000 20000 25600 32000 40000 51200 64000 80000 102400 128000 160000 204800 '
    + '256000 320000 409600'},
};

const HALVES: Readonly<Record<Setting, Printed>> = {
  aperture: {first: -2, labels: '0.7 0.8 1 1.2 1.4 1.7 2 2.4 2.8 3.3 4 4.8 5.6 6.7 8 9.5 11 13 16 19 22 27 32 38 45 54 '
    + '64 76 90 108 128'},
  shutter: {first: -30, labels: '32000 24000 16000 12000 8000 6000 4000 3000 2000 1500 1000 750 500 350 250 180 125 90 '
    + '60 45 30 20 15 10 8 6 4 0.3 0.5 0.7 1 1.5 2 3 4 6 8 10 15 20 30'},
  iso: {first: -4, labels: '25 35 50 70 100 140 200 280 400 560 800 1100 1600 2200 3200 4500 6400 9000 12800 18000 '
    + '25600 36000 51200 72000 102400 144000 204800 288000 409600'},
};

/**
 * Times some bodies print otherwise, with the third-stop click they stand for. Common practice, no source.
 */
export const PRINTED_OTHERWISE: readonly (readonly [seconds: number, thirds: number])[] = [
  [4 / 3, 1], [1 / 1.3, -1], [1 / 1.6, -2], [1 / 3, -5],
  [1 / 12500, -41], [1 / 13000, -41], [1 / 25000, -44], [1 / 26000, -44],
];

const split = /* @__PURE__ */ new Map<string, readonly string[]>();

/** The labels one by one; taken apart once, since a trade asks for hundreds. */
function listOf(labels: string): readonly string[] {
  const known = split.get(labels) ?? labels.split(' ');
  split.set(labels, known);
  return known;
}

/**
 * What is printed on a click.
 * @param index - clicks from f/1, 1 s or ISO 100
 * @param clicksPerStop - 1, 2 or 3
 * @returns `11`, `1/60`, `0.6`, `30`, `100`; `undefined` where nothing is printed
 */
export function printedLabel(setting: Setting, index: number, clicksPerStop: number): string | undefined {
  const {first, labels} = (clicksPerStop === 2 ? HALVES : THIRDS)[setting];
  const label = listOf(labels)[(clicksPerStop === 1 ? 3 * index : index) - first];
  return label && setting === 'shutter' && index <= -2 * clicksPerStop ? `1/${label}` : label;
}
