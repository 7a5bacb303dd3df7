import {readShutter} from '../exposure/read-shutter.js';
import {readAperture, readCorrection, readIso} from '../exposure/read.js';
import {writeAperture, writeIso, writeShutter, writeStops} from '../exposure/write.js';
import {Problem} from '../problem.js';
import {attributeOf, outside, type Field, type ShotFields} from './field.js';
import {choice, number} from './field-kinds.js';
import type {ShotKey} from './shot.js';

type ExposureKey = 'aperture' | 'shutter' | 'iso' | 'meteredAperture' | 'meteredShutter' | 'meteredIso' | 'correction' | 'pay' | 'clicksPerStop'
  | 'apertureWidest' | 'apertureSmallest' | 'shutterFastest' | 'shutterSlowest' | 'isoLowest' | 'isoHighest'
  | 'meteredMagnification' | 'apertureShown';

/** Fields of the setting, of where it started and of what the dials can do. */
export const EXPOSURE_FIELDS: ShotFields<ExposureKey> = /* @__PURE__ */ fields();

function fields(): ShotFields<ExposureKey> {
  const aperture = (key: ShotKey) => setting(key, readAperture, writeAperture);
  const shutter = (key: ShotKey) => setting(key, readShutter, writeShutter);
  const iso = (key: ShotKey) => setting(key, readIso, writeIso);
  return {
    aperture: aperture('aperture'),
    shutter: shutter('shutter'),
    iso: iso('iso'),
    meteredAperture: aperture('meteredAperture'),
    meteredShutter: shutter('meteredShutter'),
    meteredIso: iso('meteredIso'),
    correction: {
      read: readCorrection, write: writeStops, refuse: (value) => outside('correction', value, -30, 30, 'a number of stops'),
    },
    pay: choice('pay', ['aperture', 'shutter', 'iso']),
    clicksPerStop: {
      read: (text) => readClicks(text),
      write: (value) => (value === 1 ? 'full' : value === 2 ? 'half' : 'third'),
      refuse: (value) => ([1, 2, 3].includes(value) ? undefined : new Problem('clicks-per-stop', value, '1, 2 or 3')),
    },
    apertureWidest: aperture('apertureWidest'),
    apertureSmallest: aperture('apertureSmallest'),
    shutterFastest: shutter('shutterFastest'),
    shutterSlowest: shutter('shutterSlowest'),
    isoLowest: iso('isoLowest'),
    isoHighest: iso('isoHighest'),
    meteredMagnification: number('meteredMagnification', 0, 10, 'a magnification such as 0.2; 0 for a hand-held meter'),
    apertureShown: choice('apertureShown', ['marked', 'working']),
  };
}

/** An exposure setting: its reader tells more than the value, which is all a shot keeps. */
function setting(
  key: ShotKey, read: (text: string) => {readonly value: number} | Problem, write: (value: number) => string,
): Field<number> {
  return {
    read: (text) => {
      const reading = read(text);
      return reading instanceof Problem ? new Problem(attributeOf(key), text, reading.wanted) : reading.value;
    },
    write,
    refuse: (value) => outside(key, value, 1e-30, 1e30, 'a number above 0'),
  };
}

function readClicks(text: string): 1 | 2 | 3 | Problem {
  const found = /^\s*(?:(1|full|whole)|(2|1\/2|½|half)|(3|1\/3|⅓|third))\b.*$|^\s*[½⅓]\s*$/i.exec(text);
  if (!found) return new Problem('clicks-per-stop', text, 'full, half or third');
  if (found[1] && !/^\s*1\//.test(text)) return 1;
  return found[2] || /½|1\/2/.test(text) ? 2 : 3;
}
