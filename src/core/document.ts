/** The record as other programs read it: a JSON document. */
export {Problem} from './problem.js';
export {
  DOCUMENT_FORMAT, DOCUMENT_LIMITS, DOCUMENT_VERSION, readDocument, readShots, writeDocument,
} from './shot/document.js';
export type {DocumentFault} from './shot/document.js';
