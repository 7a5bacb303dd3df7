import type {Shot} from '../../../core/shot/shot.js';
import type {EntryHost} from '../entries.js';
import type {Reading} from '../reading.js';
import type {Done} from '../ways-view.js';
import type {ZoneWords} from '../words/en.js';
import type {FoldWords} from './words/en.js';

/** What can be folded away. */
export type FoldName = 'figure' | 'camera' | 'picture' | 'stack' | 'distance' | 'rulerPhoto' | 'ownLimit';

/** Words of the bar and of its folds. */
export interface BothWords {
  readonly words: ZoneWords;
  readonly fold: FoldWords;
}

/** What the folds need of their element. */
export interface FoldHost extends EntryHost, BothWords {
  readonly words: ZoneWords;
  /** Nothing while nothing can be computed; the fields are shown all the same. */
  readonly reading: Reading | undefined;
  /** Sets what a button says, and leaves a line there that takes it back. */
  readonly press: (place: FoldName, what: () => string, changes: Partial<Shot>) => void;
  readonly done: (place: FoldName) => Done | undefined;
}
