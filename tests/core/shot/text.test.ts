import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {clicks} from '../../../src/core/exposure/clicks.js';
import {SETTINGS} from '../../../src/core/exposure/stops.js';
import {trail} from '../../../src/core/exposure/trail.js';
import {shotKeys} from '../../../src/core/shot/given.js';
import {english} from '../../../src/core/shot/english.js';
import {labelGroups, labelOf, SAID_APART} from '../../../src/core/shot/labels.js';
import {measuredDifference, measuredLines, setUpLines, settingsText, sheetOf, type Sheet} from '../../../src/core/shot/sheet.js';
import {writeSheets, type SheetForm} from '../../../src/core/shot/text.js';
import {anyRecord, anyText} from './arbitrary.js';

/** Invented. */
const BEARER = sheetOf({
  title: 'Lantern bearer', texts: {tilt: 'a bit down'}, measured: {photo: 'bearer.jpg', width: 6000, height: 4000, atWhite: 0.00004, roomAbove: 1},
  values: {aperture: 8, shutter: 2 ** (-5 / 3), iso: 100, focalLength: 60, baseDepth: 88.9, unit: 'in', note: 'Flag closer.\nThen the cloak.'},
});

const click = (setting: 'aperture' | 'shutter' | 'iso') => fc.constantFrom(...clicks(setting, 3).map(({value}) => value));

describe('a record as text', () => {
  it('is read like a setting', () => {
    expect(writeSheets([BEARER], 'text')).toBe(`Lantern bearer
f/8, 0.3 s, ISO 100

Camera
  Focal length: 60 mm

Figure
  Base depth: 3.5 in

Measured
  Photo: bearer.jpg
  Size, px: 6000 × 4000
  At white, any colour: under 0.01 %
  Room to white: 1 stop

Typed, not in use
  Tilt down, degrees: “a bit down”

Flag closer.
Then the cloak.`);
  });

  it('gives the trail the same settings, on every click', () => {
    fc.assert(fc.property(click('aperture'), click('shutter'), click('iso'), (aperture, shutter, iso) => {
      const {steps} = trail(settingsText({aperture, shutter, iso}));
      expect(steps).toHaveLength(1);
      for (const setting of SETTINGS) expect(steps[0]?.exposure?.[setting]).toBeCloseTo({aperture, shutter, iso}[setting], 9);
    }));
  });

  it('gives the trail what was metered between clicks to a twentieth of a stop, which a printed number may be off', () => {
    fc.assert(fc.property(fc.double({min: 1, max: 45, noNaN: true}), fc.double({min: 1e-4, max: 55, noNaN: true}), (aperture, shutter) => {
      const exposure = trail(settingsText({aperture, shutter, iso: 100})).steps[0]?.exposure;
      expect(Math.abs(2 * Math.log2((exposure?.aperture ?? 0) / aperture))).toBeLessThan(0.05);
      expect(Math.abs(Math.log2((exposure?.shutter ?? 0) / shutter))).toBeLessThan(0.05);
    }));
  });

  it('gives the trail one step a shot, in every form', () => {
    fc.assert(fc.property(fc.array(fc.record({aperture: click('aperture'), shutter: click('shutter'), iso: click('iso'), baseDepth: fc.integer({min: 10, max: 300})}), {minLength: 1, maxLength: 4}),
      fc.constantFrom<SheetForm>('text', 'markdown', 'bbcode'), (shots, form) => {
        const sheets = shots.map((values) => sheetOf({title: 'Bearer', values, texts: {}, measured: {}}));
        const {steps} = trail(writeSheets(sheets, form));
        expect(steps.map(({exposure}) => SETTINGS.map((setting) => exposure?.[setting].toPrecision(9)))).toEqual(
          shots.map((shot) => SETTINGS.map((setting) => shot[setting].toPrecision(9))));
      }));
  });

  it('says every value that was stated, and no other', () => {
    fc.assert(fc.property(anyRecord, (record) => {
      const said = sheetOf({...record, texts: {}, measured: {}}).groups.filter(({heading}) => heading !== 'Set up').flatMap(({lines}) => lines.map(([label]) => label));
      const stated = shotKeys().filter((key) => record.values[key] !== undefined && !SAID_APART.includes(key) && key !== 'unit');
      expect([...said].sort()).toEqual(stated.map(labelOf).sort());
    }));
  });

  it('says where camera and lamps stand', () => {
    const lamp = {name: 'key', kind: 'bulb', position: [300, 0, 400], aim: [0, 0, 0], power: 0} as const; // invented; 3-4-5 triangle
    const values = {focalLength: 60, fieldWidth: 36, sensorWidth: 36, lights: {lamps: [lamp], flags: [], table: 0}};
    // Life size: the plane in focus stands four focal lengths from the sensor. Common practice, no source.
    expect(setUpLines(values)).toEqual([['Sensor mark to the plane in focus', '240 mm'], ['Lamp “key”', '500 mm from where it aims']]);
    expect(setUpLines({focalLength: 60, fieldWidth: 36})[0]?.[1]).toBe('240 mm (sensor taken as 36 mm wide)');
    expect(setUpLines({focalLength: 60})).toEqual([]);
    expect(writeSheets([sheetOf({title: '', values, texts: {}, measured: {}})], 'markdown')).toContain('Sensor mark to the plane in focus: 240 mm');
  });

  it('says what card and spot gave, and what was measured otherwise the next time', () => {
    // Invented readings.
    const first = {cardPhoto: 'card.jpg', cardTrusted: true, gainRed: 0.8, gainBlue: 1.25, cardOff: -1, spotCode: 40, spotStops: -3};
    expect(measuredLines(first)).toEqual([['Gray card', 'card.jpg, can be relied on'], ['Card’s gray', '1 stop too dark'],
      ['White balance', 'red × 0.800, green × 1, blue × 1.250'], ['Measured spot', 'level 40 of 255, 3 stops under the gray card']]);
    expect(measuredDifference(first, {...first, spotCode: 20, spotStops: -5})).toEqual([
      {label: 'Measured spot', from: 'level 40 of 255, 3 stops under the gray card', to: 'level 20 of 255, 5 stops under the gray card'}]);
    expect(measuredDifference({}, first)).toEqual([]);
    expect(measuredLines({cardTrusted: false, cardOff: 0, spotCode: 0})).toEqual([
      ['Gray card', 'not to be relied on'], ['Card’s gray', 'as it should be'], ['Measured spot', 'level 0 of 255']]);
  });

  it('writes lamps, crop and choices in words, and a backdrop by its name', () => {
    // Invented set.
    const lamp = {name: 'key', kind: 'rectangle', width: 180, height: 120, position: [-230, -200, 300], aim: [0, 0, 45], power: -1} as const;
    const flag = {position: [70, 200, 400], facing: [0, 1, 0], width: 150, height: 180} as const;
    const values = {
      lights: {lamps: [lamp], flags: [flag], table: 0.18}, intent: 'dark-backdrop', pay: 'iso', clicksPerStop: 3, backdropReflectance: 0.04,
      crop: {left: 0.1, top: 0.05, width: 0.8, height: 0.9},
    } as const;
    const said = new Map(sheetOf({title: '', values, texts: {}, measured: {}}).groups.flatMap(({lines}) => lines));
    expect(said.get('Lights')).toBe('key: face of 180 mm by 120 mm, 230 mm to the left, 200 mm in front, 300 mm up, aimed 45 mm up, 1 stop weaker;\n'
      + 'card of 150 mm by 180 mm that shades, 70 mm to the right, 200 mm behind, 400 mm up;\ntable top throws back 18 %');
    expect(writeSheets([sheetOf({title: '', values, texts: {}, measured: {}})], 'text')).toContain('1 stop weaker; card of');
    expect(said.get('Crop kept')).toBe('80 % of the width and 90 % of the height, from 10 % on the left and 5 % at the top');
    expect([said.get('Meant to be'), said.get('Paid by'), said.get('Clicks of the dials'), said.get('Backdrop')])
      .toEqual(['dark, before a dark backdrop', 'ISO', 'third stops', 'black card']);
  });

  it('says shares as the tonal chart does, lengths as finely as they can be set, and what was typed as it was typed', () => {
    const lines = (values: Parameters<typeof setUpLines>[0]) => sheetOf({title: '', values, texts: {}, measured: {}}).groups.flatMap(({lines: said}) => said.map(([, text]) => text));
    expect(lines({room: 506.858})).toEqual(['507 mm']);
    expect(lines({room: 506.25})).toEqual(['506.25 mm']);
    expect(lines({baseDepth: 9.4432})).toEqual(['9.4 mm']);
    expect(lines({sensorWidth: 35.9, unit: 'in'})).toEqual(['35.9 mm']);
    expect(lines({pupilRatio: 1.23456})).toEqual(['1.23']);
    expect(measuredLines({atBlack: 0.00063, atWhite: 0.0037}).map(([, text]) => text)).toEqual(['0.06 %', '0.4 %']);
    expect(measuredLines({atWhite: 0.6812}).map(([, text]) => text)).toEqual(['68 %']);
  });

  it('says all of it in another language: its words, its headings and its numbers', () => {
    // Invented language: every label is its key, numbers have a decimal comma.
    const {words, numbers} = english();
    const labels = Object.fromEntries(shotKeys().map((key) => [key, `<${key}>`])) as typeof words.labels;
    const language = {
      words: {...words, labels, headings: {...words.headings, camera: 'Kamera', measured: 'Gemessen'}, measured: {...words.measured, atWhite: 'Weiß'}},
      numbers: {...numbers, percent: (share: number) => `${share * 100}%`, text: (written: string) => written.replace('.', ','), between: ' · '},
    };
    const record = {title: '', values: {aperture: 2 ** 2.5, shutter: 2 ** (-5 / 3), iso: 100, tilt: 6.5}, texts: {}, measured: {atWhite: 0.5}};
    const sheet = sheetOf(record, language);
    expect(sheet.settings).toBe('f/5,6 · 0,3 s · ISO 100');
    expect(sheet.groups).toEqual([{heading: 'Kamera', lines: [['<tilt>', '6,5']]}, {heading: 'Gemessen', lines: [['Weiß', '50%']]}]);
    expect(trail(sheet.settings).steps[0]?.exposure?.aperture).toBeCloseTo(2 ** 2.5, 9);
    expect(measuredDifference({atWhite: 0.5}, {atWhite: 0.25}, language)).toEqual([{label: 'Weiß', from: '50%', to: '25%'}]);
  });

  it('has a label of its own for every value', () => {
    const labels = shotKeys().map(labelOf);
    expect(new Set(labels).size).toBe(labels.length);
    expect(labelGroups().flatMap(({labels: group}) => Object.keys(group)).length + SAID_APART.length).toBe(shotKeys().length);
  });
});

describe('what a person typed', () => {
  const tagless = (text: string, form: SheetForm) => writeSheets([{title: text, settings: '', groups: [{heading: 'h', lines: [['l', text]]}], note: text}], form);

  it('stays text in HTML', () => {
    fc.assert(fc.property(anyText, (text) => {
      expect(tagless(`${text}<b onclick="x">&amp;'`, 'html').replace(/<\/?(section|h[34]|p|strong|dl|dt|dd)>/g, '')).not.toMatch(/[<>"']|&(?!(amp|lt|gt|quot|#39);)/);
    }));
  });

  it('opens no tag on a board', () => {
    const written = tagless('[url=javascript:alert(1)]x[/url]', 'bbcode').replace(/\[\/?b\]|\[\/?list\]|\[\*\]/g, '');
    expect(written).not.toMatch(/\[[a-z/*]/i);
  });

  it.each(['# no heading', '1. no list', '- no list', '[a](javascript:x)', '<img src=x>', '**not bold**', '`code`', '![x](y)', '&lt;', '====', 'https://example.org/a_b_c'])(
    'starts no markup in Markdown: %s', (text) => {
      const written = tagless(text, 'markdown').split('\n').at(-1) ?? '';
      // CommonMark 0.31: these begin markup unless a backslash stands before them
      expect(written.replace(/\\[!-/:-@[-`{-~]/g, 'x')).not.toMatch(/[`*_[\]<>#&!]|^[-+=]|^\d+[.)]/);
    });

  it('keeps a title on one line', () => {
    const sheet: Sheet = sheetOf({title: 'two\nlines', values: {}, texts: {}, measured: {}});
    expect(sheet.title).toBe('two lines');
  });
});
