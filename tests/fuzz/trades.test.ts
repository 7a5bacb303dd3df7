import fc from 'fast-check';
import {describe, expect} from 'vitest';
import {
  Problem, SETTINGS, afterStops, apertureStops, clickAt, clicks, clicksPrinted, depthStops, exactFromNominal, exposureStops, exposureValue,
  exposureValue100, isoStops, nearestClick, shutterStops, trade, writeSetting, writeStops,
} from '../../src/core/index.js';
import type {Range, TradeRequest} from '../../src/core/index.js';
import {fuzz, outcome, sound} from './cases.js';
import {anyNumber} from './hostile.js';

const anySetting = fc.constantFrom(...SETTINGS);
const perStop = fc.constantFrom(1, 2, 3);
const exposureOf = (number: fc.Arbitrary<number>) => fc.record({aperture: number, shutter: number, iso: number});
const setting = fc.double({min: 0.5, max: 1000, noNaN: true});
const range: fc.Arbitrary<Range> = fc.tuple(setting, setting);

const requestOf = (number: fc.Arbitrary<number>, correction: fc.Arbitrary<number>, limit: fc.Arbitrary<Range>): fc.Arbitrary<TradeRequest> =>
  fc.record({
    from: exposureOf(number), correction, change: fc.record({aperture: number, shutter: number, iso: number}, {requiredKeys: []}),
    pay: anySetting, clicksPerStop: perStop, limits: fc.record({aperture: limit, shutter: limit, iso: limit}, {requiredKeys: []}),
    step: fc.constantFrom('stop', 'click'),
  }, {requiredKeys: ['from', 'change', 'pay', 'clicksPerStop']});

describe('trades of anything for anything', () => {
  fuzz('a trade of believable numbers balances to half a click, or says what is short', 12_000,
    requestOf(fc.double({min: 0.71, max: 128, noNaN: true}), fc.double({min: -10, max: 10, noNaN: true}), fc.constant([1, 100])), (request) => {
      const made = sound(outcome(() => trade(request)));
      if (made instanceof Problem) return;
      expect(made.path[0]).toEqual(request.from);
      expect(made.path.at(-1)).toEqual(made.to);
      if (made.limit) expect(made.limit.short).toBeCloseTo(-made.rounding, 9);
      else expect(Math.abs(made.rounding)).toBeLessThanOrEqual(0.5 / request.clicksPerStop + 1e-9);
    });
  fuzz('a trade of numbers nobody means is sound or refused', 12_000,
    requestOf(anyNumber, anyNumber, fc.oneof(range, fc.tuple(anyNumber, anyNumber))), (request) => { sound(outcome(() => trade(request))); });
  fuzz('stops between any two settings are sound or refused, and never -0', 8000, fc.tuple(exposureOf(anyNumber), exposureOf(anyNumber)), ([from, to]) => {
    const all = [
      () => apertureStops(from.aperture, to.aperture), () => depthStops(from.aperture, to.aperture), () => shutterStops(from.shutter, to.shutter),
      () => isoStops(from.iso, to.iso), () => exposureStops(from, to), () => exposureValue(from), () => exposureValue100(from),
    ].map((job) => sound(outcome(job)));
    expect(all.some((stops) => Object.is(stops, -0))).toBe(false);
  });
  fuzz('a dial of any reach has finitely many clicks, each the nearest to itself', 3000, fc.tuple(anySetting, perStop, fc.oneof(range, fc.tuple(anyNumber, anyNumber))),
    ([name, per, limits]) => {
      const found = outcome(() => clicks(name, per, limits));
      if (found instanceof Problem) return;
      for (const click of [found[0], found.at(-1)]) {
        if (click) expect(nearestClick(name, click.value, per, limits).index).toBe(click.index);
      }
    });
  fuzz('any number finds its click, its print and its words, or is refused', 8000, fc.tuple(anySetting, anyNumber, perStop, anyNumber), ([name, number, per, stops]) => {
    for (const job of [
      () => clickAt(name, number, per), () => clicksPrinted(name, number, per), () => exactFromNominal(name, number, per),
      () => nearestClick(name, number, per), () => afterStops(name, number, stops),
    ]) sound(outcome<unknown>(job));
    for (const job of [() => writeSetting(name, number), () => writeStops(number)]) {
      const written = outcome(job);
      if (!(written instanceof Problem)) expect(written).not.toMatch(/NaN|Infinity|undefined/);
    }
  });
});
