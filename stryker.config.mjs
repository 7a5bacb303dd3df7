/** `npm run mutate`: changes the core in small ways, one at a time, and asks whether a test notices. docs/mutants.md says more. */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: {configFile: 'vitest.mutate.config.mjs', related: false},
  mutate: [
    'src/core/exposure/{stops,clicks,trade}.ts', 'src/core/optics/{blur,lens,zone}.ts', 'src/core/tone/{light,clipping}.ts',
  ],
  ignorePatterns: ['/dist', '/site', '/docs', '/bench', '/tests/elements', '/tests/pages', '/tests/photo'],
  ignoreStatic: true,
  concurrency: 1,
  timeoutMS: 20_000,
  reporters: ['clear-text', 'json'],
  clearTextReporter: {allowColor: false, logTests: false, reportTests: false},
  jsonReporter: {fileName: 'coverage/mutants.json'},
  tempDirName: 'coverage/.stryker',
};
