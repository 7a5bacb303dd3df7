import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {readShutter} from '../../../src/core/exposure/read-shutter.js';
import type {Reading} from '../../../src/core/exposure/reading.js';
import {Problem} from '../../../src/core/problem.js';

function read(text: string): Reading {
  const reading = readShutter(text);
  if (reading instanceof Problem) throw reading;
  return reading;
}

// Exact times behind printed ones: third-stop series 2^(k/3), see the published series in clicks.test.ts.
describe('every common way to write a time', () => {
  it.each([
    ['1/25', 2 ** (-14 / 3), 'fraction'], ['1/25s', 2 ** (-14 / 3), 'fraction'],
    ['1/25 sec.', 2 ** (-14 / 3), 'fraction'],
    ['1 / 25', 2 ** (-14 / 3), 'fraction'], ['1⁄25', 2 ** (-14 / 3), 'fraction'], ['1/25th', 2 ** (-14 / 3), 'fraction'],
    ['1/25 of a second', 2 ** (-14 / 3), 'fraction'], ['shutter: 1/60', 2 ** -6, 'fraction'],
    ['25', 2 ** (-14 / 3), 'bare'], ['1', 1, 'bare'], ['25s', 2 ** (14 / 3), 'seconds'],
    ['25 seconds', 2 ** (14 / 3), 'seconds'],
    ['0"6', 2 ** (-2 / 3), 'seconds'], ['0″6', 2 ** (-2 / 3), 'seconds'], ['0”6', 2 ** (-2 / 3), 'seconds'],
    ["0''6", 2 ** (-2 / 3), 'seconds'], ['0.6"', 2 ** (-2 / 3), 'seconds'], ['0.6s', 2 ** (-2 / 3), 'seconds'],
    ['0,6', 2 ** (-2 / 3), 'seconds'], ['.6', 2 ** (-2 / 3), 'seconds'], [' 0.6 S ', 2 ** (-2 / 3), 'seconds'],
    ['1"3', 2 ** (1 / 3), 'seconds'], ['1.3', 2 ** (1 / 3), 'seconds'], ['1 1/3', 2 ** (1 / 3), 'fraction'],
    ['3/10', 2 ** (-5 / 3), 'fraction'], ['1/2.5', 2 ** (-4 / 3), 'fraction'], ['1/2,5 s', 2 ** (-4 / 3), 'fraction'],
    ['½', 0.5, 'fraction'], ['½ s', 0.5, 'fraction'], ['¼"', 0.25, 'fraction'],
    ['30"', 32, 'seconds'], ['30”', 32, 'seconds'], ["30''", 32, 'seconds'], ['30 s', 32, 'seconds'],
    ['2m', 120, 'minutes'], ['2 min', 120, 'minutes'], ["2'", 120, 'minutes'], ['1 min 4 s', 64, 'minutes'],
    ["1'30\"", 90, 'minutes'], ['1.5 min', 90, 'minutes'], ['500 ms', 0.5, 'seconds'],
    ['0.37 s', 0.37, 'seconds'], ['1/64', 2 ** -6, 'fraction'], ['1/32000', 2 ** -15, 'fraction'],
  ] as const)('%s', (text, seconds, how) => {
    expect(read(text)).toMatchObject({value: expect.closeTo(seconds, 12), how, text: text.trim()});
  });
});

test('what was written is kept beside the click it stands for', () => {
  expect(read('1/60')).toMatchObject({value: 1 / 64, nominal: 1 / 60});
});

// Light between what a body shows in tenths of a second and the fraction it is taken for: common practice, no source.
describe('tenths of a second read as a fraction', () => {
  it.each([
    ['0"4', '1/4', -2 / 3], ['0"5', '1/5', -4 / 3], ['0"6', '1/6', -2], ['0"8', '1/8', -8 / 3],
  ])('%s for %s: %f stops', (shown, taken, stops) => {
    expect(read(shown).others).toContainEqual({
      value: read(taken).value, how: 'fraction', stops: expect.closeTo(stops, 9),
    });
    expect(read(taken).others).toContainEqual({
      value: expect.closeTo(read(shown).value, 12), how: 'seconds', stops: expect.closeTo(-stops, 9),
    });
  });
  test('0"3 for 1/3 makes no difference worth naming', () => {
    expect(read('1/3').value).toBe(read('0"3').value);
    expect(read('0"3').others.map(({how}) => how)).not.toContain('fraction');
  });
});

test('a bare number carries the seconds it may have been, and seconds the fraction', () => {
  expect(read('25').others).toContainEqual({value: read('25s').value, how: 'seconds', stops: expect.closeTo(28 / 3, 9)});
  expect(read('25s').others).toContainEqual({value: read('25').value, how: 'fraction', stops: expect.closeTo(-28 / 3, 9)});
});

test('a time that a third and a half share carries the other click, and the dial in use decides', () => {
  expect(read('1/6').others[0]).toMatchObject({value: 2 ** (-5 / 2), how: 'other-click'});
  expect(readShutter('1/6', 2)).toMatchObject({value: 2 ** (-5 / 2)});
});

test('other readings are real ones: different light, the nearest first', () => {
  fc.assert(fc.property(fc.integer({min: 1, max: 400}), fc.constantFrom('1/', '0"', '1"', ''), (digits, before) => {
    const reading = readShutter(before + digits);
    if (reading instanceof Problem) return;
    const distances = reading.others.map(({stops}) => Math.abs(stops));
    expect(Math.min(1, ...distances)).toBeGreaterThan(0.001);
    expect(distances).toEqual([...distances].sort((one, two) => one - two));
  }));
});

it.each(['', ' ', 'abc', 'bulb', '0', '1/0', '0/5', '-1/25', '1/1/2', '1e9', '9999999999 s', '1"2"3', 's', '"', 'NaN', '٣'])(
  'says what would do instead of “%s”', (text) => {
    expect(readShutter(text)).toEqual(new Problem('shutter', text, 'a time such as 1/60, 0.6 s or 30"'));
  });

test('no text makes it throw, or read what is not a time', () => {
  const pieces = fc.constantFrom('1', '0', '25', '/', '"', "'", '.', ',', ' ', 's', 'm', '½', '-', 'x', 'min');
  fc.assert(fc.property(fc.oneof(fc.string({maxLength: 80}), fc.array(pieces, {maxLength: 9}).map((all) => all.join(''))),
    (text) => {
      const reading = readShutter(text);
      if (!(reading instanceof Problem)) expect(reading.value > 0 && Number.isFinite(reading.value)).toBe(true);
    }), {numRuns: 500});
});
