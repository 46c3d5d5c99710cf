import { describe, expect, it } from 'vitest';
import { diffractionLoss } from '../../src/reach/diffraction.ts';
import { freeSpaceLossDb } from '../../src/reach/free-space.ts';
import { loadGeodesy } from '../../src/reach/geodesy.ts';
import { cellOf, type ElevationGrid, heightAt, positionOf } from '../../src/reach/grid.ts';
import { type SweepSettings, sweepLoss } from '../../src/reach/loss-sweep.ts';
import type { Position } from '../../src/reach/position.ts';
import { type RayOptions, rayCount, rayFrame } from '../../src/reach/rays.ts';
import { sweepSight } from '../../src/reach/sight-sweep.ts';
import { readHills } from './terrain.fixture.ts';

const geodesy = await loadGeodesy();
const hills = await readHills();
const radiusKm = 8500;

function sweep(grid: ElevationGrid, station: Position, settings: SweepSettings, options: RayOptions = {}) {
  const frame = rayFrame(grid, station, options);
  if (!frame) throw new Error('no ground under the station');
  const lossDb = new Float32Array(grid.columns * grid.rows).fill(Number.NaN);
  const clearanceM = new Float32Array(lossDb.length).fill(Number.NaN);
  sweepLoss(grid, frame, settings, lossDb, 0, rayCount(frame));
  sweepSight(grid, frame, settings, { clearanceM }, 0, rayCount(frame));
  return { frame, lossDb, clearanceM };
}

/**
 * The ground on the geodesic to one cell, sampled where it crosses the rows or columns between (whichever it is steeper to), as a sweep does.
 * Samples nearer to the station than half a cell are left out.
 */
function profileTo(grid: ElevationGrid, station: Position, row: number, column: number) {
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

/** A generator of the same numbers each time (Lehmer's, multiplier 48271). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

const stations = [
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

describe('the loss to every cell', () => {
  it.each(stations)(
    'is that of the per-profile method within 0.5 dB in 99 of 100 cells from $name',
    ({ at, ...heights }) => {
      const settings = { ...heights, polarization: 'vertical', earthRadiusKm: radiusKm } as const;
      const { lossDb } = sweep(hills, at, settings);
      const random = numbers(1);
      let compared = 0;
      let within = 0;
      let squares = 0;
      for (let index = 0; index < 10_000; index++) {
        const [row, column] = [Math.floor(random() * hills.rows), Math.floor(random() * hills.columns)];
        const profile = profileTo(hills, at, row, column);
        if (profile.distancesKm.length < 3 || profile.heightsM.some(Number.isNaN)) continue;
        const { lossDb: diffractionDb } = diffractionLoss({
          ...profile,
          startAntennaM: settings.stationAntennaM,
          endAntennaM: settings.cellAntennaM,
          frequencyHz: settings.frequencyHz,
          polarization: 'vertical',
          earthRadiusKm: radiusKm,
        });
        const km = profile.distancesKm.at(-1) ?? 0;
        const off =
          (lossDb[row * hills.columns + column] ?? Number.NaN) -
          diffractionDb -
          freeSpaceLossDb(settings.frequencyHz, km * 1000);
        compared++;
        if (Math.abs(off) <= 0.5) within++;
        squares += off * off;
      }
      expect(compared).toBeGreaterThan(9_900);
      // The rest are cells whose ground falls away steeply between two rays, where the smooth surface under a hand-held jumps.
      expect(within / compared).toBeGreaterThan(0.99);
      expect(Math.sqrt(squares / compared)).toBeLessThan(0.5);
    },
  );

  it('is the same whether one sweep does it or three share the rays', () => {
    const [{ at, ...heights }] = stations;
    const settings = { ...heights, polarization: 'vertical', earthRadiusKm: radiusKm } as const;
    const whole = sweep(hills, at, settings, { raysPerCell: 1 });
    const count = rayCount(whole.frame);
    const lossDb = new Float32Array(whole.lossDb.length).fill(Number.NaN);
    for (const [from, to] of [
      [700, count],
      [0, 333],
      [333, 700],
    ] as const)
      sweepLoss(hills, whole.frame, settings, lossDb, from, to);
    expect(lossDb).toEqual(whole.lossDb);
  });

  it('reaches every cell of a grid without voids, and none behind a void', () => {
    const [{ at, ...heights }] = stations;
    const settings = { ...heights, polarization: 'vertical', earthRadiusKm: radiusKm } as const;
    const { lossDb } = sweep(hills, at, settings, { raysPerCell: 1 });
    expect(lossDb.every((loss) => loss > 0)).toBe(true);
    // On whole cells the edges of bundles run exactly along the rim of the grid.
    const corner = positionOf(hills, 100, 200);
    expect(sweep(hills, corner, settings, { raysPerCell: 1 }).lossDb.every((loss) => loss > 0)).toBe(true);
    // A wall of voids 20 columns east of the station.
    const wall = Math.round(cellOf(hills, at).column) + 20;
    const heightsM = Int16Array.from(hills.heightsM, (height, index) =>
      index % hills.columns === wall ? -32768 : height,
    );
    const shadowed = sweep({ ...hills, heightsM }, at, settings, { raysPerCell: 1 }).lossDb;
    const behind = Array.from(shadowed).filter(
      (_, index) =>
        index % hills.columns > wall &&
        Math.floor(index / hills.columns) === Math.round(cellOf(hills, at).row),
    );
    expect(behind.length).toBeGreaterThan(50);
    expect(behind.every(Number.isNaN)).toBe(true);
  });

  it('stops at the range asked for', () => {
    const [{ at, ...heights }] = stations;
    const { lossDb } = sweep(
      hills,
      at,
      { ...heights, polarization: 'vertical', earthRadiusKm: radiusKm },
      { rangeM: 5000, raysPerCell: 1 },
    );
    let farthest = 0;
    for (const [index, loss] of lossDb.entries()) {
      if (Number.isNaN(loss)) continue;
      farthest = Math.max(
        farthest,
        geodesy.line(at, positionOf(hills, Math.floor(index / hills.columns), index % hills.columns))
          .distanceM,
      );
    }
    expect(farthest).toBeGreaterThan(4900);
    expect(farthest).toBeLessThan(5100);
  });
});

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
});
