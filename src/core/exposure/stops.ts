import {requirePositive, requireWithin} from '../problem.js';

/** What a camera is set to. f-number as marked for infinity, seconds, ISO speed; each above 0. */
export interface Exposure {
  readonly aperture: number;
  readonly shutter: number;
  readonly iso: number;
}

/** One of the three things a camera is set by. */
export type Setting = keyof Exposure;

/** The three settings in the order in which they are spoken. */
export const SETTINGS: readonly Setting[] = ['aperture', 'shutter', 'iso'];

/**
 * Stops of light for each doubling of the number: a doubled f-number passes a quarter of the light.
 * Source: light passed is proportional to t·S/N²; one stop is a factor of two (ISO 2720 through texts that quote it).
 */
export const STOPS_PER_DOUBLING: Readonly<Record<Setting, number>> = {aperture: -2, shutter: 1, iso: 1};

/**
 * Change in light when one setting goes from one value to another.
 * @param from - f-number, seconds or ISO speed, above 0
 * @param to - the same, above 0
 * @returns stops; positive = brighter. Not rounded, never -0.
 * @throws {Problem} named for the setting, when either is not a finite number above 0
 */
export function lightStops(setting: Setting, from: number, to: number): number {
  requirePositive(setting, from);
  requirePositive(setting, to);
  return STOPS_PER_DOUBLING[setting] * Math.log2(to / from) + 0;
}

/** More stops than lie between any two exposures; 2 to this power is still a number. */
const MOST_STOPS = 900;

/**
 * Where a setting has to go to change the light by so many stops; off the clicks, if need be.
 * @param value - f-number, seconds or ISO speed, above 0
 * @param stops - positive = brighter, from -900 to 900
 * @returns f-number, seconds or ISO speed, exact
 * @throws {Problem} named for the setting, when the value is not a finite number above 0; `stops`
 */
export function afterStops(setting: Setting, value: number, stops: number): number {
  requirePositive(setting, value);
  requireWithin('stops', stops, -MOST_STOPS, MOST_STOPS);
  return value * 2 ** (stops / STOPS_PER_DOUBLING[setting]);
}

/**
 * Change in light from one f-number to another, 2·log2(from/to).
 * @returns stops; positive = brighter (opened up). Not rounded.
 * @throws {Problem} `aperture`, when either is not a finite number above 0
 */
export function apertureStops(from: number, to: number): number {
  return lightStops('aperture', from, to);
}

/**
 * Change in light from one shutter time to another, log2(to/from).
 * @param from - s
 * @param to - s
 * @returns stops; positive = brighter (longer). Not rounded.
 * @throws {Problem} `shutter`, when either is not a finite number above 0
 */
export function shutterStops(from: number, to: number): number {
  return lightStops('shutter', from, to);
}

/**
 * Change in brightness of the picture from one ISO speed to another, log2(to/from).
 * @returns stops; positive = brighter. Not rounded.
 * @throws {Problem} `iso`, when either is not a finite number above 0
 */
export function isoStops(from: number, to: number): number {
  return lightStops('iso', from, to);
}

/**
 * How much brighter the second exposure makes the same scene.
 * @returns stops; positive = brighter; 0 when the two balance. Not rounded.
 * @throws {Problem} named for the setting that is not a finite number above 0
 */
export function exposureStops(from: Exposure, to: Exposure): number {
  return SETTINGS.reduce((stops, setting) => stops + lightStops(setting, from[setting], to[setting]), 0);
}

/**
 * Ev of an aperture and a shutter time, log2(N²/t). ISO has no part in it.
 * @returns Ev; one more is half the light on the sensor
 * @throws {Problem} `aperture` or `shutter`, when not a finite number above 0
 * Source: APEX, ASA PH2.5-1960 through texts that quote it.
 */
export function exposureValue({aperture, shutter}: Pick<Exposure, 'aperture' | 'shutter'>): number {
  return lightStops('aperture', aperture, 1) + lightStops('shutter', shutter, 1);
}

/**
 * Ev₁₀₀: the Ev which, at ISO 100, would make the picture as bright as this exposure does. It speaks of the light on
 * the scene: two exposures with the same Ev₁₀₀ balance.
 * @throws {Problem} named for the setting that is not a finite number above 0
 * Source: Ev₁₀₀ = log2(N²/t) − log2(S/100), APEX.
 */
export function exposureValue100(exposure: Exposure): number {
  return exposureValue(exposure) + lightStops('iso', exposure.iso, 100);
}

/**
 * Depth gained from one f-number to another, counted in stops of aperture: +2 is what stopping down from f/8 to f/16
 * brings, a depth of field about twice as long.
 * @throws {Problem} `aperture`, when either is not a finite number above 0
 * Source: for close work the depth of field is proportional to the f-number.
 */
export function depthStops(from: number, to: number): number {
  return lightStops('aperture', to, from);
}
