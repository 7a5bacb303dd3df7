import type {Flag} from '../light/flag.js';
import type {Lamp} from '../light/lamp.js';
import {minus} from '../light/space.js';
import type {Point} from '../light/space.js';
import type {Comparison} from '../tone/compare.js';

/** What a gain belongs to: everything that colours the light, and what the camera made of it. */
export interface LightSetup {
  readonly lamps: readonly Lamp[];
  readonly flags: readonly Flag[];
  /** The camera's white-balance setting, in whatever words; compared as it stands. */
  readonly whiteBalance?: string;
}

/** Something that differs between the card shot and the shot its gains are used for. */
export type SetupChange =
  | {readonly changed: 'lamps' | 'flags'; readonly before: number; readonly after: number}
  /** Lamp or flag number `index` (from 0) stands `by` mm elsewhere. */
  | {readonly changed: 'lamp-moved' | 'flag-moved'; readonly index: number; readonly by: number}
  /** Lamp number `index` gives `by` stops more light against the first lamp; less when negative. */
  | {readonly changed: 'lamp-power'; readonly index: number; readonly by: number}
  | {readonly changed: 'white-balance'; readonly before: string | undefined; readonly after: string | undefined}
  /** Measured in the two pictures: stops by which red and blue moved against green. */
  | {readonly changed: 'colour'; readonly red: number; readonly blue: number};

/** A lamp or flag put back to within this many mm counts as not moved. Our decision. */
const PUT_BACK_MM = 10;
/** Stops by which a lamp may drift against the others: half of a third-stop click. Our decision. */
const SAME_POWER = 1 / 6;
/** Stops of colour between two pictures that compression alone can make. Found on the rendered pictures. */
const SAME_COLOUR = 0.1;

/**
 * Whether the gains of a card shot hold for another shot, from the two set-ups. All lamps brighter or darker alike is
 * exposure, and no change.
 * @returns what speaks against it; empty when the gains hold
 */
export function setupChanges(card: LightSetup, shot: LightSetup): SetupChange[] {
  const changes: SetupChange[] = [];
  for (const kind of ['lamps', 'flags'] as const) {
    const [before, after] = [card[kind], shot[kind]];
    if (before.length !== after.length) changes.push({changed: kind, before: before.length, after: after.length});
    before.forEach(({position}, index) => {
      const other = after[index];
      const by = other ? distance(position, other.position) : 0;
      if (by > PUT_BACK_MM) changes.push({changed: kind === 'lamps' ? 'lamp-moved' : 'flag-moved', index, by});
    });
  }
  card.lamps.forEach((_, index) => {
    const by = againstFirst(shot.lamps, index) - againstFirst(card.lamps, index);
    if (shot.lamps[index] && Math.abs(by) > SAME_POWER) changes.push({changed: 'lamp-power', index, by});
  });
  if (card.whiteBalance !== shot.whiteBalance) {
    changes.push({changed: 'white-balance', before: card.whiteBalance, after: shot.whiteBalance});
  }
  return changes;
}

function distance(a: Point, b: Point): number {
  return Math.hypot(...minus(a, b));
}

function againstFirst(lamps: readonly Lamp[], index: number): number {
  return (lamps[index]?.power ?? 0) - (lamps[0]?.power ?? 0);
}

/**
 * The same from the two pictures: a light of another colour shows wherever they agree.
 * @param comparison - of the card shot with the shot the gains are for
 * @returns what speaks against it; `undefined` when the pictures do not show the same set, so that nothing can be said
 */
export function colourChange({colour}: Pick<Comparison, 'colour'>): SetupChange[] | undefined {
  if (!colour) return undefined;
  return Math.max(Math.abs(colour.red), Math.abs(colour.blue)) > SAME_COLOUR ? [{changed: 'colour', ...colour}] : [];
}
