/**
 * What the benchmark times: one process that reads an elevation grid, sweeps it from the cell in its middle on two threads, and writes a raster.
 *
 *   node reach-process.mjs GRID.tif OUT.tif sight|loss RAYS-PER-CELL
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

interface Task {
  readonly grid: ElevationGrid;
  readonly frame: RayFrame;
  readonly samples: Float32Array | Uint8Array;
  readonly share: 0 | 1;
}

const settings = {
  frequencyHz: 146e6,
  polarization: 'vertical',
  stationAntennaM: 10,
  cellAntennaM: 1.5,
  earthRadiusKm: 8500,
} as const;

function sweepHalf({ grid, frame, samples, share }: Task): void {
  for (const [fromRay, toRay] of raysOfShare(frame, share, 2)) {
    if (samples instanceof Uint8Array)
      sweepSight(grid, frame, settings, { inSight: samples }, fromRay, toRay);
    else sweepLoss(grid, frame, settings, samples, fromRay, toRay);
  }
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

if (isMainThread) {
  // The thread starts while the file is read.
  const worker = new Worker(fileURLToPath(import.meta.url));
  const [, , input = '', output = '', what = 'loss', rays = '1'] = process.argv;
  const grid = await readGeotiff(readShared(input), input);
  const cells = grid.rows * grid.columns;
  const frame = rayFrame(grid, positionOf(grid, grid.rows >> 1, grid.columns >> 1), {
    raysPerCell: Number(rays),
  });
  if (!frame) throw new Error('no ground in the middle');
  const samples =
    what === 'loss'
      ? new Float32Array(new SharedArrayBuffer(4 * cells)).fill(Number.NaN)
      : new Uint8Array(new SharedArrayBuffer(cells));
  const task: Task = { grid, frame, samples, share: 0 };
  const done = new Promise((resolve, reject) => worker.once('message', resolve).once('error', reject));
  worker.postMessage({ ...task, share: 1 });
  sweepHalf(task);
  await done;
  writeParts(output, geotiffParts({ ...grid, samples, isPlain: true }));
  process.stdout.write(`${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);
} else {
  parentPort?.once('message', (task: Task) => {
    sweepHalf(task);
    parentPort?.postMessage('done');
  });
}
