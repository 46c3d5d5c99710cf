import { describe, expect, it } from 'vitest';
import { antennaSituation } from '../../src/reach/antenna-situation.ts';
import { diffractionLoss } from '../../src/reach/diffraction.ts';
import { freeSpaceLossDb } from '../../src/reach/free-space.ts';
import { loadGeodesy } from '../../src/reach/geodesy.ts';
import { cellOf, type ElevationGrid, positionOf } from '../../src/reach/grid.ts';
import { linkBudget } from '../../src/reach/link-budget.ts';
import { type SweepSettings, sweepLoss } from '../../src/reach/loss-sweep.ts';
import type { Position } from '../../src/reach/position.ts';
import { newPieces, type RayOptions, rayCount, rayFrame, raysLeft } from '../../src/reach/rays.ts';
import { profileTo, stations } from './sweep.fixture.ts';
import { readHills } from './terrain.fixture.ts';

const geodesy = await loadGeodesy();
const hills = await readHills();
const radiusKm = 8500;

function sweep(grid: ElevationGrid, station: Position, settings: SweepSettings, options: RayOptions = {}) {
  const frame = rayFrame(grid, station, options);
  if (!frame) throw new Error('no ground under the station');
  const lossDb = new Float32Array(grid.columns * grid.rows).fill(Number.NaN);
  sweepLoss(grid, frame, settings, lossDb, [[0, rayCount(frame)]]);
  return { frame, lossDb };
}

/** A generator of the same numbers each time (Lehmer's, multiplier 48271). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

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
      // The rest are cells where two horizons are nearly as high, one of them on the ray and the other on the straight line beside it.
      expect(within / compared).toBeGreaterThan(0.99);
      expect(Math.sqrt(squares / compared)).toBeLessThan(0.5);
    },
  );

  it('holds what woodland at both ends takes, as the link budget has it', () => {
    const [, { at, ...heights }] = stations;
    const trees = { stationTreesM: 15, cellTreesM: 12 };
    const settings = { ...heights, ...trees, polarization: 'vertical', earthRadiusKm: radiusKm } as const;
    const { lossDb } = sweep(hills, at, settings);
    const antenna = (heightM: number) => antennaSituation({ carried: 'hand', heightM }, settings.frequencyHz);
    const random = numbers(5);
    const offDb: number[] = [];
    const takenDb: number[] = [];
    while (offDb.length < 2000) {
      const [row, column] = [Math.floor(random() * hills.rows), Math.floor(random() * hills.columns)];
      const { distancesKm, heightsM } = profileTo(hills, at, row, column);
      if (distancesKm.length < 3 || heightsM.some(Number.isNaN)) continue;
      const budget = linkBudget({
        profile: {
          distancesKm: Float64Array.from(distancesKm),
          heightsM: Float64Array.from(heightsM),
          basis: 'grid',
          gaps: [],
          bridged: [],
        },
        frequencyHz: settings.frequencyHz,
        transmitter: { antenna: antenna(settings.stationAntennaM), feedLossDb: 0, treesM: 15, powerW: 5 },
        receiver: { antenna: antenna(settings.cellAntennaM), feedLossDb: 0, treesM: 12, place: 'rural' },
        service: 'fm-voice',
        widthHz: 12_500,
        earthRadiusKm: radiusKm,
      });
      if (!budget.ok) throw new Error(budget.reason);
      offDb.push(Math.abs((lossDb[row * hills.columns + column] ?? Number.NaN) - budget.lossDb));
      takenDb.push(
        budget.parts.reduce((sum, { what, db }) => sum - (what.startsWith('woodland') ? db : 0), 0),
      );
    }
    expect(offDb.filter((off) => off <= 0.5).length / offDb.length).toBeGreaterThan(0.99);
    // Horizons differ, and so do the depths of the wood.
    expect(Math.max(...takenDb) - Math.min(...takenDb)).toBeGreaterThan(5);
  });

  it('is the same whether one sweep does it or three share the rays', () => {
    const [{ at, ...heights }] = stations;
    const settings = { ...heights, polarization: 'vertical', earthRadiusKm: radiusKm } as const;
    const whole = sweep(hills, at, settings, { raysPerCell: 1 });
    const count = rayCount(whole.frame);
    const lossDb = new Float32Array(whole.lossDb.length).fill(Number.NaN);
    for (const stretch of [
      [700, count],
      [0, 333],
      [333, 700],
    ] as const)
      sweepLoss(hills, whole.frame, settings, lossDb, [stretch]);
    expect(lossDb).toEqual(whole.lossDb);
  });

  it('is the same where two threads take turns at what is left of the rays', () => {
    const [, { at, ...heights }] = stations;
    const settings = { ...heights, polarization: 'vertical', earthRadiusKm: radiusKm } as const;
    const whole = sweep(hills, at, settings, { raysPerCell: 1 });
    const taken = newPieces();
    const [one, other] = [raysLeft(whole.frame, taken), raysLeft(whole.frame, taken)].map((left) =>
      left[Symbol.iterator](),
    );
    const lossDb = new Float32Array(whole.lossDb.length).fill(Number.NaN);
    const done = new Set<unknown>();
    for (let turn = 0; done.size < 2; turn++) {
      // The one is three times as quick as the other.
      const thread = turn % 4 === 0 ? other : one;
      const next = thread?.next();
      if (!next || next.done) done.add(thread);
      else sweepLoss(hills, whole.frame, settings, lossDb, [next.value]);
    }
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
