import {requireFinite, requireNotNegative, requirePositive} from '../problem.js';

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

/**
 * White light of equal energy as the eye weighs it: wavelength in mm, weight, …; weights add up to 1.
 * Source: CIE 1924 photopic luminous efficiency V(λ) at 480, 520, 560, 600 and 640 nm (0.139, 0.710, 0.995, 0.631,
 * 0.175; from memory), divided by their sum.
 */
const WHITE = [
  0.00048, 0.139 / 2.65, 0.00052, 0.71 / 2.65, 0.00056, 0.995 / 2.65, 0.0006, 0.631 / 2.65, 0.00064, 0.175 / 2.65,
] as const;

/**
 * Contrast that white light keeps in a fine pattern of light and dark lines on the sensor.
 * @param workingAperture - f-number at this magnification, above 0
 * @param blur - diameter of the defocus disc on the sensor, mm, 0 and above
 * @param cycles - line pairs per mm on the sensor, 0 and above
 * @param pixel - width in mm over which a pixel gathers light; 0 (when left out) = optics alone
 * @returns 1 to about −0.13; 0 and below = not resolved
 * @throws {Problem} `aperture`, `blur`, `detail`, `pixel`
 * Source: {@link defocusTransfer} for each of five wavelengths with the eye's weights; a square pixel's response is
 * sin(πξp)/(πξp), common textbook knowledge.
 */
export function whiteContrast(workingAperture: number, blur: number, cycles: number, pixel = 0): number {
  requirePositive('aperture', workingAperture);
  requireNotNegative('blur', blur);
  requireNotNegative('detail', cycles);
  requireNotNegative('pixel', pixel);
  const swing = Math.PI * blur * cycles;
  let sum = 0;
  for (let at = 0; at < WHITE.length; at += 2) {
    sum += (WHITE[at + 1] as number) * transfer((WHITE[at] as number) * workingAperture * cycles, swing);
  }
  const box = Math.PI * cycles * pixel;
  return box === 0 ? sum : sum * Math.sin(box) / box;
}
