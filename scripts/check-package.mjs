/** Packs the package, installs it into an empty project, imports it in Node and type-checks a consumer. */
import {execFileSync} from 'node:child_process';
import {cpSync, existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {ROOT, fail} from './set-up.mjs';

if (!existsSync(`${ROOT}dist/core/index.js`)) fail('There is no build to check. Run “npm run build” first.');

const folder = mkdtempSync(join(tmpdir(), 'lampblack-consumer-'));
const show = (command, args, cwd = folder) => execFileSync(command, args, {cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit']});

try {
  const [{filename, files}] = JSON.parse(show('npm', ['pack', '--json', '--silent', '--pack-destination', folder], ROOT));
  const stray = files.map(({path}) => path).filter((path) => !/^(dist\/|README|LICENSE|CHANGELOG|package\.json)/.test(path));
  if (stray.length) fail(`The package carries files that are not for its users: ${stray.join(', ')}`);

  writeFileSync(join(folder, 'package.json'), JSON.stringify({name: 'consumer', private: true, type: 'module'}));
  show('npm', ['install', '--no-audit', '--no-fund', '--loglevel=error', '--prefer-offline', join(folder, filename)]);

  cpSync(`${ROOT}tests/package/consumer`, folder, {recursive: true});
  const tags = readdirSync(`${ROOT}src/elements`).filter((tag) => existsSync(`${ROOT}src/elements/${tag}/define.ts`));
  show('node', ['import.mjs', ...tags]);
  show(join(ROOT, 'node_modules/.bin/tsc'), ['--noEmit', '-p', '.']);
  console.log(`Packed ${filename} (${files.length} files), installed, imported in Node and type-checked a consumer.`);
} catch (error) {
  fail(`The package check failed: ${error.stdout || error.message}`);
} finally {
  rmSync(folder, {recursive: true, force: true});
}
