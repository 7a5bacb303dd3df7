import {existsSync, readFileSync} from 'node:fs';
import {describe, expect, it} from 'vitest';
import * as core from '../../src/core/index.js';
import optics from './checked.json' with {type: 'json'};
import rest from './checked-rest.json' with {type: 'json'};
import {published} from './published.js';

interface Check {
  readonly in: string;
  readonly how: string;
  readonly published?: readonly string[];
  readonly route: string;
}

const folders: Readonly<Record<string, Readonly<Record<string, Check>>>> = rest;
const listed = [optics, rest].flatMap((file) => Object.values(file).flatMap((checks) => Object.keys(checks)));
const names = Object.entries(core).filter(([, value]) => typeof value === 'function').map(([name]) => name);

describe('what holds each function the core exports to the truth', () => {
  it('is listed for every one of them, the ones without a source too', () => {
    expect(names.filter((name) => !listed.includes(name))).toEqual([]);
  });

  it('is listed for nothing that is not exported', () => {
    expect(Object.values(folders).flatMap((checks) => Object.keys(checks)).filter((name) => !names.includes(name))).toEqual([]);
  });

  it.each(Object.values(folders).flatMap((checks) => Object.entries(checks)))('%s: its test speaks of it, and its records are there', (_, check) => {
    const file = new URL(`../core/${check.in}.test.ts`, import.meta.url);
    expect(existsSync(file), check.in).toBe(true);
    for (const place of check.published ?? []) {
      const [topic = '', start = ''] = place.split('/');
      expect(published(topic).some(({id, agrees}) => id.startsWith(start) && agrees !== false), place).toBe(true);
      expect(readFileSync(file, 'utf8')).toMatch(new RegExp(`'${topic}'`));
    }
    if (check.how === 'published') expect(check.published?.length).toBeGreaterThan(0);
  });
});
