/**
 * The ground under the middle of a bundle of rays, sample by sample outwards from the station, and what a cell behind so many samples needs
 * to know of them without looking at each. Kept in preallocated arrays: sample 0 is the station, and all sums and maxima are those up to
 * and with a sample, so that a bundle that parts in two leaves both its sides what lies before.
 */
import type { ElevationGrid } from './grid.ts';
import type { Bundle } from './ray-bundles.ts';
import { type RayFrame, rayOf } from './rays.ts';

export type SweptGrid = Pick<ElevationGrid, 'columns' | 'rows' | 'heightsM'>;

export interface GroundAhead {
  /** Distance from the station, km, and ground, m. */
  readonly km: Float64Array;
  readonly groundM: Float64Array;
  /** Slope at which the station sees the sample over the curved earth, m/km; the steepest so far; the same over a flat earth. */
  readonly sight: Float64Array;
  readonly steepest: Float64Array;
  readonly steepestFlat: Float64Array;
  /** Steepest sight of each sixteen samples. */
  readonly blockSight: Float64Array;
  /** Sums of the smooth-surface fit: eqs (85) and (86) of Recommendation ITU-R P.1812-8. */
  readonly sum: Float64Array;
  readonly moment: Float64Array;
}

export const blockBits = 4;

/** @param room the most samples of any ray, and one for the station */
export function groundAhead(room: number): GroundAhead {
  const samples = () => new Float64Array(room);
  return {
    km: samples(),
    groundM: samples(),
    sight: samples(),
    steepest: samples().fill(Number.NEGATIVE_INFINITY),
    steepestFlat: samples().fill(Number.NEGATIVE_INFINITY),
    blockSight: new Float64Array((room >> blockBits) + 2),
    sum: samples(),
    moment: samples(),
  };
}

/** The cells of one bundle, each behind the samples before `at`. */
export interface CellBatch {
  count: number;
  /** Number in the grid, the sample it stands beside, its own distance, km, and ground, m. */
  readonly cell: Int32Array;
  readonly at: Int32Array;
  readonly km: Float64Array;
  readonly groundM: Float64Array;
}

export function cellBatch(room: number): CellBatch {
  return {
    count: 0,
    cell: new Int32Array(room),
    at: new Int32Array(room),
    km: new Float64Array(room),
    groundM: new Float64Array(room),
  };
}

/** Lower than any ground: voids of either kind of grid. */
export const lowestGroundM = -1000;

/**
 * Fills distance and ground of the samples under the middle of a bundle.
 *
 * @returns the sample after the last; that of `toStep` unless a void, the edge of the grid or the range comes before
 */
export function crossGround(
  grid: SweptGrid,
  frame: RayFrame,
  { quadrant, fromStep, toStep, lowSlope, highSlope }: Bundle,
  { km, groundM }: GroundAhead,
): number {
  const { isAlongColumns, sign, lead } = quadrant;
  const { columns, heightsM } = grid;
  const station = isAlongColumns ? frame.row : frame.column;
  const last = (isAlongColumns ? grid.rows : columns) - 1;
  const majorStride = isAlongColumns ? sign : sign * columns;
  const minorStride = isAlongColumns ? columns : 1;
  const rangeKm = frame.rangeM / 1000;
  const { slope, bend, firstKm, secondKm } = rayOf(frame, quadrant, (lowSlope + highSlope) / 2);
  const halfSlope = (highSlope - lowSlope) / 2;
  let base = (quadrant.majorStart + sign * fromStep) * (isAlongColumns ? 1 : columns);
  let step = fromStep;
  for (; step < toStep; step++, base += majorStride) {
    const t = lead + step;
    const d = (firstKm + secondKm * t) * t;
    let minor = station + (slope + bend * t) * t;
    if (minor < 0 || minor > last) {
      // A bundle is followed as long as any of it is in the grid; its edges bend a little otherwise than its middle.
      const beside = halfSlope * t + 0.01;
      if (minor + beside < 0 || minor - beside > last) break;
      minor = minor < 0 ? 0 : last;
    }
    const before = minor | 0;
    const part = minor - before;
    const sample = base + before * minorStride;
    const h0 = heightsM[sample] ?? 0;
    const h1 = part === 0 ? h0 : (heightsM[sample + minorStride] ?? 0);
    // What lies behind a void is unknown.
    if (!(h0 > lowestGroundM && h1 > lowestGroundM) || d > rangeKm) break;
    km[step + 1] = d;
    groundM[step + 1] = h0 + part * (h1 - h0);
  }
  return step + 1;
}

/** Finds the cells that lie in a bundle beside its samples up to, not including, `to`. Neighbouring bundles reckon their common edge alike, so that no cell is left out. */
export function cellsOf(
  grid: SweptGrid,
  frame: RayFrame,
  bundle: Bundle,
  to: number,
  cells: CellBatch,
): void {
  const { quadrant, fromStep } = bundle;
  const { isAlongColumns, sign, lead } = quadrant;
  const { columns, heightsM } = grid;
  const station = isAlongColumns ? frame.row : frame.column;
  const last = (isAlongColumns ? grid.rows : columns) - 1;
  const majorStride = isAlongColumns ? sign : sign * columns;
  const minorStride = isAlongColumns ? columns : 1;
  const lowEdge = rayOf(frame, quadrant, bundle.lowSlope);
  const highEdge = rayOf(frame, quadrant, bundle.highSlope);
  const middle = rayOf(frame, quadrant, (bundle.lowSlope + bundle.highSlope) / 2);
  const { slope: lowSlope, bend: lowBend } = lowEdge;
  const { slope: highSlope, bend: highBend } = highEdge;
  const { slope, bend, firstKm, secondKm, asideKm, alongKm } = middle;
  const { cell: numbers, at, km, groundM } = cells;
  // A cell on a diagonal goes to the quarters of the columns.
  const diagonal = isAlongColumns ? 1e-9 : -1e-9;
  let count = 0;
  let base = (quadrant.majorStart + sign * fromStep) * (isAlongColumns ? 1 : columns);
  for (let step = fromStep; step < to - 1; step++, base += majorStride) {
    const t = lead + step;
    const low = station + (lowSlope + lowBend * t) * t;
    const high = station + (highSlope + highBend * t) * t;
    let cell = low | 0;
    if (cell < low) cell++;
    for (; cell < high; cell++) {
      const across = cell - station;
      if (cell < 0 || cell > last || Math.abs(across) > t + diagonal) continue;
      const number = base + cell * minorStride;
      const h = heightsM[number] ?? 0;
      if (!(h > lowestGroundM)) continue;
      numbers[count] = number;
      at[count] = step + 1;
      const d = (firstKm + secondKm * t) * t;
      const aside = across - (slope + bend * t) * t;
      km[count] = Math.sqrt(d * (d + 2 * aside * alongKm) + aside * aside * asideKm * asideKm);
      groundM[count] = h;
      count++;
    }
  }
  cells.count = count;
}

/** Fills the sights of samples `from` up to, not including, `to`. */
export function seeGround(
  { km, groundM, sight, steepest, steepestFlat, blockSight }: GroundAhead,
  stationM: number,
  perKm2: number,
  from: number,
  to: number,
): void {
  let [most, mostFlat] = [steepest[from - 1] ?? 0, steepestFlat[from - 1] ?? 0];
  let inBlock = Number.NEGATIVE_INFINITY;
  // Of a block begun before the parting, what the other side has added is left out again.
  for (let index = Math.max(1, (from >> blockBits) << blockBits); index < from; index++)
    inBlock = Math.max(inBlock, sight[index] ?? 0);
  for (let index = from; index < to; index++) {
    const d = km[index] ?? 0;
    const flat = ((groundM[index] ?? 0) - stationM) / d;
    const seen = flat - perKm2 * d;
    if (seen > most) most = seen;
    if (flat > mostFlat) mostFlat = flat;
    sight[index] = seen;
    steepest[index] = most;
    steepestFlat[index] = mostFlat;
    if ((index & ((1 << blockBits) - 1)) === 0 || seen > inBlock) inBlock = seen;
    blockSight[index >> blockBits] = inBlock;
  }
}

/** Fills the sums of samples `from` up to, not including, `to`. */
export function sumGround(
  { km, groundM, sum, moment }: GroundAhead,
  stationGroundM: number,
  from: number,
  to: number,
): void {
  let [area, torque, x] = [sum[from - 1] ?? 0, moment[from - 1] ?? 0, km[from - 1] ?? 0];
  let h = from === 1 ? stationGroundM : (groundM[from - 1] ?? 0);
  for (let index = from; index < to; index++) {
    const d = km[index] ?? 0;
    const ground = groundM[index] ?? 0;
    area += (d - x) * (ground + h);
    torque += (d - x) * (ground * (2 * d + x) + h * (d + 2 * x));
    sum[index] = area;
    moment[index] = torque;
    x = d;
    h = ground;
  }
}
