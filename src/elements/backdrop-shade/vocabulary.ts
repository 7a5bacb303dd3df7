import type {Lamp} from '../../core/light/lamp.js';
import type {REFLECTANCES} from '../../core/light/reflectances.js';

/** Faces a lamp can have. */
export type LampKind = Lamp['kind'];

/** Backdrops whose share of light is known. */
export type MaterialName = keyof typeof REFLECTANCES;
