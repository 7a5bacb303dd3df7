import {defineConfig} from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/core/**/*.test.ts', 'tests/reference/**/*.test.ts', 'tests/package/**/*.test.ts'],
    environment: 'node',
  },
});
