/**
 * Loss from a station to every cell of an elevation grid: the delta-Bullington method of {@link ./diffraction.ts} with free space, at about constant
 * time a cell.
 *
 * A ray walks outwards and keeps, of the ground it has crossed: the steepest sight from the station (eq (13)), the upper hull that holds every
 * horizon seen back from a cell (eq (17)), the sums of the smooth-surface fit, and, for cells in sight, the highest sights in blocks, so that
 * the sample that takes most of the Fresnel zone (eq (15)) is found without looking at most of them. Each cell is reckoned from the two
 * rays it lies between, with its own height, and the two losses are weighed by how near the rays pass.
 *
 * Works on a stretch of rays and writes only cells that no other stretch writes, so that the rays may be shared among threads. (Equation
 * numbers are those of Recommendation ITU-R P.1812-8.)
 */
import { bullingtonOfEdgeDb } from './bullington-table.ts';
import { diffractionLoss } from './diffraction.ts';
import { freeSpaceLossDb, wavelengthM } from './free-space.ts';
import type { ElevationGrid } from './grid.ts';
import { placeAmongRays, type Ray, type RayFrame, rayOf } from './rays.ts';
import { type SmoothConstants, smoothConstants, smoothExtraDb } from './smooth-terms.ts';
import type { Polarization } from './spherical-earth.ts';
import { addToHull, farthestAbove, highestSeenBack, type UpperHull, upperHull } from './upper-hull.ts';

export interface SweepSettings {
  readonly frequencyHz: number;
  readonly polarization: Polarization;
  /** Antenna heights above ground, m: the station's, and that of whoever stands in a cell. */
  readonly stationAntennaM: number;
  readonly cellAntennaM: number;
  readonly earthRadiusKm: number;
  /** Each cell from its nearest ray alone: twice as quick, for grids whose cells are small against the relief. */
  readonly isQuick?: boolean;
}

/** What a sweep fills, cell by cell in the order of the grid. Begin with NaN throughout: it stays where no ray comes. */
export interface SweepResult {
  /** Free space and diffraction, dB. Absent where only the line of sight is asked for, which is quicker. */
  readonly lossDb?: Float32Array;
  /** How far the antenna in the cell stands above the line that grazes the ground before it, m. Below 0: what it lacks to be in sight. */
  readonly clearanceM?: Float32Array;
}

export type SweptGrid = Pick<ElevationGrid, 'columns' | 'rows' | 'heightsM'>;

/** Lower than any ground: voids of either kind of grid. */
const lowestGroundM = -1000;
const blockSize = 16;

/** A few steps from the station: ten metres of free space. */
const nearestKm = 0.01;

/** Sweeps the cells that lie beyond rays `fromRay` up to, not including, `toRay`. All of them: 0 to `rayCount(frame)`. */
export function sweepLoss(
  grid: SweptGrid,
  frame: RayFrame,
  settings: SweepSettings,
  result: SweepResult,
  fromRay: number,
  toRay: number,
): void {
  const room = Math.max(grid.columns, grid.rows) + 2;
  const walker: Walker = {
    grid,
    frame,
    settings,
    result,
    lambda: wavelengthM(settings.frequencyHz),
    freeSpaceAtKmDb: freeSpaceLossDb(settings.frequencyHz, 1000),
    smooth: smoothConstants(
      settings.frequencyHz,
      wavelengthM(settings.frequencyHz),
      settings.polarization,
      settings.earthRadiusKm,
    ),
    perKm2: 500 / settings.earthRadiusKm,
    stationM: frame.groundM + settings.stationAntennaM,
    x: new Float64Array(room),
    sight: new Float64Array(room),
    blockSight: new Float64Array(Math.ceil(room / blockSize) + 1),
    curved: upperHull(room),
    flat: upperHull(room),
  };
  if (fromRay === 0) setOwnCell(walker);
  // The ray after the last closes the gap behind it.
  for (let number = fromRay; number <= toRay; number++) {
    const ray = rayOf(frame, number);
    if (ray) walk(walker, ray, number < toRay, number > fromRay);
  }
}

interface Walker {
  readonly grid: SweptGrid;
  readonly frame: RayFrame;
  readonly settings: SweepSettings;
  readonly result: SweepResult;
  readonly lambda: number;
  readonly freeSpaceAtKmDb: number;
  readonly smooth: SmoothConstants;
  /** Fall of the earth, m per km². */
  readonly perKm2: number;
  readonly stationM: number;
  /** Of each sample: distance, km, and the slope at which the station sees it over the curved earth, m/km. */
  readonly x: Float64Array;
  readonly sight: Float64Array;
  /** The highest of each sixteen. */
  readonly blockSight: Float64Array;
  /** Hulls of the ground, with the earth falling away and without. */
  readonly curved: UpperHull;
  readonly flat: UpperHull;
}

function walk(walker: Walker, ray: Ray, isFirst: boolean, isSecond: boolean): void {
  const { grid, frame, settings, result, stationM, perKm2, curved, flat, x, sight, blockSight } = walker;
  const { lossDb, clearanceM } = result;
  const { columns, heightsM } = grid;
  const { half, lead, slope, bend, firstKm, secondKm } = ray;
  const { cellAntennaM } = settings;
  const isQuick = settings.isQuick ?? false;
  const minorCount = ray.isAlongColumns ? grid.rows : columns;
  const majorStride = ray.isAlongColumns ? ray.sign : ray.sign * columns;
  const minorStride = ray.isAlongColumns ? columns : 1;
  const rangeKm = frame.rangeM / 1000;
  // Numbers that change at each step are kept here and handed on: in fields of an object they would be allocated anew each time.
  let steepest = Number.NEGATIVE_INFINITY;
  let steepestFlat = Number.NEGATIVE_INFINITY;
  let sum = 0;
  let moment = 0;
  let lastX = 0;
  let lastH = frame.groundM;
  let base = ray.majorStart * (ray.isAlongColumns ? 1 : columns);
  curved.size = 0;
  flat.size = 0;

  for (let step = 0; step < ray.steps; step++, base += majorStride) {
    const t = lead + step;
    const d = (firstKm + secondKm * t) * t;
    if (d > rangeKm) return;
    const minor = ray.minor + (slope + bend * t) * t;
    if (minor < 0 || minor > minorCount - 1) return;
    const low = Math.floor(minor);
    const part = minor - low;
    const sample = base + low * minorStride;
    const h0 = heightsM[sample] ?? 0;
    const h1 = part === 0 ? h0 : (heightsM[sample + minorStride] ?? 0);
    // What lies behind a void is unknown.
    if (!(h0 > lowestGroundM && h1 > lowestGroundM)) return;
    const groundM = h0 + part * (h1 - h0);

    // Rays are at most a cell apart, so that the cells they are next to stand on either side of here.
    const apart = t / half + 0.01;
    for (let side = 0; side < 2; side++) {
      if (Math.abs(side - part) > apart || low + side >= minorCount) continue;
      const across = low + side - ray.minor;
      // The diagonals go to the quarters of the columns.
      if (ray.isAlongColumns ? Math.abs(across) > t : Math.abs(across) >= t) continue;
      const beyond = placeBeyond(frame, ray, t, across, side - part);
      const isBehind = beyond >= 0;
      if (isQuick) {
        if (beyond >= 0.5 || beyond < -0.5 || !isFirst) continue;
      } else if (beyond >= 1 || beyond <= -1 || !(isBehind ? isFirst : isSecond)) continue;
      const isAlone = isQuick || isBehind;
      const cell = base + (low + side) * minorStride;
      const cellGroundM = heightsM[cell] ?? 0;
      const line = (cellGroundM + cellAntennaM - stationM) / d;
      if (clearanceM) {
        const clear = step === 0 ? cellAntennaM : (line - perKm2 * d - steepest) * d;
        clearanceM[cell] = joined(clearanceM[cell] ?? Number.NaN, clear, isAlone, 1 + beyond);
      }
      if (lossDb) {
        const loss =
          step === 0
            ? nextDoorDb(walker, d, cellGroundM)
            : cellLossDb(
                walker,
                d,
                cellGroundM,
                line,
                step,
                steepest,
                steepestFlat,
                sum,
                moment,
                lastX,
                lastH,
              );
        lossDb[cell] = joined(lossDb[cell] ?? Number.NaN, loss, isAlone, 1 + beyond);
      }
    }

    // The sample joins the ground behind it.
    const curvedM = groundM - perKm2 * d * d;
    const seen = (curvedM - stationM) / d;
    if (seen > steepest) steepest = seen;
    if (!lossDb) continue;
    const seenFlat = (groundM - stationM) / d;
    if (seenFlat > steepestFlat) steepestFlat = seenFlat;
    x[step] = d;
    sight[step] = seen;
    if ((step & 15) === 0 || seen > (blockSight[step >> 4] ?? 0)) blockSight[step >> 4] = seen;
    addToHull(curved, d, curvedM);
    addToHull(flat, d, groundM);
    sum += (d - lastX) * (groundM + lastH);
    moment += (d - lastX) * (groundM * (2 * d + lastX) + lastH * (d + 2 * lastX));
    lastX = d;
    lastH = groundM;
  }
}

/**
 * Where a cell lies among the rays, counted from this one. Beside the ray its bend is the ray's own, near enough; only where that would leave it
 * open which of two rays a cell belongs to is it reckoned for the cell itself, so that neighbouring rays never disagree.
 */
function placeBeyond(frame: RayFrame, ray: Ray, t: number, across: number, aside: number): number {
  const rough = (aside / t) * ray.half;
  const doubled = 2 * rough;
  if (Math.abs(doubled - Math.round(doubled)) > 0.02) return rough;
  return placeAmongRays(frame, ray, t, across) - ray.index;
}

/** The first ray beside a cell sets its value; the second draws it towards its own by the share in which it is nearer. */
function joined(before: number, value: number, isFirst: boolean, share: number): number {
  return isFirst || Number.isNaN(before) ? value : before + share * (value - before);
}

/**
 * Free space and diffraction to an antenna at distance d behind so many samples. `line` is the slope of the straight line to it, m/km; then the
 * highest sights so far with the earth falling away and without, the sums of the smooth-surface fit (eqs (85) and (86)), and the last sample.
 */
function cellLossDb(
  walker: Walker,
  d: number,
  cellGroundM: number,
  line: number,
  samples: number,
  steepest: number,
  steepestFlat: number,
  sum: number,
  moment: number,
  lastX: number,
  lastH: number,
): number {
  const { curved, flat, stationM, frame, perKm2, lambda } = walker;
  const cellM = cellGroundM + walker.settings.cellAntennaM;
  const lineCurved = line - perKm2 * d;

  // Bullington over the actual ground. Beyond the horizon, v² is the product of the angles at the two ends.
  let v: number;
  if (steepest < lineCurved) {
    v = mostTaken(walker, samples, d, lineCurved);
  } else {
    const cellCurvedM = cellM - perKm2 * d * d;
    const horizon = highestSeenBack(curved, d, cellCurvedM);
    const back = ((curved.y[horizon] ?? 0) - cellCurvedM) / (d - (curved.x[horizon] ?? 0));
    v = Math.sqrt(Math.max(0, ((steepest - lineCurved) * (back + lineCurved) * 0.002 * d) / lambda));
  }

  // The smooth surface, lowered where ground stands above the line of sight on a flat earth.
  const stretch = d - lastX;
  const u = sum + stretch * (cellGroundM + lastH);
  const w = moment + stretch * (cellGroundM * (2 * d + lastX) + lastH * (d + 2 * lastX));
  let smoothStartM = (2 * u * d - w) / (d * d);
  let smoothEndM = (w - u * d) / (d * d);
  const fromStart = steepestFlat - line;
  if (fromStart > 0) {
    const horizon = highestSeenBack(flat, d, cellM);
    const fromEnd = ((flat.y[horizon] ?? 0) - cellM) / (d - (flat.x[horizon] ?? 0)) + line;
    const top = farthestAbove(flat, line, horizon);
    const highest = (flat.y[top] ?? 0) - line * (flat.x[top] ?? 0) - stationM;
    smoothStartM -= (highest * fromStart) / (fromStart + fromEnd);
    smoothEndM -= (highest * fromEnd) / (fromStart + fromEnd);
  }
  const firstX = walker.x[0] ?? d;
  return (
    walker.freeSpaceAtKmDb +
    (20 / Math.LN10) * Math.log(d) +
    bullingtonOfEdgeDb(v, d) +
    smoothExtraDb(
      walker.smooth,
      d,
      stationM - Math.min(smoothStartM, frame.groundM),
      cellM - Math.min(smoothEndM, cellGroundM),
      firstX,
      samples > 1 ? (lastX - firstX) / (samples - 1) : firstX,
      samples,
    )
  );
}

/** The cells around the station, with no sample between: reckoned with a point half-way. */
function nextDoorDb({ frame, settings, freeSpaceAtKmDb }: Walker, d: number, groundM: number): number {
  const { lossDb } = diffractionLoss({
    distancesKm: [0, d / 2, d],
    heightsM: [frame.groundM, (frame.groundM + groundM) / 2, groundM],
    startAntennaM: settings.stationAntennaM,
    endAntennaM: settings.cellAntennaM,
    frequencyHz: settings.frequencyHz,
    polarization: settings.polarization,
    earthRadiusKm: settings.earthRadiusKm,
  });
  return lossDb + freeSpaceAtKmDb + 20 * Math.log10(d);
}

/** The cell the station stands in, which no ray crosses. */
function setOwnCell({ grid, frame, settings, result, freeSpaceAtKmDb }: Walker): void {
  const cell = Math.round(frame.row) * grid.columns + Math.round(frame.column);
  if (result.lossDb) result.lossDb[cell] = freeSpaceAtKmDb + 20 * Math.log10(nearestKm);
  if (result.clearanceM) result.clearanceM[cell] = settings.cellAntennaM;
}

/**
 * Eq (15) for a cell in sight: the greatest v of the samples before it. With m the slope at which the station sees a sample and s that of
 * the line, `v² = (s - m)² x / (D - x) · 0.002 D / lambda`; the least of it over a block is at least what its highest slope and
 * first distance give, and samples that clear 0.55 of the zone (v < -0.78) do not matter.
 */
function mostTaken(
  { x, sight, blockSight, lambda }: Walker,
  samples: number,
  d: number,
  line: number,
): number {
  const scale = (0.002 * d) / lambda;
  const clear = (0.78 * 0.78) / scale;
  let least = clear;
  // From the cell backwards: the ground before a low antenna is what mostly counts.
  for (let block = (samples - 1) >> 4; block >= 0; block--) {
    const first = block << 4;
    const gap = line - (blockSight[block] ?? 0);
    const nearX = x[first] ?? 0;
    if (gap * gap * nearX >= least * (d - nearX)) continue;
    const end = Math.min(first + blockSize, samples);
    for (let index = first; index < end; index++) {
      const below = line - (sight[index] ?? 0);
      const here = x[index] ?? 0;
      const taken = below * below * here;
      if (taken < least * (d - here)) least = taken / (d - here);
    }
  }
  return least === clear ? -1 : -Math.sqrt(least * scale);
}
