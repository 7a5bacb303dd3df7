import {esbuildPlugin} from '@web/dev-server-esbuild';
import {chromeLauncher} from '@web/test-runner-chrome';
import {findChromium} from './scripts/browsers.mjs';

/** The elements run from source here; the pages in tests/pages run as built, from site/ and dist/. */
export default {
  files: ['tests/elements/**/*.test.ts', 'tests/photo/**/*.test.ts', 'tests/pages/**/*.test.ts'],
  nodeResolve: {exportConditions: ['production', 'default']},
  plugins: [esbuildPlugin({ts: true, target: 'es2022', tsconfig: 'tsconfig.json'})],
  browsers: [chromeLauncher({
    launchOptions: {
      executablePath: findChromium(),
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-quic', '--no-first-run',
        '--disable-component-update', '--disable-sync', '--force-color-profile=srgb', '--disable-renderer-backgrounding',
        '--disable-backgrounding-occluded-windows', '--disable-background-timer-throttling'],
    },
  })],
  // One page at a time: keys go to the page in front, and two pages cannot both be there.
  concurrency: 1,
  testFramework: {config: {timeout: 20_000}},
  testRunnerHtml: (path) => `<!doctype html><html lang="en"><body><script type="module" src="${path}"></script></body></html>`,
};
