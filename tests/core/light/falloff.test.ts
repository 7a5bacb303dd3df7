import {describe, expect, it, test} from 'vitest';
import {discSkyShare, distanceStops, inverseSquareError, smallLamp} from '../../../src/core/light/falloff.js';
import {illuminance} from '../../../src/core/light/lamp.js';
import {Problem} from '../../../src/core/problem.js';
import {input, published, publishedValue} from '../../reference/published.js';

// Sources in tests/reference/published/light.json: IES definition 9.1.1 and standard photometry of a Lambertian disc.

test('stops lost between two distances agree with the inverse square law as printed', () => {
  const records = published('light').filter(({id}) => id.startsWith('stops-'));
  expect(records.length).toBeGreaterThan(3);
  for (const record of records) {
    const stops = distanceStops(input(record, 'd1'), input(record, 'd2'));
    expect(Math.abs(-stops - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance as number);
  }
});

test('the rule of five speaks of the diameter: one per cent there, four at five radii', () => {
  expect(inverseSquareError(1, input(publishedValue('light', 'five-times-diameter'), 'dOverDiameter')))
    .toBeCloseTo(Number(publishedValue('light', 'five-times-diameter').expected.value), 12);
  expect(inverseSquareError(2, input(publishedValue('light', 'five-times-radius'), 'dOverRadius')))
    .toBeCloseTo(Number(publishedValue('light', 'five-times-radius').expected.value), 12);
});

test.each(['disc-error-1dia', 'disc-error-3dia', 'disc-error-10dia', 'five-times-diameter'])(
  'a disc falls short of a small lamp of its power as printed: %s', (id) => {
    const record = publishedValue('light', id);
    const diameters = record.inputs['k'] ? input(record, 'k') : input(record, 'dOverDiameter');
    const light = (kind: 'small' | 'disc'): number => illuminance(
      {kind, position: [0, -100 * diameters, 0], aim: [0, 0, 0], width: 100, power: 0}, [0, 0, 0], [0, -1, 0]);
    expect(light('small') / light('disc') - 1).toBeCloseTo(Number(record.expected.value), 8);
  });

test('beyond five times its largest side no square lamp is off the inverse square by more than one per cent', () => {
  // IES definition 9.1.1, note: within one per cent at five times the maximum dimension, here the diagonal.
  const light = (kind: 'small' | 'rectangle', times: number): number => illuminance(
    {kind, position: [0, -times * Math.hypot(300, 300), 0], aim: [0, 0, 0], width: 300, height: 300, power: 0},
    [0, 0, 0], [0, -1, 0]);
  expect(light('small', 5) / light('rectangle', 5)).toBeLessThan(1.01);
  expect(light('small', 1) / light('rectangle', 1)).toBeGreaterThan(1.1);
});

test.each(published('light').filter(({id}) => id.startsWith('disc-E-')).map((record) => [record.id, record] as const))(
  'light straight before a disc agrees with the printed value: %s', (_, record) => {
    const share = discSkyShare([0, -input(record, 'd'), 0], [0, 1, 0], input(record, 'R'), [0, -1, 0]) / Math.PI;
    expect(Math.abs(share - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance as number);
  });

test('coaxial discs exchange the printed share of light (Siegel and Howell), by summing over rings', () => {
  const record = publishedValue('light', 'vf-discs');
  const [r1, r2, gap] = [input(record, 'r1'), input(record, 'r2'), input(record, 'a')];
  const rings = 400;
  let mean = 0;
  for (let ring = 0; ring < rings; ring++) {
    // Rings of equal area; the source disc is the second one, off to the side of each point.
    const off = r1 * Math.sqrt((ring + 0.5) / rings);
    mean += discSkyShare([-off, 0, gap], [0, 0, -1], r2, [0, 0, 1]) / Math.PI / rings;
  }
  expect(Math.abs(mean - Number(record.expected.value))).toBeLessThanOrEqual(record.tolerance as number);
});

describe('smallLamp', () => {
  it('gives nothing from behind, and nothing below the horizon', () => {
    expect(smallLamp([0, -100, 0], [0, -1, 0], [0, -1, 0])).toBe(0);
    expect(smallLamp([0, -100, 0], [0, 1, 0], [0, 1, 0])).toBe(0);
  });
  it('gives half the light at 60° to the surface, and a quarter when turned away as much too', () => {
    // Lambert's cosine law, from memory.
    const head = smallLamp([0, -100, 0], [0, 1, 0], [0, -1, 0]);
    const turned = [Math.sqrt(3) / 2, -0.5, 0] as const;
    expect(smallLamp([0, -100, 0], [0, 1, 0], turned) / head).toBeCloseTo(0.5, 12);
    expect(smallLamp([0, -100, 0], [Math.sqrt(3) / 2, 0.5, 0], turned) / head).toBeCloseTo(0.25, 12);
    expect(smallLamp([0, -100, 0], null, turned) / head).toBeCloseTo(0.5, 12);
  });
});

it.each([0, -1, NaN, Infinity])('refuses a lamp distance of %s by name', (bad) => {
  expect(() => distanceStops(bad, 100)).toThrow(new Problem('lamp-distance', bad, 'a number above 0'));
  expect(() => inverseSquareError(10, bad)).toThrow(new Problem('lamp-distance', bad, 'a number above 0'));
});
