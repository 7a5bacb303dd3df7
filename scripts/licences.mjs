/**
 * `npm run licences`: writes the licence list of docs/dependencies.md, of what the standalone files contain, from the
 * packages as installed. `--check` only compares.
 */
import {readFileSync, writeFileSync} from 'node:fs';

const ROOT = new URL('../', import.meta.url);
const json = (path) => JSON.parse(readFileSync(new URL(path, ROOT), 'utf8'));

/** Types, and what stands in for a page where there is none. */
const NEVER_IN_A_PAGE = /^@types\/|ssr-dom-shim$/;

/** Packages the standalone files contain: what we depend on, and what that depends on in turn. */
function bundled() {
  const found = new Map();
  const add = (name) => {
    if (found.has(name) || NEVER_IN_A_PAGE.test(name)) return;
    const about = json(`node_modules/${name}/package.json`);
    found.set(name, about);
    Object.keys(about.dependencies ?? {}).forEach(add);
  };
  Object.keys(json('package.json').dependencies).forEach(add);
  return [...found].sort(([one], [other]) => (one < other ? -1 : 1));
}

const rows = bundled().map(([name, {version, license, author, homepage, repository}]) => {
  const who = typeof author === 'string' ? author.replace(/\s*<.*/, '') : author?.name ?? '';
  const where = homepage ?? (typeof repository === 'string' ? repository : repository?.url ?? '').replace(/^git\+|\.git$/g, '');
  return `| [${name}](${where}) | ${version} | ${license} | ${who} |`;
});
const table = ['| package | version | licence | by |', '|---|---|---|---|', ...rows].join('\n');

const file = new URL('docs/dependencies.md', ROOT);
const before = readFileSync(file, 'utf8');
const after = before.replace(/(<!-- licences -->)[^]*?(<!-- \/licences -->)/, (_, open, close) => `${open}\n${table}\n${close}`);
if (!process.argv.includes('--check')) writeFileSync(file, after);
else if (before !== after) {
  console.error('The licence list does not match what is installed. Run “npm run licences”.');
  process.exit(1);
}
