import { describe, expect, it } from 'vitest';
import { diffractionLoss } from '../../src/reach/diffraction.ts';
import { freeSpaceLossDb } from '../../src/reach/free-space.ts';
import { positionOf } from '../../src/reach/grid.ts';
import { sweepLoss } from '../../src/reach/loss-sweep.ts';
import { rayCount, rayFrame } from '../../src/reach/rays.ts';
import { residueTerms } from '../../src/reach/residue-terms.ts';

describe('the terms of the residue series', () => {
  it.each(['vertical', 'horizontal'] as const)(
    'give over a smooth plain what the equations of P.1812-8 give one by one, %s polarisation',
    (polarization) => {
      // A sea of land on the equator, 100 m high, 400 cells of three seconds across.
      const columns = 401;
      const step = 1 / 1200;
      const grid = {
        name: 'plain',
        columns,
        rows: 5,
        northDeg: 2 * step,
        westDeg: 0,
        stepNorthDeg: step,
        stepEastDeg: step,
        heightsM: new Float32Array(columns * 5).fill(100),
      };
      const frame = rayFrame(grid, positionOf(grid, 2, 0), { raysPerCell: 1 });
      if (!frame) throw new Error('no ground');
      for (const [frequencyHz, stationAntennaM] of [
        [52e6, 2],
        [146e6, 10],
        [446e6, 30],
      ] as const) {
        const lossDb = new Float32Array(columns * 5).fill(Number.NaN);
        const settings = {
          frequencyHz,
          polarization,
          stationAntennaM,
          cellAntennaM: 1.5,
          earthRadiusKm: 8500,
        };
        sweepLoss(grid, frame, settings, lossDb, [[0, rayCount(frame)]]);
        for (const cells of [3, 10, 40, 150, 300, 400]) {
          const km = (cells * frame.eastM) / 1000;
          const { lossDb: diffraction } = diffractionLoss({
            distancesKm: Array.from({ length: cells + 1 }, (_, index) => (index * frame.eastM) / 1000),
            heightsM: new Float64Array(cells + 1).fill(100),
            startAntennaM: stationAntennaM,
            endAntennaM: 1.5,
            frequencyHz,
            polarization,
            earthRadiusKm: 8500,
          });
          const wanted = diffraction + freeSpaceLossDb(frequencyHz, km * 1000);
          expect(Math.abs((lossDb[2 * columns + cells] ?? Number.NaN) - wanted)).toBeLessThan(0.02);
        }
      }
    },
  );

  it('has the height gain of a low antenna stop where P.1812-8 eq (35) has it stop: at 2 + 20 log K', () => {
    const { leastDb } = residueTerms(8500, 146e6, 'horizontal');
    // K of eq (29a) by hand: 0.36 (8500 * 146)^(-1/3) ((22 - 1)² + (18000 * 0.003 / 146)²)^(-1/4).
    expect(leastDb).toBeCloseTo(
      2 + 20 * Math.log10(0.36 * 1_241_000 ** (-1 / 3) * (441 + 0.1368) ** -0.25),
      4,
    );
  });
});
