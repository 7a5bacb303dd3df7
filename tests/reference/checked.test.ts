import {existsSync, readFileSync, readdirSync} from 'node:fs';
import {describe, expect, it} from 'vitest';
import checked from './checked.json' with {type: 'json'};
import {published} from './published.js';

/** What holds one function to something outside itself. */
interface Check {
  /** The test, under tests/core. */
  readonly in: string;
  /** Published records, `topic/beginning of the id`. */
  readonly published?: readonly string[];
  /** An independent way to the same number, or why there is none. */
  readonly route?: string;
}

const CORE = new URL('../../src/core/', import.meta.url);

/** Functions that the files of a folder of the core export. */
async function functionsOf(folder: string): Promise<readonly string[]> {
  const files = readdirSync(new URL(`${folder}/`, CORE)).filter((file) => file.endsWith('.ts'));
  const modules = await Promise.all(files.map((file) =>
    import(new URL(`${folder}/${file}`, CORE).href) as Promise<Record<string, unknown>>));
  return modules.flatMap((module) => Object.keys(module).filter((name) => typeof module[name] === 'function'));
}

describe.each(Object.entries(checked as Readonly<Record<string, Readonly<Record<string, Check>>>>))('what checks %s', (folder, checks) => {
  it('is said of every function it exports, and of nothing else', async () => {
    expect(Object.keys(checks).sort()).toEqual([...new Set(await functionsOf(folder))].sort());
  });

  it.each(Object.entries(checks))('%s: the test and the records named are there', (_, check) => {
    expect(existsSync(new URL(`../core/${check.in}.test.ts`, import.meta.url))).toBe(true);
    expect(check.published ?? check.route).toBeDefined();
    for (const place of check.published ?? []) {
      const [topic = '', start = ''] = place.split('/');
      expect(published(topic).some(({id, agrees}) => id.startsWith(start) && agrees !== false), place).toBe(true);
      // The test reads that topic, or it could not have used the record.
      expect(readFileSync(new URL(`../core/${check.in}.test.ts`, import.meta.url), 'utf8')).toMatch(new RegExp(`'${topic}'`));
    }
  });
});
