/** Sweeps a grid on as many threads as the machine has cores; a small one on this thread, which is quicker. */
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { ElevationGrid } from '../reach/grid.ts';
import { type SweepSettings, sweepLoss } from '../reach/loss-sweep.ts';
import { type RayFrame, rayCount } from '../reach/rays.ts';
import type { RayShare } from './reach-worker.ts';

/** Below this, starting a thread takes longer than the sweep. */
const fewCells = 500_000;

/** @returns loss by free space and diffraction at every cell, dB, NaN where no ray comes */
export async function sweep(
  grid: ElevationGrid,
  frame: RayFrame,
  settings: SweepSettings,
): Promise<Float32Array> {
  const cells = grid.rows * grid.columns;
  const rays = rayCount(frame);
  if (cells < fewCells) {
    const lossDb = new Float32Array(cells).fill(Number.NaN);
    sweepLoss(grid, frame, settings, { lossDb }, 0, rays);
    return lossDb;
  }
  const lossDb = new Float32Array(new SharedArrayBuffer(4 * cells)).fill(Number.NaN);
  const heightsM = new Float32Array(new SharedArrayBuffer(4 * cells));
  heightsM.set(grid.heightsM);
  const threads = Math.min(availableParallelism(), 8);
  // Quarters of the rays are even in length, so even shares of their number are even shares of the work.
  const bound = (share: number) => Math.round((share * rays) / threads);
  const share = (index: number): RayShare => ({
    grid: { columns: grid.columns, rows: grid.rows, heightsM },
    frame,
    settings,
    result: { lossDb },
    fromRay: bound(index),
    toRay: bound(index + 1),
  });
  const others = Array.from({ length: threads - 1 }, (_, index) => onThread(share(index + 1)));
  const own = share(0);
  sweepLoss(own.grid, frame, settings, own.result, own.fromRay, own.toRay);
  await Promise.all(others);
  return lossDb;
}

function onThread(share: RayShare): Promise<void> {
  return new Promise((resolve, reject) => {
    const file = new URL(
      import.meta.url.endsWith('.ts') ? './reach-worker.ts' : './reach-worker.js',
      import.meta.url,
    );
    new Worker(fileURLToPath(file), { workerData: share })
      .once('message', () => resolve())
      .once('error', reject);
  });
}
