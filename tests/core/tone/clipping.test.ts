import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {channelEdges, edgesOf} from '../../../src/core/tone/clipping.js';
import {codeReached, percentileCode} from '../../../src/core/tone/percentiles.js';
import {tallyPixels} from '../../../src/core/tone/tally.js';
import {publishedValue} from '../../reference/published.js';
import {noise, strip} from './plain.js';

describe('percentiles', () => {
  it('are the values at that rank of the sorted codes', () => {
    fc.assert(fc.property(fc.integer(), fc.double({min: 0, max: 1, noNaN: true}), (seed, share) => {
      const pixels = noise(17, 9, seed);
      const sorted = pixels.data.filter((_, at) => at % 4 === 0).sort();
      const tally = tallyPixels(pixels);
      expect(percentileCode(tally, 'red', share)).toBe(sorted[Math.max(1, Math.ceil(share * sorted.length)) - 1]);
      expect(codeReached(tally, 'red', share)).toBe(sorted[sorted.length - Math.max(1, Math.ceil(share * sorted.length))]);
    }));
  });

  it('reach the extremes at 0 and 1', () => {
    const tally = tallyPixels(strip([7, 0, 0, 1], [90, 0, 0, 98], [201, 0, 0, 1]));
    expect([0, 0.5, 1].map((share) => percentileCode(tally, 'red', share))).toEqual([7, 90, 201]);
  });

  it('refuse a share outside 0 to 1 and an empty tally by name', () => {
    const tally = tallyPixels(strip([1, 1, 1, 1]));
    expect(() => percentileCode(tally, 'red', 1.1)).toThrow(/^share:/);
    expect(() => percentileCode(tally, 'red', NaN)).toThrow(/^share:/);
    const nothing = tallyPixels({data: new Uint8Array(4), width: 1, height: 1});
    expect(() => percentileCode(nothing, 'red', 0.5)).toThrow(/^pixels:/);
    expect(() => edgesOf(nothing)).toThrow(/^pixels:/);
  });
});

describe('edges of a channel', () => {
  it('give the shares at 0 and at 255', () => {
    const edges = edgesOf(tallyPixels(strip([0, 10, 10, 30], [255, 10, 10, 20], [255, 255, 10, 50])));
    expect([edges.red.atBlack, edges.red.atWhite]).toEqual([0.3, 0.7]);
    expect([edges.green.atBlack, edges.green.atWhite]).toEqual([0, 0.5]);
    expect([edges.anyAtBlack, edges.anyAtWhite]).toEqual([0.3, 0.7]);
  });

  it('have one stop of room below white at code 188', () => {
    // Source: IEC 61966-2-1, reference/published/tone.json stop-code-1.
    expect(publishedValue('tone', 'stop-code-1').expected.value).toBe(188);
    const {roomAbove} = channelEdges(tallyPixels(strip([188, 0, 0, 50])), 'red');
    expect(Math.abs(roomAbove - 1)).toBeLessThan(0.01); // half a code is 0.006 stop there
  });

  it('have no room at 255 and at 0, and none to spare at 1', () => {
    const {red, green} = edgesOf(tallyPixels(strip([255, 0, 0, 9], [255, 1, 0, 9])));
    expect([red.roomAbove, red.whiteLost]).toEqual([0, true]);
    expect([green.roomBelow, green.blackLost]).toEqual([0, true]);
    expect(channelEdges(tallyPixels(strip([1, 1, 1, 4])), 'red')).toMatchObject({roomBelow: 0, blackLost: false});
  });

  it('do not listen to one hot pixel in ten thousand', () => {
    const {red} = edgesOf(tallyPixels(strip([100, 0, 0, 9999], [255, 0, 0, 1])));
    expect(red).toMatchObject({brightest: 100, whiteLost: false, atWhite: 1 / 10_000});
    expect(channelEdges(tallyPixels(strip([100, 0, 0, 9999], [255, 0, 0, 1])), 'red', 0).whiteLost).toBe(true);
  });

  it('name the colour that is lost while brightness is not', () => {
    // A saturated red cloak and a blue glaze before gray.
    const edges = edgesOf(tallyPixels(strip([255, 20, 30, 10], [90, 90, 90, 80], [10, 0, 200, 10])));
    expect(edges.hiddenAtWhite).toEqual(['red']);
    expect(edges.hiddenAtBlack).toEqual(['green']);
    expect(edges.brightness.whiteLost).toBe(false);
    expect(edgesOf(tallyPixels(strip([255, 255, 255, 10]))).hiddenAtWhite).toEqual([]);
  });
});

describe('the edges of all colours together', () => {
  it('say what share is near white in any of them', () => {
    expect(edgesOf(tallyPixels(strip([255, 20, 30, 1], [90, 90, 90, 3]))).anyNearWhite).toBe(0.25);
  });

  it('hide nothing at black where brightness is lost there too', () => {
    expect(edgesOf(tallyPixels(strip([0, 0, 0, 10]))).hiddenAtBlack).toEqual([]);
  });
});
