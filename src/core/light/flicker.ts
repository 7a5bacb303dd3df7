import {requirePositive, requireWithin} from '../problem.js';

/** Mains frequency, Hz. */
export type Mains = 50 | 60;

/**
 * Pulses of light that one exposure takes in: mains lamps pulse twice a cycle.
 * @param shutter - s, > 0; the true time, not the label
 * @returns a number of pulses, not rounded
 * @throws {Problem} naming `shutter`
 * Source: "AC line frequency and shutter speed", photo-spectrum.info, 2017.
 */
export function pulses(mains: Mains, shutter: number): number {
  requirePositive('shutter', shutter);
  return 2 * mains * shutter;
}

/**
 * Largest swing of the exposure about its mean, as the pulses fall early or late in it.
 * @param depth - how far the lamp's light swings about its own mean: 1 = it goes out between pulses, 0 = steady
 * @returns share of the mean exposure, 0 to 1
 * @throws {Problem} naming `shutter` or `flicker-depth`
 * Source: mean of a sine wave over a window, |sin(πn)/(πn)| for n pulses; as {@link pulses}.
 */
export function ripple(mains: Mains, shutter: number, depth = 1): number {
  requireWithin('flicker-depth', depth, 0, 1);
  const turn = Math.PI * pulses(mains, shutter);
  return depth * Math.abs(Math.sin(turn) / turn);
}

/**
 * Difference between the brightest and the darkest an exposure, or a line of one picture, can come out.
 * @returns stops, 0 or above; `Infinity` when a part can stay dark
 * @throws {Problem} as {@link ripple}
 */
export function rippleStops(mains: Mains, shutter: number, depth = 1): number {
  const swing = ripple(mains, shutter, depth);
  return Math.log2((1 + swing) / (1 - swing));
}

/**
 * Most a time may swing and still be called even, stops, for a lamp that goes out between pulses. Our choice: 1/64 s
 * on 60 Hz, which makers list as even under its label 1/60, swings by 0.19; real lamps swing less deeply.
 */
export const EVEN_STOPS = 0.2;

/** What mains lamps do at one shutter time. */
export interface FlickerCheck {
  readonly mains: Mains;
  readonly pulses: number;
  /** Worst swing, stops, for a lamp that goes out between pulses. */
  readonly swing: number;
  readonly even: boolean;
  /** Nearest even time that is longer or shorter, s, from those offered; `null` when none is. */
  readonly longer: number | null;
  readonly shorter: number | null;
}

/**
 * Whether mains lamps come out even at a shutter time, and which times next to it do.
 * @param shutter - s, > 0
 * @param clicks - times that can be set, s, in any order
 * @param limit - most swing that counts as even, stops
 * @throws {Problem} naming `shutter`
 * Source: whole pulses come out even: as {@link pulses}; the limit is ours.
 */
export function checkFlicker(
  mains: Mains, shutter: number, clicks: readonly number[], limit = EVEN_STOPS,
): FlickerCheck {
  const swing = rippleStops(mains, shutter);
  const even = clicks.filter((time) => rippleStops(mains, time) <= limit);
  const longer = even.filter((time) => time > shutter);
  const shorter = even.filter((time) => time < shutter);
  return {
    mains, pulses: pulses(mains, shutter), swing, even: swing <= limit,
    longer: longer.length > 0 ? Math.min(...longer) : null,
    shorter: shorter.length > 0 ? Math.max(...shorter) : null,
  };
}
