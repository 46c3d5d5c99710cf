/** Stations on the real grid, and the ground to a cell as the per-profile method has it, for the tests of sweeps. */
import { loadGeodesy } from '../../src/reach/geodesy.ts';
import { cellOf, type ElevationGrid, heightAt, positionOf } from '../../src/reach/grid.ts';
import type { Position } from '../../src/reach/position.ts';

const geodesy = await loadGeodesy();

export const stations = [
  {
    name: 'a repeater on a ridge',
    at: { latitudeDeg: 36.6042, longitudeDeg: -84.2083 },
    stationAntennaM: 12,
    cellAntennaM: 1.5,
    frequencyHz: 146e6,
  },
  {
    name: 'a hand-held in a valley',
    at: { latitudeDeg: 36.55, longitudeDeg: -84.3 },
    stationAntennaM: 1.5,
    cellAntennaM: 1.5,
    frequencyHz: 446e6,
  },
] as const;

/**
 * The ground on the geodesic to one cell, sampled where it crosses the rows or columns between (whichever it is steeper to), as a sweep does.
 * Samples nearer to the station than half a cell are left out.
 */
export function profileTo(grid: ElevationGrid, station: Position, row: number, column: number) {
  const { row: stationRow, column: stationColumn } = cellOf(grid, station);
  const [down, right] = [row - stationRow, column - stationColumn];
  const isAlongColumns = Math.abs(right) >= Math.abs(down);
  const [start, end] = isAlongColumns ? [stationColumn, column] : [stationRow, row];
  const length = Math.abs(end - start);
  const first = end > start ? Math.ceil(start + 0.5) - start : start - Math.floor(start - 0.5);
  const shares = [0];
  for (let cells = first; cells < length - 1e-9; cells++) shares.push(cells / length);
  shares.push(1);
  const cell = positionOf(grid, row, column);
  const km = geodesy.line(station, cell).distanceM / 1000;
  const heightsM = geodesy.along(station, cell, shares).map((place) => heightAt(grid, place) ?? Number.NaN);
  return { distancesKm: shares.map((share) => share * km), heightsM };
}
