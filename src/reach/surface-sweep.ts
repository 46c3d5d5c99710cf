/**
 * Heights of the two antennas above the smooth surface fitted to the ground, for every cell of a bundle of rays. Source: Recommendation ITU-R
 * P.1812-8, Attachment 1 §5.6, eqs (85) to (90); the ground that stands above the line is found on a hull.
 */
import type { CellBatch, GroundAhead } from './ground-ahead.ts';
import { addToHull, farthestAbove, highestSeenBack, type UpperHull } from './upper-hull.ts';

export interface SurfaceTerms {
  /** Ground under the station and its antenna, m above sea level. */
  readonly stationGroundM: number;
  readonly stationM: number;
  readonly cellAntennaM: number;
}

/**
 * @param hull of the ground on a flat earth, samples before `from`; filled up to `to`
 * @param stationAboveM and `cellAboveM` are what is filled, m
 */
export function surfaceHeights(
  { stationGroundM, stationM, cellAntennaM }: SurfaceTerms,
  { km, groundM, steepestFlat, sum, moment }: GroundAhead,
  cells: CellBatch,
  hull: UpperHull,
  stationAboveM: Float64Array,
  cellAboveM: Float64Array,
  from: number,
  to: number,
): void {
  const { count } = cells;
  let next = from;
  for (let index = 0; index <= count; index++) {
    // After the last cell the hull takes in what is left.
    const at = index < count ? (cells.at[index] ?? 0) : to;
    for (; next < at; next++) addToHull(hull, km[next] ?? 0, groundM[next] ?? 0);
    if (index === count) return;
    const d = cells.km[index] ?? 0;
    const h = cells.groundM[index] ?? 0;
    const lastX = km[at - 1] ?? 0;
    const lastH = at === 1 ? stationGroundM : (groundM[at - 1] ?? 0);
    const u = (sum[at - 1] ?? 0) + (d - lastX) * (h + lastH);
    const w = (moment[at - 1] ?? 0) + (d - lastX) * (h * (2 * d + lastX) + lastH * (d + 2 * lastX));
    const perD = 1 / d;
    const mean = u * perD;
    const tilt = w * perD * perD;
    let startM = 2 * mean - tilt;
    let endM = tilt - mean;
    // Lowered where ground stands above the line of sight.
    const line = (h + cellAntennaM - stationM) * perD;
    const fromStart = (steepestFlat[at - 1] ?? 0) - line;
    if (fromStart > 0) {
      const horizon = highestSeenBack(hull, d, h + cellAntennaM);
      const fromEnd = ((hull.y[horizon] ?? 0) - h - cellAntennaM) / (d - (hull.x[horizon] ?? 0)) + line;
      const top = farthestAbove(hull, line, horizon);
      const highest = (hull.y[top] ?? 0) - line * (hull.x[top] ?? 0) - stationM;
      const share = highest / (fromStart + fromEnd);
      startM -= share * fromStart;
      endM -= share * fromEnd;
    }
    stationAboveM[index] = stationM - Math.min(startM, stationGroundM);
    cellAboveM[index] = h + cellAntennaM - Math.min(endM, h);
  }
}
