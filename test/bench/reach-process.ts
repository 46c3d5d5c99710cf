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
import { newPieces, type RayFrame, rayFrame, raysLeft } from '../../src/reach/rays.ts';
import { readGeotiff } from '../../src/reach/read-geotiff.ts';
import { sightRaysPerCell, sweepSight } from '../../src/reach/sight-sweep.ts';
import { geotiffParts } from '../../src/reach/write-geotiff.ts';
import { lossSettings as settings } from './loss-settings.ts';

interface Task {
  readonly grid: ElevationGrid;
  readonly frame: RayFrame;
  readonly raster: Float32Array | Uint8Array;
  readonly taken: Int32Array;
}

function sweepPieces({ grid, frame, raster, taken }: Task): void {
  const stretches = raysLeft(frame, taken);
  if (raster instanceof Uint8Array) sweepSight(grid, frame, settings, raster, stretches);
  else sweepLoss(grid, frame, settings, raster, stretches);
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

async function onTwoThreads(task: Task, worker: Worker): Promise<void> {
  const done = new Promise((resolve, reject) => worker.once('message', resolve).once('error', reject));
  worker.postMessage(task);
  sweepPieces(task);
  await done;
}

if (isMainThread) {
  const [, , input = '', output = '', what = 'loss'] = process.argv;
  // The thread starts while the file is read.
  const worker = new Worker(fileURLToPath(import.meta.url));
  const grid = await readGeotiff(readShared(input), input);
  const station = positionOf(grid, grid.rows >> 1, grid.columns >> 1);
  const frame = rayFrame(grid, station, what === 'sight' ? { raysPerCell: sightRaysPerCell } : {});
  if (!frame) throw new Error('no ground in the middle');
  const cells = grid.rows * grid.columns;
  const raster =
    what === 'sight'
      ? new Uint8Array(new SharedArrayBuffer(cells))
      : new Float32Array(new SharedArrayBuffer(4 * cells)).fill(Number.NaN);
  await onTwoThreads({ grid, frame, raster, taken: newPieces() }, worker);
  writeParts(output, geotiffParts({ ...grid, samples: raster, isPlain: true }));
  process.stdout.write(`${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);
} else {
  parentPort?.once('message', (task: Task) => {
    sweepPieces(task);
    parentPort?.postMessage('done');
  });
}
