import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {exposureAdvice} from '../../../src/core/tone/advice.js';
import {advisedTrade} from '../../../src/core/tone/advised.js';
import {edgesOf} from '../../../src/core/tone/clipping.js';
import {cropChange} from '../../../src/core/tone/cropped.js';
import {tallyPixels} from '../../../src/core/tone/tally.js';
import {noise, strip} from './plain.js';

/** A dark backdrop with a figure whose brightest red has the given code. Invented. */
const before = (red: number) => tallyPixels(strip([18, 18, 18, 700], [90, 60, 50, 250], [red, 70, 40, 50]));

describe('advice before a dark backdrop', () => {
  it('leaves a chart alone that leans left but keeps its highlights near white', () => {
    expect(exposureAdvice(before(215), 'dark-backdrop')).toMatchObject({reason: 'fits', thirds: 0, channel: 'red'});
  });

  it('brightens towards two thirds below white when the highlights lie far below', () => {
    // Code 99 is three stops below white (IEC 61966-2-1, published stop-code-3): 3 − 2/3 = 7 thirds.
    expect(exposureAdvice(before(99), 'dark-backdrop')).toMatchObject({reason: 'too-dark', thirds: 7});
  });

  it('darkens by at least a click when one colour is lost, and says which', () => {
    const advice = exposureAdvice(before(255), 'dark-backdrop');
    expect(advice).toMatchObject({reason: 'white-lost', channel: 'red', share: 0.05, room: 0, estimated: true});
    expect(advice.thirds).toBeLessThanOrEqual(-1);
  });

  it('brightens when the left edge is reached, but never past white', () => {
    const advice = exposureAdvice(tallyPixels(strip([0, 0, 0, 300], [60, 60, 60, 650], [188, 188, 188, 50])), 'dark-backdrop');
    // One stop of room above code 188 (published stop-code-1).
    expect(advice).toMatchObject({reason: 'black-lost', channel: 'brightness', share: 0.3});
    expect(advice.thirds).toBeGreaterThan(0);
    expect(advice.thirds).toBeLessThanOrEqual(3);
  });

  it('finds no exposure when both edges are lost', () => {
    const advice = exposureAdvice(tallyPixels(strip([0, 0, 0, 50], [90, 90, 90, 50], [255, 255, 255, 50])), 'dark-backdrop');
    expect(advice).toMatchObject({reason: 'both-lost', thirds: 0});
  });
});

describe('advice for an even picture', () => {
  it('brings the middle to middle gray', () => {
    // Code 118 is middle gray, 50 lies 2.53 stops below it: 4.970479 − 2.4515 stops below white (published code-stops-50).
    expect(exposureAdvice(tallyPixels(strip([50, 50, 50, 10])), 'even')).toMatchObject({reason: 'too-dark', thirds: 7});
    expect(exposureAdvice(tallyPixels(strip([200, 200, 200, 10])), 'even')).toMatchObject({reason: 'too-bright', thirds: -5});
    expect(exposureAdvice(tallyPixels(strip([118, 118, 118, 10])), 'even')).toMatchObject({reason: 'fits', thirds: 0});
  });

  it('stops where the highlights reach white', () => {
    const advice = exposureAdvice(tallyPixels(strip([20, 20, 20, 90], [188, 188, 188, 10])), 'even');
    expect(advice).toMatchObject({reason: 'too-dark', thirds: 2}); // 0.994 stop of room holds two thirds, not three
  });
});

describe('every advice', () => {
  it('keeps what is not lost yet, whatever the picture', () => {
    fc.assert(fc.property(fc.integer(), fc.integer({min: 1, max: 254}), fc.constantFrom('even' as const, 'dark-backdrop' as const),
      (seed, ceiling, intent) => {
        const {data, ...size} = noise(20, 20, seed);
        const tally = tallyPixels({...size, data: data.map((value, at) => (at % 4 === 3 ? 255 : Math.round(value * ceiling / 255)))});
        const advice = exposureAdvice(tally, intent);
        const edges = edgesOf(tally);
        const room = Math.min(edges.red.roomAbove, edges.green.roomAbove, edges.blue.roomAbove);
        expect(Number.isInteger(advice.thirds)).toBe(true);
        if (advice.thirds > 0) expect(advice.thirds / 3).toBeLessThanOrEqual(room + 1e-9);
        expect(advice.roomAfter).toBeGreaterThanOrEqual(0);
      }));
  });

  it('is given for pictures of one colour too', () => {
    expect(exposureAdvice(tallyPixels(strip([0, 0, 0, 4])), 'dark-backdrop')).toMatchObject({reason: 'black-lost', thirds: 9});
    expect(exposureAdvice(tallyPixels(strip([255, 255, 255, 4])), 'even')).toMatchObject({reason: 'white-lost', thirds: -9});
  });
});

describe('the setting an advice leads to', () => {
  const advice = exposureAdvice(before(99), 'dark-backdrop');

  it('is paid on the clicks of the chosen setting', () => {
    // Seven thirds brighter than 1/64 s is 2^(-6 + 7/3) s, printed 1/13.
    const {to, rounding} = advisedTrade(advice, {aperture: 2 ** 3.5, shutter: 2 ** -6, iso: 100}, 'shutter', 3);
    expect(to.shutter).toBeCloseTo(2 ** (-11 / 3), 12);
    expect(to.aperture).toBe(2 ** 3.5);
    expect(rounding).toBe(0);
  });

  it('says what is missing when a limit stops it', () => {
    const trade = advisedTrade(advice, {aperture: 2 ** 3.5, shutter: 16, iso: 100}, 'shutter', 3, {shutter: [1 / 4000, 30]});
    expect(trade.limit?.setting).toBe('shutter');
    expect(trade.limit?.short).toBeCloseTo(4 / 3, 9);
  });
});

describe('what the crop changed', () => {
  const whole = strip([255, 255, 255, 100], [60, 50, 40, 200], [215, 90, 80, 50], [0, 0, 0, 50]);
  const inside = tallyPixels(whole, {x: 100, y: 0, width: 250, height: 1});
  const change = cropChange(inside, tallyPixels(whole), 'dark-backdrop');

  it('is the share at each edge inside, less the share of the whole', () => {
    expect(change.kept).toBeCloseTo(250 / 400, 12);
    expect(change.channels.map(({channel}) => channel)).toEqual(['red', 'green', 'blue', 'brightness']);
    for (const channel of change.channels) expect([channel.atBlack, channel.atWhite]).toEqual([-0.125, -0.25]);
  });

  it('says that the advice would have been another one', () => {
    expect(change.adviceWithout.reason).toBe('both-lost');
    expect(change.adviceInside.reason).toBe('fits');
    expect(change.matters).toBe(true);
  });

  it('is nothing when everything is kept', () => {
    const same = cropChange(inside, inside, 'even');
    expect(same).toMatchObject({kept: 1, matters: false, most: {atBlack: 0, atWhite: 0, median: 0}});
  });
});
