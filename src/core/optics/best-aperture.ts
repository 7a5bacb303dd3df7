import {Problem, requireFinite} from '../problem.js';
import {contrastAlong, detailCycles} from './contrast.js';
import type {Detail} from './contrast.js';
import {entrancePupil, pupilToSubject, workingAperture} from './lens.js';
import type {LensSetup} from './lens.js';

/** Depth seen from the focus plane: mm behind (+) or before (−) it along the optical axis, front not behind back. */
export interface Ends {
  readonly front: number;
  readonly back: number;
}

/** The least contrast within a depth, and where it is. */
export interface WorstContrast {
  /** 1 to about −0.13; 0 and below = the detail is lost there */
  readonly worst: number;
  /** mm behind (+) or before (−) the focus plane */
  readonly depth: number;
  /** On which side of the focus plane that is */
  readonly where: 'front' | 'back' | 'focus';
}

/** What one f-number makes of a depth. */
export interface ApertureContrast extends WorstContrast {
  readonly aperture: number;
  /** Contrast in the focus plane: what diffraction alone leaves. The rest, down to `worst`, goes to defocus. */
  readonly inFocus: number;
}

/** Swing of the phase at which a detail can first be lost; below it contrast falls all the way. First zero of J1. */
const FIRST_LOSS = 3.83;

/** The deepest reversal lies below this swing, reckoned for the part of the pupil that overlaps. */
const DEEPEST = 8;

const SAMPLES = 64;

/**
 * Worst contrast of a detail anywhere between two ends. Where a reversal lies inside, it counts, not the ripple at
 * the end; good to 0.002 in that case, exact otherwise.
 * @param pixel - width in mm over which a pixel of the sensor gathers light; 0 (when left out) = optics alone
 * @throws {Problem} as contrastAt; `depth` when the front lies behind the back
 * Source: contrastAt at both ends and, past the first zero, along the way. The deepest reversal of the transfer
 * function (Hopkins 1955) is its first, at 5.1 radians of phase for coarse detail up to 5.5 for the finest.
 */
export function worstContrast(lens: LensSetup, ends: Ends, detail: Detail, pixel = 0): WorstContrast {
  requireFinite('depth', ends.front);
  requireFinite('depth', ends.back);
  if (!(ends.back >= ends.front)) throw new Problem('depth', ends.back - ends.front, 'a front end before the back end');
  const along = contrastAlong(lens, detail, pixel);
  let depth = ends.front;
  let worst = along(depth);
  const consider = (next: number): void => {
    const contrast = along(next);
    // Ends that are meant to be equal differ in the last digit: the front wins.
    if (contrast < worst - 1e-9) [worst, depth] = [contrast, next];
  };
  consider(ends.back);
  for (const next of reversals(lens, ends, detail)) consider(next);
  return {worst, depth, where: depth < 0 ? 'front' : depth > 0 ? 'back' : 'focus'};
}

/** Depths between the ends at which the first reversal may be deepest. */
function reversals(lens: LensSetup, ends: Ends, detail: Detail): number[] {
  const distance = pupilToSubject(lens);
  const farBlur = lens.magnification * entrancePupil(lens.focalLength, lens.aperture);
  const cycles = detailCycles(lens, detail);
  const cut = 0.00056 * workingAperture(lens.aperture, lens.magnification, lens.pupilRatio) * cycles;
  const most = DEEPEST / (1 - Math.min(0.9, cut));
  return [ends.front, ends.back].flatMap((end) => {
    const behind = Math.sign(end);
    // Short of the first loss contrast only falls; a detail on the figure is finest at the back end.
    const finest = Math.max(cycles, detailCycles(lens, detail, ends.back));
    if (Math.PI * finest * farBlur * Math.abs(end) / (distance + end) < FIRST_LOSS) return [];
    return Array.from({length: SAMPLES + 1}, (_, at) => {
      const share = FIRST_LOSS * (most / FIRST_LOSS) ** (at / SAMPLES) / (Math.PI * cycles) / farBlur;
      // A detail on the figure gets coarser on the sensor as its blur grows, and finer as it shrinks.
      return behind * distance * share / ('onFigure' in detail ? 1 : 1 - behind * share);
    }).filter((depth) => depth * behind > 0 && depth > ends.front && depth < ends.back);
  });
}

/**
 * The f-number whose worst contrast over the depth is highest, with the whole curve: wide open the ends are lost to
 * defocus, stopped down everything is lost to diffraction.
 *
 * The focus plane stays where the ends say it is. Where both ends are equally blurred it is so at every f-number, so
 * with focusForBothEnds there is nothing to move from click to click.
 * @param lens - its own f-number does not count
 * @param apertures - f-numbers that can be set, in any order, exact clicks rather than their labels
 * @param pixel - width in mm over which a pixel of the sensor gathers light; 0 (when left out) = optics alone
 * @returns the best one (of equals the smaller opening, which is more forgiving), and all in the order given
 * @throws {Problem} `aperture` when the list is empty; otherwise as {@link worstContrast}
 * Source: {@link worstContrast} for each.
 */
export function bestAperture(
  lens: Omit<LensSetup, 'aperture'>, ends: Ends, detail: Detail, apertures: readonly number[], pixel = 0,
): {readonly best: ApertureContrast; readonly curve: readonly ApertureContrast[]} {
  const curve = apertures.map((aperture): ApertureContrast => {
    const set = {...lens, aperture};
    return {...worstContrast(set, ends, detail, pixel), aperture, inFocus: contrastAlong(set, detail, pixel)(0)};
  });
  const [first, ...others] = curve;
  if (!first) throw new Problem('aperture', apertures, 'at least one f-number that can be set');
  const best = others.reduce((so, next) => (better(next, so) ? next : so), first);
  return {best, curve};
}

function better(one: ApertureContrast, other: ApertureContrast): boolean {
  return one.worst === other.worst ? one.aperture > other.aperture : one.worst > other.worst;
}
