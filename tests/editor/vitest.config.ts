import { defineConfig } from 'vitest/config';

/** Real editors are slow to start and share two cores, so one file runs at a time. */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/editor/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 180_000,
    fileParallelism: false,
    maxWorkers: 1,
  },
});
