/** The share of one thread in a sweep: what it is given, and how it works it off. */
import type { SweptGrid } from '../reach/ground-ahead.ts';
import { type SweepSettings, sweepLoss } from '../reach/loss-sweep.ts';
import { type RayFrame, raysOfShare } from '../reach/rays.ts';

export interface RayShare {
  readonly grid: SweptGrid;
  readonly frame: RayFrame;
  readonly settings: SweepSettings;
  readonly lossDb: Float32Array;
  /** Which of how many shares. */
  readonly share: number;
  readonly shares: number;
}

export function sweepShare({ grid, frame, settings, lossDb, share, shares }: RayShare): void {
  sweepLoss(grid, frame, settings, lossDb, raysOfShare(frame, share, shares));
}
