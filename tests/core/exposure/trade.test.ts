import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {clickAt, clicks} from '../../../src/core/exposure/clicks.js';
import type {ClicksPerStop} from '../../../src/core/exposure/clicks.js';
import {readExposure} from '../../../src/core/exposure/read-exposure.js';
import {exposureStops, SETTINGS} from '../../../src/core/exposure/stops.js';
import type {Exposure, Setting} from '../../../src/core/exposure/stops.js';
import {trade} from '../../../src/core/exposure/trade.js';
import {writeAperture, writeShutter} from '../../../src/core/exposure/write.js';
import {Problem} from '../../../src/core/problem.js';

function settings(text: string): Exposure {
  const {aperture, shutter, iso} = readExposure(text);
  if (!aperture || !shutter) throw new Error(`no exposure in ${text}`);
  return {aperture: aperture.value, shutter: shutter.value, iso: iso?.value ?? 100};
}

const said = ({aperture, shutter}: Exposure): string => `${writeAperture(aperture)} ${writeShutter(shutter)}`;

const start = settings('f/2.8 1/25');

describe('the trade of a first close-up', () => {
  // Whole stops on the way as photographers count them: common practice, no source.
  test('shows each whole stop: f/2.8 → 4 → 5.6 → 8, 1/25 → 1/13 → 1/6 → 0.3 s', () => {
    const {path, to, rounding, cost, limit} = trade({from: start, change: {aperture: 8}, pay: 'shutter', clicksPerStop: 3});
    expect(path.map(said)).toEqual(['f/2.8 1/25 s', 'f/4 1/13 s', 'f/5.6 1/6 s', 'f/8 0.3 s']);
    expect(to).toBe(path.at(-1));
    expect([rounding, limit]).toEqual([0, null]);
    expect(cost).toEqual({aperture: expect.closeTo(-3, 9), shutter: expect.closeTo(3, 9), iso: 0});
  });

  test('or each click', () => {
    const {path} = trade({from: start, change: {aperture: 4}, pay: 'shutter', clicksPerStop: 3, step: 'click'});
    expect(path.map(said)).toEqual(['f/2.8 1/25 s', 'f/3.2 1/20 s', 'f/3.5 1/15 s', 'f/4 1/13 s']);
  });

  test('takes the meter’s two stops under along first', () => {
    const {path} = trade({from: start, correction: 2, change: {aperture: 8}, pay: 'shutter', clicksPerStop: 3});
    expect(path.map(said)).toEqual(['f/2.8 1/25 s', 'f/2.8 1/6 s', 'f/4 0.3 s', 'f/5.6 0.6 s', 'f/8 1.3 s']);
  });

  test('pays a correction alone', () => {
    const {to} = trade({from: start, correction: -2 / 3, change: {}, pay: 'shutter', clicksPerStop: 3});
    expect(said(to)).toBe('f/2.8 1/40 s');
  });

  test('changes two settings, one after the other', () => {
    const {path} = trade({from: start, change: {aperture: 5.656854249492381, iso: 200}, pay: 'shutter', clicksPerStop: 3});
    expect(path.map((at) => `${said(at)} ${at.iso}`))
      .toEqual(['f/2.8 1/25 s 100', 'f/4 1/13 s 100', 'f/5.6 1/6 s 100', 'f/5.6 1/13 s 200']);
  });

  test('a last step that is no whole stop is its own', () => {
    const {path} = trade({from: start, change: {aperture: 2 ** (17 / 6)}, pay: 'shutter', clicksPerStop: 3});
    expect(path.map(said)).toEqual(['f/2.8 1/25 s', 'f/4 1/13 s', 'f/5.6 1/6 s', 'f/7.1 1/4 s']);
  });
});

test('a metered 0.37 s at f/3.4 stays until it has to pay; then the rounding is named', () => {
  const from = {aperture: 3.4, shutter: 0.37, iso: 100};
  expect(trade({from, change: {}, pay: 'shutter', clicksPerStop: 3})).toMatchObject({to: from, rounding: 0, path: [from]});
  const {to, wanted, rounding} = trade({from, change: {aperture: 8}, pay: 'shutter', clicksPerStop: 3});
  expect(wanted).toBeCloseTo(0.37 * (8 / 3.4) ** 2, 12);
  expect(said(to)).toBe('f/8 2 s');
  expect(rounding).toBeCloseTo(Math.log2(2 / wanted), 12);
});

describe('when a limit stops it', () => {
  const limits = {shutter: [1 / 8000, 0.5], aperture: [2.8, 22]} as const;
  const stopped = trade({from: start, correction: 2, change: {aperture: 8}, pay: 'shutter', clicksPerStop: 3, limits});

  test('says which setting, where, and how much light is missing', () => {
    expect(stopped.limit).toMatchObject({setting: 'shutter', at: 0.5, short: expect.closeTo(4 / 3, 9)});
    expect(stopped.rounding).toBeCloseTo(-4 / 3, 9);
    expect(stopped.to.shutter).toBe(0.5);
  });

  test('names what else could pay: a wider aperture, a higher ISO, more light', () => {
    expect(stopped.limit?.waysOut).toEqual([
      {setting: 'aperture', value: 2 ** (14 / 6), stops: expect.closeTo(4 / 3, 9), left: 0},
      {setting: 'iso', value: 100 * 2 ** (4 / 3), stops: expect.closeTo(4 / 3, 9), left: 0},
      {setting: 'light', value: expect.closeTo(2 ** (4 / 3), 9), stops: expect.closeTo(4 / 3, 9), left: 0},
    ]);
  });

  test('leaves out what is at its own limit', () => {
    const {limit} = trade({
      from: start, change: {shutter: 0.5}, pay: 'aperture', clicksPerStop: 3,
      limits: {aperture: [2.8, 5.6], iso: [100, 6400]},
    });
    expect(limit).toMatchObject({setting: 'aperture', at: 2 ** 2.5, short: expect.closeTo(-5 / 3, 9)});
    expect(limit?.waysOut.map(({setting}) => setting)).toEqual(['shutter', 'light']);
  });

  test('leaves out a lens with one aperture', () => {
    const {limit} = trade({
      from: {...start, aperture: 1.78}, correction: 5, change: {}, pay: 'shutter', clicksPerStop: 3,
      limits: {shutter: [1 / 8000, 0.5], aperture: [1.78, 1.78]},
    });
    expect(limit?.waysOut.map(({setting}) => setting)).toEqual(['iso', 'light']);
  });

  test('the path keeps only steps that balance', () => {
    expect(stopped.path.map(said)).toEqual(['f/2.8 1/25 s', 'f/2.8 1/6 s', 'f/4 0.3 s', 'f/8 0.5 s']);
  });
});

/** A setting on a click of a dial, well inside its widest range so that the paying one has room. */
const inside = (setting: Setting, per: ClicksPerStop): fc.Arbitrary<number> => (
  fc.integer(setting === 'aperture' ? {min: 2 * per, max: 6 * per} : {min: -2 * per, max: 2 * per})
    .map((index) => clickAt(setting, index, per).value));
const job = fc.constantFrom<ClicksPerStop>(1, 2, 3).chain((clicksPerStop) => fc.record({
  clicksPerStop: fc.constant(clicksPerStop),
  from: fc.record({aperture: inside('aperture', clicksPerStop), shutter: inside('shutter', clicksPerStop),
    iso: inside('iso', clicksPerStop).map((iso) => iso * 64)}),
  changing: fc.constantFrom<Setting>(...SETTINGS),
  paying: fc.constantFrom<Setting>(...SETTINGS),
  stops: fc.integer({min: -2, max: 2}),
})).filter(({changing, paying}) => changing !== paying);

test('there and back returns to the very same exposure', () => {
  fc.assert(fc.property(job, fc.integer({min: 0, max: 30}), ({clicksPerStop, from, changing, paying}, pick) => {
    const range = {aperture: [2, 8], shutter: [1 / 4, 4], iso: [1600, 25600]} as const;
    const dial = clicks(changing, clicksPerStop, range[changing]);
    const value = dial[pick % dial.length]?.value as number;
    const there = trade({from, change: {[changing]: value}, pay: paying, clicksPerStop});
    fc.pre(there.limit === null);
    const back = trade({from: there.to, change: {[changing]: from[changing]}, pay: paying, clicksPerStop});
    for (const setting of SETTINGS) expect(back.to[setting]).toBeCloseTo(from[setting], 9);
    expect([there.rounding, back.rounding]).toEqual([0, 0]);
  }));
});

test('whatever is metered and changed, the light is kept to within half a click, at every step of the path', () => {
  const metered = fc.record({aperture: fc.double({min: 2, max: 16, noNaN: true}),
    shutter: fc.double({min: 1 / 60, max: 2, noNaN: true}), iso: fc.double({min: 200, max: 6400, noNaN: true})});
  const correction = fc.double({min: -2, max: 2, noNaN: true});
  fc.assert(fc.property(job, metered, metered, correction, fc.constantFrom<'stop' | 'click'>('stop', 'click'),
    ({clicksPerStop, changing, paying}, from, other, wanted, step) => {
      const change = {[changing]: other[changing]};
      const result = trade({from, correction: wanted, change, pay: paying, clicksPerStop, step});
      fc.pre(result.limit === null);
      expect(result.path[0]).toEqual(from);
      expect(result.path.at(-1)).toEqual(result.to);
      const way = result.path.map((at) => at[changing]);
      const up = result.to[changing] >= from[changing];
      expect(way).toEqual([...way].sort((one, two) => (up ? one - two : two - one)));
      for (const at of result.path.slice(1)) {
        expect(Math.abs(exposureStops(from, at) - wanted)).toBeLessThanOrEqual(0.5 / clicksPerStop + 1e-9);
      }
      expect(exposureStops(from, result.to) - wanted).toBeCloseTo(result.rounding, 8);
      const {aperture, shutter, iso} = result.cost;
      expect(aperture + shutter + iso).toBeCloseTo(wanted + result.rounding, 8);
    }));
});

test('the path goes one way: no step undoes another', () => {
  fc.assert(fc.property(job, ({clicksPerStop, from, changing, paying, stops}) => {
    const value = changing === 'aperture' ? from.aperture * 2 ** (stops / 2) : from[changing] * 2 ** stops;
    const {path, to} = trade({from, change: {[changing]: value}, pay: paying, clicksPerStop});
    const way = path.map((at) => at[changing]);
    expect(way).toEqual([...way].sort((one, two) => (to[changing] >= from[changing] ? one - two : two - one)));
    expect(path).toHaveLength(Math.abs(stops) + 1);
  }));
});

describe('what cannot be traded', () => {
  it('refuses to pay with what is changed', () => {
    expect(() => trade({from: start, change: {aperture: 8}, pay: 'aperture', clicksPerStop: 3}))
      .toThrow(new Problem('pay', 'aperture', 'a setting that is not being changed'));
  });
  it('takes the printed end of a half-stop lens for its own click', () => {
    const limits = {aperture: [2.8, 13]} as const;
    const ask = {from: start, change: {aperture: 2 ** (15 / 4)}, pay: 'shutter', limits} as const;
    expect(trade({...ask, clicksPerStop: 2}).to.aperture).toBe(2 ** (15 / 4));
    expect(() => trade({...ask, clicksPerStop: 3})).toThrow(Problem);
  });
  it('refuses a change beyond the lens', () => {
    expect(() => trade({
      from: start, change: {aperture: 32}, pay: 'shutter', clicksPerStop: 3, limits: {aperture: [2.8, 16]},
    })).toThrow(new Problem('aperture', 32, 'f/2.8 to f/16'));
  });
  it.each([0, NaN, -1, Infinity])('refuses %s, by the name of what it was given for', (bad) => {
    const ask = {from: start, change: {aperture: 8}, pay: 'shutter', clicksPerStop: 3} as const;
    expect(() => trade({...ask, change: {aperture: bad}})).toThrow(/^aperture/);
    expect(() => trade({...ask, from: {...start, shutter: bad}})).toThrow(/^shutter/);
    if (!Number.isFinite(bad)) expect(() => trade({...ask, correction: bad})).toThrow(/^correction/);
  });
});

describe('the ends of what a trade may do', () => {
  const lens = {aperture: [2.8, 16]} as const;
  const ask = {from: start, pay: 'shutter', clicksPerStop: 3} as const;

  it('takes both ends of the lens, and nothing wider', () => {
    for (const end of [2 ** 1.5, 16]) expect(trade({...ask, change: {aperture: end}, limits: lens}).to.aperture).toBe(end);
    expect(() => trade({...ask, change: {aperture: 2.5}, limits: lens})).toThrow(new Problem('aperture', 2.5, 'f/2.8 to f/16'));
  });

  it('names first what leaves least, each with what it leaves', () => {
    // Three stops missing; f/4 to f/2.8 has one to give, the ISO speed all of them.
    const {limit} = trade({
      ...ask, from: settings('f/4 1/25'), change: {}, correction: 3, limits: {...lens, shutter: [1 / 4000, 1 / 25]},
    });
    expect(limit?.waysOut.map(({setting, left}) => [setting, left])).toEqual([
      ['iso', 0], ['aperture', expect.closeTo(2, 9)], ['light', 0]]);
  });

  it('leaves out every step that the limit keeps from balancing', () => {
    // On the way to f/8 the shutter would have to pass its limit; at ISO 800 it is back where it was.
    const {path, limit} = trade({...ask, change: {aperture: 8, iso: 800}, limits: {shutter: [1 / 4000, 1 / 25]}, step: 'click'});
    expect(limit).toBeNull();
    for (const at of path) expect(Math.abs(exposureStops(start, at))).toBeLessThanOrEqual(1 / 6 + 1e-6);
    expect(path.map((at) => said(at))).not.toContain('f/4 1/25 s');
  });

  it('tells no step twice', () => {
    for (const change of [{}, {aperture: 4}, {iso: 400}, {aperture: 4, iso: 400}]) {
      for (const correction of [0, 0.1, 1 / 6, 2]) {
        const {path} = trade({...ask, change, correction});
        expect(new Set(path.map((at) => JSON.stringify(at))).size).toBe(path.length);
      }
    }
  });

  it('half a click off is no limit, and a step that is half a click off stays', () => {
    const {path, limit, rounding} = trade({...ask, change: {aperture: 4}, correction: 1 / 6});
    expect(Math.abs(rounding)).toBeCloseTo(1 / 6, 9);
    expect(limit).toBeNull();
    expect(path).toHaveLength(3);
  });

  it('a metered time that owes nothing is no limit', () => {
    const from = {...start, shutter: 0.37};
    expect(trade({...ask, from, change: {}})).toMatchObject({to: from, limit: null});
  });
});
