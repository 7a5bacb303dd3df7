/** The record of a shot: its values, how each is read and written, and its link. */
export {Problem} from './problem.js';
export {shotDifference} from './shot/difference.js';
export type {Difference} from './shot/difference.js';
export {attributeOf} from './shot/field.js';
export type {Field, ShotFields} from './shot/field.js';
export {SHOT_FIELDS} from './shot/fields.js';
export {framingOf, outlineOf} from './shot/framing.js';
export type {ShotFraming} from './shot/framing.js';
export {LINK_VERSION, readLink, writeLink} from './shot/link.js';
export type {LinkNotice, LinkReading} from './shot/link.js';
export {planJobOf, wayChanges, wayIsSet, wishChanges} from './shot/plan-job.js';
export {keyOf, recordOf, stateOf} from './shot/record.js';
export type {Measured, MeasuredKey, RecordExtras, ShotRecord} from './shot/record.js';
export {DEFAULT_SHOT, completeShot} from './shot/shot.js';
export type {ApertureShown, CropShare, Shot, ShotKey} from './shot/shot.js';
export {withText, withValue, withValues} from './shot/saying.js';
export {EMPTY_STATE, filledFrom, withoutKey} from './shot/state.js';
export type {ShotState} from './shot/state.js';
