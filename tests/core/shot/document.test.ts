import {readFileSync, writeFileSync} from 'node:fs';
import {Ajv2020} from 'ajv/dist/2020.js';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {DOCUMENT_LIMITS, isFault, placeOf, readDocument, readShots, writeDocument, type DocumentFault} from '../../../src/core/shot/document.js';
import {shotKeys} from '../../../src/core/shot/given.js';
import {recordOf, stateOf, type ShotRecord} from '../../../src/core/shot/record.js';
import {withText, withValues} from '../../../src/core/shot/saying.js';
import {EMPTY_STATE} from '../../../src/core/shot/state.js';
import {anyRecord, anyText} from './arbitrary.js';
import {buildSchema} from './schema.js';

/** Where the schema is published: with the documentation, and beside the demo. */
const SCHEMAS = ['docs', 'demo'].map((folder) => new URL(`../../../${folder}/shot-sheet.schema.json`, import.meta.url));

/** Invented. */
const BEARER: ShotRecord = {
  title: 'Lantern bearer, second try', made: '2026-03-01T12:00:00.000Z', values: {aperture: 11, note: 'Flag closer.', lights: {
    lamps: [{name: 'key', kind: 'disc', position: [-200, -200, 300], aim: [0, 0, 40], width: 150, power: 0}], flags: [], table: 0}},
  texts: {aperture: '11 or so'}, measured: {photo: 'bearer.jpg', atWhite: 0.0004},
};

const doc = (shot: unknown) => ({format: 'lampblack-shots', version: 1, shots: [shot]});
const fault = (json: unknown): DocumentFault => {
  const read = readShots(json);
  if (!isFault(read)) throw new Error('a fault expected');
  return read;
};

describe('a document of shots', () => {
  it('gives every record back exactly', () => {
    fc.assert(fc.property(fc.array(anyRecord, {maxLength: 4}), (records) => {
      expect(readDocument(writeDocument(records))).toEqual(records);
    }), {numRuns: 150});
  });

  it('gives a shot back as it stood, with what was typed and why it is not in use', () => {
    const typed = withText(withText(withValues(EMPTY_STATE, {aperture: 8, focus: 36.25}), 'aperture', 'wide open'), 'shutter', '0"6');
    const [record] = readDocument(writeDocument([recordOf(typed, {title: '', made: BEARER.made, measured: {}})])) as ShotRecord[];
    expect(record && stateOf(record)).toEqual(typed);
  });

  it('keeps values that only a later page knows', () => {
    const [record] = readShots(doc({...BEARER, values: {aperture: 8, polariser: {angle: 30}}})) as ShotRecord[];
    expect(record?.values).toEqual({aperture: 8});
    expect(JSON.parse(writeDocument([record as ShotRecord])).shots[0].values).toEqual({aperture: 8, polariser: {angle: 30}});
  });

  it.each([
    ['', 'no-json'], ['{"format": "lampblack-sh', 'no-json'], ['<html>', 'no-json'],
    ['null', 'foreign'], ['[]', 'foreign'], ['{}', 'foreign'], ['{"format":"recipes","version":1}', 'foreign'],
    ['{"format":"lampblack-shots","version":2,"shots":"anything"}', 'newer'],
    ['{"format":"lampblack-shots","version":0,"shots":[]}', 'wrong'], ['{"format":"lampblack-shots","version":1}', 'wrong'],
  ])('says what is the matter with %s', (text, wanted) => {
    expect(readDocument(text)).toMatchObject({fault: wanted});
  });

  it.each<[unknown, string]>([
    [7, 'shots[0]'], [{...BEARER, title: undefined}, 'shots[0].title'], [{...BEARER, title: 'x'.repeat(201)}, 'shots[0].title'],
    [{...BEARER, made: 'yesterday'}, 'shots[0].made'], [{...BEARER, made: '2026-13-01T00:00:00Z'}, 'shots[0].made'],
    [{...BEARER, values: {aperture: -8}}, 'shots[0].values.aperture'], [{...BEARER, values: {aperture: '8'}}, 'shots[0].values.aperture'],
    [{...BEARER, values: {aperture: null}}, 'shots[0].values.aperture'], [{...BEARER, values: {crop: {left: 0.5, top: 0, width: 0.9, height: 1}}}, 'shots[0].values.crop'],
    [{...BEARER, values: {crop: {}}}, 'shots[0].values.crop'], [{...BEARER, values: {note: 5}}, 'shots[0].values.note'],
    [{...BEARER, values: {lights: {lamps: [null], flags: [], table: 0}}}, 'shots[0].values.lights'],
    [{...BEARER, values: {lights: {lamps: [{name: 'sun', kind: 'sun', position: [0, 0, 9], aim: [0, 0, 0], power: 0}], flags: [], table: 0}}}, 'shots[0].values.lights'],
    [{...BEARER, texts: {aperture: 8}}, 'shots[0].texts.aperture'], [{...BEARER, measured: []}, 'shots[0].measured'],
    [{...BEARER, measured: {atWhite: 1.5}}, 'shots[0].measured.atWhite'],
    [{...BEARER, picture: 'https://example.org/a.jpg'}, 'shots[0].picture'], [{...BEARER, picture: 'data:image/svg+xml;base64,PHN2Zz4='}, 'shots[0].picture'],
  ])('points at what is wrong: %j', (shot, path) => {
    expect(fault(doc(shot))).toMatchObject({fault: 'wrong', path});
  });

  it('points at the shot it is in', () => {
    const read = fault({format: 'lampblack-shots', version: 1, shots: [BEARER, BEARER, {...BEARER, values: {baseDepth: 1e9}}]});
    expect(placeOf(read.path)).toEqual({shot: 3, name: 'base-depth'});
    expect(read.value).toBe(1e9);
  });

  it('is not led astray by names that mean something to a script', () => {
    const [record] = readDocument(`{"format":"lampblack-shots","version":1,"shots":[{"title":"","made":"2026-03-01T12:00Z",
      "values":{"__proto__":{"aperture":4},"constructor":1},"texts":{"__proto__":"x"},"measured":{"__proto__":{"width":3}}}]}`) as ShotRecord[];
    expect(record?.values.aperture).toBeUndefined();
    expect(record?.measured.width).toBeUndefined();
    expect(Object.getPrototypeOf(record?.values)).toBe(Object.prototype);
  });

  it('refuses an object that would not turn into text', () => {
    expect(fault(doc({...BEARER, values: {crop: {toString: 1}}})).path).toBe('shots[0].values.crop');
    expect(fault(doc({...BEARER, values: {aperture: {toString: 1, valueOf: 2}}})).path).toBe('shots[0].values.aperture');
  });

  it('never throws, whatever the text', () => {
    const json = fc.letrec((tie) => ({
      any: fc.oneof({maxDepth: 5}, fc.constantFrom(null, 1, 'x', {}, [], BEARER), fc.array(tie('any'), {maxLength: 3}),
        fc.dictionary(fc.constantFrom('format', 'version', 'shots', 'values', 'lights', 'lamps', 'crop', 'texts', 'measured', 'title'), tie('any'))),
    })).any;
    fc.assert(fc.property(json, anyText, (any, text) => {
      for (const candidate of [any, doc(any), doc({...BEARER, values: any}), doc({...BEARER, values: {lights: any, crop: any, focalLengths: any}})]) {
        expect(() => readShots(candidate)).not.toThrow();
      }
      expect(() => readDocument(text)).not.toThrow();
    }));
  });
});

describe('the published schema', () => {
  const built = buildSchema();
  if (process.env.UPDATE_SCHEMA) for (const file of SCHEMAS) writeFileSync(file, `${JSON.stringify(built, null, 2)}\n`);
  const [published, beside] = SCHEMAS.map((file) => JSON.parse(readFileSync(file, 'utf8')) as object) as [object, object];
  const ajv = new Ajv2020({strict: false});
  const validate = ajv.compile(published);

  it('says what the fields say today; UPDATE_SCHEMA=1 writes it anew', () => {
    expect(published).toEqual(JSON.parse(JSON.stringify(built)));
    expect(beside).toEqual(published);
    expect(ajv.validateSchema(published)).toBe(true);
  });

  it('accepts every document that is written', () => {
    fc.assert(fc.property(fc.array(anyRecord, {maxLength: 3}), (records) => {
      expect(validate(JSON.parse(writeDocument(records))), JSON.stringify(validate.errors)).toBe(true);
    }), {numRuns: 150});
  });

  it('agrees with the reader on what no document may be', () => {
    const values = fc.oneof(
      fc.constantFrom<unknown>(null, true, '', 'third', -1, 0, 0.5, 1, 2, 3, 7, 60, 61, 101, 1e6, 1e7, -81, 5001, {}, [], [60], [0], ['a']),
      fc.double({noDefaultInfinity: true, noNaN: true}));
    fc.assert(fc.property(fc.constantFrom(...shotKeys()), values, (key, value) => {
      const json = JSON.parse(JSON.stringify(doc({...BEARER, values: {[key]: value}})));
      expect(validate(json), `${key} = ${JSON.stringify(value)}`).toBe(!isFault(readShots(json)));
    }), {numRuns: 1500});
    for (const [member, bad] of [['title', 7], ['title', 'é'.repeat(201)], ['made', '2026-01-01'], ['texts', []], ['texts', {iso: 1}], ['measured', {iso: 0}],
      ['measured', {photo: 3}], ['picture', 'javascript:alert(1)'], ['values', []], ['made', undefined]] as const) {
      const json = JSON.parse(JSON.stringify(doc({...BEARER, [member]: bad})));
      expect([member, validate(json), isFault(readShots(json))]).toEqual([member, false, true]);
    }
    expect(validate({format: 'lampblack-shots', version: 2, shots: []})).toBe(false);
    expect(validate(doc({...BEARER, title: '😀'.repeat(DOCUMENT_LIMITS.title)}))).toBe(true);
    expect(isFault(readShots(doc({...BEARER, title: '😀'.repeat(DOCUMENT_LIMITS.title)})))).toBe(false);
  });
});
