/**
 * What the benchmark times: one process that reads an elevation grid, sweeps it from the cell in its middle, and writes a raster.
 *
 *   node reach-process.mjs GRID.tif OUT.tif sight|loss
 */
import { closeSync, fstatSync, openSync, readSync, writevSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isMainThread, parentPort, Worker } from 'node:worker_threads';
import { type ElevationGrid, positionOf } from '../../src/reach/grid.ts';
import { sweepLoss } from '../../src/reach/loss-sweep.ts';
import { type RayFrame, rayFrame, raysOfShare } from '../../src/reach/rays.ts';
import { readGeotiff } from '../../src/reach/read-geotiff.ts';
import { sweepSight } from '../../src/reach/sight-sweep.ts';
import { geotiffParts } from '../../src/reach/write-geotiff.ts';
import { lossSettings as settings } from './loss-settings.ts';

interface Task {
  readonly grid: ElevationGrid;
  readonly frame: RayFrame;
  readonly lossDb: Float32Array;
  readonly share: 0 | 1;
}

function sweepHalf({ grid, frame, lossDb, share }: Task): void {
  sweepLoss(grid, frame, settings, lossDb, raysOfShare(frame, share, 2));
}

function readShared(path: string): Uint8Array {
  const file = openSync(path, 'r');
  const bytes = new Uint8Array(new SharedArrayBuffer(fstatSync(file).size));
  let at = 0;
  while (at < bytes.length) at += readSync(file, bytes, at, bytes.length - at, null);
  closeSync(file);
  return bytes;
}

function writeParts(path: string, parts: readonly Uint8Array[]): void {
  const file = openSync(path, 'w');
  writevSync(file, parts);
  closeSync(file);
}

async function lossOnTwoThreads(grid: ElevationGrid, frame: RayFrame, worker: Worker): Promise<Float32Array> {
  const lossDb = new Float32Array(new SharedArrayBuffer(4 * grid.rows * grid.columns)).fill(Number.NaN);
  const done = new Promise((resolve, reject) => worker.once('message', resolve).once('error', reject));
  worker.postMessage({ grid, frame, lossDb, share: 1 } satisfies Task);
  sweepHalf({ grid, frame, lossDb, share: 0 });
  await done;
  return lossDb;
}

/** So quick that a second thread would not be up in time. */
function sight(grid: ElevationGrid, frame: RayFrame): Uint8Array {
  const inSight = new Uint8Array(grid.rows * grid.columns);
  for (const half of ['north', 'south'] as const) sweepSight(grid, frame, settings, { inSight }, half);
  return inSight;
}

if (isMainThread) {
  const [, , input = '', output = '', what = 'loss'] = process.argv;
  // The thread starts while the file is read.
  const worker = what === 'loss' ? new Worker(fileURLToPath(import.meta.url)) : undefined;
  const grid = await readGeotiff(readShared(input), input);
  const station = positionOf(grid, grid.rows >> 1, grid.columns >> 1);
  const frame = rayFrame(grid, station);
  if (!frame) throw new Error('no ground in the middle');
  const samples = worker ? await lossOnTwoThreads(grid, frame, worker) : sight(grid, frame);
  writeParts(output, geotiffParts({ ...grid, samples, isPlain: true }));
  process.stdout.write(`${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);
} else {
  parentPort?.once('message', (task: Task) => {
    sweepHalf(task);
    parentPort?.postMessage('done');
  });
}
