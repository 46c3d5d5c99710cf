/**
 * The edge parameter v of the Bullington construction for the cells of a bundle of rays that are in sight, over the actual ground: eq (15) of
 * Recommendation ITU-R P.1812-8, without looking at most of the samples before them.
 */
import { blockBits, type CellBatch, type GroundAhead } from './ground-ahead.ts';
import { type HorizonTerms, nearSamples, type RaySteps } from './horizon-sweep.ts';

/**
 * Fills v of the cells where it is NaN: the greatest of the samples before each. With m the slope at which the station sees a sample and s that of
 * the line, `v² = (s - m)² x / (D - x) · 0.002 D / lambda`; the least of it over a block is at least what its highest slope and
 * first distance give, and samples that clear 0.55 of the zone (v < -0.78) do not matter. The last few samples are carried across to
 * the line that leads to the cell, as in {@link ./horizon-sweep.ts}.
 */
export function clearedEdges(
  { stationM, cellAntennaM, perKm2, wavelengthM }: HorizonTerms,
  { slope, firstKm, lead }: RaySteps,
  { km, tiltM, slope: slopes, sight, steepestAt, blockSight }: GroundAhead,
  cells: CellBatch,
  v: Float64Array,
): void {
  const near = nearSamples;
  const bits = blockBits;
  const perFirstKm = 1 / firstKm;
  for (let index = 0; index < cells.count; index++) {
    if (!Number.isNaN(v[index])) continue;
    const at = cells.at[index] ?? 0;
    const d = km[at] ?? 0;
    const line = ((cells.groundM[index] ?? 0) + cellAntennaM - stationM) / d - perKm2 * d;
    const steps = lead + at - 1;
    const perT = 1 / steps;
    // Steps grow or shrink all the way, so that no more of them fit into a kilometre than at one end.
    const stepsPerKm = Math.max(perFirstKm, steps / d);
    const cellSlope = slope + (cells.aside[index] ?? 0) * perT;
    const scale = (0.002 * d) / wavelengthM;
    const clear = (0.78 * 0.78) / scale;
    let least = clear;
    const far = at > near ? at - near : 1;
    // From the cell backwards: the ground before a low antenna is what mostly counts.
    for (let sample = at - 1; sample >= far; sample--) {
      const across = (cellSlope - (slopes[sample] ?? 0)) * perFirstKm;
      const below = line - (sight[sample] ?? 0) - (tiltM[sample] ?? 0) * across;
      const x = km[sample] ?? 0;
      const taken = below * below * x;
      if (taken < least * (d - x)) least = taken / (d - x);
    }
    for (let block = (far - 1) >> bits; block >= 0; block--) {
      const first = block === 0 ? 1 : block << bits;
      const end = Math.min((block + 1) << bits, far);
      const nearKm = km[first] ?? 0;
      // No sample up to here is seen steeper than the steepest of them, so that those from some place on need not be looked at.
      const gapOfAll = line - (sight[steepestAt[end - 1] ?? 0] ?? 0);
      const square = gapOfAll * gapOfAll;
      if (gapOfAll > 0 && square * nearKm >= least * (d - nearKm)) {
        const place = ((least * d) / (square + least)) * stepsPerKm + 2;
        if (place < first) block = (place >> bits) + 1;
        continue;
      }
      const gap = line - (blockSight[block] ?? 0);
      // Of the block next to the cell the highest may lie beyond the cell, and above the line.
      if (gap > 0 && gap * gap * nearKm >= least * (d - nearKm)) continue;
      for (let sample = first; sample < end; sample++) {
        const below = line - (sight[sample] ?? 0);
        const x = km[sample] ?? 0;
        const taken = below * below * x;
        if (taken < least * (d - x)) least = taken / (d - x);
      }
    }
    v[index] = least === clear ? -1 : -Math.sqrt(least * scale);
  }
}
