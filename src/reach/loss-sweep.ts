/**
 * Loss from a station to every cell of an elevation grid: the delta-Bullington method of {@link ./diffraction.ts} with free space, at about constant
 * time a cell.
 *
 * Bundles of rays are followed outwards. What a cell needs of the ground before it is kept running: the steepest sight from the station, the upper
 * hull that holds every horizon seen back from a cell, the sums of the smooth-surface fit, and, for cells in sight, the highest sights in
 * blocks, so that the sample that takes most of the Fresnel zone is found without looking at most of them. Each cell is reckoned once,
 * with its own height and distance, behind the ground under the middle of its bundle, carried across to the cell where that counts.
 *
 * Each step goes over all cells of a bundle before the next, in arrays kept from bundle to bundle: no object is made and no number
 * leaves its register for one. A share of the rays writes only cells that no other share writes, so that they may go to several threads.
 */
import { bullingtonOfEdgeDb } from './bullington-table.ts';
import { decibels20 } from './decibel-table.ts';
import { diffractionLoss } from './diffraction.ts';
import { clearedEdges } from './edge-sweep.ts';
import { type AboveBatch, aboveBatch, type ExcessTable, excessTable, fillExcess } from './excess-table.ts';
import { freeSpaceLossDb, wavelengthM } from './free-space.ts';
import {
  type CellBatch,
  cellBatch,
  cellsOf,
  crossGround,
  type GroundAhead,
  groundAhead,
  type SweptGrid,
} from './ground-ahead.ts';
import { fillHorizons } from './horizon-sweep.ts';
import { type Bundle, levelCount, visitBundles } from './ray-bundles.ts';
import { type Ray, type RayFrame, rayOf, type Stretches } from './rays.ts';
import { smoothEarth } from './smooth-terms.ts';
import type { Polarization } from './spherical-earth.ts';
import { copyHull, type UpperHull, upperHull } from './upper-hull.ts';
import { addWoodland, hasWoodland } from './woodland-sweep.ts';

export interface SweepSettings {
  readonly frequencyHz: number;
  readonly polarization: Polarization;
  /** Antenna heights above ground, m: the station's, and that of whoever stands in a cell. */
  readonly stationAntennaM: number;
  readonly cellAntennaM: number;
  readonly earthRadiusKm: number;
  /** Trees among which the station stands, and whoever stands in a cell, m high; absent in the open. */
  readonly stationTreesM?: number;
  readonly cellTreesM?: number;
}

/** A few steps from the station: ten metres of free space. */
const nearestKm = 0.01;

/**
 * Fills free space, diffraction and woodland together, dB, cell by cell in the order of the grid. Begin with NaN throughout: it stays where no ray comes.
 *
 * Sweeps the cells of the rays in each stretch, without its last number. All of them: 0 to `rayCount(frame)`.
 */
export function sweepLoss(
  grid: SweptGrid,
  frame: RayFrame,
  settings: SweepSettings,
  lossDb: Float32Array,
  stretches: Stretches,
): void {
  const sweep = newSweep(grid, frame, settings, lossDb);
  for (const [fromRay, toRay] of stretches) {
    if (fromRay === 0) setOwnCell(sweep);
    visitBundles(frame, fromRay, toRay, (bundle) => walk(sweep, bundle));
  }
}

interface Sweep {
  readonly grid: SweptGrid;
  readonly frame: RayFrame;
  readonly settings: SweepSettings;
  readonly lossDb: Float32Array;
  readonly stationM: number;
  readonly stationGroundM: number;
  readonly cellAntennaM: number;
  readonly wavelengthM: number;
  readonly isWooded: boolean;
  readonly freeSpaceAtKmDb: number;
  readonly perKm2: number;
  readonly excess: ExcessTable;
  readonly ahead: GroundAhead;
  readonly cells: CellBatch;
  /** Of each cell of a bundle. */
  readonly v: Float64Array;
  readonly above: AboveBatch;
  readonly excessDb: Float64Array;
  readonly leaving: Float64Array;
  readonly arriving: Float64Array;
  /** One for each level of bundles. */
  readonly hulls: readonly UpperHull[];
}

function newSweep(grid: SweptGrid, frame: RayFrame, settings: SweepSettings, lossDb: Float32Array): Sweep {
  const room = Math.max(grid.columns, grid.rows) + 2;
  const lambda = wavelengthM(settings.frequencyHz);
  // Where a bundle is widest it may hold two cells at a step.
  const cellRoom = 2 * room;
  const perCell = () => new Float64Array(cellRoom);
  return {
    grid,
    frame,
    settings,
    lossDb,
    stationM: frame.groundM + settings.stationAntennaM,
    stationGroundM: frame.groundM,
    cellAntennaM: settings.cellAntennaM,
    wavelengthM: lambda,
    isWooded: hasWoodland(settings),
    freeSpaceAtKmDb: freeSpaceLossDb(settings.frequencyHz, 1000),
    perKm2: 500 / settings.earthRadiusKm,
    excess: excessTable(
      smoothEarth(settings.frequencyHz, lambda, settings.polarization, settings.earthRadiusKm),
      settings.stationAntennaM,
      settings.cellAntennaM,
      nearestKm,
      (1.1 * Math.hypot(grid.columns * frame.eastM, grid.rows * frame.northM)) / 1000,
      Math.max(frame.eastM, frame.northM) / 1000,
    ),
    ahead: groundAhead(room),
    cells: cellBatch(cellRoom),
    v: perCell(),
    above: aboveBatch(cellRoom),
    excessDb: perCell(),
    leaving: perCell(),
    arriving: perCell(),
    hulls: Array.from({ length: levelCount(frame) + 1 }, () => upperHull(room)),
  };
}

/** @returns whether the ground goes on beyond */
function walk(sweep: Sweep, bundle: Bundle): boolean {
  const { grid, frame, ahead, cells } = sweep;
  const { quadrant, lowSlope, highSlope } = bundle;
  const middle = rayOf(quadrant, (lowSlope + highSlope) / 2);
  const from = bundle.fromStep + 1;
  const to = crossGround(grid, frame, sweep, bundle, middle, ahead);
  if (bundle.isOwn) {
    const low = rayOf(quadrant, lowSlope);
    const high = rayOf(quadrant, highSlope);
    cellsOf(grid, bundle, { low, middle, high }, to, cells);
  } else cells.count = 0;
  setLosses(sweep, bundle, middle, from, to);
  return to === bundle.toStep + 1;
}

function setLosses(sweep: Sweep, bundle: Bundle, { slope, firstKm }: Ray, from: number, to: number): void {
  const { ahead, cells, v, above, excessDb, freeSpaceAtKmDb, lossDb } = sweep;
  const steps = { slope, firstKm, lead: bundle.quadrant.lead };
  fillHorizons(sweep, steps, ahead, cells, grown(sweep.hulls, bundle.level, from), sweep, from, to);
  clearedEdges(sweep, steps, ahead, cells, v);
  fillExcess(sweep.excess, cells, above, ahead.km, excessDb);
  for (let index = 0; index < cells.count; index++) {
    const d = cells.km[index] ?? 0;
    const edge = freeSpaceAtKmDb + decibels20(d) + bullingtonOfEdgeDb(v[index] ?? 0, d);
    lossDb[cells.cell[index] ?? 0] = edge + (excessDb[index] ?? 0);
  }
  if (from === 1) setNextDoor(sweep);
  if (sweep.isWooded) addWoodland(sweep.settings, cells, sweep.leaving, sweep.arriving, lossDb);
}

/** The hull of a level, as it was left where the bundle parted from its twin. */
function grown(hulls: readonly UpperHull[], level: number, from: number): UpperHull {
  const [own, parent] = [hulls[level], hulls[level + 1]];
  if (!own || !parent) throw new Error(`no hull for level ${level}`);
  if (from === 1) own.size = 0;
  else copyHull(own, parent);
  return own;
}

/** The cells around the station, with no sample between: reckoned with a point half-way. */
function setNextDoor({ frame, settings, freeSpaceAtKmDb, cells, lossDb }: Sweep): void {
  for (let index = 0; index < cells.count && cells.at[index] === 1; index++) {
    const d = cells.km[index] ?? 0;
    const groundM = cells.groundM[index] ?? 0;
    const diffraction = diffractionLoss({
      distancesKm: [0, d / 2, d],
      heightsM: [frame.groundM, (frame.groundM + groundM) / 2, groundM],
      startAntennaM: settings.stationAntennaM,
      endAntennaM: settings.cellAntennaM,
      frequencyHz: settings.frequencyHz,
      polarization: settings.polarization,
      earthRadiusKm: settings.earthRadiusKm,
    });
    lossDb[cells.cell[index] ?? 0] = diffraction.lossDb + freeSpaceAtKmDb + 20 * Math.log10(d);
  }
}

/** The cell the station stands in, which no ray crosses. */
function setOwnCell({ grid, frame, lossDb, freeSpaceAtKmDb }: Sweep): void {
  const cell = Math.round(frame.row) * grid.columns + Math.round(frame.column);
  lossDb[cell] = freeSpaceAtKmDb + 20 * Math.log10(nearestKm);
}
