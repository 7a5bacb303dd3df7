import {rgb} from 'culori';
import {describe, expect, it, test} from 'vitest';
import type {TableSet} from '../../../src/core/light/set.js';
import {backdropLevels, backdropStrip, figureLight, unexplainedLight} from '../../../src/core/light/backdrop.js';
import {Problem} from '../../../src/core/problem.js';
import {castRays} from './rays.js';
import {rendered} from './rendered.js';

/** Tolerance for direct light from geometry alone: tests/reference/README.md. */
const RENDERED_STOPS = 0.2;

describe('the rendered backdrop series, from geometry alone', () => {
  test.each(['key', 'twice-as-far', 'spill', 'spill-flag'])('%s: level on the probe', (name) => {
    const {set, probe, measured} = rendered(name);
    const [level] = backdropLevels(set, [probe]);
    expect(Math.abs(Math.log2((level?.linear ?? NaN) / measured))).toBeLessThanOrEqual(RENDERED_STOPS);
  });

  test.each(['key', 'fill'])('%s: what moving the backdrop back twice as far takes from this lamp', (lamp) => {
    const [near, far] = ['key', 'twice-as-far'].map((name) => {
      const shot = rendered(name);
      const [level] = backdropLevels(shot.set, [shot.probe]);
      return {predicted: level?.direct[shot.lampNames.indexOf(lamp)], measured: shot.measuredByLamp[lamp]};
    }) as [{predicted: number; measured: number}, {predicted: number; measured: number}];
    expect(Math.log2(far.predicted / near.predicted)).toBeCloseTo(Math.log2(far.measured / near.measured), 1);
  });

  test('spill: what the flag takes from the lamp it shades, and that it takes nothing from the others', () => {
    const look = (name: string) => {
      const shot = rendered(name);
      return {direct: backdropLevels(shot.set, [shot.probe])[0]?.direct ?? [], measured: shot.measuredByLamp};
    };
    const open = look('spill');
    const flagged = look('spill-flag');
    const taken = (open.direct[2] as number) - (flagged.direct[2] as number);
    const measured = (open.measured['spill'] as number) - (flagged.measured['spill'] as number);
    expect(Math.abs(Math.log2(taken / measured))).toBeLessThanOrEqual(RENDERED_STOPS);
    expect(flagged.direct.slice(0, 2)).toEqual(open.direct.slice(0, 2));
  });

  test('spill-flag: a ray-cast finds the same light coming in below the flag', () => {
    const {set, probe: [x, z]} = rendered('spill-flag');
    const at = [x, set.backdrop.distance, z] as const;
    const level = backdropLevels(set, [[x, z]])[0];
    const spill = set.lamps[2] as TableSet['lamps'][number];
    const rays = castRays(spill, at, [0, -1, 0], set.flags, 400).light;
    const predicted = (level?.direct[2] as number) * figureLight(set) / set.backdrop.reflectance;
    expect(Math.abs(predicted / rays - 1)).toBeLessThan(0.01);
    // The flag ends 330 mm above the table: close to half of the lamp's light passes below it.
    expect(rays / castRays(spill, at, [0, -1, 0], [], 400).light).toBeGreaterThan(0.4);
  });
});

describe('from light to code', () => {
  const {set, probe} = rendered('key');
  test('a backdrop of gray card in the figure’s own light is 118, one stop over 161', () => {
    // Code values from an independent colour library (culori), for 0.18 and 0.36 in linear light.
    const codeOf = (light: number): number => 255 * (rgb({mode: 'lrgb', r: light, g: light, b: light}).r);
    const beside: TableSet = {...set, backdrop: {distance: 0, reflectance: 0.18}};
    expect(backdropLevels(beside, [[0, 45]])[0]?.code).toBeCloseTo(codeOf(0.18), 6);
    expect(backdropLevels(beside, [[0, 45]])[0]?.belowGray).toBeCloseTo(0, 9);
    expect(backdropLevels(beside, [[0, 45]], 1)[0]?.code).toBeCloseTo(codeOf(0.36), 6);
  });
  test('black card is over two stops below the gray card in the same light', () => {
    // Reflectance of 4 % against 18 %: common practice, no source.
    const beside: TableSet = {...set, backdrop: {distance: 0, reflectance: 0.04}};
    expect(backdropLevels(beside, [[0, 45]])[0]?.belowGray).toBeCloseTo(Math.log2(4.5), 9);
  });
  test('what the lamps give adds up to what the picture shows', () => {
    const level = backdropLevels(set, [probe])[0];
    const parts = [...level?.direct ?? [], ...level?.bounced ?? []];
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(level?.linear ?? NaN, 12);
  });
  test('each lamp alone, added in linear light, is the set of all', () => {
    const all = backdropLevels(set, [probe])[0]?.direct ?? [];
    const card = figureLight(set);
    set.lamps.forEach((lamp, index) => {
      const alone = {...set, lamps: [lamp]};
      const linear = backdropLevels(alone, [probe])[0]?.linear as number;
      expect(linear * figureLight(alone) / card).toBeCloseTo(all[index] as number, 12);
    });
  });
});

describe('backdropStrip', () => {
  const {set} = rendered('key');
  it('runs from left to right and is brighter on the side the key lights', () => {
    const strip = backdropStrip(set, -150, 150, 68, 7);
    expect(strip.map(({at}) => at[0])).toEqual([-150, -100, -50, 0, 50, 100, 150]);
    expect(strip[0]?.linear).toBeGreaterThan(strip[6]?.linear ?? NaN);
  });
  it('refuses a strip of one place by name', () => {
    expect(() => backdropStrip(set, -150, 150, 68, 1)).toThrow(/^count/);
  });
});

describe('unexplainedLight', () => {
  it('finds the lamp that was left out of the plan, from the picture’s backdrop', () => {
    // Picture with the overhead lamp, plan without it; the measured share of that lamp is in the shots' truth.
    const picture = rendered('spill');
    const plan = rendered('key');
    const level = backdropLevels(plan.set, [plan.probe])[0];
    if (!level) throw new Error('no level');
    const found = unexplainedLight(level, picture.measured);
    expect(found.stops).toBeGreaterThan(1);
    const left = picture.measuredByLamp['spill'] as number;
    expect(Math.abs(Math.log2(found.linear / left))).toBeLessThan(RENDERED_STOPS);
    expect(found.byLamp[1]).toBeGreaterThan(3);
  });
  it('does not blame a lamp that gives the backdrop nothing', () => {
    const {set, probe} = rendered('spill');
    const up = [70, 170, 900] as const;
    const away = {...set, lamps: set.lamps.map((lamp, index) => index === 2 ? {...lamp, aim: up} : lamp)};
    const level = backdropLevels(away, [probe])[0];
    if (!level) throw new Error('no level');
    expect(unexplainedLight(level, 0.1).byLamp[2]).toBeNull();
    expect(() => unexplainedLight(level, 0)).toThrow(/^backdrop-level/);
  });
});

describe('edges', () => {
  const {set, probe} = rendered('key');
  it('is endlessly dark where no light falls', () => {
    const level = backdropLevels({...set, lamps: [{kind: 'small', position: [0, -100, 45], aim: [0, 0, 45], power: 0}],
      flags: [{position: [0, 200, 100], facing: [0, 1, 0], width: 4000, height: 4000}]}, [probe])[0];
    expect(level).toMatchObject({belowGray: Infinity, linear: 0, code: 0});
  });
  it('refuses a set in which nothing lights the figure', () => {
    expect(() => backdropLevels({...set, lamps: []}, [probe]))
      .toThrow(new Problem('lamps', 0, 'at least one lamp that lights the figure'));
  });
  it.each([0, 1.5, NaN])('refuses a reflectance of %s by name', (bad) => {
    const wrong = {...set, backdrop: {distance: 300, reflectance: bad}};
    expect(() => backdropLevels(wrong, [probe])).toThrow(/^reflectance/);
  });
});
