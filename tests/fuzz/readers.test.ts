import fc from 'fast-check';
import {describe, expect} from 'vitest';
import {
  Problem, findSteps, likelyMisreadings, mendText, misreading, readAperture, readCorrection, readExposure, readIso, readLength, readLights,
  readMeant, readNumber, readShutter, trail, writeAperture, writeIso, writeLights, writeShutter, writeTrail,
} from '../../src/core/index.js';
import {fuzz, outcome, sound} from './cases.js';
import {anyGiant, anyHostile, anyNumber} from './hostile.js';

type Reader = (text: string) => unknown;
const perStop = [1, 2, 3] as const;
const READERS: Readonly<Record<string, Reader>> = {
  readShutter, readAperture, readIso, readCorrection, readNumber,
  readLength: (text) => readLength('base-depth', text),
  readExposure, readMeant, findSteps: (text) => findSteps(text), readLights,
  trail: (text) => trail(text),
};

describe('typed text that means no harm, and text that does', () => {
  for (const [name, write] of Object.entries({readShutter: writeShutter, readAperture: writeAperture, readIso: writeIso} as const)) {
    fuzz(`${name} gives a believable number or a Problem, and what it gives can be written`, 12_000,
      fc.tuple(anyHostile, fc.constantFrom(...perStop)), ([text, per]) => {
        const read = {readShutter, readAperture, readIso}[name as 'readIso'](text, per);
        if (sound(read) instanceof Problem) return;
        const {value, others} = read as Exclude<typeof read, Problem>;
        expect(Number.isFinite(value) && value > 0, `${value}`).toBe(true);
        expect(write(value)).not.toMatch(/NaN|Infinity|undefined|e[+-]/);
        for (const other of others) expect(Number.isFinite(other.value) && other.value > 0 && Number.isFinite(other.stops)).toBe(true);
      });
  }
  fuzz('readCorrection and readNumber give a finite number or refuse', 14_000, anyHostile, (text) => {
    const [stops, number] = [readCorrection(text), readNumber(text)];
    expect(stops instanceof Problem || (Number.isFinite(stops) && Math.abs(stops) <= 30 && !Object.is(stops, -0))).toBe(true);
    expect(number === undefined || Number.isFinite(number)).toBe(true);
  });
  fuzz('readLength gives finite millimetres or a Problem', 10_000, fc.tuple(anyHostile, fc.constantFrom('mm', 'cm', 'in')), ([text, unit]) => {
    const mm = readLength('base-depth', text, unit);
    expect(mm instanceof Problem || Number.isFinite(mm)).toBe(true);
  });
  fuzz('readExposure points at places in the text that lie in order and within it', 4000, anyHostile, (text) => {
    const read = sound(readExposure(text));
    for (const place of [read.aperture, read.shutter, read.iso, read.correction, ...read.unused]) {
      if (place) expect(0 <= place.start && place.start <= place.end && place.end <= text.length).toBe(true);
    }
  });
  fuzz('a trail made of anything has sound steps, writes itself and takes its own mends', 4000,
    fc.tuple(fc.oneof(anyHostile, fc.array(anyHostile, {maxLength: 5})), fc.constantFrom(...perStop)), ([source, per]) => {
      const read = sound(trail(source, {clicksPerStop: per}));
      expect(/NaN|Infinity/.test(writeTrail(read)) && !/NaN|Infinity/.test(read.text)).toBe(false);
      for (const mend of read.mends) sound(trail(mendText(read.text, mend), {clicksPerStop: per}));
    });
  fuzz('lights written as text are read as lights or as a Problem, and what is read can be written and read again', 5000, anyHostile, (text) => {
    const read = sound(readLights(text));
    if (read instanceof Problem) return;
    expect(readLights(writeLights(read))).toEqual(read);
  });
  fuzz('misreadings of any time are sound or refused', 4000, fc.tuple(anyNumber, anyHostile), ([number, text]) => {
    sound(outcome(() => likelyMisreadings(number)));
    const reading = readShutter(text);
    if (!(reading instanceof Problem)) sound(outcome(() => misreading(reading, number)));
  });
  fuzz('texts of up to two hundred thousand characters come to an end', 110,
    fc.tuple(fc.constantFrom(...Object.keys(READERS)), anyGiant), ([name, text]) => { sound((READERS[name] as Reader)(text)); });
});
