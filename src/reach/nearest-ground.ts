/**
 * Where to walk so that a path closes: the cells around a place from which a station is reached with the chance wanted, quickest to walk to
 * first.
 *
 * A prediction with its spread, over ground known at the steps of the grid: a spot is worth walking to and trying, no more.
 */
import { cropGrid } from './crop-grid.ts';
import { medianEarthRadiusKm } from './earth.ts';
import { type ElevationGrid, positionOf, stepsM } from './grid.ts';
import { leastTimeWalks, type Walks, wayTo } from './least-time-walk.ts';
import { sweepLoss } from './loss-sweep.ts';
import type { Position } from './position.ts';
import { rayCount, rayFrame } from './rays.ts';
import type { Polarization } from './spherical-earth.ts';
import { chanceOf } from './verdict.ts';

export interface GroundSearch {
  readonly grid: ElevationGrid;
  /** Where people are. */
  readonly from: Position;
  /** Whom they want to reach. */
  readonly station: { readonly position: Position; readonly antennaM: number; readonly elevationM?: number };
  /** Height of the antenna they carry, m. */
  readonly cellAntennaM: number;
  readonly frequencyHz: number;
  readonly polarization?: Polarization;
  /** What free space and diffraction may take before the margin is gone, dB: of a link budget, `marginDb` plus those two. */
  readonly greatestLossDb: number;
  /** One standard deviation of the prediction, dB. */
  readonly spreadDb: number;
  /** Chance wanted, 0 … 1. */
  readonly wanted: number;
  /** How long people are willing to walk, s. */
  readonly mostWalkS: number;
  readonly isOnPath?: boolean;
  /** How many spots to give. Default 5. */
  readonly count?: number;
  /** Spots nearer to each other than this count as one, m. Default 300. */
  readonly apartM?: number;
}

export interface Spot {
  readonly position: Position;
  readonly groundM: number;
  readonly walkS: number;
  /** Metres climbed in all on the way. */
  readonly climbM: number;
  /** Length of the way on the map, m. */
  readonly walkM: number;
  readonly way: readonly Position[];
  readonly lossDb: number;
  readonly marginDb: number;
  readonly probability: number;
}

export type GroundAnswer =
  | {
      readonly ok: true;
      /** The place itself, if nobody need walk. */
      readonly here: Spot;
      /** Quickest first; empty if nothing in walking time will do. */
      readonly spots: readonly Spot[];
      /** The best that can be walked to in the time, whether or not it will do. */
      readonly best: Spot;
    }
  | { readonly ok: false; readonly reason: string };

/** Nobody walks faster than this, m/s (Tobler's best): how far the area can reach. */
export const fastestMs = 6 / 3.6;

/** How far outside of what is walked and looked over the grid is kept, m. */
export const marginM = 500;

export function nearestGround(search: GroundSearch): GroundAnswer {
  const { from, station } = search;
  const reachM = search.mostWalkS * fastestMs;
  const walkable = cropGrid(search.grid, [from], reachM);
  const walks = walkable && leastTimeWalks(walkable, from, search.mostWalkS, search.isOnPath ?? false);
  if (!walkable || !walks)
    return { ok: false, reason: `${search.grid.name} has no ground at the place to walk from.` };
  const corners = walkedCorners(walkable, walks);
  const area = cropGrid(search.grid, [...corners, station.position], marginM);
  const frame =
    area &&
    rayFrame(
      area,
      station.position,
      station.elevationM === undefined ? {} : { elevationM: station.elevationM },
    );
  if (!area || !frame)
    return { ok: false, reason: `${search.grid.name} has no ground at the station to be reached.` };
  const lossDb = new Float32Array(area.rows * area.columns).fill(Number.NaN);
  sweepLoss(
    area,
    frame,
    {
      frequencyHz: search.frequencyHz,
      polarization: search.polarization ?? 'vertical',
      stationAntennaM: station.antennaM,
      cellAntennaM: search.cellAntennaM,
      earthRadiusKm: medianEarthRadiusKm,
    },
    lossDb,
    [[0, rayCount(frame)]],
  );
  const lossAt = matchingCells(walkable, area, lossDb);
  const spotAt = (cell: number) => spotOf(search, walkable, walks, cell, lossAt(cell));
  if (Number.isNaN(lossAt(walks.startCell))) {
    return { ok: false, reason: 'Between the place and the station lies ground without elevation data.' };
  }
  return {
    ok: true,
    here: spotAt(walks.startCell),
    spots: chosenCells(search, walkable, walks, lossAt).map(spotAt),
    best: spotAt(bestCell(walks, lossAt)),
  };
}

/** Cells that will do, quickest first, each at least so far from those before it. */
function chosenCells(
  search: GroundSearch,
  grid: ElevationGrid,
  walks: Walks,
  lossAt: (cell: number) => number,
): readonly number[] {
  const goodCells: number[] = [];
  for (const [cell, timeS] of walks.timeS.entries()) {
    if (
      !Number.isNaN(timeS) &&
      chanceOf(search.greatestLossDb - lossAt(cell), search.spreadDb) >= search.wanted
    )
      goodCells.push(cell);
  }
  goodCells.sort((a, b) => (walks.timeS[a] ?? 0) - (walks.timeS[b] ?? 0) || a - b);
  const { northM, eastM } = stepsM(grid, search.from.latitudeDeg);
  const apartM = search.apartM ?? 300;
  const chosen: number[] = [];
  for (const cell of goodCells) {
    if (chosen.length >= (search.count ?? 5)) break;
    const isApart = chosen.every((other) => {
      const down = Math.floor(cell / grid.columns) - Math.floor(other / grid.columns);
      const right = (cell % grid.columns) - (other % grid.columns);
      return Math.hypot(down * northM, right * eastM) >= apartM;
    });
    if (isApart) chosen.push(cell);
  }
  return chosen;
}

function bestCell(walks: Walks, lossAt: (cell: number) => number): number {
  let best = walks.startCell;
  for (const [cell, timeS] of walks.timeS.entries()) {
    if (!Number.isNaN(timeS) && lossAt(cell) < lossAt(best)) best = cell;
  }
  return best;
}

function spotOf(search: GroundSearch, grid: ElevationGrid, walks: Walks, cell: number, lossDb: number): Spot {
  const [row, column] = [Math.floor(cell / grid.columns), cell % grid.columns];
  const way = wayTo(grid, walks, cell);
  const { northM, eastM } = stepsM(grid, search.from.latitudeDeg);
  let walkM = 0;
  for (
    let at = cell, before = walks.before[cell] ?? -1;
    before >= 0;
    at = before, before = walks.before[at] ?? -1
  ) {
    const down = Math.floor(at / grid.columns) - Math.floor(before / grid.columns);
    walkM += Math.hypot(down * northM, ((at % grid.columns) - (before % grid.columns)) * eastM);
  }
  const marginDb = search.greatestLossDb - lossDb;
  return {
    position: positionOf(grid, row, column),
    groundM: grid.heightsM[cell] ?? Number.NaN,
    walkS: walks.timeS[cell] ?? Number.NaN,
    climbM: walks.climbM[cell] ?? 0,
    walkM,
    way,
    lossDb,
    marginDb,
    probability: chanceOf(marginDb, search.spreadDb),
  };
}

/** Corners of the box around all that was reached. */
function walkedCorners(grid: ElevationGrid, { timeS, startCell }: Walks): readonly Position[] {
  let [top, left] = [Math.floor(startCell / grid.columns), startCell % grid.columns];
  let [bottom, right] = [top, left];
  for (const [cell, time] of timeS.entries()) {
    if (Number.isNaN(time)) continue;
    const [row, column] = [Math.floor(cell / grid.columns), cell % grid.columns];
    top = Math.min(top, row);
    bottom = Math.max(bottom, row);
    left = Math.min(left, column);
    right = Math.max(right, column);
  }
  return [positionOf(grid, top, left), positionOf(grid, bottom, right)];
}

/** Loss at a cell of one piece of a grid, from a raster over another piece of the same grid. */
function matchingCells(
  grid: ElevationGrid,
  area: ElevationGrid,
  lossDb: Float32Array,
): (cell: number) => number {
  const down = Math.round((area.northDeg - grid.northDeg) / grid.stepNorthDeg);
  const right = Math.round((grid.westDeg - area.westDeg) / grid.stepEastDeg);
  return (cell) => {
    const row = Math.floor(cell / grid.columns) + down;
    const column = (cell % grid.columns) + right;
    if (row < 0 || column < 0 || row >= area.rows || column >= area.columns) return Number.NaN;
    return lossDb[row * area.columns + column] ?? Number.NaN;
  };
}
