/** What a page loads for each built file before it works, held against budgets.json. */
import {existsSync, readFileSync, readdirSync} from 'node:fs';
import {gzipSync} from 'node:zlib';
import {build} from 'esbuild';
import {ROOT} from './set-up.mjs';

const {each, files: budgets} = JSON.parse(readFileSync(new URL('budgets.json', import.meta.url), 'utf8'));
const gzipped = (bytes) => gzipSync(bytes, {level: 9}).length;

/** Names of the script-tag files that a page may ask for itself, in order. */
export function entryFiles(folder) {
  return readdirSync(folder).filter((name) => name.endsWith('.js') && !name.startsWith('shared-')).sort();
}

/** A file and the files it imports at once. @returns names in the order they are met */
export function withImports(folder, name, seen = new Set()) {
  if (seen.has(name) || !existsSync(folder + name)) return seen;
  seen.add(name);
  const code = readFileSync(folder + name, 'utf8');
  for (const [, path] of code.matchAll(/(?:^|[;}\s])(?:import|export)\s*(?:[^'"()]*?from\s*)?["']\.\/([^"']+)["']/g)) {
    withImports(folder, path, seen);
  }
  return seen;
}

/** @returns rows of name, bytes and budget in bytes (`undefined` for what no page waits for) */
export async function sizes(folder = `${ROOT}dist/standalone/`) {
  const rows = entryFiles(folder).map((name) => ({
    name,
    bytes: [...withImports(folder, name)].reduce((sum, file) => sum + gzipped(readFileSync(folder + file)), 0),
    budget: name === 'photo-worker.js' ? undefined : (budgets[name] ?? each) * 1000,
  }));
  const {outputFiles: [core]} = await build({
    entryPoints: [`${ROOT}dist/core/index.js`], bundle: true, minify: true, format: 'esm', target: 'es2022', write: false, logLevel: 'error',
  });
  return [...rows, {name: 'core', bytes: gzipped(core.contents), budget: budgets.core * 1000}];
}

/** Prints the table. @returns how many rows are over their budget */
export function printSizes(rows) {
  const kB = (bytes) => (bytes / 1000).toFixed(1).padStart(6);
  console.log('\nFile, with what it imports at once      gzip  budget');
  for (const {name, bytes, budget} of rows) {
    const judged = budget === undefined ? 'loaded when a photo is opened' : `${kB(budget)}  ${bytes > budget ? `${kB(bytes - budget).trim()} kB over` : 'ok'}`;
    console.log(`  ${name.padEnd(36)}${kB(bytes)}  ${judged}`);
  }
  return rows.filter(({bytes, budget}) => bytes > budget).length;
}
