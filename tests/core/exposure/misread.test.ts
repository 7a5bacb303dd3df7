import {expect, it, test} from 'vitest';
import {likelyMisreadings, misreading} from '../../../src/core/exposure/misread.js';
import {readShutter} from '../../../src/core/exposure/read-shutter.js';
import {readAperture} from '../../../src/core/exposure/read.js';
import type {Reading} from '../../../src/core/exposure/reading.js';
import {Problem} from '../../../src/core/problem.js';

function shutter(text: string): Reading {
  const reading = readShutter(text);
  if (reading instanceof Problem) throw reading;
  return reading;
}

// The errors in stops: common practice, worked out on the exact third-stop series.
test('1/6 that leaves two stops missing was 0"6', () => {
  expect(misreading(shutter('1/6'), 2)).toMatchObject({value: 2 ** (-2 / 3), how: 'seconds', left: expect.closeTo(0, 9)});
});

test('0"6 that leaves two stops too many was 1/6', () => {
  expect(misreading(shutter('0"6'), -2)).toMatchObject({value: 2 ** (-8 / 3), how: 'fraction'});
});

test('a bare 25 that leaves nine stops missing was 25 s', () => {
  expect(misreading(shutter('25'), 9.3)).toMatchObject({value: 2 ** (14 / 3), how: 'seconds'});
});

test('f/56 that leaves more than six stops missing was f/5.6', () => {
  const reading = readAperture('f/56');
  if (reading instanceof Problem) throw reading;
  expect(misreading(reading, 6.6)).toMatchObject({value: 2 ** 2.5, how: 'point-lost'});
});

test('nothing is suspected while the exposure balances, or when no other reading makes it', () => {
  expect(misreading(shutter('1/6'), 0.1)).toBeNull();
  expect(misreading(shutter('1/6'), -2)).toBeNull();
  expect(misreading(shutter('1/6'), 1.5)).toBeNull();
  expect(misreading(shutter('1/6'), 1.5, 0.6)).toMatchObject({how: 'seconds', left: expect.closeTo(-0.5, 9)});
});

test('refuses a missing light that is no number', () => {
  expect(() => misreading(shutter('1/6'), NaN)).toThrow(new Problem('missing', NaN, 'a finite number'));
});

it.each([
  ['0"4', ['1/4']], ['0"5', ['1/5']], ['0"6', ['1/6']], ['0"8', ['1/8']], ['0"3', []], ['1/60', []], ['30"', []],
  ['1/6', ['0"6', '1"6']], ['1"3', ['1/1.3', '1/3']],
])('a body showing %s is easily read as %j', (shown, taken) => {
  expect(likelyMisreadings(shutter(shown).value).map(({value}) => value))
    .toEqual(taken.map((text) => expect.closeTo(shutter(text).value, 12)));
});

it('refuses a time that is none', () => {
  expect(() => likelyMisreadings(0)).toThrow(new Problem('shutter', 0, 'a number above 0'));
});
