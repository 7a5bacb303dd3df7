import {requireFinite, requireNotNegative} from '../problem.js';

/**
 * Transfer of contrast by a perfect lens with a round stop that is out of focus.
 *
 * Signed: below 0 light and dark have changed places (spurious resolution), and from the first 0 on the detail is
 * no longer resolved, whatever the sign. Good to 0.00001.
 * @param s - spatial frequency, 2·λ·(working f-number)·(cycles per mm); 0 = even tone, 2 and above = cut off
 * @param waves - defocus at the edge of the pupil in wavelengths, either sign; 0 = in focus
 * @returns 1 (kept whole) to about −0.13
 * @throws {Problem} `detail` when `s` is negative or not finite, `defocus` when `waves` is not finite
 * Source: H. H. Hopkins, "The frequency response of a defocused optical system", Proc. R. Soc. A 231 (1955),
 * pp. 91–103; his integral, with the pupil coordinate written as a cosine so that it has no corner.
 */
export function defocusTransfer(s: number, waves: number): number {
  requireNotNegative('detail', s);
  requireFinite('defocus', waves);
  return transfer(s / 2, 4 * Math.PI * Math.abs(waves) * s);
}

/**
 * The same without guards, for loops.
 * @param half - frequency as a share of the cut-off, 0 and above
 * @param swing - π·(defocus disc)·(cycles per mm), 0 and above: does not depend on the wavelength
 */
export function transfer(half: number, swing: number): number {
  if (half >= 1) return 0;
  const span = Math.acos(half);
  if (swing === 0) return (2 / Math.PI) * (span - half * Math.sqrt(1 - half * half));
  // Phase the integrand runs through, at its fastest, over half of the interval.
  const turn = swing * Math.sin(span) * span / 2;
  return (4 / Math.PI) * (turn > LARGEST_TURN ? endTerms(half, swing) : summed(half, swing, span, turn));
}

/** Above it the expansion in `endTerms` is good to 0.000001; below it 32 nodes are. */
const LARGEST_TURN = 40;

/** Gauss–Legendre: exact to rounding once there are a few more nodes than half the phase in radians. */
function summed(half: number, swing: number, span: number, turn: number): number {
  const rule = gaussRule(Math.ceil(turn / 2) + 8);
  let sum = 0;
  for (let at = 0; at < rule.length; at += 2) {
    const across = Math.cos(span * (rule[at] as number));
    sum += (rule[at + 1] as number) * (1 - across * across) * Math.cos(swing * (across - half));
  }
  return sum * span;
}

/** What the two ends of the interval leave of a fast oscillation: powers of 1/swing, to the 5/2. */
function endTerms(half: number, swing: number): number {
  const edge = swing * (1 - half);
  const decay = Math.sqrt(Math.PI / 2) * swing ** -1.5;
  return half / (Math.sqrt(1 - half * half) * swing * swing) + decay * (
    Math.cos(edge - 0.75 * Math.PI) - Math.cos(edge - 1.25 * Math.PI) * 3 / (8 * swing));
}

const rules: Float64Array[] = [];

/** Nodes on 0…1 and weights, one after the other, made once for each count. Newton's method on Legendre's recurrence. */
function gaussRule(count: number): Float64Array {
  const known = rules[count];
  if (known) return known;
  const rule = new Float64Array(2 * count);
  for (let k = 0; k < count; k++) {
    let x = Math.cos(Math.PI * (k + 0.75) / (count + 0.5));
    let slope = 1;
    for (let round = 0; round < 6; round++) {
      let last = 1;
      let value = x;
      for (let n = 2; n <= count; n++) [last, value] = [value, ((2 * n - 1) * x * value - (n - 1) * last) / n];
      slope = count * (x * value - last) / (x * x - 1);
      x -= value / slope;
    }
    rule[2 * k] = (1 + x) / 2;
    rule[2 * k + 1] = 1 / ((1 - x * x) * slope * slope);
  }
  rules[count] = rule;
  return rule;
}
