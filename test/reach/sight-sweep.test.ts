import { describe, expect, it } from 'vitest';
import { cellOf, type ElevationGrid, positionOf } from '../../src/reach/grid.ts';
import type { Position } from '../../src/reach/position.ts';
import { type RayOptions, rayCount, rayFrame } from '../../src/reach/rays.ts';
import { type SightSettings, sightRaysPerCell, sweepSight } from '../../src/reach/sight-sweep.ts';
import { profileTo, stations } from './sweep.fixture.ts';
import { readHills } from './terrain.fixture.ts';

const hills = await readHills();
const radiusKm = 8500;

function sweep(grid: ElevationGrid, station: Position, settings: SightSettings, options: RayOptions = {}) {
  const frame = rayFrame(grid, station, { raysPerCell: sightRaysPerCell, ...options });
  if (!frame) throw new Error('no ground under the station');
  const inSight = new Uint8Array(grid.columns * grid.rows);
  sweepSight(grid, frame, settings, inSight, [[0, rayCount(frame)]]);
  return { frame, inSight };
}

/** The real heights as a flat map laid on the equator under the station, where a step either way is 90 m and meridians run straight. */
function onEquator(row: number): ElevationGrid {
  const perDegree = Math.PI / 180;
  const stepNorthDeg = 90 / (6_378_137 * (1 - 0.006_694_379_990_14) * perDegree);
  return {
    ...hills,
    northDeg: row * stepNorthDeg,
    westDeg: 0,
    stepNorthDeg,
    stepEastDeg: 90 / (6_378_137 * perDegree),
  };
}

/** Brute force: the straight line to a cell, sampled once for each step of its longer axis, straight between the two samples on either side. */
function isSeenByBruteForce(
  { heightsM, columns }: ElevationGrid,
  station: { readonly row: number; readonly column: number; readonly antennaM: number },
  row: number,
  column: number,
  cellAntennaM: number,
): boolean {
  const [down, right] = [row - station.row, column - station.column];
  const steps = Math.max(Math.abs(down), Math.abs(right));
  const startM = (heightsM[station.row * columns + station.column] ?? 0) + station.antennaM;
  const endM = (heightsM[row * columns + column] ?? 0) + cellAntennaM;
  const km = (Math.hypot(down, right) * 90) / 1000;
  for (let step = 1; step < steps; step++) {
    const share = step / steps;
    const [r, c] = [station.row + down * share, station.column + right * share];
    const [r0, c0] = [Math.floor(r + 1e-9), Math.floor(c + 1e-9)];
    const [r1, c1] = [Math.ceil(r - 1e-9), Math.ceil(c - 1e-9)];
    // Only one of the two is between samples.
    const part = Math.abs(down) === steps ? c - c0 : r - r0;
    const ground =
      (1 - part) * (heightsM[r0 * columns + c0] ?? 0) + part * (heightsM[r1 * columns + c1] ?? 0);
    const line = startM + (endM - startM) * share - (500 * km * km * share * (1 - share)) / radiusKm;
    if (ground > line) return false;
  }
  return true;
}

describe('what is in sight', () => {
  it.each([
    { name: 'a summit', row: 300, column: 224, antennaM: 10, cellAntennaM: 1.5 },
    { name: 'the middle', row: 172, column: 201, antennaM: 1.5, cellAntennaM: 1.5 },
    { name: 'a valley', row: 100, column: 310, antennaM: 1.5, cellAntennaM: 10 },
    { name: 'a slope', row: 86, column: 101, antennaM: 10, cellAntennaM: 1.5 },
  ])('from $name is in every cell what brute force finds', ({ row, column, antennaM, cellAntennaM }) => {
    const grid = onEquator(row);
    const settings = { stationAntennaM: antennaM, cellAntennaM, earthRadiusKm: radiusKm };
    const { inSight } = sweep(grid, positionOf(grid, row, column), settings);
    const byBruteForce = inSight.map((_, cell) =>
      isSeenByBruteForce(
        grid,
        { row, column, antennaM },
        Math.floor(cell / grid.columns),
        cell % grid.columns,
        cellAntennaM,
      )
        ? 255
        : 0,
    );
    expect(byBruteForce.filter((mark) => mark === 255).length).toBeGreaterThan(500);
    expect(inSight.findIndex((mark, cell) => mark !== byBruteForce[cell])).toBe(-1);
  });

  it.each(stations)('from $name agrees with the geodesic to each cell', ({ at, ...heights }) => {
    const settings = { ...heights, earthRadiusKm: radiusKm };
    const { inSight, frame } = sweep(hills, at, settings);
    const startM = frame.groundM + settings.stationAntennaM;
    let agreeing = 0;
    let compared = 0;
    for (let row = 0; row < hills.rows; row += 3) {
      for (let column = row % 4; column < hills.columns; column += 4) {
        const { distancesKm, heightsM } = profileTo(hills, at, row, column);
        const last = distancesKm.length - 1;
        if (last < 2) continue;
        const km = distancesKm[last] ?? 0;
        const endM = (heightsM[last] ?? 0) + settings.cellAntennaM;
        let slack = Number.POSITIVE_INFINITY;
        for (let index = 1; index < last; index++) {
          const x = distancesKm[index] ?? 0;
          const line = startM + ((endM - startM) * x) / km - (500 * x * (km - x)) / radiusKm;
          slack = Math.min(slack, line - (heightsM[index] ?? 0));
        }
        // Even shares of a geodesic lie some metres off the columns that it crosses; that counts where the line grazes.
        if (Math.abs(slack) < 2) continue;
        compared++;
        if (slack >= 0 === (inSight[row * hills.columns + column] === 255)) agreeing++;
      }
    }
    expect(compared).toBeGreaterThan(10_000);
    expect(agreeing).toBe(compared);
  });

  it('does not depend on how wide the bundles are', () => {
    const [{ at, ...heights }] = stations;
    const settings = { ...heights, earthRadiusKm: radiusKm };
    const { inSight } = sweep(hills, at, settings);
    for (const raysPerCell of [1 / 3, 1, 2])
      expect(sweep(hills, at, settings, { raysPerCell }).inSight).toEqual(inSight);
  });

  it('behind a wall on a plain is what geometry says', () => {
    // A plain at 100 m on the equator, a wall of 130 m ten cells east of the station; three-second cells of 92.77 m.
    const columns = 201;
    const heightsM = Float32Array.from({ length: columns * columns }, (_, index) =>
      index % columns === 110 ? 130 : 100,
    );
    const grid: ElevationGrid = {
      name: 'plain',
      columns,
      rows: columns,
      northDeg: 0.0833333333,
      westDeg: 0,
      stepNorthDeg: 1 / 1200,
      stepEastDeg: 1 / 1200,
      heightsM,
    };
    const station = positionOf(grid, 100, 100);
    const settings = {
      frequencyHz: 146e6,
      polarization: 'vertical',
      stationAntennaM: 10,
      cellAntennaM: 1.5,
      earthRadiusKm: radiusKm,
    } as const;
    const cellKm = (6_378_137 * Math.PI) / 180 / 1200 / 1000;
    for (const cells of [15, 30, 60]) {
      // The grazing line rises 20 m in ten cells, the earth falls away by 500 x² / a.
      const wallSlope = (130 - (500 * (10 * cellKm) ** 2) / radiusKm - 110) / (10 * cellKm);
      const wantedM = 110 + wallSlope * cells * cellKm - (100 - (500 * (cells * cellKm) ** 2) / radiusKm);
      const seen = (cellAntennaM: number) =>
        sweep(grid, station, { ...settings, cellAntennaM }).inSight[100 * columns + 100 + cells];
      expect(seen(wantedM - 0.01)).toBe(0);
      expect(seen(wantedM + 0.01)).toBe(255);
    }
    const { inSight } = sweep(grid, station, settings);
    expect(inSight[100 * columns + 105]).toBe(255);
    expect(inSight[100 * columns + 40]).toBe(255);
  });

  it('is unknown behind a void and beyond the range', () => {
    const [{ at, ...heights }] = stations;
    const settings = { ...heights, cellAntennaM: 3000, earthRadiusKm: radiusKm };
    const { row, column } = cellOf(hills, at);
    const wall = Math.round(column) + 20;
    const heightsM = Int16Array.from(hills.heightsM, (height, index) =>
      index % hills.columns === wall ? -32768 : height,
    );
    const { inSight } = sweep({ ...hills, heightsM }, at, settings);
    const behind = Math.round(row) * hills.columns + wall;
    for (const cells of [0, 1, 50]) expect(inSight[behind + cells]).toBe(0);
    expect(inSight[behind - 1]).toBe(255);
    const near = sweep(hills, at, settings, { rangeM: 5000 });
    const eastCells = (metres: number) =>
      Math.round(row) * hills.columns + Math.round(column + metres / near.frame.eastM);
    expect(near.inSight[eastCells(4800)]).toBe(255);
    expect(near.inSight[eastCells(5200)]).toBe(0);
  });
});
