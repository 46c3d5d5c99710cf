/** The share of one thread in a sweep: what it is given, and how it takes piece by piece of what is left. */
import type { SweptGrid } from '../reach/ground-ahead.ts';
import { type SweepSettings, sweepLoss } from '../reach/loss-sweep.ts';
import { type RayFrame, raysLeft } from '../reach/rays.ts';
import { sweepSight } from '../reach/sight-sweep.ts';

export interface RayShare {
  readonly grid: SweptGrid;
  readonly frame: RayFrame;
  readonly settings: SweepSettings;
  /** The same place with the bundles of the sight. */
  readonly sightFrame: RayFrame;
  readonly lossDb: Float32Array;
  readonly inSight: Uint8Array;
  /** What has been taken of the rays of the loss and of the sight, by any thread. */
  readonly lossTaken: Int32Array;
  readonly sightTaken: Int32Array;
}

export function sweepShare(task: RayShare): void {
  const { grid, frame, sightFrame, settings, lossDb, inSight, lossTaken, sightTaken } = task;
  sweepLoss(grid, frame, settings, lossDb, raysLeft(frame, lossTaken));
  sweepSight(grid, sightFrame, settings, inSight, raysLeft(sightFrame, sightTaken));
}
