/** A piece of a grid, so that work on a plan's area does not pay for the whole tile. */
import { cellOf, type ElevationGrid } from './grid.ts';
import type { Position } from './position.ts';

/** The part of a grid that holds all these places with a margin around, or `undefined` if it has none of it. */
export function cropGrid(
  grid: ElevationGrid,
  places: readonly Position[],
  marginM: number,
): ElevationGrid | undefined {
  const cells = places.map((place) => cellOf(grid, place));
  const latitude = Math.max(...places.map(({ latitudeDeg }) => Math.abs(latitudeDeg)));
  const marginRows = marginM / (111_195 * grid.stepNorthDeg);
  const marginColumns =
    marginM / (111_195 * grid.stepEastDeg * Math.max(0.01, Math.cos((latitude * Math.PI) / 180)));
  const top = Math.max(0, Math.floor(Math.min(...cells.map(({ row }) => row)) - marginRows));
  const bottom = Math.min(grid.rows - 1, Math.ceil(Math.max(...cells.map(({ row }) => row)) + marginRows));
  const left = Math.max(0, Math.floor(Math.min(...cells.map(({ column }) => column)) - marginColumns));
  const right = Math.min(
    grid.columns - 1,
    Math.ceil(Math.max(...cells.map(({ column }) => column)) + marginColumns),
  );
  const [rows, columns] = [bottom - top + 1, right - left + 1];
  if (!(rows >= 2 && columns >= 2)) return undefined;
  const heightsM =
    grid.heightsM instanceof Int16Array ? new Int16Array(rows * columns) : new Float32Array(rows * columns);
  for (let row = 0; row < rows; row++) {
    const start = (top + row) * grid.columns + left;
    heightsM.set(grid.heightsM.subarray(start, start + columns), row * columns);
  }
  return {
    ...grid,
    rows,
    columns,
    heightsM,
    northDeg: grid.northDeg - top * grid.stepNorthDeg,
    westDeg: grid.westDeg + left * grid.stepEastDeg,
  };
}
