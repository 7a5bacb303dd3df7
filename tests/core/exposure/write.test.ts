import fc from 'fast-check';
import {expect, it, test} from 'vitest';
import {clickAt, clicks, exactFromNominal, WIDEST} from '../../../src/core/exposure/clicks.js';
import type {ClicksPerStop} from '../../../src/core/exposure/clicks.js';
import {readAperture, readCorrection, readIso} from '../../../src/core/exposure/read.js';
import {readShutter} from '../../../src/core/exposure/read-shutter.js';
import {lightStops, SETTINGS} from '../../../src/core/exposure/stops.js';
import type {Setting} from '../../../src/core/exposure/stops.js';
import {writeAperture, writeIso, writeShutter, writeStops} from '../../../src/core/exposure/write.js';
import {Problem} from '../../../src/core/problem.js';

const STYLES = ['prose', 'body', 'dial'] as const;
const READ = {aperture: readAperture, shutter: readShutter, iso: readIso};

function written(setting: Setting, value: number): readonly string[] {
  if (setting === 'aperture') return [writeAperture(value)];
  return setting === 'iso' ? [writeIso(value)] : STYLES.map((style) => writeShutter(value, style));
}

function readBack(setting: Setting, text: string, clicksPerStop?: ClicksPerStop): number {
  const reading = READ[setting](text, clicksPerStop);
  if (reading instanceof Problem) throw reading;
  return reading.value;
}

// How bodies and prose show times: common practice, no source.
it.each([
  [2 ** -6, '1/60 s', '1/60', '60'], [2 ** (-2 / 3), '0.6 s', '0"6', '0"6'], [1, '1 s', '1"', '1"'],
  [2 ** (1 / 3), '1.3 s', '1"3', '1"3'], [32, '30 s', '30"', '30"'], [0.37, '0.37 s', '0"37', '0"37'],
  [1 / 60.3, '1/60.3 s', '1/60.3', '1/60.3'], [64, '1 min 4 s', '64"', '64"'], [120, '2 min', '120"', '120"'],
  [0.3001, '0.3001 s', '0.3001"', '0.3001"'],
])('%f s as prose, on a body, on a dial', (seconds, ...expected) => {
  expect(STYLES.map((style) => writeShutter(seconds, style))).toEqual(expected);
});

test('f-numbers and ISO speeds by their print on the clicks, in digits off them', () => {
  expect([2 ** 3.5, 2 ** (1 / 3), 8, 1.78, 3.4, 0.95].map(writeAperture))
    .toEqual(['f/11', 'f/1.2', 'f/8', 'f/1.78', 'f/3.4', 'f/0.95']);
  expect([100, 100 * 2 ** (1 / 3), 1328, 107.345].map(writeIso)).toEqual(['ISO 100', 'ISO 125', 'ISO 1328', 'ISO 107']);
});

test('reading what was written on a click gives the same click, on every dial and in every style', () => {
  for (const setting of SETTINGS) for (const per of [1, 2, 3] as const) {
    for (const {value} of clicks(setting, per)) {
      for (const text of written(setting, value)) expect(readBack(setting, text, per), text).toBe(value);
    }
  }
});

test('reading what was written off the clicks gives the same three digits, unless a dial prints just these', () => {
  fc.assert(fc.property(fc.constantFrom(...SETTINGS), fc.integer({min: 100, max: 999}), (setting, digits) => {
    const value = setting === 'iso' ? digits : digits / 100;
    fc.pre(exactFromNominal(setting, value) === value && (setting !== 'shutter' || value < 60));
    for (const text of written(setting, value)) expect(readBack(setting, text), text).toBe(value);
  }));
});

test('whatever the value, reading what was written is hardly off, unless a dial prints just that', () => {
  fc.assert(fc.property(fc.constantFrom(...SETTINGS), fc.double({min: 0, max: 1, noNaN: true}), (setting, along) => {
    const [least, greatest] = WIDEST[setting];
    const value = least * (greatest / least) ** along;
    // An ISO speed is written with two decimals at most, which cannot tell 32.004 from the printed 32.
    const near = setting === 'iso' ? Number(value.toFixed(2)) : value;
    fc.pre(exactFromNominal(setting, near) === near);
    for (const text of written(setting, value)) {
      // 0.0145 stop is half a digit of three in an f-number just above 1.00; 0.012 half a second in a minute.
      expect(Math.abs(lightStops(setting, value, readBack(setting, text))), text).toBeLessThan(0.0145);
    }
  }));
});

it.each([
  [4 / 3, '+1 1/3'], [-2 / 3, '−2/3'], [2, '+2'], [-1, '−1'], [0.5, '+1/2'], [-1.5, '−1 1/2'],
  [0, '0'], [-0, '0'], [-0.01, '0'], [0.97, '+1'],
])('%f stops in thirds: %s', (stops, text) => {
  expect(writeStops(stops)).toBe(text);
});

it.each([[0.34, 2, '+0.34'], [-0.34, 1, '−0.3'], [-0.001, 2, '0'], [2, 1, '+2']])(
  '%f stops with %i decimals: %s', (stops, decimals, text) => {
    expect(writeStops(stops, decimals)).toBe(text);
  });

test('thirds and halves of a stop are read back as written', () => {
  fc.assert(fc.property(fc.integer({min: -60, max: 60}), fc.constantFrom(2, 3), (parts, per) => {
    expect(readCorrection(writeStops(parts / per))).toBeCloseTo(parts / per, 12);
  }));
});

test('what cannot be set cannot be written', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(() => writeAperture(bad)).toThrow(Problem);
    expect(() => writeShutter(bad)).toThrow(Problem);
    expect(() => writeIso(bad)).toThrow(Problem);
  }
  expect(() => writeStops(NaN)).toThrow(new Problem('stops', NaN, 'a finite number'));
  expect(clickAt('shutter', 0, 3).label).toBe('1');
});
