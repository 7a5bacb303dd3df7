/** Builds dist/ (the package) and site/ (the demo as a static site that runs from any folder). */
import {cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync} from 'node:fs';
import {gzipSync} from 'node:zlib';
import {ROOT, run} from './set-up.mjs';

rmSync(`${ROOT}dist`, {recursive: true, force: true});
rmSync(`${ROOT}site`, {recursive: true, force: true});
run('npx', ['rollup', '-c', '--silent']);

mkdirSync(`${ROOT}site`);
cpSync(`${ROOT}demo`, `${ROOT}site`, {recursive: true});
cpSync(`${ROOT}dist/standalone`, `${ROOT}site/lampblack`, {recursive: true});

printSizes();

/** What a page loads for each standalone file before it works: the file and the chunks it imports at once. */
function printSizes() {
  const folder = `${ROOT}dist/standalone/`;
  const rows = readdirSync(folder).filter((name) => name.endsWith('.js') && !name.startsWith('shared-'))
    .map((name) => [name, [...withImports(folder, name)].reduce((sum, file) => sum + gzipSync(readFileSync(folder + file), {level: 9}).length, 0)]);
  console.log('\nStandalone file (with what it imports at once)   gzip');
  for (const [name, bytes] of rows.sort()) console.log(`  ${name.padEnd(44)} ${(bytes / 1000).toFixed(1).padStart(5)} kB`);
}

function withImports(folder, name, seen = new Set()) {
  if (seen.has(name) || !existsSync(folder + name) || !statSync(folder + name).isFile()) return seen;
  seen.add(name);
  const code = readFileSync(folder + name, 'utf8');
  for (const [, path] of code.matchAll(/(?:^|[;}\s])(?:import|export)\s*(?:[^'"()]*?from\s*)?["']\.\/([^"']+)["']/g)) {
    withImports(folder, path, seen);
  }
  return seen;
}
