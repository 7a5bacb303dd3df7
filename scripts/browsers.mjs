/** The three engines the elements are tried in: where each is found, and how Debian provides it. */
import {spawn, spawnSync} from 'node:child_process';
import {existsSync, readdirSync} from 'node:fs';
import {createServer} from 'node:net';
import {createInterface} from 'node:readline/promises';

/** Where WebKit's driver listens: whoever starts one tells those it starts. */
export const webKitPort = () => Number(process.env.WEBKIT_PORT) || 4445;

const firstOf = (...places) => places.find((path) => path && existsSync(path));

/** WebKitGTK keeps its small browser in a folder named for the machine: /usr/lib/x86_64-linux-gnu/webkit2gtk-4.1. */
function miniBrowser() {
  const folders = existsSync('/usr/lib') ? readdirSync('/usr/lib').filter((name) => name.includes('-linux-gnu')) : [];
  return firstOf(...folders.flatMap((name) => ['4.1', '4.0'].map((version) => `/usr/lib/${name}/webkit2gtk-${version}/MiniBrowser`)));
}

export const ENGINES = {
  chromium: {
    packages: ['chromium'],
    find: () => firstOf(process.env.CHROME_PATH, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'),
  },
  firefox: {
    packages: ['firefox-esr'],
    find: () => firstOf(process.env.FIREFOX_PATH, '/usr/bin/firefox-esr', '/usr/bin/firefox'),
  },
  webkit: {
    packages: ['webkit2gtk-driver', 'xvfb'],
    find: () => (existsSync('/usr/bin/WebKitWebDriver') && existsSync('/usr/bin/Xvfb') ? miniBrowser() : undefined),
  },
};

/**
 * Sees to the engines that are missing: as root from Debian's packages, otherwise by asking, or by saying how.
 * @returns names of the engines that can be used, and for the others one sentence each
 */
export async function ensureEngines() {
  const missing = Object.keys(ENGINES).filter((name) => !ENGINES[name].find());
  const packages = missing.flatMap((name) => ENGINES[name].packages);
  const how = `apt-get install -y ${packages.join(' ')}`;
  if (packages.length && existsSync('/usr/bin/apt-get')) {
    const root = process.getuid?.() === 0;
    if (root || await asked(`The element tests need ${missing.join(', ')}. Run “sudo ${how}” now? [y/N] `)) {
      console.log(`Installing ${packages.join(', ')} from Debian (once, some minutes) …`);
      for (const line of ['apt-get update -qq', `${how} -qq`]) {
        const words = root ? line.split(' ') : ['sudo', ...line.split(' ')];
        spawnSync(words[0], words.slice(1), {stdio: ['inherit', 'ignore', 'inherit'], env: {...process.env, DEBIAN_FRONTEND: 'noninteractive'}});
      }
    }
  }
  return Object.keys(ENGINES).map((name) => ({
    name, found: Boolean(ENGINES[name].find()), how: `not on this machine; “sudo apt-get install ${ENGINES[name].packages.join(' ')}” brings it`,
  }));
}

async function asked(question) {
  if (!process.stdin.isTTY) return false;
  const line = createInterface({input: process.stdin, output: process.stdout});
  const answer = await line.question(question);
  line.close();
  return /^y(es)?$/i.test(answer.trim());
}

/**
 * Starts a screen and WebKit's driver on it, at a port of its own, so that runs side by side do not meet.
 * @returns what the runner has to find in its environment, and a function that ends both
 */
export async function startWebKit() {
  const port = await freePort();
  const display = `:${100 + port % 20_000}`;
  const screen = spawn('Xvfb', [display, '-screen', '0', '1280x1024x24', '-nolisten', 'tcp'], {stdio: 'ignore'});
  await pause(700);
  const driver = spawn('WebKitWebDriver', [`--port=${port}`], {
    stdio: 'ignore',
    // Without a graphics card, buffers shared with one only cost time.
    env: {...process.env, DISPLAY: display, WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1', LIBGL_ALWAYS_SOFTWARE: '1', WEBKIT_DISABLE_DMABUF_RENDERER: '1'},
  });
  await pause(700);
  return {env: {WEBKIT_PORT: String(port)}, end: () => { driver.kill(); screen.kill(); }};
}

/** A port that nobody listens at: runs that begin in the same moment do not meet. */
export function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer().on('error', reject).listen(0, '127.0.0.1', () => {
      const {port} = server.address();
      server.close(() => { resolve(port); });
    });
  });
}

const pause = (ms) => new Promise((resolve) => { setTimeout(resolve, ms); });
