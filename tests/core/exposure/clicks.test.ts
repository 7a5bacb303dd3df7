import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {
  clickAt, clicks, clicksPrinted, exactFromNominal, nearestClick, WIDEST,
} from '../../../src/core/exposure/clicks.js';
import type {ClicksPerStop} from '../../../src/core/exposure/clicks.js';
import {lightStops, SETTINGS} from '../../../src/core/exposure/stops.js';
import type {Setting} from '../../../src/core/exposure/stops.js';
import {Problem} from '../../../src/core/problem.js';
import {publishedValue, published} from '../../reference/published.js';

const anySetting = fc.constantFrom(...SETTINGS);
const anyFineness = fc.constantFrom<ClicksPerStop>(1, 2, 3);

function numberOn(label: string): number {
  const [above, below = '1'] = label.split('/');
  return Number(above) / Number(below);
}

/** The printed series of a record and the clicks from `first` on that should carry it. */
function series(id: string, setting: Setting, clicksPerStop: ClicksPerStop, first: number, direction: 1 | -1 = 1) {
  const record = publishedValue('scales', id);
  const printed = record.expected.value as readonly number[];
  return {record, printed, dial: printed.map((_, at) => clickAt(setting, first + direction * at, clicksPerStop))};
}

// Full, half and third f-stops: encyclopedia article “F-number”, in stored copies. Times: teaching page “Shutter
// speed chart (whole, half and third stops)”. ISO: steps 320 to 2500 from a published paper, the rest from memory.
describe.each([
  ['fstops-full', 'aperture', 1, -1, 1],
  ['fstops-half', 'aperture', 2, 0, 1],
  ['fstops-third', 'aperture', 3, 0, 1],
  ['shutter-full', 'shutter', 1, 5, -1],
  ['shutter-third-fast', 'shutter', 3, 0, -1],
  ['shutter-third-slow', 'shutter', 3, 0, 1],
  ['shutter-half-fast', 'shutter', 2, 0, -1],
  ['iso-third-scale', 'iso', 3, 0, 1],
] as const)('the published series %s', (id, setting, clicksPerStop, first, direction) => {
  const {record, printed, dial} = series(id, setting, clicksPerStop, first, direction);
  test('is what the clicks say', () => {
    expect(dial.map(({label}) => numberOn(label))).toEqual(printed.map((number) => expect.closeTo(number, 6)));
  });
  test('rounds exact clicks, within the published tolerance', () => {
    dial.forEach(({value}, at) => {
      expect(Math.abs(value - (printed[at] as number))).toBeLessThanOrEqual(record.tolerance ?? 0);
    });
  });
  test('is read back as the exact clicks', () => {
    dial.forEach(({value}, at) => expect(exactFromNominal(setting, printed[at] as number, clicksPerStop)).toBe(value));
  });
});

// Same sources; the exact value worked out from the formula stated there.
it.each(published('scales').filter(({id}) => id.startsWith('fnum-exact-')))('$id', (record) => {
  expect(exactFromNominal('aperture', Number(record.inputs['marked']?.value)))
    .toBeCloseTo(Number(record.expected.value), 5);
});

// How far a printed time is from its click (“Shutter speed chart”, as above).
it.each(published('scales').filter(({id}) => id.startsWith('shutter-err-')))('$id', (record) => {
  const marked = numberOn(String(record.inputs['marked']?.value));
  expect(lightStops('shutter', exactFromNominal('shutter', marked), marked))
    .toBeCloseTo(Number(record.expected.value), 5);
});

test('every label of a dial lies within a fifth of a stop of its click, but for one', () => {
  // The one: 0.3 s stands for 2^(-3/2) s on half-stop dials, 0.24 stop away.
  for (const setting of SETTINGS) for (const per of [1, 2, 3] as const) {
    for (const {label, value} of clicks(setting, per)) {
      if (setting === 'shutter' && per === 2 && label === '0.3') continue;
      expect(Math.abs(lightStops(setting, numberOn(label), value)), `${setting} ${label}`).toBeLessThan(0.19);
    }
  }
});

test('dials reach f/128, 1/32000 s, a good hour and ISO 409600', () => {
  expect([...clicks('aperture', 1)].map(({label}) => label).filter((_, at) => at % 15 === 0)).toEqual(['0.7', '128']);
  const times = clicks('shutter', 3).map(({label}) => label);
  expect([times[0], times.at(-1)]).toEqual(['1/32000', '4096']);
  const speeds = clicks('iso', 3).map(({label}) => label);
  expect([speeds[0], speeds.at(-1)]).toEqual(['25', '409600']);
});

test('labels are as the trade prints them', () => {
  // Common practice, no source.
  expect(clicks('shutter', 3, [1 / 6, 1]).map(({label}) => label))
    .toEqual(['1/6', '1/5', '1/4', '0.3', '0.4', '0.5', '0.6', '0.8', '1']);
  expect(clicks('iso', 2, [100, 800]).map(({label}) => label))
    .toEqual(['100', '140', '200', '280', '400', '560', '800']);
  expect(clicks('shutter', 1, [30, 300]).map(({label}) => label)).toEqual(['30', '64', '128', '256']);
});

test('a lens marked f/2.8 to f/22 has both ends, one marked f/3.4 starts at the next click', () => {
  const dial = clicks('aperture', 1, [2.8, 22]).map(({label}) => label);
  expect(dial).toEqual(['2.8', '4', '5.6', '8', '11', '16', '22']);
  expect(clicks('aperture', 3, [3.4, 5.6])[0]?.label).toBe('3.5');
  expect(clicks('aperture', 1, [3, 3.5])).toEqual([]);
  expect(clicks('aperture', 1, [8, 8]).map(({index}) => index)).toEqual([6]);
});

test('every click of every dial is read back from its label, on its own dial', () => {
  for (const setting of SETTINGS) for (const per of [1, 2, 3] as const) {
    for (const {label, value} of clicks(setting, per)) {
      expect(exactFromNominal(setting, numberOn(label), per), `${setting} ${label} ${per}`).toBe(value);
    }
  }
});

test('numbers printed for two clicks give both, the third stop first, on a half-stop dial the half', () => {
  expect(clicksPrinted('aperture', 13)).toEqual([2 ** (22 / 6), 2 ** (15 / 4)]);
  expect(clicksPrinted('aperture', 13, 2)).toEqual([2 ** (15 / 4), 2 ** (22 / 6)]);
  for (const [setting, nominal] of [
    ['aperture', 1.2], ['shutter', 1 / 6], ['shutter', 1 / 10], ['shutter', 1 / 20], ['shutter', 0.3],
  ] as const) expect(clicksPrinted(setting, nominal)).toHaveLength(2);
  expect(clicksPrinted('aperture', 11)).toHaveLength(1);
});

test('values on no dial stay: a phone’s f/1.78, a zoom’s f/3.4, a metered 0.37 s', () => {
  expect(exactFromNominal('aperture', 1.78)).toBe(1.78);
  expect(exactFromNominal('aperture', 3.4)).toBe(3.4);
  expect(exactFromNominal('shutter', 0.37)).toBe(0.37);
});

test('taking a value for its click twice is the same as once', () => {
  fc.assert(fc.property(anySetting, anyFineness, fc.integer({min: -15, max: 12}), (setting, per, stop) => {
    const {value} = clickAt(setting, stop, per);
    expect(exactFromNominal(setting, value)).toBeCloseTo(value, 12);
  }));
});

test('the nearest click is never more than half a click away, and its rounding leads back', () => {
  fc.assert(fc.property(anySetting, anyFineness, fc.double({min: 0, max: 1, noNaN: true}), (setting, per, along) => {
    const [least, greatest] = WIDEST[setting];
    const value = least * (greatest / least) ** along;
    const click = nearestClick(setting, value, per);
    expect(Math.abs(click.rounding)).toBeLessThanOrEqual(0.5 / per + 1e-9);
    expect(lightStops(setting, click.value, value)).toBeCloseTo(-click.rounding, 9);
  }));
});

test('0.37 s on a third-stop dial is 0.4, a tenth of a stop longer', () => {
  const click = nearestClick('shutter', 0.37, 3);
  expect(click.label).toBe('0.4');
  expect(click.rounding).toBeCloseTo(0.1, 2);
});

test('a range holds the click back and the rounding says so', () => {
  const click = nearestClick('aperture', 32, 3, [2.8, 22]);
  expect(click.label).toBe('22');
  expect(click.rounding).toBeCloseTo(1, 9);
});

test('index 0 is plain 0', () => {
  expect(Object.is(nearestClick('shutter', 0.99, 3).index, 0)).toBe(true);
  expect(clicks('iso', 3, [99, 101]).map(({index}) => Object.is(index, 0))).toEqual([true]);
});

test('refuses what is no click, no value, no range, by name', () => {
  expect(() => clickAt('iso', 0.5, 3)).toThrow(new Problem('click', 0.5, 'a whole number'));
  expect(() => nearestClick('iso', NaN, 3)).toThrow(new Problem('iso', NaN, 'a number above 0'));
  expect(() => nearestClick('aperture', 3, 1, [3, 3.5])).toThrow(Problem);
  expect(() => clicks('aperture', 1, [0, 8])).toThrow(Problem);
});

test('limits that meet hold one click; limits between two hold none', () => {
  expect(nearestClick('aperture', 11, 3, [8, 8]).value).toBe(8);
  expect(() => nearestClick('aperture', 8, 3, [3.3, 3.4])).toThrow(new Problem('aperture', '3.3 to 3.4', 'limits with a click between them'));
});

test('held back to click 0 the index is 0, never -0', () => {
  expect(nearestClick('aperture', 0.8, 3, [1, 22]).index).toBe(0);
});

test('a click within 1000 of the first is one, and none further away', () => {
  expect(clickAt('iso', 1000, 3).value).toBeLessThan(Infinity);
  for (const far of [1001, -1001, 1e9]) expect(() => clickAt('iso', far, 3)).toThrow(new Problem('click', far, 'a whole number'));
});

test('a time that bodies print otherwise is no f-number of that size', () => {
  expect(clicksPrinted('shutter', 4 / 3)).not.toEqual([]);
  expect(clicksPrinted('aperture', 4 / 3)).toEqual([]);
});

test('a click past every print is labelled in two digits: f/0.5', () => {
  expect(clickAt('aperture', -6, 3)).toEqual({index: -6, value: 0.5, label: '0.5'});
});
