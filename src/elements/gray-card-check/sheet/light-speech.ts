import type {Lights} from '../../../core/light/set-text.js';
import type {LengthUnit} from '../../../core/units.js';
import type {Cast} from '../../../core/white/cast.js';
import type {SetupChange} from '../../../core/white/holds.js';
import {NBSP} from '../../shared/say.js';
import {measuredStops} from './card-speech.js';
import {tintOf} from './judge.js';
import type {Holds} from './still-holds.js';
import type {SheetWords} from './words/en.js';

/** Against neutral. */
export type Warmth = 'warmer' | 'cooler';
export type Tint = 'greener' | 'pinker';

/** What neutral light of an sRGB picture is called, K. */
const NEUTRAL_KELVIN = 6500;

/** Colour temperatures are told to this, K. */
const KELVIN_STEP = 50;

/** How the light departs from the picture's own white. */
export function castText(words: SheetWords, cast: Cast): string {
  const {warmer, temperature} = cast;
  const tint = tintOf(cast);
  const stops = measuredStops(words, cast.warmth);
  if (warmer && tint) return (temperature ? words.castBothOfLamp : words.castBoth)(warmer, stops, tint);
  if (warmer) return words.castWarm(warmer, stops);
  if (tint) return (temperature ? words.castTintOfLamp : words.castTint)(tint);
  return words.castNone;
}

/** The same as a colour temperature, where it means something, and what a mired is where they are counted. */
export function temperatureText(words: SheetWords, {temperature, miredShift, warmer}: Cast): {readonly text: string; readonly note?: string} {
  if (!temperature || miredShift === undefined) return {text: words.noTemperature};
  const {say} = words;
  const kelvin = (value: number): string => `${say.whole(value)}${NBSP}K`;
  const [now, neutral] = [kelvin(Math.round(temperature.kelvin / KELVIN_STEP) * KELVIN_STEP), kelvin(NEUTRAL_KELVIN)];
  const mired = Math.round(Math.abs(miredShift));
  if (!warmer || mired === 0) return {text: words.temperature(now, neutral)};
  return {text: words.temperatureOff(now, neutral, `${say.number(mired)}${NBSP}mired`, miredShift > 0 ? 'warmer' : 'cooler'), note: words.miredIs};
}

/** A change of the set-up between card and photo. */
export function changeText(words: SheetWords, change: SetupChange, {lamps}: Lights, unit: LengthUnit): string {
  const lamp = (index: number): string => {
    const name = lamps[index]?.name;
    return name ? words.lampNamed(name) : words.lampNumber(index + 1);
  };
  switch (change.changed) {
    case 'lamps': return words.lampsNow(change.after, change.before);
    case 'flags': return words.flagsNow(change.after, change.before);
    case 'lamp-moved': return words.lampMoved(lamp(change.index), words.say.length(change.by, unit));
    case 'flag-moved': return words.flagMoved(change.index + 1, words.say.length(change.by, unit));
    case 'lamp-power': return words.lampPower(lamp(change.index), measuredStops(words, change.by), change.by > 0);
    case 'white-balance': return words.whiteBalance;
    case 'colour':
      return words.litDifferently(measuredStops(words, change.red), change.red >= 0, measuredStops(words, change.blue), change.blue >= 0);
  }
}

/** Whether the gains hold for the linked photo, or for the next one. */
export function holdsText(words: SheetWords, holds: Holds, isLinked: boolean): string {
  if (holds === 'changed') return isLinked ? words.holdsNot : words.holdsNotNext;
  return holds === 'same' ? words.holds : words.holdsUnknown;
}
