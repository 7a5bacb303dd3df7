/**
 * `npm run reference`: for each function the core exports, what outside it holds it to the truth: a published source, a
 * library from the registry, the rendered pictures, an independent way to the same number, or only laws of its own. A
 * formula with no such source is listed as such. The data is tests/reference/checked*.json; a test keeps it whole.
 */
import {readFileSync, readdirSync} from 'node:fs';

const FOLDER = new URL('../tests/reference/', import.meta.url);
const read = (path) => JSON.parse(readFileSync(new URL(path, FOLDER), 'utf8'));

const checks = Object.assign({}, ...readdirSync(FOLDER).filter((file) => /^checked.*\.json$/.test(file)).map(read));
const CORE = new URL('../src/core/', import.meta.url);
/** The parts and the whole of them: files beside the folders. */
const lists = readdirSync(CORE).filter((name) => name.endsWith('.ts')).map((name) => readFileSync(new URL(name, CORE), 'utf8')).join('\n');
const exported = new Set([...lists.matchAll(/^export \{([^}]*)\} from/gm)].flatMap(([, names]) => names.split(',').map((name) => name.trim())));

const HOW = {
  published: 'published value', library: 'library', rendered: 'rendered pictures', independent: 'independent way',
  law: 'laws only', none: 'NO SOURCE',
};

/** How a check holds, where it does not say so itself. */
function howOf({how, published, route = ''}) {
  if (how) return how;
  if (published) return 'published';
  if (/^no (published|formula)/.test(route)) return 'none';
  if (/rendered/.test(route)) return 'rendered';
  return /brute force|autocorrelation|projected|bisection|every corner/.test(route) ? 'independent' : 'law';
}

/** Titles of the sources a check names. */
function titlesOf(published = []) {
  const titles = published.flatMap((place) => {
    const [topic, start] = place.split('/');
    return read(`published/${topic}.json`).filter(({id}) => id.startsWith(start)).map(({source}) => source.title);
  });
  return [...new Set(titles)].slice(0, 3).map((title) => (title.length > 60 ? `${title.slice(0, 59)}…` : title));
}

const rows = Object.entries(checks).flatMap(([folder, functions]) => Object.entries(functions)
  .filter(([name]) => exported.has(name)).map(([name, check]) => ({folder, name, check, how: howOf(check)})));

let last = '';
for (const {folder, name, check, how} of rows) {
  if (folder !== last) console.log(`\n${folder}`);
  last = folder;
  const against = [...titlesOf(check.published), check.route].filter(Boolean).join('; ');
  console.log(`  ${name.padEnd(26)}${HOW[how].padEnd(19)}${against}`);
}
const count = (kind) => rows.filter(({how}) => how === kind).length;
console.log(`\n${rows.length} functions: ${Object.entries(HOW).map(([kind, words]) => `${count(kind)} ${words}`).join(', ')}`);
console.log(`Without a source outside the project: ${rows.filter(({how}) => how === 'none').map(({name}) => name).join(', ')}`);
