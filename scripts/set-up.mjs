/** What both commands need before they can begin: the right Node and the packages of the lock file. */
import {spawnSync} from 'node:child_process';
import {existsSync, readFileSync, writeFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

export const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** Whether a module was started by itself, and not imported. */
export const isStarted = (url) => process.argv[1] === fileURLToPath(url);

const STAMP = `${ROOT}node_modules/.lampblack-lock`;

/** Runs a command in the project's root with its output shown. Ends the process when the command fails. */
export function run(command, args, env = {}) {
  const done = spawnSync(command, args, {cwd: ROOT, stdio: 'inherit', env: {...process.env, ...env}});
  if (done.error) fail(`${command} could not be started: ${done.error.message}`);
  if (done.status !== 0) process.exit(done.status ?? 1);
}

/** Says what is wrong in one sentence and ends with a failure. */
export function fail(sentence) {
  console.error(`\n${sentence}\n`);
  process.exit(1);
}

/** Installs the locked packages when they are missing or the lock file has changed since. */
export function installPackages() {
  const [major] = process.versions.node.split('.').map(Number);
  if (major < 20) fail(`Lampblack needs Node 20 or later; this is ${process.version}.`);
  const lock = readFileSync(`${ROOT}package-lock.json`, 'utf8');
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === lock) return;
  console.log('Installing packages (once, about half a minute) …');
  run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {PUPPETEER_SKIP_DOWNLOAD: '1'});
  writeFileSync(STAMP, lock);
}
