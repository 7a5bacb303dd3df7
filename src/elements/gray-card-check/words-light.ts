import type {Lights} from '../../core/light/set-text.js';
import type {Cast} from '../../core/white/cast.js';
import type {SetupChange} from '../../core/white/holds.js';
import {tintOf} from './reading.js';
import {stops} from './words.js';

const S = '\u00a0';

/** What neutral light of an sRGB picture is called. */
const NEUTRAL_KELVIN = 6500;

/** How the light departs from the picture's own white. */
export function castSentence(cast: Cast): string {
  const {warmth, warmer} = cast;
  const tint = tintOf(cast);
  if (!warmer && !tint) return 'Gray comes out neutral: no third-stop click of any colour would be seen.';
  const warm = warmer && `${warmer} than neutral, red and blue ${stops(warmth)} apart`;
  const rest = tint && (cast.temperature ? `a little ${tint} than a lamp of that warmth` : tint);
  return `Gray comes out ${[warm, rest].filter(Boolean).join(', and ')}.`;
}

/** The same as a colour temperature, where it means something. */
export function temperatureSentence({temperature, miredShift, warmer}: Cast): string {
  if (!temperature || miredShift === undefined) return 'It is far from daylight and from any glowing lamp, so a colour temperature would say nothing.';
  const kelvin = `${Math.round(temperature.kelvin / 50) * 50}${S}K`;
  const mired = Math.round(Math.abs(miredShift));
  return !warmer || mired === 0 ? `As a colour temperature: about ${kelvin}, where this picture is balanced for ${NEUTRAL_KELVIN}${S}K.`
    : `As a colour temperature: about ${kelvin} where this picture is balanced for ${NEUTRAL_KELVIN}${S}K, ${mired}${S}mired ${miredShift > 0 ? 'warmer' : 'cooler'}.`;
}

const mm = (length: number): string => `${Math.round(length)}${S}mm`;

/** A change of the set-up between card and photo. */
export function changeSentence(change: SetupChange, {lamps}: Lights): string {
  const lamp = (index: number): string => (lamps[index]?.name ? `The ${lamps[index].name}` : `Lamp ${index + 1}`);
  switch (change.changed) {
    case 'lamps':
    case 'flags': return `There ${change.after === 1 ? 'is' : 'are'} now ${change.after} ${change.changed}, with the card there ${change.before === 1 ? 'was' : 'were'} ${change.before}.`;
    case 'lamp-moved': return `${lamp(change.index)} has moved ${mm(change.by)} since the card shot.`;
    case 'flag-moved': return `Flag ${change.index + 1} has moved ${mm(change.by)} since the card shot.`;
    case 'lamp-power': return `${lamp(change.index)} is ${stops(change.by)} ${change.by > 0 ? 'brighter' : 'darker'} against the first lamp than with the card.`;
    case 'white-balance': return 'The camera’s white balance was set differently.';
    case 'colour': return `The photo on the bench was lit differently from the card: ${colourText(change.red, 'red')} and ${colourText(change.blue, 'blue')} against green.`;
  }
}

function colourText(amount: number, name: string): string {
  return `${name} ${stops(amount)} ${amount < 0 ? 'weaker' : 'stronger'}`;
}

/**
 * Whether the gains hold for the photo on the bench.
 * @param compared - whether the two pictures could be compared: `undefined` while they are
 */
export function holdsSentence(changes: number, compared: boolean | undefined): string {
  if (changes > 0) return 'These gains may not hold for the photo on the bench. Shoot the card again in this light.';
  return compared ? 'The gains hold for the photo on the bench: where the two pictures agree, the light has the same colour.'
    : 'Nothing is known to have changed since the card shot, but the two pictures show too different things to see it in them. The gains hold as long as lamps, flags and walls stood still.';
}

/** Said when the set changed before another photo was there. */
export const SET_CHANGED = 'The set on the bench has changed since the card shot. For the next photo shoot the card again.';
