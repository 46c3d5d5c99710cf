/**
 * What is in sight from a station, cell by cell: the line of sight alone, far quicker than the loss.
 *
 * Goes outwards row by row. Each cell takes over the line that grazes the ground before it from its two neighbours towards the station, straight
 * between them, carried on by one step: the reference plane of J. Wang, G. J. Robinson and K. White, "Generating viewsheds without using
 * sightlines", Photogrammetric Engineering & Remote Sensing 66 (2000). So every cell is looked at once. Grazing lines are smoothed a
 * little on the way: where the line clears or misses by metres the answer is that of following each ray.
 *
 * The bend of rays in latitude and longitude is that of {@link ./rays.ts}, but for those that begin due east and west on the side of the pole,
 * which are taken along the row.
 */
import { lowestGroundM, type SweptGrid } from './ground-ahead.ts';
import type { RayFrame } from './rays.ts';

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

/** Lower than any line of sight, and finite, so that lines between may be reckoned with it. */
const noGroundM = -1e6;

/** Sweeps the half of a grid north or south of the station; the row of the station with either. */
export function sweepSight(
  grid: SweptGrid,
  frame: RayFrame,
  settings: SightSettings,
  result: SightResult,
  half: 'north' | 'south',
): void {
  const { columns, rows } = grid;
  const down = half === 'south' ? 1 : -1;
  const [startRow, startColumn] = [Math.round(frame.row), Math.round(frame.column)];
  const stationM = frame.groundM + settings.stationAntennaM;
  const fallPerM2 = 1 / (2000 * settings.earthRadiusKm);
  const steps = columnSteps(frame);
  let before = new Float64Array(columns).fill(noGroundM);
  let grazing = new Float64Array(columns).fill(noGroundM);
  for (let row = startRow; row >= 0 && row < rows; row += down) {
    // The nearest row counts as that of the station, so that it leans on no other.
    const away = row === startRow ? 0 : Math.abs(row - frame.row);
    const line: Line = {
      base: row * columns,
      away,
      eastM: frame.eastM * (1 + 0.5 * frame.closingPerM * frame.northM * (row - frame.row)),
      down,
      stationM,
      cellM: settings.cellAntennaM,
      fallPerM2,
    };
    const left = Math.max(0, Math.ceil(frame.column - away));
    const right = Math.min(columns - 1, Math.floor(frame.column + away));
    if (away > 0) acrossRow(grid, frame, line, left, right, before, grazing, result);
    else setOwnCell(line, startColumn, grazing, result);
    alongRow(grid, frame, line, steps, 1, away > 0 ? right + 1 : startColumn + 1, before, grazing, result);
    alongRow(grid, frame, line, steps, -1, away > 0 ? left - 1 : startColumn - 1, before, grazing, result);
    [before, grazing] = [grazing, before];
  }
}

/** A row, and what all its cells are reckoned with. */
interface Line {
  readonly base: number;
  /** Rows from the station, with fractions. */
  readonly away: number;
  /** Metres from column to column, half-way to the station. */
  readonly eastM: number;
  readonly down: 1 | -1;
  readonly stationM: number;
  readonly cellM: number;
  readonly fallPerM2: number;
}

/** Of each column: one over its steps from the station, how much farther it is than the one before, and by how many rows a step due east or west bends there. */
interface ColumnSteps {
  readonly over: Float64Array;
  readonly growth: Float64Array;
  readonly bend: Float64Array;
}

function columnSteps({ columns, column, closingPerM, eastM, northM }: RayFrame): ColumnSteps {
  const away = Float64Array.from({ length: columns }, (_, index) => Math.abs(index - column));
  return {
    bend: away.map((steps) => (0.5 * closingPerM * eastM * eastM * steps) / northM),
    over: away.map((steps) => 1 / Math.max(steps, 0.5)),
    growth: away.map((steps) => steps / Math.max(steps - 1, 0.5)),
  };
}

function setOwnCell({ base, cellM }: Line, column: number, grazing: Float64Array, result: SightResult): void {
  grazing[column] = noGroundM;
  if (result.clearanceM) result.clearanceM[base + column] = cellM;
  if (result.inSight) result.inSight[base + column] = 255;
}

/** Cells that are farther off in rows than in columns: they lean on the row before. */
function acrossRow(
  { heightsM }: SweptGrid,
  frame: RayFrame,
  { base, away, eastM, down, stationM, cellM, fallPerM2 }: Line,
  left: number,
  right: number,
  before: Float64Array,
  grazing: Float64Array,
  { clearanceM, inSight }: SightResult,
): void {
  const over = 1 / away;
  const growth = away / Math.max(away - 1, 0.5);
  const isNext = away < 1.5;
  const northM2 = (away * frame.northM) ** 2;
  const bend = -down * frame.closingPerM * frame.northM * away;
  const stretch2 = 0.5 * (frame.eastM / frame.northM) ** 2;
  const rangeM2 = frame.rangeM ** 2;
  for (let column = left; column <= right; column++) {
    const aside = column - frame.column;
    const slope = Math.abs(aside) * over;
    let share = slope * (1 + bend * (1 + stretch2 * slope * slope));
    if (share > 1) share = 1;
    const near = before[column] ?? 0;
    const far = before[aside < 0 ? column + 1 : column - 1] ?? near;
    let line = isNext ? noGroundM : (near + share * (far - near)) * growth;
    const h = heightsM[base + column] ?? 0;
    const asideM = aside * eastM;
    const d2 = northM2 + asideM * asideM;
    const rise = h - stationM - d2 * fallPerM2;
    const clear = isNext ? cellM : rise + cellM - line;
    if (rise > line) line = rise;
    // What lies behind a void is unknown.
    if (!(h > lowestGroundM)) line = Number.NaN;
    else if (d2 <= rangeM2) {
      if (inSight && clear >= 0) inSight[base + column] = 255;
      if (clearanceM) clearanceM[base + column] = clear;
    }
    grazing[column] = line;
  }
}

/** Cells that are farther off in columns: they lean on the column before, in this row and in the row before. */
function alongRow(
  { heightsM, columns }: SweptGrid,
  frame: RayFrame,
  { base, away, eastM, down, stationM, cellM, fallPerM2 }: Line,
  steps: ColumnSteps,
  right: 1 | -1,
  from: number,
  before: Float64Array,
  grazing: Float64Array,
  { clearanceM, inSight }: SightResult,
): void {
  const { over, growth, bend } = steps;
  const northM2 = (away * frame.northM) ** 2;
  const rangeM2 = frame.rangeM ** 2;
  const rowsAway = away * (1 + down * frame.closingPerM * frame.northM * away);
  for (let column = from; column >= 0 && column < columns; column += right) {
    const perStep = over[column] ?? 0;
    const aside = column - frame.column;
    const isNext = perStep > 1 / 1.5;
    // Towards the equator rays leave the parallel on which they began, by the bend of rays.ts.
    let share = rowsAway * perStep + down * (bend[column] ?? 0);
    if (share < 0 || away === 0) share = 0;
    else if (share > 1) share = 1;
    const near = grazing[column - right] ?? 0;
    const far = before[column - right] ?? 0;
    let line = isNext ? noGroundM : (near + share * (far - near)) * (growth[column] ?? 1);
    const h = heightsM[base + column] ?? 0;
    const asideM = aside * eastM;
    const d2 = northM2 + asideM * asideM;
    const rise = h - stationM - d2 * fallPerM2;
    const clear = isNext && away < 1.5 ? cellM : rise + cellM - line;
    if (rise > line) line = rise;
    if (!(h > lowestGroundM)) line = Number.NaN;
    else if (d2 <= rangeM2) {
      if (inSight && clear >= 0) inSight[base + column] = 255;
      if (clearanceM) clearanceM[base + column] = clear;
    }
    grazing[column] = line;
  }
}
