/** Sweeps a grid on as many threads as the machine has cores; a small one on this thread, which is quicker. */
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { ElevationGrid } from '../reach/grid.ts';
import type { SweepSettings } from '../reach/loss-sweep.ts';
import { newPieces, type RayFrame } from '../reach/rays.ts';
import { type RayShare, sweepShare } from './ray-share.ts';

/** Below this, starting a thread takes longer than the sweep. */
const fewCells = 500_000;

export interface Swept {
  /** Loss by free space and diffraction at every cell, dB, NaN where no ray comes. */
  readonly lossDb: Float32Array;
  /** 255 where a cell is in line of sight. */
  readonly inSight: Uint8Array;
}

export async function sweep(
  grid: ElevationGrid,
  frame: RayFrame,
  sightFrame: RayFrame,
  settings: SweepSettings,
): Promise<Swept> {
  const cells = grid.rows * grid.columns;
  const threads = cells < fewCells ? 1 : Math.min(availableParallelism(), 8);
  const lossDb = new Float32Array(new SharedArrayBuffer(4 * cells)).fill(Number.NaN);
  const inSight = new Uint8Array(new SharedArrayBuffer(cells));
  const heightsM = threads === 1 ? grid.heightsM : shared(grid.heightsM);
  const task: RayShare = {
    grid: { columns: grid.columns, rows: grid.rows, heightsM },
    frame,
    sightFrame,
    settings,
    lossDb,
    inSight,
    lossTaken: newPieces(),
    sightTaken: newPieces(),
  };
  const others = Array.from({ length: threads - 1 }, () => onThread(task));
  sweepShare(task);
  await Promise.all(others);
  return { lossDb, inSight };
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
