import {EXPOSURE_FIELDS} from './exposure-fields.js';
import type {ShotFields} from './field.js';
import {LIGHT_FIELDS} from './light-fields.js';
import {OPTICS_FIELDS} from './optics-fields.js';
import {PICTURE_FIELDS} from './picture-fields.js';

/** Reading, writing and judging of every value of a shot, by key. */
export const SHOT_FIELDS: ShotFields = {...EXPOSURE_FIELDS, ...OPTICS_FIELDS, ...PICTURE_FIELDS, ...LIGHT_FIELDS};
