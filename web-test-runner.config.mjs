import {readdirSync} from 'node:fs';
import {esbuildPlugin} from '@web/dev-server-esbuild';
import {chromeLauncher} from '@web/test-runner-chrome';
import {puppeteerLauncher} from '@web/test-runner-puppeteer';
import {webdriverLauncher} from '@web/test-runner-webdriver';
import {ENGINES, freePort, webKitPort} from './scripts/browsers.mjs';
import {mediaPlugin} from './scripts/eyes.mjs';
import {bundlePlugins} from './scripts/bundled.mjs';
import {elsewherePlugin} from './scripts/elsewhere.mjs';
import {awayMiddleware, gonePlugin} from './scripts/gone.mjs';
import {chordPlugin, oneKeyAtATime} from './scripts/hands.mjs';
import {heapPlugin} from './scripts/heap.mjs';
import {policyMiddleware} from './scripts/policies.mjs';
import {renderedMiddleware} from './scripts/server-render.mjs';

const engine = process.env.ENGINE || 'chromium';

/** One engine a run, so that its lines stand alone and keys go to one window. ENGINE chooses it. */
const LAUNCHERS = {
  chromium: () => chromeLauncher({
    launchOptions: {
      executablePath: ENGINES.chromium.find(),
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-quic', '--no-first-run',
        '--disable-component-update', '--disable-sync', '--force-color-profile=srgb', '--disable-renderer-backgrounding',
        '--disable-backgrounding-occluded-windows', '--disable-background-timer-throttling'],
    },
  }),
  firefox: () => puppeteerLauncher({
    launchOptions: {
      browser: 'firefox', executablePath: ENGINES.firefox.find(), headless: true,
      // As large as Chromium's: what is painted costs time.
      env: {...process.env, MOZ_HEADLESS_WIDTH: '800', MOZ_HEADLESS_HEIGHT: '600'},
    },
  }),
  webkit: () => oneKeyAtATime(webdriverLauncher({
    automationProtocol: 'webdriver',
    hostname: '127.0.0.1',
    port: webKitPort(),
    path: '/',
    capabilities: {
      browserName: 'MiniBrowser',
      'wdio:enforceWebDriverClassic': true,
      'webkitgtk:browserOptions': {binary: ENGINES.webkit.find(), args: ['--automation']},
    },
  })),
};

const byFile = esbuildPlugin({ts: true, target: 'es2022', tsconfig: 'tsconfig.json'});

/** Who watches wants each change at once. */
const WATCHED = process.argv.includes('--watch');

/** The parts of a run: each element, photo and page by itself; what is tried by the hundred. PART chooses one. */
const PARTS = {elements: ['elements', 'photo', 'pages'], proof: ['proof']};
/** What axe-core says of pages, and how drawn marks stand out, is asked where dark and forced colours can be had. */
const CHROMIUM_ALONE = /proof\/(?:pages|marks)/;
const FILES = (PARTS[process.env.PART] ?? Object.values(PARTS).flat()).flatMap((folder) => testsIn(`tests/${folder}`))
  .filter((file) => engine === 'chromium' || !CHROMIUM_ALONE.test(file));

function testsIn(folder) {
  return readdirSync(new URL(folder, import.meta.url)).filter((name) => name.endsWith('.test.ts')).map((name) => `${folder}/${name}`);
}

/** The elements run from source here; the pages in tests/pages run as built, from site/ and dist/. */
export default {
  files: FILES,
  port: await freePort(),
  nodeResolve: {exportConditions: ['production', 'default']},
  plugins: [chordPlugin(), gonePlugin(), elsewherePlugin(), heapPlugin(), mediaPlugin(), ...(WATCHED ? [byFile] : bundlePlugins(FILES, byFile))],
  // The worker is asked for by the name it has once built.
  middleware: [awayMiddleware, policyMiddleware, renderedMiddleware, (context, next) => {
    if (context.path === '/src/photo/photo-worker.js') context.url = context.url.replace('photo-worker.js', 'photo-worker.ts');
    return next();
  }],
  browsers: [LAUNCHERS[engine]()],
  // One page at a time: keys go to the page in front, and two pages cannot both be there.
  concurrency: 1,
  // A file of many tests on a machine that others use too.
  testsFinishTimeout: 300_000,
  // Real keys and pointers on a machine that others use too: what fails is tried once more, and twice is a failure.
  testFramework: {config: {timeout: 20_000, retries: 1}},
  testRunnerHtml: (path) => `<!doctype html><html lang="en"><body><script type="module" src="${path}"></script></body></html>`,
};
