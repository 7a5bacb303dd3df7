import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {readLink, writeLink} from '../../../src/core/shot/link.js';
import {shotKeys} from '../../../src/core/shot/given.js';
import {withText, withValue, withValues} from '../../../src/core/shot/saying.js';
import {EMPTY_STATE, type ShotState} from '../../../src/core/shot/state.js';
import {anyText, anyValues} from './arbitrary.js';

const said = (values: ShotState['values']) => withValues(EMPTY_STATE, values);
const read = (fragment: string) => {
  const reading = readLink(fragment);
  if (!reading) throw new Error(`no link: ${fragment}`);
  return reading;
};

/** Invented: the lantern bearer of the Fenwick Painting Guild. */
const BEARER = {aperture: 8, shutter: 2 ** (-5 / 3), baseDepth: 90, focus: 36, tilt: -4.5, intent: 'dark-backdrop', note: 'Lantern first.'} as const;

describe('a link', () => {
  it('reads like a setting', () => {
    expect(writeLink(said(BEARER))).toBe('shot=1&aperture=f/8&shutter=0.3s&base-depth=90mm&tilt=-4.5&focus=36mm&intent=dark-backdrop&note=Lantern_first%2E');
  });

  it('says only what was stated', () => {
    expect(writeLink(EMPTY_STATE)).toBe('shot=1');
    expect(read('#shot=1')).toEqual({state: EMPTY_STATE, notices: [], kept: []});
  });

  it('gives every shot back to the last bit', () => {
    fc.assert(fc.property(anyValues, (values) => {
      const reading = read(`#${writeLink(said(values))}`);
      expect(reading.state).toEqual(said(values));
      expect(reading.notices).toEqual([]);
    }), {numRuns: 400});
  });

  it('survives the address bar: the URL standard’s own parser changes nothing', () => {
    fc.assert(fc.property(anyValues, (values) => {
      const link = writeLink(said(values));
      const url = new URL('https://example.org/lesson?a=1');
      url.hash = link;
      expect(url.hash).toBe(`#${link}`);
      expect(read(new URL(url.href).hash).state).toEqual(said(values));
    }));
  });

  it('writes the same link again from what it read', () => {
    fc.assert(fc.property(anyValues, (values) => {
      const link = writeLink(said(values));
      expect(writeLink(read(link).state)).toBe(link);
    }));
  });

  it('keeps a number from a script apart from the click it prints as', () => {
    expect(writeLink(said({aperture: 11}))).toBe('shot=1&aperture==11');
    expect(read('shot=1&aperture==11').state.values.aperture).toBe(11);
    expect(read('shot=1&aperture=f/11').state.values.aperture).toBeCloseTo(11.3137, 4); // 2^(7/2)
  });

  it('carries text that was typed and refused, and the value that stays in use', () => {
    const state = withText(withValue(EMPTY_STATE, 'aperture', 8), 'aperture', 'wide open');
    expect(writeLink(state)).toBe('shot=1&aperture=f/8&aperture=~wide_open');
    expect(read(writeLink(state)).state).toEqual(state);
    expect(read(writeLink(state)).notices).toEqual([]);
  });

  it('carries any refused text', () => {
    fc.assert(fc.property(anyText, fc.constantFrom(...shotKeys()), (text, key) => {
      const state = withText(EMPTY_STATE, key, text);
      if (!state.problems[key]) return;
      expect(read(writeLink(state)).state.texts[key]).toBe(text);
      expect(read(writeLink(state)).state.problems[key]?.wanted).toBe(state.problems[key]?.wanted);
    }));
  });

  it('does not take in use what an element had refused for a reason of its own', () => {
    const state: ShotState = {...withValue(EMPTY_STATE, 'aperture', 8), texts: {aperture: 'f/1.4'}};
    expect(read(writeLink(state)).state.values.aperture).toBe(8);
    expect(read(writeLink(state)).state.texts.aperture).toBe('f/1.4');
    expect(read(writeLink(state)).state.problems.aperture?.value).toBe('f/1.4');
  });

  it('leaves out how an accepted value was typed', () => {
    expect(writeLink(withText(EMPTY_STATE, 'shutter', '0"3'))).toBe('shot=1&shutter=0.3s');
  });
});

describe('reading any link', () => {
  it('knows a link to a shot from any other fragment', () => {
    for (const other of ['', '#', '#part-2', '#aperture=f/8', 'shots=1', '#a&b=c']) expect(readLink(other)).toBeNull();
  });

  it('takes values as a person may write them', () => {
    const {values} = read('#shot=1&aperture=5,6&shutter=0%226&base-depth=3.5in&clicks-per-stop=half').state;
    expect(values.shutter).toBeCloseTo(2 ** (-2 / 3), 12);
    expect(values.baseDepth).toBeCloseTo(88.9, 10);
    expect(values.clicksPerStop).toBe(2);
    expect(values.aperture).toBeCloseTo(5.657, 3);
  });

  it('says what is unknown and hands it on', () => {
    const {state, notices, kept} = read('#shot=1&aperture=f/8&lens-hood=petal_shaped&iso=100');
    expect(state.values).toEqual({aperture: 8, iso: 100});
    expect(notices).toEqual([{kind: 'unknown', name: 'lens-hood', text: 'petal shaped'}]);
    expect(writeLink(state, kept)).toBe('shot=1&aperture=f/8&iso=ISO100&lens-hood=petal_shaped');
  });

  it('keeps the rest when one part is broken', () => {
    const {state, notices} = read('#shot=1&aperture=eleven&shutter=&iso=100&focus=%E0%A4%A&crop==1,2&tilt');
    expect(state.values).toEqual({iso: 100});
    expect(state.texts).toEqual({aperture: 'eleven', shutter: '', focus: '%E0%A4%A', crop: '=1,2'});
    expect(notices.map((notice) => notice.kind)).toEqual(['unreadable', 'unreadable', 'unreadable', 'unreadable', 'unknown']);
  });

  it('says that a newer page made it, and takes what it knows', () => {
    const {state, notices} = read('#shot=3&aperture=f/8&polariser=90');
    expect(state.values.aperture).toBe(8);
    expect(notices[0]).toEqual({kind: 'newer', version: 3});
  });

  it('mends what letters and boards do to links', () => {
    expect(read('#shot=1&amp;aperture=f/8&amp;iso=\r\n 100').state.values).toEqual({aperture: 8, iso: 100});
    expect(read('#shot=1&aperture=f%2F8').state.values.aperture).toBe(8);
  });

  it('takes the last of two values', () => {
    expect(read('#shot=1&aperture=f/8&aperture=f/4').state.values.aperture).toBe(4);
  });

  it('is not led to anything that is no value of a shot', () => {
    const {state, notices} = read('#shot=1&__proto__==1&constructor=x&to-string=y');
    expect(state).toEqual(EMPTY_STATE);
    expect(notices).toHaveLength(3);
    expect(({} as Record<string, unknown>)['1']).toBeUndefined();
  });

  it('is not stalled by a giant', () => {
    const {state, notices} = read(`#shot=1&aperture=f/8&note=${'_'.repeat(50_000)}&tilt=${'9'.repeat(19_000)}&shutter=${'_'.repeat(19_000)}`);
    expect(state.values).toEqual({aperture: 8});
    expect(notices.map(({kind}) => kind)).toEqual(['too-long', 'unreadable', 'unreadable']);
  });

  it('replaces half characters, which no address can hold', () => {
    const link = writeLink(said({note: 'a\ud800b'}));
    expect(read(link).state.values.note).toBe('a\ufffdb');
    expect(link).not.toMatch(/[^\x21-\x7e]/);
  });

  it('never throws, whatever the fragment', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.constantFrom('shot', 'lights', 'crop', 'aperture', 'focal-lengths', 'x'),
      fc.oneof(fc.string({unit: 'binary', maxLength: 20}), fc.json().map((json) => `=${json}`), fc.constantFrom('=null', '=[null]', '={"lamps":[null],"flags":[],"table":0}')))), (parts) => {
      const reading = readLink(`shot=1&${parts.map(([name, value]) => `${name}=${value}`).join('&')}`);
      expect(reading).not.toBeNull();
      expect(() => writeLink(reading?.state ?? EMPTY_STATE, reading?.kept)).not.toThrow();
    }));
  });
});
