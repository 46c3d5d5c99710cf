/** One share of the rays of a sweep, on a thread of its own. The rasters are shared, so nothing is sent back. */
import { parentPort, workerData } from 'node:worker_threads';
import { type SweepResult, type SweepSettings, type SweptGrid, sweepLoss } from '../reach/loss-sweep.ts';
import type { RayFrame } from '../reach/rays.ts';

export interface RayShare {
  readonly grid: SweptGrid;
  readonly frame: RayFrame;
  readonly settings: SweepSettings;
  readonly result: SweepResult;
  readonly fromRay: number;
  readonly toRay: number;
}

// Handed over by sweep.ts, which is the only one to start this file.
const { grid, frame, settings, result, fromRay, toRay } = workerData as RayShare;
sweepLoss(grid, frame, settings, result, fromRay, toRay);
parentPort?.postMessage('done');
