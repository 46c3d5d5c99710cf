/**
 * What an example sees outside itself: a date, a rules file and a record of audits that examples may name, and the demo's ground, on
 * which examples about paths stand.
 */
import { readFile } from 'node:fs/promises';
import type { World } from '../../src/pipeline.ts';

const beside: Readonly<Record<string, string>> = {
  'local/our-coordinator.yaml': '../plans/local/our-coordinator.yaml',
  'radios.json': '../plans/radios.json',
  'hickory-gap.tif': '../../plans/terrain/hickory-gap.tif',
};

export const exampleWorld: World = {
  today: '2026-11-25',
  withPaths: true,
  read: (path) => {
    const file = beside[path];
    return file === undefined
      ? Promise.reject(new Error(`an example asks for ${path}`))
      : readFile(new URL(file, import.meta.url));
  },
};
