/** What most of a set of readings agree on. */
export interface Agreement {
  /** The agreed value. */
  readonly value: number;
  /** Half of the range that holds the middle 68 of 100 parts of the weight among those that agree. */
  readonly spread: number;
  /** Share of the weight within `reach` of the value, 0 to 1. */
  readonly share: number;
}

/** Width of a step of the search, as a part of `reach`. */
const STEPS_PER_REACH = 16;

/**
 * The value that the largest part of the weight lies near: where readings differ because something moved, the mean
 * and even the median follow what moved, this does not as long as more agree than disagree alike.
 * @param values - readings; those that are not finite are left out
 * @param weights - weight of each, 0 or above
 * @param reach - how far from the agreed value still agrees, above 0
 * @returns `undefined` when no reading has weight
 * Source: mode by a sliding window, then the weighted median inside it; common practice of robust statistics.
 */
export function agree(values: Float64Array, weights: Float64Array, reach: number): Agreement | undefined {
  const order = [...values.keys()].filter((at) => Number.isFinite(values[at]) && (weights[at] as number) > 0)
    .sort((a, b) => (values[a] as number) - (values[b] as number));
  const total = sum(order, weights);
  if (!(total > 0)) return undefined;
  const middle = densest(order, values, weights, reach);
  const near = order.filter((at) => Math.abs((values[at] as number) - middle) <= reach);
  const held = sum(near, weights);
  const quantile = (share: number): number => {
    let below = 0;
    for (const at of near) {
      below += weights[at] as number;
      if (below >= share * held) return values[at] as number;
    }
    return middle;
  };
  return {value: quantile(0.5), spread: (quantile(0.84) - quantile(0.16)) / 2, share: held / total};
}

function sum(order: readonly number[], weights: Float64Array): number {
  return order.reduce((total, at) => total + (weights[at] as number), 0);
}

/** Middle of the window of half-width `reach` that weighs most, its own middle counting more than its ends. */
function densest(order: readonly number[], values: Float64Array, weights: Float64Array, reach: number): number {
  const step = reach / STEPS_PER_REACH;
  const least = values[order[0] as number] as number;
  const density = new Map<number, number>();
  for (const at of order) {
    const place = Math.round(((values[at] as number) - least) / step);
    for (let off = 1 - STEPS_PER_REACH; off < STEPS_PER_REACH; off++) {
      const part = (weights[at] as number) * (1 - Math.abs(off) / STEPS_PER_REACH);
      density.set(place + off, (density.get(place + off) ?? 0) + part);
    }
  }
  let best = 0;
  let most = -1;
  for (const [place, weight] of density) if (weight > most) [best, most] = [place, weight];
  return least + best * step;
}
