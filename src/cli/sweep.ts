/** Sweeps a grid on as many threads as the machine has cores; a small one on this thread, which is quicker. */
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { ElevationGrid } from '../reach/grid.ts';
import { type SweepSettings, sweepLoss } from '../reach/loss-sweep.ts';
import { type RayFrame, rayCount } from '../reach/rays.ts';
import { type RayShare, sweepShare } from './ray-share.ts';

/** Below this, starting a thread takes longer than the sweep. */
const fewCells = 500_000;

/** @returns loss by free space and diffraction at every cell, dB, NaN where no ray comes */
export async function sweep(
  grid: ElevationGrid,
  frame: RayFrame,
  settings: SweepSettings,
): Promise<Float32Array> {
  const cells = grid.rows * grid.columns;
  if (cells < fewCells) {
    const lossDb = new Float32Array(cells).fill(Number.NaN);
    sweepLoss(grid, frame, settings, lossDb, [[0, rayCount(frame)]]);
    return lossDb;
  }
  const lossDb = new Float32Array(new SharedArrayBuffer(4 * cells)).fill(Number.NaN);
  const shares = Math.min(availableParallelism(), 8);
  const heightsM = shared(grid.heightsM);
  const task = (share: number): RayShare => ({
    grid: { columns: grid.columns, rows: grid.rows, heightsM },
    frame,
    settings,
    lossDb,
    share,
    shares,
  });
  const others = Array.from({ length: shares - 1 }, (_, index) => onThread(task(index + 1)));
  sweepShare(task(0));
  await Promise.all(others);
  return lossDb;
}

function shared(heightsM: Int16Array | Float32Array): Int16Array | Float32Array {
  if (heightsM.buffer instanceof SharedArrayBuffer) return heightsM;
  const buffer = new SharedArrayBuffer(heightsM.byteLength);
  const copy = heightsM instanceof Int16Array ? new Int16Array(buffer) : new Float32Array(buffer);
  copy.set(heightsM);
  return copy;
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
