/**
 * What is in sight from a station, cell by cell: the line of sight alone, far quicker than the loss, and for every cell what testing the straight line
 * to it would say: the ground at each crossing of the rows or columns between (whichever it is steeper to), straight between the two samples there.
 *
 * Bundles of rays a few cells wide are followed outwards. At each step the highest and the lowest sample that any ray of the bundle can lean
 * on give bounds of how steep its horizon is: a cell above the upper bound is in sight, one below the lower is not. Only cells between have their own line
 * tested, and only where the highest sample of a step stands above it.
 */
import { lowestGroundM, type SweptGrid } from './ground-ahead.ts';
import { type Bundle, visitBundles } from './ray-bundles.ts';
import { type Quadrant, type Ray, type RayFrame, rayOf, type Stretches } from './rays.ts';

export interface SightSettings {
  /** Antenna heights above ground, m: the station's, and that of whoever stands in a cell. */
  readonly stationAntennaM: number;
  readonly cellAntennaM: number;
  readonly earthRadiusKm: number;
}

/** The bundles with which a sweep is quickest; what it finds does not depend on them. */
export const sightRaysPerCell = 1 / 8;

/**
 * Marks what is in sight with 255, cell by cell in the order of the grid. Begin with 0, which also stays where voids lie between and beyond the range.
 *
 * Sweeps the cells of the rays in each stretch, without its last number. All of them: 0 to `rayCount(frame)`.
 */
export function sweepSight(
  grid: SweptGrid,
  frame: RayFrame,
  settings: SightSettings,
  inSight: Uint8Array,
  stretches: Stretches,
): void {
  const room = Math.max(grid.columns, grid.rows) + 2;
  const sweep: Sweep = {
    grid,
    inSight,
    stationM: frame.groundM + settings.stationAntennaM,
    cellM: settings.cellAntennaM,
    perKm2: 500 / settings.earthRadiusKm,
    rangeKm: frame.rangeM / 1000,
    high: new Float64Array(room),
    blockHigh: new Float64Array((room >> blockBits) + 2),
    blockSoFar: new Float64Array(room).fill(Number.NEGATIVE_INFINITY),
    most: new Float64Array(room).fill(Number.NEGATIVE_INFINITY),
    mostAt: new Int32Array(room),
    least: new Float64Array(room).fill(Number.NEGATIVE_INFINITY),
  };
  for (const [fromRay, toRay] of stretches) {
    if (fromRay === 0) inSight[Math.round(frame.row) * grid.columns + Math.round(frame.column)] = 255;
    visitBundles(frame, fromRay, toRay, (bundle) => walk(sweep, bundle));
  }
}

interface Sweep {
  readonly grid: SweptGrid;
  readonly inSight: Uint8Array;
  readonly stationM: number;
  readonly cellM: number;
  /** Fall of the earth, m per km². */
  readonly perKm2: number;
  readonly rangeKm: number;
  /** Of each step: the steepest that its highest sample can be seen, m for each step of distance; and of each sixteen steps. */
  readonly high: Float64Array;
  readonly blockHigh: Float64Array;
  /** The latter as it was before each step, which is what a bundle that parts in the middle of a block begins with. */
  readonly blockSoFar: Float64Array;
  /** Before each step: bounds of the slope of the horizon, and which step makes the upper one. */
  readonly most: Float64Array;
  readonly mostAt: Int32Array;
  readonly least: Float64Array;
}

const blockBits = 4;

/** Cells nearer than that to a bound are tested, m: far more than rounding, and the little by which lines in a bundle bend otherwise than its edges. */
const slackM = 0.01;

/** As high as the ground behind a void may be. */
const unknownM = 1e6;

/** @returns whether the ground goes on beyond */
function walk(sweep: Sweep, bundle: Bundle): boolean {
  const {
    grid,
    inSight,
    stationM,
    cellM,
    perKm2,
    rangeKm,
    high,
    blockHigh,
    blockSoFar,
    most,
    mostAt,
    least,
  } = sweep;
  const { quadrant, fromStep, toStep, lowSlope, highSlope, isOwn } = bundle;
  const { isAlongColumns, lead, station, last, majorStride, minorStride, firstNumber } = quadrant;
  const { heightsM } = grid;
  const lowestPossibleM = lowestGroundM;
  const unknown = unknownM;
  const slack = slackM;
  const bits = blockBits;
  const withinBlock = (1 << bits) - 1;
  const low = rayOf(quadrant, lowSlope);
  const top = rayOf(quadrant, highSlope);
  const lowGrowth = low.secondKm / low.firstKm;
  const topGrowth = top.secondKm / top.firstKm;
  // A cell on a diagonal goes to the quarters of the columns.
  const diagonal = isAlongColumns ? 1e-9 : -1e-9;
  let steepest = most[fromStep] ?? 0;
  let steepestAt = mostAt[fromStep] ?? 0;
  let lowest = least[fromStep] ?? 0;
  let inBlock = blockSoFar[fromStep] ?? 0;
  blockHigh[fromStep >> bits] = inBlock;
  let base = firstNumber + Math.imul(fromStep, majorStride);
  let step = fromStep;
  for (; step < toStep; step++, base += majorStride) {
    const t = lead + step;
    const lowAt = station + (low.slope + low.bend * t) * t;
    const topAt = station + (top.slope + top.bend * t) * t;
    if (topAt < -1 || lowAt > last + 1) break;
    // Distance in steps along the ray: the same on the line to a cell, whatever bundle holds it.
    const lowSteps = (1 + lowGrowth * t) * t;
    const topSteps = (1 + topGrowth * t) * t;
    const lowKm = lowSteps * low.firstKm;
    const topKm = topSteps * top.firstKm;
    const nearKm = Math.min(lowKm, topKm);
    const farKm = Math.max(lowKm, topKm);
    if (nearKm > rangeKm) break;
    const fewSteps = Math.min(lowSteps, topSteps);
    const manySteps = Math.max(lowSteps, topSteps);
    const fallLeastM = perKm2 * nearKm * nearKm;
    const fallMostM = perKm2 * farKm * farKm;
    const surelyM = steepest * (steepest > 0 ? manySteps : fewSteps) + stationM - cellM + fallMostM + slack;
    const perhapsM = lowest * (lowest > 0 ? fewSteps : manySteps) + stationM - cellM + fallLeastM - slack;
    const first = lowAt > 0 ? lowAt | 0 : 0;
    let end = topAt | 0;
    if (end < topAt) end++;
    if (end > last) end = last;
    // The cells of this bundle begin on its lower edge, and end before its upper one.
    const ownFrom = isOwn ? Math.max(lowAt, station - t - diagonal) : Number.POSITIVE_INFINITY;
    const ownTo = Math.min(topAt, station + t + diagonal + 1e-12);
    let highestM = -unknown;
    let lowestM = unknown;
    for (let cell = first, number = base + first * minorStride; cell <= end; cell++, number += minorStride) {
      const h = heightsM[number] ?? 0;
      if (!(h > lowestPossibleM)) {
        highestM = unknown;
        continue;
      }
      if (h > highestM) highestM = h;
      if (h < lowestM) lowestM = h;
      if (h < perhapsM || cell < ownFrom || cell >= ownTo) continue;
      const isSure = h >= surelyM && farKm <= rangeKm;
      if (isSure || isSeen(sweep, bundle, low, top, step, cell, h)) inSight[number] = 255;
    }
    const mostM = highestM - stationM - fallLeastM;
    const seenHigh = mostM / (mostM > 0 ? fewSteps : manySteps);
    const leastM = (lowestM === unknown ? -unknown : lowestM) - stationM - fallMostM;
    const seenLow = leastM / (leastM > 0 ? manySteps : fewSteps);
    high[step] = seenHigh;
    if ((step & withinBlock) === 0 || seenHigh > inBlock) inBlock = seenHigh;
    blockHigh[step >> bits] = inBlock;
    blockSoFar[step + 1] = inBlock;
    if (seenHigh > steepest) {
      steepest = seenHigh;
      steepestAt = step;
    }
    if (seenLow > lowest) lowest = seenLow;
    most[step + 1] = steepest;
    mostAt[step + 1] = steepestAt;
    least[step + 1] = lowest;
  }
  return step === toStep;
}

/** Tests the line to one cell. */
function isSeen(
  sweep: Sweep,
  { quadrant, lowSlope, highSlope }: Bundle,
  low: Ray,
  top: Ray,
  step: number,
  cell: number,
  groundM: number,
): boolean {
  const { stationM, cellM, perKm2, rangeKm, high, blockHigh, most, mostAt } = sweep;
  const bits = blockBits;
  const { lead, station } = quadrant;
  const t = lead + step;
  const lowAt = (low.slope + low.bend * t) * t;
  const topAt = (top.slope + top.bend * t) * t;
  const part = (cell - station - lowAt) / (topAt - lowAt);
  const ray = rayOf(quadrant, lowSlope + part * (highSlope - lowSlope));
  const bend = low.bend + part * (top.bend - low.bend);
  const d = (ray.firstKm + ray.secondKm * t) * t;
  if (d > rangeKm) return false;
  const aboveM = groundM + cellM - stationM;
  const line = aboveM / d - perKm2 * d;
  // First where the horizon most likely is.
  if (step > 0 && hides(sweep, quadrant, ray, bend, line, mostAt[step] ?? 0)) return false;
  const least = ((aboveM - perKm2 * d * d - slackM) * ray.firstKm) / d;
  for (let block = (step - 1) >> bits; block >= 0; block--) {
    const end = Math.min((block + 1) << bits, step);
    // Nothing nearer to the station is high enough.
    if ((most[end] ?? 0) < least) return true;
    if ((blockHigh[block] ?? 0) < least) continue;
    for (let at = block << bits; at < end; at++)
      if ((high[at] ?? 0) >= least && hides(sweep, quadrant, ray, bend, line, at)) return false;
  }
  return true;
}

/** Whether the ground where a line crosses a step stands above it, or nobody knows. */
function hides(
  { grid, stationM, perKm2 }: Sweep,
  { lead, station, last, majorStride, minorStride, firstNumber }: Quadrant,
  { slope, firstKm, secondKm }: Ray,
  bend: number,
  line: number,
  step: number,
): boolean {
  const { heightsM } = grid;
  const t = lead + step;
  const across = station + (slope + bend * t) * t;
  const minor = Math.min(last, Math.max(0, across));
  const before = Math.trunc(minor + 1e-9);
  const share = Math.max(0, minor - before);
  const number = firstNumber + Math.imul(step, majorStride) + before * minorStride;
  const h0 = heightsM[number] ?? 0;
  const h1 = share > 0 ? (heightsM[number + minorStride] ?? 0) : h0;
  if (!(h0 > lowestGroundM && h1 > lowestGroundM)) return true;
  const km = (firstKm + secondKm * t) * t;
  return (h0 + share * (h1 - h0) - stationM) / km - perKm2 * km > line;
}
