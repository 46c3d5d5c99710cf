import { readFile } from 'node:fs/promises';
import type { World } from '../../src/pipeline.ts';

/** The date of the examples, and the demo's ground, on which examples about paths stand. */
export const exampleWorld: World = {
  today: '2026-11-25',
  withPaths: true,
  read: (path) => readFile(new URL(`../../plans/terrain/${path}`, import.meta.url)),
};
