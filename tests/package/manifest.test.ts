import {existsSync, readFileSync, readdirSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {beforeAll, describe, expect, it} from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const ELEMENTS = `${ROOT}src/elements/`;
const tags = readdirSync(ELEMENTS).filter((tag) => existsSync(`${ELEMENTS}${tag}/define.ts`));
const built = Boolean(process.env.LAMPBLACK_BUILT);

interface Named { readonly name: string; readonly description?: string }
interface Declared {
  readonly tagName: string;
  readonly summary: string;
  readonly attributes: readonly Named[];
  readonly members: readonly Named[];
  readonly events: readonly Named[];
  readonly slots: readonly Named[];
  readonly cssParts: readonly Named[];
  readonly cssProperties: readonly Named[];
}

/** All source of a folder, and of those in it. */
const sourceOf = (folder: string, recursive = true) => readdirSync(ELEMENTS + folder, {recursive, encoding: 'utf8'}).filter((file) => file.endsWith('.ts'))
  .map((file) => readFileSync(`${ELEMENTS}${folder}/${file}`, 'utf8')).join('\n');
/** What an element's templates and styles come from: its own folder, and the one for a photo where it has one. */
const ownOf = (tag: string) => [tag, 'shared/photo'].map((folder) => sourceOf(folder)).slice(0, sourceOf(tag).includes('/shared/photo/') ? 2 : 1).join('\n');
const found = (text: string, pattern: RegExp) => new Set([...text.matchAll(pattern)].flatMap(([, names = '']) => names.split(/\s+/)));
const names = (list: readonly Named[]) => list.map(({name}) => name).sort();

// The package check runs these after a build: before it, dist may be older than the source.
describe.skipIf(!built)('custom-elements.json', () => {
  let elements: ReadonlyMap<string, Declared>;

  beforeAll(() => {
    const {modules} = JSON.parse(readFileSync(`${ROOT}dist/custom-elements.json`, 'utf8')) as {modules: {declarations: Declared[]}[]};
    elements = new Map(modules.flatMap(({declarations}) => declarations).map((each) => [each.tagName, each]));
  });

  const of = (tag: string) => elements.get(tag) as Declared;

  it('knows every element that was built', () => {
    const made = tags.filter((tag) => existsSync(`${ROOT}dist/elements/${tag}/class.js`));
    expect([...elements.keys()].sort()).toEqual(made.sort());
  });

  describe.each(tags.filter((tag) => existsSync(`${ROOT}dist/elements/${tag}/class.js`)))('%s', (tag) => {
    it('has every attribute the class listens to, and no other', async () => {
      const classes = Object.values(await import(`${ROOT}dist/elements/${tag}/class.js`)) as {observedAttributes?: string[]}[];
      const observed = classes.find((each) => each.observedAttributes)?.observedAttributes ?? [];
      expect(observed.length).toBeGreaterThan(0);
      expect(names(of(tag).attributes)).toEqual([...observed].sort());
    });

    it('describes everything', () => {
      const {attributes, members, events, slots, cssParts, cssProperties, summary} = of(tag);
      expect(summary).not.toBe('');
      const silent = [attributes, members, events, slots, cssParts, cssProperties].flat().filter(({description}) => !description).map(({name}) => name);
      expect(silent).toEqual([]);
    });

    it('names the parts that its templates have, and no other', () => {
      const own = ownOf(tag);
      const parts = found(own, /\bpart="([a-z -]+)"/g);
      if (/\b(shotField|textField|choiceField)\(/.test(own)) parts.add('field');
      expect(names(of(tag).cssParts)).toEqual([...parts].sort());
    });

    it('names the custom properties that its styles read', () => {
      const read = found(ownOf(tag) + sourceOf('shared', false), /var\((--lampblack-[a-z-]+)/g);
      expect(names(of(tag).cssProperties)).toEqual([...read].sort());
    });

    it('names the events of its own folder and those of the family', () => {
      const own = found(ownOf(tag) + sourceOf('shared', false), /super\('([a-z-]+)', \{bubbles/g);
      expect(names(of(tag).events)).toEqual([...own].sort());
    });
  });
});
