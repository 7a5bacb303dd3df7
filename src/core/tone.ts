/** The tonal chart of a photo, what it advises, and how sharp the photo is where. */
export {Problem} from './problem.js';
export {exposureAdvice} from './tone/advice.js';
export type {Advice, AdviceReason, Intent} from './tone/advice.js';
export {brightnessCode} from './tone/brightness.js';
export {DARK_BACKDROP_AIMS, endsFromCard, endsFromCrop, exposureForAims} from './tone/card-exposure.js';
export type {IntentExposure, ToneAims, ToneEnds} from './tone/card-exposure.js';
export {STRAY_SHARE, channelEdges, edgesOf} from './tone/clipping.js';
export type {ChannelEdges, Edges} from './tone/clipping.js';
export {compareShots, judgeShift} from './tone/compare.js';
export type {Comparison, EdgeChange, PerChannel, ShiftVerdict} from './tone/compare.js';
export {cropChange} from './tone/cropped.js';
export type {ChannelChange, CropChange} from './tone/cropped.js';
export {focusAlong, focusBetween} from './tone/focus-line.js';
export type {FocusOnLine} from './tone/focus-line.js';
export {GRAY_LIGHT, readLevel} from './tone/level.js';
export type {ChannelLevel, CodeShift, Level} from './tone/level.js';
export {
  LUMINANCE_WEIGHTS, NEAR_WHITE_CODE, TOP_CODE, codeFromLinear, codeStops, linearFromCode, linearTable, luminance,
} from './tone/light.js';
export {codeReached, percentileCode} from './tone/percentiles.js';
export {cropOnto, wholeOf} from './tone/pixels.js';
export type {Crop, Pixels} from './tone/pixels.js';
export {compareSharpness} from './tone/sharpness-change.js';
export type {Sharper, SharpnessChange, SharpnessComparison, Stretch} from './tone/sharpness-change.js';
export {sharpnessAlong, sharpnessGrid} from './tone/sharpness.js';
export type {Line, SharpnessGrid, SharpnessPoint} from './tone/sharpness.js';
export {CHANNELS, COLOUR_CHANNELS, tallyPixels} from './tone/tally.js';
export type {Channel, Tally} from './tone/tally.js';
export {countTileRow, startTiles, tallyFromTiles} from './tone/tiles.js';
export type {TileTallies} from './tone/tiles.js';
