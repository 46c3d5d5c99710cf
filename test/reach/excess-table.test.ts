import { describe, expect, it } from 'vitest';
import { diffractionLoss } from '../../src/reach/diffraction.ts';
import { aboveBatch, excessTable, fillExcess } from '../../src/reach/excess-table.ts';
import { wavelengthM } from '../../src/reach/free-space.ts';
import { cellBatch } from '../../src/reach/ground-ahead.ts';
import { smoothEarth } from '../../src/reach/smooth-terms.ts';

describe('the table of what the smooth earth adds', () => {
  it.each([52e6, 146e6, 446e6, 1296e6])(
    'is the equations of P.1812-8 one by one, at %d Hz',
    (frequencyHz) => {
      const stepKm = 0.05;
      const count = 3000;
      const above = aboveBatch(count);
      const cells = cellBatch(count);
      cells.count = count;
      const samplesKm = Float64Array.from({ length: 2002 }, (_, sample) => sample * stepKm);
      let state = 7;
      const random = () => {
        state = (state * 48_271) % 2_147_483_647;
        return state / 2_147_483_647;
      };
      // 500 m to 100 km; antennas from their own height up to half a kilometre above the surface, low ones as often as high ones.
      for (let index = 0; index < count; index++) {
        const steps = Math.floor(10 * 200 ** random());
        cells.at[index] = steps;
        cells.km[index] = steps * stepKm;
        above.metres[2 * index] = 3 * 150 ** random();
        above.metres[2 * index + 1] = 1.5 * 300 ** random();
      }
      const found = new Float64Array(count);
      const earth = smoothEarth(frequencyHz, wavelengthM(frequencyHz), 'vertical', 8500);
      fillExcess(excessTable(earth, 3, 1.5, 0.01, 101, stepKm), cells, above, samplesKm, found);
      const offDb = Array.from(found, (excess, index) => {
        const steps = cells.at[index] ?? 0;
        const { sphericalDb, smoothBullingtonDb } = diffractionLoss({
          distancesKm: samplesKm.subarray(0, steps + 1),
          heightsM: new Float64Array(steps + 1),
          startAntennaM: above.metres[2 * index] ?? 0,
          endAntennaM: above.metres[2 * index + 1] ?? 0,
          frequencyHz,
          polarization: 'vertical',
          earthRadiusKm: 8500,
        });
        return Math.abs(excess - Math.max(0, sphericalDb - smoothBullingtonDb));
      }).toSorted((a, b) => a - b);
      // The tolerance of a box, and as much again for the tables behind the equations. The rest stand at the horizon, where
      // the equations themselves jump by a dB with the sample that makes it.
      expect(offDb[Math.floor(0.995 * count)]).toBeLessThan(0.1);
      expect(offDb[Math.floor(0.998 * count)]).toBeLessThan(0.2);
    },
  );
});
