/** Packs the package, installs it into an empty project, imports it in Node and type-checks a consumer. */
import {execFileSync} from 'node:child_process';
import {cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync} from 'node:fs';
import {createHash} from 'node:crypto';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {ROOT, fail} from './set-up.mjs';

if (!existsSync(`${ROOT}dist/core/index.js`)) fail('There is no build to check. Run “npm run build” first.');

const folder = mkdtempSync(join(tmpdir(), 'lampblack-consumer-'));
const show = (command, args, cwd = folder) => execFileSync(command, args, {cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit']});
const tool = (name) => join(ROOT, 'node_modules/.bin', name);

try {
  const {filename, files} = packed(folder);
  const stray = files.map(({path}) => path).filter((path) => !/^(dist\/|docs\/shot-sheet\.schema\.json$|README|LICENSE|CHANGELOG|package\.json)/.test(path));
  if (stray.length) fail(`The package carries files that are not for its users: ${stray.join(', ')}`);
  const tarball = join(folder, filename);
  mkdirSync(join(folder, 'again'));
  if (digest(tarball) !== digest(join(folder, 'again', packed(join(folder, 'again')).filename))) {
    fail('The package packed twice is not the same twice: something in it depends on when or where it was packed.');
  }

  show('node', ['scripts/readme.mjs', '--check-built'], ROOT);
  show(tool('publint'), ['--strict', tarball], ROOT);
  // For bundlers and Node's modules: the package has no CommonJS, and a registered element needs no types of its own.
  show(tool('attw'), [tarball, '--profile', 'esm-only', '--format', 'ascii', '--exclude-entrypoints', 'standalone'], ROOT);

  execFileSync(tool('vitest'), ['run', 'tests/package/manifest.test.ts'], {
    cwd: ROOT, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'], env: {...process.env, LAMPBLACK_BUILT: '1'},
  });

  writeFileSync(join(folder, 'package.json'), JSON.stringify({name: 'consumer', private: true, type: 'module'}));
  show('npm', ['install', '--no-audit', '--no-fund', '--loglevel=error', '--prefer-offline', tarball]);

  cpSync(`${ROOT}tests/package/consumer`, folder, {recursive: true});
  const tags = readdirSync(`${ROOT}src/elements`).filter((tag) => existsSync(`${ROOT}src/elements/${tag}/define.ts`));
  show('node', ['import.mjs', ...tags]);
  show(tool('tsc'), ['--noEmit', '-p', '.']);
  console.log(`Packed ${filename} (${files.length} files, the same bytes twice), judged by publint and attw, installed, imported in Node and type-checked a consumer.`);
} catch (error) {
  fail(`The package check failed: ${error.stdout || error.message}`);
} finally {
  rmSync(folder, {recursive: true, force: true});
}

function packed(destination) {
  return JSON.parse(show('npm', ['pack', '--json', '--silent', '--pack-destination', destination], ROOT))[0];
}

function digest(path) {
  return createHash('sha256').update(readFileSync(path)).digest('hex');
}
