/** A row of a profile: way across the line, px, and linear light there. */
export type ProfilePoint = readonly [across: number, light: number];

/** A dark line on a lit ground, as it was found in a profile. */
export interface FoundLine {
  /** Diameter of the disc that blurred it, px */
  readonly blur: number;
  /** px from where it was looked for */
  readonly off: number;
  /** How much better the profile is told with the line than without: ratio of the squared misfits */
  readonly clearness: number;
}

const STEP = 0.05;
const CHORDS = 60;

const shapes = new Map<string, (across: number) => number>();

/** Light of a line of standard deviation `own` px, blurred by a disc: chords of the disc, each as wide as the line. */
function lineShape(blur: number, own: number): (across: number) => number {
  const name = `${blur} ${own}`;
  let shape = shapes.get(name);
  if (!shape) shapes.set(name, shape = madeShape(blur, own));
  return shape;
}

function madeShape(blur: number, own: number): (across: number) => number {
  const half = Math.ceil((blur / 2 + 4 * own + 1) / STEP);
  const chords = Array.from({length: CHORDS}, (_, k) => Math.cos(Math.PI * (k + 1) / (CHORDS + 1)));
  const table = Float64Array.from({length: 2 * half + 1}, (_, at) => chords.reduce((sum, chord) =>
    sum + (1 - chord ** 2) * Math.exp(-(((at - half) * STEP - blur / 2 * chord) ** 2) / (2 * own ** 2)), 0));
  return (across) => table[Math.round(across / STEP) + half] ?? 0;
}

/** Squared misfit of the best mixture of three shapes, by the normal equations, and the share of the third. */
function mixture(points: readonly ProfilePoint[], third: (across: number) => number): {readonly misfit: number; readonly share: number} {
  const rows = points.map(([across, light]) => ({shapes: [1, across, third(across)], light}));
  const matrix = [0, 1, 2].map((i) => [
    ...[0, 1, 2].map((j) => rows.reduce((sum, {shapes}) => sum + (shapes[i] as number) * (shapes[j] as number), 0)),
    rows.reduce((sum, {shapes, light}) => sum + (shapes[i] as number) * light, 0),
  ]);
  const cell = (i: number, j: number): number => matrix[i]?.[j] as number;
  for (let i = 0; i < 3; i++) {
    for (let below = i + 1; below < 3; below++) {
      const factor = cell(below, i) / cell(i, i);
      matrix[below] = (matrix[below] as number[]).map((value, j) => value - factor * cell(i, j));
    }
  }
  const shares = [0, 0, 0];
  for (let i = 2; i >= 0; i--) {
    const known = shares.reduce((sum, share, j) => (j > i ? sum + share * cell(i, j) : sum), 0);
    shares[i] = (cell(i, 3) - known) / cell(i, i);
  }
  const misfit = rows.reduce((sum, {shapes, light}) =>
    sum + (light - shapes.reduce((told, shape, i) => told + shape * (shares[i] as number), 0)) ** 2, 0);
  return {misfit, share: shares[2] as number};
}

/**
 * Looks for a dark line within a pixel of the middle of a profile and tries every blur in steps of 0.1 px.
 * @param own - standard deviation of the line as it stands without blur, px
 */
export function findLine(points: readonly ProfilePoint[], own: number, mostBlur = 16): FoundLine | undefined {
  let best: {blur: number; off: number; misfit: number} | undefined;
  for (let tenths = 0; tenths <= 10 * mostBlur; tenths++) {
    const shape = lineShape(tenths / 10, own);
    for (let off = -1; off <= 1; off += 0.1) {
      const {misfit, share} = mixture(points, (across) => shape(across - off));
      if (share < 0 && misfit < (best?.misfit ?? Infinity)) best = {blur: tenths / 10, off, misfit};
    }
  }
  if (!best) return undefined;
  return {blur: best.blur, off: best.off, clearness: mixture(points, (across) => across ** 2).misfit / best.misfit};
}

/** Standard deviation of a line that is not blurred, px, for the profile of one that is in focus. */
export function ownWidth(points: readonly ProfilePoint[]): number {
  const tried = Array.from({length: 60}, (_, step) => 0.2 + step / 50);
  const misfits = tried.map((own) => {
    const shape = lineShape(0, own);
    return Math.min(...[-0.2, -0.1, 0, 0.1, 0.2].map((off) => mixture(points, (across) => shape(across - off)).misfit));
  });
  return tried[misfits.indexOf(Math.min(...misfits))] as number;
}
