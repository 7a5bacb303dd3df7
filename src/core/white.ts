/** The gray card. */
export {Problem} from './problem.js';
export {readCard} from './white/card.js';
export type {CardFault, CardReading, Patch, Side} from './white/card.js';
export {
  NEUTRAL_STOPS, PICTURE_WHITE, castOf, chromaticity, colourTemperature, glowingBodyUv, mired,
} from './white/cast.js';
export type {Cast, Chromaticity, ColourTemperature} from './white/cast.js';
export {applyTables, gainTables, gainsFromGray} from './white/gains.js';
export type {GainTables, Gains} from './white/gains.js';
export {colourChange, setupChanges} from './white/holds.js';
export type {LightSetup, SetupChange} from './white/holds.js';
export {CARD_REFLECTANCES, findCard} from './white/patches.js';
export type {CardPatches} from './white/patches.js';
