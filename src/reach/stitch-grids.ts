/**
 * Several elevation grids as one, where they stand on the same whole steps, as neighbouring tiles do: for work that goes over cells and not from place to
 * place. What none of them has stays void.
 */
import { cellOf, type ElevationGrid, heightAt, positionOf, voidHeight } from './grid.ts';
import type { Position } from './position.ts';

/** The most samples of one grid; as many as are read from one file. */
const mostSamples = 40_000_000;

/**
 * The finest ground that has a height at every one of the places: one grid, or all those that stand on the same steps as it, stitched.
 *
 * @param finestFirst as {@link ./mosaic.ts} has them
 * @param marginM how far around the places it is wanted; without it all there is, if that is not too much
 * @returns `undefined` where no grid nor any that can be stitched has them all
 */
export function groundUnder(
  finestFirst: readonly ElevationGrid[],
  places: readonly Position[],
  marginM = Number.POSITIVE_INFINITY,
): ElevationGrid | undefined {
  const tried = new Set<ElevationGrid>();
  for (const grid of finestFirst) {
    if (tried.has(grid)) continue;
    const family = finestFirst.filter((other) => isOnSteps(grid, other));
    for (const each of family) tried.add(each);
    const whole = stitched(family, places, marginM);
    for (const candidate of [...(whole ? [whole] : []), ...family])
      if (places.every((place) => heightAt(candidate, place) !== undefined)) return candidate;
  }
  return undefined;
}

/** A thousandth of a step is less than the rounding of the corners in tile headers. */
const nearlyWhole = 0.001;

function isOnSteps(grid: ElevationGrid, other: ElevationGrid): boolean {
  const { row, column } = cellOf(grid, positionOf(other, 0, 0));
  const last = cellOf(grid, positionOf(other, other.rows - 1, other.columns - 1));
  return (
    [row, column, last.row - row - other.rows + 1, last.column - column - other.columns + 1].every(
      (steps) => Math.abs(steps - Math.round(steps)) < nearlyWhole,
    ) &&
    Math.abs(grid.stepNorthDeg / other.stepNorthDeg - 1) < nearlyWhole &&
    Math.abs(grid.stepEastDeg / other.stepEastDeg - 1) < nearlyWhole
  );
}

function stitched(
  family: readonly ElevationGrid[],
  places: readonly Position[],
  marginM: number,
): ElevationGrid | undefined {
  const [first] = family;
  if (!first || family.length === 1) return first;
  const tiles = family.map((grid) => {
    const { row, column } = cellOf(first, positionOf(grid, 0, 0));
    return { grid, top: Math.round(row), left: Math.round(column) };
  });
  const wanted = boxAround(first, places, marginM);
  const top = Math.max(wanted.top, Math.min(...tiles.map((tile) => tile.top)));
  const left = Math.max(wanted.left, Math.min(...tiles.map((tile) => tile.left)));
  const bottom = Math.min(wanted.bottom, Math.max(...tiles.map((tile) => tile.top + tile.grid.rows - 1)));
  const right = Math.min(wanted.right, Math.max(...tiles.map((tile) => tile.left + tile.grid.columns - 1)));
  const [rows, columns] = [bottom - top + 1, right - left + 1];
  if (rows < 2 || columns < 2 || rows * columns > mostSamples) return undefined;

  const isWhole = family.every(({ heightsM }) => heightsM instanceof Int16Array);
  const heightsM = isWhole
    ? new Int16Array(rows * columns).fill(voidHeight)
    : new Float32Array(rows * columns).fill(Number.NaN);
  const used: string[] = [];
  for (const { grid, top: tileTop, left: tileLeft } of tiles) {
    const [fromRow, toRow] = [Math.max(top, tileTop), Math.min(bottom, tileTop + grid.rows - 1)];
    const [fromColumn, toColumn] = [Math.max(left, tileLeft), Math.min(right, tileLeft + grid.columns - 1)];
    if (fromRow > toRow || fromColumn > toColumn) continue;
    used.push(grid.name);
    for (let row = fromRow; row <= toRow; row++) {
      for (let column = fromColumn; column <= toColumn; column++) {
        const height = grid.heightsM[(row - tileTop) * grid.columns + column - tileLeft] ?? Number.NaN;
        // On a shared edge the void of one tile does not hide what the other has.
        if (height !== voidHeight && !Number.isNaN(height))
          heightsM[(row - top) * columns + column - left] = height;
      }
    }
  }
  const corner = positionOf(first, top, left);
  return {
    name: used.join(', '),
    columns,
    rows,
    northDeg: corner.latitudeDeg,
    westDeg: corner.longitudeDeg,
    stepNorthDeg: first.stepNorthDeg,
    stepEastDeg: first.stepEastDeg,
    heightsM,
  };
}

/** Rows and columns of a grid, far beyond its own edges if need be, that lie around places. */
function boxAround(grid: ElevationGrid, places: readonly Position[], marginM: number) {
  const cells = places.map((place) => cellOf(grid, place));
  const farthest = Math.max(...places.map(({ latitudeDeg }) => Math.abs(latitudeDeg)));
  const marginRows = marginM / (111_195 * grid.stepNorthDeg);
  const marginColumns =
    marginM / (111_195 * grid.stepEastDeg * Math.max(0.01, Math.cos((farthest * Math.PI) / 180)));
  return {
    top: Math.floor(Math.min(...cells.map(({ row }) => row)) - marginRows),
    bottom: Math.ceil(Math.max(...cells.map(({ row }) => row)) + marginRows),
    left: Math.floor(Math.min(...cells.map(({ column }) => column)) - marginColumns),
    right: Math.ceil(Math.max(...cells.map(({ column }) => column)) + marginColumns),
  };
}
