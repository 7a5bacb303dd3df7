/**
 * What a page loads for each built file before it first works, held against budgets.json; what an element fetches by itself, without
 * being touched, is part of it (`unasked` there). `node scripts/sizes.mjs` prints the table;
 * `--limits` writes what is there now, and two per cent more, as the new limits; what keeps its goal has that for its limit.
 */
import {readFileSync, writeFileSync} from 'node:fs';
import {build} from 'esbuild';
import {gzipped} from './chunks.mjs';
import {ROOT, fail, isStarted} from './set-up.mjs';

const BUDGETS = new URL('budgets.json', import.meta.url);
/** Parts of the core, `index` being all of them. */
const CORE = ['index', 'exposure', 'optics', 'tone', 'white', 'light', 'shot', 'sheet', 'document', 'units'];
/** Nothing waits for it: it is fetched when a photo is opened. */
const WORKER = 'photo-worker.js';

/**
 * @returns rows: name, bytes at once, the largest language with its bytes, what is lazy beside the words, the budget; bytes gzipped
 */
export async function sizes(dist = `${ROOT}dist/`) {
  const {each, all, core, unasked, files: limits} = JSON.parse(readFileSync(BUDGETS, 'utf8'));
  const folder = `${dist}standalone/`;
  const {entries, imports, words, lazy} = JSON.parse(readFileSync(`${folder}integrity.json`, 'utf8'));
  const sum = (names) => names.reduce((bytes, name) => bytes + gzipped(readFileSync(folder + name)), 0);
  const gone = unasked.filter((file) => !lazy['all.js'].includes(file));
  if (gone.length) fail(`budgets.json counts what is there no more: ${gone.join(', ')}`);
  const rows = entries.filter((name) => name !== WORKER).map((name) => {
    const [language, wordBytes] = Object.entries(words[name]).map(([tag, files]) => [tag, sum(files)])
      .sort(([, one], [, other]) => other - one)[0] ?? ['', 0];
    const soon = unasked.filter((file) => lazy[name].includes(file)).flatMap((file) => [file, ...imports[file]]);
    const atOnce = sum([...new Set([name, ...imports[name], ...soon])]);
    return {name, atOnce, language, wordBytes, bytes: atOnce + wordBytes, goal: (name === 'all.js' ? all : each) * 1000, limit: limits[name] * 1000};
  });
  for (const part of CORE) {
    const {outputFiles: [file]} = await build({
      entryPoints: [`${dist}core/${part}.js`], bundle: true, minify: true, format: 'esm', target: 'es2022', write: false, logLevel: 'error',
    });
    const name = part === 'index' ? 'core' : `core/${part}`;
    rows.push({name, bytes: gzipped(file.contents), goal: core * 1000, limit: limits[name] * 1000});
  }
  return rows;
}

/** Files fetched when they are needed, words left out, with their bytes. */
function lazyParts(folder) {
  const {unasked} = JSON.parse(readFileSync(BUDGETS, 'utf8'));
  const {imports, words, lazy} = JSON.parse(readFileSync(`${folder}integrity.json`, 'utf8'));
  const spoken = new Set([...unasked, ...Object.values(words).flatMap((byLanguage) => Object.values(byLanguage).flat())]);
  const parts = new Set([...Object.values(lazy).flat(), WORKER, ...imports[WORKER]]);
  return [...parts].filter((name) => !spoken.has(name)).sort().map((name) => [name, gzipped(readFileSync(folder + name))]);
}

const kB = (bytes) => (bytes / 1000).toFixed(1).padStart(6);

/** Prints the tables. @returns names of the rows over their limit, or without one */
export function printSizes(rows, folder = `${ROOT}dist/standalone/`) {
  console.log('\nkB gzip, before it first works     file  + words  =  all    goal   limit');
  for (const {name, atOnce, language, wordBytes, bytes, goal, limit} of rows) {
    const pieces = atOnce === undefined ? ''.padEnd(21) : `${kB(atOnce)}  ${language ? `${kB(wordBytes)} ${language.padEnd(4)}` : ''.padEnd(11)}`;
    const judged = bytes > limit ? 'TOO MUCH' : Number.isNaN(limit) ? 'NO LIMIT' : bytes > goal ? `${kB(bytes - goal).trim()} over the goal` : 'ok';
    console.log(`  ${name.padEnd(30)}${pieces.padEnd(21)}${kB(bytes)}  ${kB(goal)}  ${kB(limit)}  ${judged}`);
  }
  console.log('\nkB gzip, fetched when it is needed');
  for (const [name, bytes] of lazyParts(folder)) console.log(`  ${name.padEnd(51)}${kB(bytes)}`);
  return rows.filter(({bytes, limit}) => !(bytes <= limit)).map(({name}) => name);
}

if (isStarted(import.meta.url)) {
  const rows = await sizes();
  if (process.argv.includes('--limits')) {
    const budgets = JSON.parse(readFileSync(BUDGETS, 'utf8'));
    budgets.files = Object.fromEntries(rows.map(({name, bytes, goal}) => [name, Math.max(goal / 1000, Math.ceil(bytes * 1.02 / 100) / 10)]));
    writeFileSync(BUDGETS, `${JSON.stringify(budgets, null, 2)}\n`);
  } else if (printSizes(rows).length) process.exitCode = 1;
}
