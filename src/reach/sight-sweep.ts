/**
 * What is in sight from a station, cell by cell: the line of sight alone, for which a sweep need keep no more of the ground than the steepest sight
 * so far. Bundles and cells are those of {@link ./loss-sweep.ts}.
 */
import { lowestGroundM, type SweptGrid } from './ground-ahead.ts';
import { type Bundle, levelCount, visitBundles } from './ray-bundles.ts';
import { type RayFrame, rayOf } from './rays.ts';

export interface SightSettings {
  /** Antenna heights above ground, m: the station's, and that of whoever stands in a cell. */
  readonly stationAntennaM: number;
  readonly cellAntennaM: number;
  readonly earthRadiusKm: number;
}

/** What is filled, cell by cell in the order of the grid. */
export interface SightResult {
  /** How far the antenna in the cell stands above the line that grazes the ground before it, m. Below 0: what it lacks to be in sight. Begin with NaN. */
  readonly clearanceM?: Float32Array;
  /** 255 where it is in sight. Begin with 0. */
  readonly inSight?: Uint8Array;
}

/** Sweeps the cells of rays `fromRay` up to, not including, `toRay`. All of them: 0 to `rayCount(frame)`. */
export function sweepSight(
  grid: SweptGrid,
  frame: RayFrame,
  settings: SightSettings,
  result: SightResult,
  fromRay: number,
  toRay: number,
): void {
  const { clearanceM, inSight } = result;
  if (fromRay === 0) {
    const cell = Math.round(frame.row) * grid.columns + Math.round(frame.column);
    if (clearanceM) clearanceM[cell] = settings.cellAntennaM;
    if (inSight) inSight[cell] = 255;
  }
  // The steepest sight of each level of bundles where it parts, and, before them all, of no ground.
  const steepest = new Float64Array(levelCount(frame) + 1).fill(Number.NEGATIVE_INFINITY);
  visitBundles(frame, fromRay, toRay, (bundle) => look(grid, frame, settings, result, steepest, bundle));
}

/** @returns whether the ground goes on beyond */
function look(
  grid: SweptGrid,
  frame: RayFrame,
  { stationAntennaM, cellAntennaM, earthRadiusKm }: SightSettings,
  { clearanceM, inSight }: SightResult,
  steepest: Float64Array,
  { quadrant, level, lowSlope, highSlope, fromStep, toStep, isOwn }: Bundle,
): boolean {
  const { isAlongColumns, sign, lead } = quadrant;
  const { columns, heightsM } = grid;
  const station = isAlongColumns ? frame.row : frame.column;
  const last = (isAlongColumns ? grid.rows : columns) - 1;
  const majorStride = isAlongColumns ? sign : sign * columns;
  const minorStride = isAlongColumns ? columns : 1;
  const stationM = frame.groundM + stationAntennaM;
  const perKm2 = 500 / earthRadiusKm;
  const rangeKm = frame.rangeM / 1000;
  const lowBend = rayOf(frame, quadrant, lowSlope).bend;
  const highBend = rayOf(frame, quadrant, highSlope).bend;
  const { firstKm, secondKm, asideKm, alongKm } = rayOf(frame, quadrant, (lowSlope + highSlope) / 2);
  // A cell on a diagonal goes to the quarters of the columns.
  const diagonal = isAlongColumns ? 1e-9 : -1e-9;
  let most = fromStep === 0 ? Number.NEGATIVE_INFINITY : (steepest[level + 1] ?? 0);
  let base = (quadrant.majorStart + sign * fromStep) * (isAlongColumns ? 1 : columns);
  let step = fromStep;
  for (; step < toStep; step++, base += majorStride) {
    const t = lead + step;
    const d = (firstKm + secondKm * t) * t;
    const low = station + (lowSlope + lowBend * t) * t;
    const high = station + (highSlope + highBend * t) * t;
    const middle = 0.5 * (low + high);
    let minor = middle;
    if (minor < 0 || minor > last) {
      // A bundle is followed as long as any of it is in the grid.
      if (high < 0 || low > last) break;
      minor = minor < 0 ? 0 : last;
    }
    const before = minor | 0;
    const part = minor - before;
    const sample = base + before * minorStride;
    const h0 = heightsM[sample] ?? 0;
    const h1 = part === 0 ? h0 : (heightsM[sample + minorStride] ?? 0);
    // What lies behind a void is unknown.
    if (!(h0 > lowestGroundM && h1 > lowestGroundM) || d > rangeKm) break;

    let cell = low | 0;
    if (cell < low) cell++;
    for (; isOwn && cell < high; cell++) {
      if (cell < 0 || cell > last || Math.abs(cell - station) > t + diagonal) continue;
      const number = base + cell * minorStride;
      const h = heightsM[number] ?? 0;
      if (!(h > lowestGroundM)) continue;
      const aside = cell - middle;
      const km = Math.sqrt(d * (d + 2 * aside * alongKm) + aside * aside * asideKm * asideKm);
      const clear = step === 0 ? cellAntennaM : h + cellAntennaM - stationM - perKm2 * km * km - most * km;
      if (inSight && clear >= 0) inSight[number] = 255;
      if (clearanceM) clearanceM[number] = clear;
    }

    const seen = (h0 + part * (h1 - h0) - stationM) / d - perKm2 * d;
    if (seen > most) most = seen;
  }
  steepest[level] = most;
  return step === toStep;
}
