/**
 * What the benchmark times: one process that reads an elevation grid, sweeps it from the cell in its middle on two threads, and writes a raster.
 *
 *   node reach-process.mjs GRID.tif OUT.tif sight|loss RAYS-PER-CELL
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import type { ElevationGrid } from '../../src/reach/grid.ts';
import { positionOf } from '../../src/reach/grid.ts';
import { sweepLoss } from '../../src/reach/loss-sweep.ts';
import { rayCount, rayFrame } from '../../src/reach/rays.ts';
import { readGeotiff } from '../../src/reach/read-geotiff.ts';
import { writeGeotiff } from '../../src/reach/write-geotiff.ts';

interface Task {
  readonly grid: ElevationGrid;
  readonly raster: Float32Array;
  readonly what: string;
  readonly raysPerCell: number;
  readonly half: 0 | 1;
}

function sweepHalf({ grid, raster, what, raysPerCell, half }: Task): void {
  const station = positionOf(grid, grid.rows >> 1, grid.columns >> 1);
  const frame = rayFrame(grid, station, { raysPerCell });
  if (!frame) throw new Error('no ground in the middle');
  // Quarters of the rays are even in length, so that half of their number is half of the work: east and west, north and south.
  const middle = Math.floor(rayCount(frame) / 2);
  const settings = {
    frequencyHz: 146e6,
    polarization: 'vertical',
    stationAntennaM: 10,
    cellAntennaM: 1.5,
    earthRadiusKm: 8500,
    isQuick: true,
  } as const;
  sweepLoss(
    grid,
    frame,
    settings,
    what === 'loss' ? { lossDb: raster } : { clearanceM: raster },
    half ? middle : 0,
    half ? rayCount(frame) : middle,
  );
}

if (isMainThread) {
  const [, , input = '', output = '', what = 'loss', rays = '1'] = process.argv;
  const read = await readGeotiff(readFileSync(input), input);
  const heightsM = new Float32Array(new SharedArrayBuffer(4 * read.heightsM.length));
  heightsM.set(read.heightsM);
  const raster = new Float32Array(new SharedArrayBuffer(4 * heightsM.length)).fill(Number.NaN);
  const task = { grid: { ...read, heightsM }, raster, what, raysPerCell: Number(rays) };
  const worker = new Worker(fileURLToPath(import.meta.url), { workerData: { ...task, half: 1 } });
  const done = new Promise((resolve, reject) => worker.once('message', resolve).once('error', reject));
  sweepHalf({ ...task, half: 0 });
  await done;
  const seen = new Uint8Array(what === 'loss' ? 0 : raster.length);
  for (let cell = 0; cell < seen.length; cell++) seen[cell] = (raster[cell] ?? -1) >= 0 ? 255 : 0;
  const samples = what === 'loss' ? raster : seen;
  writeFileSync(output, writeGeotiff({ ...read, samples, isPlain: true }));
  process.stdout.write(`${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);
} else {
  // Sent by the main thread above.
  sweepHalf(workerData as Task);
  parentPort?.postMessage('done');
}
