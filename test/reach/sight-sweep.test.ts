import { describe, expect, it } from 'vitest';
import { cellOf, type ElevationGrid, positionOf } from '../../src/reach/grid.ts';
import type { Position } from '../../src/reach/position.ts';
import { rayFrame } from '../../src/reach/rays.ts';
import { type SightSettings, sweepSight } from '../../src/reach/sight-sweep.ts';
import { profileTo, stations } from './sweep.fixture.ts';
import { readHills } from './terrain.fixture.ts';

const hills = await readHills();
const radiusKm = 8500;

function sweep(grid: ElevationGrid, station: Position, settings: SightSettings, rangeM?: number) {
  const frame = rayFrame(grid, station, rangeM === undefined ? {} : { rangeM });
  if (!frame) throw new Error('no ground under the station');
  const clearanceM = new Float32Array(grid.columns * grid.rows).fill(Number.NaN);
  const inSight = new Uint8Array(clearanceM.length);
  for (const half of ['north', 'south'] as const)
    sweepSight(grid, frame, settings, { clearanceM, inSight }, half);
  return { frame, clearanceM, inSight };
}

describe('what is in sight', () => {
  it.each(stations)(
    'from $name agrees with the straight line to each cell, sampled cell by cell',
    ({ at, ...heights }) => {
      const settings = { ...heights, polarization: 'vertical', earthRadiusKm: radiusKm } as const;
      const { clearanceM, frame } = sweep(hills, at, settings);
      const startM = frame.groundM + settings.stationAntennaM;
      let agreeing = 0;
      let compared = 0;
      let clearCut = 0;
      let clearCutAgreeing = 0;
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
            slack = Math.min(
              slack,
              startM + ((endM - startM) * x) / km - (500 * x * (km - x)) / radiusKm - (heightsM[index] ?? 0),
            );
          }
          const isAgreed = slack >= 0 === (clearanceM[row * hills.columns + column] ?? 0) >= 0;
          compared++;
          if (isAgreed) agreeing++;
          if (Math.abs(slack) >= 5) {
            clearCut++;
            if (isAgreed) clearCutAgreeing++;
          }
        }
      }
      expect(agreeing / compared).toBeGreaterThan(0.995);
      expect(clearCutAgreeing / clearCut).toBeGreaterThan(0.999);
    },
  );

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
    const { clearanceM } = sweep(grid, station, settings);
    const cellKm = (6_378_137 * Math.PI) / 180 / 1200 / 1000;
    for (const cells of [15, 30, 60]) {
      // The grazing line rises 20 m in ten cells, the earth falls away by 500 x² / a.
      const wallSlope = (130 - (500 * (10 * cellKm) ** 2) / radiusKm - 110) / (10 * cellKm);
      const lacks = 110 + wallSlope * cells * cellKm - (101.5 - (500 * (cells * cellKm) ** 2) / radiusKm);
      expect(clearanceM[100 * columns + 100 + cells]).toBeCloseTo(-lacks, 2);
    }
    expect(clearanceM[100 * columns + 105]).toBeGreaterThan(0);
    expect(clearanceM[100 * columns + 40]).toBeGreaterThan(0);
  });

  it('is marked as such where the clearance is not below 0, in every cell of a grid without voids', () => {
    const { clearanceM, inSight } = sweep(hills, stations[0].at, { ...stations[0], earthRadiusKm: radiusKm });
    expect(clearanceM.some(Number.isNaN)).toBe(false);
    expect(inSight).toEqual(Uint8Array.from(clearanceM, (clear) => (clear >= 0 ? 255 : 0)));
  });

  it('is unknown behind a void and beyond the range', () => {
    const [{ at, ...heights }] = stations;
    const settings = { ...heights, earthRadiusKm: radiusKm };
    const { row, column } = cellOf(hills, at);
    const wall = Math.round(column) + 20;
    const heightsM = Int16Array.from(hills.heightsM, (height, index) =>
      index % hills.columns === wall ? -32768 : height,
    );
    const { clearanceM, inSight } = sweep({ ...hills, heightsM }, at, settings);
    const behind = Math.round(row) * hills.columns + wall;
    for (const cells of [0, 1, 50]) {
      expect(clearanceM[behind + cells]).toBeNaN();
      expect(inSight[behind + cells]).toBe(0);
    }
    expect(clearanceM[behind - 1]).not.toBeNaN();
    const near = sweep(hills, at, settings, 5000);
    const eastCells = (metres: number) =>
      Math.round(row) * hills.columns + Math.round(column + metres / near.frame.eastM);
    expect(near.clearanceM[eastCells(4800)]).not.toBeNaN();
    expect(near.clearanceM[eastCells(5200)]).toBeNaN();
  });
});
