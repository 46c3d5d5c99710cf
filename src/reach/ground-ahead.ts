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
  /** Distance from the station, km. */
  readonly km: Float64Array;
  /** Four figures a sample, side by side since they are wanted together: {@link groundOf}, {@link tiltOf}, {@link sightOf}, {@link slopeOf}. */
  readonly samples: Float64Array;
  /** The sample up to here that the station sees steepest over the curved earth, and over a flat one. */
  readonly steepestAt: Int32Array;
  readonly steepestFlatAt: Int32Array;
  /** Steepest sight of each sixteen samples. */
  readonly blockSight: Float64Array;
  /** Sums of the smooth-surface fit: eqs (85) and (86) of Recommendation ITU-R P.1812-8. */
  readonly sum: Float64Array;
  readonly moment: Float64Array;
}

/** Ground, m. */
export const groundOf = 0;
/** How much higher the ground lies a cell aside, m: the slope across the ray of the two grid samples between which it passes. */
export const tiltOf = 1;
/** Slope at which the station sees the sample over the curved earth, m/km. */
export const sightOf = 2;
/** Slope of the ray on which the sample lies, cells aside for each step. */
export const slopeOf = 3;
export const perSample = 4;

export const blockBits = 4;

/** @param room the most samples of any ray, and one for the station */
export function groundAhead(room: number): GroundAhead {
  const samples = new Float64Array(perSample * room);
  // Nothing is seen before the first sample.
  samples[sightOf] = Number.NEGATIVE_INFINITY;
  return {
    km: new Float64Array(room),
    samples,
    steepestAt: new Int32Array(room),
    steepestFlatAt: new Int32Array(room),
    blockSight: new Float64Array((room >> blockBits) + 2),
    sum: new Float64Array(room),
    moment: new Float64Array(room),
  };
}

/** The cells of one bundle, each behind the samples before `at`. */
export interface CellBatch {
  count: number;
  /** Number in the grid, the sample it stands beside, how many cells aside of it, its own distance, km, and ground, m. */
  readonly cell: Int32Array;
  readonly at: Int32Array;
  readonly aside: Float64Array;
  readonly km: Float64Array;
  readonly groundM: Float64Array;
}

export function cellBatch(room: number): CellBatch {
  return {
    count: 0,
    cell: new Int32Array(room),
    at: new Int32Array(room),
    aside: new Float64Array(room),
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
  { km, samples }: GroundAhead,
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
    // A ray along the last row or column leans on nothing beyond.
    const h1 = before === last ? h0 : (heightsM[sample + minorStride] ?? 0);
    // What lies behind a void is unknown.
    if (!(h0 > lowestGroundM && (h1 > lowestGroundM || part === 0)) || d > rangeKm) break;
    const tilt = h1 > lowestGroundM ? h1 - h0 : 0;
    km[step + 1] = d;
    const place = perSample * (step + 1);
    samples[place + groundOf] = h0 + part * tilt;
    samples[place + tiltOf] = tilt;
    samples[place + slopeOf] = slope;
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
  const { cell: numbers, at, aside: asides, km, groundM } = cells;
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
      asides[count] = aside;
      km[count] = Math.sqrt(d * (d + 2 * aside * alongKm) + aside * aside * asideKm * asideKm);
      groundM[count] = h;
      count++;
    }
  }
  cells.count = count;
}

/** Fills the sights of samples `from` up to, not including, `to`. */
export function seeGround(
  { km, samples, steepestAt, steepestFlatAt, blockSight }: GroundAhead,
  stationM: number,
  perKm2: number,
  from: number,
  to: number,
): void {
  let mostAt = steepestAt[from - 1] ?? 0;
  let flatAt = steepestFlatAt[from - 1] ?? 0;
  let most = samples[perSample * mostAt + sightOf] ?? 0;
  let mostFlat = (samples[perSample * flatAt + sightOf] ?? 0) + perKm2 * (km[flatAt] ?? 0);
  let inBlock = Number.NEGATIVE_INFINITY;
  // Of a block begun before the parting, what the other side has added is left out again.
  for (let index = Math.max(1, (from >> blockBits) << blockBits); index < from; index++)
    inBlock = Math.max(inBlock, samples[perSample * index + sightOf] ?? 0);
  for (let index = from; index < to; index++) {
    const d = km[index] ?? 0;
    const place = perSample * index;
    const flat = ((samples[place + groundOf] ?? 0) - stationM) / d;
    const seen = flat - perKm2 * d;
    if (seen > most) {
      most = seen;
      mostAt = index;
    }
    if (flat > mostFlat) {
      mostFlat = flat;
      flatAt = index;
    }
    samples[place + sightOf] = seen;
    steepestAt[index] = mostAt;
    steepestFlatAt[index] = flatAt;
    if ((index & ((1 << blockBits) - 1)) === 0 || seen > inBlock) inBlock = seen;
    blockSight[index >> blockBits] = inBlock;
  }
}

/** Fills the sums of samples `from` up to, not including, `to`. */
export function sumGround(
  { km, samples, sum, moment }: GroundAhead,
  stationGroundM: number,
  from: number,
  to: number,
): void {
  let [area, torque, x] = [sum[from - 1] ?? 0, moment[from - 1] ?? 0, km[from - 1] ?? 0];
  let h = from === 1 ? stationGroundM : (samples[perSample * (from - 1) + groundOf] ?? 0);
  for (let index = from; index < to; index++) {
    const d = km[index] ?? 0;
    const ground = samples[perSample * index + groundOf] ?? 0;
    area += (d - x) * (ground + h);
    torque += (d - x) * (ground * (2 * d + x) + h * (d + 2 * x));
    sum[index] = area;
    moment[index] = torque;
    x = d;
    h = ground;
  }
}
