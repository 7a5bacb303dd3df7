/** Finds Chromium, or fetches Debian's where it may. */
import {spawnSync} from 'node:child_process';
import {existsSync} from 'node:fs';
import {createInterface} from 'node:readline/promises';
import {fail} from './set-up.mjs';

const PLACES = [process.env.CHROME_PATH, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Path of a Chromium-like browser, or undefined. */
export function findChromium() {
  return PLACES.find((path) => path && existsSync(path));
}

/** Path of Chromium; installs the Debian package as root, asks or explains otherwise. */
export async function ensureChromium() {
  const found = findChromium();
  if (found) return found;
  const command = 'apt-get install -y chromium';
  if (!existsSync('/usr/bin/apt-get')) fail('The element tests need Chromium. Install it and set CHROME_PATH to its program.');
  const root = process.getuid?.() === 0;
  if (!root && !(await asked(`The element tests need Chromium. Run “sudo ${command}” now? [y/N] `))) {
    fail(`The element tests need Chromium. Install it with “sudo ${command}”, or set CHROME_PATH to its program.`);
  }
  console.log('Installing Debian’s Chromium (once, a minute or two) …');
  for (const line of ['apt-get update -qq', `${command} -qq`]) {
    const words = root ? line.split(' ') : ['sudo', ...line.split(' ')];
    const done = spawnSync(words[0], words.slice(1), {
      stdio: ['inherit', 'ignore', 'inherit'], env: {...process.env, DEBIAN_FRONTEND: 'noninteractive'},
    });
    if (done.status !== 0) fail(`“${words.join(' ')}” failed; its own words are above.`);
  }
  return findChromium() ?? fail('Chromium was installed but is not where it was looked for. Set CHROME_PATH to its program.');
}

async function asked(question) {
  if (!process.stdin.isTTY) return false;
  const line = createInterface({input: process.stdin, output: process.stdout});
  const answer = await line.question(question);
  line.close();
  return /^y(es)?$/i.test(answer.trim());
}
