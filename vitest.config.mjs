import {defineConfig} from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/core/**/*.test.ts', 'tests/words/**/*.test.ts', 'tests/server/**/*.test.ts', 'tests/drawing/**/*.test.ts', 'tests/fuzz/**/*.test.ts', 'tests/reference/**/*.test.ts', 'tests/package/**/*.test.{ts,mjs}'],
    environment: 'node',
    setupFiles: ['tests/seed.ts'],
    testTimeout: 120_000, // a busy machine is no failure
    reporters: ['default', './tests/fuzz/closing-line.mjs'],
    coverage: {provider: 'v8', reportOnFailure: true, include: ['src/core/**/*.ts'], reporter: ['text', 'html'], reportsDirectory: 'coverage'},
  },
});
