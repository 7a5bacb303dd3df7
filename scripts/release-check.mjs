/**
 * `npm run release:check`: builds and packs the same sources twice, in two folders, two time zones and two languages, and compares every
 * byte. So whoever builds a release gets the files whose hashes the README has.
 */
import {execFile, execFileSync} from 'node:child_process';
import {createHash} from 'node:crypto';
import {cpSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, symlinkSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import {promisify} from 'node:util';
import {ROOT, fail} from './set-up.mjs';

const run = promisify(execFile);
const MADE = ['dist', 'site'];
/** Wherever somebody builds. */
const PLACES = [
  {name: 'a', env: {TZ: 'UTC', LANG: 'C', LC_ALL: 'C'}},
  {name: 'another place, further down/b', env: {TZ: 'Asia/Kathmandu', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8'}},
];

const folder = mkdtempSync(join(tmpdir(), 'lampblack-release-'));
try {
  const [one, other] = await Promise.all(PLACES.map(({name, env}) => made(join(folder, name), env)));
  const names = [...new Set([...one.keys(), ...other.keys()])].sort();
  const unlike = names.filter((name) => one.get(name) !== other.get(name));
  if (unlike.length) fail(`Built twice, ${unlike.length} of ${names.length} files are not the same twice: ${unlike.slice(0, 10).join(', ')}`);
  console.log(`Built and packed twice: ${names.length} files, the same bytes.`);
} catch (error) {
  fail(`The release check failed: ${[error.message, error.stdout, error.stderr].filter(Boolean).join('\n')}`);
} finally {
  rmSync(folder, {recursive: true, force: true});
}

/** Builds and packs a copy of the sources. @returns hash by name of file */
async function made(place, env) {
  for (const path of sources()) {
    mkdirSync(dirname(join(place, path)), {recursive: true});
    cpSync(ROOT + path, join(place, path));
  }
  symlinkSync(`${ROOT}node_modules`, join(place, 'node_modules'));
  const options = {cwd: place, env: {...process.env, ...env}, maxBuffer: 64e6};
  await run('node', ['scripts/build.mjs'], options);
  const {stdout} = await run('npm', ['pack', '--json', '--silent'], options);
  return new Map([...MADE.flatMap((name) => filesOf(place, name)), JSON.parse(stdout)[0].filename]
    .map((path) => [path, createHash('sha256').update(readFileSync(join(place, path))).digest('hex')]));
}

/** What git has, and what it would take. */
function sources() {
  const listed = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {cwd: ROOT, encoding: 'utf8'});
  return listed.split('\0').filter((path) => path && statSync(ROOT + path, {throwIfNoEntry: false})?.isFile());
}

function filesOf(place, name) {
  return readdirSync(join(place, name), {recursive: true, encoding: 'utf8'}).map((path) => `${name}/${path}`)
    .filter((path) => statSync(join(place, path)).isFile());
}
