/**
 * The edge parameter v of the Bullington construction for every cell of a bundle of rays, over the actual ground: eqs (13) to (18) of
 * Recommendation ITU-R P.1812-8, read off the running maxima and the hull of the ground instead of the whole profile.
 */
import { blockBits, type CellBatch, type GroundAhead } from './ground-ahead.ts';
import { addToHull, highestSeenBack, type UpperHull } from './upper-hull.ts';

export interface EdgeTerms {
  readonly stationM: number;
  readonly cellAntennaM: number;
  /** Fall of the earth, m per km². */
  readonly perKm2: number;
  readonly wavelengthM: number;
}

/**
 * Fills v of the cells beyond the horizon, where v² is the product of the angles at the two ends; eqs (17) and (18).
 *
 * @param hull of the ground with the earth falling away, samples before `from`; filled up to `to`
 */
export function hiddenEdges(
  { stationM, cellAntennaM, perKm2, wavelengthM }: EdgeTerms,
  { km, groundM, steepest }: GroundAhead,
  cells: CellBatch,
  hull: UpperHull,
  v: Float64Array,
  from: number,
  to: number,
): void {
  const perWave = 0.002 / wavelengthM;
  const { count } = cells;
  let next = from;
  for (let index = 0; index <= count; index++) {
    // After the last cell the hull takes in what is left.
    const at = index < count ? (cells.at[index] ?? 0) : to;
    for (; next < at; next++) {
      const x = km[next] ?? 0;
      addToHull(hull, x, (groundM[next] ?? 0) - perKm2 * x * x);
    }
    if (index === count) return;
    const d = cells.km[index] ?? 0;
    const cellM = (cells.groundM[index] ?? 0) + cellAntennaM - perKm2 * d * d;
    const line = (cellM - stationM) / d;
    const steep = steepest[at - 1] ?? 0;
    if (steep < line) continue;
    const horizon = highestSeenBack(hull, d, cellM);
    const back = ((hull.y[horizon] ?? 0) - cellM) / (d - (hull.x[horizon] ?? 0));
    v[index] = Math.sqrt(Math.max(0, (steep - line) * (back + line) * d * perWave));
  }
}

/**
 * Fills v of the cells in sight: the greatest of the samples before each, eq (15). With m the slope at which the station sees a sample and s that of
 * the line, `v² = (s - m)² x / (D - x) · 0.002 D / lambda`; the least of it over a block is at least what its highest slope and
 * first distance give, and samples that clear 0.55 of the zone (v < -0.78) do not matter.
 */
export function clearedEdges(
  { stationM, cellAntennaM, perKm2, wavelengthM }: EdgeTerms,
  { km, sight, steepest, blockSight }: GroundAhead,
  cells: CellBatch,
  v: Float64Array,
): void {
  for (let index = 0; index < cells.count; index++) {
    const at = cells.at[index] ?? 0;
    const d = cells.km[index] ?? 0;
    const line = ((cells.groundM[index] ?? 0) + cellAntennaM - stationM) / d - perKm2 * d;
    if ((steepest[at - 1] ?? 0) >= line) continue;
    const scale = (0.002 * d) / wavelengthM;
    const clear = (0.78 * 0.78) / scale;
    let least = clear;
    // From the cell backwards: the ground before a low antenna is what mostly counts.
    for (let block = (at - 1) >> blockBits; block >= 0; block--) {
      const first = block === 0 ? 1 : block << blockBits;
      const gap = line - (blockSight[block] ?? 0);
      const nearKm = km[first] ?? 0;
      if (gap * gap * nearKm >= least * (d - nearKm)) continue;
      const end = Math.min((block + 1) << blockBits, at);
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
