import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/cli/compile-program.ts'],
    // Rasterised pages and whole-process tests take their time on two cores.
    testTimeout: 60_000,
    // .ci/run takes its closing count from this file.
    reporters: process.env['CI'] ? ['default', ['json', { outputFile: 'out/.tests.json' }]] : ['default'],
  },
});
