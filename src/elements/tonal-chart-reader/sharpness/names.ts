import type {Sharper, SharpnessChange} from '../../../core/tone/sharpness-change.js';

/** How a place is to be judged. */
export type Sharpness = 'sharp' | 'near' | 'soft' | 'unknown';

/** How this shot, the second, stands against the earlier one. */
export type Change = 'sharper' | 'softer' | 'alike' | 'unknown';

const CHANGE_OF: Readonly<Record<NonNullable<Sharper>, Change>> = {first: 'softer', second: 'sharper', neither: 'alike'};

export function changeOf({sharper}: Pick<SharpnessChange, 'sharper'>): Change {
  return sharper === null ? 'unknown' : CHANGE_OF[sharper];
}
