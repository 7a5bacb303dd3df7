import {describe, expect, it} from 'vitest';
import {
  SENSOR_FORMATS, cropFactor, nearestFormat, printBlurLimit, sensorDiagonal,
} from '../../../src/core/optics/sensors.js';
import {input, published} from '../../reference/published.js';
import type {PublishedValue} from '../../reference/published.js';

const sized = (topic: string, start: RegExp): PublishedValue[] =>
  published(topic).filter(({id, inputs, agrees}) => start.test(id) && 'w' in inputs && agrees !== false);

function expectPublished(record: PublishedValue, actual: number): void {
  expect(Math.abs(actual - Number(record.expected.value)), `${record.id}: ${actual}`)
    .toBeLessThanOrEqual(Number(record.tolerance));
}

// Sources: format tables of Balcom and Carr and others, named in each record of sensors.json.
describe('sensor sizes against published tables', () => {
  it.each(sized('sensors', /diag/))('agrees with the diagonal $id', (record) => {
    expectPublished(record, sensorDiagonal(input(record, 'w'), input(record, 'h')));
  });

  it.each(sized('sensors', /crop/))('agrees with the crop factor $id', (record) => {
    expectPublished(record, cropFactor(input(record, 'w'), input(record, 'h')));
  });

  it.each(sized('sensors', /^area-(apsc|fourthirds|2\/3)/))('lists the size behind the area $id', (record) => {
    const {format} = nearestFormat(input(record, 'w'), input(record, 'h'));
    expectPublished(record, format.width * format.height);
  });

  // Every published size is a size of ours to within the few per cent bodies differ by.
  it.each(sized('sensors', /^(crop|diag|area|half)/))('has a format for $id', (record) => {
    expect(nearestFormat(input(record, 'w'), input(record, 'h')).off).toBeLessThan(0.01);
  });
});

// Sources: Wikipedia, Circle of confusion; the other divisors from memory, see coc.json.
describe('the blur limit of a print', () => {
  it.each(sized('coc', /^coc1500/))('agrees with $id', (record) => {
    expectPublished(record, printBlurLimit(input(record, 'w'), input(record, 'h')));
  });

  it.each(sized('coc', /^coc1(000|730)/))('agrees with $id by its own divisor', (record) => {
    const divisor = Number(/^coc(\d+)/.exec(record.id)?.[1]);
    expectPublished(record, printBlurLimit(input(record, 'w'), input(record, 'h'), divisor));
  });
});

describe('the list of formats', () => {
  it('has one id each, the longer side as width, largest first', () => {
    expect(new Set(SENSOR_FORMATS.map(({id}) => id)).size).toBe(SENSOR_FORMATS.length);
    for (const {width, height} of SENSOR_FORMATS) expect(width).toBeGreaterThan(height);
    const factors = SENSOR_FORMATS.map(({width, height}) => cropFactor(width, height));
    expect(factors).toEqual([...factors].sort((a, b) => a - b));
  });

  // A type of n inch is about 16 mm a inch of diagonal, 18 mm below half an inch; common practice, no source.
  it('has diagonals that suit the names in inches', () => {
    for (const {name, width, height} of SENSOR_FORMATS) {
      const type = /^(\d+)(?:\/([\d.]+))?″/.exec(name);
      if (!type) continue;
      const inch = Number(type[1]) / Number(type[2] ?? 1);
      const diagonal = sensorDiagonal(width, height);
      expect(Math.min(Math.abs(diagonal / inch / 16 - 1), Math.abs(diagonal / inch / 18 - 1)), name).toBeLessThan(0.07);
    }
  });

  it('finds each format by its size, upright too, and says how far another size is off', () => {
    for (const format of SENSOR_FORMATS) {
      expect(nearestFormat(format.width, format.height)).toEqual({format, off: 0});
      expect(nearestFormat(format.height, format.width).format).toBe(format);
    }
    expect(nearestFormat(35.9, 23.9).format.id).toBe('full-frame');
    expect(nearestFormat(35.9, 23.9).off).toBeCloseTo(0.0042, 4);
    expect(nearestFormat(22.2, 14.8).format.id).toBe('aps-c-small');
  });

  it.each([[0, 24, 'sensor-width'], [36, NaN, 'sensor-height']])('refuses %s × %s', (width, height, parameter) => {
    for (const act of [nearestFormat, cropFactor, printBlurLimit, sensorDiagonal]) {
      expect(() => act(width, height)).toThrow(expect.objectContaining({name: 'Problem', parameter}));
    }
  });
});
