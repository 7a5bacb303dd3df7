/** Everything, part by part; a page that bundles nothing loads less by asking for one part. */
export {Problem} from './problem.js';
export {MM_PER_INCH, lengthIn, readLength, readNumber} from './units.js';
export type {LengthUnit} from './units.js';
export * from './exposure.js';
export * from './optics.js';
export * from './tone.js';
export * from './white.js';
export * from './light.js';
export * from './shot.js';
export * from './sheet.js';
export * from './document.js';
