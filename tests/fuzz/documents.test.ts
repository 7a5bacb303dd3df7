import fc from 'fast-check';
import {describe, expect} from 'vitest';
import {
  DOCUMENT_FORMAT, Problem, SHOT_FIELDS, attributeOf, completeShot, escapeHtml, readDocument, readLink, readShots, sheetOf, shotDifference, stateOf,
  withText, withValue, EMPTY_STATE, writeDocument, writeLink, writeSheets, DEFAULT_SHOT,
} from '../../src/core/index.js';
import type {Shot, ShotKey} from '../../src/core/index.js';
import {anyRecord} from '../core/shot/arbitrary.js';
import {fuzz, outcome, sound} from './cases.js';
import {anyGiant, anyHostile, anyJson, anyNumber} from './hostile.js';

const KEYS = Object.keys(DEFAULT_SHOT) as ShotKey[];
const anyKey = fc.constantFrom(...KEYS);
const FORMS = ['text', 'markdown', 'bbcode', 'html'] as const;

/** Tags that a person's text must never become. */
const FOREIGN_TAG = /<(?!\/?(?:section|h3|h4|p|strong|dl|dt|dd)>)/;

describe('links, documents and typed values from strangers', () => {
  fuzz('a field takes any text or says what is wrong, and keeps it as typed', 10_000, fc.tuple(anyKey, anyHostile), ([key, text]) => {
    const state = withText(EMPTY_STATE, key, text);
    expect(state.texts[key]).toBe(text);
    const read = SHOT_FIELDS[key].read(text);
    if (sound(read) instanceof Problem) expect(state.problems[key]).toBeInstanceOf(Problem);
    else expect((SHOT_FIELDS[key].refuse as (value: unknown) => unknown)(read)).toBeUndefined();
  });
  fuzz('a field refuses any value that is none of its own, and never throws', 8000, fc.tuple(anyKey, fc.oneof(anyJson, anyNumber)), ([key, value]) => {
    const state = withValue(EMPTY_STATE, key, value as Shot[ShotKey]);
    if (state.problems[key] === undefined) sound(completeShot(state.values));
  });
  fuzz('a link made of anything opens or does not, and what it gave goes into a link again', 3000,
    fc.array(fc.oneof(anyHostile, fc.tuple(anyKey, anyHostile).map(([key, text]) => `${attributeOf(key)}=${text}`)), {maxLength: 6}), (parts) => {
      const read = readLink(['shot=1', ...parts].join('&'));
      if (!read) return;
      sound(read.state);
      // Half a pair of surrogates is no character and cannot travel; everything else comes back as it went.
      const again = readLink(writeLink(read.state))?.state;
      expect(readLink(writeLink(again ?? EMPTY_STATE))?.state).toEqual(again);
      if (!/\p{Surrogate}/u.test(parts.join())) expect(again).toEqual(read.state);
    });
  fuzz('a document of anything is read or named foreign, and pollutes nothing', 5000, anyJson, (json) => {
    const polluted = Object.keys(Object.prototype).length;
    for (const shots of [json, {format: DOCUMENT_FORMAT, version: 1, shots: json}, {format: DOCUMENT_FORMAT, version: 1, shots: [json]}]) {
      sound(readShots(shots));
      readDocument(JSON.stringify(shots));
    }
    expect(Object.keys(Object.prototype)).toHaveLength(polluted);
  });
  fuzz('a record with one part replaced by anything is read or its place is named', 2000,
    fc.tuple(anyRecord, fc.constantFrom('title', 'made', 'values', 'texts', 'measured', 'picture'), anyJson), ([record, part, json]) => {
      const read = readDocument(JSON.stringify({format: DOCUMENT_FORMAT, version: 1, shots: [{...record, [part]: json}]}));
      if ('fault' in read) expect(read.path).toMatch(/^shots\[0\]/);
      else for (const shot of read) sound(stateOf(shot));
    });
  fuzz('a torn document is no document', 1500, fc.tuple(anyRecord, fc.double({min: 0, max: 0.99, noNaN: true})), ([record, share]) => {
    const text = writeDocument([record]).trimEnd();
    const read = readDocument(text.slice(0, Math.floor(text.length * share)));
    expect('fault' in read && read.fault).toBe('no-json');
  });
  fuzz('a sheet of hostile words holds no markup but its own', 1000, fc.tuple(anyRecord, anyHostile, anyHostile), ([record, title, note]) => {
    const sheet = sheetOf({...record, title, values: {...record.values, note}});
    const theirs = /NaN|Infinity/.test(JSON.stringify([title, note, record]));
    for (const form of FORMS) expect(theirs || !/NaN|Infinity/.test(writeSheets([sheet], form))).toBe(true);
    expect(writeSheets([sheet], 'html')).not.toMatch(FOREIGN_TAG);
    expect(escapeHtml(title)).not.toMatch(/[<>"']/);
  });
  fuzz('two shots of anything differ in a sound way', 2000, fc.tuple(anyRecord, anyRecord), ([one, other]) => {
    sound(outcome(() => shotDifference(completeShot(one.values), completeShot(other.values))));
  });
  fuzz('links and documents of up to two hundred thousand characters come to an end', 60, fc.tuple(anyGiant, anyKey), ([text, key]) => {
    readLink(`shot=1&${attributeOf(key)}=${text}`);
    readLink(text);
    readDocument(text);
    sound(withText(EMPTY_STATE, key, text).problems);
  });
});
