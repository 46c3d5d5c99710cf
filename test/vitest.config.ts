import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/**/*.test.ts'],
    // Rasterised pages and whole-process tests take their time on two cores.
    testTimeout: 60_000,
  },
});
