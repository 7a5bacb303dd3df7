/** Stops, clicks, readouts, trades and the settings of a lesson. */
export {Problem} from './problem.js';
export {WIDEST, clickAt, clicks, clicksPrinted, exactFromNominal, nearestClick} from './exposure/clicks.js';
export type {Click, ClicksPerStop, Limits, Range} from './exposure/clicks.js';
export {findSteps} from './exposure/find-settings.js';
export type {FoundStep, FoundSteps} from './exposure/find-settings.js';
export type {Frame, MeantBy, TrailLink, TrailStep} from './exposure/judge-trail.js';
export {readMeant} from './exposure/meant.js';
export type {Said, Wish} from './exposure/meant.js';
export {mendText} from './exposure/mend-trail.js';
export type {Mend} from './exposure/mend-trail.js';
export {likelyMisreadings, misreading} from './exposure/misread.js';
export {readExposure} from './exposure/read-exposure.js';
export type {ExposureReading} from './exposure/read-exposure.js';
export {readShutter} from './exposure/read-shutter.js';
export {readAperture, readCorrection, readIso} from './exposure/read.js';
export type {OtherReading, ReadAs, Reading} from './exposure/reading.js';
export {
  SETTINGS, STOPS_PER_DOUBLING, afterStops, apertureStops, depthStops, exposureStops, exposureValue,
  exposureValue100, isoStops, lightStops, shutterStops,
} from './exposure/stops.js';
export type {Exposure, Setting} from './exposure/stops.js';
export {trade} from './exposure/trade.js';
export type {Trade, TradeLimit, TradeRequest, TradeWayOut} from './exposure/trade.js';
export {trail} from './exposure/trail.js';
export type {Trail, TrailOptions} from './exposure/trail.js';
export {writeTrail} from './exposure/write-trail.js';
export {writeAperture, writeIso, writeSetting, writeShutter, writeStops} from './exposure/write.js';
export type {ShutterStyle} from './exposure/write.js';
export {advisedTrade} from './tone/advised.js';
