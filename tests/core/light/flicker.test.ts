import {describe, expect, it, test} from 'vitest';
import type {Mains} from '../../../src/core/light/flicker.js';
import {checkFlicker, pulses, ripple, rippleStops} from '../../../src/core/light/flicker.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published, publishedValue} from '../../reference/published.js';

// Source: "AC line frequency and shutter speed", photo-spectrum.info, 2017, and makers' lists of even times.
const records = (start: string) => published('flicker').filter(({id}) => id.startsWith(start))
  .map((record) => [record.id, record] as const);

/** Third-stop times as a dial has them, from 1/1000 to 1 s. */
const CLICKS = Array.from({length: 31}, (_, click) => 2 ** (-click / 3));

test.each(records('pulses-'))('pulses in an exposure agree with the printed list: %s', (_, record) => {
  const found = pulses(input(record, 'f') as Mains, input(record, 't'));
  // Times are printed to ten decimals, which is up to 6e-9 pulse.
  expect(Math.abs(found - Number(record.expected.value))).toBeLessThanOrEqual((record.tolerance as number) + 6e-9);
});

test.each(records('ripple-'))('the swing agrees with the printed value, and so does its ratio: %s', (_, record) => {
  const [mains, shutter] = [input(record, 'f') as Mains, input(record, 't')];
  expect(Math.abs(ripple(mains, shutter) - Number(record.expected.value)))
    .toBeLessThanOrEqual(record.tolerance as number);
  const stops = /ratio ([\d.]+) stop/.exec(record.note)?.[1];
  expect(rippleStops(mains, shutter)).toBeCloseTo(Number(stops), 3);
});

test('the swing is what summing a pulsing lamp over exposures begun at any moment gives', () => {
  // Invented lamp that goes out between pulses; the sum is a second route to the formula.
  const exposure = (start: number, shutter: number): number => {
    let sum = 0;
    for (let step = 0; step < 400; step++) {
      sum += 1 + Math.sin(2 * Math.PI * 100 * (start + (step + 0.5) / 400 * shutter));
    }
    return sum / 400;
  };
  for (const shutter of [1 / 250, 1 / 60, 0.037]) {
    const all = Array.from({length: 400}, (_, start) => exposure(start / 400 / 100, shutter));
    expect(ripple(50, shutter)).toBeCloseTo((Math.max(...all) - Math.min(...all)) / 2, 3);
  }
});

describe('checkFlicker', () => {
  it.each([[50, 1 / 100], [50, 1 / 50], [50, 1 / 25], [60, 1 / 120], [60, 1 / 60], [60, 1 / 30]] as const)(
    'calls times that makers list for %s Hz even: %s s, on the click behind the label too', (mains, time) => {
      expect(checkFlicker(mains, time, CLICKS).even).toBe(true);
      const off = (at: number): number => Math.abs(Math.log2(at / time));
      const click = CLICKS.reduce((best, at) => off(at) < off(best) ? at : best);
      expect(checkFlicker(mains, click, CLICKS).even).toBe(true);
    });
  it.each([[50, 1 / 250], [50, 1 / 64], [60, 1 / 100], [60, 1 / 500]] as const)(
    'warns for %s Hz at %s s', (mains, time) => {
      expect(checkFlicker(mains, time, CLICKS).even).toBe(false);
    });
  it('names the even clicks on both sides of 1/64 s at 50 Hz: 1/51 and 1/102', () => {
    const found = checkFlicker(50, 2 ** -6, CLICKS);
    expect(found.longer).toBeCloseTo(2 ** (-17 / 3), 12);
    expect(found.shorter).toBeCloseTo(2 ** (-20 / 3), 12);
  });
  it('has no shorter even time below one pulse, and none at all without clicks', () => {
    expect(checkFlicker(50, 1 / 200, CLICKS)).toMatchObject({even: false, shorter: null});
    expect(checkFlicker(50, 1 / 200, [])).toMatchObject({longer: null, shorter: null});
  });
  it('calls every time of a second and over even', () => {
    for (const mains of [50, 60] as const) expect(rippleStops(mains, 1.013)).toBeLessThan(0.05);
  });
});

it('is steady light when the lamp does not swing, and refuses nonsense by name', () => {
  expect(rippleStops(50, 1 / 1000, 0)).toBe(0);
  expect(() => pulses(50, 0)).toThrow(new Problem('shutter', 0, 'a number above 0'));
  expect(() => ripple(50, 0.01, 2)).toThrow(/^flicker-depth/);
  expect(Number(publishedValue('flicker', 'pulses-50-1_100').expected.value)).toBe(pulses(50, 1 / 100));
});
