import {defineConfig} from 'vitest/config';

/** The tests that judge mutants: those of the mutated files and their neighbours, without the long searches and the fuzz. */
export default defineConfig({
  test: {
    include: ['tests/core/exposure/*.test.ts', 'tests/core/tone/{advice,clipping,light}.test.ts',
      'tests/core/optics/{blur,contrast,distance,fit,focus,lens,outline,ruler,sensors,transfer,zone}.test.ts'],
    environment: 'node',
    testTimeout: 60_000,
  },
});
