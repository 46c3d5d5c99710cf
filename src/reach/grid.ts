/**
 * A grid of ground heights: rows from north to south, columns from west to east, on whole steps of latitude
 * and longitude. Heights are metres above the geoid the file was made for; ellipsoid heights of a satellite
 * receiver, which differ from those by up to a hundred metres, do not belong in one.
 */
import type { Position } from './position.ts';

export interface ElevationGrid {
  /** What the grid is called in messages: the name of its file. */
  readonly name: string;
  readonly columns: number;
  readonly rows: number;
  /** Where the first sample stands, north-west: the sample itself, not the corner of a cell around it. */
  readonly northDeg: number;
  readonly westDeg: number;
  /** Degrees from one sample to the next, both positive. */
  readonly stepNorthDeg: number;
  readonly stepEastDeg: number;
  /** Row by row from the north. A void is {@link voidHeight} in whole metres, NaN in fractions. */
  readonly heightsM: Int16Array | Float32Array;
}

/** What stands in a grid of whole metres where nothing was measured, as in SRTM tiles. */
export const voidHeight = -32_768;

/** Lowest and highest ground that is believed, metres; anything beyond is a void that its file did not declare. */
export const believableHeightsM = { lowest: -500, highest: 9000 } as const;

/** One degree of a great circle, mean radius of the earth, metres. */
const metresPerDegree = 111_195;

/** The sample at a row and column, or `undefined` at a void or outside. */
export function sampleAt(grid: ElevationGrid, row: number, column: number): number | undefined {
  if (row < 0 || column < 0 || row >= grid.rows || column >= grid.columns) return undefined;
  const height = grid.heightsM[row * grid.columns + column];
  return height === undefined || height === voidHeight || Number.isNaN(height) ? undefined : height;
}

/** Where a sample stands. */
export function positionOf(grid: ElevationGrid, row: number, column: number): Position {
  return {
    latitudeDeg: grid.northDeg - row * grid.stepNorthDeg,
    longitudeDeg: grid.westDeg + column * grid.stepEastDeg,
  };
}

/** Row and column of a place, with fractions; may lie outside the grid. */
export function cellOf(
  grid: ElevationGrid,
  position: Position,
): { readonly row: number; readonly column: number } {
  let eastDeg = position.longitudeDeg - grid.westDeg;
  // A grid that crosses the 180th meridian counts on eastwards.
  if (eastDeg < -180) eastDeg += 360;
  if (eastDeg > 180 && eastDeg > grid.columns * grid.stepEastDeg) eastDeg -= 360;
  return {
    row: snapped((grid.northDeg - position.latitudeDeg) / grid.stepNorthDeg),
    column: snapped(eastDeg / grid.stepEastDeg),
  };
}

/**
 * Ground height between the four samples around a place, metres (bilinear). `undefined` outside the grid and
 * wherever a sample that counts is void: a hole is never filled in silence.
 *
 * Up to half a step beyond the outermost samples the edge is carried on, since a grid of cell areas covers that
 * much; `beyond` may give the sample there instead, from a neighbouring grid.
 */
export function heightAt(
  grid: ElevationGrid,
  position: Position,
  beyond?: (position: Position) => number | undefined,
): number | undefined {
  const { row, column } = cellOf(grid, position);
  const margin = beyond ? 1 : 0.5;
  const isWithin =
    row >= -margin &&
    column >= -margin &&
    row <= grid.rows - 1 + margin &&
    column <= grid.columns - 1 + margin;
  if (!isWithin) return undefined;
  const top = Math.floor(row);
  const left = Math.floor(column);
  const down = row - top;
  const right = column - left;
  let sum = 0;
  for (const [r, c, weight] of [
    [top, left, (1 - down) * (1 - right)],
    [top, left + 1, (1 - down) * right],
    [top + 1, left, down * (1 - right)],
    [top + 1, left + 1, down * right],
  ] as const) {
    // A corner without weight may be void: the place stands exactly on a sample or a line of them.
    if (weight === 0) continue;
    const height = cornerAt(grid, r, c, row, column, beyond);
    if (height === undefined) return undefined;
    sum += weight * height;
  }
  return sum;
}

function cornerAt(
  grid: ElevationGrid,
  row: number,
  column: number,
  wantedRow: number,
  wantedColumn: number,
  beyond: ((position: Position) => number | undefined) | undefined,
): number | undefined {
  const inside = row >= 0 && column >= 0 && row < grid.rows && column < grid.columns;
  if (inside) return sampleAt(grid, row, column);
  const neighbour = beyond?.(positionOf(grid, row, column));
  if (neighbour !== undefined) return neighbour;
  const isNear =
    wantedRow >= -0.5 &&
    wantedColumn >= -0.5 &&
    wantedRow <= grid.rows - 0.5 &&
    wantedColumn <= grid.columns - 0.5;
  if (!isNear) return undefined;
  return sampleAt(grid, clamp(row, grid.rows), clamp(column, grid.columns));
}

/** Distance between neighbouring samples on the ground, metres, north-south and east-west at a latitude. */
export function stepsM(
  grid: ElevationGrid,
  latitudeDeg: number,
): { readonly northM: number; readonly eastM: number } {
  return {
    northM: grid.stepNorthDeg * metresPerDegree,
    eastM: grid.stepEastDeg * metresPerDegree * Math.cos((latitudeDeg * Math.PI) / 180),
  };
}

/** Steps like 1/1200 degree are no binary fractions; a place meant to be on a sample is put on it. */
function snapped(index: number): number {
  const whole = Math.round(index);
  return Math.abs(index - whole) < 1e-6 ? whole : index;
}

function clamp(index: number, count: number): number {
  return Math.min(Math.max(index, 0), count - 1);
}
