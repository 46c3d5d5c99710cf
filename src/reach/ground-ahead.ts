/**
 * The ground under the middle of a bundle of rays, sample by sample outwards from the station, and what a cell behind so many samples needs
 * to know of them without looking at each. Kept in preallocated arrays: sample 0 is the station, and all sums and maxima are those up to
 * and with a sample, so that a bundle that parts in two leaves both its sides what lies before.
 */
import type { ElevationGrid } from './grid.ts';
import type { Bundle } from './ray-bundles.ts';
import type { Ray, RayFrame } from './rays.ts';

export type SweptGrid = Pick<ElevationGrid, 'columns' | 'rows' | 'heightsM'>;

export interface GroundAhead {
  /** Distance from the station, km. */
  readonly km: Float64Array;
  /** Ground, m. */
  readonly groundM: Float64Array;
  /** How much higher the ground lies a cell aside, m: the slope across the ray of the two grid samples between which it passes. */
  readonly tiltM: Float64Array;
  /** Slope of the ray on which the sample lies, cells aside for each step. */
  readonly slope: Float64Array;
  /** Slope at which the station sees the sample over the curved earth, m/km. */
  readonly sight: Float64Array;
  /** The sample up to here that the station sees steepest. */
  readonly steepestAt: Int32Array;
  /** Steepest sight of each sixteen samples. */
  readonly blockSight: Float64Array;
  /** Sums of the smooth-surface fit: eqs (85) and (86) of Recommendation ITU-R P.1812-8. */
  readonly sum: Float64Array;
  readonly moment: Float64Array;
}

export const blockBits = 4;

/** @param room the most samples of any ray, and one for the station */
export function groundAhead(room: number): GroundAhead {
  const perSample = () => new Float64Array(room);
  const sight = perSample();
  // Nothing is seen before the first sample.
  sight[0] = Number.NEGATIVE_INFINITY;
  return {
    km: perSample(),
    groundM: perSample(),
    tiltM: perSample(),
    slope: perSample(),
    sight,
    steepestAt: new Int32Array(room),
    blockSight: new Float64Array((room >> blockBits) + 2),
    sum: perSample(),
    moment: perSample(),
  };
}

/** The cells of one bundle, each behind the samples before `at`. */
export interface CellBatch {
  count: number;
  /** Number in the grid, the sample it stands beside, how many cells aside of it, and its ground, m. */
  readonly cell: Int32Array;
  readonly at: Int32Array;
  readonly aside: Float64Array;
  readonly groundM: Float64Array;
  /** Its own distance, km, and the bits of that (IEEE 754 single precision). */
  readonly km: Float32Array;
  readonly kmWords: Int32Array;
}

export function cellBatch(room: number): CellBatch {
  const km = new Float32Array(room);
  return {
    count: 0,
    cell: new Int32Array(room),
    at: new Int32Array(room),
    aside: new Float64Array(room),
    groundM: new Float64Array(room),
    km,
    kmWords: new Int32Array(km.buffer),
  };
}

/** Lower than any ground: voids of either kind of grid. */
export const lowestGroundM = -1000;

/** What the sights and sums of a ray begin from: ground under the station and its antenna, m above sea level, and the fall of the earth, m per km². */
export interface StationTerms {
  readonly stationGroundM: number;
  readonly stationM: number;
  readonly perKm2: number;
}

/**
 * Fills the samples under the middle of a bundle, and all that runs on from one to the next.
 *
 * @returns the sample after the last; that of `toStep` unless a void, the edge of the grid or the range comes before
 */
export function crossGround(
  grid: SweptGrid,
  frame: RayFrame,
  { stationGroundM, stationM, perKm2 }: StationTerms,
  { quadrant, fromStep, toStep, lowSlope, highSlope }: Bundle,
  { slope, bend, firstKm, secondKm }: Ray,
  { km, groundM, tiltM, slope: slopes, sight, steepestAt, blockSight, sum, moment }: GroundAhead,
): number {
  const { lead, station, last, majorStride, minorStride, firstNumber } = quadrant;
  const { heightsM } = grid;
  const rangeKm = frame.rangeM / 1000;
  const halfSlope = (highSlope - lowSlope) / 2;
  const lowestM = lowestGroundM;
  const bits = blockBits;
  const withinBlock = (1 << bits) - 1;
  let mostAt = steepestAt[fromStep] ?? 0;
  let most = sight[mostAt] ?? 0;
  let inBlock = Number.NEGATIVE_INFINITY;
  // Of a block begun before the parting, what the other side has added is left out again.
  for (let index = ((fromStep + 1) >> bits) << bits; index <= fromStep; index++) {
    const seen = sight[index] ?? 0;
    if (seen > inBlock) inBlock = seen;
  }
  let area = sum[fromStep] ?? 0;
  let torque = moment[fromStep] ?? 0;
  let x = km[fromStep] ?? 0;
  let h = fromStep === 0 ? stationGroundM : (groundM[fromStep] ?? 0);
  let base = firstNumber + Math.imul(fromStep, majorStride);
  let step = fromStep;
  for (; step < toStep; step++, base += majorStride) {
    const t = lead + step;
    const d = (firstKm + secondKm * t) * t;
    const across = station + (slope + bend * t) * t;
    // A bundle is followed as long as any of it is in the grid; its edges bend a little otherwise than its middle.
    const beside = halfSlope * t + 0.01;
    if (across < -beside || across - beside > last) break;
    const minor = Math.min(last, Math.max(0, across));
    const before = minor | 0;
    const part = minor - before;
    const place = base + before * minorStride;
    const h0 = heightsM[place] ?? 0;
    // A ray along the last row or column leans on nothing beyond.
    const h1 = before === last ? h0 : (heightsM[place + minorStride] ?? 0);
    // What lies behind a void is unknown.
    if (!(h0 > lowestM && (h1 > lowestM || part === 0)) || d > rangeKm) break;
    const tilt = h1 > lowestM ? h1 - h0 : 0;
    const ground = h0 + part * tilt;
    const index = step + 1;
    km[index] = d;
    groundM[index] = ground;
    tiltM[index] = tilt;
    slopes[index] = slope;
    const seen = (ground - stationM) / d - perKm2 * d;
    if (seen > most) {
      most = seen;
      mostAt = index;
    }
    sight[index] = seen;
    steepestAt[index] = mostAt;
    if ((index & withinBlock) === 0 || seen > inBlock) inBlock = seen;
    blockSight[index >> bits] = inBlock;
    area += (d - x) * (ground + h);
    torque += (d - x) * (ground * (2 * d + x) + h * (d + 2 * x));
    sum[index] = area;
    moment[index] = torque;
    x = d;
    h = ground;
  }
  return step + 1;
}

/** The middle of a bundle and its two edges. */
export interface BundleRays {
  readonly low: Ray;
  readonly middle: Ray;
  readonly high: Ray;
}

/** Finds the cells that lie in a bundle beside its samples up to, not including, `to`. Neighbouring bundles reckon their common edge alike, so that no cell is left out. */
export function cellsOf(
  grid: SweptGrid,
  { quadrant, fromStep }: Bundle,
  { low, middle, high }: BundleRays,
  to: number,
  cells: CellBatch,
): void {
  const { isAlongColumns, lead, station, last, majorStride, minorStride, firstNumber } = quadrant;
  const { heightsM } = grid;
  const { slope: lowSlope, bend: lowBend } = low;
  const { slope: highSlope, bend: highBend } = high;
  const { slope, bend, firstKm, secondKm, asideKm, alongKm } = middle;
  const { cell: numbers, at, aside: asides, km, groundM } = cells;
  const lowestM = lowestGroundM;
  // A cell on a diagonal goes to the quarters of the columns.
  const diagonal = isAlongColumns ? 1e-9 : -1e-9;
  let count = 0;
  let base = firstNumber + Math.imul(fromStep, majorStride);
  for (let step = fromStep; step < to - 1; step++, base += majorStride) {
    const t = lead + step;
    const from = station + (lowSlope + lowBend * t) * t;
    const end = station + (highSlope + highBend * t) * t;
    let cell = from | 0;
    if (cell < from) cell++;
    for (; cell < end; cell++) {
      const across = cell - station;
      if (cell < 0 || cell > last || Math.abs(across) > t + diagonal) continue;
      const number = base + cell * minorStride;
      const h = heightsM[number] ?? 0;
      if (!(h > lowestM)) continue;
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
