/** The share of one thread in a sweep: what it is given, and how it works it off. */
import type { SweptGrid } from '../reach/ground-ahead.ts';
import { type SweepSettings, sweepLoss } from '../reach/loss-sweep.ts';
import { type RayFrame, raysOfShare } from '../reach/rays.ts';
import { sweepSight } from '../reach/sight-sweep.ts';

export interface RayShare {
  readonly grid: SweptGrid;
  readonly frame: RayFrame;
  readonly settings: SweepSettings;
  /** The same place with the bundles of the sight. */
  readonly sightFrame: RayFrame;
  readonly lossDb: Float32Array;
  readonly inSight: Uint8Array;
  /** Which of how many shares. */
  readonly share: number;
  readonly shares: number;
}

export function sweepShare(task: RayShare): void {
  const { grid, frame, sightFrame, settings, lossDb, inSight, share, shares } = task;
  sweepLoss(grid, frame, settings, lossDb, raysOfShare(frame, share, shares));
  sweepSight(grid, sightFrame, settings, inSight, raysOfShare(sightFrame, share, shares));
}
