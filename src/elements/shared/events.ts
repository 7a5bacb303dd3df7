import type {Problem} from '../../core/problem.js';
import type {Shot} from '../../core/shot/shot.js';

/** After a reader changed something in the element that fires it. The state is settled when it fires. */
export class ShotChangeEvent extends Event {
  constructor(
    /** What the reader changed, base units. */
    readonly changes: Partial<Shot>,
    /** The whole shot after it. */
    readonly shot: Shot,
  ) {
    super('shot-change', {bubbles: true, composed: true});
  }
}

/** When text or a value could not be used, whoever gave it. What was on screen stays. */
export class ShotProblemEvent extends Event {
  constructor(readonly problem: Problem) {
    super('shot-problem', {bubbles: true, composed: true});
  }
}

declare global {
  interface HTMLElementEventMap {
    'shot-change': ShotChangeEvent;
    'shot-problem': ShotProblemEvent;
  }
}
