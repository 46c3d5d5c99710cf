/** The real grid of the example plan: U.S. Geological Survey, National Elevation Dataset (see plans/terrain/README.md). */
import { readFileSync } from 'node:fs';
import { readGeotiff } from '../../src/reach/read-geotiff.ts';

export const hillsBytes = new Uint8Array(
  readFileSync(new URL('../../plans/terrain/hickory-gap.tif', import.meta.url)),
);
export const readHills = () => readGeotiff(hillsBytes, 'hickory-gap.tif');
